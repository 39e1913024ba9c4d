// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/ice_corrections.h"

#include "ui/style/type.h"
#include "ui/text/instrument_words.h"

#include <QLabel>

namespace wickbook::ui {

std::vector<record::Correction> iceCorrections(const record::StationRecord& station,
                                               const record::PairCheck& check, const QString& source) {
    const record::Thermometer* dry = station.thermometer(check.dry);
    const record::Thermometer* wet = station.thermometer(check.wet);
    if (dry == nullptr || wet == nullptr) {
        return {};
    }
    const comparison::PairVerdict verdict = comparison::judgePair(check, *dry, *wet);
    const record::Instant from = record::startOfDate(check.date, station);
    std::vector<record::Correction> corrections;
    const auto add = [&](const std::optional<comparison::IcePoint>& ice,
                         const record::Thermometer& thermometer) {
        if (!ice) {
            return;
        }
        record::Correction made =
            comparison::correctionFromIce(*ice, thermometer, station.correctionAt(thermometer.id, from));
        made.id = record::Uuid::random();
        made.from = from;
        made.source = source.toStdString();
        corrections.push_back(std::move(made));
    };
    add(verdict.dryAtIce, *dry);
    add(verdict.wetAtIce, *wet);
    return corrections;
}

IceCorrectionsForm::IceCorrectionsForm(Session& session, const std::vector<record::Correction>& corrections,
                                       const QLocale& locale, QWidget* parent)
    : FactForm(tr("Ice points"), tr("Take the ice points over as corrections"),
               tr("They hold from the day of the check on. A correction known before is moved as a whole, so "
                  "that the "
                  "ice point reads right."),
               parent)
    , session_(session) {
    QStringList lines;
    for (const record::Correction& correction : corrections) {
        const record::Thermometer* thermometer = session.station().thermometer(correction.thermometer);
        lines << tr("%1: %2").arg(QString::fromStdString(thermometer->name),
                                  pointsWords(locale, correction, thermometer->unit));
        edits_.push_back({correction.id, std::optional{correction}});
    }
    QLabel* words = makeLabel(lines.join(QLatin1Char('\n')), TypeSize::Body, false);
    words->setWordWrap(true);
    addWide(words);
    finish();
    previewChanges(session, locale, [this] { return factsWith(session_.station().facts(), edits_); });
}

} // namespace wickbook::ui
