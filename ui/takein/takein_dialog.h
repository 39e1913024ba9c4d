// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/background_work.h"
#include "ui/session/session.h"
#include "ui/takein/takein_memory.h"
#include "ui/takein/takein_steps.h"

#include <QDialog>
#include <QTimer>

class QCheckBox;
class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;
class QVBoxLayout;

/// Bringing in a register that was kept elsewhere: the file as it stands with a meaning above each column,
/// how its cells are read, what every line would become, and then all of it in one transaction or none.
/// Nothing is written before the one button that says so; stopping leaves no trace. What came in is one step
/// of undo.

namespace wickbook::ui {

class ColumnsView;
class ReadingChoices;
class VerdictModel;

class TakeInDialog : public QDialog {
    Q_OBJECT

public:
    /// The session outlives the dialog. memoryFile: where mappings are remembered; empty: nowhere.
    TakeInDialog(Session& session, const QString& memoryFile, QWidget* parent = nullptr);
    ~TakeInDialog() override;

    /// What is dropped or chosen takes the place of what was there.
    void takeFiles(const QStringList& files);
    /// Whether something is being tried or stored.
    [[nodiscard]] bool isBusy() const { return work_.isRunning() || soon_.isActive(); }

    void reject() override;

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    enum class Stage { Nothing, Choosing, Trying, Tried, Storing, Done };

    void build();
    void buildFileRow(QVBoxLayout& page);
    void buildPreview(QVBoxLayout& page);
    void buildFoot(QVBoxLayout& page);
    void chooseFiles();
    void lookAgain();
    void proposeColumns();
    void trySoon();
    void tryNow();
    void tried();
    void bringIn();
    void stored();
    void withdraw();
    void saveLeftOut();
    void setStage(Stage stage);
    void showCounts();
    void say(const QString& sentence, bool wrong);
    [[nodiscard]] exchange::ImportOptions options() const;
    [[nodiscard]] exchange::OnConflict onConflict() const;
    [[nodiscard]] std::vector<std::string> header() const;

    Session& session_;
    TakeInMemory memory_;
    Stage stage_ = Stage::Nothing;
    LookedAt looked_;
    bool whole_ = false; ///< a long file is to be tried to its end
    bool again_ = false; ///< choices changed while they were tried
    std::shared_ptr<Tried> trial_;
    std::shared_ptr<const desk::ImportPreview> preview_;
    std::shared_ptr<Stored> result_;
    const QUndoCommand* command_ = nullptr; ///< on the session's stack while it can be withdrawn

    QLabel* fileLabel_ = nullptr;
    QPushButton* choose_ = nullptr;
    ColumnsView* columns_ = nullptr;
    ReadingChoices* choices_ = nullptr;
    QWidget* reading_ = nullptr; ///< columns and choices: for CSV only
    QLabel* sentence_ = nullptr;
    QComboBox* show_ = nullptr;
    VerdictModel* model_ = nullptr;
    QTableView* table_ = nullptr;
    QLabel* detail_ = nullptr;
    QWidget* blank_ = nullptr; ///< holds the page up while there are no lines
    QWidget* conflictRow_ = nullptr;
    QLabel* conflictLabel_ = nullptr;
    QComboBox* conflict_ = nullptr;
    QCheckBox* copy_ = nullptr;
    QProgressBar* bar_ = nullptr;
    QPushButton* wholeFile_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* withdraw_ = nullptr;
    QPushButton* bring_ = nullptr;
    QPushButton* close_ = nullptr;
    QTimer soon_;
    BackgroundWork work_; ///< last, so that it ends first
};

} // namespace wickbook::ui
