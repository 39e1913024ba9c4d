// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/background_work.h"
#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

#include <memory>

class QLabel;
class QProgressBar;
class QPushButton;
class QTableWidget;

/// What another fact of the station would change in the register, month by month, before it is kept. Worked
/// out beside the window with a book of its own, to read only; it can be stopped. The session outlives it.

namespace wickbook::ui {

class ChangesPreview : public QWidget {
    Q_OBJECT

public:
    explicit ChangesPreview(Session& session, QLocale locale, QWidget* parent = nullptr);

    /// Works out what these facts would change; an earlier working is given up.
    void begin(const record::StationFacts& after);
    /// Nothing is shown any more; what is being worked out is given up.
    void clear();
    [[nodiscard]] bool isRunning() const { return work_ && work_->isRunning(); }

signals:
    /// The answer stands on the screen. true: it was worked out to its end.
    void done(bool whole);

private:
    struct Answer;
    void show(const Answer& answer);

    Session& session_;
    QLocale locale_;
    QLabel* sentence_ = nullptr;
    QTableWidget* months_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QPushButton* stop_ = nullptr;
    std::unique_ptr<BackgroundWork> work_;
};

} // namespace wickbook::ui
