// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run_window.h"

#include "ui/style/quiet_style.h"
#include "ui/window/book_taken.h"
#include "ui/window/main_window.h"
#include "ui/window/prompts.h"
#include "ui/window/window_settings.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <QStyleFactory>

#include <cstdio>

namespace wickbook::ui {

int runWindow(int& argc, char** argv, const WindowRequest& request) {
    QApplication::setApplicationName(QStringLiteral("wickbook"));
    QApplication application(argc, argv);
    QApplication::setStyle(new QuietStyle(QStyleFactory::create(QStringLiteral("Fusion")))); // it owns the style
    if (!request.book.isEmpty()) {
        const BookLock lock(request.book);
        if (broughtForward(lock)) {
            std::fputs(qPrintable(openElsewhereWords(request.book) + QLatin1Char('\n')), stderr);
            return 0;
        }
    }
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation);
    QDir().mkpath(folder);
    WindowSettings settings(QDir(folder).filePath(QStringLiteral("window.ini")));
    DialogPrompts prompts;
    MainWindow window(settings, prompts, std::make_shared<record::SystemClock>());
    window.show();
    if (request.sample) {
        window.openSample();
    } else if (!request.book.isEmpty()) {
        window.openBook(request.book);
    } else if (const QString last = settings.lastBook(); !last.isEmpty() && QFileInfo::exists(last)) {
        window.openBook(last);
    }
    return QApplication::exec();
}

} // namespace wickbook::ui
