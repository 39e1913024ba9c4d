// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/ice_corrections.h"

#include "ui/style/type.h"
#include "ui/text/instrument_words.h"

#include <QLabel>

namespace wickbook::ui {

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
