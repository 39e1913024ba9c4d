// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/month/chart_view.h"
#include "ui/month/other_years.h"
#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>
#include <date/date.h>

class QComboBox;
class QLabel;

/// Relative humidity above dew point over a span of the person's choosing, both over the same time. A caret
/// walks the readings with ← → and tells each one's numbers, in words too, for whoever does not see the
/// chart. Keys: ← → reading before and after, Home End first and last, + − zoom, Ctrl+← Ctrl+→ move, Enter
/// opens. Reads only the span it shows, with half of it on each side; zooming and moving inside that reads
/// nothing.

namespace wickbook::ui {

enum class ChartSpan { TwoWeeks, Month, Season, Year, All };

class ChartPanel : public QWidget {
    Q_OBJECT

public:
    ChartPanel(Session& session, OtherYears& otherYears, QLocale locale, QWidget* parent = nullptr);

    /// The span of the kind chosen that ends with this month.
    void showMonth(date::year_month month);
    void setSpan(ChartSpan span);
    /// Reads everything again.
    void reload();

    [[nodiscard]] record::Instant from() const { return from_; }
    [[nodiscard]] record::Instant to() const { return to_; }
    [[nodiscard]] const HumidityChart& humidity() const { return *humidity_; }
    [[nodiscard]] const HumidityChart& dewPoint() const { return *dewPoint_; }
    [[nodiscard]] std::optional<record::ObservingHour> caret() const;
    /// The caret's reading in words, as the label below the chart has it.
    [[nodiscard]] QString caretWords() const;

signals:
    void openAsked(const wickbook::record::ObservingHour& hour);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void connectView(HumidityChartView& view);
    void show(record::Instant from, record::Instant to);
    void showAverages();
    void load(record::StationDate first, record::StationDate last);
    void zoom(record::Instant about, double factor);
    void moveBy(std::chrono::seconds by);
    void putCaret(record::Instant instant);
    void walk(int steps);
    void openCaret();
    void tellCaret();
    [[nodiscard]] const ChartPoint* caretPoint() const;
    [[nodiscard]] record::StationDate dateAt(record::Instant instant) const;
    [[nodiscard]] record::Instant startOf(record::StationDate day) const;

    Session& session_;
    QLocale locale_;
    date::year_month month_{};
    ChartSpan span_ = ChartSpan::Month;
    record::Instant from_{}, to_{};
    std::optional<std::pair<record::StationDate, record::StationDate>> loaded_;
    OtherYears& otherYears_;
    std::shared_ptr<const ChartPoints> points_;
    std::vector<const ChartPoint*> order_; ///< points_ in time order
    std::optional<record::Instant> caret_;
    HumidityChart* humidity_ = nullptr; ///< the view's
    HumidityChart* dewPoint_ = nullptr;
    QComboBox* choice_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* told_ = nullptr;
    QWidget* charts_ = nullptr;
};

} // namespace wickbook::ui
