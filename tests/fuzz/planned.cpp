// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/planned.h"

#include "core/exchange/byte_decoder.h"
#include "core/exchange/csv.h"
#include "core/store/body_error.h"
#include "core/store/observation_body.h"
#include "tests/fuzz/targets.h"

#include <sstream>

namespace wickbook::fuzz {

void checkRejected(const exchange::RejectedLine& rejected, std::string_view file) {
    promise(rejected.file == file, "a rejected line names its file", rejected.text);
    promise(rejected.line >= 1, "a rejected line has its number", rejected.text);
    promise(!exchange::reasonName(rejected.reason).empty(), "a rejected line has its reason", rejected.text);
    promise(exchange::isUtf8(rejected.text) && exchange::isUtf8(rejected.value), "a rejected line is UTF-8");
    const auto row = exchange::rejectsRow(rejected);
    promise(row.size() == exchange::rejectsHeader().size(), "a row of the rejects file is whole",
            rejected.text);
    std::istringstream input(exchange::csvLine(exchange::rejectsHeader()) +
                             std::string{exchange::kCsvLineEnd} + exchange::csvLine(row) +
                             std::string{exchange::kCsvLineEnd});
    exchange::CsvReader reader(input);
    static_cast<void>(reader.next());
    const auto again = reader.next();
    promise(again && *again && (*again)->cells == row, "a rejected line is whole in the rejects file",
            rejected.text);
}

void checkKeepable(const exchange::PlannedObservation& planned) {
    try {
        const std::string body = store::observationBody(planned.values);
        promise(store::observationFromBody(body) == planned.values, "what came in comes out of the book",
                planned.text);
    } catch (const store::UnkeepableValue& refused) {
        promise(false, "what comes in can be kept", std::string{refused.what()} + ": " + planned.text);
    }
}

} // namespace wickbook::fuzz
