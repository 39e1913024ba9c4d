// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/month_return.h"

#include "ui/print/month_figure.h"
#include "ui/print/paper_text.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <algorithm>
#include <map>

namespace wickbook::ui {

namespace {

constexpr std::size_t kHoursAcross = 3;

/// Mark of a reading that statistics leave out, or what stands in its place.
QString remarkOf(const report::MonthLine& line) {
    if (line.reading == nullptr) {
        return line.toCome           ? QString{}
               : line.excuse.empty() ? PaperText::tr("missing")
                                     : missingReasonWords(QString::fromStdString(line.excuse));
    }
    const record::Observation& values = line.reading->reading.values();
    QStringList parts;
    if (values.origin == record::Origin::Missing) {
        parts << (values.missingReason.empty() ? PaperText::tr("missing")
                                               : QString::fromStdString(values.missingReason));
    } else if (line.reading->leftOut) {
        parts << (values.quality == record::Quality::NotJudged ? PaperText::tr("set aside")
                                                               : qualityWords(values.quality));
    } else if (!values.hasPair()) {
        parts << PaperText::tr("incomplete");
    }
    if (values.origin == record::Origin::Estimated) {
        parts << originWords(values.origin);
    }
    if (line.reading->reading.stored.revisionCount > 1) {
        parts << PaperText::tr("corrected");
    }
    if (const QString weather = weatherSetWords(values.weather);
        !weather.isEmpty() && !values.weather->empty()) {
        parts << weather;
    }
    if (!values.note.empty()) {
        parts << QString::fromStdString(values.note);
    }
    return parts.join(QStringLiteral("; "));
}

/// T, Tw, RH, Td, wick, remark of one line.
QStringList cellsOf(const report::MonthLine& line, const QLocale& locale, units::TemperatureUnit unit) {
    if (line.reading == nullptr) {
        return {{}, {}, {}, {}, {}, remarkOf(line)};
    }
    const record::DerivedReading& reading = line.reading->reading;
    const record::Observation& values = reading.values();
    const auto bulb = [&](const record::BulbReading& read) {
        return read.given() ? bulbWords(locale, read) : QString{};
    };
    QStringList cells{bulb(values.dry), bulb(values.wet)};
    cells << (reading.humidityPercent() ? numberWords(locale, reading.humidityPercent(), 0) : QString{});
    cells << (reading.derivation && reading.derivation->dewPoint
                  ? temperatureWords(locale, reading.derivation->dewPoint, unit)
                  : QString{});
    cells << (reading.derivation ? wickWords(values.wick) : QString{});
    cells << remarkOf(line);
    return cells;
}

void addHourColumns(std::vector<PageColumn>& columns, std::size_t hoursAcross) {
    const double remark = hoursAcross == 1 ? 11 : (hoursAcross == 2 ? 5 : 3.4);
    columns.push_back({PaperText::tr("T"), 1.6, Qt::AlignRight});
    columns.push_back({PaperText::tr("Tw"), 1.6, Qt::AlignRight});
    columns.push_back({PaperText::tr("RH"), 1.3, Qt::AlignRight});
    columns.push_back({PaperText::tr("Td"), 1.6, Qt::AlignRight});
    columns.push_back({PaperText::tr("wick"), 2.1, Qt::AlignHCenter});
    // Three hours across leave no room for both words.
    columns.push_back({hoursAcross < 3 ? PaperText::tr("weather, remark") : PaperText::tr("remark"), remark,
                       Qt::AlignLeft});
}

QString dayWords(const QLocale& locale, record::StationDate day) {
    const QDate date = toQDate(day);
    return QStringLiteral("%1 %2")
        .arg(date.day())
        .arg(locale.dayName(date.dayOfWeek(), QLocale::ShortFormat));
}

using LinesByHour = std::map<record::ObservingHour, const report::MonthLine*>;

PageTable dayTable(const report::MonthReport& report, const LinesByHour& lines, const QLocale& locale,
                   std::span<const record::HourOfDay> hours) {
    const units::TemperatureUnit unit = unitOf(report);
    PageTable table;
    table.fontSize = hours.size() < 3 ? 7.5 : 6.5;
    table.groups.push_back({{}, 1});
    table.columns.push_back({{}, 2.4, Qt::AlignLeft});
    for (const record::HourOfDay hour : hours) {
        table.groups.push_back({hourWords(hour), 6});
        addHourColumns(table.columns, hours.size());
    }
    const record::StationDate last{report.month / date::last};
    for (record::StationDate day{report.month / 1}; day <= last; day += date::days{1}) {
        QStringList row{dayWords(locale, day)};
        for (const record::HourOfDay hour : hours) {
            const auto found = lines.find({day, hour});
            row += found == lines.end() ? QStringList{{}, {}, {}, {}, {}, {}}
                                        : cellsOf(*found->second, locale, unit);
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

std::vector<PageTable> dayTables(const report::MonthReport& report, const QLocale& locale) {
    LinesByHour lines;
    for (const report::MonthLine& line : report.lines) {
        if (!line.extra) {
            lines.emplace(line.hour, &line);
        }
    }
    std::vector<record::HourOfDay> hours;
    for (const climate::HourSummary& summary : report.summary.hours) {
        hours.push_back(*summary.hour);
    }
    std::vector<PageTable> tables;
    for (std::size_t first = 0; first < hours.size(); first += kHoursAcross) {
        const std::size_t count = std::min(kHoursAcross, hours.size() - first);
        tables.push_back(dayTable(report, lines, locale, std::span{hours}.subspan(first, count)));
    }
    return tables;
}

PageTable extrasTable(const report::MonthReport& report, const QLocale& locale) {
    PageTable table;
    table.fontSize = 7.5;
    table.columns.push_back({PaperText::tr("when"), 5.5, Qt::AlignLeft});
    addHourColumns(table.columns, 1);
    for (const report::MonthLine& line : report.lines) {
        if (line.extra) {
            QStringList row{hourAndDateWords(locale, line.hour)};
            row += cellsOf(line, locale, unitOf(report));
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

QStringList withheldSentences(const report::MonthReport& report) {
    QStringList sentences;
    const auto& hours = report.summary.hours;
    if (report.summary.hoursToCome > 0 &&
        std::any_of(hours.begin(), hours.end(), [](const climate::HourSummary& hour) {
            return hour.withheld != climate::Withheld::No;
        })) {
        return {PaperText::tr(
            "No mean yet: the month is not over, and days without a reading, also those to come, "
            "count as missing (WMO-No. 1203).")};
    }
    const auto words = [&](const climate::HourSummary& hour) {
        return withheldWords(hour.withheld, report.options.completeness);
    };
    if (!hours.empty() && std::all_of(hours.begin(), hours.end(), [&](const climate::HourSummary& hour) {
            return hour.withheld == hours.front().withheld;
        })) {
        sentences << words(hours.front()); // the same at every hour: said once
        sentences.removeAll(QString{});
        return sentences;
    }
    for (const climate::HourSummary& hour : hours) {
        if (hour.withheld != climate::Withheld::No) {
            //: %1 an observing hour, %2 a sentence why there is no mean
            sentences << PaperText::tr("%1: %2").arg(hourWords(*hour.hour), words(hour));
        }
    }
    return sentences;
}

QStringList correctionSentences(const report::MonthReport& report, const QLocale& locale) {
    QStringList sentences;
    for (const report::MonthLine& line : report.lines) {
        if (line.reading == nullptr || line.reading->reading.stored.revisionCount < 2) {
            continue;
        }
        const record::StoredObservation& stored = line.reading->reading.stored;
        const QString who = QString::fromStdString(stored.stamp.author.who);
        const QString why = QString::fromStdString(stored.stamp.author.why);
        //: %1 date and hour, %2 why a reading was revised
        QString sentence = PaperText::tr("%1: %2").arg(hourAndDateWords(locale, line.hour),
                                                       why.isEmpty() ? PaperText::tr("revised") : why);
        if (!who.isEmpty()) {
            sentence += QStringLiteral(" (%1)").arg(who);
        }
        sentences << sentence;
    }
    return sentences;
}

} // namespace wickbook::ui
