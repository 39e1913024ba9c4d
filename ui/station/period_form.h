// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/station_record.h"

#include <QDialog>
#include <tl/expected.hpp>

#include <functional>
#include <optional>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

/// From a date on the station differs: its hours, their rule, its place, zone or exposure. Fields that are
/// left as they are name nothing, so a later finding about an earlier time still carries through.

namespace wickbook::ui {

class TypedNumberEdit;

class PeriodForm : public QDialog {
    Q_OBJECT

public:
    /// today: what the date field offers. known: a period to change; none: a new one.
    PeriodForm(const record::StationRecord& station, record::StationDate today, QWidget* parent = nullptr,
               std::optional<record::PeriodChange> known = {});

    /// What keeping the change would do, in a sentence: shown before it is kept.
    using Preview = std::function<QString(const record::PeriodChange&)>;
    void setPreview(Preview preview);

    /// The change as typed, or the sentence about what can't be taken.
    [[nodiscard]] tl::expected<record::PeriodChange, QString> change() const;
    [[nodiscard]] QString why() const;

public slots:
    void accept() override;

private:
    void build(record::StationDate today);
    void fill(const record::StationPeriod& period);
    void dateChanged();
    void asksAnew();
    void say(const QString& sentence, bool wrong);

    record::StationRecord station_;
    std::optional<record::PeriodChange> known_;
    record::StationPeriod now_; ///< what is in force without the change
    Preview preview_;
    bool previewed_ = false;
    QPushButton* keep_ = nullptr;
    QLineEdit* from_ = nullptr;
    QLineEdit* hours_ = nullptr;
    QComboBox* rule_ = nullptr;
    QComboBox* zone_ = nullptr;
    QComboBox* exposure_ = nullptr;
    TypedNumberEdit* latitude_ = nullptr;
    TypedNumberEdit* longitude_ = nullptr;
    TypedNumberEdit* elevation_ = nullptr;
    QLineEdit* surroundings_ = nullptr;
    QLineEdit* why_ = nullptr;
    QLabel* message_ = nullptr;
};

} // namespace wickbook::ui
