// SPDX-License-Identifier: GPL-3.0-or-later
// Whose initials are on offer: the deputy's in an absence with one, the usual hand's again afterwards, and
// never in place of what was typed.
#include "tests/ui/observe/observe_case.h"

#include <QLineEdit>

namespace wickbook::ui {

namespace {

using test::day;

class Deputy : public test::ObserveCase {
protected:
    void away(record::StationDate from, record::StationDate to) {
        record::StationFacts facts = book_.session().station().facts();
        facts.absences.push_back({record::Uuid::random(), from, to, "away", "EW", "", false});
        ASSERT_TRUE(book_.session().reviseFacts(facts, {"A", ""}));
    }
    [[nodiscard]] QLineEdit& initials() const {
        for (QLineEdit* edit : page_->findChildren<QLineEdit*>()) {
            if (edit->accessibleName().startsWith(QStringLiteral("observer"))) {
                return *edit;
            }
        }
        ADD_FAILURE() << "no field for the initials";
        std::abort();
    }
    void readsAt(record::StationDate date, int hour, const char* by) {
        record::Observation observation;
        const record::ObservingHour key{date, std::chrono::hours{hour}};
        record::placeInTime(observation, book_.session().station(),
                            *record::momentOf(book_.session().station(), key));
        observation.hour = key;
        observation.dry.value = units::ReadTemperature{{120, 1}, units::TemperatureUnit::Celsius};
        observation.wet.value = units::ReadTemperature{{100, 1}, units::TemperatureUnit::Celsius};
        observation.observer = by;
        store::ObservationChange change;
        change.values = observation;
        ASSERT_TRUE(book_.session().write(change).has_value());
    }
};

TEST_F(Deputy, IsProposedInAnAbsenceAndKeptWithTheReading) {
    book_.session().setObserver(QStringLiteral("AB"));
    away(day(2026, 11, 20), day(2026, 11, 30)); // entered while the page is open
    EXPECT_EQ(initials().text(), QStringLiteral("EW"));
    page_->focusEntry();
    field(EntryField::Dry)->setFocus();
    type(QStringLiteral("16.0"));
    press(Qt::Key_Return);
    field(EntryField::Wet)->setFocus();
    type(QStringLiteral("12.4"));
    for (int i = 0; i < 4 && !saved(); ++i) {
        press(Qt::Key_Return);
    }
    ASSERT_TRUE(saved());
    EXPECT_EQ(saved()->observer, "EW");
    EXPECT_EQ(initials().text(), QStringLiteral("EW"));
}

TEST_F(Deputy, GivesWayToInitialsThatWereTyped) {
    initials().setFocus();
    initials().selectAll();
    type(QStringLiteral("XY"));
    away(day(2026, 11, 20), day(2026, 11, 30));
    EXPECT_EQ(initials().text(), QStringLiteral("XY"));
    page_->openHour({day(2026, 11, 21), std::chrono::hours{9}});
    EXPECT_EQ(initials().text(), QStringLiteral("XY"));
}

TEST_F(Deputy, FollowsTheDateOfTheReading) {
    book_.session().setObserver(QStringLiteral("AB"));
    away(day(2026, 11, 1), day(2026, 11, 10));
    page_->openHour({day(2026, 11, 5), std::chrono::hours{9}});
    EXPECT_EQ(initials().text(), QStringLiteral("EW")) << "typed off late, it is still the deputy's";
    page_->openHour({day(2026, 11, 21), std::chrono::hours{9}});
    EXPECT_EQ(initials().text(), QStringLiteral("AB"));
}

TEST_F(Deputy, TheUsualHandIsBackAfterwardsUnlessTheDeputyReadsOn) {
    readsAt(day(2026, 11, 9), 9, "AB");
    readsAt(day(2026, 11, 10), 9, "EW");
    away(day(2026, 11, 10), day(2026, 11, 20));
    book_.session().setObserver(QStringLiteral("EW")); // who sat here last
    openPage();
    EXPECT_EQ(initials().text(), QStringLiteral("AB"));
    readsAt(day(2026, 11, 21), 9, "EW"); // a new observer, then
    openPage();
    EXPECT_EQ(initials().text(), QStringLiteral("EW"));
}

TEST_F(Deputy, WhoReadsAllTheSameIsNotWrittenOver) {
    away(day(2026, 11, 10), day(2026, 11, 30));
    readsAt(day(2026, 11, 21), 9, "AB");
    book_.session().setObserver(QStringLiteral("AB"));
    openPage();
    EXPECT_EQ(initials().text(), QStringLiteral("AB"));
}

} // namespace

} // namespace wickbook::ui
