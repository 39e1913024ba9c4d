// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/wick_care.h"
#include "ui/session/session.h"

#include <QWidget>

class QVBoxLayout;

/// The instruments: what is in use now in a few lines, then lists of what holds from when and of what was
/// done: thermometers, the pair in use, corrections, exposure and coefficient, wick and water, checks and
/// comparisons. Owns its widgets; the session outlives it.

namespace wickbook::ui {

/// When a new wick was put on last, and a reminder from a fortnight on.
QString lastWickWords(const QLocale& locale, const std::vector<desk::WickCareLine>& log,
                      record::StationDate today);

class InstrumentsPage : public QWidget {
    Q_OBJECT

public:
    explicit InstrumentsPage(Session& session, QWidget* parent = nullptr);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void reload();
    void changed();
    void addPair();
    void addBulb(const char* bulb, const QString& title, const record::Thermometer* thermometer);
    void addCoefficient();
    void addWick();
    void addLine(const QString& what, const QString& value);

    Session& session_;
    QVBoxLayout* summary_ = nullptr;
    bool stale_ = true; ///< something changed while the page was out of sight
};

} // namespace wickbook::ui
