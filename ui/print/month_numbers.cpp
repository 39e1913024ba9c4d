// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/month_figure.h"
#include "ui/print/month_return.h"
#include "ui/print/paper_text.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

namespace wickbook::ui {

namespace {

/// Writes one column of the numbers: an hour's, or that of the hours together.
class NumbersColumn {
public:
    NumbersColumn(const climate::HourSummary& summary, const QLocale& locale, units::TemperatureUnit unit)
        : summary_(summary), locale_(locale), unit_(unit) {}

    [[nodiscard]] QString count(int number) const { return QString::number(number); }
    [[nodiscard]] QString celsius(const std::optional<double>& value) const {
        return value ? temperatureWords(locale_, units::Temperature::fromCelsius(*value), unit_)
                     : numberWords(locale_, std::nullopt, 1);
    }
    [[nodiscard]] QString kelvins(const std::optional<double>& value) const {
        return value ? differenceWords(locale_, units::TemperatureDifference::fromKelvins(*value), unit_)
                     : numberWords(locale_, std::nullopt, 1);
    }
    [[nodiscard]] QString at(const std::optional<climate::Extreme>& extreme, const QString& value) const {
        if (!extreme) {
            return numberWords(locale_, std::nullopt, 0);
        }
        const QString when = summary_.hour ? shortDateWords(locale_, extreme->at.date)
                                           : shortDateWords(locale_, extreme->at.date) +
                                                 QStringLiteral(", ") + hourWords(extreme->at.hour);
        return QStringLiteral("%1 (%2)").arg(value, when);
    }
    [[nodiscard]] QString humidityAt(const std::optional<climate::Extreme>& extreme) const {
        return at(extreme, extreme ? percentWords(locale_, extreme->value) : QString{});
    }
    [[nodiscard]] QString celsiusAt(const std::optional<climate::Extreme>& extreme) const {
        return at(extreme, extreme ? celsius(extreme->value) : QString{});
    }
    [[nodiscard]] QString kelvinsAt(const std::optional<climate::Extreme>& extreme) const {
        return at(extreme, extreme ? kelvins(extreme->value) : QString{});
    }
    [[nodiscard]] QString pressureAt(const std::optional<climate::Extreme>& extreme) const {
        return at(extreme, extreme ? numberWords(locale_, extreme->value, 1) : QString{});
    }

    [[nodiscard]] QStringList cells() const {
        const climate::HourSummary& s = summary_;
        return {percentWords(locale_, s.meanHumidity),
                humidityAt(s.highestHumidity),
                humidityAt(s.lowestHumidity),
                celsius(s.meanDewPoint),
                celsiusAt(s.highestDewPoint),
                celsiusAt(s.lowestDewPoint),
                numberWords(locale_, s.meanVapourPressure, 1),
                pressureAt(s.highestVapourPressure),
                pressureAt(s.lowestVapourPressure),
                celsius(s.dewPointOfMeanVapourPressure),
                kelvins(s.meanDepression),
                kelvinsAt(s.highestDepression),
                kelvinsAt(s.lowestDepression),
                celsius(s.meanDry),
                celsius(s.meanWet),
                count(s.daysAtOrAbove95),
                count(s.daysAtOrBelow40),
                count(s.daysWithFog),
                count(s.expected),
                count(s.n),
                count(s.missing),
                count(s.setAside)};
    }

private:
    const climate::HourSummary& summary_;
    const QLocale& locale_;
    units::TemperatureUnit unit_;
};

QStringList numberNames(const QLocale& locale, units::TemperatureUnit unit,
                        const climate::MonthOptions& options) {
    const QString degrees = unitWords(unit);
    const auto inDegrees = [&](const QString& text) { return QStringLiteral("%1, %2").arg(text, degrees); };
    const QString highest = PaperText::tr("highest at observing hours");
    const QString lowest = PaperText::tr("lowest at observing hours");
    return {PaperText::tr("mean relative humidity"),
            highest,
            lowest,
            inDegrees(PaperText::tr("mean dew point")),
            highest,
            lowest,
            PaperText::tr("mean vapour pressure, hPa"),
            highest,
            lowest,
            inDegrees(PaperText::tr("dew point of the mean vapour pressure")),
            inDegrees(PaperText::tr("mean depression")),
            highest,
            lowest,
            inDegrees(PaperText::tr("mean dry bulb")),
            inDegrees(PaperText::tr("mean wet bulb")),
            PaperText::tr("days at or above %1").arg(percentWords(locale, options.highThreshold)),
            PaperText::tr("days at or below %1").arg(percentWords(locale, options.lowThreshold)),
            PaperText::tr("days with fog noted"),
            PaperText::tr("expected"),
            PaperText::tr("counted (n)"),
            PaperText::tr("missing"),
            PaperText::tr("set aside")};
}

} // namespace

PageTable numbersTable(const report::MonthReport& report, const QLocale& locale) {
    const units::TemperatureUnit unit = unitOf(report);
    PageTable table;
    table.fontSize = 7.5;
    table.columns.push_back({{}, 3.2, Qt::AlignLeft});
    std::vector<QStringList> columns;
    for (const climate::HourSummary& hour : report.summary.hours) {
        table.columns.push_back({hourWords(*hour.hour), 2.2, Qt::AlignRight});
        columns.push_back(NumbersColumn(hour, locale, unit).cells());
    }
    table.columns.push_back({PaperText::tr("mean of observing hours"), 3.2, Qt::AlignRight});
    columns.push_back(NumbersColumn(report.summary.all, locale, unit).cells());

    const QStringList names = numberNames(locale, unit, report.options);
    for (qsizetype row = 0; row < names.size(); ++row) {
        QStringList cells{names[row]};
        for (const QStringList& column : columns) {
            cells << column[row];
        }
        table.rows.push_back(std::move(cells));
    }
    return table;
}

PageTable keyNumbersTable(const report::MonthReport& report, const QLocale& locale) {
    PageTable table = numbersTable(report, locale);
    // Humidity and dew point with their extremes, and how many readings stand behind them: the places of
    // NumbersColumn::cells.
    constexpr qsizetype kKept[] = {0, 1, 2, 3, 4, 5, 19};
    std::vector<QStringList> rows;
    for (const qsizetype row : kKept) {
        rows.push_back(table.rows[static_cast<std::size_t>(row)]);
    }
    table.rows = std::move(rows);
    table.fontSize = 9;
    return table;
}

} // namespace wickbook::ui
