// SPDX-License-Identifier: GPL-3.0-or-later
// The whole register looked through as it is used: the real window over a real book, by keys.
#include "tests/support/open_book.h"
#include "ui/commands/judge_readings.h"
#include "ui/review/lines_model.h"
#include "ui/review/review_window.h"
#include "ui/review/review_words.h"
#include "ui/review/run_panel.h"
#include "ui/review/runs_model.h"

#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QApplication>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QtTest/QTest>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

class ReviewCase : public test::SessionCase {
protected:
    void SetUp() override {
        SessionCase::SetUp();
        fill(day(2025, 4, 1), day(2025, 5, 13));
        // Four mornings with the wet bulb far above the dry one, and one reading that is off the scale.
        for (const unsigned d : {5U, 6U, 7U, 8U}) {
            revise(day(2025, 5, d), 9h, "10.0", d % 2 == 0 ? "11.4" : "11.9");
        }
        revise(day(2025, 4, 20), 21h, "120.0", "10.0");
    }

    void revise(record::StationDate date, record::HourOfDay hour, const std::string& dry,
                const std::string& wet) {
        store::ObservationChange made = change(reading(date, hour, dry, wet));
        made.subject = at(date, hour).id();
        ASSERT_TRUE(session_->write(made).has_value());
    }

    void open() {
        window_ = std::make_unique<ReviewWindow>(*session_);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        QApplication::setActiveWindow(window_.get());
        window_->look();
        ASSERT_TRUE(QTest::qWaitFor([this] { return !window_->isLooking(); }, 60'000));
    }

    template <typename Widget>
    Widget& part(const char* name) {
        auto* found = window_->findChild<Widget*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }
    QListView& list() { return part<QListView>("runs"); }
    QTableView& table() { return part<QTableView>("readings"); }
    void key(QWidget& widget, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(&widget, key, modifiers);
    }
    /// The row of the group with so many readings.
    void choose(std::size_t open) {
        const auto& model = *window_->findChild<RunsModel*>();
        for (int row = 0; row < model.rowCount(); ++row) {
            if (model.run(row)->open == open) {
                list().setCurrentIndex(model.index(row, 0));
                list().setFocus();
                return;
            }
        }
        FAIL() << "no group of " << open;
    }
    /// Groups of wet above dry may fall apart by likely cause: what is judged here is the first group.
    std::vector<record::Uuid> asked() {
        std::vector<record::Uuid> ids;
        const auto& model = *window_->findChild<RunsModel*>();
        for (const RunLine& line : model.run(list().currentIndex().row())->lines) {
            if (line.isOpen()) {
                ids.push_back(line.checked.reading.stored.id());
            }
        }
        return ids;
    }
    record::StoredObservation stored(const record::Uuid& id) { return **session_->book().observation(id); }

    std::unique_ptr<ReviewWindow> window_;
};

TEST_F(ReviewCase, GroupsStandWorstFirstAndModelsKeepTheirRules) {
    open();
    auto* runs = window_->findChild<RunsModel*>();
    auto* lines = window_->findChild<LinesModel*>();
    QAbstractItemModelTester first(runs, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester second(lines, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_GE(runs->rowCount(), 2);
    EXPECT_EQ(runs->run(0)->found.lead.code, "off-scale");
    for (int row = 1; row < runs->rowCount(); ++row) {
        EXPECT_GE(runs->run(row - 1)->found.lead.severity, runs->run(row)->found.lead.severity);
    }
    EXPECT_TRUE(list().hasFocus());
    EXPECT_FALSE(list().model()->index(0, 0).data(Qt::AccessibleTextRole).toString().isEmpty());
    key(list(), Qt::Key_N);
    EXPECT_EQ(list().currentIndex().row(), 1);
    key(list(), Qt::Key_P);
    EXPECT_EQ(list().currentIndex().row(), 0);
    // The mark is told in words as well as drawn.
    EXPECT_EQ(lines->index(lines->firstOpen(), LinesModel::Mark).data(Qt::AccessibleTextRole).toString(),
              QStringLiteral("erroneous"));
}

TEST_F(ReviewCase, ARunIsJudgedByOneKeyWithItsReasonAndTakenBackAsOne) {
    open();
    const auto& runs = *window_->findChild<RunsModel*>();
    int largest = 0;
    for (int row = 0; row < runs.rowCount(); ++row) {
        largest = runs.run(row)->open > runs.run(largest)->open ? row : largest;
    }
    list().setCurrentIndex(runs.index(largest, 0));
    const auto ids = asked();
    ASSERT_GE(ids.size(), 2U);
    std::vector<record::Observation> before;
    for (const auto& id : ids) {
        before.push_back(stored(id).values);
    }
    const int groups = runs.rowCount();

    key(list(), Qt::Key_W);
    auto& why = part<QLineEdit>("why");
    ASSERT_TRUE(why.hasFocus());
    QTest::keyClicks(&why, QStringLiteral("dew every morning"));
    key(why, Qt::Key_Return);
    ASSERT_TRUE(list().hasFocus());
    key(list(), Qt::Key_D);
    for (const auto& id : ids) {
        EXPECT_EQ(stored(id).values.quality, record::Quality::Doubtful);
        EXPECT_EQ(stored(id).stamp.author.why, "judged doubtful: dew every morning");
        EXPECT_EQ(stored(id).stamp.author.who, "T");
    }
    EXPECT_EQ(runs.rowCount(), groups - 1) << "judged ones leave the list";
    EXPECT_EQ(session_->undoStack().count(), 1) << "one step for all";
    EXPECT_FALSE(part<QLabel>("stale").isVisible());

    key(list(), Qt::Key_Z, Qt::ControlModifier);
    for (std::size_t i = 0; i < ids.size(); ++i) {
        EXPECT_EQ(stored(ids[i]).values, before[i]);
    }
    EXPECT_EQ(runs.rowCount(), groups) << "asked again";
    EXPECT_FALSE(part<QLabel>("stale").isVisible()) << "our own undo is no news";
    key(list(), Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(runs.rowCount(), groups - 1);
    for (const auto& id : ids) {
        EXPECT_EQ(stored(id).values.quality, record::Quality::Doubtful);
    }
    EXPECT_TRUE(session_->book().verify()->sound());
}

TEST_F(ReviewCase, OnlyTheReadingsChosenAreJudged) {
    open();
    const auto& runs = *window_->findChild<RunsModel*>();
    int row = 0;
    while (row < runs.rowCount() && runs.run(row)->open < 2) {
        ++row;
    }
    ASSERT_LT(row, runs.rowCount());
    list().setCurrentIndex(runs.index(row, 0));
    const auto ids = asked();
    EXPECT_EQ(part<QLabel>("scope").text(), QStringLiteral("Judge all %1:").arg(ids.size()));
    table().setFocus();
    EXPECT_TRUE(part<QLabel>("scope").text().contains(QStringLiteral("1 chosen")));
    key(table(), Qt::Key_Up); // a neighbour, there for comparison only
    EXPECT_EQ(part<QLabel>("scope").text(), QStringLiteral("No reading is chosen."));
    key(table(), Qt::Key_S);
    for (const auto& id : ids) {
        EXPECT_EQ(stored(id).values.quality, record::Quality::NotJudged) << "judged without being chosen";
    }
    key(table(), Qt::Key_Down);
    key(table(), Qt::Key_S);
    EXPECT_EQ(stored(ids[0]).values.quality, record::Quality::Sound);
    for (std::size_t i = 1; i < ids.size(); ++i) {
        EXPECT_EQ(stored(ids[i]).values.quality, record::Quality::NotJudged);
    }
}

TEST_F(ReviewCase, ACauseAsksWhatThePaperSaysAndCorrectsKeepingWhatWasRead) {
    revise(day(2025, 4, 25), 9h, "23.4", "11.2"); // among readings of 12 to 16: ten high
    open();
    const auto& runs = *window_->findChild<RunsModel*>();
    int row = 0;
    const auto causes = [&] {
        std::size_t most = 0;
        for (const auto& finding : runs.run(row)->lines[0].checked.findings) {
            most += finding.causes.size();
        }
        for (const RunLine& line : runs.run(row)->lines) {
            for (const auto& finding : line.checked.findings) {
                most = std::max(most, line.isOpen() ? finding.causes.size() : 0);
            }
        }
        return most;
    };
    const record::Uuid id = at(day(2025, 4, 25), 9h).id();
    for (; row < runs.rowCount(); ++row) {
        list().setCurrentIndex(runs.index(row, 0));
        if (asked().front() == id && causes() > 0) {
            break;
        }
    }
    ASSERT_LT(row, runs.rowCount()) << "the planted slip is not asked about";
    const record::Observation read = stored(id).values;
    key(list(), Qt::Key_1);
    auto* panel = window_->findChild<RunPanel*>();
    ASSERT_EQ(panel->notes().size(), 1U);
    EXPECT_EQ(stored(id).values, read) << "nothing is changed before the paper was looked at";
    key(*panel->notes().front(), Qt::Key_2); // the paper says what stands here
    const record::StoredObservation now = stored(id);
    EXPECT_EQ(now.values.dry.value->value.toText(), "13.4");
    EXPECT_EQ(now.values.origin, record::Origin::Corrected);
    EXPECT_TRUE(QString::fromStdString(now.stamp.author.why).startsWith(QStringLiteral("slip at the")));
    const auto history = session_->book().history(id);
    EXPECT_EQ((*history)[history->size() - 2].values, read) << "what was read is kept";
    session_->undoStack().undo();
    EXPECT_EQ(stored(id).values, read);
}

TEST_F(ReviewCase, EnterOpensTheReadingInTheRegister) {
    open();
    QSignalSpy asked(window_.get(), &ReviewWindow::openInRegister);
    key(list(), Qt::Key_Return);
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked[0][0].value<record::ObservingHour>(), (record::ObservingHour{day(2025, 4, 20), 21h}));
}

TEST_F(ReviewCase, AChangeElsewhereIsSaidAndF5LooksAgain) {
    open();
    EXPECT_FALSE(part<QLabel>("stale").isVisible());
    write(reading(day(2025, 5, 14), 9h, "13.0", "11.0"));
    EXPECT_TRUE(part<QLabel>("stale").isVisible());
    const int groups = window_->findChild<RunsModel*>()->rowCount();
    key(list(), Qt::Key_F5);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !window_->isLooking(); }, 60'000));
    EXPECT_FALSE(part<QLabel>("stale").isVisible());
    EXPECT_EQ(window_->findChild<RunsModel*>()->rowCount(), groups);
}

TEST_F(ReviewCase, AReadingChangedBehindItsBackIsNotJudged) {
    open();
    const auto ids = asked();
    const auto seen = stored(ids.front());
    revise(day(2025, 4, 20), 21h, "12.0", "10.0"); // the person at the other window was quicker
    const auto done = JudgeReadings::perform(*session_, {seen}, record::Quality::Erroneous, {"T", "late"},
                                             QStringLiteral("late"));
    ASSERT_FALSE(done.has_value());
    EXPECT_EQ(done.error().kind, store::StoreErrorKind::ChangedMeanwhile);
    EXPECT_EQ(stored(ids.front()).values.quality, record::Quality::NotJudged);
}

TEST_F(ReviewCase, AllOrNoneAreStored) {
    open();
    const auto first = at(day(2025, 5, 1), 9h);
    auto second = at(day(2025, 5, 2), 9h);
    second.stamp.sequence = 1; // not what stands there
    const auto revisions = session_->book().verify()->revisions;
    EXPECT_FALSE(JudgeReadings::perform(*session_, {first, second}, record::Quality::Sound, {"T", ""},
                                        QStringLiteral("both"))
                     .has_value());
    EXPECT_EQ(session_->book().verify()->revisions, revisions);
    EXPECT_EQ(session_->undoStack().count(), 0);
}

TEST_F(ReviewCase, WhenAllIsAnsweredItSaysSoAndHowManyWereLookedAt) {
    open();
    for (int i = 0; i < 50 && window_->findChild<RunsModel*>()->rowCount() > 0; ++i) {
        key(list(), Qt::Key_S);
    }
    auto& said = part<QLabel>("said");
    EXPECT_TRUE(said.isVisible());
    EXPECT_TRUE(said.text().startsWith(QStringLiteral("Nothing to ask"))) << said.text().toStdString();
    EXPECT_TRUE(said.text().contains(QStringLiteral("86 readings"))) << said.text().toStdString();
    EXPECT_TRUE(part<QPushButton>("lookAgain").isVisible());
}

TEST_F(ReviewCase, EscapeStopsTheWorkAndLeavesNothing) {
    const QStringList files = QDir(folder_.path()).entryList(QDir::Files);
    const auto revisions = session_->book().verify()->revisions;
    window_ = std::make_unique<ReviewWindow>(*session_);
    window_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
    window_->look();
    ASSERT_TRUE(window_->isLooking());
    key(part<QPushButton>("cancel"), Qt::Key_Escape);
    ASSERT_TRUE(QTest::qWaitFor([this] { return !window_->isLooking(); }, 5'000));
    EXPECT_TRUE(part<QLabel>("said").text().startsWith(QStringLiteral("Stopped")));
    EXPECT_EQ(session_->book().verify()->revisions, revisions);
    EXPECT_EQ(QDir(folder_.path()).entryList(QDir::Files), files);
    // Gone in the middle of the work: waits for its thread and no more.
    window_->look();
    window_.reset();
    SUCCEED();
}

TEST_F(ReviewCase, EveryControlHasANameAndTheWindowIsUsableAt1280By720) {
    open();
    window_->resize(1240, 640);
    QTest::qWait(20);
    for (QWidget* widget : window_->findChildren<QWidget*>()) {
        if (!widget->isVisible() || (widget->focusPolicy() & Qt::TabFocus) == 0 ||
            widget->objectName().startsWith(QStringLiteral("qt_"))) {
            continue;
        }
        QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(told, nullptr);
        EXPECT_FALSE(told->text(QAccessible::Name).isEmpty())
            << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
    }
    EXPECT_GE(table().viewport()->height(), 100);
    EXPECT_LE(window_->minimumSizeHint().height(), 640);
    EXPECT_LE(window_->minimumSizeHint().width(), 1240);
}

TEST(ReviewWords, SpansOfDays) {
    const QLocale english(QLocale::English, QLocale::UnitedKingdom);
    EXPECT_EQ(spanWords(english, day(1881, 1, 3), day(1881, 1, 9)), QStringLiteral("3–9 Jan 1881"));
    EXPECT_EQ(spanWords(english, day(1881, 1, 3), day(1881, 1, 3)), QStringLiteral("3 Jan 1881"));
    EXPECT_EQ(spanWords(english, day(1881, 1, 28), day(1881, 2, 2)), QStringLiteral("28 Jan – 2 Feb 1881"));
    EXPECT_EQ(spanWords(english, day(1881, 12, 30), day(1882, 1, 2)),
              QStringLiteral("30 Dec 1881 – 2 Jan 1882"));
}

} // namespace

} // namespace wickbook::ui
