// SPDX-License-Identifier: GPL-3.0-or-later
// What pages say of what they can't do: the sentences themselves.
#include "tests/support/open_book.h"
#include "ui/station/period_section.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

namespace {

using namespace wickbook;

TEST(PeriodSectionSentences, TheBeginningStays) {
    test::OpenBook book;
    ui::PeriodSection section(book.session());
    section.show();
    QTest::keyClick(section.findChild<QPushButton*>(QStringLiteral("periodFold")), Qt::Key_Space);
    auto& list = *section.findChild<QListWidget*>(QStringLiteral("periodList"));
    ASSERT_EQ(list.count(), 1);
    list.setCurrentRow(0);
    QTest::keyClick(&list, Qt::Key_Delete);
    bool said = false;
    for (const QLabel* label : section.findChildren<QLabel*>()) {
        said = said ||
               label->text() == QStringLiteral("The beginning can't be taken back, for a station must stand "
                                               "somewhere. Change it instead.");
    }
    EXPECT_TRUE(said);
    EXPECT_EQ(book.session().station().facts().periods.size(), 1U);
}

} // namespace
