// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/humidity_table_sheet.h"

#include "core/psychrometry/exposure.h"
#include "core/report/hut_table.h"
#include "ui/print/month_figure.h"
#include "ui/print/page_writer.h"
#include "ui/print/paper_text.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <memory>

namespace wickbook::ui {

namespace {

using psychrometry::HumidityTable;
using psychrometry::HumidityTableCell;
using psychrometry::HumidityTableRow;
using psychrometry::Surface;

constexpr double kFigures = 11;
constexpr double kLeastFigures = 9.5;
constexpr double kLineOfFigures = 1.18; ///< height of a line, in sizes of its type
constexpr double kHeadRoom = 40;        ///< both head lines
constexpr double kPartHeading = 60;
constexpr double kTableWords = 10;
/// A dew point below zero with its tenth is wider than a per cent.
constexpr std::size_t kHumidityColumns = 13;
constexpr std::size_t kDewPointColumns = 10;

enum class CellQuantity { Humidity, DewPoint };

/// Humidity is printed whole; a cell above 100 is beyond saturation and stays empty.
QString cellWords(const QLocale& locale, const HumidityTableCell& cell, CellQuantity quantity,
                  units::TemperatureUnit unit) {
    if (!cell.humidity || cell.humidity->percent() > 100.5) {
        return {};
    }
    return quantity == CellQuantity::Humidity ? numberWords(locale, cell.humidity->percent(), 0)
                                              : temperatureWords(locale, cell.dewPoint, unit);
}

int decimalsOf(double step) {
    return std::abs(step - std::round(step)) < 1e-9 ? 0 : 1;
}

/// A block of columns as a table on paper; rows without any cell are left out. The dry bulb stands on both
/// sides.
PageTable blockOf(const QLocale& locale, const HumidityTable& table,
                  const std::vector<HumidityTableRow>& rows, std::size_t first, std::size_t last,
                  CellQuantity quantity) {
    PageTable page;
    page.rowPadding = 1;
    page.strongRuleEvery = 5;
    page.shadeColumns = true;
    const QString dry = PaperText::tr("dry");
    page.groups = {{{}, 1},
                   {PaperText::tr("dry less wet, %1").arg(unitWords(table.request.unit)),
                    static_cast<int>(last - first)},
                   {{}, 1}};
    page.columns.push_back({dry, 1.1, Qt::AlignRight});
    for (std::size_t column = first; column < last; ++column) {
        page.columns.push_back(
            {numberWords(locale, table.depressions[column], decimalsOf(table.request.depressionStep)), 1,
             Qt::AlignRight});
    }
    page.columns.push_back({dry, 1.1, Qt::AlignRight});
    for (const HumidityTableRow& row : rows) {
        const QString degrees = numberWords(locale, row.dry, decimalsOf(table.request.dryStep));
        QStringList cells{degrees};
        bool any = false;
        for (std::size_t column = first; column < last; ++column) {
            const QString words = cellWords(locale, row.cells[column], quantity, table.request.unit);
            any = any || !words.isEmpty();
            cells << words;
        }
        if (any) {
            cells << degrees;
            page.rows.push_back(std::move(cells));
        }
    }
    return page;
}

/// One past the last column in which any row has a cell.
std::size_t columnsUsed(const std::vector<HumidityTableRow>& rows) {
    std::size_t used = 0;
    for (const HumidityTableRow& row : rows) {
        for (std::size_t column = used; column < row.cells.size(); ++column) {
            const auto& humidity = row.cells[column].humidity;
            if (humidity && humidity->percent() <= 100.5) {
                used = column + 1;
            }
        }
    }
    return used;
}

class TablePainter {
public:
    TablePainter(const HumidityTableSheet& sheet, const QLocale& locale, PageWriter& page)
        : sheet_(sheet), locale_(locale), page_(page) {}

    void paint() {
        for (const Surface bulb : {Surface::Water, Surface::Ice}) {
            for (const CellQuantity quantity : {CellQuantity::Humidity, CellQuantity::DewPoint}) {
                part(bulb, quantity);
            }
        }
        cautions();
    }

    static QString foot(const HumidityTableSheet& sheet, const QLocale& locale) {
        return QStringLiteral("%1 · %2 · %3")
            .arg(sheet.place.isEmpty() ? PaperText::tr("Humidity table") : sheet.place,
                 exposureWords(sheet.table.request.coefficient.exposure), pressureOf(sheet, locale));
    }

private:
    static QString pressureOf(const HumidityTableSheet& sheet, const QLocale& locale) {
        return PaperText::tr("%1 hPa").arg(
            numberWords(locale, sheet.table.request.pressure.hectopascals(), 0));
    }
    [[nodiscard]] QString pressure() const { return pressureOf(sheet_, locale_); }

    [[nodiscard]] QString coefficient(Surface bulb) const {
        const psychrometry::CoefficientRule& rule = sheet_.table.request.coefficient;
        const auto at = rule.at(bulb, units::Temperature::fromCelsius(0), sheet_.table.request.pressure);
        const QString number = at ? numberWords(locale_, at->perKelvin * 1e4, 2) : QString{};
        const psychrometry::ExposureEntry& entry = psychrometry::entryOf(rule.exposure);
        const QString source =
            rule.perKelvin
                ? PaperText::tr("fitted at this station")
                : QString::fromUtf8(entry.source.data(), static_cast<qsizetype>(entry.source.size()));
        //: %1 a number, %2 where it comes from
        return PaperText::tr("coefficient %1 × 10⁻⁴ per K at 0 °C (%2)").arg(number, source);
    }

    void part(Surface bulb, CellQuantity quantity) {
        const HumidityTable& table = sheet_.table;
        const auto& rows = bulb == Surface::Water ? table.waterRows : table.iceRows;
        const std::size_t used = columnsUsed(rows);
        const std::size_t most = quantity == CellQuantity::Humidity ? kHumidityColumns : kDewPointColumns;
        for (std::size_t first = 0; first < used; first += most) {
            const std::size_t last = std::min(first + most, used);
            PageTable block = blockOf(locale_, table, rows, first, last, quantity);
            if (block.rows.empty()) {
                continue;
            }
            begin(bulb, quantity, static_cast<double>(block.rows.size()), first > 0);
            // As large as lets the block stand on one page, within what is legible.
            const double line = (page_.roomLeft() - kHeadRoom) / static_cast<double>(block.rows.size());
            block.fontSize = std::clamp((line - block.rowPadding) / kLineOfFigures, kLeastFigures, kFigures);
            page_.table(block);
        }
    }

    /// A heading for the part on a new page; where so many rows still find room, below what stands there.
    void begin(Surface bulb, CellQuantity quantity, double rows, bool goesOn) {
        const double height = rows * (kFigures * kLineOfFigures + 1) + kHeadRoom;
        const bool fits = !first_ && page_.roomLeft() > height + (goesOn ? 0 : kPartHeading);
        if (!first_ && !fits) {
            page_.newPage();
        }
        if (goesOn && fits) {
            return; // the rest of a part, under its own heading still
        }
        const QString what = quantity == CellQuantity::Humidity
                                 ? PaperText::tr("Relative humidity, %")
                                 : PaperText::tr("Dew point, %1").arg(unitWords(sheet_.table.request.unit));
        const QString wick =
            bulb == Surface::Water ? PaperText::tr("water on the wick") : PaperText::tr("ICE on the wick");
        page_.heading(QStringLiteral("%1 · %2").arg(what, wick), 15);
        if (first_) {
            page_.paragraph(
                PaperText::tr("Find the dry bulb at the side, dry less wet at the top: the figure where "
                              "they meet. Halfway between two figures take the middle. With ice on the "
                              "wick use the pages that say so, also for a dry bulb above freezing."),
                kTableWords, lightTokens().ink);
        }
        page_.paragraph(
            PaperText::tr("%1, %2, %3. Within 1 % from %4 to %5 hPa.")
                .arg(exposureWords(sheet_.table.request.coefficient.exposure), coefficient(bulb), pressure(),
                     numberWords(locale_, sheet_.table.request.pressure.hectopascals() - reach(), 0),
                     numberWords(locale_, sheet_.table.request.pressure.hectopascals() + reach(), 0)),
            kTableWords - 1, lightTokens().soft);
        first_ = false;
    }

    /// Whole hPa, rounded down.
    [[nodiscard]] double reach() const { return std::floor(pressureWithinOnePercent(sheet_.table)); }

    void cautions() {
        page_.need(60);
        page_.paragraph(
            PaperText::tr(
                "Only for thermometers exposed as named above: in stiller air the wet bulb reads too high, "
                "and so does the humidity. Relative humidity is over liquid water, also with ice on the "
                "wick. Not for aviation, heat stress, spraying, food or process safety, medical or legal "
                "decisions."),
            kTableWords - 1, lightTokens().soft);
    }

    const HumidityTableSheet& sheet_;
    const QLocale& locale_;
    PageWriter& page_;
    bool first_ = true;
};

} // namespace

double pressureWithinOnePercent(const HumidityTable& table) {
    // The equation is linear in the pressure: a small step tells the slope of every cell.
    constexpr double kStep = 5;
    psychrometry::HumidityTableRequest other = table.request;
    other.pressure = units::Pressure::fromHectopascals(other.pressure.hectopascals() + kStep);
    const auto shifted = psychrometry::humidityTable(other);
    double most = 0;
    const auto compare = [&](const std::vector<HumidityTableRow>& a, const std::vector<HumidityTableRow>& b) {
        for (std::size_t row = 0; row < std::min(a.size(), b.size()); ++row) {
            for (std::size_t column = 0; column < a[row].cells.size(); ++column) {
                const auto& here = a[row].cells[column].humidity;
                const auto& there = b[row].cells[column].humidity;
                if (here && there && here->percent() <= 100) {
                    most = std::max(most, std::abs(here->percent() - there->percent()));
                }
            }
        }
    };
    if (shifted) {
        compare(table.waterRows, shifted->waterRows);
        compare(table.iceRows, shifted->iceRows);
    }
    return most > 0 ? kStep / most : std::numeric_limits<double>::max();
}

void paintHumidityTable(PageWriter& page, const HumidityTableSheet& sheet, const QLocale& locale) {
    TablePainter(sheet, locale, page).paint();
}

std::optional<HumidityTableSheet> hutTableOf(const record::StationRecord& station, record::Instant at) {
    const record::Thermometer* dry = station.dryThermometerAt(at);
    const bool fahrenheit = dry != nullptr && dry->unit == units::TemperatureUnit::Fahrenheit;
    const auto table = psychrometry::humidityTable(
        report::hutTable(station.periodAt(at),
                         fahrenheit ? units::TemperatureUnit::Fahrenheit : units::TemperatureUnit::Celsius,
                         fahrenheit ? 1 : 0.5));
    if (!table) {
        return std::nullopt;
    }
    return HumidityTableSheet{*table, stationHeading(station)};
}

PaperSheet humidityTableSheet(HumidityTableSheet sheet, const QLocale& locale, Paper paper) {
    const QString title = sheet.place.isEmpty() ? PaperText::tr("Humidity table")
                                                : PaperText::tr("Humidity table · %1").arg(sheet.place);
    const auto shared = std::make_shared<const HumidityTableSheet>(std::move(sheet));
    return {title, paper, [shared, locale](QPagedPaintDevice& device) {
                PageWriter page(device, TablePainter::foot(*shared, locale));
                if (!page.isActive()) {
                    return false;
                }
                paintHumidityTable(page, *shared, locale);
                return page.finish();
            }};
}

} // namespace wickbook::ui
