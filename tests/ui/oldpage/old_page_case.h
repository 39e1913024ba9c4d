// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/open_book.h"
#include "ui/oldpage/old_page.h"
#include "ui/oldpage/page_view.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QtTest/QTest>

#include <memory>

/// The page over a real book, written on by real keys: each goes where the keyboard is, as from a hand.

namespace wickbook::test {

inline void press(QWidget& widget, Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QTest::keyClick(&widget, key, modifiers);
}

class OldPageCase : public SessionCase {
protected:
    void SetUp() override {
        SessionCase::SetUp();
        openPage(date::year{2025} / 3); // 31 days at 09 and 21 h: 62 lines
    }

    void openPage(date::year_month month) {
        page_.reset();
        page_ = std::make_unique<ui::OldPage>(*session_, settings());
        page_->showMonth(month);
        page_->resize(1090, 560); // what a window of 1280 × 720 leaves
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        QApplication::setActiveWindow(page_.get());
        page_->focusPage();
        ASSERT_TRUE(view().hasFocus());
    }

    [[nodiscard]] QString settings() const { return folder_.filePath(QStringLiteral("old-pages.ini")); }
    [[nodiscard]] ui::PageView& view() const { return *page_->findChild<ui::PageView*>(); }
    [[nodiscard]] ui::PageModel& model() const { return *page_->findChild<ui::PageModel*>(); }
    template <typename Widget>
    Widget& part(const char* name) const {
        auto* found = page_->findChild<Widget*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }

    /// Types as a hand does: every key goes to whatever has the keyboard. '\n' is Enter. Counts the keys.
    void hand(const QString& keys) {
        for (const QChar letter : keys) {
            QWidget* focus = QApplication::focusWidget();
            ASSERT_NE(focus, nullptr);
            if (letter == QLatin1Char('\n')) {
                QTest::keyClick(focus, Qt::Key_Return);
            } else {
                QTest::keyClick(focus, letter.toLatin1());
            }
            ++keys_;
        }
    }
    void hand(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        ++keys_;
    }

    [[nodiscard]] std::optional<record::StoredObservation> kept(unsigned dayOfMonth, int hour,
                                                                unsigned month = 3) const {
        const auto found = session_->book().atHour({day(2025, month, dayOfMonth), std::chrono::hours{hour}});
        return found ? *found : std::nullopt;
    }
    [[nodiscard]] QString cell(int line, ui::PageField field) const {
        return model().indexOf(line, field).data().toString();
    }
    void penOn(int line, ui::PageField field) {
        view().putPen(model().indexOf(line, field));
        view().setFocus();
    }

    std::unique_ptr<ui::OldPage> page_;
    int keys_ = 0;
};

} // namespace wickbook::test
