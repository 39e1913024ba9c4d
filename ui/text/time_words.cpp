// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/time_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

QDate toQDate(record::StationDate date) {
    const date::year_month_day ymd{date};
    return {static_cast<int>(ymd.year()), static_cast<int>(static_cast<unsigned>(ymd.month())),
            static_cast<int>(static_cast<unsigned>(ymd.day()))};
}

record::StationDate fromQDate(QDate date) {
    return record::StationDate{date::local_days{date::year{date.year()} / date.month() / date.day()}};
}

QString hourWords(record::HourOfDay hour) {
    const auto minutes = hour.count() % 60;
    const auto whole = hour.count() / 60;
    const QString number = minutes == 0
                               ? QString::number(whole)
                               : QStringLiteral("%1:%2").arg(whole).arg(minutes, 2, 10, QLatin1Char('0'));
    //: %1 is an hour of the day, 9 or 9:30; "h" as in a register's column head
    return QCoreApplication::translate("text", "%1 h").arg(number);
}

QString longDateWords(const QLocale& locale, record::StationDate date) {
    //: day of the week, day, month and year, in Qt's date format
    return locale.toString(toQDate(date), QCoreApplication::translate("text", "dddd d MMMM yyyy"));
}

QString shortDateWords(const QLocale& locale, record::StationDate date) {
    //: day and short month, in Qt's date format
    return locale.toString(toQDate(date), QCoreApplication::translate("text", "d MMM"));
}

QString hourAndDateWords(const QLocale& locale, const record::ObservingHour& hour) {
    //: day, short month and year, in Qt's date format
    const QString day =
        locale.toString(toQDate(hour.date), QCoreApplication::translate("text", "d MMM yyyy"));
    //: %1 a date, %2 an hour
    return QCoreApplication::translate("text", "%1, %2").arg(day, hourWords(hour.hour));
}

QString monthWords(const QLocale& locale, date::year_month month) {
    const QDate first{static_cast<int>(month.year()), static_cast<int>(static_cast<unsigned>(month.month())),
                      1};
    //: month and year, in Qt's date format
    return locale.toString(first, QCoreApplication::translate("text", "MMMM yyyy"));
}

QString clockWords(record::Instant instant, std::chrono::seconds offset) {
    const auto local = record::LocalTime{instant.time_since_epoch() + offset};
    const auto minutes =
        std::chrono::duration_cast<std::chrono::minutes>(local - date::floor<date::days>(local)).count();
    return QStringLiteral("%1:%2")
        .arg(minutes / 60, 2, 10, QLatin1Char('0'))
        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

} // namespace wickbook::ui
