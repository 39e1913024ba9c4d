// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/period_form.h"

#include "core/units/number_text.h"
#include "ui/station/station_form.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/term_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

QString hoursText(const std::vector<record::HourOfDay>& hours) {
    QStringList parts;
    for (const record::HourOfDay hour : hours) {
        parts << QString::fromStdString(record::hourText(hour));
    }
    return parts.join(QStringLiteral(", "));
}

TypedNumberEdit* number(const QString& what, const QString& suffix, double value) {
    auto* field = new TypedNumberEdit(what);
    field->setSuffix(suffix);
    if (const auto text = units::parseDecimal(units::exactText(value))) {
        field->setValue(*text);
    }
    return field;
}

} // namespace

PeriodForm::PeriodForm(const record::StationRecord& station, record::StationDate today, QWidget* parent)
    : QDialog(parent), now_(station.latestPeriod()) {
    setWindowTitle(tr("From a date on"));
    Look::follow(*this);
    build(today);
}

void PeriodForm::build(record::StationDate today) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->addWidget(makeHeading(tr("From this date on the station differs")));
    column->addWidget(makeLabel(tr("Change what is different; leave the rest as it stands.")));
    auto* form = new QFormLayout;
    const auto row = [&](const QString& label, QWidget* field) {
        field->setAccessibleName(label);
        form->addRow(makeLabel(label), field);
    };
    from_ = new QLineEdit(QString::fromStdString(record::dateText(today)));
    from_->setObjectName(QStringLiteral("periodFrom"));
    row(tr("From, year-month-day"), from_);
    hours_ = new QLineEdit(hoursText(now_.hours));
    hours_->setObjectName(QStringLiteral("periodHours"));
    row(tr("Observing hours"), hours_);
    rule_ = new QComboBox;
    for (const record::HourRule rule :
         {record::HourRule::Standard, record::HourRule::Clock, record::HourRule::Utc}) {
        rule_->addItem(hourRuleWords(rule), static_cast<int>(rule));
    }
    rule_->setCurrentIndex(rule_->findData(static_cast<int>(now_.hourRule)));
    row(tr("They follow"), rule_);
    zone_ = new QComboBox;
    fillZones(*zone_, QString::fromStdString(now_.zone.name()));
    row(tr("Time zone"), zone_);
    exposure_ = new QComboBox;
    for (const psychrometry::ExposureEntry& entry : psychrometry::exposureTable()) {
        if (entry.exposure != psychrometry::Exposure::Own || now_.ownCoefficient) {
            exposure_->addItem(exposureWords(entry.exposure), static_cast<int>(entry.exposure));
        }
    }
    exposure_->setCurrentIndex(exposure_->findData(static_cast<int>(now_.exposure)));
    row(tr("The thermometers are"), exposure_);
    latitude_ = number(tr("latitude"), tr("° north"), now_.position.latitude);
    longitude_ = number(tr("longitude"), tr("° east"), now_.position.longitude);
    elevation_ = number(tr("elevation"), tr("m"), now_.elevation.metres());
    row(tr("Latitude"), latitude_);
    row(tr("Longitude"), longitude_);
    row(tr("Elevation"), elevation_);
    surroundings_ = new QLineEdit(QString::fromStdString(now_.surroundings));
    row(tr("Surroundings"), surroundings_);
    why_ = new QLineEdit;
    row(tr("Why"), why_);
    column->addLayout(form);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Keep it"));
    connect(buttons, &QDialogButtonBox::accepted, this, &PeriodForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

QString PeriodForm::why() const {
    return why_->text().trimmed();
}

tl::expected<record::PeriodChange, QString> PeriodForm::change() const {
    record::PeriodChange change;
    change.id = record::Uuid::random();
    const auto date = record::parseDate(from_->text().trimmed().toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), from_->text()));
    }
    const QString zoneName = zone_->currentText().trimmed();
    const auto zone = record::Zone::named(zoneName.toStdString());
    if (!zone) {
        return tl::unexpected(tr("There is no time zone of that name. Choose one from the list."));
    }
    change.from = record::startOfDate(*date, *zone);
    const auto hours = hoursFromTyped(hours_->text());
    if (!hours) {
        return tl::unexpected(hours.error());
    }
    for (const TypedNumberEdit* field : {latitude_, longitude_, elevation_}) {
        if (!field->value()) {
            return tl::unexpected(field->isEmpty() ? tr("Write the %1.").arg(field->what())
                                                   : field->problem());
        }
    }
    if (*hours != now_.hours) {
        change.hours = *hours;
    }
    if (const auto rule = static_cast<record::HourRule>(rule_->currentData().toInt());
        rule != now_.hourRule) {
        change.hourRule = rule;
    }
    if (zoneName.toStdString() != now_.zone.name()) {
        change.zone = zoneName.toStdString();
    }
    const auto exposure = static_cast<psychrometry::Exposure>(exposure_->currentData().toInt());
    if (exposure != now_.exposure) {
        change.exposure = exposure;
    }
    const record::Position position{latitude_->value()->toDouble(), longitude_->value()->toDouble()};
    if (!(position == now_.position)) {
        change.position = position;
    }
    const auto elevation = units::Elevation::fromMetres(elevation_->value()->toDouble());
    if (elevation != now_.elevation) {
        change.elevation = elevation;
    }
    const std::string surroundings = surroundings_->text().trimmed().toStdString();
    if (surroundings != now_.surroundings) {
        change.surroundings = surroundings;
    }
    if (!change.hours && !change.hourRule && !change.zone && !change.exposure && !change.position &&
        !change.elevation && !change.surroundings) {
        return tl::unexpected(
            tr("Nothing differs yet from what is in force. Change a field, or close this."));
    }
    return change;
}

void PeriodForm::accept() {
    const auto made = change();
    message_->setVisible(!made);
    if (made) {
        QDialog::accept();
    } else {
        message_->setText(made.error());
    }
}

} // namespace wickbook::ui
