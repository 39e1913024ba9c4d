// SPDX-License-Identifier: GPL-3.0-or-later
// Settings of the window, the window made anew with its book, and the log that may be sent.
#include "tests/support/open_book.h"
#include "tests/support/silent_prompts.h"
#include "ui/window/log_dialog.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/preferences_dialog.h"
#include "ui/window/trouble_log.h"
#include "ui/window/window_settings.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QSettings>
#include <QSplitter>
#include <QTemporaryDir>
#include <QTest>

namespace {

using namespace wickbook;

class PreferencesTest : public ::testing::Test {
protected:
    QTemporaryDir folder_;
    QString file_ = folder_.filePath(QStringLiteral("window.ini"));
    ui::WindowSettings settings_{file_};
    test::SilentPrompts prompts_;
    ui::Session::Clock clock_ = std::make_shared<record::SystemClock>();
};

TEST_F(PreferencesTest, AreKept) {
    EXPECT_EQ(settings_.preferences(), ui::Preferences{});
    const ui::Preferences wanted{QStringLiteral("de"), ui::Shade::Dark, 150};
    settings_.setPreferences(wanted);
    EXPECT_EQ(ui::WindowSettings(file_).preferences(), wanted);
}

TEST_F(PreferencesTest, ValuesThatCannotBeAreTheUsualOnes) {
    {
        QSettings broken(file_, QSettings::IniFormat);
        broken.setValue(QStringLiteral("window/language"), QStringLiteral("../../etc"));
        broken.setValue(QStringLiteral("window/shade"), QStringLiteral("pink"));
        broken.setValue(QStringLiteral("window/letters"), QStringLiteral("900000"));
    }
    const ui::Preferences found = settings_.preferences();
    EXPECT_TRUE(found.language.isEmpty());
    EXPECT_EQ(found.shade, ui::Shade::AsDesktop);
    EXPECT_EQ(found.letters, ui::kLargestLetters);
}

TEST_F(PreferencesTest, TheDialogShowsAndGivesBack) {
    const ui::Preferences now{QStringLiteral("fr"), ui::Shade::Light, 125};
    ui::PreferencesDialog dialog(now);
    EXPECT_EQ(dialog.chosen(), now);
    dialog.findChild<QComboBox*>(QStringLiteral("settingLetters"))->setCurrentIndex(4);
    EXPECT_EQ(dialog.chosen().letters, 200);
}

TEST_F(PreferencesTest, OtherSettingsMakeTheWindowAnewWithItsBookAndPage) {
    ui::MainWindow::Anew before;
    QString book;
    {
        ui::MainWindow window(settings_, prompts_, clock_);
        window.show();
        ASSERT_TRUE(window.openSample());
        book = window.pages()->session().path();
        window.pages()->turnTo(ui::PageSet::Month);
        window.usePreferences(settings_.preferences()); // the same: nothing happens
        EXPECT_TRUE(window.isVisible());
        EXPECT_FALSE(window.takeAnew().has_value());
        window.usePreferences({QStringLiteral("de"), ui::Shade::AsDesktop, 100});
        EXPECT_FALSE(window.isVisible());
        auto anew = window.takeAnew();
        ASSERT_TRUE(anew.has_value());
        before = std::move(*anew);
    }
    ASSERT_TRUE(QFile::exists(book)) << "the sample station's folder has gone with the window";
    ui::MainWindow window(settings_, prompts_, clock_);
    window.show();
    window.resume(std::move(before));
    ASSERT_NE(window.pages(), nullptr);
    EXPECT_EQ(window.pages()->session().path(), book);
    EXPECT_EQ(window.pages()->current(), static_cast<int>(ui::PageSet::Month));
}

TEST_F(PreferencesTest, TheHalvesOfAPageStayDividedAsTheyWere) {
    QList<int> sizes;
    {
        ui::MainWindow window(settings_, prompts_, clock_);
        window.resize(1200, 800);
        window.show();
        ASSERT_TRUE(window.openSample());
        window.pages()->turnTo(ui::PageSet::Month);
        QTest::qWait(50);
        auto* halves = window.findChild<QSplitter*>(QStringLiteral("monthHalves"));
        ASSERT_NE(halves, nullptr);
        const QList<int> asMade = halves->sizes();
        halves->setSizes({asMade[0] + 40, asMade[1] - 40});
        sizes = halves->sizes();
        EXPECT_NE(sizes, asMade);
        window.close();
    }
    ui::MainWindow window(settings_, prompts_, clock_);
    window.resize(1200, 800);
    window.show();
    ASSERT_TRUE(window.openSample());
    window.pages()->turnTo(ui::PageSet::Month);
    QTest::qWait(50);
    EXPECT_EQ(window.findChild<QSplitter*>(QStringLiteral("monthHalves"))->sizes(), sizes);
}

TEST(TroubleLogTest, HoldsNoFoldersAndStaysSmall) {
    EXPECT_EQ(ui::withoutPaths(QStringLiteral("can't open /home/ann/My station/hill.wickbook")),
              QStringLiteral("can't open …"));
    EXPECT_EQ(ui::withoutPaths(QStringLiteral("“/tmp/a b.wickbook” is full")), QStringLiteral("“…” is full"));
    EXPECT_EQ(ui::withoutPaths(QStringLiteral("kind 3: disk I/O error (10)")),
              QStringLiteral("kind 3: disk I/O error (10)"));
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("state/wickbook.log"));
    {
        const ui::TroubleLog log(file);
        ui::TroubleLog::note(QStringLiteral("first"));
        qWarning("the toolkit says /usr/lib/x.so");
        EXPECT_TRUE(log.text().contains(QStringLiteral("first")));
        EXPECT_TRUE(log.text().contains(QStringLiteral("toolkit: the toolkit says …")));
        for (int i = 0; i < 4'000; ++i) {
            ui::TroubleLog::note(QString(80, QLatin1Char('x')));
        }
    }
    ui::TroubleLog::note(QStringLiteral("nobody listens"));
    {
        const ui::TroubleLog log(file);
        EXPECT_LT(QFile(file).size(), 110'000);
        EXPECT_FALSE(log.text().contains(QStringLiteral("nobody listens")));
    }
}

TEST(LogDialogTest, SaysWhereItCouldNotBeSaved) {
    const QTemporaryDir folder;
    const ui::TroubleLog log(folder.filePath(QStringLiteral("wickbook.log")));
    ui::TroubleLog::note(QStringLiteral("a line"));
    ui::LogDialog dialog;
    auto* said = dialog.findChild<QLabel*>(QStringLiteral("logSaid"));
    dialog.keepAs(folder.filePath(QStringLiteral("not/there.txt")));
    EXPECT_TRUE(said->text().startsWith(QStringLiteral("The log could not be saved (")))
        << qPrintable(said->text());
    dialog.keepAs(folder.filePath(QStringLiteral("log.txt")));
    QFile kept(folder.filePath(QStringLiteral("log.txt")));
    ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
    EXPECT_TRUE(kept.readAll().contains("a line"));
}

TEST(TroubleLogTest, WhereItCannotBeWrittenTheProgramGoesOn) {
    const ui::TroubleLog log(QStringLiteral("/proc/nowhere/wickbook.log"));
    ui::TroubleLog::note(QStringLiteral("lost"));
    EXPECT_TRUE(log.text().isEmpty());
}

} // namespace
