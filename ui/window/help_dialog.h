// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDialog>

class QTextBrowser;

/// A short help, opened at the part that belongs to the page in front.

namespace wickbook::ui {

enum class HelpPart { Observe, Register, Month, Instruments, Station, Cautions };

class HelpDialog : public QDialog {
    Q_OBJECT

public:
    explicit HelpDialog(QWidget* parent = nullptr);
    void showPart(HelpPart part);
    [[nodiscard]] QString plainText() const;

private:
    QTextBrowser* text_ = nullptr;
};

} // namespace wickbook::ui
