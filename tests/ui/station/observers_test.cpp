// SPDX-License-Identifier: GPL-3.0-or-later
// Who has read, side by side on the Station page, over a real book: a usual hand, a holiday deputy, a new
// one.
#include "tests/support/open_book.h"
#include "ui/station/observers_section.h"
#include "ui/station/station_page.h"

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;
using test::day;
using Column = ui::ObserversSection::Column;

class Observers : public test::SessionCase {
protected:
    /// Mornings of these dates read by one hand, so many minutes late, the wet bulb ending in this digit.
    void reads(const char* by, record::StationDate from, int days, std::chrono::minutes late, int digit) {
        std::vector<store::ObservationChange> changes;
        for (int i = 0; i < days; ++i) {
            record::Observation one = reading(from + date::days{i}, 9h, "15." + std::to_string(i % 10),
                                              "12." + std::to_string(digit));
            one.instant += late;
            one.observer = by;
            changes.push_back(change(one));
        }
        ASSERT_TRUE(session_->writeAll(changes).has_value());
    }
    void openPage() {
        page_ = std::make_unique<ui::StationPage>(*session_);
        page_->resize(1200, 800);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        table_ = page_->findChild<QTableWidget*>(QStringLiteral("observers"));
        ASSERT_NE(table_, nullptr);
    }
    void unfold() {
        auto& fold = *page_->findChild<QPushButton*>(QStringLiteral("observersFold"));
        fold.setFocus();
        QTest::keyClick(&fold, Qt::Key_Space);
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return !status().startsWith(QStringLiteral("Counting")); }, 20'000));
    }
    QString status() const { return page_->findChild<QLabel*>(QStringLiteral("observersStatus"))->text(); }
    QString cell(int row, int column) const { return table_->item(row, column)->text(); }

    std::unique_ptr<ui::StationPage> page_;
    QTableWidget* table_ = nullptr;
};

// Story 5 of the trade: a holiday deputy, then a new observer; attribution kept, habits comparable.
TEST_F(Observers, AreComparableAfterADeputyAndANewHand) {
    record::StationFacts facts = session_->station().facts();
    facts.absences.push_back(
        {record::Uuid::random(), day(2025, 2, 1), day(2025, 2, 14), "away", "EW", "", false});
    ASSERT_TRUE(session_->reviseFacts(facts, {"T", ""}));
    reads("T", day(2025, 1, 1), 31, 0min, 3);
    reads("EW", day(2025, 2, 1), 14, 6min, 5);
    reads("N", day(2025, 2, 15), 20, -2min, 7);
    openPage();
    unfold();
    ASSERT_EQ(table_->rowCount(), 3);
    EXPECT_EQ(cell(0, Column::Initials), QStringLiteral("T"));
    EXPECT_EQ(cell(0, Column::Readings), QStringLiteral("31"));
    EXPECT_EQ(cell(0, Column::First), QStringLiteral("1 Jan 2025"));
    EXPECT_EQ(cell(0, Column::Last), QStringLiteral("31 Jan 2025"));
    EXPECT_EQ(cell(0, Column::MinutesOff), QStringLiteral("not written down"));
    EXPECT_EQ(cell(0, Column::Deputy), QString());
    EXPECT_EQ(cell(1, Column::Initials), QStringLiteral("EW"));
    EXPECT_EQ(cell(1, Column::Deputy), QStringLiteral("14 readings"));
    EXPECT_EQ(cell(1, Column::MinutesOff), QStringLiteral("6.0 (6.0 late)"));
    EXPECT_TRUE(cell(1, Column::RoundWet).startsWith(QStringLiteral("100"))) << "every wet bulb ends in 5";
    EXPECT_TRUE(cell(0, Column::RoundWet).startsWith(QStringLiteral("0")));
    EXPECT_EQ(cell(2, Column::MinutesOff), QStringLiteral("2.0 (2.0 early)"));
    EXPECT_EQ(cell(2, Column::Favours), QString()) << "20 readings tell of no habit";

    // A reading more is counted while the list is open, and a judgement too.
    reads("N", day(2025, 4, 1), 1, 0min, 1);
    EXPECT_TRUE(
        QTest::qWaitFor([this] { return cell(2, Column::Readings) == QStringLiteral("21"); }, 20'000));
    store::ObservationChange judged;
    const record::StoredObservation line = at(day(2025, 2, 3), 9h);
    judged.subject = line.id();
    judged.values = line.values;
    judged.values.quality = record::Quality::Doubtful;
    ASSERT_TRUE(session_->write(judged).has_value());
    EXPECT_TRUE(QTest::qWaitFor(
        [this] { return cell(1, Column::Doubtful).startsWith(QStringLiteral("1 (7.1")); }, 20'000));
    EXPECT_EQ(at(day(2025, 2, 3), 9h).values.observer, "EW") << "who judged is not who read";
}

TEST_F(Observers, OfAnEmptyBookAreNobody) {
    openPage();
    unfold();
    EXPECT_EQ(status(), QStringLiteral("Nobody has read yet."));
    EXPECT_FALSE(table_->isVisible());
}

TEST_F(Observers, FoldedAwayNothingIsCounted) {
    reads("T", day(2025, 1, 1), 31, 0min, 3);
    openPage();
    EXPECT_FALSE(table_->isVisible());
    EXPECT_EQ(table_->rowCount(), 0);
    reads("T", day(2025, 2, 1), 3, 0min, 3);
    QTest::qWait(50);
    EXPECT_EQ(table_->rowCount(), 0);
}

} // namespace
