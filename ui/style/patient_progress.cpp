// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/patient_progress.h"

#include <algorithm>

namespace wickbook::ui {

namespace {
constexpr int kPatienceMilliseconds = 700;
constexpr int kSteps = 1000;
} // namespace

PatientProgress::PatientProgress(const QString& doing, const QString& cancel, QWidget* parent)
    : dialog_(doing, cancel, 0, kSteps, parent) {
    dialog_.setWindowModality(Qt::WindowModal);
    dialog_.setMinimumDuration(kPatienceMilliseconds);
    dialog_.setAutoClose(false); // the work tells its end by its own
    dialog_.setValue(0);
}

bool PatientProgress::go(std::size_t done, std::size_t total) {
    const double share = total == 0 ? 0.0 : static_cast<double>(done) / static_cast<double>(total);
    dialog_.setValue(std::clamp(static_cast<int>(share * kSteps), 0, kSteps - 1));
    return !dialog_.wasCanceled();
}

} // namespace wickbook::ui
