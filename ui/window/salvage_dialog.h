// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage.h"
#include "ui/session/background_work.h"
#include "ui/session/session.h"

#include <QDialog>

#include <optional>

class QLabel;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;

/// Saving what can be read of a damaged book: asks for the new book's name, works beside the window with
/// progress and Stop, says what came back and what is lost, and offers to open the new book. The damaged file
/// is only read. Escape stops what is under way, and closes once nothing is.

namespace wickbook::ui {

class Prompts;

class SalvageDialog : public QDialog {
    Q_OBJECT

public:
    /// who: initials of the person, for the revisions that are added. Prompts outlive it.
    SalvageDialog(const QString& damaged, const QString& who, Prompts& prompts, Session::Clock clock,
                  QWidget* parent = nullptr);

    /// The book to open now; empty: none was made, or it is not wanted.
    [[nodiscard]] QString bookToOpen() const;

    void reject() override;

private:
    void build();
    void begin();
    void end();
    void showStage(bool running);

    QString damaged_;
    QString who_;
    QString target_;
    Prompts& prompts_;
    Session::Clock clock_;
    std::shared_ptr<std::optional<store::Result<store::SalvageReport>>> answer_;
    bool made_ = false;
    QLabel* sentence_ = nullptr;
    QPlainTextEdit* details_ = nullptr;
    QProgressBar* bar_ = nullptr;
    QPushButton* begin_ = nullptr;
    QPushButton* stop_ = nullptr;
    QPushButton* open_ = nullptr;
    QPushButton* close_ = nullptr;
    BackgroundWork work_; ///< last: it is waited for before anything else goes
};

/// Whether the salvage may help with what kept this file from opening.
bool salvageMayHelp(const store::StoreError& error);

} // namespace wickbook::ui
