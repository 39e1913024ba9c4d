// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paper/paper_choices.h"

#include "core/report/hut_table.h"
#include "ui/print/deputy_card.h"
#include "ui/print/humidity_table_sheet.h"
#include "ui/print/month_figure.h"
#include "ui/print/month_form.h"
#include "ui/print/year_book.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QProgressDialog>

namespace wickbook::ui {

namespace {

struct ChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(ChoiceWords)
};

constexpr int kMonthsOffered = 13;
constexpr int kMonthsOfYear = 12;
constexpr int kPatience = 700; ///< milliseconds before progress is shown

} // namespace

std::unique_ptr<SheetDialog> humidityTableDialog(const Session& session, const QLocale& locale,
                                                 QWidget* parent) {
    auto dialog = std::make_unique<SheetDialog>(
        ChoiceWords::tr("Humidity table"),
        ChoiceWords::tr(
            "For the wall of the hut: relative humidity and dew point for this station's exposure and "
            "pressure, a wick with water and one with ice."),
        QStringLiteral("humidity-table.pdf"), locale, parent);
    auto* unit = new QComboBox;
    unit->addItem(unitWords(units::TemperatureUnit::Celsius),
                  static_cast<int>(units::TemperatureUnit::Celsius));
    unit->addItem(unitWords(units::TemperatureUnit::Fahrenheit),
                  static_cast<int>(units::TemperatureUnit::Fahrenheit));
    unit->setCurrentIndex(session.unit() == units::TemperatureUnit::Celsius ? 0 : 1);
    dialog->addChoice(ChoiceWords::tr("&Scale"), unit, "tableUnit");
    auto* step = new QComboBox;
    step->addItem(ChoiceWords::tr("half degrees"), 0.5);
    step->addItem(ChoiceWords::tr("whole degrees"), 1.0);
    step->setCurrentIndex(session.unit() == units::TemperatureUnit::Celsius ? 0 : 1);
    dialog->addChoice(ChoiceWords::tr("Dry less &wet by"), step, "tableStep");
    dialog->finish([&session, locale, unit, step](Paper paper) -> tl::expected<PaperSheet, QString> {
        const auto table = psychrometry::humidityTable(
            report::hutTable(session.station().latestPeriod(),
                             static_cast<units::TemperatureUnit>(unit->currentData().toInt()),
                             step->currentData().toDouble()));
        if (!table) {
            return tl::unexpected(
                ChoiceWords::tr("There is no table without a coefficient: say on the page Station "
                                "how the thermometers hang."));
        }
        return humidityTableSheet({*table, stationHeading(session.station())}, locale, paper);
    });
    return dialog;
}

std::unique_ptr<SheetDialog> monthFormDialog(const Session& session, const QLocale& locale, QWidget* parent) {
    auto dialog = std::make_unique<SheetDialog>(
        ChoiceWords::tr("Month form"),
        ChoiceWords::tr(
            "A month to write in by hand: a line for each observing hour, with boxes for the degrees."),
        QStringLiteral("month-form.pdf"), locale, parent);
    auto* months = new QComboBox;
    const date::year_month_day today{session.today()};
    const date::year_month now = today.year() / today.month();
    for (int ahead = 0; ahead < kMonthsOffered; ++ahead) {
        const date::year_month month = now + date::months{ahead};
        months->addItem(monthWords(locale, month));
    }
    // Late in a month it is the next one that is wanted.
    months->setCurrentIndex(static_cast<unsigned>(today.day()) > 15 ? 1 : 0);
    dialog->addChoice(ChoiceWords::tr("&Month"), months, "formMonth");
    dialog->finish([&session, locale, months, now](Paper paper) -> tl::expected<PaperSheet, QString> {
        return monthFormSheet(
            report::blankMonth(session.station(), now + date::months{months->currentIndex()}), locale, paper);
    });
    return dialog;
}

std::unique_ptr<SheetDialog> deputyCardDialog(const Session& session, const QLocale& locale,
                                              QWidget* parent) {
    auto dialog = std::make_unique<SheetDialog>(
        ChoiceWords::tr("Deputy's card"),
        ChoiceWords::tr(
            "A card for whoever reads in your place: hours, order of reading, frost, wick, what to do in "
            "doubt. A5, both sides."),
        QStringLiteral("deputys-card.pdf"), locale, parent);
    dialog->finish(
        [&session, locale](Paper) -> tl::expected<PaperSheet, QString> {
            return deputyCardSheet(session.station(), session.today(), locale);
        },
        Paper::A5);
    return dialog;
}

std::unique_ptr<SheetDialog> yearBookDialog(const Session& session, const QLocale& locale, QWidget* parent) {
    auto dialog = std::make_unique<SheetDialog>(
        ChoiceWords::tr("Year book"),
        ChoiceWords::tr(
            "A year bound: numbers, charts, twelve months, and the hut's humidity table. It takes a few "
            "seconds."),
        QStringLiteral("year-book.pdf"), locale, parent);
    auto* years = new QComboBox;
    const date::year_month_day today{session.today()};
    int first = static_cast<int>(today.year());
    int last = first;
    if (const auto span = session.book().span(); span && *span) {
        const auto yearAt = [](record::Instant instant) {
            return static_cast<int>(date::year_month_day{date::floor<date::days>(instant)}.year());
        };
        first = yearAt((*span)->first);
        last = yearAt((*span)->second);
    }
    for (int year = last; year >= first; --year) {
        years->addItem(QString::number(year), year);
    }
    // The last whole one, where there is one.
    years->setCurrentIndex(last == static_cast<int>(today.year()) && years->count() > 1 ? 1 : 0);
    dialog->addChoice(ChoiceWords::tr("&Year"), years, "bookYear");
    dialog->finish(
        [&session, locale, years, shown = dialog.get()](Paper paper) -> tl::expected<PaperSheet, QString> {
            // Twelve months looked through; a second or more on an old computer.
            QProgressDialog progress(ChoiceWords::tr("Reading the year…"), ChoiceWords::tr("&Cancel"), 0,
                                     kMonthsOfYear, shown);
            progress.setWindowModality(Qt::WindowModal);
            progress.setMinimumDuration(kPatience);
            int month = 0;
            auto book = gatherYearBook(session.station(), date::year{years->currentData().toInt()},
                                       [&](date::year_month next) -> store::Result<report::MonthReport> {
                                           progress.setValue(month++);
                                           if (progress.wasCanceled()) {
                                               return tl::unexpected(store::StoreError{});
                                           }
                                           return session.monthReport(next);
                                       });
            if (progress.wasCanceled()) {
                return tl::unexpected(ChoiceWords::tr("Stopped; no page was made."));
            }
            progress.setValue(kMonthsOfYear);
            if (!book) {
                return tl::unexpected(storeErrorWords(book.error()));
            }
            return yearBookSheet(std::move(*book), locale, paper);
        });
    return dialog;
}

} // namespace wickbook::ui
