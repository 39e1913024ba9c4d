// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/chart_points.h"
#include "ui/session/background_work.h"
#include "ui/session/session.h"

#include <memory>
#include <optional>

/// The readings behind the charts. About a year is read at once, with half as much on each side so that
/// moving a little reads nothing. Anything longer is read whole and beside the window, by a book of its own,
/// and kept until the book changes: from then on zooming and moving never wait for the file.

namespace wickbook::ui {

class ChartReadings : public QObject {
    Q_OBJECT

public:
    explicit ChartReadings(Session& session, QObject* parent = nullptr);

    /// Points that cover the dates; nullptr: they are being read, and loaded() follows.
    [[nodiscard]] std::shared_ptr<const ChartPoints> of(record::StationDate first, record::StationDate last);
    /// All points of the book; nullptr as above.
    [[nodiscard]] std::shared_ptr<const ChartPoints> whole();
    /// The book has changed.
    void forget();
    /// Why the readings can't be had; empty when they can.
    [[nodiscard]] QString problem() const { return problem_; }
    [[nodiscard]] bool isReading() const { return work_.isRunning(); }

signals:
    void loaded();
    void progressed(qint64 done, qint64 total);

private:
    void readWhole();

    Session& session_;
    std::shared_ptr<const ChartPoints> part_, whole_;
    std::optional<std::pair<record::StationDate, record::StationDate>> covered_;
    QString problem_;
    int generation_ = 0; ///< what was begun before the book changed is thrown away
    BackgroundWork work_;
};

} // namespace wickbook::ui
