// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/rule.h"

#include <QWidget>

#include <vector>

class QVBoxLayout;

/// The marginal notes of the entry, one for each root of trouble, and the question what the paper says when
/// a likely cause was taken. Speaks only when told to; holds no judgement of its own.

namespace wickbook::ui {

class MarginalNote;

class NotesPanel : public QWidget {
    Q_OBJECT

public:
    explicit NotesPanel(QWidget* parent = nullptr);

    /// Shows these notes; the same ones again change nothing, so that the focus stays.
    void showNotes(const std::vector<checks::SpokenNote>& notes, units::TemperatureUnit unit);
    void clear();
    [[nodiscard]] bool isClear() const { return shown_.empty(); }
    /// Puts the keyboard on the first note that can be answered.
    void focusFirst();
    /// As if the cause at this place (from 0) of the first note that has causes were chosen; false: there is
    /// none.
    bool takeCause(int index);
    [[nodiscard]] std::vector<MarginalNote*> notes() const { return notes_; }

signals:
    /// The cause was taken: paperSaysSo is a slip of the keys, else a slip at the thermometer.
    void causeTaken(const wickbook::checks::LikelyCause& cause, const QString& reason, bool paperSaysSo);
    void readRightChosen();

private:
    void rebuild();
    void ask(const checks::LikelyCause& cause, const QString& reason);

    std::vector<checks::SpokenNote> shown_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    std::vector<MarginalNote*> notes_;
    QVBoxLayout* column_ = nullptr;
};

} // namespace wickbook::ui
