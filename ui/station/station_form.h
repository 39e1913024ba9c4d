// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <QLocale>
#include <QWidget>
#include <tl/expected.hpp>

#include <optional>
#include <vector>

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
    /// now: what the example of the hours is reckoned from.
    explicit StationForm(QWidget* parent = nullptr, std::optional<record::Instant> now = {});

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
    void hoursChanged();
    void showProblem();
    void finish();

    QFormLayout* form_ = nullptr;
    QLineEdit* name_ = nullptr;
    TypedNumberEdit* latitude_ = nullptr;
    TypedNumberEdit* longitude_ = nullptr;
    TypedNumberEdit* elevation_ = nullptr;
    QComboBox* zone_ = nullptr;
    QLineEdit* hours_ = nullptr;
    QComboBox* rule_ = nullptr;
    QLabel* ruleLine_ = nullptr;
    QComboBox* exposure_ = nullptr;
    QLabel* exposureLine_ = nullptr;
    QComboBox* unit_ = nullptr;
    QComboBox* step_ = nullptr;
    TypedNumberEdit* lowest_ = nullptr;
    TypedNumberEdit* highest_ = nullptr;
    QLabel* message_ = nullptr;
    record::Instant now_;
};

/// "9, 21" or "09:00 21:00": hours of the day, sorted; the sentence when one is none.
tl::expected<std::vector<record::HourOfDay>, QString> hoursFromTyped(const QString& typed);
/// What the rule means, and when tomorrow's hours come by the clock of the zone: "… Tomorrow 09:00 comes at
/// 10:00 by the clock." Without a known zone or an hour, only the first sentence.
QString hourRuleExplained(record::HourRule rule, const std::optional<record::Zone>& zone,
                          const std::vector<record::HourOfDay>& hours, record::Instant now);
/// The unit most thermometers of the place read in: °F where the locale measures by it.
units::TemperatureUnit usualUnit(const QLocale& locale);
/// A list of every zone the system knows, the system's own chosen.
void fillZones(QComboBox& box, const QString& chosen);

} // namespace wickbook::ui
