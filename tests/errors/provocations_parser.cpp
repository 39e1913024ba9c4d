// SPDX-License-Identifier: GPL-3.0-or-later
// Arguments that can't be understood at all: the words are the parser's, put into one sentence of ours.
#include "tests/errors/provocations.h"

namespace wickbook::errors {

std::vector<Provocation> parserProvocations() {
    return {
        said("wickbook: \"derrive\" is neither a verb nor a book that is there; \"wickbook --help\" lists "
             "the verbs.",
             {"derrive"}),
        said("wickbook: a verb or a book is needed; \"wickbook --help\" lists what can be given.",
             {"--nonsense"}),
        said("wickbook derive: The following argument was not expected: --nonsense; \"wickbook derive "
             "--help\" lists what can be given.",
             {"derive", "--nonsense"}),
        said("wickbook derive: --dry: 1 required TEXT missing; \"wickbook derive --help\" lists what can be "
             "given.",
             {"derive", "--dry"}),
        said("wickbook derive: The following argument was not expected: spare; \"wickbook derive --help\" "
             "lists what can be given.",
             {"derive", "--dry", "20", "--wet", "15", "spare"}),
        said("wickbook check: --book is required; \"wickbook check --help\" lists what can be given.",
             {"check"}),
        said("wickbook new: --name is required; \"wickbook new --help\" lists what can be given.",
             {"new", "--book", "x"}),
        said("wickbook derive: Could not convert: --strict = maybe; \"wickbook derive --help\" lists what "
             "can be given.",
             {"derive", "--strict=maybe", "--dry", "20", "--wet", "15"}),
    };
}

} // namespace wickbook::errors
