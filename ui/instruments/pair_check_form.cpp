// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/pair_check_form.h"

#include "ui/dated/note_length.h"
#include "ui/instruments/fitting_form.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/instrument_words.h"
#include "ui/text/number_words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>

namespace wickbook::ui {

PairCheckForm::PairCheckForm(Session& session, const std::optional<record::PairCheck>& known,
                             const QLocale& locale, QWidget* parent)
    : FactForm(
          tr("Pair check"), tr("Both bulbs without wick in one stirred bath"),
          tr("Ice point: slush of crushed ice of distilled water, well packed, bulbs deep in it, read when "
             "they stand still. Then water of about 20 °C, stirred all the while. Let glass warm and cool "
             "slowly; broken glass and mercury go by your local rules. A field may stay empty."),
          parent)
    , session_(session)
    , locale_(locale) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.date = session.today();
        start_.observer = session.observer().toStdString();
        const record::Thermometer* dry = session.station().dryThermometerAt(session.now());
        const record::Thermometer* wet = session.station().wetThermometerAt(session.now());
        start_.dry = dry == nullptr ? record::Uuid{} : dry->id;
        start_.wet = wet == nullptr ? record::Uuid{} : wet->id;
    }
    date_ = addLine(tr("Date, year-month-day"), "pairDate",
                    QString::fromStdString(record::dateText(start_.date)));
    dry_ = new QComboBox;
    fillThermometers(*dry_, session.station(), start_.dry);
    addRow(tr("Dry bulb's thermometer"), dry_, "pairDry");
    wet_ = new QComboBox;
    fillThermometers(*wet_, session.station(), start_.wet);
    addRow(tr("Wet bulb's thermometer"), wet_, "pairWet");
    const std::array labels{tr("Dry, at the ice point"), tr("Wet, at the ice point"), tr("Dry, in the bath"),
                            tr("Wet, in the bath")};
    const std::array what{tr("dry bulb at the ice point"), tr("wet bulb at the ice point"),
                          tr("dry bulb in the bath"), tr("wet bulb in the bath")};
    const std::array names{"pairDryIce", "pairWetIce", "pairDryBath", "pairWetBath"};
    const std::array values{start_.dryAtIce, start_.wetAtIce, start_.dryInBath, start_.wetInBath};
    for (std::size_t i = 0; i < readings_.size(); ++i) {
        readings_.at(i) = new TypedNumberEdit(what.at(i));
        if (values.at(i)) {
            readings_.at(i)->setValue(values.at(i)->value);
        }
        addRow(labels.at(i), readings_.at(i), names.at(i));
        connect(readings_.at(i), &QLineEdit::textChanged, this, &PairCheckForm::showVerdict);
    }
    note_ = addLine(tr("Note"), "pairNote", QString::fromStdString(start_.note));
    note_->setMaxLength(kLongestNote);
    verdict_ = makeLabel({}, TypeSize::Body, false);
    verdict_->setObjectName(QStringLiteral("pairVerdict"));
    verdict_->setWordWrap(true);
    addWide(verdict_);
    connect(dry_, &QComboBox::currentIndexChanged, this, &PairCheckForm::showVerdict);
    connect(wet_, &QComboBox::currentIndexChanged, this, &PairCheckForm::showVerdict);
    showVerdict();
    finish();
    readings_.front()->setFocus();
}

tl::expected<record::PairCheck, QString> PairCheckForm::read() const {
    record::PairCheck made = start_;
    const auto date = record::parseDate(date_->text().trimmed().toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), date_->text()));
    }
    if (*date > session_.today()) {
        return tl::unexpected(tr("Write it down once it has happened; this date is still to come."));
    }
    made.date = *date;
    const auto dry = chosenThermometer(*dry_);
    const auto wet = chosenThermometer(*wet_);
    if (!dry || !wet) {
        return tl::unexpected(tr("Write down the thermometers first, under “Thermometers”."));
    }
    if (*dry == *wet) {
        return tl::unexpected(tr("One thermometer can't be both bulbs. Choose another for one of them."));
    }
    made.dry = *dry;
    made.wet = *wet;
    const record::Thermometer* dryThermometer = session_.station().thermometer(*dry);
    const record::Thermometer* wetThermometer = session_.station().thermometer(*wet);
    const std::array targets{&made.dryAtIce, &made.wetAtIce, &made.dryInBath, &made.wetInBath};
    for (std::size_t i = 0; i < readings_.size(); ++i) {
        const TypedNumberEdit& field = *readings_.at(i);
        if (!field.isEmpty() && !field.value()) {
            return tl::unexpected(field.problem());
        }
        const auto unit = (i % 2 == 0 ? dryThermometer : wetThermometer)->unit;
        *targets.at(i) =
            field.value() ? std::optional{units::ReadTemperature{*field.value(), unit}} : std::nullopt;
    }
    if (!made.dryAtIce && !made.wetAtIce && !(made.dryInBath && made.wetInBath)) {
        return tl::unexpected(
            tr("Write what at least one of them showed at the ice point, or both in the bath."));
    }
    made.note = note_->text().trimmed().toStdString();
    return made;
}

void PairCheckForm::showVerdict() {
    const auto made = read();
    QStringList lines;
    if (made) {
        lines =
            pairVerdictWords(locale_, comparison::judgePair(*made, *session_.station().thermometer(made->dry),
                                                            *session_.station().thermometer(made->wet)));
    }
    verdict_->setText(lines.join(QLatin1Char('\n')));
    verdict_->setVisible(!lines.isEmpty());
}

QString PairCheckForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::PairCheck PairCheckForm::check() const {
    return *read();
}

} // namespace wickbook::ui
