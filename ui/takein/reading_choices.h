// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/file_head.h"

#include <QWidget>

#include <optional>

class QComboBox;
class QGridLayout;

namespace wickbook::ui {

/// How the cells of a file are to be read: what the file itself can't tell for certain.
class ReadingChoices : public QWidget {
    Q_OBJECT

public:
    explicit ReadingChoices(const QString& stationZone, QWidget* parent = nullptr);

    /// As found in the file; the choosers say so.
    void showFound(const exchange::CsvFormat& format, bool headless);
    /// Unit, decimal mark, dates, zone and double times; headless and separator stay as found.
    void setOptions(const exchange::ImportOptions& options);
    /// Everything but the layout.
    [[nodiscard]] exchange::ImportOptions options() const;
    [[nodiscard]] std::optional<char> separator() const;
    [[nodiscard]] bool headless() const;
    /// Why these choices can't be used; empty: they can.
    [[nodiscard]] QString problem() const;

signals:
    void changed();      ///< the lines are to be tried again
    void shapeChanged(); ///< separator or header: the columns are to be looked at again

private:
    QComboBox* add(QGridLayout& grid, int place, const QString& label, const char* name);

    QComboBox* begins_;
    QComboBox* separator_;
    QComboBox* unit_;
    QComboBox* decimal_;
    QComboBox* dates_;
    QComboBox* zone_;
    QComboBox* twice_;
    bool filling_ = false;
};

} // namespace wickbook::ui
