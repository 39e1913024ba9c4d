// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/paper_sheet.h"

#include <QDialog>
#include <QLocale>

class QComboBox;
class QFormLayout;
class QLabel;

/// One kind of sheet: a few choices, then preview, printer or PDF. The choices are the maker's.

namespace wickbook::ui {

class SheetDialog : public QDialog {
    Q_OBJECT

public:
    /// What the sheet is with the choices as they stand, or why it can't be.
    using Maker = std::function<tl::expected<PaperSheet, QString>(Paper)>;

    /// fileName: what is offered when saving.
    SheetDialog(const QString& title, const QString& explained, const QString& fileName,
                const QLocale& locale, QWidget* parent);
    /// A choice with its name; before finish().
    void addChoice(const QString& label, QWidget* field, const char* name);
    /// fixedPaper: the sheet has a size of its own.
    void finish(Maker make, std::optional<Paper> fixedPaper = std::nullopt);

    /// The sheet as the choices stand; says why not otherwise.
    [[nodiscard]] std::optional<PaperSheet> sheet();

private:
    void say(const QString& sentence);

    QString fileName_;
    Maker make_;
    std::optional<Paper> fixedPaper_;
    QFormLayout* form_ = nullptr;
    QComboBox* paper_ = nullptr;
    QLabel* said_ = nullptr;
};

} // namespace wickbook::ui
