// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/spoken_roles.h"

#include "ui/window/index_tabs.h"
#include "ui/window/margin_strip.h"

#include <QAccessibleWidget>

namespace wickbook::ui {

namespace {

class TabAccessible final : public QAccessibleWidget {
public:
    explicit TabAccessible(IndexTab& tab) : QAccessibleWidget(&tab, QAccessible::PageTab), tab_(tab) {}

    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State all = QAccessibleWidget::state();
        all.selectable = true;
        all.selected = tab_.isChecked();
        return all;
    }
    [[nodiscard]] QStringList actionNames() const override { return {pressAction()}; }
    void doAction(const QString& action) override {
        if (action == pressAction()) {
            tab_.click();
        }
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString& /*action*/) const override { return {}; }

private:
    IndexTab& tab_;
};

QAccessibleInterface* roleOf(const QString& /*className*/, QObject* object) {
    if (auto* tab = qobject_cast<IndexTab*>(object)) {
        return new TabAccessible(*tab);
    }
    if (auto* margin = qobject_cast<MarginStrip*>(object)) {
        return new QAccessibleWidget(margin, QAccessible::Graphic);
    }
    return nullptr;
}

} // namespace

void makeRolesKnown() {
    static const bool known = [] {
        QAccessible::installFactory(roleOf);
        return true;
    }();
    (void)known;
}

} // namespace wickbook::ui
