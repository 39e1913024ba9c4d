// SPDX-License-Identifier: GPL-3.0-or-later
// Another instrument beside the station's: typed, brought in from a file, and what comes of it.
#include "core/psychrometry/psychrometer.h"
#include "tests/ui/instruments/instrument_case.h"
#include "ui/commands/revise_facts.h"
#include "ui/instruments/beside_dialog.h"

#include <QFile>

#include <random>

namespace {

using namespace wickbook;
using test::day;

constexpr double kTruth = 7.2e-4; ///< the station's true coefficient in these invented pairs, per kelvin

class BesideCase : public test::InstrumentCase {
protected:
    record::SideBySide announce(record::BesidePurpose purpose) {
        record::SideBySide other;
        other.id = record::Uuid::random();
        other.name = "invented reference";
        other.purpose = purpose;
        other.from = day(2026, 10, 1);
        other.humidityUncertainty = 1.0;
        EXPECT_TRUE(ui::reviseFact<record::SideBySide>(book.session(), std::nullopt, other, {"A", ""},
                                                       QStringLiteral("announced")));
        return other;
    }

    /// A CSV of a reference three minutes after every reading, with the humidity that the true coefficient
    /// gives.
    QString referenceFile(const std::vector<record::ObservingHour>& hours, double pressure) {
        const QString path = book.folder() + QStringLiteral("/reference.csv");
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write("Time,RH,Wind,Battery\n");
        for (const record::ObservingHour& hour : hours) {
            const auto stored = *book.at(hour.date, static_cast<int>(hour.hour.count() / 60));
            const auto dry = stored.dry.value->temperature();
            const auto wet = stored.wet.value->temperature();
            const auto e = psychrometry::vapourPressure(dry, wet, psychrometry::Surface::Water,
                                                        units::Pressure::fromHectopascals(pressure),
                                                        psychrometry::Coefficient{kTruth, 1.0, 0.0});
            const double humidity = psychrometry::relativeHumidity(*e, dry)->percent();
            file.write((record::instantText(stored.instant + std::chrono::minutes{3}) + "," +
                        std::to_string(humidity).substr(0, 7) + ",2,12.6\n")
                           .c_str());
        }
        file.write("2026-11-21T03:00:00Z,55,2,12.5\n"); // nothing of the station's beside it
        file.write("not a time,55,2,12.5\n");
        return path;
    }

    std::vector<record::ObservingHour> keepPairs(int days) {
        std::vector<record::ObservingHour> hours;
        for (int i = 0; i < days; ++i) {
            for (const int hour : {9, 21}) {
                // Depressions from 3.0 to 8.9 °C, all above 0 °C.
                book.keep(day(2026, 10, 1) + date::days{i}, hour, {220 + i, 1},
                          {190 - (i * 2 + hour) % 60 + i, 1});
                hours.push_back({day(2026, 10, 1) + date::days{i}, std::chrono::hours{hour}});
            }
        }
        return hours;
    }
};

TEST_F(BesideCase, AFileOfAReferenceGivesTheOwnCoefficient) {
    const auto hours = keepPairs(25);
    const auto other = announce(record::BesidePurpose::Reference);
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    dialog.show();
    dialog.bringIn(referenceFile(hours, 1013.25));
    const QString said = on<QLabel>(dialog, "besideMessage").text();
    EXPECT_TRUE(said.contains(QStringLiteral("50 readings came in"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("1 have no reading of the station"))) << said.toStdString();
    EXPECT_TRUE(said.contains(QStringLiteral("1 lines could not be read"))) << said.toStdString();
    const QString answer = on<QLabel>(dialog, "besideAnswer").text();
    EXPECT_TRUE(answer.contains(QStringLiteral("coefficient 7.20"))) << answer.toStdString();
    EXPECT_TRUE(answer.contains(QStringLiteral("enough to use it"))) << answer.toStdString();
    EXPECT_EQ(on<QTableWidget>(dialog, "besideReadings").rowCount(), 50);

    // Once more the same file brings nothing.
    dialog.bringIn(book.folder() + QStringLiteral("/reference.csv"));
    EXPECT_TRUE(on<QLabel>(dialog, "besideMessage").text().contains(QStringLiteral("50 were there already")));

    // Used from a date on, humidity agrees with the reference from then on and not before.
    QTimer::singleShot(0, &dialog, [this] {
        auto* form = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(form, nullptr);
        type(*form, "coefficientFrom", "2026-10-10");
        keep(*form);
    });
    on<QPushButton>(dialog, "besideUse").click();
    const auto& facts = book.session().station().facts();
    ASSERT_TRUE(facts.periods.back().ownCoefficient);
    EXPECT_NEAR(facts.periods.back().ownCoefficient->waterPerKelvin, kTruth, 2e-6);
    const auto answerAfter = desk::besideReference(book.session().book(), book.session().station(), other);
    ASSERT_TRUE(answerAfter);
    for (const auto& each : answerAfter->spread.differences) {
        const bool late = answerAfter->readings[each.index].instant >
                          record::startOfDate(day(2026, 10, 10), book.session().station());
        EXPECT_EQ(std::abs(each.difference()) < 0.1, late);
    }
    // Three undos: coefficient, readings; the announcement stays.
    book.session().undoStack().undo();
    EXPECT_FALSE(book.session().station().facts().periods.back().ownCoefficient);
    book.session().undoStack().undo();
    EXPECT_EQ(on<QTableWidget>(dialog, "besideReadings").rowCount(), 0);
    EXPECT_FALSE(on<QPushButton>(dialog, "besideUse").isEnabled());
}

TEST_F(BesideCase, ThinEvidenceIsNotUsed) {
    const auto hours = keepPairs(5);
    const auto other = announce(record::BesidePurpose::Reference);
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    dialog.bringIn(referenceFile(hours, 1013.25));
    const QString answer = on<QLabel>(dialog, "besideAnswer").text();
    EXPECT_TRUE(answer.contains(QStringLiteral("not enough to use it"))) << answer.toStdString();
    EXPECT_TRUE(answer.contains(QStringLiteral("30 are needed"))) << answer.toStdString();
    EXPECT_FALSE(on<QPushButton>(dialog, "besideUse").isEnabled());
}

TEST_F(BesideCase, TypedByKeysAndKeptByEnter) {
    keepPairs(2);
    const auto other = announce(record::BesidePurpose::Reference);
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    dialog.show();
    auto& clock = on<QLineEdit>(dialog, "besideClock");
    const auto enter = [&] {
        QTest::keyClick(&clock, Qt::Key_Return);
        return on<QLabel>(dialog, "besideMessage").text();
    };
    EXPECT_FALSE(enter().isEmpty()); // no time yet
    on<QLineEdit>(dialog, "besideDate").setText(QStringLiteral("2026-10-01"));
    clock.setText(QStringLiteral("10:03")); // 09 UTC is 10 by the clock in summer time
    EXPECT_TRUE(enter().contains(QStringLiteral("what the other instrument showed")));
    on<QLineEdit>(dialog, "besideHumidity").setText(QStringLiteral("165"));
    EXPECT_TRUE(enter().contains(QStringLiteral("not a relative humidity")));
    on<QLineEdit>(dialog, "besideHumidity").setText(QStringLiteral("72,5"));
    on<QLineEdit>(dialog, "besideWind").setText(QStringLiteral("2.5"));
    EXPECT_TRUE(enter().contains(QStringLiteral("whole number from 0 to 12")));
    on<QLineEdit>(dialog, "besideWind").setText(QStringLiteral("2"));
    on<QLineEdit>(dialog, "besideOwnDry").setText(QStringLiteral("20.1"));
    EXPECT_TRUE(enter().contains(QStringLiteral("both bulbs of the station's pair, or neither")));
    on<QLineEdit>(dialog, "besideOwnDry").clear();
    EXPECT_EQ(enter(), QStringLiteral("Kept."));
    EXPECT_EQ(book.session().station().facts().besideReadings.size(), 1U);
    EXPECT_TRUE(on<QLineEdit>(dialog, "besideHumidity").text().isEmpty());

    clock.setText(QStringLiteral("14:00"));
    on<QLineEdit>(dialog, "besideHumidity").setText(QStringLiteral("60"));
    EXPECT_TRUE(enter().contains(QStringLiteral("no reading within five minutes")));
    // Delete takes one back, Ctrl+Z brings it again.
    auto& table = on<QTableWidget>(dialog, "besideReadings");
    table.setCurrentCell(1, 0);
    QTest::keyClick(&table, Qt::Key_Delete);
    EXPECT_EQ(table.rowCount(), 1);
    QTest::keyClick(&dialog, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(table.rowCount(), 2);
}

// A new screen 400 m away stands beside the old for a while: it reads 0.6 °C warmer, so the record breaks.
TEST_F(BesideCase, AnOverlapDecidesTheJoin) {
    const auto hours = keepPairs(25);
    const auto other = announce(record::BesidePurpose::Overlap);
    std::vector<ui::FactEdit> edits;
    for (const record::ObservingHour& hour : hours) {
        const auto stored = *book.at(hour.date, static_cast<int>(hour.hour.count() / 60));
        record::BesideReading reading;
        reading.id = record::Uuid::random();
        reading.comparison = other.id;
        reading.instant = stored.instant + std::chrono::minutes{2};
        reading.otherDry = stored.dry.value;
        reading.otherDry->value.mantissa += 6;
        reading.otherWet = stored.wet.value;
        reading.otherWet->value.mantissa += 4;
        edits.push_back({reading.id, std::optional{reading}});
    }
    ASSERT_TRUE(ui::ReviseFacts::perform(book.session(), edits, {"A", ""}, QStringLiteral("readings")));
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    const QString answer = on<QLabel>(dialog, "besideAnswer").text();
    EXPECT_TRUE(answer.contains(QStringLiteral("the record breaks here"))) << answer.toStdString();
    EXPECT_TRUE(answer.contains(QStringLiteral("+0.60"))) << answer.toStdString();
    EXPECT_TRUE(answer.contains(QStringLiteral("50 common readings in 1 of the 12 months")))
        << answer.toStdString();
}

TEST_F(BesideCase, AnOverlapThatAgreesJoinsTheRecords) {
    const auto hours = keepPairs(25);
    const auto other = announce(record::BesidePurpose::Overlap);
    std::vector<ui::FactEdit> edits;
    for (const record::ObservingHour& hour : hours) {
        const auto stored = *book.at(hour.date, static_cast<int>(hour.hour.count() / 60));
        record::BesideReading reading;
        reading.id = record::Uuid::random();
        reading.comparison = other.id;
        reading.instant = stored.instant;
        reading.otherDry = stored.dry.value;
        reading.otherWet = stored.wet.value;
        edits.push_back({reading.id, std::optional{reading}});
    }
    ASSERT_TRUE(ui::ReviseFacts::perform(book.session(), edits, {"A", ""}, QStringLiteral("readings")));
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    EXPECT_TRUE(
        on<QLabel>(dialog, "besideAnswer").text().contains(QStringLiteral("may be joined as they are")));
    auto& join = on<QPushButton>(dialog, "besideJoin");
    join.click();
    EXPECT_TRUE(on<QLabel>(dialog, "besideMessage")
                    .text()
                    .contains(QStringLiteral("no change of place or exposure yet")));

    record::PeriodChange moved;
    moved.id = record::Uuid::random();
    moved.from = record::startOfDate(day(2026, 11, 1), book.session().station());
    moved.position = record::Position{52.0036, -1.0};
    ASSERT_TRUE(ui::reviseFact<record::PeriodChange>(book.session(), std::nullopt, moved, {"A", ""},
                                                     QStringLiteral("m")));
    EXPECT_NE(book.session().station().periods().front().series,
              book.session().station().periods().back().series);
    join.click();
    EXPECT_TRUE(
        on<QLabel>(dialog, "besideMessage").text().contains(QStringLiteral("go on across the change")));
    EXPECT_EQ(book.session().station().periods().front().series,
              book.session().station().periods().back().series);
    EXPECT_EQ(book.session().station().facts().sideBySides.front().decision, "joined");
    join.click();
    EXPECT_TRUE(on<QLabel>(dialog, "besideMessage").text().contains(QStringLiteral("joined already")));
    book.session().undoStack().undo();
    EXPECT_NE(book.session().station().periods().front().series,
              book.session().station().periods().back().series);
}

TEST_F(BesideCase, ComparisonGoesAndComesWithItsReadings) {
    const auto hours = keepPairs(3);
    const auto other = announce(record::BesidePurpose::Reference);
    {
        ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
        dialog.bringIn(referenceFile(hours, 1013.25));
    }
    auto& list = open("sideBySide");
    list.setCurrentRow(0);
    QTest::keyClick(&list, Qt::Key_Delete);
    EXPECT_TRUE(book.session().station().facts().besideReadings.empty());
    EXPECT_TRUE(book.session().station().facts().sideBySides.empty());
    book.session().undoStack().undo();
    EXPECT_EQ(book.session().station().facts().besideReadings.size(), 6U);
    EXPECT_EQ(book.session().station().facts().sideBySides.size(), 1U);
}

TEST_F(BesideCase, FilesThatSayNothingAreRefusedInASentence) {
    const auto other = announce(record::BesidePurpose::Reference);
    ui::BesideDialog dialog(book.session(), other.id, QLocale::c());
    const auto said = [&](const char* text) {
        const QString path = book.folder() + QStringLiteral("/other.csv");
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        file.close();
        dialog.bringIn(path);
        return on<QLabel>(dialog, "besideMessage").text();
    };
    EXPECT_TRUE(said("").contains(QStringLiteral("empty")));
    EXPECT_TRUE(said("a,b\n1,2\n").contains(QStringLiteral("must name the columns")));
    EXPECT_TRUE(said("time,rh\n").contains(QStringLiteral("nothing below")));
    dialog.bringIn(book.folder() + QStringLiteral("/none.csv"));
    EXPECT_TRUE(on<QLabel>(dialog, "besideMessage").text().contains(QStringLiteral("can't be opened")));
    EXPECT_TRUE(book.session().station().facts().besideReadings.empty());
}

} // namespace
