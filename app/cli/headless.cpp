// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/headless.h"

#include "app/cli/console.h"

#include <cstdlib>

namespace wickbook::cli {

HeadlessApplication::HeadlessApplication(const QLocale& locale) : translations_(locale) {}

bool HeadlessApplication::prepare() {
    setenv("QT_QPA_PLATFORM", "offscreen", 0);
    qInstallMessageHandler([](QtMsgType type, const QMessageLogContext&, const QString& message) {
        if (type == QtCriticalMsg || type == QtFatalMsg) {
            say(message);
        }
    });
    return true;
}

} // namespace wickbook::cli
