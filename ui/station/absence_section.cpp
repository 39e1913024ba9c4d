// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/absence_section.h"

#include "ui/commands/revise_facts.h"
#include "ui/station/absence_form.h"
#include "ui/station/diary_form.h"
#include "ui/text/diary_words.h"
#include "ui/text/missing_reasons.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

template <typename Fact>
std::optional<Fact> findIn(const std::vector<Fact>& facts, const record::Uuid& id) {
    const auto found =
        std::find_if(facts.begin(), facts.end(), [&](const Fact& fact) { return fact.id == id; });
    return found == facts.end() ? std::nullopt : std::optional{*found};
}

} // namespace

AbsenceSection::AbsenceSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "absence", tr("&Absences and deputies"), std::move(locale), parent) {
    build(tr("An absence a&head…"));
}

std::optional<record::Absence> AbsenceSection::find(const record::Uuid& id) const {
    return findIn(session().station().facts().absences, id);
}

QString AbsenceSection::spanWords(const record::Absence& absence) const {
    return absence.from == absence.to ? dayWords(absence.from)
                                      : tr("%1 to %2").arg(dayWords(absence.from), dayWords(absence.to));
}

std::vector<DatedSection::Line> AbsenceSection::lines() const {
    std::vector<record::Absence> absences = session().station().facts().absences;
    std::stable_sort(absences.begin(), absences.end(),
                     [](const auto& a, const auto& b) { return a.from > b.from; });
    std::vector<Line> lines;
    for (const record::Absence& absence : absences) {
        QStringList parts{
            tr("%1: %2").arg(spanWords(absence), missingReasonWords(QString::fromStdString(absence.reason))),
            absence.deputy.empty() ? tr("nobody reads")
                                   : tr("%1 reads").arg(QString::fromStdString(absence.deputy))};
        if (!absence.note.empty()) {
            parts << QString::fromStdString(absence.note);
        }
        lines.push_back({absence.id, parts.join(QStringLiteral(" · "))});
    }
    return lines;
}

QString AbsenceSection::empty() const {
    return tr("No absence is written down. Enter one ahead, with whoever reads meanwhile: then the gap has "
              "its reason.");
}

void AbsenceSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? find(*id) : std::nullopt;
    AbsenceForm form(before, session().today(), this);
    if (form.exec() != QDialog::Accepted) {
        return;
    }
    const record::Absence after = *form.absence();
    const QString text = (before ? tr("absence changed: %1") : tr("absence: %1")).arg(spanWords(after));
    tell(reviseFact<record::Absence>(session(), before, after, author(text), text),
         tr("Kept. Undo takes it back."));
}

void AbsenceSection::takeBack(const record::Uuid& id) {
    if (const auto before = find(id)) {
        const QString text = tr("absence taken back: %1").arg(spanWords(*before));
        tell(reviseFact<record::Absence>(session(), before, std::nullopt, author(text), text),
             tr("Taken back. Undo brings it again."));
    }
}

DiarySection::DiarySection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "diary", tr("&Exposure diary"), std::move(locale), parent) {
    build(tr("&Write down…"));
}

std::optional<record::DiaryEntry> DiarySection::find(const record::Uuid& id) const {
    return findIn(session().station().facts().diary, id);
}

std::vector<DatedSection::Line> DiarySection::lines() const {
    std::vector<record::DiaryEntry> diary = session().station().facts().diary;
    std::stable_sort(diary.begin(), diary.end(),
                     [](const auto& a, const auto& b) { return a.date > b.date; });
    std::vector<Line> lines;
    for (const record::DiaryEntry& entry : diary) {
        QString text = tr("%1: %2").arg(dayWords(entry.date), diaryKindWords(entry.kind));
        if (!entry.note.empty()) {
            text += QStringLiteral(" · ") + QString::fromStdString(entry.note);
        }
        lines.push_back({entry.id, text});
    }
    return lines;
}

QString DiarySection::empty() const {
    return tr("The diary is empty. Write down when the screen is washed or painted, snow chokes the louvres, "
              "or a hedge grows or is cut.");
}

void DiarySection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? find(*id) : std::nullopt;
    DiaryForm form(before, session().today(), this);
    if (form.exec() != QDialog::Accepted) {
        return;
    }
    const record::DiaryEntry after = *form.entry();
    const QString text = (before ? tr("diary changed: %1, %2") : tr("diary: %1, %2"))
                             .arg(dayWords(after.date), diaryKindWords(after.kind));
    tell(reviseFact<record::DiaryEntry>(session(), before, after, author(text), text),
         tr("Kept. Undo takes it back."));
}

void DiarySection::takeBack(const record::Uuid& id) {
    if (const auto before = find(id)) {
        const QString text =
            tr("taken back from the diary: %1, %2").arg(dayWords(before->date), diaryKindWords(before->kind));
        tell(reviseFact<record::DiaryEntry>(session(), before, std::nullopt, author(text), text),
             tr("Taken back. Undo brings it again."));
    }
}

} // namespace wickbook::ui
