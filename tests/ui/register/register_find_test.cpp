// SPDX-License-Identifier: GPL-3.0-or-later
// Finding in the whole register, over months that are not shown.
#include "tests/ui/register/register_case.h"
#include "ui/register/find_bar.h"
#include "ui/register/register_model.h"
#include "ui/register/register_search.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

class Finding : public test::RegisterPageCase {
protected:
    void SetUp() override {
        RegisterPageCase::SetUp();
        fill(day(2023, 1, 1), day(2023, 1, 20));
        record::Observation noted = reading(day(2023, 2, 3), 9h, "3.5", "2.9");
        noted.note = "Hedge cut on the north side";
        noted.observer = "EW";
        write(noted);
        record::Observation fog = reading(day(2024, 7, 9), 21h, "27", "26.9");
        fog.weather = record::WeatherSet{};
        fog.weather->add(record::Weather::Fog);
        fog.paper = record::PaperPlace{"Pocket-book 3", "17"};
        write(fog);
        page_->showHour({day(2025, 5, 5), 9h});
    }
    /// Types into the line opened by its keys and waits until the search has ended.
    QString find(const QString& text) {
        key(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
        auto& field = part<QLineEdit>("findText");
        EXPECT_TRUE(field.hasFocus());
        field.selectAll();
        QTest::keyClicks(&field, text);
        return wait([&] { QTest::keyClick(&field, Qt::Key_Return); });
    }
    template <typename Act>
    QString wait(Act act) {
        auto* search = page_->findChild<RegisterSearch*>();
        act();
        EXPECT_TRUE(QTest::qWaitFor([&] { return !search->isRunning(); }, 20'000));
        return part<QLabel>("findStatus").text();
    }
    [[nodiscard]] record::ObservingHour here() const { return page_->currentHour().value(); }
};

TEST_F(Finding, TextOfANoteInAnotherYearTurnsToItsLine) {
    find(QStringLiteral("hedge cut"));
    EXPECT_EQ(here(), (record::ObservingHour{day(2023, 2, 3), 9h}));
    EXPECT_EQ(page_->month(), date::year{2023} / 2);
    EXPECT_TRUE(part<QLineEdit>("findText").hasFocus()) << "Enter must find on";
}

TEST_F(Finding, WeatherInitialsReasonPaperAndValues) {
    const auto found = [this](const QString& text, const record::ObservingHour& where) {
        page_->showHour({day(2025, 5, 5), 9h});
        const QString said = find(text);
        EXPECT_EQ(here(), where) << text.toStdString() << ": " << said.toStdString();
    };
    const record::ObservingHour foggy{day(2024, 7, 9), 21h};
    found(QStringLiteral("fog"), foggy);
    found(QStringLiteral("pocket-book 3, p. 17"), foggy);
    found(QStringLiteral("26,9"), foggy); // either mark
    found(QStringLiteral("27.0"), foggy); // 27 is as much
    found(QStringLiteral("ew"), {day(2023, 2, 3), 9h});
    found(QStringLiteral("2023-02-03"), {day(2023, 2, 3), 9h});
    found(QStringLiteral("2024-07"), foggy);
    found(QStringLiteral("9 Jul 2024"), foggy);
}

TEST_F(Finding, NextAndBeforeByKeysRoundTheEnd) {
    // Written in January 2023, at both hours of 1 to 20 January, and once in February: the months are counted
    // here by hand.
    find(QStringLiteral("2023-01-20"));
    EXPECT_EQ(here(), (record::ObservingHour{day(2023, 1, 20), 9h}));
    part<QPushButton>("findClose").click();
    key(Qt::Key_F3); // the field is closed: opened again, with what stood in it
    EXPECT_TRUE(part<QLineEdit>("findText").hasFocus());
    view_->setFocus();
    wait([this] { key(Qt::Key_F3); });
    EXPECT_EQ(here(), (record::ObservingHour{day(2023, 1, 20), 21h}));
    EXPECT_TRUE(view_->hasFocus());
    const QString said = wait([this] { key(Qt::Key_F3); });
    EXPECT_EQ(here(), (record::ObservingHour{day(2023, 1, 20), 9h}));
    EXPECT_TRUE(said.contains(QStringLiteral("round the end"))) << said.toStdString();
    wait([this] { key(Qt::Key_F3, Qt::ShiftModifier); });
    EXPECT_EQ(here(), (record::ObservingHour{day(2023, 1, 20), 21h}));
    wait([this] { key(Qt::Key_F3, Qt::ShiftModifier); });
    EXPECT_EQ(here(), (record::ObservingHour{day(2023, 1, 20), 9h}));
}

TEST_F(Finding, NothingIsSaidAndTheCaretStays) {
    const QString said = find(QStringLiteral("sirocco"));
    EXPECT_EQ(said, QStringLiteral("No line of the register holds “sirocco”."));
    EXPECT_EQ(here(), (record::ObservingHour{day(2025, 5, 5), 9h}));
    const QString only = find(QStringLiteral("hedge"));
    EXPECT_FALSE(only.isEmpty());
    EXPECT_EQ(find(QStringLiteral("hedge")), QStringLiteral("This is the only one."));
}

TEST_F(Finding, IsToldAndStoppedInALongRegister) {
    fill(day(1960, 1, 1), day(1999, 12, 31));
    page_->showHour({day(2025, 5, 5), 9h});
    auto* search = page_->findChild<RegisterSearch*>();
    QSignalSpy told(search, &RegisterSearch::progressed);
    key(Qt::Key_F, Qt::ControlModifier | Qt::ShiftModifier);
    auto& field = part<QLineEdit>("findText");
    QTest::keyClicks(&field, QStringLiteral("sirocco"));
    QTest::keyClick(&field, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.count() > 2 || !search->isRunning(); }, 20'000));
    ASSERT_TRUE(search->isRunning()) << "29,000 lines in one go";
    EXPECT_TRUE(part<QPushButton>("findStop").isVisible());
    QTest::keyClick(&field, Qt::Key_Escape);
    EXPECT_FALSE(search->isRunning());
    EXPECT_EQ(part<QLabel>("findStatus").text(), QStringLiteral("Stopped."));
    EXPECT_FALSE(part<QPushButton>("findStop").isVisible());
    QTest::keyClick(&field, Qt::Key_Escape);
    EXPECT_TRUE(view_->hasFocus());
    EXPECT_FALSE(page_->findChild<FindBar*>()->isVisible());
}

TEST_F(Finding, AnEmptyRegisterHoldsNothing) {
    RegisterSearch search(*session_);
    QSignalSpy nothing(&search, &RegisterSearch::nothingFound);
    QTemporaryDir folder;
    auto empty = Session::create(folder.filePath(QStringLiteral("e.wickbook")), session_->station().facts(),
                                 {"T", ""}, clock_);
    ASSERT_TRUE(empty);
    RegisterSearch none(**empty);
    QSignalSpy said(&none, &RegisterSearch::nothingFound);
    none.start(SearchTerm{QLocale(), QStringLiteral("fog")}, false, {clock_->now(), {}});
    EXPECT_TRUE(said.wait(5000));
}

} // namespace

} // namespace wickbook::ui
