// SPDX-License-Identifier: GPL-3.0-or-later
// The month page as it is used: chart, numbers, queries, files; real widgets over a real book.
#include "tests/support/open_book.h"
#include "ui/month/chart_panel.h"
#include "ui/month/month_numbers.h"
#include "ui/month/month_page.h"
#include "ui/month/observations_export.h"
#include "ui/month/queries_model.h"
#include "ui/month/queries_panel.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QClipboard>
#include <QDialog>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QLineSeries>
#include <QPushButton>
#include <QSignalSpy>
#include <QSvgRenderer>
#include <QTableView>
#include <QTimer>
#include <QtTest/QTest>
#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;

class MonthPageCase : public test::SessionCase {
protected:
    void SetUp() override {
        SessionCase::SetUp();
        fill(day(2025, 4, 1), day(2025, 5, 13), {day(2025, 5, 6)});
    }
    void show() {
        page_ = std::make_unique<MonthPage>(*session_);
        page_->resize(1200, 800);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        QApplication::setActiveWindow(page_.get());
        chart_ = page_->findChild<ChartPanel*>();
        queries_ = page_->findChild<QueriesPanel*>();
    }
    QString label(const char* name) const {
        auto* found = page_->findChild<QLabel*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found->text();
    }

    std::unique_ptr<MonthPage> page_;
    ChartPanel* chart_ = nullptr;
    QueriesPanel* queries_ = nullptr;
};

TEST_F(MonthPageCase, TheGapIsOpenInBothCharts) {
    show();
    for (const HumidityChart* chart : {&chart_->humidity(), &chart_->dewPoint()}) {
        ASSERT_EQ(chart->lines().size(), 4) << "two hours, each in two runs round 6 May";
    }
}

TEST_F(MonthPageCase, CaretWalksTellsAndOpens) {
    show();
    QSignalSpy opened(page_.get(), &MonthPage::openInRegister);
    chart_->setFocus();
    QTest::keyClick(chart_, Qt::Key_Right); // the newest in sight
    ASSERT_TRUE(chart_->caret().has_value());
    EXPECT_EQ(*chart_->caret(), (record::ObservingHour{day(2025, 5, 13), 21h}));
    QTest::keyClick(chart_, Qt::Key_Left);
    EXPECT_EQ(*chart_->caret(), (record::ObservingHour{day(2025, 5, 13), 9h}));
    EXPECT_TRUE(chart_->caretWords().contains(QStringLiteral("13 May 2025, 9 h")))
        << chart_->caretWords().toStdString();
    EXPECT_TRUE(chart_->caretWords().contains(QStringLiteral("RH")));
    EXPECT_EQ(chart_->accessibleDescription(), chart_->caretWords());
    EXPECT_EQ(label("told"), chart_->caretWords());
    QTest::keyClick(chart_, Qt::Key_Return);
    ASSERT_EQ(opened.count(), 1);
    EXPECT_EQ(opened[0][0].value<record::ObservingHour>(), *chart_->caret());
}

TEST_F(MonthPageCase, KeysZoomAndMoveAndTheSpanIsChosen) {
    show();
    chart_->setFocus();
    const auto length = chart_->to() - chart_->from();
    QTest::keyClick(chart_, Qt::Key_Plus);
    EXPECT_LT(chart_->to() - chart_->from(), length);
    QTest::keyClick(chart_, Qt::Key_Minus);
    QTest::keyClick(chart_, Qt::Key_Minus);
    EXPECT_GT(chart_->to() - chart_->from(), length);
    const auto from = chart_->from();
    QTest::keyClick(chart_, Qt::Key_Left, Qt::ControlModifier);
    EXPECT_LT(chart_->from(), from);
    chart_->setSpan(ChartSpan::TwoWeeks);
    EXPECT_EQ(chart_->to() - chart_->from(), date::days{14});
    chart_->setSpan(ChartSpan::All);
    EXPECT_LE(chart_->from(), record::Instant{date::sys_days{date::year{2025} / 4 / 1}} + 9h);
    EXPECT_EQ(chart_->humidity().from(), chart_->dewPoint().from());
}

TEST_F(MonthPageCase, HomeAndEndAreTheEndsAlsoWithoutACaret) {
    show();
    chart_->setFocus();
    QTest::keyClick(chart_, Qt::Key_Home);
    ASSERT_TRUE(chart_->caret().has_value());
    EXPECT_LT(chart_->caret()->date, day(2025, 5, 1))
        << "the first of what was read, before the month in sight";
    QTest::keyClick(chart_, Qt::Key_End);
    EXPECT_EQ(*chart_->caret(), (record::ObservingHour{day(2025, 5, 13), 21h}));
}

TEST_F(MonthPageCase, QueriesAreKeyedThroughWithOneHand) {
    // Wet bulb above dry is impossible whatever the neighbours say (checks: wet-above-dry).
    write(reading(day(2025, 5, 6), 9h, "12.0", "14.0"));
    write(reading(day(2025, 5, 6), 21h, "11.0", "13.5"));
    show();
    QTableView& view = queries_->view();
    const int open = view.model()->rowCount();
    ASSERT_GE(open, 2);
    QAbstractItemModelTester tester(view.model(), QAbstractItemModelTester::FailureReportingMode::Fatal);
    QSignalSpy opened(page_.get(), &MonthPage::openInRegister);
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_EQ(opened.count(), 1);
    EXPECT_FALSE(label("explained").isEmpty());
    QTest::keyClick(&view, Qt::Key_E);
    EXPECT_EQ(view.model()->rowCount(), open - 1);
    EXPECT_TRUE(view.currentIndex().isValid()) << "the caret must stand on the next one";
    QTest::keyClick(&view, Qt::Key_D);
    EXPECT_EQ(view.model()->rowCount(), open - 2);
    EXPECT_EQ(at(day(2025, 5, 6), 9h).values.quality, record::Quality::Erroneous);
    EXPECT_EQ(at(day(2025, 5, 6), 21h).values.quality, record::Quality::Doubtful);
    session_->undoStack().undo();
    EXPECT_EQ(view.model()->rowCount(), open - 1);
}

TEST_F(MonthPageCase, SignedOffChangedAndSignedAgain) {
    show();
    page_->showMonth(date::year{2025} / 4);
    auto* sign = page_->findChild<QPushButton*>(QStringLiteral("sign"));
    ASSERT_NE(sign, nullptr);
    // The form by keys: the initials stand there already, Enter keeps.
    QTimer::singleShot(0, page_.get(), [] {
        auto* form = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(form, nullptr);
        auto* by = form->findChild<QLineEdit*>(QStringLiteral("signBy"));
        EXPECT_EQ(by->text(), QStringLiteral("T"));
        by->clear();
        QTest::keyClick(by, Qt::Key_Return); // nobody: refused, and the form stays
        EXPECT_TRUE(form->isVisible());
        auto* message = form->findChild<QLabel*>(QStringLiteral("factMessage"));
        EXPECT_EQ(message->text(), QStringLiteral("Write who signs the month off."));
        QTest::keyClicks(by, QStringLiteral("MK"));
        QTest::keyClick(by, Qt::Key_Return);
    });
    sign->click();
    ASSERT_EQ(session_->station().facts().signings.size(), 1U);
    EXPECT_TRUE(label("signing").startsWith(QStringLiteral("Signed off by MK on ")))
        << label("signing").toStdString();
    EXPECT_TRUE(label("signing").endsWith(QStringLiteral("Nothing has changed since.")));

    const auto before = at(day(2025, 4, 10), 9h);
    record::Observation after = before.values;
    after.note = "bearing found loose";
    store::ObservationChange change;
    change.subject = before.id();
    change.values = after;
    change.author = {"T", "remembered"};
    ASSERT_TRUE(session_->write(change));
    EXPECT_TRUE(label("signing").contains(QStringLiteral("one reading revised")))
        << label("signing").toStdString();
    EXPECT_EQ(sign->text(), QStringLiteral("&Sign off…"));
    page_->signOff(QStringLiteral("MK"), {});
    EXPECT_TRUE(label("signing").contains(QStringLiteral("Nothing has changed since.")));
    sign->click(); // now it takes back
    EXPECT_EQ(session_->station().facts().signings.size(), 1U);
    session_->undoStack().undo();
    session_->undoStack().undo();
    EXPECT_EQ(session_->station().facts().signings.size(), 1U);
    session_->undoStack().undo(); // the first signing
    EXPECT_TRUE(session_->station().facts().signings.empty());
    EXPECT_FALSE(page_->findChild<QLabel*>(QStringLiteral("signing"))->isVisible());
}

TEST_F(MonthPageCase, AMonthThatIsNotOverIsNotSigned) {
    clock_->set(record::Instant{date::sys_days{date::year{2025} / 5 / 14}});
    show();
    page_->showMonth(date::year{2025} / 5);
    page_->findChild<QPushButton*>(QStringLiteral("sign"))->click();
    EXPECT_EQ(label("message"),
              QStringLiteral("May 2025 is not over: sign it off once its last hour has passed."));
    EXPECT_TRUE(session_->station().facts().signings.empty());
}

TEST_F(MonthPageCase, NumbersAreThoseOfTheReport) {
    show();
    page_->showMonth(date::year{2025} / 4);
    auto* model = page_->findChild<MonthNumbersModel*>();
    QAbstractItemModelTester tester(model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_EQ(model->columnCount(), 4); // name, 9 h, 21 h, together
    const auto report = session_->monthReport(date::year{2025} / 4);
    ASSERT_TRUE(report.has_value());
    const auto rowOf = [&](const char* name) {
        for (int row = 0; row < model->rowCount(); ++row) {
            if (model->index(row, 0).data().toString() == QLatin1String(name)) {
                return row;
            }
        }
        return -1;
    };
    EXPECT_EQ(model->index(rowOf("expected"), 3).data().toInt(), 60);
    EXPECT_EQ(model->index(rowOf("counted (n)"), 3).data().toInt(), report->summary.all.n);
    EXPECT_EQ(model->index(rowOf("mean relative humidity"), 1).data().toString(),
              QStringLiteral("%1\u00a0%").arg(std::lround(*report->summary.hours[0].meanHumidity)));
    page_->showMonth(date::year{2025} / 5);
    // 14 May at noon: 18 days of 9 h are still to come, so no mean of the month can be given yet.
    EXPECT_TRUE(label("completeness").contains(QStringLiteral("No mean")))
        << label("completeness").toStdString();
}

TEST_F(MonthPageCase, AnEmptyMonthIsASentence) {
    show();
    page_->showMonth(date::year{2024} / 1);
    EXPECT_TRUE(page_->findChild<QLabel*>(QStringLiteral("empty"))->isVisible());
    EXPECT_TRUE(label("empty").contains(QStringLiteral("January 2024")));
    EXPECT_TRUE(page_->findChild<QLabel*>(QStringLiteral("chartEmpty"))->isVisible());
}

TEST_F(MonthPageCase, ReturnAndExportWriteFiles) {
    show();
    const QString folder = folder_.filePath(QStringLiteral("return"));
    const QString said = page_->writeReturn(folder, Paper::Letter);
    EXPECT_TRUE(said.contains(QLatin1Char('7'))) << said.toStdString();
    EXPECT_EQ(QDir(folder).entryList(QDir::Files).size(), 7);
    const QString csv = folder_.filePath(QStringLiteral("all.csv"));
    page_->exportAll(csv);
    QFile file(csv);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().count('\n'), 1 + session_->book().observationCount().value());
    EXPECT_TRUE(QFile::exists(csv + QStringLiteral("-metadata.json")));
    const QString refused = page_->exportAll(folder_.filePath(QStringLiteral("no/such/place.csv")));
    EXPECT_TRUE(refused.contains(QStringLiteral("place.csv"))) << refused.toStdString();
    EXPECT_EQ(label("message"), refused);
}

TEST_F(MonthPageCase, AnExportThatIsStoppedWritesNothing) {
    const QString csv = folder_.filePath(QStringLiteral("stopped.csv"));
    std::size_t last = 0;
    std::size_t whole = 0;
    const auto done = exportObservations(*session_, csv, [&](std::size_t finished, std::size_t total) {
        EXPECT_GE(finished, last) << "it goes on";
        last = finished;
        whole = total;
        return true;
    });
    ASSERT_TRUE(done);
    EXPECT_LE(last, whole);
    EXPECT_GE(2 * last, whole) << "half the way is writing the rows";
    ASSERT_TRUE(QFile::remove(csv));
    ASSERT_TRUE(QFile::remove(csv + QStringLiteral("-metadata.json")));
    // At the first question, and once the rows are being written.
    for (const std::size_t patience : {std::size_t{0}, whole / 2 - 1}) {
        const auto stopped = exportObservations(
            *session_, csv, [&](std::size_t finished, std::size_t) { return finished < patience; });
        ASSERT_FALSE(stopped);
        EXPECT_EQ(stopped.error(), QStringLiteral("Stopped; nothing was written."));
        EXPECT_FALSE(QFile::exists(csv));
        EXPECT_FALSE(QFile::exists(csv + QStringLiteral("-metadata.json")));
    }
}

TEST_F(MonthPageCase, AReadingWrittenElsewhereAppears) {
    show();
    ASSERT_EQ(chart_->humidity().lines().size(), 4);
    write(reading(day(2025, 5, 6), 9h, "13.1", "11.0"));
    EXPECT_EQ(chart_->humidity().lines().size(), 3) << "9 h is whole again";
}

TEST_F(MonthPageCase, WheelZoomsAndDragMoves) {
    show();
    const auto views = page_->findChildren<ChartHandView*>();
    auto* view = *std::find_if(views.begin(), views.end(), [](auto* each) { return each->isVisible(); });
    const auto length = chart_->to() - chart_->from();
    QWheelEvent wheel(QPointF{300, 60}, view->viewport()->mapToGlobal(QPointF{300, 60}), {}, {0, 120},
                      Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QApplication::sendEvent(view->viewport(), &wheel);
    EXPECT_LT(chart_->to() - chart_->from(), length);
    const auto from = chart_->from();
    QTest::mousePress(view->viewport(), Qt::LeftButton, {}, {300, 60});
    QTest::mouseMove(view->viewport(), {360, 60});
    QTest::mouseRelease(view->viewport(), Qt::LeftButton, {}, {360, 60});
    EXPECT_LT(chart_->from(), from) << "dragging to the right shows what was before";
}

TEST_F(MonthPageCase, TheYearsLieOverOneAnother) {
    fill(day(2023, 4, 20), day(2023, 5, 20), {});
    fill(day(2024, 4, 20), day(2024, 5, 20), {day(2024, 5, 3)});
    show();
    page_->showMonth(date::year{2025} / 5);
    chart_->setKind(ChartKind::YearsTogether);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !chart_->isReading(); }, 60'000));
    const YearsChart& years = chart_->stage().years();
    EXPECT_THAT(years.otherYears(), testing::ElementsAre(date::year{2023}, date::year{2024}));
    // 9 h: 2023 whole, 2024 and 2025 each in two runs round a gap that stays open.
    EXPECT_EQ(years.series().size(), 5);
    chart_->setFocus();
    QTest::keyClick(chart_, Qt::Key_Up);
    EXPECT_EQ(chart_->stage().singledOut(), date::year{2023});
    EXPECT_EQ(label("told"), QStringLiteral("2023 singled out"));
    QTest::keyClick(chart_, Qt::Key_Up);
    QTest::keyClick(chart_, Qt::Key_Up);
    EXPECT_FALSE(chart_->stage().singledOut()) << "beyond the last year lies none";
}

TEST_F(MonthPageCase, TheAirAndThePair) {
    show();
    for (const ChartKind kind : {ChartKind::Air, ChartKind::Pair}) {
        chart_->setKind(kind);
        chart_->setFocus();
        QTest::keyClick(chart_, Qt::Key_Right);
        EXPECT_TRUE(chart_->caret().has_value());
        EXPECT_EQ(label("told"), chart_->caretWords());
    }
    // Five curves of humidity, of which some may leave the plot at once.
    EXPECT_GE(chart_->stage().air().series().size(), 3);
    EXPECT_FALSE(chart_->stage().pair().isDense());
}

TEST_F(MonthPageCase, PicturesOfEveryKind) {
    show();
    for (int kind = 0; kind < kChartKinds; ++kind) {
        chart_->setKind(static_cast<ChartKind>(kind));
        ASSERT_TRUE(QTest::qWaitFor([&] { return !chart_->isReading(); }, 60'000));
        const QString png = folder_.filePath(QStringLiteral("%1.png").arg(kind));
        const QString svg = folder_.filePath(QStringLiteral("%1.SVG").arg(kind));
        EXPECT_TRUE(chart_->savePicture(png).contains(QStringLiteral("was written"))) << kind;
        EXPECT_TRUE(chart_->savePicture(svg).contains(QStringLiteral("was written"))) << kind;
        const QImage image(png);
        EXPECT_EQ(image.width(), 2400);
        EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 300, 0.5);
        QSvgRenderer renderer(svg);
        EXPECT_TRUE(renderer.isValid());
    }
    EXPECT_EQ(chart_->savePicture(folder_.filePath(QStringLiteral("chart.bmp"))),
              QStringLiteral("A picture is PNG or SVG: let the name end in .png or .svg."));
    EXPECT_TRUE(chart_->savePicture(folder_.filePath(QStringLiteral("no/such/chart.png")))
                    .contains(QStringLiteral("could not be written")));
    chart_->setFocus();
    QTest::keyClick(chart_, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->image().width(), 2400);
}

TEST_F(MonthPageCase, TheNumbersAreCopiedAsATable) {
    show();
    auto* numbers = page_->findChild<QTableView*>(QStringLiteral("numbers"));
    ASSERT_NE(numbers, nullptr);
    ASSERT_GT(numbers->model()->rowCount(), 10);
    numbers->setFocus();
    QTest::keyClick(numbers, Qt::Key_C, Qt::ControlModifier);
    const QStringList lines =
        QGuiApplication::clipboard()->text().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), numbers->model()->rowCount() + 1); // the heads too
    for (const QString& line : lines) {
        EXPECT_EQ(line.count(QLatin1Char('\t')), numbers->model()->columnCount() - 1) << qPrintable(line);
    }
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("mean relative humidity\t")));
}

} // namespace

} // namespace wickbook::ui
