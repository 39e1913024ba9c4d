// SPDX-License-Identifier: GPL-3.0-or-later
// Limits of the checks in the window: seen by rule, changed with a reason after a count, undone by one more
// revision.
#include "tests/support/open_book.h"
#include "ui/commands/revise_limits.h"
#include "ui/station/limits_form.h"
#include "ui/station/limits_model.h"
#include "ui/station/limits_section.h"
#include "ui/text/limit_words.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <QTreeView>

namespace {

using namespace wickbook;
using namespace std::chrono_literals;

constexpr auto kVeryDry = "very-dry.lowest-humidity";

record::LimitChanges with(const std::string& name, double value) {
    record::LimitChanges changes;
    changes[{name}] = value;
    return changes;
}

QString cell(const ui::LimitsModel& model, std::string_view limit, int column) {
    const QModelIndex index = model.indexOf(limit);
    return index.sibling(index.row(), column).data().toString();
}

std::size_t revisions(test::OpenBook& book) {
    return book.session().book().limitHistory()->size();
}

/// A dry afternoon, marked as built in.
void writeDryReading(ui::Session& session) {
    store::ObservationChange change;
    record::placeInTime(change.values, session.station(), date::sys_days{date::year{2026} / 7 / 1} + 9h);
    change.values.dry.value = units::ReadTemperature{{300, 1}, units::TemperatureUnit::Celsius};
    change.values.wet.value = units::ReadTemperature{{134, 1}, units::TemperatureUnit::Celsius};
    ASSERT_TRUE(session.write(change).has_value());
}

TEST(LimitWords, NoLimitIsWithoutWords) {
    for (const checks::LimitEntry& entry : checks::limitTable()) {
        const QString name = QString::fromUtf8(entry.name.data(), static_cast<qsizetype>(entry.name.size()));
        EXPECT_NE(ui::limitNameWords(entry.name), name) << entry.name;
        const auto rule = ui::limitRuleWords(ui::ruleOfLimit(entry.name));
        EXPECT_TRUE(rule.does.endsWith(QLatin1Char('.'))) << entry.name;
        EXPECT_FALSE(rule.does.contains(QLatin1Char('!'))) << entry.name;
        // What is shown and typed back is the same limit, in either unit.
        for (const auto unit : {units::TemperatureUnit::Celsius, units::TemperatureUnit::Fahrenheit}) {
            EXPECT_NEAR(ui::limitFromShown(entry, ui::shownLimit(entry, entry.value, unit), unit),
                        entry.value, 1e-9)
                << entry.name;
        }
    }
    const auto* step = checks::limitEntry("step-temperature.within-3-hours");
    EXPECT_EQ(ui::limitValueWords(QLocale::c(), *step, 9, units::TemperatureUnit::Fahrenheit),
              QStringLiteral("16.2\u00A0°F"));
    const auto* frost = checks::limitEntry("gross-temperature.high-summer-doubtful-low");
    EXPECT_EQ(ui::limitValueWords(QLocale::c(), *frost, -30, units::TemperatureUnit::Fahrenheit),
              QStringLiteral("\u221222\u00A0°F"));
}

TEST(LimitsModel, IsSoundAndFollowsTheBook) {
    test::OpenBook book;
    ui::LimitsModel model(book.session(), QLocale::c());
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    ASSERT_TRUE(model.indexOf(kVeryDry).isValid());
    EXPECT_EQ(cell(model, kVeryDry, ui::LimitsModel::Here), QStringLiteral("as built in"));
    EXPECT_EQ(cell(model, "wet-above-dry.tolerance", ui::LimitsModel::Here), QStringLiteral("fixed"));
    record::StationFacts facts = book.session().station().facts();
    facts.limits[{kVeryDry}] = 4;
    facts.limits[{kVeryDry, date::sys_days{date::year{2027} / 1 / 1}}] = 8; // not yet
    ASSERT_TRUE(book.session().reviseFacts(facts, {"B", "dry plain"}).has_value());
    model.load();
    EXPECT_EQ(cell(model, kVeryDry, ui::LimitsModel::Here), QStringLiteral("4\u00A0%"));
    EXPECT_EQ(cell(model, kVeryDry, ui::LimitsModel::Since), QStringLiteral("the beginning"));
    EXPECT_EQ(cell(model, kVeryDry, ui::LimitsModel::Why), QStringLiteral("dry plain (B)"));
}

TEST(ReviseLimits, UndoAndRedoAppendAndLeaveTheRestAlone) {
    test::OpenBook book;
    ui::Session& session = book.session();
    EXPECT_TRUE(ui::ReviseLimits::perform(session, {}, {"A", "none"}, "nothing").has_value());
    EXPECT_EQ(session.undoStack().count(), 0) << "a change that changes nothing is not pushed";
    ASSERT_TRUE(ui::ReviseLimits::perform(session, with(kVeryDry, 4), {"A", "dry"}, "limit").has_value());
    EXPECT_EQ(revisions(book), 1U);
    // Something else of the station changes meanwhile; undo must not take it along.
    record::StationFacts facts = session.station().facts();
    record::PeriodChange moved;
    moved.id = record::Uuid::random();
    moved.from = date::sys_days{date::year{2026} / 10 / 1};
    moved.elevation = units::Elevation::fromMetres(310);
    facts.periods.push_back(moved);
    ASSERT_TRUE(session.reviseFacts(facts, {"A", "moved"}).has_value());
    session.undoStack().undo();
    EXPECT_TRUE(session.station().facts().limits.empty());
    EXPECT_EQ(session.station().periods().size(), 2U);
    EXPECT_EQ(revisions(book), 2U);
    session.undoStack().redo();
    EXPECT_EQ(session.station().facts().limits, with(kVeryDry, 4));
    EXPECT_EQ(revisions(book), 3U);
    EXPECT_EQ(session.book().limitHistory()->back().stamp.author.why, "done again: limit");
    EXPECT_TRUE(session.book().verify()->sound());
}

TEST(LimitForm, CountsBeforeItKeeps) {
    test::OpenBook book;
    writeDryReading(book.session());
    ui::LimitForm form(book.session(), *checks::limitEntry(kVeryDry), false, QLocale::c());
    auto& value = *form.findChild<QLineEdit*>(QStringLiteral("limitValue"));
    auto& why = *form.findChild<QLineEdit*>(QStringLiteral("limitWhy"));
    auto& keep = *form.findChild<QPushButton*>(QStringLiteral("limitKeep"));
    const auto& message = *form.findChild<QLabel*>(QStringLiteral("limitMessage"));
    form.show();
    EXPECT_EQ(value.text(), QStringLiteral("10"));
    EXPECT_EQ(keep.text(), QStringLiteral("See what changes"));
    value.setFocus();
    value.selectAll();
    QTest::keyClicks(&value, QStringLiteral("400"));
    QTest::keyClick(&value, Qt::Key_Return);
    EXPECT_TRUE(message.text().contains(QStringLiteral("0 to 100"))) << message.text().toStdString();
    value.selectAll();
    QTest::keyClicks(&value, QStringLiteral("2"));
    QTest::keyClick(&value, Qt::Key_Return);
    EXPECT_TRUE(message.text().contains(QStringLiteral("why"))) << message.text().toStdString();
    QTest::keyClicks(&why, QStringLiteral("dry plain"));
    QTest::keyClick(&why, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return keep.text() == QStringLiteral("Keep it"); }, 20000));
    EXPECT_TRUE(
        message.text().startsWith(QStringLiteral("Of 1 reading in the book 1 would be judged otherwise")))
        << message.text().toStdString();
    EXPECT_EQ(form.result(), 0);
    // Another value asks anew.
    QTest::keyClicks(&value, QStringLiteral("0"));
    EXPECT_EQ(keep.text(), QStringLiteral("See what changes"));
    QTest::keyClick(&value, Qt::Key_Backspace);
    QTest::keyClick(&value, Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return keep.text() == QStringLiteral("Keep it"); }, 20000));
    QTest::keyClick(&keep, Qt::Key_Space);
    EXPECT_EQ(form.result(), static_cast<int>(QDialog::Accepted));
    ASSERT_TRUE(form.changes().has_value());
    EXPECT_EQ(*form.changes(), with(kVeryDry, 2));
    EXPECT_EQ(form.why(), QStringLiteral("dry plain"));
}

TEST(LimitForm, CanBeClosedWhileItCounts) {
    test::OpenBook book;
    writeDryReading(book.session());
    auto form =
        std::make_unique<ui::LimitForm>(book.session(), *checks::limitEntry(kVeryDry), false, QLocale::c());
    form->findChild<QLineEdit*>(QStringLiteral("limitValue"))->setText(QStringLiteral("2"));
    form->findChild<QLineEdit*>(QStringLiteral("limitWhy"))->setText(QStringLiteral("dry"));
    form->show();
    form->accept();
    form.reset(); // the thread is stopped and waited for
    EXPECT_EQ(revisions(book), 0U);
}

TEST(LimitsSection, IsFoldedAwayAndShowsALimitWithItsHistory) {
    test::OpenBook book;
    ui::LimitsSection section(book.session(), QLocale::c());
    section.resize(900, 600);
    section.show();
    auto& view = *section.findChild<QTreeView*>(QStringLiteral("limits"));
    auto& fold = *section.findChild<QPushButton*>(QStringLiteral("limitsFold"));
    auto& back = *section.findChild<QPushButton*>(QStringLiteral("limitBack"));
    const auto& history = *section.findChild<QListWidget*>(QStringLiteral("limitHistory"));
    EXPECT_FALSE(view.isVisible());
    QTest::keyClick(&fold, Qt::Key_Space);
    EXPECT_TRUE(view.isVisible());
    const auto& model = *qobject_cast<ui::LimitsModel*>(view.model());
    view.setCurrentIndex(model.indexOf(kVeryDry));
    EXPECT_TRUE(section.findChild<QLabel*>(QStringLiteral("limitsDoes"))
                    ->text()
                    .contains(QStringLiteral("drier than it usually gets")));
    EXPECT_FALSE(back.isEnabled());
    EXPECT_FALSE(history.isVisible());
    EXPECT_TRUE(section.keep(with(kVeryDry, 4), kVeryDry, false, QStringLiteral("dry plain")).isEmpty());
    EXPECT_EQ(model.limitAt(view.currentIndex()), checks::limitEntry(kVeryDry)) << "the choice stays";
    EXPECT_TRUE(back.isEnabled());
    ASSERT_EQ(history.count(), 1);
    EXPECT_TRUE(history.item(0)->text().contains(QStringLiteral("4\u00A0%, from the beginning · dry plain")))
        << history.item(0)->text().toStdString();
    book.session().undoStack().undo();
    EXPECT_EQ(history.count(), 2);
    EXPECT_FALSE(back.isEnabled());
    view.setCurrentIndex(model.indexOf("wet-above-dry.tolerance"));
    EXPECT_FALSE(section.findChild<QPushButton*>(QStringLiteral("limitChange"))->isEnabled());
}

} // namespace
