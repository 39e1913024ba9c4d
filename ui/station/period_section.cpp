// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/period_section.h"

#include "core/desk/period_preview.h"
#include "ui/commands/revise_facts.h"
#include "ui/station/period_form.h"
#include "ui/style/patient_progress.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QApplication>
#include <QMessageBox>
#include <QPushButton>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

QString positionWords(const QLocale& locale, const record::Position& position) {
    return QStringLiteral("%1° %2, %3° %4")
        .arg(numberWords(locale, std::abs(position.latitude), 4),
             position.latitude < 0 ? PeriodSection::tr("S") : PeriodSection::tr("N"),
             numberWords(locale, std::abs(position.longitude), 4),
             position.longitude < 0 ? PeriodSection::tr("W") : PeriodSection::tr("E"));
}

PeriodSection::PeriodSection(Session& session, QLocale locale, QWidget* parent)
    : DatedSection(session, "period", tr("What di&ffers from when"), std::move(locale), parent) {
    build(tr("From a date on…"));
}

std::optional<record::PeriodChange> PeriodSection::find(const record::Uuid& id) const {
    const auto& periods = session().station().facts().periods;
    const auto found =
        std::find_if(periods.begin(), periods.end(), [&](const auto& change) { return change.id == id; });
    return found == periods.end() ? std::nullopt : std::optional{*found};
}

QString PeriodSection::sinceWords(const record::PeriodChange& change) const {
    if (!change.from) {
        return tr("From the beginning");
    }
    const record::Zone zone = session().station().periodAt(*change.from).zone;
    return tr("From %1").arg(dayWords(date::floor<date::days>(zone.localAt(*change.from))));
}

QStringList PeriodSection::differences(const record::PeriodChange& change) const {
    QStringList parts;
    if (change.position) {
        parts << positionWords(ownLocale(), *change.position);
    }
    if (change.elevation) {
        const double metres = change.elevation->metres();
        parts << tr("elevation %1 m")
                     .arg(numberWords(ownLocale(), metres, metres == std::floor(metres) ? 0 : 1));
    }
    if (change.hours) {
        QStringList hours;
        for (const record::HourOfDay hour : *change.hours) {
            hours << hourWords(hour);
        }
        parts << (hours.isEmpty() ? tr("no observing hours") : hours.join(QStringLiteral(", ")));
    }
    if (change.hourRule) {
        parts << tr("hours follow %1").arg(hourRuleWords(*change.hourRule));
    }
    if (change.zone) {
        parts << QString::fromStdString(*change.zone);
    }
    if (change.exposure) {
        parts << exposureWords(*change.exposure);
    }
    if (change.ownCoefficient) {
        parts << tr("own coefficient %1 × 10⁻⁴ per degree")
                     .arg(numberWords(ownLocale(), change.ownCoefficient->waterPerKelvin * 1e4, 2));
    }
    if (change.meanPressure) {
        parts << (*change.meanPressure > 0
                      ? tr("mean pressure %1 hPa").arg(numberWords(ownLocale(), *change.meanPressure, 1))
                      : tr("no mean pressure"));
    }
    if (change.joined) {
        parts << tr("joined to the record before");
    }
    if (change.surroundings && !change.surroundings->empty()) {
        parts << QString::fromStdString(*change.surroundings);
    }
    return parts;
}

std::vector<DatedSection::Line> PeriodSection::lines() const {
    std::vector<record::PeriodChange> periods = session().station().facts().periods;
    std::reverse(periods.begin(), periods.end()); // of two from the same moment the later entered is first
    std::stable_sort(periods.begin(), periods.end(), [](const auto& a, const auto& b) {
        return b.from ? a.from && *a.from > *b.from : a.from.has_value();
    });
    std::vector<Line> lines;
    for (const record::PeriodChange& change : periods) {
        lines.push_back({change.id, tr("%1: %2").arg(sinceWords(change),
                                                     differences(change).join(QStringLiteral(" · ")))});
    }
    return lines;
}

QString PeriodSection::empty() const {
    return tr("Nothing is known of the station yet.");
}

QString PeriodSection::previewWords(const record::Uuid& id,
                                    const std::optional<record::PeriodChange>& after) const {
    const record::StationRecord then{factsWith(session().station().facts(), {{id, after}})};
    // Over a form or a question, where there is one: it is what waits for the answer.
    QWidget* front = QApplication::activeModalWidget();
    PatientProgress progress(tr("Working out what would change…"), tr("&Cancel"),
                             front == nullptr ? window() : front);
    const auto worked =
        desk::previewPeriods(session().book(), session().station(), then,
                             [&](std::size_t done, std::size_t total) { return progress.go(done, total); });
    if (!worked) {
        return storeErrorWords(worked.error());
    }
    if (!*worked) {
        return tr("Stopped before the end; nothing is known of what would change.");
    }
    const desk::PeriodPreview* preview = &**worked;
    QString words = tr("Of %1 readings %2 would have another humidity or dew point.")
                        .arg(ownLocale().toString(static_cast<qulonglong>(preview->readings)),
                             ownLocale().toString(static_cast<qulonglong>(preview->rederived)));
    if (preview->anotherHour > 0) {
        words += QLatin1Char(' ') +
                 tr("By the new hours %1 would lie elsewhere; they stay under the hour they were written at.")
                     .arg(ownLocale().toString(static_cast<qulonglong>(preview->anotherHour)));
    }
    return words + QLatin1Char(' ') + tr("What was read stays as it is.");
}

QString PeriodSection::keep(const record::PeriodChange& change, const QString& why) {
    const auto before = find(change.id);
    const QString text = (before ? tr("period changed: %1") : tr("the station differs: %1"))
                             .arg(differences(change).join(QStringLiteral(", ")));
    const auto kept = reviseFact<record::PeriodChange>(session(), before, change, author(why), text);
    return kept ? QString{} : storeErrorWords(kept.error());
}

void PeriodSection::ask(const std::optional<record::Uuid>& id) {
    const auto before = id ? find(*id) : std::nullopt;
    PeriodForm form(session().station(), session().today(), this, before);
    form.setPreview([this](const record::PeriodChange& change) { return previewWords(change.id, change); });
    if (form.exec() != QDialog::Accepted) {
        return;
    }
    const QString failed = keep(*form.change(), form.why());
    say(failed.isEmpty() ? tr("Kept. Readings are worked out afresh; undo takes it back.") : failed,
        !failed.isEmpty());
}

void PeriodSection::takeBack(const record::Uuid& id) {
    const auto before = find(id);
    if (!before) {
        return;
    }
    if (!before->from) {
        say(tr("The beginning can't be taken back, for a station must stand somewhere. Change it instead."),
            true);
        return;
    }
    QMessageBox question(QMessageBox::NoIcon, tr("Take back"), sinceWords(*before), QMessageBox::Cancel,
                         this);
    question.setInformativeText(previewWords(id, std::nullopt));
    QPushButton* yes = question.addButton(tr("&Take it back"), QMessageBox::AcceptRole);
    yes->setObjectName(QStringLiteral("periodReallyTakeBack"));
    question.setDefaultButton(QMessageBox::Cancel);
    question.exec();
    if (question.clickedButton() != yes) {
        return;
    }
    const QString text = tr("period taken back: %1").arg(sinceWords(*before));
    tell(reviseFact<record::PeriodChange>(session(), before, std::nullopt, author(text), text),
         tr("Taken back. Undo brings it again."));
}

} // namespace wickbook::ui
