// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_key.h"

#include "ui/window/help_window.h"

#include <QApplication>
#include <QKeyEvent>

#include <array>

namespace wickbook::ui {

namespace {

struct WindowPage {
    const char* window; ///< its class, without the namespace
    const char* page;
};

constexpr std::array kPages{
    WindowPage{"TakeInDialog", "oldpages"},
    WindowPage{"ColumnsDialog", "oldpages"},
    WindowPage{"MoveDialog", "register"},
    WindowPage{"PaperDialog", "register"},
    WindowPage{"ReviewWindow", "marks"},
    WindowPage{"WorkingDialog", "humidity"},
    WindowPage{"ClassWindow", "humidity"},
    WindowPage{"WhirlTimer", "whirling"},
    WindowPage{"SignForm", "month"},
    WindowPage{"SheetDialog", "month"},
    WindowPage{"BesideDialog", "instruments"},
    WindowPage{"CorrectionForm", "instruments"},
    WindowPage{"PairCheckForm", "instruments"},
    WindowPage{"SaltCheckForm", "instruments"},
    WindowPage{"WickForm", "wick"},
    WindowPage{"RestoreDialog", "copies"},
    WindowPage{"SalvageDialog", "copies"},
    WindowPage{"LogDialog", "copies"},
    WindowPage{"PreferencesDialog", "start"},
};

} // namespace

HelpKey::HelpKey(QWidget& mainWindow) : QObject(&mainWindow), mainWindow_(mainWindow) {
    qApp->installEventFilter(this);
}

QString HelpKey::pageFor(const QWidget& window) {
    const QString name =
        QString::fromLatin1(window.metaObject()->className()).section(QStringLiteral("::"), -1);
    for (const WindowPage& each : kPages) {
        if (name == QLatin1String(each.window)) {
            return QLatin1String(each.page);
        }
    }
    return {};
}

bool HelpKey::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress || static_cast<QKeyEvent*>(event)->key() != Qt::Key_F1 ||
        !watched->isWidgetType()) {
        return QObject::eventFilter(watched, event);
    }
    QWidget* asking = static_cast<QWidget*>(watched)->window();
    if (asking == &mainWindow_ || qobject_cast<HelpWindow*>(asking) != nullptr) {
        return QObject::eventFilter(watched, event); // the menu has the key
    }
    emit pressed(asking);
    return true;
}

} // namespace wickbook::ui
