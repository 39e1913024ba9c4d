// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/check_sections.h"

#include "ui/commands/revise_facts.h"
#include "ui/instruments/beside_dialog.h"
#include "ui/instruments/ice_corrections.h"
#include "ui/instruments/pair_check_form.h"
#include "ui/instruments/salt_check_form.h"
#include "ui/instruments/side_by_side_form.h"
#include "ui/instruments/wick_form.h"
#include "ui/text/copy_words.h"
#include "ui/text/diary_words.h"
#include "ui/text/instrument_words.h"
#include "ui/text/time_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

bool isWickCare(const record::DiaryEntry& entry) {
    return entry.kind == record::DiaryKind::NewWick || entry.kind == record::DiaryKind::Water;
}

/// By this date, the newest first.
template <typename Fact, typename Date>
std::vector<Fact> byDate(std::vector<Fact> facts, Date date) {
    std::erase_if(facts, [](const Fact& fact) { return fact.withdrawn; });
    std::stable_sort(facts.begin(), facts.end(),
                     [&](const Fact& a, const Fact& b) { return date(a) > date(b); });
    return facts;
}

} // namespace

// --- wick and water ---

WickSection::WickSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "wick", tr("&Wick and water"), std::move(locale), parent) {
    build(tr("Write down care…"));
}

std::vector<DatedSection::Line> WickSection::lines() const {
    std::vector<Line> lines;
    for (const record::DiaryEntry& entry :
         byDate(session().station().facts().diary, [](const auto& each) { return each.date; })) {
        if (isWickCare(entry)) {
            QString words = tr("%1: %2").arg(dayWords(entry.date), diaryKindWords(entry.kind));
            if (!entry.note.empty()) {
                words += QStringLiteral(" · ") + QString::fromStdString(entry.note);
            }
            lines.push_back({entry.id, words});
        }
    }
    return lines;
}

QString WickSection::empty() const {
    return tr("Nothing was written down apart from what was ticked with a reading.");
}

void WickSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().diary, *id) : std::nullopt;
    WickForm form(before, session().today(), this);
    if (form.exec() == QDialog::Accepted) {
        const record::DiaryEntry made = form.entry();
        const QString text = tr("wick and water: %1").arg(diaryKindWords(made.kind));
        tell(reviseFact<record::DiaryEntry>(session(), before, made, author(text), text),
             tr("Written down; it marks the charts. Undo takes it back."));
    }
}

void WickSection::takeBack(const record::Uuid& id) {
    const QString text = tr("wick and water: entry taken back");
    tell(ReviseFacts::perform(session(), {{id, std::optional<record::DiaryEntry>{}}}, author(text), text),
         tr("Taken back. Undo brings it again."));
}

// --- both bulbs in one bath ---

PairCheckSection::PairCheckSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "pairCheck", tr("Both bulbs in one b&ath"), std::move(locale), parent) {
    build(tr("New pair check…"));
    addAction(tr("Take the ice points over…"), "TakeOver", [this](const record::Uuid& id) { takeOver(id); });
}

std::vector<DatedSection::Line> PairCheckSection::lines() const {
    const record::StationRecord& station = session().station();
    std::vector<Line> lines;
    for (const record::PairCheck& check :
         byDate(station.facts().pairChecks, [](const auto& each) { return each.date; })) {
        const record::Thermometer* dry = station.thermometer(check.dry);
        const record::Thermometer* wet = station.thermometer(check.wet);
        const QString verdict = dry == nullptr || wet == nullptr
                                    ? tr("its thermometers are not written down any more")
                                    : pairVerdictWords(ownLocale(), comparison::judgePair(check, *dry, *wet))
                                          .join(QLatin1Char(' '));
        lines.push_back({check.id, tr("%1: %2").arg(dayWords(check.date), verdict)});
    }
    return lines;
}

QString PairCheckSection::empty() const {
    return tr("Once a year, and after every knock: both without wick in one stirred bath.");
}

void PairCheckSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().pairChecks, *id) : std::nullopt;
    PairCheckForm form(session(), before, ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const QString text = tr("pair check");
        tell(reviseFact<record::PairCheck>(session(), before, form.check(), author(text), text),
             tr("Written down. It changes no reading until its ice points are taken over."));
    }
}

void PairCheckSection::takeBack(const record::Uuid& id) {
    const QString text = tr("pair check taken back");
    tell(ReviseFacts::perform(session(), {{id, std::optional<record::PairCheck>{}}}, author(text), text),
         tr("Taken back. Undo brings it again."));
}

void PairCheckSection::takeOver(const record::Uuid& id) {
    if (!session().readOnlySentence().isEmpty()) {
        say(session().readOnlySentence(), true);
        return;
    }
    const auto check = factNamed(session().station().facts().pairChecks, id);
    if (!check) {
        return;
    }
    const auto corrections = comparison::iceCorrections(
        session().station(), *check, tr("ice point of %1").arg(dayWords(check->date)).toStdString());
    if (corrections.empty()) {
        say(tr("This check has no ice point, and a difference alone does not say which thermometer errs."),
            true);
        return;
    }
    IceCorrectionsForm form(session(), corrections, ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const QString text = tr("corrections from the ice points");
        tell(ReviseFacts::perform(session(), form.edits(), author(text), text),
             tr("Kept. What was read stays; what follows from it is worked out afresh. Undo takes it back."));
    }
}

// --- a sensor over salts ---

SaltCheckSection::SaltCheckSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "saltCheck", tr("A sensor over &salts"), std::move(locale), parent) {
    build(tr("New salt check…"));
}

std::vector<DatedSection::Line> SaltCheckSection::lines() const {
    std::vector<Line> lines;
    for (const record::SaltCheck& check :
         byDate(session().station().facts().saltChecks, [](const auto& each) { return each.date; })) {
        lines.push_back(
            {check.id, tr("%1, %2: %3")
                           .arg(dayWords(check.date), QString::fromStdString(check.sensor),
                                saltVerdictWords(ownLocale(), comparison::judgeSalts(check)).front())});
    }
    return lines;
}

QString SaltCheckSection::empty() const {
    return tr(
        "For an electronic sensor that the station is compared with; a psychrometer is not checked so.");
}

void SaltCheckSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().saltChecks, *id) : std::nullopt;
    SaltCheckForm form(session(), before, ownLocale(), this);
    if (form.exec() == QDialog::Accepted) {
        const QString text = tr("salt check");
        tell(reviseFact<record::SaltCheck>(session(), before, form.check(), author(text), text),
             tr("Written down. Undo takes it back."));
    }
}

void SaltCheckSection::takeBack(const record::Uuid& id) {
    const QString text = tr("salt check taken back");
    tell(ReviseFacts::perform(session(), {{id, std::optional<record::SaltCheck>{}}}, author(text), text),
         tr("Taken back. Undo brings it again."));
}

// --- another instrument beside the station's ---

SideBySideSection::SideBySideSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "sideBySide", tr("Beside a&nother instrument"), std::move(locale), parent) {
    build(tr("Announce one…"));
    addAction(tr("Readings and what they say…"), "Readings",
              [this](const record::Uuid& id) { openReadings(id); });
}

std::vector<DatedSection::Line> SideBySideSection::lines() const {
    const record::StationFacts& facts = session().station().facts();
    std::vector<Line> lines;
    for (const record::SideBySide& other :
         byDate(facts.sideBySides, [](const auto& each) { return each.from; })) {
        QString words = tr("%1, %2: from %3")
                            .arg(QString::fromStdString(other.name), besidePurposeWords(other.purpose),
                                 dayWords(other.from));
        if (other.to) {
            words += tr(" to %1").arg(dayWords(*other.to));
        }
        words +=
            QStringLiteral(", ") +
            readingCountWords(locale(), static_cast<std::int64_t>(desk::readingsOf(facts, other.id).size()));
        if (!other.decision.empty()) {
            words += QStringLiteral(" · ") + QString::fromStdString(other.decision);
        }
        lines.push_back({other.id, words});
    }
    return lines;
}

QString SideBySideSection::empty() const {
    return tr(
        "A reference tells how far the station lies off and gives its own coefficient; what shall follow the "
        "station's instrument stands beside it first.");
}

void SideBySideSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? factNamed(session().station().facts().sideBySides, *id) : std::nullopt;
    SideBySideForm form(session(), before, this);
    if (form.exec() == QDialog::Accepted) {
        const record::SideBySide made = form.other();
        const QString text = tr("beside another instrument: %1").arg(QString::fromStdString(made.name));
        tell(reviseFact<record::SideBySide>(session(), before, made, author(text), text),
             tr("Written down. Its readings come in under “Readings and what they say”."));
    }
}

void SideBySideSection::takeBack(const record::Uuid& id) {
    // Its readings go with it, and come back with it.
    std::vector<FactEdit> edits{{id, std::optional<record::SideBySide>{}}};
    for (const record::BesideReading& reading : desk::readingsOf(session().station().facts(), id)) {
        edits.push_back({reading.id, std::optional<record::BesideReading>{}});
    }
    const QString text = tr("comparison taken back");
    tell(ReviseFacts::perform(session(), std::move(edits), author(text), text),
         tr("Taken back with its readings. Undo brings them again."));
}

void SideBySideSection::openReadings(const record::Uuid& id) {
    BesideDialog dialog(session(), id, ownLocale(), this);
    dialog.exec();
}

} // namespace wickbook::ui
