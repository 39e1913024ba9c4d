// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/open_book.h"
#include "ui/register/register_page.h"
#include "ui/register/register_view.h"

#include <QApplication>
#include <QLineEdit>
#include <QtTest/QTest>

/// The register page over a real book with the first half of May 2025 read, but for the 6th.

namespace wickbook::test {

using ui::RegisterPage;
using ui::RegisterView;

class RegisterPageCase : public test::SessionCase {
protected:
    void SetUp() override {
        SessionCase::SetUp();
        fill(day(2025, 5, 1), day(2025, 5, 13), {day(2025, 5, 6)});
        page_ = std::make_unique<RegisterPage>(*session_);
        page_->resize(1200, 700);
        page_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page_.get()));
        QApplication::setActiveWindow(page_.get());
        view_ = page_->findChild<RegisterView*>();
        ASSERT_NE(view_, nullptr);
        view_->setFocus();
    }

    template <typename Widget>
    Widget& part(const char* name) {
        auto* found = page_->findChild<Widget*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }
    void key(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(view_, key, modifiers);
    }
    QString cell(int column) const {
        return view_->model()->index(view_->currentIndex().row(), column).data().toString();
    }
    void type(const char* field, const QString& text) {
        auto& edit = part<QLineEdit>(field);
        edit.setFocus();
        edit.selectAll();
        QTest::keyClicks(&edit, text);
    }

    std::unique_ptr<RegisterPage> page_;
    RegisterView* view_ = nullptr;
};

} // namespace wickbook::test
