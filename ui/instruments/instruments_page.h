// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QWidget>

class QVBoxLayout;

/// The thermometers and the wick: which pair hangs where and since when, the scale of each, its corrections
/// with their dates and sources, and what was done to the wick as the observations tell it.
/// Owns its widgets; the session outlives it.

namespace wickbook::ui {

/// One line of the wick's log.
struct WickCareLine {
    record::StationDate date;
    record::WickCare care = record::WickCare::None;
    std::string observer;
    std::string note;
};
/// Newest first, out of the readings given.
std::vector<WickCareLine> wickCareLog(const std::vector<record::StoredObservation>& observations);

class InstrumentsPage : public QWidget {
    Q_OBJECT

public:
    explicit InstrumentsPage(Session& session, QWidget* parent = nullptr);

private:
    void reload();
    void addPair();
    void addThermometer(const record::Thermometer& thermometer);
    void addWick();
    void addLine(const QString& what, const QString& value);
    void addTitle(const QString& text, const char* bulb = "");

    Session& session_;
    QVBoxLayout* column_ = nullptr;
};

} // namespace wickbook::ui
