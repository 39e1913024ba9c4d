// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/import_preview.h"

#include <QAbstractTableModel>
#include <QLocale>

#include <memory>
#include <vector>

namespace wickbook::ui {

/// The lines of a file and what each would become. Holds the preview that was handed to it.
class VerdictModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Line, Verdict, When, Dry, Wet, Sentence, ColumnCount };
    enum class Show { All, Fresh, Marked, Conflicts, Rejected, Same };

    explicit VerdictModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    void setPreview(std::shared_ptr<const desk::ImportPreview> preview);
    void setShow(Show show);
    void setOnConflict(exchange::OnConflict onConflict);
    void setLocale(const QLocale& locale) { locale_ = locale; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void fill();
    [[nodiscard]] bool shown(const desk::PreviewLine& line) const;
    [[nodiscard]] QString text(const desk::PreviewLine& line, int column) const;

    std::shared_ptr<const desk::ImportPreview> preview_;
    std::vector<std::size_t> rows_; ///< places of the lines shown
    Show show_ = Show::All;
    exchange::OnConflict onConflict_ = exchange::OnConflict::Keep;
    QLocale locale_;
};

} // namespace wickbook::ui
