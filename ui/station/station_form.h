// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <QWidget>
#include <tl/expected.hpp>

class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;

/// "Start a station": one page with sensible defaults, everything changeable later. Ends in the facts of a
/// new station; where its book lies is asked by the window.

namespace wickbook::ui {

class TypedNumberEdit;

class StationForm : public QWidget {
    Q_OBJECT

public:
    explicit StationForm(QWidget* parent = nullptr);

    /// What the fields say, or the sentence about the first one that can't be taken.
    [[nodiscard]] tl::expected<record::NewStation, QString> station() const;
    void focusFirst();

signals:
    void finished(const wickbook::record::NewStation& station);
    void cancelled();

private:
    void buildPlace();
    void buildHours();
    void buildInstrument();
    void unitChanged();
    void finish();

    QFormLayout* form_ = nullptr;
    QLineEdit* name_ = nullptr;
    TypedNumberEdit* latitude_ = nullptr;
    TypedNumberEdit* longitude_ = nullptr;
    TypedNumberEdit* elevation_ = nullptr;
    QComboBox* zone_ = nullptr;
    QLineEdit* hours_ = nullptr;
    QComboBox* rule_ = nullptr;
    QComboBox* exposure_ = nullptr;
    QLabel* exposureLine_ = nullptr;
    QComboBox* unit_ = nullptr;
    QComboBox* step_ = nullptr;
    TypedNumberEdit* lowest_ = nullptr;
    TypedNumberEdit* highest_ = nullptr;
    QLabel* message_ = nullptr;
};

/// "9, 21" or "09:00 21:00": hours of the day, sorted; the sentence when one is none.
tl::expected<std::vector<record::HourOfDay>, QString> hoursFromTyped(const QString& typed);
/// A list of every zone the system knows, the system's own chosen.
void fillZones(QComboBox& box, const QString& chosen);

} // namespace wickbook::ui
