// SPDX-License-Identifier: GPL-3.0-or-later
// The window from its first start to a saved reading, by keys alone, over real books.
#include "tests/support/open_book.h"
#include "ui/observe/observe_page.h"
#include "ui/window/first_start_page.h"
#include "ui/window/help_window.h"
#include "ui/window/index_tabs.h"
#include "ui/window/main_window.h"
#include "ui/window/margin_strip.h"
#include "ui/window/page_set.h"
#include "ui/window/prompts.h"

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTextBrowser>

#include <algorithm>

namespace {

using namespace wickbook;
using test::day;

class AnsweringPrompts final : public ui::Prompts {
public:
    QString newBookPath(QWidget*, const QString& suggestedName, const QString& folder) override {
        begunIn = folder;
        suggested = suggestedName;
        return answer;
    }
    QString bookToOpen(QWidget*) override { return answer; }
    QString answer;
    QString suggested;
    QString begunIn;
};

class MainWindowTest : public ::testing::Test {
protected:
    void openWindow() {
        window_ = std::make_unique<ui::MainWindow>(settings_, prompts_, clock_);
        window_->show();
        QApplication::setActiveWindow(window_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(window_.get()));
    }
    static void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    static void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
    }
    [[nodiscard]] QString file(const char* name) const { return folder_.filePath(QLatin1String(name)); }
    /// A book with one reading at 21 h of the day before.
    QString bookWithAReading() {
        auto session = ui::Session::create(
            file("hill.wickbook"),
            record::factsOf(test::hillStation(), [] { return record::Uuid::random(); }), {"A", {}}, clock_);
        EXPECT_TRUE(session.has_value());
        record::Observation observation;
        record::placeInTime(observation, (*session)->station(),
                            date::sys_days{date::year{2026} / 11 / 21} + std::chrono::hours{21});
        observation.dry.value = units::ReadTemperature{{120, 1}, units::TemperatureUnit::Celsius};
        observation.wet.value = units::ReadTemperature{{110, 1}, units::TemperatureUnit::Celsius};
        store::ObservationChange change;
        change.values = observation;
        EXPECT_TRUE((*session)->write(change).has_value());
        return file("hill.wickbook");
    }
    [[nodiscard]] static std::optional<record::Observation> stored(ui::MainWindow& window,
                                                                   record::StationDate date, int hour) {
        const auto found = window.pages()->session().book().atHour({date, std::chrono::hours{hour}});
        return found && *found ? std::optional{(*found)->values} : std::nullopt;
    }

    QTemporaryDir folder_;
    std::shared_ptr<test::SettableClock> clock_ = std::make_shared<test::SettableClock>();
    ui::WindowSettings settings_{folder_.filePath(QStringLiteral("window.ini"))};
    AnsweringPrompts prompts_;
    std::unique_ptr<ui::MainWindow> window_;
};

TEST_F(MainWindowTest, FromTheFirstStartToASavedReadingByKeys) {
    openWindow();
    prompts_.answer = file("new.wickbook");
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("doorStart"));
    press(Qt::Key_Space); // the first door
    EXPECT_EQ(QApplication::focusWidget()->objectName(), QStringLiteral("stationName"));
    type(QStringLiteral("Invented Brook"));
    press(Qt::Key_Tab);
    type(QStringLiteral("52,1"));
    press(Qt::Key_Tab);
    type(QStringLiteral("-1.5"));
    press(Qt::Key_Tab);
    type(QStringLiteral("120"));
    press(Qt::Key_Return);
    ASSERT_NE(window_->pages(), nullptr);
    EXPECT_EQ(prompts_.suggested, QStringLiteral("Invented Brook"));
    EXPECT_TRUE(QFile::exists(file("new.wickbook")));
    type(QStringLiteral("9.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("7.1"));
    press(Qt::Key_Return);
    const auto reading = stored(*window_, day(2026, 11, 22), 9);
    ASSERT_TRUE(reading.has_value());
    EXPECT_EQ(reading->wet.value->value, (units::Decimal{71, 1}));
}

TEST_F(MainWindowTest, StationFormSaysWhatIsMissing) {
    openWindow();
    press(Qt::Key_Space);
    press(Qt::Key_Return);
    EXPECT_EQ(window_->pages(), nullptr);
    EXPECT_FALSE(window_->findChild<QLabel*>(QStringLiteral("stationMessage"))->text().isEmpty());
}

TEST_F(MainWindowTest, CtrlZTakesTheSavedReadingBack) {
    openWindow();
    ASSERT_TRUE(window_->openBook(bookWithAReading()));
    type(QStringLiteral("9.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("7.1"));
    press(Qt::Key_Return);
    ASSERT_TRUE(stored(*window_, day(2026, 11, 22), 9).has_value());
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_FALSE(stored(*window_, day(2026, 11, 22), 9).has_value());
    press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(stored(*window_, day(2026, 11, 22), 9).has_value());
}

TEST_F(MainWindowTest, MarginShowsWhatWasKeptAndWhatIsDue) {
    openWindow();
    ASSERT_TRUE(window_->openBook(bookWithAReading()));
    const auto& marks = window_->margin()->marks();
    ASSERT_EQ(marks.size(), 8U * 7U * 2U);
    const auto state = [&](record::StationDate date, int hour) {
        for (const desk::HourMark& mark : marks) {
            if (mark.expected.hour == record::ObservingHour{date, std::chrono::hours{hour}}) {
                return mark.state;
            }
        }
        ADD_FAILURE() << "no such mark";
        return desk::HourState::Ahead;
    };
    EXPECT_EQ(state(day(2026, 11, 21), 21), desk::HourState::Kept);
    EXPECT_EQ(state(day(2026, 11, 21), 9), desk::HourState::Missed);
    EXPECT_EQ(state(day(2026, 11, 22), 9), desk::HourState::Due);
    EXPECT_EQ(state(day(2026, 11, 22), 21), desk::HourState::Ahead);
}

TEST_F(MainWindowTest, MarginIsWalkedByArrowsAndEnterOpensTheHour) {
    openWindow();
    ASSERT_TRUE(window_->openBook(bookWithAReading()));
    window_->margin()->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(window_->margin()->current().has_value());
    EXPECT_EQ(window_->margin()->current()->state, desk::HourState::Due);
    press(Qt::Key_Left); // the same hour a day earlier: not written down
    EXPECT_TRUE(window_->margin()->accessibleDescription().contains(QStringLiteral("not written down")));
    press(Qt::Key_Return);
    EXPECT_EQ(window_->pages()->current(), ui::PageSet::Observe);
    EXPECT_EQ(window_->pages()->observe().entry().date, QDate(2026, 11, 21));
    window_->margin()->setFocus(Qt::TabFocusReason);
    press(Qt::Key_Down); // 21 h of that day: kept
    press(Qt::Key_Return);
    EXPECT_EQ(window_->pages()->current(), ui::PageSet::Register);
}

TEST_F(MainWindowTest, PagesTurnByKeys) {
    openWindow();
    ASSERT_TRUE(window_->openBook(bookWithAReading()));
    for (int page = ui::PageSet::Station; page >= ui::PageSet::Observe; --page) {
        QTest::keyClick(window_.get(), static_cast<Qt::Key>(Qt::Key_1 + page), Qt::ControlModifier);
        EXPECT_EQ(window_->pages()->current(), page);
        EXPECT_EQ(window_->findChild<ui::IndexTabs*>()->current(), page);
    }
}

TEST_F(MainWindowTest, BookOfALaterVersionOpensReadOnlyWithASentence) {
    const QString path = bookWithAReading();
    {
        QFile book(path);
        ASSERT_TRUE(book.open(QIODevice::ReadWrite));
        ASSERT_TRUE(
            book.seek(60)); // user_version, big-endian, byte 60 of the header (SQLite file format 1.3)
        book.write(QByteArray::fromHex("000003e7"));
    }
    openWindow();
    ASSERT_TRUE(window_->openBook(path));
    auto* banner = window_->findChild<QLabel*>(QStringLiteral("readOnlyBanner"));
    EXPECT_TRUE(banner->isVisible());
    EXPECT_FALSE(banner->text().isEmpty());
    type(QStringLiteral("9.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("7.1"));
    press(Qt::Key_Return);
    EXPECT_FALSE(stored(*window_, day(2026, 11, 22), 9).has_value());
}

TEST_F(MainWindowTest, FileThatIsNoBookGetsASentenceAndIsLeftAlone) {
    QFile letter(file("letter.wickbook"));
    ASSERT_TRUE(letter.open(QIODevice::WriteOnly));
    letter.write("not a book\n");
    letter.close();
    openWindow();
    EXPECT_FALSE(window_->openBook(letter.fileName()));
    EXPECT_FALSE(window_->findChild<ui::FirstStartPage*>()->sentence().isEmpty());
    ASSERT_TRUE(letter.open(QIODevice::ReadOnly));
    EXPECT_EQ(letter.readAll(), QByteArray("not a book\n"));
}

TEST_F(MainWindowTest, RecentBooksAreRememberedAndTheDraftComesBack) {
    const QString path = bookWithAReading();
    openWindow();
    ASSERT_TRUE(window_->openBook(path));
    type(QStringLiteral("9.4"));
    window_->close();
    window_.reset();
    EXPECT_EQ(settings_.lastBook(), path);
    EXPECT_EQ(settings_.recentBooks().first(), path);
    openWindow();
    ASSERT_TRUE(window_->openBook(path));
    EXPECT_EQ(window_->pages()->observe().entry().dry, QStringLiteral("9.4"));
}

TEST_F(MainWindowTest, SampleStationIsMarkedInvented) {
    openWindow();
    ASSERT_TRUE(window_->openSample());
    EXPECT_TRUE(window_->windowTitle().contains(QStringLiteral("invented")));
    EXPECT_TRUE(settings_.recentBooks().isEmpty()); // a copy for looking around is no book of the person's
    const auto& marks = window_->margin()->marks();
    const auto kept = std::count_if(marks.begin(), marks.end(), [](const desk::HourMark& mark) {
        return mark.state == desk::HourState::Kept;
    });
    EXPECT_GT(kept, 90);
}

TEST_F(MainWindowTest, HelpHoldsTheCautions) {
    ui::HelpWindow help(QLocale(QLocale::English, QLocale::UnitedKingdom));
    help.showPage(QStringLiteral("cautions"));
    EXPECT_TRUE(help.findChild<QTextBrowser*>()->toPlainText().contains(QStringLiteral("Mercury")));
}

} // namespace
