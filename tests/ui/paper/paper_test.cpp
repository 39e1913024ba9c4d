// SPDX-License-Identifier: GPL-3.0-or-later
// The dialogs for sheets on paper, over a real book: what they make is what is printed.
#include "tests/support/open_book.h"
#include "ui/paper/paper_choices.h"

#include <QBuffer>
#include <QComboBox>
#include <QLabel>
#include <QPdfWriter>
#include <QPushButton>
#include <QtTest/QTest>

namespace wickbook::ui {

namespace {

int pagesOf(const PaperSheet& sheet) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        setUpPdf(writer, sheet.title, sheet.paper);
        EXPECT_TRUE(sheet.paint(writer));
    }
    return static_cast<int>(bytes.count("/Type /Page\n"));
}

class PaperChoices : public ::testing::Test {
protected:
    test::OpenBook book_;
};

TEST_F(PaperChoices, EachSheetIsMadeAsItIsChosen) {
    const auto table = humidityTableDialog(book_.session(), QLocale::c(), nullptr);
    auto sheet = table->sheet();
    ASSERT_TRUE(sheet);
    EXPECT_TRUE(sheet->title.contains(QStringLiteral("Humidity table")));
    const int halves = pagesOf(*sheet);
    EXPECT_GT(halves, 4);
    auto* step = table->findChild<QComboBox*>(QStringLiteral("tableStep"));
    step->setCurrentIndex(1);
    EXPECT_LT(pagesOf(*table->sheet()), halves) << "whole degrees need fewer columns";
    auto* paper = table->findChild<QComboBox*>(QStringLiteral("paperSize"));
    paper->setCurrentIndex(1);
    EXPECT_EQ(table->sheet()->paper, Paper::Letter);

    // The clock of the case stands at 22 November 2026: December is offered.
    const auto form = monthFormDialog(book_.session(), QLocale::c(), nullptr);
    EXPECT_EQ(form->findChild<QComboBox*>(QStringLiteral("formMonth"))->currentText(),
              QStringLiteral("December 2026"));
    sheet = form->sheet();
    ASSERT_TRUE(sheet);
    EXPECT_TRUE(sheet->title.contains(QStringLiteral("December 2026"))) << sheet->title.toStdString();
    EXPECT_EQ(pagesOf(*sheet), 2);

    const auto card = deputyCardDialog(book_.session(), QLocale::c(), nullptr);
    sheet = card->sheet();
    ASSERT_TRUE(sheet);
    EXPECT_EQ(sheet->paper, Paper::A5);
    EXPECT_EQ(pagesOf(*sheet), 2);
    EXPECT_EQ(card->findChild<QComboBox*>(QStringLiteral("paperSize")), nullptr)
        << "a card has a size of its own";
}

TEST_F(PaperChoices, ATableNeedsACoefficient) {
    record::PeriodChange change;
    change.id = record::Uuid::random();
    change.from = book_.session().now() - std::chrono::hours{24};
    change.exposure = psychrometry::Exposure::Own; // and no coefficient
    record::StationFacts facts = book_.session().station().facts();
    facts.periods.push_back(change);
    ASSERT_TRUE(book_.session().reviseFacts(facts, {"A", "x"}));
    const auto table = humidityTableDialog(book_.session(), QLocale::c(), nullptr);
    table->show();
    EXPECT_FALSE(table->sheet());
    EXPECT_EQ(table->findChild<QLabel*>(QStringLiteral("paperSaid"))->text(),
              QStringLiteral(
                  "There is no table without a coefficient: say on the page Station how the thermometers "
                  "hang."));
}

TEST_F(PaperChoices, EscapeClosesAndTabReachesEveryButton) {
    const auto form = monthFormDialog(book_.session(), QLocale::c(), nullptr);
    form->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(form.get()));
    QStringList seen;
    for (int step = 0; step < 12; ++step) {
        if (QWidget* focus = form->focusWidget()) {
            seen << focus->objectName();
        }
        QTest::keyClick(form.get(), Qt::Key_Tab);
    }
    for (const char* name :
         {"formMonth", "paperSize", "paperPreview", "paperPrint", "paperSave", "paperClose"}) {
        EXPECT_TRUE(seen.contains(QLatin1String(name))) << name;
    }
    QTest::keyClick(form.get(), Qt::Key_Escape);
    EXPECT_FALSE(form->isVisible());
}

} // namespace

} // namespace wickbook::ui
