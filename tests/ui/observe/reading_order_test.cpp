// SPDX-License-Identifier: GPL-3.0-or-later
// Tab goes through the page as the eye does: column by column, line by line, from left to right, and from
// right to left where the script does.
#include "tests/ui/observe/observe_case.h"
#include "ui/observe/answer_panel.h"
#include "ui/observe/hour_chooser.h"
#include "ui/observe/thermometer_drawing.h"

#include <QAccessible>
#include <QSet>

namespace {

using namespace wickbook;

class ReadingOrderTest : public test::ObserveCase {
protected:
    /// What Tab reaches, in order, from the first field of the hour chooser on, once round.
    [[nodiscard]] QList<QWidget*> walked() const {
        QList<QWidget*> order;
        QSet<QWidget*> seen;
        for (int step = 0; step < 200; ++step) {
            QWidget* now = QApplication::focusWidget();
            if (now == nullptr || seen.contains(now)) {
                break;
            }
            seen.insert(now);
            order.append(now);
            QTest::keyClick(now, Qt::Key_Tab);
        }
        return order;
    }
    [[nodiscard]] QRect placeOf(const QWidget* widget) const {
        return {widget->mapTo(page_.get(), QPoint(0, 0)), widget->size()};
    }
    /// 0: the hour above; 1: the drawings; 2: the fields and buttons; 3: the answer and the margin.
    [[nodiscard]] int columnOf(const QWidget* widget) const {
        if (page_->findChild<ui::HourChooser*>()->isAncestorOf(widget)) {
            return 0;
        }
        if (qobject_cast<const ui::ThermometerDrawing*>(widget) != nullptr) {
            return 1;
        }
        return page_->findChild<ui::AnswerPanel*>()->parentWidget()->isAncestorOf(widget) ? 3 : 2;
    }
    void expectReadingOrder(const QList<QWidget*>& order, bool rightToLeft) const {
        for (qsizetype index = 1; index < order.size(); ++index) {
            const QWidget* before = order[index - 1];
            const QWidget* after = order[index];
            const std::string what = before->accessibleName().toStdString() + " → " +
                                     after->accessibleName().toStdString() + " (" +
                                     after->metaObject()->className() + ")";
            if (columnOf(before) != columnOf(after)) {
                EXPECT_LT(columnOf(before), columnOf(after)) << what;
                continue;
            }
            const QRect first = placeOf(before);
            const QRect second = placeOf(after);
            const bool sameLine = first.top() <= second.bottom() && second.top() <= first.bottom();
            if (sameLine) {
                EXPECT_TRUE(rightToLeft ? first.center().x() > second.center().x()
                                        : first.center().x() < second.center().x())
                    << what;
            } else {
                EXPECT_LT(first.top(), second.top()) << what;
            }
        }
    }
    void startAtTheHour() const {
        for (QWidget* widget : page_->findChildren<QWidget*>()) {
            if (widget->accessibleName() == QStringLiteral("the hour before")) {
                widget->setFocus();
            }
        }
    }
    void TearDown() override { QApplication::setLayoutDirection(Qt::LeftToRight); }
};

TEST_F(ReadingOrderTest, TabGoesAsTheEyeDoes) {
    startAtTheHour();
    const QList<QWidget*> order = walked();
    EXPECT_GE(order.size(), 20);
    EXPECT_EQ(order.front()->accessibleName(), QStringLiteral("the hour before"));
    expectReadingOrder(order, false);
}

TEST_F(ReadingOrderTest, TabGoesAsTheEyeDoesWithRepeatsAndAnAnswerUnfolded) {
    page_->resize(1100, 960); // without scrolling: where things stand is read off at the end
    type(QStringLiteral("16.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("14.2"));
    press(Qt::Key_R);
    QTest::qWait(50); // the unfolded rows find their places
    startAtTheHour();
    expectReadingOrder(walked(), false);
}

TEST_F(ReadingOrderTest, TabGoesFromRightToLeftWhereTheScriptDoes) {
    page_.reset();
    QApplication::setLayoutDirection(Qt::RightToLeft);
    openPage();
    startAtTheHour();
    expectReadingOrder(walked(), true);
}

TEST_F(ReadingOrderTest, EverythingThatTakesTheKeyboardIsReachedByTab) {
    startAtTheHour();
    const QList<QWidget*> order = walked();
    for (QWidget* widget : page_->findChildren<QWidget*>()) {
        if ((widget->focusPolicy() & Qt::TabFocus) != 0 && widget->isVisible() && widget->isEnabled() &&
            widget->focusProxy() == nullptr) {
            EXPECT_TRUE(order.contains(widget))
                << widget->metaObject()->className() << " " << widget->accessibleName().toStdString();
        }
    }
}

TEST_F(ReadingOrderTest, EveryControlHasANameAndARoleForTheEar) {
    type(QStringLiteral("0.4"));
    press(Qt::Key_Return);
    type(QStringLiteral("-0.6"));
    press(Qt::Key_R);
    for (QWidget* widget : page_->findChildren<QWidget*>()) {
        if ((widget->focusPolicy() & Qt::TabFocus) == 0 || !widget->isVisible()) {
            continue;
        }
        QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(widget);
        ASSERT_NE(heard, nullptr) << widget->metaObject()->className();
        EXPECT_FALSE(heard->text(QAccessible::Name).isEmpty()) << widget->metaObject()->className();
        EXPECT_NE(heard->role(), QAccessible::NoRole) << widget->metaObject()->className();
        EXPECT_NE(heard->role(), QAccessible::Client)
            << widget->metaObject()->className() << " " << widget->accessibleName().toStdString();
    }
}

TEST_F(ReadingOrderTest, TheDrawnColumnTellsItsValueAndTakesOne) {
    type(QStringLiteral("16.4"));
    auto* drawing = page_->findChildren<ui::ThermometerDrawing*>().first();
    QAccessibleInterface* heard = QAccessible::queryAccessibleInterface(drawing);
    ASSERT_NE(heard, nullptr);
    EXPECT_EQ(heard->role(), QAccessible::Slider);
    ASSERT_NE(heard->valueInterface(), nullptr);
    EXPECT_DOUBLE_EQ(heard->valueInterface()->currentValue().toDouble(), 16.4);
    heard->valueInterface()->setCurrentValue(15.2);
    EXPECT_EQ(field(ui::EntryField::Dry)->text(), QStringLiteral("15.2"));
}

} // namespace
