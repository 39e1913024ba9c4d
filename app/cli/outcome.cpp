// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/outcome.h"

#include "ui/text/error_words.h"

namespace wickbook::cli {

tl::unexpected<Refusal> refuse(const store::StoreError& error) {
    using store::StoreErrorKind;
    ExitCode code = ExitCode::BookTrouble;
    switch (error.kind) {
    case StoreErrorKind::HourTaken:
    case StoreErrorKind::ChangedMeanwhile:
    case StoreErrorKind::NoSuchReading:
        code = ExitCode::BadInput;
        break;
    default:
        break;
    }
    return refuse(ui::storeErrorWords(error).toStdString(), code);
}

} // namespace wickbook::cli
