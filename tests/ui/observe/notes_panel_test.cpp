// SPDX-License-Identifier: GPL-3.0-or-later
// Marginal notes answered by keys: a cause is taken only after asking what the paper says.
#include "ui/observe/notes_panel.h"
#include "ui/style/marginal_note.h"

#include <QApplication>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace {

using namespace wickbook;

checks::SpokenNote swappedNote() {
    checks::SpokenNote note;
    note.lead.code = "wet-above-dry";
    note.lead.severity = checks::Severity::Doubtful;
    note.lead.root = checks::Root::Pair;
    checks::LikelyCause cause;
    cause.code = "swapped";
    cause.dryCelsius = 16.4;
    cause.wetCelsius = 14.2;
    cause.humidityPercent = 78.0;
    cause.dryRead = units::ReadTemperature{{164, 1}, units::TemperatureUnit::Celsius};
    cause.wetRead = units::ReadTemperature{{142, 1}, units::TemperatureUnit::Celsius};
    note.lead.causes.push_back(cause);
    return note;
}

class NotesPanelTest : public ::testing::Test {
protected:
    void SetUp() override {
        panel_.resize(420, 300);
        panel_.show();
        QApplication::setActiveWindow(&panel_);
        ASSERT_TRUE(QTest::qWaitForWindowActive(&panel_));
        panel_.showNotes({swappedNote()}, units::TemperatureUnit::Celsius);
        QObject::connect(&panel_, &ui::NotesPanel::causeTaken, &panel_,
                         [this](const checks::LikelyCause& cause, const QString&, bool paperSaysSo) {
                             taken_ = QString::fromStdString(cause.code) +
                                      (paperSaysSo ? QStringLiteral(" keys") : QStringLiteral(" read"));
                         });
    }
    static void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }

    ui::NotesPanel panel_;
    QString taken_;
};

TEST_F(NotesPanelTest, ShowsTheCauseWithItsHumidity) {
    ASSERT_EQ(panel_.notes().size(), 1U);
    const ui::NoteText& text = panel_.notes().front()->text();
    EXPECT_FALSE(text.title.isEmpty());
    EXPECT_FALSE(text.wrong);
    ASSERT_EQ(text.causes.size(), 1U);
    EXPECT_TRUE(text.causes.front().humidity.startsWith(QStringLiteral("78")));
}

TEST_F(NotesPanelTest, KeyTakesTheCauseAfterAskingThePaper) {
    panel_.focusFirst();
    press(Qt::Key_1);
    EXPECT_TRUE(taken_.isEmpty()) << "the paper must be asked first";
    press(Qt::Key_2);
    EXPECT_EQ(taken_, QStringLiteral("swapped read"));
    EXPECT_TRUE(panel_.notes().empty());
}

TEST_F(NotesPanelTest, NeitherBringsTheNotesBack) {
    panel_.focusFirst();
    press(Qt::Key_1);
    press(Qt::Key_Return);
    EXPECT_TRUE(taken_.isEmpty());
    EXPECT_EQ(panel_.notes().size(), 1U);
}

TEST_F(NotesPanelTest, EnterKeepsTheReading) {
    QSignalSpy kept(&panel_, &ui::NotesPanel::readRightChosen);
    panel_.focusFirst();
    press(Qt::Key_Return);
    EXPECT_EQ(kept.count(), 1);
}

TEST_F(NotesPanelTest, KeyWithoutACauseDoesNothing) {
    panel_.focusFirst();
    press(Qt::Key_3);
    EXPECT_TRUE(taken_.isEmpty());
    EXPECT_EQ(panel_.notes().size(), 1U);
}

} // namespace
