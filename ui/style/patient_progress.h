// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProgressDialog>

#include <cstddef>

/// Progress of work that is waited for: comes up when it has taken a moment, goes on drawing the window, and
/// can be cancelled, by key too. Nothing else of the window can be used meanwhile.

namespace wickbook::ui {

class PatientProgress {
public:
    /// doing: "Reading the year…".
    PatientProgress(const QString& doing, const QString& cancel, QWidget* parent);

    /// Tells how far the work is; false: it was cancelled. total 0: not known yet.
    bool go(std::size_t done, std::size_t total);
    [[nodiscard]] bool wasCancelled() const { return dialog_.wasCanceled(); }

private:
    QProgressDialog dialog_;
};

} // namespace wickbook::ui
