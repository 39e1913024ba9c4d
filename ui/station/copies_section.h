// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

class QCheckBox;
class QLabel;
class QListWidget;
class QProgressBar;
class QPushButton;
class QVBoxLayout;

/// "Copies" on the Station page, folded away until wanted: when the last one was kept and where, every copy
/// with what it holds, one more now, verifying, restoring into a new book, a copy to hand on, and whether one
/// is kept every day. The keeping itself is the session's (ui/session/copy_keeper.h), which outlives this.

namespace wickbook::ui {

class CopiesSection : public QWidget {
    Q_OBJECT

public:
    explicit CopiesSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

    /// Opens the section and takes the focus.
    void open();
    /// Hands on a copy under this name; the sentence is shown.
    void handOn(const QString& path);

signals:
    /// A book was restored and is to be opened.
    void openBookAsked(const QString& path);

private:
    void build();
    void buildButtons(QVBoxLayout& inside);
    void unfold(bool open);
    void reload();
    void reloadList();
    void showFold();
    void chosenChanged();
    void changeFolder();
    void verify(bool all);
    void restore();
    void askHandOn();
    void say(const QString& sentence, bool wrong);
    [[nodiscard]] CopyKeeper& keeper() const { return session_.copies(); }
    [[nodiscard]] const ShownCopy* chosen() const;
    [[nodiscard]] QString lineOf(const ShownCopy& copy) const;

    Session& session_;
    QLocale locale_;
    QPushButton* fold_ = nullptr;
    QWidget* content_ = nullptr;
    QLabel* last_ = nullptr;
    QLabel* where_ = nullptr;
    QPushButton* change_ = nullptr;
    QCheckBox* daily_ = nullptr;
    QListWidget* list_ = nullptr;
    QPushButton* now_ = nullptr;
    QPushButton* verify_ = nullptr;
    QPushButton* verifyAll_ = nullptr;
    QPushButton* restore_ = nullptr;
    QPushButton* handOn_ = nullptr;
    QProgressBar* bar_ = nullptr;
    QLabel* message_ = nullptr;
    bool verifying_ = false;
    BackgroundWork* handing_ = nullptr;
};

} // namespace wickbook::ui
