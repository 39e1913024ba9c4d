// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/history_panel.h"

#include "ui/register/paper_words.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QCoreApplication>
#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

class HistoryText {
    Q_DECLARE_TR_FUNCTIONS(HistoryText)
};

using Named = std::vector<std::pair<QString, QString>>;

QString careWords(record::WickCare care) {
    return care == record::WickCare::Wetted    ? HistoryText::tr("wetted")
           : care == record::WickCare::Changed ? HistoryText::tr("changed")
                                               : QString{};
}

/// The clock time; where no hour tells the date, with it.
QString readAtWords(const QLocale& locale, const record::Observation& values) {
    const QString clock = clockWords(values.instant, values.offset);
    if (values.hour) {
        return clock;
    }
    return QStringLiteral("%1 %2").arg(
        locale.toString(toQDate(record::filedDate(values)), QLocale::ShortFormat), clock);
}

/// Every field that can be revised, named, as it stands; what is either so or not is told by itself.
Named fieldsOf(const QLocale& locale, const record::Observation& values) {
    const auto read = [&](const std::optional<units::ReadTemperature>& value) {
        return value ? readWords(locale, value->value) : QString{};
    };
    const auto bulb = [&](const record::BulbReading& reading) {
        return reading.given() ? bulbWords(locale, reading) : QString{};
    };
    const auto whirls = [&](const std::vector<record::Repeat>& rows) {
        QStringList all;
        for (const record::Repeat& row : rows) {
            all << QStringLiteral("%1 / %2").arg(read(row.wet), read(row.dry));
        }
        return all.join(QStringLiteral("; "));
    };
    return {
        {HistoryText::tr("dry"), bulb(values.dry)},
        {HistoryText::tr("wet"), bulb(values.wet)},
        {HistoryText::tr("wick"), wickWords(values.wick)},
        {HistoryText::tr("pressure"), values.pressure ? readWords(locale, *values.pressure) : QString{}},
        {HistoryText::tr("weather"), weatherSetWords(values.weather)},
        {HistoryText::tr("wind"), values.windBeaufort ? QString::number(*values.windBeaufort) : QString{}},
        {HistoryText::tr("max"), read(values.maximum)},
        {HistoryText::tr("min"), read(values.minimum)},
        {HistoryText::tr("whirls, wet / dry"), whirls(values.repeats)},
        {HistoryText::tr("note"), QString::fromStdString(values.note).simplified()},
        {HistoryText::tr("observer"), QString::fromStdString(values.observer)},
        {HistoryText::tr("wick care"), careWords(values.wickCare)},
        {HistoryText::tr("read at"), readAtWords(locale, values)},
        {HistoryText::tr("hour"), values.hour ? hourAndDateWords(locale, *values.hour) : QString{}},
        {HistoryText::tr("reason"), missingReasonWords(QString::fromStdString(values.missingReason))},
        {HistoryText::tr("origin"), originWords(values.origin)},
        {HistoryText::tr("judged"), qualityWords(values.quality)},
        {HistoryText::tr("paper"), paperWords(values.paper)}};
}

} // namespace

QString observationWords(const QLocale& locale, const record::Observation& observation) {
    if (observation.origin == record::Origin::Missing) {
        return HistoryText::tr("missing: %1")
            .arg(missingReasonWords(QString::fromStdString(observation.missingReason)));
    }
    QStringList parts;
    const Named fields = fieldsOf(locale, observation);
    for (std::size_t i = 0; i < 10; ++i) { // what was read; the rest says how it stands
        if (!fields[i].second.isEmpty()) {
            parts << QStringLiteral("%1 %2").arg(fields[i].first, fields[i].second);
        }
    }
    return parts.join(QStringLiteral(", "));
}

QStringList changeWords(const QLocale& locale, const record::Observation& before,
                        const record::Observation& after) {
    QStringList changes;
    const auto flag = [&](bool was, bool is, const QString& so, const QString& notSo) {
        if (was != is) {
            changes << (is ? so : notSo);
        }
    };
    flag(before.withdrawn, after.withdrawn, HistoryText::tr("withdrawn"),
         HistoryText::tr("no longer withdrawn"));
    flag(before.readBack, after.readBack, HistoryText::tr("read back against the paper"),
         HistoryText::tr("no longer read back"));
    const Named old = fieldsOf(locale, before);
    const Named now = fieldsOf(locale, after);
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (old[i].second == now[i].second) {
            continue;
        }
        const QString nothing = HistoryText::tr("empty");
        //: %1 what, %2 new value, %3 old value
        changes << HistoryText::tr("%1 %2, was %3")
                       .arg(now[i].first, now[i].second.isEmpty() ? nothing : now[i].second,
                            old[i].second.isEmpty() ? nothing : old[i].second);
    }
    return changes;
}

HistoryPanel::HistoryPanel(Session& session, QLocale locale, QWidget* parent)
    : QFrame(parent), session_(session), locale_(std::move(locale)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, 0, 0, 0);
    column->setSpacing(space::kGroup);
    heading_ = makeHeading({});
    heading_->setWordWrap(true);
    column->addWidget(heading_);
    note_ = new QFrame;
    note_->setProperty("query", true);
    auto* inside = new QVBoxLayout(note_);
    queries_ = makeLabel({}, TypeSize::Label, false);
    queries_->setObjectName(QStringLiteral("queries"));
    queries_->setWordWrap(true);
    inside->addWidget(queries_);
    column->addWidget(note_);
    nothing_ = makeLabel({}, TypeSize::Body);
    nothing_->setWordWrap(true);
    column->addWidget(nothing_);
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("revisions"));
    list_->setWordWrap(true);
    list_->setSelectionMode(QAbstractItemView::NoSelection);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setResizeMode(QListView::Adjust);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setSpacing(space::kStep / 2);
    list_->setFont(typeFont(TypeSize::Label));
    list_->setAccessibleName(tr("Every revision of this line"));
    column->addWidget(list_, 1);
    show(nullptr);
}

QString HistoryPanel::revisionText(const record::ObservationRevision& revision,
                                   const record::Observation* before, std::size_t number) const {
    const auto offset =
        session_.station().periodAt(revision.stamp.recordedAt).zone.offsetAt(revision.stamp.recordedAt);
    const auto day =
        date::floor<date::days>(record::LocalTime{(revision.stamp.recordedAt + offset).time_since_epoch()});
    const QString who = QString::fromStdString(revision.stamp.author.who);
    const QString why = QString::fromStdString(revision.stamp.author.why);
    QString text = QStringLiteral("%1  %2, %3")
                       .arg(QString::number(number), locale_.toString(toQDate(day), QLocale::ShortFormat),
                            clockWords(revision.stamp.recordedAt, offset));
    if (!who.isEmpty()) {
        text += QStringLiteral(" · %1").arg(who);
    }
    text += QLatin1Char('\n');
    if (before == nullptr) {
        text += observationWords(locale_, revision.values);
    } else {
        const QStringList changes = changeWords(locale_, *before, revision.values);
        text += changes.isEmpty() ? tr("written again as it was") : changes.join(QLatin1Char('\n'));
    }
    if (!why.isEmpty()) {
        text += QLatin1Char('\n') + tr("why: %1").arg(why);
    }
    return text;
}

void HistoryPanel::show(const report::MonthLine* line) {
    list_->clear();
    heading_->setText(line == nullptr ? QString{} : hourAndDateWords(locale_, line->hour));
    const bool written = line != nullptr && line->reading != nullptr;
    QStringList notes;
    if (written) {
        for (const checks::SpokenNote& note : checks::spokenNotes(line->reading->findings)) {
            const FindingWords said = findingWords(locale_, note.lead, session_.unit());
            notes << QStringLiteral("○ %1\n%2 %3").arg(said.title, said.message, said.remedy);
        }
    }
    queries_->setText(notes.join(QStringLiteral("\n\n")));
    note_->setVisible(!notes.isEmpty());
    list_->setVisible(written);
    nothing_->setVisible(!written);
    if (!written) {
        nothing_->setText(line == nullptr ? tr("Choose a line to see what it has been through.")
                          : line->toCome  ? tr("This hour is still to come.")
                                          : tr("Nothing was written down for this hour. Enter writes down a "
                                                "forgotten reading, M says why there is none."));
        return;
    }
    const auto history = session_.book().history(line->reading->reading.stored.id());
    if (!history) {
        list_->addItem(storeErrorWords(history.error()));
        return;
    }
    const record::Observation* before = nullptr;
    for (std::size_t i = 0; i < history->size(); ++i) {
        list_->addItem(revisionText((*history)[i], before, i + 1));
        before = &(*history)[i].values;
    }
}

} // namespace wickbook::ui
