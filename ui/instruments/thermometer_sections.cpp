// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/thermometer_sections.h"

#include "ui/commands/revise_facts.h"
#include "ui/instruments/coefficient_form.h"
#include "ui/instruments/correction_form.h"
#include "ui/instruments/fitting_form.h"
#include "ui/instruments/take_back_form.h"
#include "ui/instruments/thermometer_form.h"
#include "ui/text/instrument_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

/// The newest first; "from the beginning" last. Of two from one moment the later entered is first.
template <typename Fact>
std::vector<Fact> newestFirst(std::vector<Fact> facts) {
    std::erase_if(facts, [](const Fact& fact) { return fact.withdrawn; });
    std::reverse(facts.begin(), facts.end());
    std::stable_sort(facts.begin(), facts.end(), [](const Fact& a, const Fact& b) {
        return b.from ? a.from && *a.from > *b.from : a.from.has_value();
    });
    return facts;
}

QString thermometerName(const record::StationRecord& station, const record::Uuid& id) {
    const record::Thermometer* thermometer = station.thermometer(id);
    return thermometer == nullptr ? ThermometerSection::tr("unknown")
                                  : QString::fromStdString(thermometer->name);
}

} // namespace

bool reallyTakeBack(Session& session, const QLocale& locale, const QString& what,
                    const record::StationFacts& after, QWidget* parent) {
    TakeBackForm form(session, locale, what, after, parent);
    return form.exec() == QDialog::Accepted;
}

// --- thermometers ---

ThermometerSection::ThermometerSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "thermometer", tr("&Thermometers"), std::move(locale), parent) {
    build(tr("New thermometer…"));
}

std::vector<DatedSection::Line> ThermometerSection::lines() const {
    const record::StationRecord& station = session().station();
    const record::Thermometer* dry = station.dryThermometerAt(session().now());
    const record::Thermometer* wet = station.wetThermometerAt(session().now());
    std::vector<Line> lines;
    for (const record::Thermometer& thermometer : station.facts().thermometers) {
        if (thermometer.withdrawn) {
            continue;
        }
        const QString use = dry != nullptr && dry->id == thermometer.id   ? tr("dry bulb now")
                            : wet != nullptr && wet->id == thermometer.id ? tr("wet bulb now")
                                                                          : tr("not in use");
        QString words =
            tr("%1, %2: %3")
                .arg(QString::fromStdString(thermometer.name), use, scaleWords(ownLocale(), thermometer));
        if (!thermometer.liquid.empty()) {
            words += QStringLiteral(", ") + QString::fromStdString(thermometer.liquid);
        }
        lines.push_back({thermometer.id, words});
    }
    return lines;
}

QString ThermometerSection::empty() const {
    return tr("No thermometer is written down yet; readings are used as they are read.");
}

void ThermometerSection::ask(const std::optional<record::Uuid>& id) {
    ThermometerForm form(session(),
                         id ? factNamed(session().station().facts().thermometers, *id) : std::nullopt,
                         ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const QString text =
            (id ? tr("thermometer changed: %1") : tr("new thermometer: %1")).arg(form.name());
        tell(ReviseFacts::perform(session(), form.edits(), author(text), text),
             tr("Kept. Readings are worked out afresh; undo takes it back."));
    }
}

void ThermometerSection::takeBack(const record::Uuid& id) {
    const auto& facts = session().station().facts();
    const auto hangs = [&](const record::Fitting& fitting) {
        return !fitting.withdrawn && (fitting.dry == id || fitting.wet == id);
    };
    if (std::any_of(facts.fittings.begin(), facts.fittings.end(), hangs)) {
        say(tr("It hangs, or hung, in the screen: take it down under “The pair in use” first."), true);
        return;
    }
    const QString text = tr("thermometer taken back: %1").arg(thermometerName(session().station(), id));
    tell(ReviseFacts::perform(session(), {{id, std::optional<record::Thermometer>{}}}, author(text), text),
         tr("Taken back. Undo brings it again."));
}

// --- what hangs where ---

FittingSection::FittingSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "fitting", tr("The pair &in use"), std::move(locale), parent) {
    build(tr("From a date on…"));
}

std::vector<DatedSection::Line> FittingSection::lines() const {
    const record::StationRecord& station = session().station();
    std::vector<Line> lines;
    for (const record::Fitting& fitting : newestFirst(station.facts().fittings)) {
        const QString since = fitting.from
                                  ? tr("From %1").arg(dayWords(date::floor<date::days>(
                                        station.periodAt(*fitting.from).zone.localAt(*fitting.from))))
                                  : tr("From the beginning");
        lines.push_back({fitting.id, tr("%1: dry %2, wet %3")
                                         .arg(since, thermometerName(station, fitting.dry),
                                              thermometerName(station, fitting.wet))});
    }
    return lines;
}

QString FittingSection::empty() const {
    return tr("It is not written down which thermometer hangs where.");
}

void FittingSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().fittings, *id) : std::nullopt;
    FittingForm form(session(), before, ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const record::Fitting made = form.fitting();
        const QString text = tr("pair in use: dry %1, wet %2")
                                 .arg(thermometerName(session().station(), made.dry),
                                      thermometerName(session().station(), made.wet));
        tell(reviseFact<record::Fitting>(session(), before, made, author(text), text),
             tr("Kept. Readings are worked out afresh; undo takes it back."));
    }
}

void FittingSection::takeBack(const record::Uuid& id) {
    const auto before = factNamed(session().station().facts().fittings, id);
    if (!before) {
        return;
    }
    const std::vector<FactEdit> edits{{id, std::optional<record::Fitting>{}}};
    const QString text = tr("pair in use taken back");
    if (reallyTakeBack(session(), ownLocale(), tr("This pair, as if it had never hung there"),
                       factsWith(session().station().facts(), edits), this)) {
        tell(ReviseFacts::perform(session(), edits, author(text), text),
             tr("Taken back. Undo brings it again."));
    }
}

// --- corrections ---

CorrectionSection::CorrectionSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "correction", tr("&Corrections"), std::move(locale), parent) {
    build(tr("New correction…"));
}

std::vector<DatedSection::Line> CorrectionSection::lines() const {
    const record::StationRecord& station = session().station();
    std::vector<Line> lines;
    for (const record::Correction& correction : newestFirst(station.facts().corrections)) {
        const record::Thermometer* thermometer = station.thermometer(correction.thermometer);
        const auto unit = thermometer == nullptr ? units::TemperatureUnit::Celsius : thermometer->unit;
        const QString since = correction.from
                                  ? tr("from %1").arg(dayWords(date::floor<date::days>(
                                        station.periodAt(*correction.from).zone.localAt(*correction.from))))
                                  : tr("from the beginning");
        QString words = tr("%1, %2: %3")
                            .arg(thermometerName(station, correction.thermometer), since,
                                 pointsWords(ownLocale(), correction, unit));
        if (correction.standardUncertainty > 0) {
            words += tr(", uncertainty %1").arg(numberWords(ownLocale(), correction.standardUncertainty, 2));
        }
        if (!correction.source.empty()) {
            words += QStringLiteral(" · ") + QString::fromStdString(correction.source);
        }
        lines.push_back({correction.id, words});
    }
    return lines;
}

QString CorrectionSection::empty() const {
    return tr("No correction is known; readings are used as they are read. A certificate, or the ice point, "
              "gives one.");
}

void CorrectionSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().corrections, *id) : std::nullopt;
    CorrectionForm form(session(), before, ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const record::Correction made = form.correction();
        const QString text = tr("correction of %1: %2")
                                 .arg(thermometerName(session().station(), made.thermometer),
                                      QString::fromStdString(made.source));
        tell(reviseFact<record::Correction>(session(), before, made, author(text), text),
             tr("Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back."));
    }
}

void CorrectionSection::takeBack(const record::Uuid& id) {
    const auto before = factNamed(session().station().facts().corrections, id);
    if (!before) {
        return;
    }
    const std::vector<FactEdit> edits{{id, std::optional<record::Correction>{}}};
    const QString text =
        tr("correction taken back: %1").arg(thermometerName(session().station(), before->thermometer));
    if (reallyTakeBack(session(), ownLocale(), text, factsWith(session().station().facts(), edits), this)) {
        tell(ReviseFacts::perform(session(), edits, author(text), text),
             tr("Taken back. Undo brings it again."));
    }
}

// --- exposure and coefficient ---

CoefficientSection::CoefficientSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "coefficient", tr("E&xposure and coefficient"), std::move(locale), parent) {
    build(tr("From a date on…"));
}

std::vector<DatedSection::Line> CoefficientSection::lines() const {
    const record::StationRecord& station = session().station();
    std::vector<Line> lines;
    for (const record::PeriodChange& change : newestFirst(station.facts().periods)) {
        QStringList parts;
        if (change.exposure) {
            parts << exposureWords(*change.exposure);
        }
        if (change.ownCoefficient) {
            parts << ownCoefficientWords(ownLocale(), *change.ownCoefficient);
        }
        if (change.meanPressure) {
            parts << (*change.meanPressure > 0
                          ? tr("mean pressure %1 hPa").arg(numberWords(ownLocale(), *change.meanPressure, 1))
                          : tr("pressure from elevation again"));
        }
        if (parts.isEmpty()) {
            continue;
        }
        const QString since = change.from ? tr("From %1").arg(dayWords(date::floor<date::days>(
                                                station.periodAt(*change.from).zone.localAt(*change.from))))
                                          : tr("From the beginning");
        lines.push_back({change.id, tr("%1: %2").arg(since, parts.join(QStringLiteral(" · ")))});
    }
    return lines;
}

QString CoefficientSection::empty() const {
    return tr("How the pair is exposed is not written down.");
}

void CoefficientSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().periods, *id) : std::nullopt;
    CoefficientForm form(session(), before, ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const QString text = tr("exposure and coefficient");
        tell(reviseFact<record::PeriodChange>(session(), before, form.change(), author(text), text),
             tr("Kept. Readings are worked out afresh; undo takes it back."));
    }
}

void CoefficientSection::takeBack(const record::Uuid& id) {
    const auto before = factNamed(session().station().facts().periods, id);
    if (!before) {
        return;
    }
    if (!before->from) {
        say(tr("The beginning can't be taken back, for the pair must hang somehow. Change it instead."),
            true);
        return;
    }
    // A period may say more than this page shows: only that is taken out.
    record::PeriodChange rest = *before;
    rest.exposure.reset();
    rest.ownCoefficient.reset();
    rest.meanPressure.reset();
    const bool nothingLeft = rest == [&] {
        record::PeriodChange bare;
        bare.id = rest.id;
        bare.from = rest.from;
        return bare;
    }();
    const std::vector<FactEdit> edits{
        {id, nothingLeft ? std::optional<record::PeriodChange>{} : std::optional{rest}}};
    const QString text = tr("exposure and coefficient taken back");
    if (reallyTakeBack(session(), ownLocale(), text, factsWith(session().station().facts(), edits), this)) {
        tell(ReviseFacts::perform(session(), edits, author(text), text),
             tr("Taken back. Undo brings it again."));
    }
}

} // namespace wickbook::ui
