// SPDX-License-Identifier: GPL-3.0-or-later
// Absences and the exposure diary on the Station page, by keys alone and in a real book.
#include "tests/support/open_book.h"
#include "ui/commands/revise_facts.h"
#include "ui/station/absence_form.h"
#include "ui/station/absence_section.h"
#include "ui/station/diary_form.h"
#include "ui/station/station_page.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QTimer>

namespace {

using namespace wickbook;
using test::day;

QLineEdit& field(QWidget& form, const char* name) {
    return *form.findChild<QLineEdit*>(QLatin1String(name));
}

/// What a person types into the dialog that comes up next; each text goes where the focus is, then Tab.
void typeIntoNext(const QStringList& texts) {
    QTimer::singleShot(0, qApp, [texts] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        QApplication::setActiveWindow(dialog);
        EXPECT_TRUE(QTest::qWaitForWindowActive(dialog));
        if (dialog->focusWidget() == nullptr) {
            dialog->reject(); // it must not hang
            FAIL() << "nothing has the focus";
        }
        for (const QString& text : texts) {
            QWidget* at = dialog->focusWidget();
            if (auto* edit = qobject_cast<QLineEdit*>(at)) {
                edit->selectAll();
            }
            QTest::keyClicks(at, text);
            QTest::keyClick(at, Qt::Key_Tab);
        }
        QTest::keyClick(dialog->focusWidget(), Qt::Key_Return);
        if (dialog->isVisible()) {
            dialog->reject(); // the case fails below; it must not hang
            ADD_FAILURE() << "the dialog did not take what was typed";
        }
    });
}

record::Absence twoWeeks() {
    return {record::Uuid::random(), day(2026, 12, 20), day(2027, 1, 3), "away", "", "", false};
}

TEST(Absences, AreAddedChangedTakenBackAndUndoneByKeys) {
    test::OpenBook book;
    ui::Session& session = book.session();
    ui::StationPage page(session);
    page.show();
    auto& fold = *page.findChild<QPushButton*>(QStringLiteral("absenceFold"));
    auto& list = *page.findChild<QListWidget*>(QStringLiteral("absenceList"));
    EXPECT_FALSE(list.isVisible());
    QTest::keyClick(&fold, Qt::Key_Space);
    typeIntoNext({QStringLiteral("2026-12-20"), QStringLiteral("2027-01-03"), QStringLiteral("away"),
                  QStringLiteral("EW"), QStringLiteral("key at No. 4")});
    QTest::keyClick(page.findChild<QPushButton*>(QStringLiteral("absenceAdd")), Qt::Key_Space);
    ASSERT_EQ(list.count(), 1);
    EXPECT_EQ(list.item(0)->text(),
              QStringLiteral("20 Dec 2026 to 3 Jan 2027: away · EW reads · key at No. 4"));
    EXPECT_TRUE(list.isVisible());
    const record::Absence kept = session.station().facts().absences.at(0);
    EXPECT_EQ(kept.deputy, "EW");
    EXPECT_EQ(kept.from, day(2026, 12, 20));

    typeIntoNext({QStringLiteral("2026-12-21")});
    QTest::keyClick(&list, Qt::Key_Return);
    EXPECT_EQ(session.station().facts().absences.at(0).from, day(2026, 12, 21));
    EXPECT_EQ(session.station().facts().absences.at(0).id, kept.id) << "a revision, not another absence";

    QTest::keyClick(&list, Qt::Key_Delete);
    EXPECT_TRUE(session.station().facts().absences.empty());
    session.undoStack().undo();
    session.undoStack().undo();
    EXPECT_EQ(session.station().facts().absences, std::vector{kept});
    EXPECT_EQ(list.count(), 1);
    session.undoStack().redo();
    EXPECT_EQ(session.station().facts().absences.at(0).from, day(2026, 12, 21));
    session.undoStack().undo();
    session.undoStack().undo();
    EXPECT_TRUE(session.station().facts().absences.empty());
    EXPECT_TRUE(session.book().verify()->sound());
}

TEST(Absences, UndoLeavesWhatElseBecameKnown) {
    test::OpenBook book;
    ui::Session& session = book.session();
    const record::Absence absence = twoWeeks();
    ASSERT_TRUE(ui::reviseFact<record::Absence>(session, std::nullopt, absence, {"A", ""}, "absence"));
    record::StationFacts facts = session.station().facts();
    facts.diary.push_back({record::Uuid::random(), day(2026, 11, 1), record::DiaryKind::Painted, "", false});
    ASSERT_TRUE(session.reviseFacts(facts, {"B", ""}));
    session.undoStack().undo();
    EXPECT_TRUE(session.station().facts().absences.empty());
    EXPECT_EQ(session.station().facts().diary.size(), 1U);
    // What changes nothing is not pushed.
    const int count = session.undoStack().count();
    ASSERT_TRUE(
        ui::reviseFact<record::DiaryEntry>(session, facts.diary[0], facts.diary[0], {"A", ""}, "nothing"));
    EXPECT_EQ(session.undoStack().count(), count);
}

TEST(AbsenceForm, SaysWhatItCannotTake) {
    ui::AbsenceForm form(std::nullopt, day(2026, 11, 22));
    EXPECT_TRUE(form.absence().has_value());
    field(form, "absenceTo").setText(QStringLiteral("2026-11-21"));
    ASSERT_FALSE(form.absence().has_value());
    EXPECT_TRUE(form.absence().error().contains(QStringLiteral("last day")));
    field(form, "absenceTo").setText(QStringLiteral("2026-02-30"));
    EXPECT_FALSE(form.absence().has_value());
    field(form, "absenceTo").setText(QStringLiteral("2026-11-30"));
    form.findChild<QComboBox*>(QStringLiteral("absenceReason"))->setEditText(QString{});
    ASSERT_FALSE(form.absence().has_value());
    EXPECT_TRUE(form.absence().error().contains(QStringLiteral("reason")));
}

TEST(ExposureDiary, IsKeptByKeysNewestFirst) {
    test::OpenBook book;
    ui::DiarySection section(book.session());
    section.show();
    QTest::keyClick(section.findChild<QPushButton*>(QStringLiteral("diaryFold")), Qt::Key_Space);
    auto& list = *section.findChild<QListWidget*>(QStringLiteral("diaryList"));
    const auto add = [&](const QStringList& texts) {
        typeIntoNext(texts);
        QTest::keyClick(section.findChild<QPushButton*>(QStringLiteral("diaryAdd")), Qt::Key_Space);
    };
    add({QStringLiteral("2026-05-01"), QStringLiteral("screen p"), QStringLiteral("two coats of white")});
    add({QStringLiteral("2026-08-01"), QStringLiteral("hedge"), QString{}});
    ASSERT_EQ(list.count(), 2);
    EXPECT_EQ(list.item(0)->text(), QStringLiteral("1 Aug 2026: hedge or trees grown"));
    EXPECT_EQ(list.item(1)->text(), QStringLiteral("1 May 2026: screen painted · two coats of white"));
    QTest::keyClick(&list, Qt::Key_Delete);
    ASSERT_EQ(list.count(), 1);
    book.session().undoStack().undo();
    EXPECT_EQ(list.count(), 2);
    EXPECT_TRUE(book.session().book().verify()->sound());
}

TEST(DiaryForm, AsksForWhatOtherMeansAndForThePast) {
    ui::DiaryForm form(std::nullopt, day(2026, 11, 22));
    EXPECT_TRUE(form.entry().has_value());
    auto& kind = *form.findChild<QComboBox*>(QStringLiteral("diaryKind"));
    kind.setCurrentIndex(static_cast<int>(record::DiaryKind::Other));
    ASSERT_FALSE(form.entry().has_value());
    EXPECT_TRUE(form.entry().error().contains(QStringLiteral("note")));
    field(form, "diaryNote").setText(QStringLiteral("lightning in the lime tree"));
    EXPECT_TRUE(form.entry().has_value());
    field(form, "diaryDate").setText(QStringLiteral("2026-11-23"));
    ASSERT_FALSE(form.entry().has_value());
    EXPECT_TRUE(form.entry().error().contains(QStringLiteral("still to come")));
}

} // namespace
