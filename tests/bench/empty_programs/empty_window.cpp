// SPDX-License-Identifier: GPL-3.0-or-later
// A window with a menu and a status bar and nothing else: ends with its first frame, or, with "memory", tells
// a little later how much memory it takes.
#include "tests/bench/first_paint.h"

#include <QLabel>
#include <QMenuBar>
#include <QStatusBar>

#include <cstring>

int main(int argc, char** argv) {
    const bool memory = argc > 1 && std::strcmp(argv[1], "memory") == 0;
    QApplication application(argc, argv);
    wickbook::bench::FirstPaint first([memory](QMainWindow& window) {
        if (!memory) {
            wickbook::bench::endHere();
        }
        QTimer::singleShot(2000, &window, [] {
            std::printf("%.2f\n", wickbook::bench::residentMebibytes());
            wickbook::bench::endHere();
        });
    });
    application.installEventFilter(&first);
    QMainWindow window;
    window.menuBar()->addMenu(QStringLiteral("&Book"))->addAction(QStringLiteral("&Quit"));
    window.setCentralWidget(new QLabel(QStringLiteral("Nothing is here.")));
    window.statusBar()->showMessage(QStringLiteral("Ready"));
    window.resize(1180, 800);
    window.show();
    return QApplication::exec();
}
