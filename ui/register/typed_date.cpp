// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/typed_date.h"

#include "ui/text/time_words.h"

namespace wickbook::ui {

std::optional<record::StationDate> typedDate(const QLocale& locale, const QString& text) {
    constexpr int kFirstOfTwoDigits = 1930;
    constexpr int kShortest = 9; // characters: fewer leave no room for a year of four digits
    const QString typed = text.trimmed();
    if (const auto date = record::parseDate(typed.toStdString())) {
        return *date;
    }
    const QDate local = locale.toDate(typed, QLocale::ShortFormat);
    if (!local.isValid()) {
        return std::nullopt;
    }
    return fromQDate(local.year() < kFirstOfTwoDigits && typed.size() < kShortest ? local.addYears(100)
                                                                                  : local);
}

} // namespace wickbook::ui
