// SPDX-License-Identifier: GPL-3.0-or-later
// The register page as it is used: real widgets over a real book, by keys and clicks.
#include "tests/ui/register/register_case.h"
#include "ui/register/entry_panel.h"
#include "ui/register/history_panel.h"
#include "ui/register/register_filter.h"
#include "ui/register/register_model.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QGuiApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QtTest/QTest>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;
using test::RegisterPageCase;

TEST_F(RegisterPageCase, EveryPromisedHourHasALineReadOrNot) {
    const auto& model = *page_->findChild<RegisterModel*>();
    // May has 31 days of two hours, whatever was read: the plan of the station made above.
    EXPECT_EQ(model.rowCount(), 62);
    EXPECT_EQ(model.rowOf({day(2025, 5, 6), 9h}), 10);
    EXPECT_EQ(lineStateOf(*model.line(10)), LineState::Missed);
    EXPECT_EQ(lineStateOf(*model.line(8)), LineState::Kept);
    EXPECT_EQ(lineStateOf(*model.line(61)), LineState::ToCome);
}

TEST_F(RegisterPageCase, ModelsKeepTheRulesOfModels) {
    auto* model = page_->findChild<RegisterModel*>();
    auto* filter = page_->findChild<RegisterFilter*>();
    QAbstractItemModelTester source(model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    QAbstractItemModelTester shown(filter, QAbstractItemModelTester::FailureReportingMode::Fatal);
    page_->showMonth(date::year{2025} / 4);
    page_->showMonth(date::year{2025} / 5);
    filter->setText(QStringLiteral("missing"));
    filter->setText({});
    view_->sortByColumn(RegisterModel::Humidity, Qt::DescendingOrder);
    SUCCEED();
}

TEST_F(RegisterPageCase, WhatWasReadStandsAsRead) {
    record::Observation written = reading(day(2025, 5, 6), 9h, "16.0", "12.40");
    write(written);
    page_->showHour({day(2025, 5, 6), 9h});
    EXPECT_EQ(cell(RegisterModel::Dry), "16.0");
    EXPECT_EQ(cell(RegisterModel::Wet), "12.40");
}

TEST_F(RegisterPageCase, RevisingAsksWhyAppendsARevisionAndKeepsTheFirstValue) {
    const record::StationDate date = day(2025, 5, 5);
    const record::Observation first = at(date, 9h).values;
    page_->showHour({date, 9h});
    key(Qt::Key_Return);
    EXPECT_EQ(part<QLineEdit>("dry").hasFocus(), true);
    type("dry", QStringLiteral("14,1")); // either decimal mark
    QTest::keyClick(&part<QLineEdit>("dry"), Qt::Key_Return);
    EXPECT_EQ(at(date, 9h).revisionCount, 1) << "stored without a reason";
    EXPECT_TRUE(part<QLabel>("entryMessage").isVisible());
    EXPECT_TRUE(part<QLineEdit>("why").hasFocus());
    QTest::keyClicks(&part<QLineEdit>("why"), QStringLiteral("misread"));
    QTest::keyClick(&part<QLineEdit>("why"), Qt::Key_Return);

    const record::StoredObservation now = at(date, 9h);
    EXPECT_EQ(now.revisionCount, 2);
    EXPECT_EQ(now.values.dry.value->value.toText(), "14.1");
    EXPECT_EQ(now.values.origin, record::Origin::Corrected);
    EXPECT_EQ(now.stamp.author.why, "misread");
    const auto history = session_->book().history(now.id());
    ASSERT_TRUE(history.has_value());
    EXPECT_EQ(history->front().values, first);
    EXPECT_EQ(cell(RegisterModel::Dry), "14.1");
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{date, 9h})) << "the caret has left its line";
    auto& list = part<QListWidget>("revisions");
    ASSERT_EQ(list.count(), 2);
    EXPECT_TRUE(list.item(1)->text().contains(QStringLiteral("misread")));
    EXPECT_TRUE(list.item(1)->text().contains(QStringLiteral("14.1")));

    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(at(date, 9h).values, first);
    EXPECT_EQ(at(date, 9h).revisionCount, 3) << "undo must append";
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(at(date, 9h).values.dry.value->value.toText(), "14.1");
}

TEST_F(RegisterPageCase, WhatIsNoNumberIsRefusedAndStays) {
    page_->showHour({day(2025, 5, 5), 9h});
    key(Qt::Key_Return);
    type("wet", QStringLiteral("1.234,5"));
    QTest::keyClick(&part<QLineEdit>("wet"), Qt::Key_Return);
    EXPECT_TRUE(part<QLineEdit>("wet").hasFocus());
    EXPECT_EQ(part<QLineEdit>("wet").text(), QStringLiteral("1.234,5"));
    EXPECT_FALSE(part<QLabel>("entryMessage").text().isEmpty());
    EXPECT_EQ(at(day(2025, 5, 5), 9h).revisionCount, 1);
    QTest::keyClick(&part<QLineEdit>("wet"), Qt::Key_Escape);
    EXPECT_TRUE(view_->hasFocus());
}

TEST_F(RegisterPageCase, NothingChangedIsNothingStored) {
    page_->showHour({day(2025, 5, 5), 9h});
    key(Qt::Key_Return);
    QTest::mouseClick(&part<QPushButton>("save"), Qt::LeftButton);
    EXPECT_EQ(at(day(2025, 5, 5), 9h).revisionCount, 1);
    EXPECT_FALSE(session_->undoStack().canUndo());
}

TEST_F(RegisterPageCase, SingleKeysJudge) {
    const record::StationDate date = day(2025, 5, 5);
    page_->showHour({date, 21h});
    key(Qt::Key_D);
    EXPECT_EQ(at(date, 21h).values.quality, record::Quality::Doubtful);
    EXPECT_EQ(cell(RegisterModel::State), QStringLiteral("doubtful"));
    key(Qt::Key_E);
    EXPECT_EQ(at(date, 21h).values.quality, record::Quality::Erroneous);
    key(Qt::Key_S);
    EXPECT_EQ(at(date, 21h).values.quality, record::Quality::Sound);
    EXPECT_EQ(cell(RegisterModel::State), QStringLiteral("kept"));
    EXPECT_EQ(at(date, 21h).values.origin, record::Origin::Observed) << "judging is no correction";
    key(Qt::Key_S);
    EXPECT_EQ(part<QLabel>("message").text(), QStringLiteral("Nothing was changed."));
    page_->showHour({day(2025, 5, 6), 9h});
    key(Qt::Key_S);
    EXPECT_EQ(part<QLabel>("message").text(),
              QStringLiteral("There is no reading here to judge. Go to an hour that has one."));
}

TEST_F(RegisterPageCase, WithdrawingLeavesTheHistoryAndComesBack) {
    const record::StationDate date = day(2025, 5, 5);
    const record::Uuid id = at(date, 9h).id();
    page_->showHour({date, 9h});
    key(Qt::Key_Delete);
    EXPECT_FALSE(session_->book().atHour({date, 9h})->has_value());
    EXPECT_EQ(session_->book().history(id)->size(), 2U);
    key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(session_->book().atHour({date, 9h})->has_value());
}

TEST_F(RegisterPageCase, AMissingHourIsGivenItsReasonByKeys) {
    const record::StationDate date = day(2025, 5, 6);
    page_->showHour({date, 9h});
    key(Qt::Key_M);
    auto& reason = part<QComboBox>("reason");
    QTest::keyClick(&reason, Qt::Key_Return);
    EXPECT_FALSE(session_->book().atHour({date, 9h})->has_value()) << "stored without a reason";
    reason.setFocus();
    QTest::keyClick(&reason, Qt::Key_Down); // the first reason of the list
    QTest::keyClick(&reason, Qt::Key_Return);
    const record::StoredObservation stored = at(date, 9h);
    EXPECT_EQ(stored.values.origin, record::Origin::Missing);
    EXPECT_EQ(stored.values.missingReason, "away");
    EXPECT_FALSE(stored.values.dry.given());
    EXPECT_EQ(cell(RegisterModel::State), QStringLiteral("missing, with a reason"));
    EXPECT_EQ(cell(RegisterModel::Dry), QString()) << "missing is blank, never 0";
}

TEST_F(RegisterPageCase, ARunOfMissedHoursIsGivenOneReasonInOneStep) {
    const record::StationDate date = day(2025, 5, 6);
    page_->showHour({date, 21h});
    key(Qt::Key_M);
    auto& run = part<QCheckBox>("reasonForRun");
    EXPECT_TRUE(run.isVisible());
    EXPECT_TRUE(run.text().contains(QStringLiteral("2 hours"))) << run.text().toStdString();
    auto& reason = part<QComboBox>("reason");
    QTest::keyClicks(&reason, QStringLiteral("ill"));
    QTest::keyClick(&reason, Qt::Key_Tab);
    QTest::keyClick(&run, Qt::Key_Space);
    QTest::keyClick(&run, Qt::Key_Return);
    for (const auto hour : {9h, 21h}) {
        EXPECT_EQ(at(date, hour).values.missingReason, "ill");
        EXPECT_EQ(at(date, hour).values.origin, record::Origin::Missing);
    }
    session_->undoStack().undo();
    EXPECT_FALSE(session_->book().atHour({date, 9h})->has_value());
    EXPECT_FALSE(session_->book().atHour({date, 21h})->has_value());
    session_->undoStack().redo();
    EXPECT_EQ(at(date, 9h).values.missingReason, "ill");
    EXPECT_EQ(at(date, 9h).revisionCount, 3) << "undone and done again are revisions too";
    EXPECT_TRUE(session_->book().verify()->sound());
    // A reason that stands already is changed by itself.
    page_->showHour({date, 9h});
    key(Qt::Key_M);
    EXPECT_FALSE(run.isVisible());
}

TEST_F(RegisterPageCase, AnAbsenceEnteredAheadIsTheReasonOfItsGaps) {
    record::StationFacts facts = session_->station().facts();
    facts.absences.push_back(
        {record::Uuid::random(), day(2025, 5, 6), day(2025, 5, 20), "away", "", "", false});
    ASSERT_TRUE(session_->reviseFacts(facts, {"T", ""}));
    const auto& model = *page_->findChild<RegisterModel*>();
    const int row = model.rowOf({day(2025, 5, 6), 9h});
    EXPECT_EQ(lineStateOf(*model.line(row)), LineState::Excused);
    EXPECT_FALSE(isQuery(*model.line(row)));
    EXPECT_EQ(model.index(row, RegisterModel::Note).data().toString(), QStringLiteral("away (absence)"));
    EXPECT_EQ(lineStateOf(*model.line(model.rowOf({day(2025, 5, 7), 9h}))), LineState::Kept);
    EXPECT_EQ(lineStateOf(*model.line(61)), LineState::ToCome);
    EXPECT_FALSE(session_->book().atHour({day(2025, 5, 6), 9h})->has_value())
        << "nothing is written per hour";
    facts.absences[0].deputy = "EW";
    ASSERT_TRUE(session_->reviseFacts(facts, {"T", ""}));
    EXPECT_EQ(lineStateOf(*model.line(row)), LineState::Missed) << "EW was to read";
}

TEST_F(RegisterPageCase, AForgottenReadingIsWrittenDownLate) {
    const record::StationDate date = day(2025, 5, 6);
    page_->showHour({date, 21h});
    key(Qt::Key_Return);
    type("dry", QStringLiteral("13.2"));
    type("wet", QStringLiteral("11.0"));
    type("weather", QStringLiteral("fog, rime"));
    QTest::keyClick(&part<QLineEdit>("weather"), Qt::Key_Return);
    const record::StoredObservation stored = at(date, 21h);
    EXPECT_EQ(stored.values.dry.value->value.toText(), "13.2");
    EXPECT_EQ(stored.values.origin, record::Origin::Observed);
    EXPECT_EQ(stored.values.observer, "T");
    EXPECT_TRUE(stored.values.weather && stored.values.weather->has(record::Weather::Rime));
    EXPECT_EQ(stored.values.hour, (record::ObservingHour{date, 21h}));
}

TEST_F(RegisterPageCase, MonthsTurnByKeysAndDatesAreFound) {
    key(Qt::Key_PageUp);
    EXPECT_EQ(page_->month(), date::year{2025} / 4);
    EXPECT_TRUE(part<QLabel>("empty").isVisible());
    EXPECT_FALSE(part<QLabel>("empty").text().isEmpty());
    key(Qt::Key_PageDown);
    EXPECT_EQ(page_->month(), date::year{2025} / 5);
    QTest::keyClick(view_, Qt::Key_Left, Qt::AltModifier);
    EXPECT_EQ(page_->month(), date::year{2025} / 4);
    type("jump", QStringLiteral("2025-05-03"));
    QTest::keyClick(&part<QLineEdit>("jump"), Qt::Key_Return);
    EXPECT_EQ(page_->month(), date::year{2025} / 5);
    ASSERT_TRUE(page_->currentHour().has_value());
    EXPECT_EQ(page_->currentHour()->date, day(2025, 5, 3));
    type("jump", QStringLiteral("soon"));
    QTest::keyClick(&part<QLineEdit>("jump"), Qt::Key_Return);
    EXPECT_FALSE(part<QLabel>("message").text().isEmpty());
}

TEST_F(RegisterPageCase, FilterAndCopy) {
    page_->showHour({day(2025, 5, 5), 9h});
    key(Qt::Key_D);
    type("search", QStringLiteral("doubtful"));
    ASSERT_EQ(view_->model()->rowCount(), 1);
    QTest::mouseClick(&part<QPushButton>("copy"), Qt::LeftButton);
    const QStringList lines =
        QGuiApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 2);
    EXPECT_EQ(lines[1].split(QLatin1Char('\t')).size(), int(RegisterModel::ColumnCount));
    EXPECT_TRUE(lines[1].contains(QStringLiteral("5 May"))) << lines[1].toStdString();
    part<QLineEdit>("search").clear();
    QTest::mouseClick(&part<QCheckBox>("onlyQueries"), Qt::LeftButton, {}, QPoint(8, 8));
    EXPECT_TRUE(part<QCheckBox>("onlyQueries").isChecked());
    // 6 May at both hours: nothing written down. The judged reading is no query any more. 14 May, 9 h, too.
    EXPECT_EQ(view_->model()->rowCount(), 3);
}

TEST_F(RegisterPageCase, LinesAreOrderedByTheColumnUnderTheCaretByKeys) {
    page_->showHour({day(2025, 5, 5), 9h});
    ASSERT_EQ(view_->currentIndex().column(), int(RegisterModel::Dry));
    const QString pageFirst = view_->model()->index(0, RegisterModel::Dry).data().toString();
    const auto dry = [this](int row) {
        return view_->model()->index(row, RegisterModel::Dry).data().toString().toDouble();
    };
    key(Qt::Key_O);
    for (int row = 1; row < 24; ++row) {
        EXPECT_LE(dry(row - 1), dry(row)) << row;
    }
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 5), 9h}))
        << "the caret has left its line";
    key(Qt::Key_O);
    EXPECT_GE(dry(0), dry(23));
    EXPECT_TRUE(view_->model()->index(24, RegisterModel::Dry).data().toString().isEmpty())
        << "what is missing stands at the end, whichever way";
    key(Qt::Key_O);
    EXPECT_EQ(view_->model()->index(0, RegisterModel::Dry).data().toString(), pageFirst);
    key(Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts).size(), 63);
    EXPECT_TRUE(QGuiApplication::clipboard()->text().startsWith(QStringLiteral("Date\tHour\tDry")));
}

TEST_F(RegisterPageCase, ALineIsSeenFromItsDateToItsInitialsOnASmallScreen) {
    page_->resize(1094, 640); // what a window of 1280 by 800 leaves to the page
    QTest::qWait(50);
    const int end =
        view_->columnViewportPosition(RegisterModel::Initials) + view_->columnWidth(RegisterModel::Initials);
    EXPECT_LE(end, view_->viewport()->width());
    EXPECT_GE(view_->columnWidth(RegisterModel::Note), 90);
}

TEST_F(RegisterPageCase, TheHourOfNowIsReadAtTheInstruments) {
    clock_ = std::make_shared<test::SettableClock>(
        record::Instant{date::sys_days{date::year{2025} / 5 / 14} + 9h + 10min});
    page_.reset();
    auto session = Session::open(session_->path(), clock_);
    ASSERT_TRUE(session.has_value());
    RegisterPage page(**session);
    QSignalSpy asked(&page, &RegisterPage::openInObserve);
    page.showHour({day(2025, 5, 14), 9h});
    QTest::keyClick(page.findChild<RegisterView*>(), Qt::Key_Return);
    EXPECT_EQ(asked.count(), 1);
}

TEST_F(RegisterPageCase, AWriteByAnotherHandIsShownAndTheCaretStays) {
    page_->showHour({day(2025, 5, 4), 9h});
    write(reading(day(2025, 5, 6), 9h, "15.5", "12.5"));
    EXPECT_EQ(page_->currentHour(), (record::ObservingHour{day(2025, 5, 4), 9h}));
    const auto& model = *page_->findChild<RegisterModel*>();
    EXPECT_EQ(model.index(model.rowOf({day(2025, 5, 6), 9h}), RegisterModel::Dry).data().toString(), "15.5");
}

TEST(RegisterModelLocale, CommaLocaleShowsCommasAndKeepsDigits) {
    RegisterModel model(QLocale(QLocale::German, QLocale::Germany));
    report::MonthReport report;
    record::NewStation station;
    station.hours = {9h};
    report.station = record::StationRecord(record::factsOf(station, [] { return record::Uuid::random(); }));
    report.month = date::year{2025} / 5;
    record::Observation observation;
    observation.dry.value = units::ReadTemperature{{160, 1}, units::TemperatureUnit::Celsius};
    observation.wet.value = units::ReadTemperature{{-6, 1}, units::TemperatureUnit::Celsius};
    checks::CheckedReading checked;
    checked.reading = record::deriveReading(observation, report.station);
    report.readings.push_back(checked);
    report::MonthLine line;
    line.hour = {day(2025, 5, 1), 9h};
    line.reading = report.readings.data();
    report.lines.push_back(line);
    model.show(report, units::TemperatureUnit::Celsius);
    EXPECT_EQ(model.index(0, RegisterModel::Dry).data().toString(), "16,0");
    EXPECT_EQ(model.index(0, RegisterModel::Wet).data().toString(), QStringLiteral("−0,6"));
}

TEST(WeatherWords, AreReadBackOrNamed) {
    EXPECT_FALSE(weatherFromWords({})->has_value());
    EXPECT_TRUE(weatherFromWords(QStringLiteral("none"))->value().empty());
    EXPECT_TRUE(weatherFromWords(QStringLiteral("Hoar frost; fog"))->value().has(record::Weather::HoarFrost));
    const auto unknown = weatherFromWords(QStringLiteral("fog, <b>murk</b>"));
    ASSERT_FALSE(unknown.has_value());
    EXPECT_EQ(unknown.error(), QStringLiteral("<b>murk</b>"));
}

} // namespace

} // namespace wickbook::ui
