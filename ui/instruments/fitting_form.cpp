// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/fitting_form.h"

#include "ui/commands/revise_facts.h"

#include <QComboBox>
#include <QLineEdit>

namespace wickbook::ui {

void fillThermometers(QComboBox& box, const record::StationRecord& station, const record::Uuid& chosen) {
    for (const record::Thermometer& thermometer : station.facts().thermometers) {
        if (!thermometer.withdrawn) {
            box.addItem(QString::fromStdString(thermometer.name),
                        QString::fromStdString(thermometer.id.toText()));
        }
    }
    box.setCurrentIndex(std::max(0, box.findData(QString::fromStdString(chosen.toText()))));
}

std::optional<record::Uuid> chosenThermometer(const QComboBox& box) {
    return record::Uuid::fromText(box.currentData().toString().toStdString());
}

FittingForm::FittingForm(Session& session, const std::optional<record::Fitting>& known, const QLocale& locale,
                         QWidget* parent)
    : FactForm(tr("The pair in use"), tr("Which thermometers hang from this date on"),
               tr("Write down every exchange, also when the two swap their places."), parent)
    , session_(session)
    , fromBeginning_(known && !known->from) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        const record::Thermometer* dry = session.station().dryThermometerAt(session.now());
        const record::Thermometer* wet = session.station().wetThermometerAt(session.now());
        start_.dry = dry == nullptr ? record::Uuid{} : dry->id;
        start_.wet = wet == nullptr ? record::Uuid{} : wet->id;
    }
    from_ = addLine(tr("From, year-month-day"), "fittingFrom",
                    known ? typedFrom(known->from, session.station())
                          : QString::fromStdString(record::dateText(session.today())));
    if (fromBeginning_) {
        from_->setEnabled(false);
        from_->setPlaceholderText(tr("from the beginning"));
    }
    dry_ = new QComboBox;
    fillThermometers(*dry_, session.station(), start_.dry);
    addRow(tr("Dry bulb"), dry_, "fittingDry");
    wet_ = new QComboBox;
    fillThermometers(*wet_, session.station(), start_.wet);
    addRow(tr("Wet bulb"), wet_, "fittingWet");
    finish();
    previewChanges(session, locale, [this] {
        const record::Fitting made = fitting();
        return factsWith(session_.station().facts(), {{made.id, std::optional{made}}});
    });
    from_->selectAll();
}

tl::expected<record::Fitting, QString> FittingForm::read() const {
    record::Fitting made = start_;
    const auto from = fromTyped(from_->text(), session_.station());
    if (!from) {
        return tl::unexpected(from.error());
    }
    if (!*from && !fromBeginning_) {
        return tl::unexpected(tr("Write the date from which they hang there."));
    }
    made.from = *from;
    const auto dry = chosenThermometer(*dry_);
    const auto wet = chosenThermometer(*wet_);
    if (!dry || !wet) {
        return tl::unexpected(tr("Write down the thermometers first, under “Thermometers”."));
    }
    made.dry = *dry;
    made.wet = *wet;
    if (made.dry == made.wet) {
        return tl::unexpected(tr("One thermometer can't be both bulbs. Choose another for one of them."));
    }
    return made;
}

QString FittingForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::Fitting FittingForm::fitting() const {
    return *read();
}

} // namespace wickbook::ui
