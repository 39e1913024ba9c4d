// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

class QLabel;
class QListWidget;
class QPushButton;
class QTreeView;

/// "Limits of the checks" on the Station page: folded away until wanted; then every limit by rule, what the
/// chosen rule does, this station's value with who and why, and its history. Changes go by an undo command.

namespace wickbook::ui {

class LimitsModel;

class LimitsSection : public QWidget {
    Q_OBJECT

public:
    explicit LimitsSection(Session& session, QLocale locale = {}, QWidget* parent = nullptr);

    /// Keeps what was asked for; the sentence when it could not be.
    QString keep(const record::LimitChanges& after, std::string_view limit, bool back, const QString& why);

private:
    void build();
    void unfold(bool open);
    void reload();
    void chosen();
    void ask(bool back);
    void showHistory(std::string_view limit);

    Session& session_;
    QLocale locale_;
    LimitsModel* model_ = nullptr;
    QPushButton* fold_ = nullptr;
    QWidget* content_ = nullptr;
    QTreeView* view_ = nullptr;
    QLabel* does_ = nullptr;
    QPushButton* change_ = nullptr;
    QPushButton* back_ = nullptr;
    QListWidget* history_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
