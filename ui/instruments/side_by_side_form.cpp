// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/side_by_side_form.h"

#include "core/units/number_text.h"
#include "ui/dated/note_length.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/instrument_words.h"
#include "ui/text/term_words.h"

#include <QComboBox>
#include <QLineEdit>

namespace wickbook::ui {

namespace {
constexpr double kMostUncertainty = 20; ///< % RH: beyond it nothing is a reference
}

SideBySideForm::SideBySideForm(Session& session, const std::optional<record::SideBySide>& known,
                               QWidget* parent)
    : FactForm(tr("Beside another instrument"), tr("Another instrument beside the station's"),
               tr("Same place, same air, read within five minutes of the station's pair. A reference tells "
                  "how far the "
                  "station lies off and gives its own coefficient; a new instrument or site goes beside the "
                  "old for "
                  "a year before it takes over."),
               parent) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.from = session.today();
    }
    name_ = addLine(tr("What it is"), "besideName", QString::fromStdString(start_.name));
    purpose_ = new QComboBox;
    for (const auto purpose : {record::BesidePurpose::Reference, record::BesidePurpose::Overlap}) {
        purpose_->addItem(besidePurposeWords(purpose), static_cast<int>(purpose));
    }
    purpose_->setCurrentIndex(purpose_->findData(static_cast<int>(start_.purpose)));
    addRow(tr("It is"), purpose_, "besidePurpose");
    from_ = addLine(tr("First day, year-month-day"), "besideFrom",
                    QString::fromStdString(record::dateText(start_.from)));
    to_ = addLine(tr("Last day"), "besideTo",
                  start_.to ? QString::fromStdString(record::dateText(*start_.to)) : QString{});
    to_->setPlaceholderText(tr("as announced; may stay empty"));
    uncertainty_ = new TypedNumberEdit(tr("uncertainty of the reference"));
    uncertainty_->setSuffix(tr("% RH, standard; of a reference"));
    if (start_.humidityUncertainty) {
        if (const auto text = units::parseDecimal(units::exactText(*start_.humidityUncertainty))) {
            uncertainty_->setValue(*text);
        }
    }
    addRow(tr("Its uncertainty"), uncertainty_, "besideUncertainty");
    exposure_ = new QComboBox;
    exposure_->addItem(tr("no psychrometer, or as the station's"), -1);
    for (const psychrometry::ExposureEntry& entry : psychrometry::exposureTable()) {
        if (entry.exposure != psychrometry::Exposure::Own) {
            exposure_->addItem(exposureWords(entry.exposure), static_cast<int>(entry.exposure));
        }
    }
    exposure_->setCurrentIndex(
        exposure_->findData(start_.exposure ? static_cast<int>(*start_.exposure) : -1));
    addRow(tr("A psychrometer, exposed as"), exposure_, "besideExposure");
    decision_ = addLine(tr("What was decided"), "besideDecision", QString::fromStdString(start_.decision));
    decision_->setPlaceholderText(tr("at the end: joined, broken, coefficient taken over from …"));
    note_ = addLine(tr("Note"), "besideNote", QString::fromStdString(start_.note));
    for (QLineEdit* line : {decision_, note_}) {
        line->setMaxLength(kLongestNote);
    }
    finish();
    name_->setFocus();
}

tl::expected<record::SideBySide, QString> SideBySideForm::read() const {
    record::SideBySide made = start_;
    made.name = name_->text().trimmed().toStdString();
    if (made.name.empty()) {
        return tl::unexpected(tr("Write what the other instrument is."));
    }
    made.purpose = static_cast<record::BesidePurpose>(purpose_->currentData().toInt());
    const auto from = record::parseDate(from_->text().trimmed().toStdString());
    if (!from) {
        return tl::unexpected(timeErrorWords(from.error(), from_->text()));
    }
    made.from = *from;
    made.to.reset();
    if (const QString last = to_->text().trimmed(); !last.isEmpty()) {
        const auto to = record::parseDate(last.toStdString());
        if (!to) {
            return tl::unexpected(timeErrorWords(to.error(), last));
        }
        if (*to < made.from) {
            return tl::unexpected(tr("The last day lies before the first."));
        }
        made.to = *to;
    }
    if (!uncertainty_->isEmpty() && !uncertainty_->value()) {
        return tl::unexpected(uncertainty_->problem());
    }
    made.humidityUncertainty.reset();
    if (uncertainty_->value()) {
        made.humidityUncertainty = uncertainty_->value()->toDouble();
        if (*made.humidityUncertainty < 0 || *made.humidityUncertainty > kMostUncertainty) {
            return tl::unexpected(tr("The uncertainty of a reference lies between 0 and 20 % RH."));
        }
    }
    const int exposure = exposure_->currentData().toInt();
    made.exposure =
        exposure < 0 ? std::nullopt : std::optional{static_cast<psychrometry::Exposure>(exposure)};
    made.decision = decision_->text().trimmed().toStdString();
    made.note = note_->text().trimmed().toStdString();
    return made;
}

QString SideBySideForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::SideBySide SideBySideForm::other() const {
    return *read();
}

} // namespace wickbook::ui
