// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gallery/visits.h"

#include "tests/support/silent_prompts.h"
#include "ui/classround/class_window.h"
#include "ui/observe/observe_page.h"
#include "ui/observe/working_dialog.h"
#include "ui/paper/paper_choices.h"
#include "ui/paper/sheet_dialog.h"
#include "ui/review/review_window.h"
#include "ui/station/restore_dialog.h"
#include "ui/takein/takein_dialog.h"
#include "ui/window/help_pages.h"
#include "ui/window/help_window.h"
#include "ui/window/log_dialog.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/preferences_dialog.h"
#include "ui/window/salvage_dialog.h"
#include "ui/window/window_settings.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeView>

namespace wickbook::test {

namespace {

/// The sample's day is always the same, so that two galleries can be laid side by side.
class StillClock final : public record::Clock {
public:
    [[nodiscard]] record::Instant now() const override {
        return record::Instant{std::chrono::seconds{1'780'995'600}}; // 2026-06-09T09:00:00Z
    }
};

void settle(int milliseconds = 60) {
    QTest::qWait(milliseconds);
}

class Visit {
public:
    Visit(VisitSize size, const std::function<void(const QString&, QWidget&)>& see)
        : size_(size), see_(see), settings_(folder_.filePath(QStringLiteral("window.ini"))) {}

    void all() {
        ui::MainWindow window(settings_, prompts_, std::make_shared<StillClock>());
        window.resize(size_.width, size_.height);
        window.show();
        QApplication::setActiveWindow(&window);
        settle();
        show(QStringLiteral("01-first-start"), window);
        window.showStationForm();
        settle();
        show(QStringLiteral("02-start-a-station"), window);
        window.openSample();
        // What the station usually reads is learnt beside the window; notes are made anew then.
        static_cast<void>(QTest::qWaitFor([&] { return !window.pages()->session().isLearning(); }, 60'000));
        settle(300);
        pages(window);
        dialogs(window);
        help();
    }

private:
    void show(const QString& name, QWidget& window) { see_(name, window); }

    void pages(ui::MainWindow& window) {
        ui::PageSet& pages = *window.pages();
        show(QStringLiteral("03-observe"), window);
        type(QStringLiteral("14.6"));
        press(Qt::Key_Return);
        type(QStringLiteral("15.9"));
        press(Qt::Key_Tab);
        settle(200);
        show(QStringLiteral("04-observe-note"), window);
        pages.turnTo(ui::PageSet::Register);
        settle(200);
        if (auto* lines = window.findChild<QTreeView*>(QStringLiteral("registerView"))) {
            lines->setCurrentIndex(lines->model()->index(3, 0));
        }
        settle();
        show(QStringLiteral("05-register"), window);
        pages.turnTo(ui::PageSet::Month);
        settle(500);
        show(QStringLiteral("06-month"), window);
        pages.turnTo(ui::PageSet::Instruments);
        settle(200);
        show(QStringLiteral("07-instruments"), window);
        pages.turnTo(ui::PageSet::Station);
        settle(200);
        show(QStringLiteral("08-station"), window);
        pages.openOldPage();
        settle(300);
        show(QStringLiteral("09-old-page"), window);
        pages.openReview();
        for (QWidget* top : QApplication::topLevelWidgets()) {
            if (qobject_cast<ui::ReviewWindow*>(top) != nullptr && top->isVisible()) {
                settle(4000); // it looks through the whole register beside the window
                show(QStringLiteral("10-look-through"), *top);
            }
        }
        pages.closeReview();
        pages.turnTo(ui::PageSet::Observe);
    }

    void dialog(const QString& name, QDialog& dialog, int wait = 100) {
        dialog.setModal(false);
        dialog.show();
        settle(wait);
        show(name, dialog);
        dialog.close();
    }

    void dialogs(ui::MainWindow& window) {
        ui::Session& session = window.pages()->session();
        const QLocale locale = window.locale();
        dialog(QStringLiteral("11-settings"),
               *std::make_unique<ui::PreferencesDialog>(ui::Preferences{}, &window));
        dialog(QStringLiteral("12-log"), *std::make_unique<ui::LogDialog>(&window));
        dialog(QStringLiteral("13-humidity-table"), *ui::humidityTableDialog(session, locale, &window));
        dialog(QStringLiteral("14-month-form"), *ui::monthFormDialog(session, locale, &window));
        dialog(QStringLiteral("15-deputys-card"), *ui::deputyCardDialog(session, locale, &window));
        dialog(QStringLiteral("16-year-book"), *ui::yearBookDialog(session, locale, &window));
        dialog(QStringLiteral("17-bring-in"),
               *std::make_unique<ui::TakeInDialog>(session, folder_.filePath(QStringLiteral("in.ini")),
                                                   &window));
        dialog(QStringLiteral("18-restore"),
               *std::make_unique<ui::RestoreDialog>(ui::RestoreStart{}, locale, &window));
        ui::ClassWindow round(ui::ClassStart{});
        round.show();
        settle(200);
        show(QStringLiteral("19-class-round"), round);
        round.close();
    }

    void help() {
        ui::HelpWindow help{QLocale()};
        help.show();
        int number = 20;
        for (const QString& name : ui::helpPageNames()) {
            help.showPage(name);
            settle(40);
            show(QStringLiteral("%1-help-%2").arg(number++).arg(name), help);
        }
    }

    static void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    static void press(Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); }

    VisitSize size_;
    const std::function<void(const QString&, QWidget&)>& see_;
    QTemporaryDir folder_;
    ui::WindowSettings settings_;
    SilentPrompts prompts_;
};

} // namespace

void visitAll(VisitSize size, const std::function<void(const QString& name, QWidget& window)>& see) {
    Visit(size, see).all();
}

} // namespace wickbook::test
