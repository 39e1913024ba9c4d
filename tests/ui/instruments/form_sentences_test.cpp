// SPDX-License-Identifier: GPL-3.0-or-later
// What the forms of the Instruments page say of a field that can't be taken: the sentences themselves.
#include "tests/support/open_book.h"
#include "ui/commands/revise_facts.h"
#include "ui/instruments/beside_dialog.h"
#include "ui/instruments/coefficient_form.h"
#include "ui/instruments/correction_form.h"
#include "ui/instruments/fitting_form.h"
#include "ui/instruments/pair_check_form.h"
#include "ui/instruments/salt_check_form.h"
#include "ui/instruments/side_by_side_form.h"
#include "ui/instruments/thermometer_form.h"
#include "ui/instruments/wick_form.h"

#include <QComboBox>
#include <QLineEdit>
#include <QTableWidget>

namespace {

using namespace wickbook;
using test::day;

void fill(QWidget& form, const char* name, const char* text) {
    auto* field = form.findChild<QLineEdit*>(QLatin1String(name));
    ASSERT_NE(field, nullptr) << name;
    field->setText(QString::fromUtf8(text));
}

std::string said(const ui::FactForm& form) {
    return form.problem().toStdString();
}

/// A station whose book says nothing of thermometers.
class NoThermometers {
public:
    NoThermometers() {
        record::StationFacts facts = book.session().station().facts();
        facts.thermometers.clear();
        facts.fittings.clear();
        EXPECT_TRUE(book.session().reviseFacts(facts, {"A", ""}));
    }
    test::OpenBook book;
};

TEST(InstrumentFormSentences, OfAThermometer) {
    test::OpenBook book;
    ui::ThermometerForm form(book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(form), "Write the number on it, or what you call it.");
    fill(form, "thermometerName", "wet");
    EXPECT_EQ(said(form), "There is a thermometer “wet” already. Give this one another name.");
    fill(form, "thermometerName", "T 7");
    fill(form, "thermometerStep", "5");
    EXPECT_EQ(said(form), "The finest step that is read lies between 0.01 and 2 degrees; look at “5”.");
    fill(form, "thermometerStep", "0.1");
    fill(form, "thermometerLowest", "70");
    EXPECT_EQ(said(form), "The lowest mark must lie below the highest.");
    fill(form, "thermometerLowest", "-30");
    EXPECT_EQ(said(form), "");
    NoThermometers none;
    ui::ThermometerForm first(none.book.session(), std::nullopt, QLocale::c());
    fill(first, "thermometerName", "T 1");
    first.findChild<QComboBox*>(QStringLiteral("thermometerHangs"))->setCurrentIndex(2);
    EXPECT_EQ(said(first),
              "The other bulb's thermometer is not known. Hang the pair up under “The pair in use”.");
}

TEST(InstrumentFormSentences, OfThePairInUse) {
    test::OpenBook book;
    ui::FittingForm form(book.session(), std::nullopt, QLocale::c());
    fill(form, "fittingFrom", "");
    EXPECT_EQ(said(form), "Write the date from which they hang there.");
    fill(form, "fittingFrom", "2026-11-01");
    form.findChild<QComboBox*>(QStringLiteral("fittingWet"))
        ->setCurrentIndex(form.findChild<QComboBox*>(QStringLiteral("fittingDry"))->currentIndex());
    EXPECT_EQ(said(form), "One thermometer can't be both bulbs. Choose another for one of them.");
    NoThermometers none;
    ui::FittingForm empty(none.book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(empty), "Write down the thermometers first, under “Thermometers”.");
}

TEST(InstrumentFormSentences, OfACorrection) {
    test::OpenBook book;
    ui::CorrectionForm form(book.session(), std::nullopt, QLocale::c());
    auto* points = form.findChild<QTableWidget*>(QStringLiteral("correctionPoints"));
    const auto put = [&](int row, const char* reading, const char* add) {
        points->setItem(row, 0, new QTableWidgetItem(QString::fromUtf8(reading)));
        points->setItem(row, 1, new QTableWidgetItem(QString::fromUtf8(add)));
    };
    EXPECT_EQ(said(form), "Write at least one point: a reading, and what to add to it.");
    put(0, "x", "0.1");
    EXPECT_EQ(said(form), "“x” is not a number: type the reading in line 1 as read, like 7.3.");
    put(0, "10", "x");
    EXPECT_EQ(said(form), "“x” is not a number: type the correction in line 1 as read, like 7.3.");
    put(0, "10", "15");
    EXPECT_EQ(said(form), "A correction of 15 is that of a broken thermometer. Look at line 1.");
    put(0, "10", "0.1");
    put(1, "10", "0.2");
    EXPECT_EQ(said(form), "Two points stand at the reading 10.0. Leave one of them out.");
    put(1, "20", "0.2");
    fill(form, "correctionUncertainty", "-0.1");
    EXPECT_EQ(said(form), "An uncertainty is not below zero.");
    fill(form, "correctionUncertainty", "0.1");
    EXPECT_EQ(said(form), "Write where the correction comes from: a certificate, an ice point.");
    fill(form, "correctionSource", "certificate");
    EXPECT_EQ(said(form), "");
    NoThermometers none;
    ui::CorrectionForm empty(none.book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(empty), "Write down the thermometer first, under “Thermometers”.");
}

TEST(InstrumentFormSentences, OfExposureAndCoefficient) {
    test::OpenBook book;
    ui::CoefficientForm form(book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(form), "Nothing differs yet from what is in force. Change a field, or close this.");
    fill(form, "coefficientFrom", "");
    EXPECT_EQ(said(form), "Write the date from which it holds.");
    fill(form, "coefficientFrom", "2026-11-01");
    auto* exposure = form.findChild<QComboBox*>(QStringLiteral("coefficientExposure"));
    exposure->setCurrentIndex(exposure->findData(static_cast<int>(psychrometry::Exposure::Own)));
    EXPECT_EQ(said(form),
              "Write the own coefficient, as in 7.99 for 7.99 × 10⁻⁴, or choose another exposure.");
    fill(form, "coefficientWater", "70");
    EXPECT_EQ(said(form), "A coefficient lies between 0 and 50 × 10⁻⁴ per degree; 6 to 12 is usual.");
    fill(form, "coefficientWater", "7");
    fill(form, "coefficientUncertainty", "120");
    EXPECT_EQ(said(form), "The uncertainty of the coefficient lies between 0 and 100 %.");
    fill(form, "coefficientUncertainty", "3");
    fill(form, "coefficientPressure", "1200");
    EXPECT_EQ(said(form), "The mean pressure at the station lies between 500 and 1080 hPa.");
    fill(form, "coefficientPressure", "");
    EXPECT_EQ(said(form), "");
}

TEST(InstrumentFormSentences, OfWickAndWater) {
    ui::WickForm form(std::nullopt, day(2026, 11, 22));
    fill(form, "wickDate", "2026-11-23");
    EXPECT_EQ(said(form), "Write it down once it has happened; this date is still to come.");
}

TEST(InstrumentFormSentences, OfAPairCheck) {
    test::OpenBook book;
    ui::PairCheckForm form(book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(form), "Write what at least one of them showed at the ice point, or both in the bath.");
    fill(form, "pairDate", "2026-12-24");
    EXPECT_EQ(said(form), "Write it down once it has happened; this date is still to come.");
    fill(form, "pairDate", "2026-11-20");
    form.findChild<QComboBox*>(QStringLiteral("pairWet"))
        ->setCurrentIndex(form.findChild<QComboBox*>(QStringLiteral("pairDry"))->currentIndex());
    EXPECT_EQ(said(form), "One thermometer can't be both bulbs. Choose another for one of them.");
    NoThermometers none;
    ui::PairCheckForm empty(none.book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(empty), "Write down the thermometers first, under “Thermometers”.");
}

TEST(InstrumentFormSentences, OfASaltCheck) {
    test::OpenBook book;
    ui::SaltCheckForm form(book.session(), std::nullopt, QLocale::c());
    EXPECT_EQ(said(form), "Write what the sensor showed over at least one solution.");
    fill(form, "salt3", "150");
    EXPECT_EQ(said(form), "150 is not a relative humidity. Look at the reading over NaCl, 75 %.");
    fill(form, "salt3", "75");
    EXPECT_EQ(said(form), "Write which sensor it was.");
    fill(form, "saltSensor", "S");
    fill(form, "saltDate", "2027-01-01");
    EXPECT_EQ(said(form), "Write it down once it has happened; this date is still to come.");
}

TEST(InstrumentFormSentences, OfAnotherInstrument) {
    test::OpenBook book;
    ui::SideBySideForm form(book.session(), std::nullopt);
    EXPECT_EQ(said(form), "Write what the other instrument is.");
    fill(form, "besideName", "R");
    fill(form, "besideTo", "2026-11-01");
    EXPECT_EQ(said(form), "The last day lies before the first.");
    fill(form, "besideTo", "");
    fill(form, "besideUncertainty", "40");
    EXPECT_EQ(said(form), "The uncertainty of a reference lies between 0 and 20 % RH.");
    fill(form, "besideUncertainty", "1");
    EXPECT_EQ(said(form), "");
}

TEST(InstrumentFormSentences, OfAReadingBeside) {
    test::OpenBook book;
    record::SideBySide other;
    other.id = record::Uuid::random();
    other.name = "R";
    other.from = day(2026, 3, 1);
    ASSERT_TRUE(ui::reviseFact<record::SideBySide>(book.session(), std::nullopt, other, {"A", ""},
                                                   QStringLiteral("R")));
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    const auto reading = [&] {
        const auto made = dialog.typed();
        return made ? std::string{} : made.error().toStdString();
    };
    fill(dialog, "besideDate", "2026-03-29"); // 01:30 was skipped in London
    fill(dialog, "besideClock", "01:30");
    EXPECT_EQ(reading(), "The clock never showed that time: it was put forward. Look at “01:30”.");
    fill(dialog, "besideDate", "2026-11-22");
    fill(dialog, "besideClock", "23:00");
    EXPECT_EQ(reading(), "That time is still to come. Look at date and time.");
    fill(dialog, "besideDate", "2026-11-21");
    EXPECT_EQ(reading(), "Write what the other instrument showed: its humidity, or both its bulbs.");
    fill(dialog, "besideHumidity", "165");
    EXPECT_EQ(reading(), "165 is not a relative humidity in per cent.");
    fill(dialog, "besideHumidity", "65");
    fill(dialog, "besideOwnDry", "20");
    EXPECT_EQ(reading(),
              "Write both bulbs of the station's pair, or neither: then the register's reading counts.");
    fill(dialog, "besideOwnWet", "15");
    fill(dialog, "besideWind", "13");
    EXPECT_EQ(reading(), "Wind is a whole number from 0 to 12, as Beaufort has it.");
    fill(dialog, "besideWind", "3");
    EXPECT_EQ(reading(), "");
}

} // namespace
