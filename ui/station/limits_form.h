// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/checks/limit_edit.h"
#include "ui/session/session.h"

#include <QDialog>
#include <QLocale>
#include <tl/expected.hpp>

class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;

/// One limit: what its rule does, another value or the built-in one, from when, and why. Before it is kept, a
/// sentence tells how many readings of the whole register would be judged otherwise; the count can be
/// stopped.

namespace wickbook::ui {

class LimitsCounting;
class TypedNumberEdit;

class LimitForm : public QDialog {
    Q_OBJECT

public:
    /// back: put it back to the built-in value instead of asking for another.
    LimitForm(Session& session, const checks::LimitEntry& entry, bool back, QLocale locale,
              QWidget* parent = nullptr);
    ~LimitForm() override;

    /// What the fields ask for, or the sentence about what can't be taken.
    [[nodiscard]] tl::expected<record::LimitChanges, QString> changes() const;
    [[nodiscard]] QString why() const;

public slots:
    /// The first time it counts, and only then it keeps.
    void accept() override;
    void reject() override;

private:
    void build();
    void showMessage(const QString& sentence, bool wrong);
    void count(const record::LimitChanges& after);
    void counted(const QString& sentence);
    void asksAnew();

    Session& session_;
    const checks::LimitEntry& entry_;
    bool back_;
    QLocale locale_;
    TypedNumberEdit* value_ = nullptr;
    QLineEdit* from_ = nullptr;
    QLineEdit* why_ = nullptr;
    QLabel* message_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QPushButton* keep_ = nullptr;
    QPushButton* stop_ = nullptr;
    LimitsCounting* counting_ = nullptr;
    bool counted_ = false; ///< the sentence on the screen belongs to what the fields say
};

} // namespace wickbook::ui
