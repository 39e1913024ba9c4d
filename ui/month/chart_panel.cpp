// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/chart_panel.h"

#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QAccessible>
#include <QComboBox>
#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr double kZoomPerKey = 1.5;
constexpr std::chrono::seconds kShortest = date::days{3};
constexpr std::chrono::seconds kLongest = date::days{36525 * 2};

} // namespace

ChartPanel::ChartPanel(Session& session, OtherYears& otherYears, QLocale locale, QWidget* parent)
    : QWidget(parent)
    , session_(session)
    , locale_(std::move(locale))
    , otherYears_(otherYears)
    , points_(std::make_shared<ChartPoints>()) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Chart of humidity and dew point"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kStep, space::kStep, space::kStep, space::kStep);
    column->setSpacing(space::kStep);
    auto* top = new QHBoxLayout;
    choice_ = new QComboBox;
    choice_->setObjectName(QStringLiteral("span"));
    choice_->setAccessibleName(tr("How long a time the chart shows"));
    choice_->addItems({tr("two weeks"), tr("a month"), tr("a season"), tr("a year"), tr("all")});
    choice_->setCurrentIndex(static_cast<int>(span_));
    top->addWidget(choice_);
    told_ = makeLabel({}, TypeSize::Body, false);
    told_->setObjectName(QStringLiteral("told"));
    top->addSpacing(space::kBetween);
    top->addWidget(told_, 1);
    column->addLayout(top);
    empty_ = makeLabel({}, TypeSize::Body);
    empty_->setObjectName(QStringLiteral("chartEmpty"));
    empty_->setWordWrap(true);
    column->addWidget(empty_);

    charts_ = new QWidget;
    auto* inside = new QVBoxLayout(charts_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(0);
    const ChartLook look = ChartLook::screen(palette());
    for (const Quantity quantity : {Quantity::Humidity, Quantity::DewPoint}) {
        auto* chart = new HumidityChart(quantity, session_.station(), look, locale_, session_.unit());
        (quantity == Quantity::Humidity ? humidity_ : dewPoint_) = chart;
        auto* view = new HumidityChartView(chart, this);
        view->setMinimumHeight(typePixels(116));
        connectView(*view);
        inside->addWidget(view, 1);
    }
    column->addWidget(charts_, 1);
    connect(&otherYears_, &OtherYears::found, this, &ChartPanel::showAverages);
    connect(choice_, &QComboBox::activated, this,
            [this](int index) { setSpan(static_cast<ChartSpan>(index)); });
}

void ChartPanel::connectView(HumidityChartView& view) {
    connect(&view, &HumidityChartView::zoomAsked, this, &ChartPanel::zoom);
    connect(&view, &HumidityChartView::moveAsked, this, &ChartPanel::moveBy);
    connect(&view, &HumidityChartView::pointChosen, this, [this](record::Instant instant) {
        setFocus();
        putCaret(instant);
    });
    connect(&view, &HumidityChartView::pointOpened, this, [this](record::Instant instant) {
        putCaret(instant);
        openCaret();
    });
}

record::StationDate ChartPanel::dateAt(record::Instant instant) const {
    return date::floor<date::days>(session_.station().periodAt(instant).zone.localAt(instant));
}

record::Instant ChartPanel::startOf(record::StationDate day) const {
    const record::Instant about{day.time_since_epoch()};
    return record::startOfDate(day, session_.station().periodAt(about).zone);
}

void ChartPanel::showMonth(date::year_month month) {
    month_ = month;
    setSpan(span_);
}

void ChartPanel::setSpan(ChartSpan span) {
    span_ = span;
    choice_->setCurrentIndex(static_cast<int>(span));
    record::StationDate last{month_ / date::last};
    record::StationDate first{month_ / 1};
    // Of the month that is still going on, the days read so far are the last ones.
    const record::StationDate today = session_.today();
    switch (span) {
    case ChartSpan::TwoWeeks:
        last = std::min(last, std::max(first, today));
        first = last - date::days{13};
        break;
    case ChartSpan::Month:
        break;
    case ChartSpan::Season:
        first = record::StationDate{(month_ - date::months{2}) / 1};
        break;
    case ChartSpan::Year:
        first = record::StationDate{(month_ - date::months{11}) / 1};
        break;
    case ChartSpan::All:
        if (const auto span_of_book = session_.book().span(); span_of_book && *span_of_book) {
            first = dateAt((*span_of_book)->first);
            last = dateAt((*span_of_book)->second);
        }
        break;
    }
    show(startOf(first), startOf(last + date::days{1}));
}

void ChartPanel::reload() {
    loaded_.reset();
    show(from_, to_);
}

void ChartPanel::show(record::Instant from, record::Instant to) {
    from_ = from;
    to_ = to;
    const record::StationDate first = dateAt(from);
    const record::StationDate last = dateAt(to - std::chrono::seconds{1});
    if (!loaded_ || first < loaded_->first || last > loaded_->second) {
        const auto half = (last - first) / 2 + date::days{1};
        load(first - half, last + half);
    }
    showAverages();
    for (HumidityChart* chart : {humidity_, dewPoint_}) {
        chart->setSpan(from, to);
    }
    const bool nothing = std::none_of(order_.begin(), order_.end(), [&](const ChartPoint* point) {
        return point->instant >= from && point->instant < to;
    });
    empty_->setVisible(nothing);
    empty_->setText(points_->empty() ? tr("No readings here yet. They appear as they are written down.")
                                     : tr("No readings in this span. + and − zoom, Ctrl+← and Ctrl+→ move."));
    tellCaret();
}

void ChartPanel::showAverages() {
    const record::StationDate first = dateAt(from_);
    const record::StationDate last = dateAt(to_ - std::chrono::seconds{1});
    for (HumidityChart* chart : {humidity_, dewPoint_}) {
        chart->setAverage(otherYears_.band(chart->quantity(), first, last));
    }
}

void ChartPanel::load(record::StationDate first, record::StationDate last) {
    const auto readings = session_.checkedOn(first, last);
    if (!readings) {
        empty_->setText(storeErrorWords(readings.error()));
        empty_->setVisible(true);
        return;
    }
    loaded_ = {first, last};
    points_ = std::make_shared<const ChartPoints>(chartPoints(*readings, session_.station(), first, last));
    order_ = points_->inTimeOrder();
    for (HumidityChart* chart : {humidity_, dewPoint_}) {
        chart->setPoints(points_);
    }
    if (caretPoint() == nullptr) {
        caret_.reset();
    }
}

void ChartPanel::zoom(record::Instant about, double factor) {
    const double before = static_cast<double>((about - from_).count()) / factor;
    const double after = static_cast<double>((to_ - about).count()) / factor;
    const auto length = std::chrono::seconds{static_cast<std::int64_t>(before + after)};
    if (length < kShortest || length > kLongest) {
        return;
    }
    const auto from = about - std::chrono::seconds{static_cast<std::int64_t>(before)};
    show(from, from + length);
}

void ChartPanel::moveBy(std::chrono::seconds by) {
    show(from_ + by, to_ + by);
}

const ChartPoint* ChartPanel::caretPoint() const {
    if (!caret_) {
        return nullptr;
    }
    const auto found = std::find_if(order_.begin(), order_.end(),
                                    [&](const ChartPoint* point) { return point->instant == *caret_; });
    return found == order_.end() ? nullptr : *found;
}

std::optional<record::ObservingHour> ChartPanel::caret() const {
    const ChartPoint* point = caretPoint();
    return point == nullptr ? std::nullopt : std::optional{point->hour};
}

void ChartPanel::putCaret(record::Instant instant) {
    caret_ = instant;
    if (instant < from_ || instant >= to_) {
        const auto half = (to_ - from_) / 2;
        show(instant - half, instant - half + (to_ - from_));
    }
    tellCaret();
}

void ChartPanel::walk(int steps) {
    if (order_.empty()) {
        return;
    }
    auto place = order_.end();
    if (caret_) {
        place = std::find_if(order_.begin(), order_.end(),
                             [&](const ChartPoint* point) { return point->instant == *caret_; });
    }
    if (place == order_.end()) {
        // The first step lands on the newest reading in sight.
        const auto past = std::find_if(order_.begin(), order_.end(),
                                       [&](const ChartPoint* point) { return point->instant >= to_; });
        place = past == order_.begin() ? past : std::prev(past);
    } else {
        const auto index = std::clamp<std::ptrdiff_t>(place - order_.begin() + steps, 0,
                                                      static_cast<std::ptrdiff_t>(order_.size()) - 1);
        place = order_.begin() + index;
    }
    putCaret((*place)->instant);
}

QString ChartPanel::caretWords() const {
    const ChartPoint* point = caretPoint();
    if (point == nullptr) {
        return {};
    }
    const units::TemperatureUnit unit = session_.unit();
    const auto temperature = [&](const std::optional<double>& celsius) {
        return celsius ? temperatureWords(locale_, units::Temperature::fromCelsius(*celsius), unit) +
                             QChar(0x00A0) + unitWords(unit)
                       : numberWords(locale_, std::nullopt, 1);
    };
    QStringList parts{hourAndDateWords(locale_, point->hour)};
    QString humidity = tr("RH %1").arg(percentWords(locale_, point->humidity));
    if (point->humidityU95) {
        humidity += QLatin1Char(' ') + plusMinusWords(locale_, point->humidityU95, 0);
    }
    parts << humidity << tr("dew point %1").arg(temperature(point->dewPoint))
          << tr("dry %1, wet %2").arg(temperature(point->dry), temperature(point->wet));
    if (point->mark == PointMark::Doubtful) {
        parts << tr("doubtful");
    } else if (point->mark == PointMark::Erroneous) {
        parts << tr("erroneous");
    }
    return parts.join(QStringLiteral(" · "));
}

void ChartPanel::tellCaret() {
    for (HumidityChart* chart : {humidity_, dewPoint_}) {
        chart->setCaret(caret_);
    }
    const QString words = caretWords();
    told_->setText(words.isEmpty() && !order_.empty() ? tr("← and → walk the readings") : words);
    setAccessibleDescription(words);
    if (!words.isEmpty() && hasFocus()) {
        QAccessibleEvent event(this, QAccessible::DescriptionChanged);
        QAccessible::updateAccessibility(&event);
    }
}

void ChartPanel::openCaret() {
    if (const auto hour = caret()) {
        emit openAsked(*hour);
    }
}

void ChartPanel::keyPressEvent(QKeyEvent* event) {
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    const auto middle = from_ + (to_ - from_) / 2;
    switch (event->key()) {
    case Qt::Key_Left:
        control ? moveBy(-(to_ - from_) / 4) : walk(-1);
        return;
    case Qt::Key_Right:
        control ? moveBy((to_ - from_) / 4) : walk(1);
        return;
    case Qt::Key_Home:
        walk(-static_cast<int>(order_.size()));
        return;
    case Qt::Key_End:
        walk(static_cast<int>(order_.size()));
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(caret_.value_or(middle), kZoomPerKey);
        return;
    case Qt::Key_Minus:
        zoom(caret_.value_or(middle), 1 / kZoomPerKey);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        openCaret();
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void ChartPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && humidity_ != nullptr) {
        for (HumidityChart* chart : {humidity_, dewPoint_}) {
            chart->setLook(ChartLook::screen(palette()));
        }
    }
}

void ChartPanel::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void ChartPanel::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void ChartPanel::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Tokens& tokens = tokensFor(palette());
    painter.setPen(QPen(hasFocus() ? tokens.accent : tokens.rule, hasFocus() ? 2 : 1));
    painter.drawRoundedRect(QRectF{rect()}.adjusted(1, 1, -1, -1), space::kCorner, space::kCorner);
}

} // namespace wickbook::ui
