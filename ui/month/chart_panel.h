// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/month/chart_readings.h"
#include "ui/month/chart_stage.h"
#include "ui/month/other_years.h"
#include "ui/print/chart_figure.h"
#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>
#include <date/date.h>

class QComboBox;
class QLabel;
class QVBoxLayout;

/// The charts over a span of the person's choosing. A caret walks the readings with ← → and tells each one's
/// numbers, in words too, for whoever does not see the chart; the pointer tells the one it rests on.
/// Keys: ← → reading before and after, Home End first and last, + − zoom, Ctrl+← Ctrl+→ move, Enter opens,
/// Ctrl+C copies the picture; where the years lie over one another, ↑ ↓ single one out.

namespace wickbook::ui {

enum class ChartSpan { TwoWeeks, Month, Season, Year, All };

class ChartPanel : public QWidget {
    Q_OBJECT

public:
    ChartPanel(Session& session, OtherYears& otherYears, QLocale locale, QWidget* parent = nullptr);

    /// The span of the kind chosen that ends with this month.
    void showMonth(date::year_month month);
    void setSpan(ChartSpan span);
    void setKind(ChartKind kind);
    /// Reads everything again.
    void reload();

    [[nodiscard]] record::Instant from() const { return from_; }
    [[nodiscard]] record::Instant to() const { return to_; }
    [[nodiscard]] const HumidityChart& humidity() const { return stage_->humidity(); }
    [[nodiscard]] const HumidityChart& dewPoint() const { return stage_->dewPoint(); }
    [[nodiscard]] const ChartStage& stage() const { return *stage_; }
    [[nodiscard]] std::optional<record::ObservingHour> caret() const;
    /// The caret's reading in words, as the label above the chart has it.
    [[nodiscard]] QString caretWords() const;
    [[nodiscard]] bool isReading() const { return readings_.isReading(); }

    /// The charts in sight as a file, PNG at print size or SVG by its name; the sentence to show.
    QString savePicture(const QString& path);

public slots:
    void copyPicture();

signals:
    void openAsked(const wickbook::record::ObservingHour& hour);
    void said(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void buildTop(QVBoxLayout& column);
    void connectStage();
    void show(record::Instant from, record::Instant to);
    void showAverages();
    void showHours();
    void zoom(record::Instant about, double factor);
    void moveBy(std::chrono::seconds by);
    void putCaret(record::Instant instant);
    void walk(int steps);
    void openCaret();
    void tellCaret();
    void stepYear(int steps);
    void askForPicture();
    [[nodiscard]] ChartFigure figure() const;
    [[nodiscard]] QString spanWords() const;
    [[nodiscard]] QString wordsOf(const ChartPoint& point) const;
    [[nodiscard]] std::vector<const ChartPoint*>::const_iterator placeOf(record::Instant instant) const;
    [[nodiscard]] record::StationDate dateAt(record::Instant instant) const;

    Session& session_;
    QLocale locale_;
    date::year_month month_{};
    ChartSpan span_ = ChartSpan::Month;
    record::Instant from_{}, to_{};
    OtherYears& otherYears_;
    ChartReadings readings_;
    std::shared_ptr<const ChartPoints> points_;
    std::vector<const ChartPoint*> order_; ///< points_ in time order
    std::optional<record::Instant> caret_, hovered_;
    ChartStage* stage_ = nullptr;
    QComboBox* choice_ = nullptr;
    QComboBox* kindChoice_ = nullptr;
    QComboBox* hourChoice_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* told_ = nullptr;
};

} // namespace wickbook::ui
