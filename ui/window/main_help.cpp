// SPDX-License-Identifier: GPL-3.0-or-later
// What stands behind the Help menu, and the settings.
#include "ui/text/term_words.h"
#include "ui/window/help_key.h"
#include "ui/window/help_window.h"
#include "ui/window/log_dialog.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/preferences_dialog.h"

#include <QApplication>
#include <QMenu>
#include <QMessageBox>

namespace wickbook::ui {

void MainWindow::buildHelpMenu(QMenu& menu) {
    menu.addAction(tr("&Help on this page"), QKeySequence(Qt::Key_F1), this, &MainWindow::showHelp);
    menu.addAction(tr("&First steps"), this, [this] { showHelpPage(QStringLiteral("start")); });
    menu.addAction(tr("All &keys"), this, [this] { showHelpPage(QStringLiteral("keys")); });
    menu.addAction(tr("&Cautions"), this, [this] { showHelpPage(QStringLiteral("cautions")); });
    menu.addSeparator();
    menu.addAction(tr("&Log…"), this, &MainWindow::showLog);
    menu.addAction(tr("&About Wickbook"), this, &MainWindow::showAbout);
}

void MainWindow::showHelp() {
    showHelpPage(pages_ == nullptr ? QStringLiteral("start") : pages_->helpPage());
}

void MainWindow::showHelpPage(const QString& name) {
    if (help_ == nullptr) {
        help_ = new HelpWindow(locale(), this);
    }
    help_->show();
    help_->raise();
    help_->activateWindow();
    help_->showPage(name);
}

void MainWindow::showHelpFor(QWidget* asking) {
    QString name = HelpKey::pageFor(*asking);
    if (name.isEmpty()) {
        name = pages_ == nullptr ? QStringLiteral("start") : pages_->helpPage();
    }
    if (!asking->isModal()) {
        showHelpPage(name);
        return;
    }
    // Beside a dialog that holds everything else back the help must be the dialog's own, or nobody could turn
    // a page.
    auto* help = new HelpWindow(locale(), asking);
    help->setAttribute(Qt::WA_DeleteOnClose);
    help->show();
    help->showPage(name);
}

void MainWindow::showPreferences() {
    PreferencesDialog dialog(settings_.preferences(), this);
    if (dialog.exec() == QDialog::Accepted) {
        usePreferences(dialog.chosen());
    }
}

void MainWindow::showLog() {
    LogDialog(this).exec();
}

void MainWindow::showAbout() {
    QMessageBox about(this);
    about.setWindowTitle(tr("About Wickbook"));
    about.setTextFormat(Qt::PlainText);
    about.setText(
        tr("Wickbook %1\n\nA register for a station with a dry and a wet bulb.\nFree software under the "
           "GNU General Public License, version 3 or later.")
            .arg(QApplication::applicationVersion()));
    about.setInformativeText(cautionWords().join(QStringLiteral("\n\n")));
    about.exec();
}

} // namespace wickbook::ui
