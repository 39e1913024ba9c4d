// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/review_words.h"

#include "ui/text/finding_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

namespace {
class ReviewText {
    Q_DECLARE_TR_FUNCTIONS(ReviewText)
};
} // namespace

QString spanWords(const QLocale& locale, record::StationDate from, record::StationDate to) {
    const QDate first = toQDate(from);
    const QDate last = toQDate(to);
    //: day, short month and year, in Qt's date format
    const QString end = locale.toString(last, ReviewText::tr("d MMM yyyy"));
    if (first == last) {
        return end;
    }
    if (first.year() == last.year() && first.month() == last.month()) {
        //: a span of days within one month: 3–9 Jan 1881
        return ReviewText::tr("%1–%2").arg(QString::number(first.day()), end);
    }
    const QString start = first.year() == last.year() ? shortDateWords(locale, from)
                                                      : locale.toString(first, ReviewText::tr("d MMM yyyy"));
    //: a span from one month into another: 28 Jan – 2 Feb 1881
    return ReviewText::tr("%1 – %2").arg(start, end);
}

QString timeOfWords(const record::Observation& values) {
    return values.hour ? hourWords(values.hour->hour) : clockWords(values.instant, values.offset);
}

QString readingsWords(std::size_t count) {
    return count == 1 ? ReviewText::tr("1 reading")
                      : ReviewText::tr("%n readings", nullptr, static_cast<int>(count));
}

QString runWords(const QLocale& locale, const desk::ReviewRun& run, std::size_t open,
                 units::TemperatureUnit unit) {
    //: what is asked, how many readings, when
    return ReviewText::tr("%1, %2, %3")
        .arg(findingWords(locale, run.lead, unit).title, readingsWords(open),
             spanWords(locale, run.from, run.to));
}

} // namespace wickbook::ui
