// SPDX-License-Identifier: GPL-3.0-or-later
// A class round as a teacher keys it in: the real window by keys, the sheets as real PDF files.
#include "ui/classround/class_window.h"
#include "ui/classround/pairs_model.h"
#include "ui/classround/pairs_view.h"
#include "ui/print/class_sheet.h"
#include "ui/print/pdf_page.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QBuffer>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPdfWriter>
#include <QPushButton>
#include <QtTest/QTest>
#include <gtest/gtest.h>

namespace wickbook::ui {

namespace {

class ClassRoundCase : public ::testing::Test {
protected:
    void SetUp() override {
        QLocale::setDefault(QLocale::c());
        ClassStart start;
        start.coefficient.exposure = psychrometry::Exposure::Whirled;
        window_ = std::make_unique<ClassWindow>(start);
        window_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window_.get()));
        QApplication::setActiveWindow(window_.get());
        view_ = window_->findChild<PairsView*>();
        ASSERT_NE(view_, nullptr);
    }

    /// Keys to whatever has the focus, as a keyboard sends them.
    void type(const QString& text) {
        for (const QChar letter : text) {
            QWidget* target = QApplication::focusWidget();
            ASSERT_NE(target, nullptr);
            if (letter == QLatin1Char('\n')) {
                QTest::keyClick(target, Qt::Key_Return);
            } else {
                QTest::keyClick(target, letter.toLatin1());
            }
        }
    }

    [[nodiscard]] QString cell(int row, int column) const {
        return window_->model().index(row, column).data().toString();
    }

    std::unique_ptr<ClassWindow> window_;
    PairsView* view_ = nullptr;
};

TEST_F(ClassRoundCase, IsTypedDryWetAndOnByEnterAlone) {
    EXPECT_TRUE(view_->hasFocus());
    type(QStringLiteral("23\n16\n23,5\n16\n"));
    EXPECT_EQ(cell(0, PairsModel::Dry), QStringLiteral("23"));
    EXPECT_EQ(cell(1, PairsModel::Dry), QStringLiteral("23,5")) << "what was typed stays as typed";
    // 23 / 16 °C whirled at 1013.25 hPa: 47.9 %, by the equation held against published tables elsewhere.
    EXPECT_EQ(cell(0, PairsModel::Humidity), QStringLiteral("48\u00A0%"));
    EXPECT_EQ(window_->model().rowCount(), 3) << "one empty line stays at the end";
    EXPECT_EQ(view_->currentIndex(), window_->model().index(2, PairsModel::Dry));
}

TEST_F(ClassRoundCase, NamesTheDryWickAndCountsWhoIsFarOff) {
    type(QStringLiteral("23\n16\n23\n16\n23\n16.5\n23\n15.5\n23\n22\n"));
    EXPECT_TRUE(cell(4, PairsModel::Notice).contains(QStringLiteral("wick was probably dry")))
        << cell(4, PairsModel::Notice).toStdString();
    EXPECT_TRUE(cell(0, PairsModel::Notice).isEmpty());
    const auto* summary = window_->findChild<QLabel*>(QStringLiteral("classSummary"));
    EXPECT_TRUE(summary->text().contains(QStringLiteral("5 pairs"))) << summary->text().toStdString();
    EXPECT_TRUE(summary->text().contains(QStringLiteral("Far off: 5."))) << summary->text().toStdString();
}

TEST_F(ClassRoundCase, WhatIsNoNumberStaysAndIsSaid) {
    type(QStringLiteral("2x\n16\n"));
    EXPECT_EQ(cell(0, PairsModel::Dry), QStringLiteral("2x"));
    EXPECT_TRUE(cell(0, PairsModel::Notice).contains(QStringLiteral("2x is not a number")));
    EXPECT_TRUE(cell(0, PairsModel::Humidity).isEmpty());
}

TEST_F(ClassRoundCase, BelowZeroAsksForWaterOrIceAndOneKeyAnswers) {
    type(QStringLiteral("-2\n-3\n"));
    EXPECT_TRUE(cell(0, PairsModel::Notice).contains(QStringLiteral("w for water or i for ice")))
        << cell(0, PairsModel::Notice).toStdString();
    view_->setCurrentIndex(window_->model().index(0, PairsModel::Wick));
    type(QStringLiteral("i\n"));
    EXPECT_EQ(cell(0, PairsModel::Wick), QStringLiteral("ice"));
    EXPECT_FALSE(cell(0, PairsModel::Humidity).isEmpty());
}

TEST_F(ClassRoundCase, ThermometersInFahrenheitGiveTheSameAir) {
    auto combos = window_->findChildren<QComboBox*>();
    for (QComboBox* combo : combos) {
        if (combo->findText(QStringLiteral("°F")) >= 0) {
            combo->setCurrentIndex(combo->findText(QStringLiteral("°F")));
        }
    }
    type(QStringLiteral("73.4\n60.8\n")); // 23 and 16 °C exactly
    EXPECT_EQ(cell(0, PairsModel::Humidity), QStringLiteral("48\u00A0%"));
    EXPECT_EQ(cell(0, PairsModel::Depression), QStringLiteral("12.6"));
}

TEST_F(ClassRoundCase, APressureThatCantBeIsSaidAndNotUsed) {
    type(QStringLiteral("23\n16\n"));
    QLineEdit* pressure = nullptr;
    for (QLineEdit* edit : window_->findChildren<QLineEdit*>()) {
        if (edit->accessibleName() == QStringLiteral("Pressure")) {
            pressure = edit;
        }
    }
    ASSERT_NE(pressure, nullptr);
    pressure->setFocus();
    pressure->selectAll();
    type(QStringLiteral("101325\n"));
    EXPECT_EQ(cell(0, PairsModel::Humidity), QStringLiteral("48\u00A0%"));
    bool said = false;
    for (const QLabel* label : window_->findChildren<QLabel*>()) {
        said = said ||
               (label->isVisible() && label->text().contains(QStringLiteral("between 300 and 1100 hPa")));
    }
    EXPECT_TRUE(said);
}

TEST_F(ClassRoundCase, ModelKeepsTheRulesOfModels) {
    const QAbstractItemModelTester tester(&window_->model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    type(QStringLiteral("23\n16\n24\n"));
    window_->model().clear();
    EXPECT_EQ(window_->model().rowCount(), 1);
    EXPECT_TRUE(window_->model().isEmpty());
}

TEST_F(ClassRoundCase, EveryControlHasANameAndTabReachesTheTable) {
    for (QWidget* widget : window_->findChildren<QWidget*>()) {
        if (widget->focusPolicy() & Qt::TabFocus && widget->isVisible()) {
            const auto* button = qobject_cast<QPushButton*>(widget);
            EXPECT_FALSE(widget->accessibleName().isEmpty() &&
                         (button == nullptr || button->text().isEmpty()))
                << widget->metaObject()->className();
        }
    }
}

TEST_F(ClassRoundCase, CopiedAsATableWithItsHead) {
    type(QStringLiteral("23\n16\n"));
    const QStringList lines = window_->model().asTable().split(QLatin1Char('\n'));
    EXPECT_EQ(lines.size(), 3);
    EXPECT_TRUE(lines[0].startsWith(QStringLiteral("Number\tDry °C\tWet °C")));
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("1\t23\t16\t")));
}

TEST_F(ClassRoundCase, SheetsAreRealPdfPagesAndTheWorkSheetGivesNothingAway) {
    type(QStringLiteral("23\n16\n23\n16\n23\n16.5\n23\n15.5\n23\n22\n"));
    const auto pages = [&](bool answers) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        {
            const ClassSheet sheet{window_->model().round(), units::TemperatureUnit::Celsius, answers};
            QPdfWriter writer(&buffer);
            setUpPdf(writer, classSheetTitle(sheet), Paper::A4);
            EXPECT_TRUE(writeClassSheet(sheet, QLocale::c(), writer));
        }
        return bytes;
    };
    const QByteArray work = pages(false);
    const QByteArray answered = pages(true);
    EXPECT_TRUE(work.startsWith("%PDF-"));
    EXPECT_GT(work.size(), 5000);
    EXPECT_GT(answered.size(), 5000);
}

} // namespace

} // namespace wickbook::ui
