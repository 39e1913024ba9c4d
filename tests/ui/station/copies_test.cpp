// SPDX-License-Identifier: GPL-3.0-or-later
// Copies on the Station page and restoring from one, by keys, over real books.
#include "tests/support/open_book.h"
#include "ui/station/copies_section.h"
#include "ui/station/restore_dialog.h"

#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace {

using namespace wickbook;
using test::day;

class CopiesTest : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(book_.isOpen());
        book_.keep(day(2026, 11, 21), 9, {120, 1}, {110, 1});
    }
    [[nodiscard]] ui::CopyKeeper& keeper() { return book_.session().copies(); }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !keeper().doing(); }, 20000));
    }
    void settle(const ui::RestoreDialog& dialog) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog.isBusy(); }, 20000));
    }
    template <typename T>
    static T& find(const QWidget& widget, const char* name) {
        T* found = widget.findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }
    static void press(const QWidget& widget, const char* name) {
        auto& button = find<QPushButton>(widget, name);
        ASSERT_TRUE(button.isVisible() && button.isEnabled()) << name;
        button.setFocus();
        QTest::keyClick(&button, Qt::Key_Space);
    }
    [[nodiscard]] QString file(const char* name) const {
        return QDir(book_.folder()).filePath(QLatin1String(name));
    }
    [[nodiscard]] QDir shelf() const { return QDir(file("hill copies")); }

    test::OpenBook book_;
};

TEST_F(CopiesTest, AreSeenMadeAndVerifiedByKeys) {
    keeper().begin({});
    settle();
    ui::CopiesSection section(book_.session(), QLocale::c());
    section.show();
    EXPECT_TRUE(find<QPushButton>(section, "copiesFold").text().contains(QStringLiteral("last 22 Nov 2026")))
        << find<QPushButton>(section, "copiesFold").text().toStdString();
    press(section, "copiesFold");
    settle();
    auto& list = find<QListWidget>(section, "copiesList");
    ASSERT_EQ(list.count(), 1);
    EXPECT_TRUE(list.item(0)->text().contains(QStringLiteral("daily · 1 reading · verified")))
        << list.item(0)->text().toStdString();
    EXPECT_EQ(find<QLabel>(section, "copiesWhere").text(),
              QStringLiteral("Where: the folder “hill copies” beside the book"));

    book_.clock()->set(book_.clock()->now() + std::chrono::hours{24});
    book_.keep(day(2026, 11, 21), 21, {121, 1}, {111, 1});
    press(section, "copiesNow");
    settle();
    EXPECT_EQ(list.count(), 2);
    EXPECT_TRUE(find<QLabel>(section, "copiesMessage")
                    .text()
                    .startsWith(QStringLiteral("Kept and verified: “hill copy 20261123T085200Z by-hand")));
    press(section, "copiesVerifyAll");
    settle();
    EXPECT_EQ(find<QLabel>(section, "copiesMessage").text(),
              QStringLiteral("Verified: 2 copies, every page and the whole chain of revisions."));

    find<QCheckBox>(section, "copiesDaily").setFocus();
    QTest::keyClick(&find<QCheckBox>(section, "copiesDaily"), Qt::Key_Space);
    settle();
    EXPECT_FALSE(keeper().choice().daily);
    EXPECT_TRUE(
        find<QLabel>(section, "copiesMessage").text().startsWith(QStringLiteral("No copy is kept by")));
}

TEST_F(CopiesTest, ThatFailAreToldOnThePage) {
    keeper().begin({true, file("stick")});
    settle();
    ui::CopiesSection section(book_.session(), QLocale::c());
    section.show();
    EXPECT_TRUE(
        find<QPushButton>(section, "copiesFold").text().contains(QStringLiteral("the last one failed")));
    press(section, "copiesFold");
    settle();
    EXPECT_TRUE(find<QLabel>(section, "copiesLast").text().contains(QStringLiteral("Plug in the drive")));
}

TEST_F(CopiesTest, OfTheSampleStationAreNotKept) {
    ui::CopiesSection section(book_.session(), QLocale::c()); // nobody said begin()
    section.show();
    press(section, "copiesFold");
    settle();
    EXPECT_TRUE(find<QLabel>(section, "copiesLast").text().contains(QStringLiteral("keeps no copies")));
    EXPECT_FALSE(find<QPushButton>(section, "copiesNow").isVisible());
    EXPECT_FALSE(shelf().exists());
}

TEST_F(CopiesTest, OneToHandOnIsReadOnly) {
    ui::CopiesSection section(book_.session(), QLocale::c());
    section.show();
    section.handOn(file("for the club.wickbook"));
    auto& message = find<QLabel>(section, "copiesMessage");
    ASSERT_TRUE(QTest::qWaitFor([&] { return message.text() != QStringLiteral("Making the copy…"); }, 20000));
    EXPECT_EQ(message.text(),
              QStringLiteral("“for the club.wickbook” is written, verified, and set to be read only."));
    EXPECT_FALSE(QFile(file("for the club.wickbook")).permissions().testFlag(QFileDevice::WriteOwner));
    section.handOn(file("for the club.wickbook"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return message.text() != QStringLiteral("Making the copy…"); }, 20000));
    EXPECT_TRUE(message.text().contains(QStringLiteral("is there already"))) << message.text().toStdString();
}

TEST_F(CopiesTest, AreRestoredIntoANewBookAndHeldAgainstTheOldOne) {
    keeper().begin({});
    settle();
    book_.keep(day(2026, 11, 21), 21, {121, 1}, {111, 1});
    ui::RestoreDialog dialog({keeper().folder(), book_.path(), {}}, QLocale::c());
    dialog.show();
    settle(dialog);
    auto& list = find<QListWidget>(dialog, "restoreCopies");
    ASSERT_EQ(list.count(), 1);
    EXPECT_EQ(list.currentRow(), 0);
    auto& name = find<QLineEdit>(dialog, "restoreNewBook");
    EXPECT_EQ(name.text(), file("hill restored from 2026-11-22.wickbook"));
    press(dialog, "restoreVerify");
    settle(dialog);
    auto& sentence = find<QLabel>(dialog, "restoreSentence");
    EXPECT_TRUE(sentence.text().contains(QStringLiteral("is sound: 1 reading")))
        << sentence.text().toStdString();

    // A name that is taken is refused and can be changed.
    name.setText(book_.path());
    press(dialog, "restoreGo");
    settle(dialog);
    EXPECT_TRUE(sentence.text().contains(QStringLiteral("is there already")));
    name.setText(QStringLiteral("anew"));
    press(dialog, "restoreGo");
    settle(dialog);
    EXPECT_TRUE(
        sentence.text().startsWith(QStringLiteral("Restored and verified: “anew.wickbook”, 1 reading.")))
        << sentence.text().toStdString();
    EXPECT_TRUE(sentence.text().contains(QStringLiteral("1 reading: only in “hill.wickbook”.")));
    auto& lines = find<QListWidget>(dialog, "restoreDifferences");
    ASSERT_EQ(lines.count(), 1);
    EXPECT_TRUE(lines.item(0)->text().startsWith(QStringLiteral("21 Nov 2026, 21 h: 12.1 / 11.1")))
        << lines.item(0)->text().toStdString();
    const auto fresh = store::Book::open(file("anew.wickbook").toStdString(), store::OpenMode::ReadOnly);
    ASSERT_TRUE(fresh);
    EXPECT_EQ(fresh->observationCount().value(), 1);
    EXPECT_EQ(book_.session().book().observationCount().value(), 2) << "the open book is as it was";

    QSignalSpy asked(&dialog, &ui::RestoreDialog::openBookAsked);
    press(dialog, "restoreOpen");
    ASSERT_EQ(asked.count(), 1);
    EXPECT_EQ(asked.front().front().toString(), file("anew.wickbook"));
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(CopiesTest, ThatAreDamagedAreNotRestored) {
    ASSERT_TRUE(book_.session().book().backupTo(file("copy.wickbook").toStdString()));
    QFile copy(file("copy.wickbook"));
    ASSERT_TRUE(copy.open(QIODevice::ReadWrite));
    const auto where = copy.readAll().indexOf("\"zone\":\"Europe/London\"");
    ASSERT_GT(where, 0);
    copy.seek(where + 8);
    copy.write("Africa");
    copy.close();
    ui::RestoreDialog dialog({{}, book_.path(), {}}, QLocale::c());
    dialog.show();
    dialog.takeFile(file("copy.wickbook"));
    find<QLineEdit>(dialog, "restoreNewBook").setText(file("anew.wickbook"));
    press(dialog, "restoreGo");
    settle(dialog);
    EXPECT_TRUE(find<QLabel>(dialog, "restoreSentence")
                    .text()
                    .startsWith(QStringLiteral("“copy.wickbook” does not verify: choose another copy.")))
        << find<QLabel>(dialog, "restoreSentence").text().toStdString();
    EXPECT_FALSE(QFileInfo::exists(file("anew.wickbook")));
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

} // namespace
