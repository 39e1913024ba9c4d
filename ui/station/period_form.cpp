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

#include <algorithm>

namespace wickbook::ui {

namespace {

QString hoursText(const std::vector<record::HourOfDay>& hours) {
    QStringList parts;
    for (const record::HourOfDay hour : hours) {
        parts << QString::fromStdString(record::hourText(hour));
    }
    return parts.join(QStringLiteral(", "));
}

void setNumber(TypedNumberEdit& field, double value) {
    if (const auto text = units::parseDecimal(units::exactText(value))) {
        field.setValue(*text);
    }
}

TypedNumberEdit* number(const QString& what, const QString& suffix, double value) {
    auto* field = new TypedNumberEdit(what);
    field->setSuffix(suffix);
    setNumber(*field, value);
    return field;
}

/// The station as it would be had the change never been.
record::StationRecord withoutChange(const record::StationRecord& station,
                                    const record::PeriodChange& change) {
    record::StationFacts facts = station.facts();
    std::erase_if(facts.periods, [&](const record::PeriodChange& each) { return each.id == change.id; });
    return record::StationRecord{std::move(facts)};
}

} // namespace

PeriodForm::PeriodForm(const record::StationRecord& station, record::StationDate today, QWidget* parent,
                       std::optional<record::PeriodChange> known)
    : QDialog(parent), station_(station), known_(std::move(known)), now_(station.latestPeriod()) {
    setWindowTitle(tr("From a date on"));
    Look::follow(*this);
    if (known_) {
        now_ =
            known_->from ? withoutChange(station, *known_).periodAt(*known_->from) : record::StationPeriod{};
    }
    build(today);
    if (known_) {
        fill(known_->from ? station.periodAt(*known_->from) : station.periods().front());
        from_->setText(known_->from ? QString::fromStdString(record::dateText(date::floor<date::days>(
                                          station.periodAt(*known_->from).zone.localAt(*known_->from))))
                                    : QString{});
        from_->setEnabled(known_->from.has_value());
        from_->setPlaceholderText(tr("from the beginning"));
    }
    for (QLineEdit* edit : findChildren<QLineEdit*>()) {
        connect(edit, &QLineEdit::textChanged, this, &PeriodForm::asksAnew);
    }
    for (QComboBox* box : findChildren<QComboBox*>()) {
        connect(box, &QComboBox::currentIndexChanged, this, &PeriodForm::asksAnew);
    }
    connect(from_, &QLineEdit::editingFinished, this, &PeriodForm::dateChanged);
    asksAnew();
}

void PeriodForm::setPreview(Preview preview) {
    preview_ = std::move(preview);
    asksAnew();
}

void PeriodForm::fill(const record::StationPeriod& period) {
    hours_->setText(hoursText(period.hours));
    rule_->setCurrentIndex(rule_->findData(static_cast<int>(period.hourRule)));
    zone_->setCurrentText(QString::fromStdString(period.zone.name()));
    exposure_->setCurrentIndex(exposure_->findData(static_cast<int>(period.exposure)));
    setNumber(*latitude_, period.position.latitude);
    setNumber(*longitude_, period.position.longitude);
    setNumber(*elevation_, period.elevation.metres());
    surroundings_->setText(QString::fromStdString(period.surroundings));
}

/// For a date further back another period may have been in force: what differs is told from that one.
void PeriodForm::dateChanged() {
    const auto date = record::parseDate(from_->text().trimmed().toStdString());
    if (known_ || !date) {
        return;
    }
    const QList<QLineEdit*> edits = findChildren<QLineEdit*>();
    const bool typed = std::any_of(edits.begin(), edits.end(), [this](const QLineEdit* edit) {
        return edit != from_ && edit != why_ && edit->isModified();
    });
    const bool untouched = !typed && rule_->currentData().toInt() == static_cast<int>(now_.hourRule) &&
                           exposure_->currentData().toInt() == static_cast<int>(now_.exposure) &&
                           zone_->currentText().toStdString() == now_.zone.name();
    now_ = station_.periodAt(record::startOfDate(*date, station_));
    if (untouched) {
        fill(now_);
    }
}

void PeriodForm::asksAnew() {
    previewed_ = false;
    keep_->setText(preview_ ? tr("See what changes") : tr("Keep it"));
    say({}, false);
}

void PeriodForm::say(const QString& sentence, bool wrong) {
    message_->setProperty("wrong", wrong);
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
    refreshLook(*message_);
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
    message_->setObjectName(QStringLiteral("periodMessage"));
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    keep_ = buttons->button(QDialogButtonBox::Ok);
    keep_->setObjectName(QStringLiteral("periodKeep"));
    keep_->setProperty("primary", true);
    connect(buttons, &QDialogButtonBox::accepted, this, &PeriodForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
}

QString PeriodForm::why() const {
    return why_->text().trimmed();
}

tl::expected<record::PeriodChange, QString> PeriodForm::change() const {
    record::PeriodChange change;
    if (known_) {
        change.id = known_->id;
        // Asked elsewhere, not here.
        change.ownCoefficient = known_->ownCoefficient;
        change.meanPressure = known_->meanPressure;
        change.joined = known_->joined;
    } else {
        change.id = record::Uuid::random();
    }
    const auto date = record::parseDate(from_->text().trimmed().toStdString());
    const bool fromBeginning = known_ && !known_->from;
    if (!date && !fromBeginning) {
        return tl::unexpected(timeErrorWords(date.error(), from_->text()));
    }
    const QString zoneName = zone_->currentText().trimmed();
    const auto zone = record::Zone::named(zoneName.toStdString());
    if (!zone) {
        return tl::unexpected(tr("There is no time zone of that name. Choose one from the list."));
    }
    if (!fromBeginning) {
        change.from = record::startOfDate(*date, *zone);
    }
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
    if (!known_ && !change.hours && !change.hourRule && !change.zone && !change.exposure &&
        !change.position && !change.elevation && !change.surroundings) {
        return tl::unexpected(
            tr("Nothing differs yet from what is in force. Change a field, or close this."));
    }
    return change;
}

void PeriodForm::accept() {
    const auto made = change();
    if (!made) {
        say(made.error(), true);
        return;
    }
    if (!preview_ || previewed_) {
        QDialog::accept();
        return;
    }
    say(preview_(*made), false);
    previewed_ = true;
    keep_->setText(tr("Keep it"));
    keep_->setFocus();
}

} // namespace wickbook::ui
