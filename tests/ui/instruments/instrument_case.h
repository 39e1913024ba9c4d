// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/open_book.h"
#include "ui/instruments/instruments_page.h"

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QTest>
#include <QTimer>

#include <functional>

/// The Instruments page over a real book, driven by its keys; dialogs are answered while they stand open.

namespace wickbook::test {

class InstrumentCase : public ::testing::Test {
protected:
    OpenBook book;
    std::unique_ptr<ui::InstrumentsPage> page;

    void SetUp() override {
        ASSERT_TRUE(book.isOpen());
        page = std::make_unique<ui::InstrumentsPage>(book.session());
        page->resize(900, 700);
        page->show();
    }

    template <typename Widget>
    Widget& on(QWidget& parent, const char* name) {
        auto* found = parent.findChild<Widget*>(QLatin1String(name));
        if (found == nullptr) {
            ADD_FAILURE() << "no " << name;
            std::abort();
        }
        return *found;
    }

    /// Unfolds a list and returns it.
    QListWidget& open(const char* section) {
        const std::string name{section};
        on<QPushButton>(*page, (name + "Fold").c_str()).setChecked(true);
        return on<QListWidget>(*page, (name + "List").c_str());
    }

    QString message(const char* section) {
        return on<QLabel>(*page, (std::string{section} + "Message").c_str()).text();
    }

    /// Does something to the next dialog that opens. What it leaves open is closed and a failure.
    void whenAsked(std::function<void(QDialog&)> act) {
        QTimer::singleShot(0, page.get(), [act = std::move(act)] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            if (dialog == nullptr) {
                ADD_FAILURE() << "no dialog opened";
                return;
            }
            act(*dialog);
            if (dialog->isVisible()) {
                ADD_FAILURE()
                    << "the dialog stayed open: "
                    << dialog->findChild<QLabel*>(QStringLiteral("factMessage"))->text().toStdString();
                dialog->reject();
            }
        });
    }

    void type(QDialog& dialog, const char* name, const char* text) {
        on<QLineEdit>(dialog, name).setText(QString::fromUtf8(text));
    }
    void choose(QDialog& dialog, const char* name, const QString& words) {
        auto& box = on<QComboBox>(dialog, name);
        const int at = box.findText(words);
        ASSERT_GE(at, 0) << words.toStdString();
        box.setCurrentIndex(at);
    }

    /// Enter once; where a preview comes first, waits for it and presses Enter again.
    void keep(QDialog& dialog) {
        auto& button = on<QPushButton>(dialog, "factKeep");
        if (button.text() == QStringLiteral("Keep it")) {
            QTest::keyClick(&dialog, Qt::Key_Return);
            return;
        }
        QTest::keyClick(&dialog, Qt::Key_Return);
        ASSERT_TRUE(QTest::qWaitFor([&] { return button.text() == QStringLiteral("Keep it"); }, 20'000))
            << on<QLabel>(dialog, "factMessage").text().toStdString();
        QTest::keyClick(&button, Qt::Key_Return);
        if (dialog.isVisible()) {
            button.click();
        }
    }

    /// Readings at 9 and 21 over days, all alike.
    void keepDays(record::StationDate from, int days) {
        for (int i = 0; i < days; ++i) {
            for (const int hour : {9, 21}) {
                book.keep(from + date::days{i}, hour, {200, 1}, {150, 1});
            }
        }
    }

    [[nodiscard]] double humidityAt(record::StationDate date, int hour) {
        const auto stored = book.session().book().atHour({date, std::chrono::hours{hour}});
        return record::deriveReading(**stored, book.session().station()).humidityPercent().value();
    }
};

} // namespace wickbook::test
