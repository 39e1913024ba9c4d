// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/thermometer_form.h"

#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"

#include <QComboBox>
#include <QLineEdit>

namespace wickbook::ui {

namespace {

/// A whole degree at the coarsest that still makes a psychrometer; a hundredth at the finest.
constexpr double kCoarsestStep = 2.0;
constexpr double kFinestStep = 0.01;

} // namespace

ThermometerForm::ThermometerForm(Session& session, const std::optional<record::Thermometer>& known,
                                 const QLocale& locale, QWidget* parent)
    : FactForm(
          tr("Thermometer"), known ? tr("Change a thermometer") : tr("A new thermometer"),
          tr("What was read with it stays as it was read. A column that breaks or a zero that moved is a "
             "correction, not a new thermometer."),
          parent)
    , session_(session)
    , fittingId_(record::Uuid::random())
    , isNew_(!known) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.unit = session.unit();
    }
    name_ = addLine(tr("Serial number or name"), "thermometerName", QString::fromStdString(start_.name));
    liquid_ = addLine(tr("Liquid"), "thermometerLiquid", QString::fromStdString(start_.liquid));
    liquid_->setPlaceholderText(tr("spirit, mercury, …"));
    unit_ = new QComboBox;
    for (const auto unit : {units::TemperatureUnit::Celsius, units::TemperatureUnit::Fahrenheit}) {
        unit_->addItem(unitWords(unit), static_cast<int>(unit));
    }
    unit_->setCurrentIndex(unit_->findData(static_cast<int>(start_.unit)));
    addRow(tr("Scale in"), unit_, "thermometerUnit");
    const auto number = [&](const QString& label, const QString& what, const char* name,
                            const units::Decimal& value) {
        auto* field = new TypedNumberEdit(what);
        field->setValue(value);
        addRow(label, field, name);
        return field;
    };
    step_ = number(tr("Read to"), tr("finest step that is read"), "thermometerStep", start_.step);
    lowest_ = number(tr("Lowest mark"), tr("lowest mark"), "thermometerLowest", start_.lowestMark);
    highest_ = number(tr("Highest mark"), tr("highest mark"), "thermometerHighest", start_.highestMark);
    if (isNew_) {
        hangs_ = new QComboBox;
        hangs_->addItem(tr("not yet"), static_cast<int>(Hangs::Nowhere));
        hangs_->addItem(tr("as the dry bulb"), static_cast<int>(Hangs::Dry));
        hangs_->addItem(tr("as the wet bulb"), static_cast<int>(Hangs::Wet));
        addRow(tr("It hangs"), hangs_, "thermometerHangs");
        from_ = addLine(tr("From, year-month-day"), "thermometerFrom",
                        QString::fromStdString(record::dateText(session.today())));
    }
    finish();
    previewChanges(session, locale, [this] { return factsWith(session_.station().facts(), edits()); });
    name_->selectAll();
}

QString ThermometerForm::name() const {
    return name_->text().trimmed();
}

tl::expected<record::Thermometer, QString> ThermometerForm::thermometer() const {
    record::Thermometer made = start_;
    made.name = name().toStdString();
    if (made.name.empty()) {
        return tl::unexpected(tr("Write the number on it, or what you call it."));
    }
    for (const record::Thermometer& other : session_.station().facts().thermometers) {
        if (!other.withdrawn && other.id != made.id && other.name == made.name) {
            return tl::unexpected(
                tr("There is a thermometer “%1” already. Give this one another name.").arg(name()));
        }
    }
    made.liquid = liquid_->text().trimmed().toStdString();
    made.unit = static_cast<units::TemperatureUnit>(unit_->currentData().toInt());
    for (const TypedNumberEdit* field : {step_, lowest_, highest_}) {
        if (!field->value()) {
            return tl::unexpected(field->isEmpty() ? tr("Write the %1.").arg(field->what())
                                                   : field->problem());
        }
    }
    made.step = *step_->value();
    made.lowestMark = *lowest_->value();
    made.highestMark = *highest_->value();
    if (made.step.toDouble() < kFinestStep || made.step.toDouble() > kCoarsestStep) {
        return tl::unexpected(
            tr("The finest step that is read lies between 0.01 and 2 degrees; look at “%1”.")
                .arg(step_->text()));
    }
    if (made.lowestMark.toDouble() >= made.highestMark.toDouble()) {
        return tl::unexpected(tr("The lowest mark must lie below the highest."));
    }
    return made;
}

tl::expected<std::optional<record::Fitting>, QString>
ThermometerForm::fitting(const record::Thermometer& thermometer) const {
    if (hangs_ == nullptr || hangs_->currentData().toInt() == static_cast<int>(Hangs::Nowhere)) {
        return std::optional<record::Fitting>{};
    }
    const auto from = fromTyped(from_->text(), session_.station());
    if (!from) {
        return tl::unexpected(from.error());
    }
    const record::Instant moment = from->value_or(session_.now());
    const record::Thermometer* dry = session_.station().dryThermometerAt(moment);
    const record::Thermometer* wet = session_.station().wetThermometerAt(moment);
    if (dry == nullptr || wet == nullptr) {
        return tl::unexpected(
            tr("The other bulb's thermometer is not known. Hang the pair up under “The pair in use”."));
    }
    const bool asDry = hangs_->currentData().toInt() == static_cast<int>(Hangs::Dry);
    record::Fitting made;
    made.id = fittingId_;
    made.from = *from;
    made.dry = asDry ? thermometer.id : dry->id;
    made.wet = asDry ? wet->id : thermometer.id;
    return std::optional{made};
}

QString ThermometerForm::problem() const {
    const auto made = thermometer();
    if (!made) {
        return made.error();
    }
    const auto hung = fitting(*made);
    return hung ? QString{} : hung.error();
}

std::vector<FactEdit> ThermometerForm::edits() const {
    const auto made = thermometer();
    std::vector<FactEdit> edits{{made->id, std::optional{*made}}};
    if (const auto hung = fitting(*made); hung && *hung) {
        edits.push_back({(*hung)->id, *hung});
    }
    return edits;
}

} // namespace wickbook::ui
