// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/review/runs_model.h"

#include "ui/review/review_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Whether it still is the reading that was looked at, unjudged.
bool stillAsked(const record::Observation& now, const record::Observation& then) {
    return now == then && now.quality == record::Quality::NotJudged && !now.withdrawn;
}

} // namespace

RunsModel::RunsModel(QLocale locale, QObject* parent)
    : QAbstractListModel(parent), locale_(std::move(locale)) {}

void RunsModel::show(const desk::RegisterReview& review, units::TemperatureUnit unit) {
    beginResetModel();
    unit_ = unit;
    runs_.clear();
    for (const desk::ReviewRun& found : review.runs) {
        Run run{found, {}, found.asked};
        for (desk::ReviewLine& line : run.found.lines) {
            run.lines.push_back({std::move(line.checked), line.asked});
        }
        run.found.lines.clear();
        runs_.push_back(std::move(run));
    }
    collect();
    endResetModel();
}

bool RunsModel::refresh(const Session& session) {
    bool changed = false;
    beginResetModel();
    for (Run& run : runs_) {
        run.open = 0;
        for (RunLine& line : run.lines) {
            if (!line.asked) {
                continue;
            }
            record::StoredObservation& seen = line.checked.reading.stored;
            const auto now = session.book().observation(seen.id());
            if (now && (!*now || (*now)->stamp.sequence != seen.stamp.sequence || line.answered)) {
                const bool open = *now && stillAsked((*now)->values, seen.values);
                changed = changed || open == line.answered;
                line.answered = !open;
                line.judged = *now ? (*now)->values.quality : record::Quality::NotJudged;
                if (open) {
                    seen.stamp = (*now)->stamp; // taken back by one more revision
                }
            }
            run.open += line.isOpen() ? 1U : 0U;
        }
    }
    collect();
    endResetModel();
    return changed;
}

void RunsModel::collect() {
    shown_.clear();
    for (std::size_t place = 0; place < runs_.size(); ++place) {
        if (runs_[place].open > 0) {
            shown_.push_back(place);
        }
    }
}

const Run* RunsModel::run(int row) const {
    return row >= 0 && row < rowCount() ? &runs_[shown_[static_cast<std::size_t>(row)]] : nullptr;
}

std::size_t RunsModel::openQuestions() const {
    std::size_t open = 0;
    for (const Run& run : runs_) {
        open += run.open;
    }
    return open;
}

int RunsModel::rowOf(const Run* run) const {
    if (run == nullptr || runs_.empty()) {
        return 0;
    }
    const auto place = static_cast<std::size_t>(run - runs_.data());
    const auto row = std::lower_bound(shown_.begin(), shown_.end(), place) - shown_.begin();
    return std::min(static_cast<int>(row), std::max(0, rowCount() - 1));
}

int RunsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

QVariant RunsModel::data(const QModelIndex& index, int role) const {
    const Run* run = index.isValid() ? this->run(index.row()) : nullptr;
    if (run == nullptr) {
        return {};
    }
    const checks::Finding& lead = run->found.lead;
    const QString when = spanWords(locale_, run->found.from, run->found.to);
    const auto second = [&] {
        QStringList parts{severityWords(lead.severity), readingsWords(run->open), when};
        if (run->found.belief >= 0.5) {
            parts << tr("a slip: %1").arg(percentWords(locale_, run->found.belief * 100));
        }
        return parts.join(QStringLiteral(" · "));
    };
    switch (role) {
    case Qt::DisplayRole:
        return findingWords(locale_, lead, unit_).title;
    case SecondLineRole:
        return second();
    case SeverityRole:
        return static_cast<int>(lead.severity);
    case Qt::AccessibleTextRole:
        return tr("%1: %2").arg(findingWords(locale_, lead, unit_).title, second());
    default:
        return {};
    }
}

} // namespace wickbook::ui
