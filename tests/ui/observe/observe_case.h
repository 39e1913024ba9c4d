// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/open_book.h"
#include "ui/observe/entry_form.h"
#include "ui/observe/notes_panel.h"
#include "ui/observe/observe_page.h"
#include "ui/style/marginal_note.h"
#include "ui/style/typed_number_edit.h"

#include <QApplication>
#include <QLabel>
#include <QTest>

/// The Observe page over a real book of an invented station, 22 November 2026, 08:52, driven by keys alone.

namespace wickbook::test {

class ObserveCase : public ::testing::Test {
protected:
    explicit ObserveCase(const record::NewStation& station = hillStation()) : book_(station) {}

    void SetUp() override {
        ASSERT_TRUE(book_.isOpen());
        openPage();
    }

    void openPage() {
        page_ = std::make_unique<ui::ObservePage>(book_.session(), book_.drafts());
        page_->resize(1100, 700);
        page_->show();
        QApplication::setActiveWindow(page_.get());
        ASSERT_TRUE(QTest::qWaitForWindowActive(page_.get()));
        page_->focusEntry();
    }

    /// Types where the keyboard stands, as a hand does.
    static void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    static void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }

    [[nodiscard]] ui::TypedNumberEdit* field(ui::EntryField which) const {
        return page_->findChild<ui::EntryForm*>()->field(which);
    }
    [[nodiscard]] QString label(const char* name) const {
        return page_->findChild<QLabel*>(QLatin1String(name))->text();
    }
    [[nodiscard]] std::vector<ui::MarginalNote*> notes() const {
        return page_->findChild<ui::NotesPanel*>()->notes();
    }
    [[nodiscard]] std::optional<record::Observation> saved() const { return book_.at(day(2026, 11, 22), 9); }

    OpenBook book_;
    std::unique_ptr<ui::ObservePage> page_;
};

} // namespace wickbook::test
