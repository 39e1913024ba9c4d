// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/station/restore_work.h"

#include <QDialog>

class QLabel;
class QLineEdit;
class QListWidget;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

/// Restoring: a copy is chosen, a new name given, and a new book made of it, verified; then what differs from
/// the book that is open is shown. The copy and the open book are never written to. Works without an open
/// book too, for the day it can't be opened.

namespace wickbook::ui {

struct RestoreStart {
    QString folder; ///< where copies are looked for; empty: the person says
    QString book;   ///< the open book, held against the restored one; empty: none
    QString copy;   ///< chosen already; empty: the newest
};

class RestoreDialog : public QDialog {
    Q_OBJECT

public:
    explicit RestoreDialog(RestoreStart start, QLocale locale = {}, QWidget* parent = nullptr);
    ~RestoreDialog() override;

    /// Copies of another folder.
    void lookIn(const QString& folder);
    /// One file, whatever its name.
    void takeFile(const QString& file);
    [[nodiscard]] bool isBusy() const { return work_.isRunning(); }

    void reject() override;

signals:
    void openBookAsked(const QString& path);

private:
    enum class Stage { Looking, Choosing, Verifying, Restoring, Done };

    void build();
    void buildCopies(QVBoxLayout& page);
    void buildFoot(QVBoxLayout& page);
    void setStage(Stage stage);
    void found(const FoundCopies& found);
    void chosenChanged();
    void verify();
    void restore();
    void restored(const Restored& result);
    void askFolder();
    void askFile();
    void askNewBook();
    void say(const QString& sentence, bool wrong);
    [[nodiscard]] std::filesystem::path chosen() const;
    [[nodiscard]] QString usualNewBook() const;

    RestoreStart start_;
    QLocale locale_;
    Stage stage_ = Stage::Looking;
    std::vector<store::KeptCopy> copies_;
    QString file_;      ///< one taken by itself, shown instead of a folder's
    QString suggested_; ///< the new book's name as filled in last, replaced while nobody changed it

    QLabel* where_ = nullptr;
    QListWidget* list_ = nullptr;
    QLineEdit* newBook_ = nullptr;
    QPushButton* choose_ = nullptr;
    QPushButton* folderButton_ = nullptr;
    QPushButton* fileButton_ = nullptr;
    QPushButton* verify_ = nullptr;
    QLabel* sentence_ = nullptr;
    QListWidget* lines_ = nullptr;
    QWidget* blank_ = nullptr; ///< holds the page up while there is no list
    QProgressBar* bar_ = nullptr;
    QPushButton* restore_ = nullptr;
    QPushButton* open_ = nullptr;
    QPushButton* close_ = nullptr;
    BackgroundWork work_; ///< last, so that it ends first
};

} // namespace wickbook::ui
