// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/coefficient_form.h"

#include "ui/commands/revise_facts.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/term_words.h"

#include <QComboBox>
#include <QLineEdit>

namespace wickbook::ui {

namespace {

/// Fields speak of 10⁻⁴ per degree.
constexpr double kPerTenThousand = 1e-4;
constexpr double kLeastPressure = 500;
constexpr double kMostPressure = 1080;

void setRounded(TypedNumberEdit& field, std::optional<double> value, int decimals) {
    if (value) {
        field.setValue(units::roundedDecimal(*value, decimals));
    }
}

} // namespace

CoefficientForm::CoefficientForm(Session& session, const std::optional<record::PeriodChange>& known,
                                 const QLocale& locale, QWidget* parent)
    : FactForm(
          tr("Exposure and coefficient"), tr("How the pair is exposed from this date on"),
          tr("The coefficient decides what humidity a depression means. An own one comes out of a comparison "
             "at this station."),
          parent)
    , session_(session)
    , now_(session.station().periodAt(session.now()))
    , fromBeginning_(known && !known->from)
    , isNew_(!known) {
    if (known) {
        start_ = *known;
        record::StationRecord without{
            factsWith(session.station().facts(), {{known->id, std::optional<record::PeriodChange>{}}})};
        now_ = known->from ? without.periodAt(*known->from) : record::StationPeriod{};
    } else {
        start_.id = record::Uuid::random();
    }
    const record::StationPeriod shown = !known        ? now_
                                        : known->from ? session.station().periodAt(*known->from)
                                                      : session.station().periods().front();
    from_ = addLine(tr("From, year-month-day"), "coefficientFrom",
                    known ? typedFrom(known->from, session.station())
                          : QString::fromStdString(record::dateText(session.today())));
    if (fromBeginning_) {
        from_->setEnabled(false);
        from_->setPlaceholderText(tr("from the beginning"));
    }
    exposure_ = new QComboBox;
    for (const psychrometry::ExposureEntry& entry : psychrometry::exposureTable()) {
        exposure_->addItem(exposureWords(entry.exposure), static_cast<int>(entry.exposure));
    }
    exposure_->setCurrentIndex(exposure_->findData(static_cast<int>(shown.exposure)));
    addRow(tr("The thermometers are"), exposure_, "coefficientExposure");
    const auto number = [&](const QString& label, const QString& what, const QString& suffix,
                            const char* name) {
        auto* field = new TypedNumberEdit(what);
        field->setSuffix(suffix);
        addRow(label, field, name);
        return field;
    };
    water_ = number(tr("Own coefficient, water"), tr("own coefficient over water"), tr("× 10⁻⁴ per degree"),
                    "coefficientWater");
    ice_ = number(tr("Own coefficient, ice"), tr("own coefficient over ice"),
                  tr("× 10⁻⁴ per degree; empty: as water"), "coefficientIce");
    uncertainty_ = number(tr("Its uncertainty"), tr("uncertainty of the coefficient"), tr("%, standard"),
                          "coefficientUncertainty");
    pressure_ = number(tr("Mean pressure"), tr("mean pressure"),
                       tr("hPa at the station; empty: from elevation"), "coefficientPressure");
    if (shown.ownCoefficient) {
        setRounded(*water_, shown.ownCoefficient->waterPerKelvin / kPerTenThousand, 3);
        if (shown.ownCoefficient->icePerKelvin) {
            setRounded(*ice_, *shown.ownCoefficient->icePerKelvin / kPerTenThousand, 3);
        }
        if (shown.ownCoefficient->relativeUncertainty) {
            setRounded(*uncertainty_, *shown.ownCoefficient->relativeUncertainty * 100, 1);
        }
    }
    setRounded(*pressure_, shown.meanPressure, 1);
    connect(exposure_, &QComboBox::currentIndexChanged, this, &CoefficientForm::exposureChanged);
    exposureChanged();
    finish();
    previewChanges(session, locale, [this] {
        const record::PeriodChange made = change();
        return factsWith(session_.station().facts(), {{made.id, std::optional{made}}});
    });
}

void CoefficientForm::propose(const record::OwnCoefficient& own) {
    exposure_->setCurrentIndex(exposure_->findData(static_cast<int>(psychrometry::Exposure::Own)));
    setRounded(*water_, own.waterPerKelvin / kPerTenThousand, 3);
    if (own.icePerKelvin) {
        setRounded(*ice_, *own.icePerKelvin / kPerTenThousand, 3);
    }
    if (own.relativeUncertainty) {
        setRounded(*uncertainty_, *own.relativeUncertainty * 100, 1);
    }
}

void CoefficientForm::exposureChanged() {
    const bool isOwn = exposure_->currentData().toInt() == static_cast<int>(psychrometry::Exposure::Own);
    for (QLineEdit* field : std::initializer_list<QLineEdit*>{water_, ice_, uncertainty_}) {
        field->setEnabled(isOwn);
    }
}

tl::expected<std::optional<record::OwnCoefficient>, QString> CoefficientForm::own() const {
    if (exposure_->currentData().toInt() != static_cast<int>(psychrometry::Exposure::Own)) {
        return std::optional<record::OwnCoefficient>{};
    }
    for (const TypedNumberEdit* field : {water_, ice_, uncertainty_}) {
        if (!field->isEmpty() && !field->value()) {
            return tl::unexpected(field->problem());
        }
    }
    if (!water_->value()) {
        return tl::unexpected(
            tr("Write the own coefficient, as in 7.99 for 7.99 × 10⁻⁴, or choose another exposure."));
    }
    record::OwnCoefficient made;
    made.waterPerKelvin = water_->value()->toDouble() * kPerTenThousand;
    if (ice_->value()) {
        made.icePerKelvin = ice_->value()->toDouble() * kPerTenThousand;
    }
    if (uncertainty_->value()) {
        made.relativeUncertainty = uncertainty_->value()->toDouble() / 100;
    }
    const auto possible = [](double perKelvin) { return perKelvin > 0 && perKelvin <= 5e-3; };
    if (!possible(made.waterPerKelvin) || (made.icePerKelvin && !possible(*made.icePerKelvin))) {
        return tl::unexpected(tr("A coefficient lies between 0 and 50 × 10⁻⁴ per degree; 6 to 12 is usual."));
    }
    if (made.relativeUncertainty && (*made.relativeUncertainty < 0 || *made.relativeUncertainty > 1)) {
        return tl::unexpected(tr("The uncertainty of the coefficient lies between 0 and 100 %."));
    }
    return std::optional{made};
}

tl::expected<record::PeriodChange, QString> CoefficientForm::read() const {
    record::PeriodChange made = start_;
    const auto from = fromTyped(from_->text(), session_.station());
    if (!from) {
        return tl::unexpected(from.error());
    }
    if (!*from && !fromBeginning_) {
        return tl::unexpected(tr("Write the date from which it holds."));
    }
    made.from = *from;
    const auto typedOwn = own();
    if (!typedOwn) {
        return tl::unexpected(typedOwn.error());
    }
    if (!pressure_->isEmpty() && !pressure_->value()) {
        return tl::unexpected(pressure_->problem());
    }
    std::optional<double> mean;
    if (pressure_->value()) {
        mean = pressure_->value()->toDouble();
        if (*mean < kLeastPressure || *mean > kMostPressure) {
            return tl::unexpected(tr("The mean pressure at the station lies between 500 and 1080 hPa."));
        }
    }
    const auto exposure = static_cast<psychrometry::Exposure>(exposure_->currentData().toInt());
    // Only what differs is named, so that a later finding about an earlier time still carries through.
    made.exposure = exposure != now_.exposure || fromBeginning_ ? std::optional{exposure} : std::nullopt;
    made.ownCoefficient = *typedOwn && *typedOwn != now_.ownCoefficient ? *typedOwn : std::nullopt;
    made.meanPressure = mean != now_.meanPressure ? std::optional{mean.value_or(0)} : std::nullopt;
    if (!made.exposure && !made.ownCoefficient && !made.meanPressure && isNew_) {
        return tl::unexpected(
            tr("Nothing differs yet from what is in force. Change a field, or close this."));
    }
    return made;
}

QString CoefficientForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::PeriodChange CoefficientForm::change() const {
    return *read();
}

} // namespace wickbook::ui
