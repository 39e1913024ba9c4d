// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"
#include "ui/dated/changes_preview.h"

#include <QDialog>
#include <tl/expected.hpp>

#include <functional>
#include <optional>

class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

/// What the forms for one fact share: a heading, a word of explanation, fields with their names, one place
/// for the sentence about what can't be taken, and, where keeping changes what is worked out, a look at the
/// months it would change first. Enter keeps, Escape closes; nothing is stored here.

namespace wickbook::ui {

class FactForm : public QDialog {
    Q_OBJECT

public:
    /// What the fields ask for can't be taken: the sentence; empty when it can.
    [[nodiscard]] virtual QString problem() const = 0;
    /// The station as it would be; only asked when there is no problem.
    using FactsAfter = std::function<record::StationFacts()>;
    /// From now on Enter first shows what would change.
    void previewChanges(Session& session, const QLocale& locale, FactsAfter after);

public slots:
    void accept() override;
    void reject() override;

protected:
    FactForm(const QString& title, const QString& heading, const QString& explained, QWidget* parent);
    /// A field with its label; both are known to a screen reader. name: for tests.
    void addRow(const QString& label, QWidget* field, const char* name);
    /// Something across the whole width.
    void addWide(QWidget* widget);
    QLineEdit* addLine(const QString& label, const char* name, const QString& text = {});
    /// To be called last, by the subclass's constructor.
    void finish();
    /// Whatever the fields say now is another thing than what was shown.
    void askAnew();

private:
    void say(const QString& sentence);

    QVBoxLayout* column_ = nullptr;
    QFormLayout* form_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* keep_ = nullptr;
    ChangesPreview* preview_ = nullptr;
    FactsAfter after_;
    bool seen_ = false; ///< what would change stands on the screen
};

/// Begin of a date written as year-month-day, by the station's clock; empty: none, from the beginning. The
/// sentence where it is no date.
tl::expected<std::optional<record::Instant>, QString> fromTyped(const QString& typed,
                                                                const record::StationRecord& station);
/// The same date back, empty for none.
QString typedFrom(const std::optional<record::Instant>& from, const record::StationRecord& station);

} // namespace wickbook::ui
