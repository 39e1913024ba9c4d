// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/window/prompts.h"

/// A person who answers every question for a file with "not now".

namespace wickbook::test {

class SilentPrompts final : public ui::Prompts {
public:
    QString newBookPath(QWidget*, const QString&, const QString&) override { return {}; }
    QString bookToOpen(QWidget*) override { return {}; }
};

} // namespace wickbook::test
