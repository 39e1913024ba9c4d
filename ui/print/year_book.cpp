// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/year_book.h"

#include "ui/print/chart_figure.h"
#include "ui/print/month_figure.h"
#include "ui/print/month_return.h"
#include "ui/print/page_writer.h"
#include "ui/print/pair_chart.h"
#include "ui/print/paper_text.h"
#include "ui/print/report_pdf.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QBuffer>
#include <QPdfWriter>

#include <set>

namespace wickbook::ui {

namespace {

constexpr double kBookTitle = 26;
constexpr double kBookPart = 15;
constexpr double kBookWords = 10;
constexpr QSizeF kYearFigure{760, 860};

struct ContentsLine {
    QString title;
    int page = 0;
};

class BookPainter {
public:
    BookPainter(const YearBook& book, const QLocale& locale) : book_(book), locale_(locale) {}

    /// contents: as the pass before found them; the pass's own are in found().
    bool paint(QPagedPaintDevice& device, const std::vector<ContentsLine>& contents) {
        PageWriter page(device, title());
        if (!page.isActive()) {
            return false;
        }
        found_.clear();
        cover(page);
        page.space(12);
        contentsTable(page, contents);
        begin(page, PaperText::tr("The year in numbers"));
        numbers(page);
        begin(page, PaperText::tr("The year in charts"));
        charts(page);
        std::set<record::Instant> told; // periods whose station has been described
        for (const report::MonthReport& month : book_.months) {
            begin(page, monthWords(locale_, month.month), false);
            const auto& period =
                month.station.periodAt(startOf(month.station, record::StationDate{month.month / date::last}));
            const bool news = told.insert(period.from.value_or(record::Instant::min())).second;
            if (month.readings.empty()) {
                page.heading(reportTitle(month, locale_), kBookPart);
                page.paragraph(month.summary.hoursToCome > 0 && month.summary.all.expected == 0
                                   ? PaperText::tr("This month is still to come.")
                                   : PaperText::tr("Nothing was written down in this month."),
                               kBookWords, lightTokens().ink);
                continue;
            }
            paintMonthPages(page, month, locale_, news);
        }
        if (book_.table) {
            begin(page, PaperText::tr("The hut's humidity table"), false);
            paintHumidityTable(page, *book_.table, locale_);
        }
        return page.finish();
    }
    [[nodiscard]] const std::vector<ContentsLine>& found() const { return found_; }
    [[nodiscard]] QString title() const {
        return QStringLiteral("%1 · %2").arg(stationHeading(book_.months.front().station), year());
    }

private:
    [[nodiscard]] QString year() const { return QString::number(static_cast<int>(book_.year)); }

    void begin(PageWriter& page, const QString& part, bool withHeading = true) {
        page.newPage();
        found_.push_back({part, page.page()});
        if (withHeading) {
            page.heading(part, kBookPart);
        }
    }

    void cover(PageWriter& page) {
        const report::MonthReport& last = book_.months.back();
        page.space(60);
        page.heading(stationHeading(last.station), kBookTitle);
        page.heading(year(), kBookTitle);
        page.space(20);
        page.paragraph(PaperText::tr("Relative humidity and dew point from a dry and a wet bulb"), 13,
                       lightTokens().ink);
        page.space(10);
        page.facts(stationBlocks(last, locale_).front(), kBookWords);
        if (const QString who = observers(); !who.isEmpty()) {
            page.facts({{PaperText::tr("observers"), who}}, kBookWords);
        }
        if (last.station.facts().invented) {
            page.paragraph(PaperText::tr("This station is invented, and so are its readings."), kBookWords,
                           lightTokens().wrong);
        }
    }

    [[nodiscard]] QString observers() const {
        std::set<std::string> names;
        for (const report::MonthReport& month : book_.months) {
            for (const checks::CheckedReading& checked : month.readings) {
                if (!checked.reading.values().observer.empty()) {
                    names.insert(checked.reading.values().observer);
                }
            }
        }
        QStringList list;
        for (const std::string& name : names) {
            list << QString::fromStdString(name);
        }
        return list.join(QStringLiteral(", "));
    }

    static void contentsTable(PageWriter& page, const std::vector<ContentsLine>& contents) {
        PageTable table;
        table.fontSize = kBookWords;
        table.columns = {{PaperText::tr("Contents"), 6, Qt::AlignLeft},
                         {PaperText::tr("page"), 1, Qt::AlignRight}};
        for (const ContentsLine& line : contents) {
            table.rows.push_back({line.title, QString::number(line.page)});
        }
        page.table(table);
    }

    /// A row for each month, of one observing hour or (none) of all together.
    [[nodiscard]] PageTable monthsTable(std::optional<record::HourOfDay> hour, QStringList& withheld) const {
        PageTable table;
        table.fontSize = 8.5;
        const units::TemperatureUnit unit = unitOf(book_.months.front());
        table.columns = {{{}, 1.5, Qt::AlignLeft},
                         {PaperText::tr("n of"), 1.3, Qt::AlignRight},
                         {PaperText::tr("mean RH"), 1.2, Qt::AlignRight},
                         {PaperText::tr("highest"), 2, Qt::AlignRight},
                         {PaperText::tr("lowest"), 2, Qt::AlignRight},
                         {PaperText::tr("mean e"), 1.2, Qt::AlignRight},
                         {PaperText::tr("Td of e"), 1.3, Qt::AlignRight},
                         {PaperText::tr("mean Td"), 1.3, Qt::AlignRight}};
        for (const report::MonthReport& month : book_.months) {
            const climate::HourSummary* summary = summaryOf(month, hour);
            const QString name = locale_.standaloneMonthName(
                static_cast<int>(static_cast<unsigned>(month.month.month())), QLocale::ShortFormat);
            if (summary == nullptr) {
                table.rows.push_back({name, numberWords(locale_, std::nullopt, 0)});
                continue;
            }
            const auto celsius = [&](const std::optional<double>& value) {
                return value ? temperatureWords(locale_, units::Temperature::fromCelsius(*value), unit)
                             : numberWords(locale_, std::nullopt, 1);
            };
            const auto extreme = [&](const std::optional<climate::Extreme>& value) {
                return value ? QStringLiteral("%1 (%2)").arg(percentWords(locale_, value->value),
                                                             shortDateWords(locale_, value->at.date))
                             : numberWords(locale_, std::nullopt, 0);
            };
            const bool toCome = month.summary.hoursToCome > 0;
            if (summary->withheld != climate::Withheld::No) {
                const QString sentence = toCome
                                             ? PaperText::tr("the month is not over")
                                             : withheldWords(summary->withheld, month.options.completeness);
                QString reason = sentence;
                while (reason.endsWith(QLatin1Char('.'))) {
                    reason.chop(1); // the reasons stand in one line
                }
                withheld << QStringLiteral("%1: %2").arg(name, reason);
            }
            table.rows.push_back(
                {name,
                 PaperText::tr("%1 of %2")
                     .arg(QString::number(summary->n), QString::number(summary->expected)),
                 percentWords(locale_, summary->meanHumidity), extreme(summary->highestHumidity),
                 extreme(summary->lowestHumidity), numberWords(locale_, summary->meanVapourPressure, 1),
                 celsius(summary->dewPointOfMeanVapourPressure), celsius(summary->meanDewPoint)});
        }
        return table;
    }

    static const climate::HourSummary* summaryOf(const report::MonthReport& month,
                                                 std::optional<record::HourOfDay> hour) {
        if (!hour) {
            return &month.summary.all;
        }
        for (const climate::HourSummary& each : month.summary.hours) {
            if (each.hour == hour) {
                return &each;
            }
        }
        return nullptr;
    }

    void numbers(PageWriter& page) {
        page.paragraph(
            PaperText::tr(
                "n readings that count, of those expected; RH relative humidity; e vapour pressure in hPa; "
                "Td of e the dew point of its mean, Td dew point, in %1. At observing hours; a mean of "
                "observing hours weights them equally and is no mean over 24 hours. Where there is no mean "
                "the reason stands below.")
                .arg(unitWords(unitOf(book_.months.front()))),
            kBookWords - 1, lightTokens().soft);
        std::set<record::HourOfDay> hours;
        for (const report::MonthReport& month : book_.months) {
            for (const climate::HourSummary& hour : month.summary.hours) {
                hours.insert(*hour.hour);
            }
        }
        const auto part = [&](const QString& heading, std::optional<record::HourOfDay> hour) {
            QStringList withheld;
            const PageTable table = monthsTable(hour, withheld);
            page.need(230);
            page.heading(heading, 12);
            page.table(table);
            if (!withheld.isEmpty()) {
                page.paragraph(withheld.join(QStringLiteral("; ")), kBookWords - 2, lightTokens().soft);
            }
        };
        for (const record::HourOfDay hour : hours) {
            part(hourWords(hour), hour);
        }
        if (hours.size() != 1) {
            part(PaperText::tr("Mean of observing hours"), std::nullopt);
        }
    }

    void charts(PageWriter& page) {
        std::vector<checks::CheckedReading> readings;
        for (const report::MonthReport& month : book_.months) {
            readings.insert(readings.end(), month.readings.begin(), month.readings.end());
        }
        if (readings.empty()) {
            page.paragraph(PaperText::tr("No reading of this year is in the book."), kBookWords,
                           lightTokens().ink);
            return;
        }
        const record::StationRecord& station = book_.months.back().station;
        const record::StationDate first{book_.year / date::January / 1};
        const record::StationDate last{book_.year / date::December / 31};
        const auto points = std::make_shared<const ChartPoints>(chartPoints(readings, station, first, last));
        const units::TemperatureUnit unit = unitOf(book_.months.front());
        ChartFigure figure(kYearFigure, {});
        auto* humidity = new HumidityChart(Quantity::Humidity, station, ChartLook::paper(), locale_, unit);
        auto* dewPoint = new HumidityChart(Quantity::DewPoint, station, ChartLook::paper(), locale_, unit);
        auto* pair = new PairChart(station, ChartLook::paper(), locale_, unit);
        figure.place({humidity, dewPoint, pair});
        const record::Instant from = startOf(station, first);
        const record::Instant to = startOf(station, last + date::days{1});
        for (HumidityChart* chart : {humidity, dewPoint}) {
            chart->setPoints(points);
            chart->setSpan(from, to);
            chart->settle();
        }
        pair->setPoints(points);
        pair->setSpan(from, to);
        pair->settle();
        const double height =
            std::min(page.roomLeft() - 4, page.width() * kYearFigure.height() / kYearFigure.width());
        page.figure(height, [&](QPainter& painter, const QRectF& where) { figure.paint(painter, where); });
    }

    const YearBook& book_;
    const QLocale& locale_;
    std::vector<ContentsLine> found_;
};

} // namespace

PaperSheet yearBookSheet(YearBook book, const QLocale& locale, Paper paper) {
    const auto shared = std::make_shared<const YearBook>(std::move(book));
    const QString title = PaperText::tr("Year book · %1").arg(BookPainter(*shared, locale).title());
    return {title, paper, [shared, locale, paper](QPagedPaintDevice& device) {
                // The first pass is for the numbers of the pages: with as many lines of contents as there
                // will be, so that nothing moves in the second.
                BookPainter painter(*shared, locale);
                QByteArray unused;
                std::vector<ContentsLine> contents(shared->months.size() + (shared->table ? 3 : 2));
                {
                    QBuffer buffer(&unused);
                    buffer.open(QIODevice::WriteOnly);
                    QPdfWriter writer(&buffer);
                    setUpPdf(writer, {}, paper);
                    if (!painter.paint(writer, contents)) {
                        return false;
                    }
                }
                contents = painter.found();
                return painter.paint(device, contents);
            }};
}

} // namespace wickbook::ui
