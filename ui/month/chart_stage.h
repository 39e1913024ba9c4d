// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/month/chart_view.h"
#include "ui/print/air_chart.h"
#include "ui/print/humidity_chart.h"
#include "ui/print/pair_chart.h"
#include "ui/print/years_chart.h"
#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

#include <memory>

class QStackedLayout;

/// The charts themselves, one kind at a time on the same stage: over time, the years over one another, the
/// vapour pressure over temperature, the pair of bulbs. Shows what it is handed; the panel reads and decides.

namespace wickbook::ui {

enum class ChartKind { OverTime, YearsTogether, Air, Pair };
inline constexpr int kChartKinds = 4;

class ChartStage : public QWidget {
    Q_OBJECT

public:
    ChartStage(Session& session, QLocale locale, QWidget* parent = nullptr);

    void setKind(ChartKind kind);
    [[nodiscard]] ChartKind kind() const { return kind_; }
    void setPoints(std::shared_ptr<const ChartPoints> points);
    /// The dates are those the span lies on.
    void setSpan(record::Instant from, record::Instant to, record::StationDate first,
                 record::StationDate last);
    void setAverages(const ChartAverage& humidity, const ChartAverage& dewPoint);
    void setCaret(const std::optional<record::Instant>& caret);
    void setHour(std::size_t hour);
    /// Singles out the other year before or after (±1) the one singled out, or none beyond the ends.
    void stepYear(int steps);
    [[nodiscard]] std::optional<date::year> singledOut() const { return single_; }
    void followPalette();

    [[nodiscard]] HumidityChart& humidity() const { return *humidity_; }
    [[nodiscard]] HumidityChart& dewPoint() const { return *dewPoint_; }
    [[nodiscard]] const YearsChart& years() const { return *yearsHumidity_; }
    [[nodiscard]] const PairChart& pair() const { return *pair_; }
    [[nodiscard]] const AirChart& air() const { return *air_; }
    [[nodiscard]] std::shared_ptr<const ChartPoints> points() const { return points_; }

    /// What stands on the stage once more, for paper; the caller owns the charts. They borrow the station.
    [[nodiscard]] QList<QChart*> forPaper(const QLocale& locale) const;

signals:
    void zoomAsked(wickbook::record::Instant about, double factor);
    void moveAsked(std::chrono::seconds by);
    void pointHovered(const std::optional<wickbook::record::Instant>& instant);
    void pointChosen(wickbook::record::Instant instant);
    void pointOpened(wickbook::record::Instant instant);

private:
    QWidget* addPage();
    void addView(QWidget* page, QChart* chart, ChartHandView::Hands hands);
    void showOnStage();

    Session& session_;
    QLocale locale_;
    ChartKind kind_ = ChartKind::OverTime;
    std::shared_ptr<const ChartPoints> points_;
    record::Instant from_{}, to_{};
    record::StationDate first_{}, last_{};
    std::size_t hour_ = 0;
    std::optional<date::year> single_;
    std::optional<record::Instant> caret_;
    ChartAverage humidityAverage_, dewPointAverage_;
    QStackedLayout* pages_ = nullptr;
    HumidityChart* humidity_ = nullptr; ///< the views own the charts
    HumidityChart* dewPoint_ = nullptr;
    YearsChart* yearsHumidity_ = nullptr;
    YearsChart* yearsDewPoint_ = nullptr;
    AirChart* air_ = nullptr;
    PairChart* pair_ = nullptr;
};

} // namespace wickbook::ui
