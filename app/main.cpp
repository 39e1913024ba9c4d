// SPDX-License-Identifier: GPL-3.0-or-later
// Chooses between the window and the command line by the arguments alone, before anything of Qt exists:
// a verb needs no display.
#include "app/cli/run.h"
#include "ui/window/run_window.h"

#include <QCoreApplication>

int main(int argc, char** argv) {
    if (const auto window = wickbook::cli::windowStart(argc, argv)) {
        QCoreApplication::setApplicationVersion(QStringLiteral(WICKBOOK_VERSION));
        return wickbook::ui::runWindow(argc, argv, {QString::fromLocal8Bit(window->book), window->sample});
    }
    return wickbook::cli::run(argc, argv);
}
