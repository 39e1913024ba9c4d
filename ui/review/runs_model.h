// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/register_review.h"
#include "ui/session/session.h"

#include <QAbstractListModel>
#include <QLocale>

#include <vector>

namespace wickbook::ui {

/// One reading of a run as it stands now.
struct RunLine {
    checks::CheckedReading checked;
    bool asked = false;    ///< belongs to the run
    bool answered = false; ///< judged, corrected or withdrawn since; what stands in checked is from before
    record::Quality judged = record::Quality::NotJudged; ///< how, where it was judged
    [[nodiscard]] bool isOpen() const { return asked && !answered; }
};

struct Run {
    desk::ReviewRun found; ///< its lines moved into lines
    std::vector<RunLine> lines;
    std::size_t open = 0;
};

/// The runs that still ask something, worst first, as a list of two lines each. What is answered leaves the
/// list, and what is taken back by undo comes again. Owns copies: nothing the book does can pull a reading
/// from under the person.
class RunsModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { SecondLineRole = Qt::UserRole, SeverityRole };

    explicit RunsModel(QLocale locale, QObject* parent = nullptr);

    void show(const desk::RegisterReview& review, units::TemperatureUnit unit);
    /// Looks up in the book how every reading asked about stands now. True where something was answered or is
    /// asked again.
    bool refresh(const Session& session);

    [[nodiscard]] const Run* run(int row) const;
    [[nodiscard]] std::size_t openQuestions() const;
    [[nodiscard]] units::TemperatureUnit unit() const { return unit_; }
    /// Row of a run that run() gave before a refresh; where it asks nothing any more, the row that took its
    /// place.
    [[nodiscard]] int rowOf(const Run* run) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

private:
    void collect();

    QLocale locale_;
    units::TemperatureUnit unit_ = units::TemperatureUnit::Celsius;
    std::vector<Run> runs_;          ///< never grows after show(), so pointers into it stay
    std::vector<std::size_t> shown_; ///< places of those with open questions
};

} // namespace wickbook::ui
