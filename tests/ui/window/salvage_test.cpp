// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged book in the window: from the sentence to the new book, by keys alone.
#include "tests/support/open_book.h"
#include "ui/text/salvage_words.h"
#include "ui/window/first_start_page.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/prompts.h"
#include "ui/window/salvage_dialog.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTest>
#include <QTimer>

namespace {

using namespace wickbook;
using test::day;

class SalvagePrompts final : public ui::Prompts {
public:
    QString newBookPath(QWidget*, const QString& suggestedName, const QString& folder) override {
        begunIn = folder;
        suggested = suggestedName;
        return fresh;
    }
    QString bookToOpen(QWidget*) override { return damaged; }
    QString fresh;
    QString damaged;
    QString suggested;
    QString begunIn;
};

class SalvageWindowTest : public ::testing::Test {
protected:
    void SetUp() override {
        damaged_ = folder_.filePath(QStringLiteral("hill.wickbook"));
        prompts_.fresh = folder_.filePath(QStringLiteral("fresh.wickbook"));
        prompts_.damaged = damaged_;
        test::OpenBook book;
        for (int date = 1; date <= 20; ++date) {
            book.keep(day(2026, 11, static_cast<unsigned>(date)), 9, {100 + date, 1}, {90 + date, 1});
        }
        const QString path = book.path();
        book.close();
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        sound_ = file.readAll();
    }
    void put(const QByteArray& bytes) {
        QFile file(damaged_);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }
    [[nodiscard]] QByteArray bytesNow() const {
        QFile file(damaged_);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
    }
    /// The reading of the 5th altered, that of the 7th no JSON any more.
    [[nodiscard]] QByteArray hurt() const {
        QByteArray bytes = sound_;
        const auto value = bytes.indexOf("\"dry\":[105,1");
        const auto other = bytes.indexOf("\"dry\":[107,1");
        EXPECT_GT(value, 0);
        EXPECT_GT(other, 0);
        bytes.replace(value, 12, "\"dry\":[905,1");
        bytes.replace(other, 12, "????????????");
        return bytes;
    }
    void openWindow() {
        window_ = std::make_unique<ui::MainWindow>(settings_, prompts_, clock_);
        window_->show();
        QApplication::setActiveWindow(window_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }
    /// Drives the dialog once it stands there; it blocks the caller until it is closed.
    template <typename Drive>
    void whenDialogShows(Drive drive) {
        QTimer::singleShot(0, [this, drive] {
            auto* dialog = qobject_cast<ui::SalvageDialog*>(QApplication::activeModalWidget());
            ++asked_;
            if (dialog == nullptr && asked_ < 100) {
                whenDialogShows(drive);
                return;
            }
            ASSERT_NE(dialog, nullptr);
            drive(*dialog);
        });
    }
    static QString text(const ui::SalvageDialog& dialog) {
        return dialog.findChild<QLabel*>(QStringLiteral("salvageSentence"))->text() + QStringLiteral("\n") +
               dialog.findChild<QPlainTextEdit*>(QStringLiteral("salvageDetails"))->toPlainText();
    }
    static void begin(ui::SalvageDialog& dialog) {
        auto* open = dialog.findChild<QPushButton*>(QStringLiteral("salvageOpen"));
        auto* name = dialog.findChild<QPushButton*>(QStringLiteral("salvageBegin"));
        QApplication::setActiveWindow(&dialog);
        ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
        ASSERT_TRUE(QTest::qWaitFor([&] { return name->hasFocus(); }, 5'000));
        QTest::keyClick(name, Qt::Key_Space);
        ASSERT_TRUE(QTest::qWaitFor([&] { return open->isVisible() || name->isVisible(); }, 30'000));
    }

    QTemporaryDir folder_;
    QString damaged_;
    QByteArray sound_;
    std::shared_ptr<test::SettableClock> clock_ = std::make_shared<test::SettableClock>();
    ui::WindowSettings settings_{folder_.filePath(QStringLiteral("window.ini"))};
    SalvagePrompts prompts_;
    std::unique_ptr<ui::MainWindow> window_;
    int asked_ = 0;
};

TEST_F(SalvageWindowTest, ABookThatDoesNotOpenIsSavedByKeysFromTheFirstPage) {
    QByteArray bytes = hurt();
    bytes.truncate(bytes.size() - 100); // cut short: it does not open
    put(bytes);
    openWindow();
    EXPECT_FALSE(window_->openBook(damaged_));
    auto* offer = window_->findChild<QPushButton*>(QStringLiteral("firstStartSalvage"));
    ASSERT_TRUE(offer->isVisible());
    EXPECT_TRUE(offer->hasFocus());
    whenDialogShows([&](ui::SalvageDialog& dialog) {
        begin(dialog);
        EXPECT_EQ(prompts_.suggested, QStringLiteral("hill salvaged"));
        EXPECT_EQ(prompts_.begunIn, QFileInfo(prompts_.damaged).absolutePath());
        const QString said = text(dialog);
        EXPECT_TRUE(said.contains(QStringLiteral("came back"))) << said.toStdString();
        EXPECT_TRUE(said.contains(QStringLiteral("are lost: 2 ("))) << said.toStdString();
        EXPECT_TRUE(said.contains(QStringLiteral("judged doubtful"))) << said.toStdString();
        auto* open = dialog.findChild<QPushButton*>(QStringLiteral("salvageOpen"));
        EXPECT_TRUE(open->hasFocus());
        QTest::keyClick(open, Qt::Key_Space);
    });
    QTest::keyClick(offer, Qt::Key_Space);
    ASSERT_NE(window_->pages(), nullptr);
    EXPECT_EQ(window_->pages()->session().path(), prompts_.fresh);
    const auto fifth = window_->pages()->session().book().atHour({day(2026, 11, 5), std::chrono::hours{9}});
    ASSERT_TRUE(fifth && *fifth);
    EXPECT_EQ((*fifth)->values.quality, record::Quality::Doubtful);
    EXPECT_EQ(window_->pages()->session().book().observationCount().value(), 18)
        << "the 7th, and the one whose bytes ended the file";
    EXPECT_EQ(bytesNow(), bytes);
}

TEST_F(SalvageWindowTest, ABookWhoseFirstBytesAreHurtIsOfferedByItsNameAndAForeignFileIsNot) {
    QByteArray bytes = sound_;
    bytes.replace(0, 16, QByteArray(16, 'x'));
    put(bytes);
    openWindow();
    EXPECT_FALSE(window_->openBook(damaged_));
    auto* offer = window_->findChild<QPushButton*>(QStringLiteral("firstStartSalvage"));
    EXPECT_TRUE(offer->isVisible());
    const QString text = folder_.filePath(QStringLiteral("diary.txt"));
    QFile file(text);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("dear diary");
    file.close();
    EXPECT_FALSE(window_->openBook(text));
    EXPECT_FALSE(offer->isVisible());
    EXPECT_FALSE(window_->openBook(folder_.filePath(QStringLiteral("nowhere.wickbook"))));
    EXPECT_FALSE(offer->isVisible());
}

TEST_F(SalvageWindowTest, OverAnOpenBookItIsOfferedUnderTheBannerAndGoesWithIt) {
    put(sound_.left(sound_.size() - 100));
    const QString other = folder_.filePath(QStringLiteral("other.wickbook"));
    {
        QFile file(other);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(sound_);
    }
    openWindow();
    ASSERT_TRUE(window_->openBook(other));
    auto* offer = window_->findChild<QPushButton*>(QStringLiteral("salvageOffer"));
    EXPECT_FALSE(offer->isVisible());
    EXPECT_FALSE(window_->openBook(damaged_));
    EXPECT_TRUE(offer->isVisible());
    EXPECT_NE(window_->pages(), nullptr) << "the book open before stays open";
    whenDialogShows([&](ui::SalvageDialog& dialog) { QTest::keyClick(&dialog, Qt::Key_Escape); });
    QTest::keyClick(offer, Qt::Key_Space);
    EXPECT_FALSE(QFile::exists(prompts_.fresh));
    EXPECT_EQ(window_->pages()->session().path(), other);
}

TEST_F(SalvageWindowTest, TheMenuSavesABookThatOpensAndIsDamagedFurtherIn) {
    put(hurt());
    openWindow();
    QAction* entry = nullptr;
    for (QAction* menu : window_->menuBar()->actions()) {
        for (QAction* action : menu->menu()->actions()) {
            if (action->text().contains(QStringLiteral("&damaged"))) {
                entry = action;
            }
        }
    }
    ASSERT_NE(entry, nullptr);
    whenDialogShows([&](ui::SalvageDialog& dialog) {
        begin(dialog);
        QTest::keyClick(&dialog, Qt::Key_Escape);
    });
    entry->trigger();
    EXPECT_TRUE(QFile::exists(prompts_.fresh)) << "made, and not opened";
    EXPECT_EQ(window_->pages(), nullptr);
}

TEST_F(SalvageWindowTest, ABookWithoutAnyFactOfTheStationShowsEveryPage) {
    QByteArray bytes = sound_;
    for (const char* kind : {"station", "period", "thermometer", "fitting"}) {
        QByteArray other{kind};
        other[2] = 'x'; // a kind that nobody knows
        bytes.replace(kind, other);
    }
    put(bytes);
    openWindow();
    EXPECT_FALSE(window_->openBook(damaged_));
    whenDialogShows([&](ui::SalvageDialog& dialog) {
        begin(dialog);
        EXPECT_TRUE(text(dialog).contains(QStringLiteral("The station's name is lost")))
            << text(dialog).toStdString();
        QTest::keyClick(dialog.findChild<QPushButton*>(QStringLiteral("salvageOpen")), Qt::Key_Space);
    });
    QTest::keyClick(window_->findChild<QPushButton*>(QStringLiteral("firstStartSalvage")), Qt::Key_Space);
    ASSERT_NE(window_->pages(), nullptr);
    EXPECT_TRUE(window_->windowTitle().startsWith(QStringLiteral("Salvaged station")))
        << "named, not invented";
    EXPECT_EQ(window_->pages()->session().book().observationCount(), 20);
    for (int page = 0; page < ui::PageSet::titles().size(); ++page) {
        window_->pages()->turnTo(page);
        QApplication::processEvents();
        EXPECT_EQ(window_->pages()->current(), page);
        EXPECT_FALSE(window_->grab().isNull());
    }
}

TEST_F(SalvageWindowTest, EscapeStopsWhatIsUnderWayAndLeavesNothing) {
    put(hurt());
    ui::SalvageDialog dialog(damaged_, QStringLiteral("A"), prompts_, clock_);
    dialog.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
    auto* name = dialog.findChild<QPushButton*>(QStringLiteral("salvageBegin"));
    auto* stop = dialog.findChild<QPushButton*>(QStringLiteral("salvageStop"));
    name->click();
    EXPECT_TRUE(stop->isVisible());
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible()) << "the first Escape only stops";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !stop->isVisible(); }, 30'000));
    if (!QFile::exists(prompts_.fresh)) { // it may have been done before it could be stopped
        EXPECT_TRUE(text(dialog).contains(QStringLiteral("Stopped"))) << text(dialog).toStdString();
        EXPECT_TRUE(name->isVisible());
    }
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
    EXPECT_TRUE(dialog.bookToOpen().isEmpty());
}

TEST_F(SalvageWindowTest, WhatCannotBeReadAtAllIsSaid) {
    put(sound_.left(100) + QByteArray(9000, '\0'));
    ui::SalvageDialog dialog(damaged_, QStringLiteral("A"), prompts_, clock_);
    dialog.show();
    QApplication::setActiveWindow(&dialog);
    ASSERT_TRUE(QTest::qWaitForWindowActive(&dialog));
    begin(dialog);
    EXPECT_TRUE(text(dialog).contains(QStringLiteral("no revision can be read")))
        << text(dialog).toStdString();
    EXPECT_FALSE(QFile::exists(prompts_.fresh));
    // Another name can be tried, or nothing.
    EXPECT_TRUE(dialog.findChild<QPushButton*>(QStringLiteral("salvageBegin"))->isVisible());
}

TEST(SalvageWords, NameRangesAndBreakOff) {
    EXPECT_EQ(ui::rangeWords({{12, 14}, {40, 40}}), QStringLiteral("12–14, 40"));
    std::vector<store::SequenceRange> many;
    for (int i = 1; i <= 27; ++i) {
        many.push_back({i * 10, i * 10});
    }
    EXPECT_TRUE(ui::rangeWords(many).endsWith(QStringLiteral("200 and 7 more")));
}

TEST(SalvageWords, SayEverythingThatTheReportCounts) {
    store::SalvageReport report;
    report.expected = 100;
    report.chainKept = true;
    report.proved = 100;
    EXPECT_TRUE(ui::salvageDetails(report).isEmpty());
    report.chainKept = false;
    report.proved = 90;
    report.lost = 3;
    report.lostAt = {{4, 6}};
    report.altered = 5;
    report.alteredAt = {{10, 14}};
    report.alteredFacts = {"period", "period", "thermometer", "correction"};
    report.judgedDoubtful = 2;
    report.unproven = 2;
    report.unprovenAt = {{7, 7}, {15, 15}};
    report.movedFromHour = 1;
    report.stationLost = true;
    report.pages = 30;
    report.pagesUnread = 2;
    report.writeTakenBack = true;
    const QStringList said = ui::salvageDetails(report);
    EXPECT_EQ(said.size(), 9);
    const QString all = said.join(QChar(' '));
    for (const char* wanted :
         {"lost: 3 (number 4–6)", "5 (number 10–14)", "2 (number 7, 15)",
          "place and hours, thermometer, correction", "2 of 30", "interrupted", "Station"}) {
        EXPECT_TRUE(all.contains(QString::fromUtf8(wanted))) << wanted << "\n" << all.toStdString();
    }
    EXPECT_EQ(ui::salvageSentence(report).left(10), QStringLiteral("97 of 100 "));
}

} // namespace
