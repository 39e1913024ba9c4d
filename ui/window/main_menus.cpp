// SPDX-License-Identifier: GPL-3.0-or-later
// The menus of the main window.
#include "core/psychrometry/standard_atmosphere.h"
#include "core/record/derived_reading.h"
#include "ui/classround/class_window.h"
#include "ui/paper/paper_choices.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"

#include <QAction>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>

namespace wickbook::ui {

void MainWindow::buildMenus() {
    QMenu* book = menuBar()->addMenu(tr("&Book"));
    book->addAction(tr("&New station…"), QKeySequence::New, this, &MainWindow::showStationForm);
    book->addAction(tr("&Open a book…"), QKeySequence::Open, this, &MainWindow::askForBook);
    recentMenu_ = book->addMenu(tr("&Recent"));
    connect(recentMenu_, &QMenu::aboutToShow, this, &MainWindow::fillRecent);
    book->addAction(tr("&Sample station"), this, &MainWindow::openSample);
    takeIn_ = book->addAction(tr("&Bring in a register…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B),
                              this, [this] { takeIn({}); });
    takeIn_->setEnabled(false);
    buildCopyMenu(*book);
    book->addAction(tr("Save what can be read of a &damaged book…"), this, [this] { salvageBook({}); });
    buildPaperMenu(*book->addMenu(tr("On &paper")));
    book->addAction(tr("Class &round…"), this, &MainWindow::openClassRound);
    book->addSeparator();
    // The same keys on every desktop, as the help lists them.
    QAction* close = book->addAction(tr("&Close the book"), this, [this] { showFirstStart(); });
    close->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_W), QKeySequence(Qt::CTRL | Qt::Key_F4)});
    book->addAction(tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), this, &QWidget::close);

    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    undo_ = edit->addAction(tr("&Undo"), QKeySequence::Undo, this, [this] {
        if (pages_ != nullptr) {
            pages_->session().undoStack().undo();
        }
    });
    redo_ = edit->addAction(tr("&Redo"), this, [this] {
        if (pages_ != nullptr) {
            pages_->session().undoStack().redo();
        }
    });
    // Both habits, whatever the desktop's own: undo_keys.cpp knows the same two.
    redo_->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    undo_->setEnabled(false);
    redo_->setEnabled(false);
    edit->addSeparator();
    QAction* preferences = edit->addAction(tr("&Settings…"), QKeySequence(Qt::CTRL | Qt::Key_Comma), this,
                                           &MainWindow::showPreferences);
    preferences->setMenuRole(QAction::PreferencesRole);

    QMenu* kept = menuBar()->addMenu(tr("&Register"));
    buildPageMenu(*menuBar()->addMenu(tr("&Page")));
    QAction* review = kept->addAction(tr("&Look through the whole register…"),
                                      QKeySequence(Qt::CTRL | Qt::Key_L), this, [this] {
                                          if (pages_ != nullptr) {
                                              pages_->openReview();
                                          }
                                      });
    review->setEnabled(false);
    pageActions_.append(review);

    buildHelpMenu(*menuBar()->addMenu(tr("&Help")));
}

void MainWindow::buildPaperMenu(QMenu& menu) {
    const auto add = [&](const QString& text, auto make) {
        QAction* action = menu.addAction(text, this, [this, make] {
            if (pages_ != nullptr) {
                make(pages_->session(), locale(), this)->exec();
            }
        });
        action->setEnabled(false);
        pageActions_.append(action);
    };
    add(tr("&Humidity table…"), &humidityTableDialog);
    add(tr("&Month form…"), &monthFormDialog);
    add(tr("&Deputy's card…"), &deputyCardDialog);
    add(tr("&Year book…"), &yearBookDialog);
}

void MainWindow::buildPageMenu(QMenu& menu) {
    const QStringList titles = PageSet::titles();
    for (int page = 0; page < titles.size(); ++page) {
        QAction* action =
            menu.addAction(titles[page], QKeySequence(Qt::CTRL | static_cast<Qt::Key>(Qt::Key_1 + page)),
                           this, [this, page] { turnTo(page); });
        action->setEnabled(false);
        pageActions_.append(action);
    }
    menu.addSeparator();
    QAction* oldPage =
        menu.addAction(tr("From an &old page…"), QKeySequence(Qt::CTRL | Qt::Key_6), this, [this] {
            if (pages_ != nullptr) {
                turnTo(PageSet::Observe);
                pages_->openOldPage();
            }
        });
    oldPage->setEnabled(false);
    pageActions_.append(oldPage);
}

void MainWindow::openClassRound() {
    if (!classRound_) {
        ClassStart start;
        if (pages_ != nullptr) {
            const auto& station = pages_->session().station();
            const auto& period = station.latestPeriod();
            start.coefficient = record::coefficientRule(period);
            start.unit = pages_->session().unit();
            if (const auto pressure = psychrometry::standardPressure(period.elevation)) {
                start.pressure = *pressure;
            }
        }
        classRound_ = std::make_unique<ClassWindow>(start);
    }
    classRound_->show();
    classRound_->raise();
    classRound_->activateWindow();
}

void MainWindow::fillRecent() {
    recentMenu_->clear();
    for (const QString& path : settings_.recentBooks()) {
        QAction* action = recentMenu_->addAction(QFileInfo(path).completeBaseName(), this,
                                                 [this, path] { openBook(path); });
        action->setToolTip(path);
    }
    if (recentMenu_->isEmpty()) {
        recentMenu_->addAction(tr("no books opened yet"))->setEnabled(false);
    }
}

} // namespace wickbook::ui
