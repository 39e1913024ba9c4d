// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/own_years.h"
#include "ui/print/humidity_chart.h"
#include "ui/session/background_work.h"
#include "ui/session/session.h"

#include <map>
#include <memory>
#include <set>

/// What each month was like in the station's other years, worked out beside the window by a book of its own
/// and kept until the book changes. What is not known yet is asked for and told of once it is.

namespace wickbook::ui {

class OtherYears : public QObject {
    Q_OBJECT

public:
    explicit OtherYears(Session& session, QObject* parent = nullptr);

    /// nullptr: not known yet; it has been asked for.
    [[nodiscard]] const report::OwnYears* of(date::year_month month);
    /// The middle half of the other years' readings, all observing hours together, month by month; only for
    /// spans up to a few months: a longer one would read the book many times over to say little.
    [[nodiscard]] ChartAverage band(Quantity quantity, record::StationDate from, record::StationDate to);
    /// The book has changed.
    void forget();
    [[nodiscard]] bool isWorking() const { return work_.isRunning(); }

signals:
    void found();

private:
    void begin();

    Session& session_;
    std::map<date::year_month, report::OwnYears> known_;
    std::set<date::year_month> wanted_;
    int generation_ = 0; ///< what was begun before the book changed is thrown away
    BackgroundWork work_;
};

} // namespace wickbook::ui
