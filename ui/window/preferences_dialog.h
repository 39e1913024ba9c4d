// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/window/preferences.h"

#include <QDialog>

class QComboBox;

namespace wickbook::ui {

/// Language, light or dark, size of letters. Nothing changes before "Use".
class PreferencesDialog : public QDialog {
    Q_OBJECT

public:
    explicit PreferencesDialog(const Preferences& now, QWidget* parent = nullptr);
    [[nodiscard]] Preferences chosen() const;

private:
    QComboBox* language_;
    QComboBox* shade_;
    QComboBox* letters_;
};

} // namespace wickbook::ui
