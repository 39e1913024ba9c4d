// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/chart_panel.h"

#include "ui/print/month_figure.h"
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
#include <QPushButton>
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
    , readings_(session)
    , points_(std::make_shared<ChartPoints>()) {
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Chart of humidity and dew point"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kStep, space::kStep, space::kStep, space::kStep);
    column->setSpacing(space::kStep);
    buildTop(*column);
    empty_ = makeLabel({}, TypeSize::Body);
    empty_->setObjectName(QStringLiteral("chartEmpty"));
    empty_->setWordWrap(true);
    column->addWidget(empty_);
    stage_ = new ChartStage(session_, locale_);
    column->addWidget(stage_, 1);
    connectStage();
}

void ChartPanel::buildTop(QVBoxLayout& column) {
    auto* top = new QHBoxLayout;
    const auto box = [&](const char* name, const QString& accessible, const QStringList& items) {
        auto* made = new QComboBox;
        made->setObjectName(QLatin1String(name));
        made->setAccessibleName(accessible);
        made->setToolTip(accessible);
        made->addItems(items);
        top->addWidget(made);
        return made;
    };
    choice_ = box("span", tr("How long a time the chart shows"),
                  {tr("two weeks"), tr("a month"), tr("a season"), tr("a year"), tr("all")});
    choice_->setPlaceholderText(tr("as zoomed"));
    choice_->setCurrentIndex(static_cast<int>(span_));
    kindChoice_ =
        box("kind", tr("What the chart shows"),
            {tr("over time"), tr("years over one another"), tr("vapour and warmth"), tr("dry and wet bulb")});
    hourChoice_ = box("chartHour", tr("At which observing hour"), {});
    hourChoice_->hide();
    told_ = makeLabel({}, TypeSize::Body, false);
    told_->setObjectName(QStringLiteral("told"));
    top->addSpacing(space::kBetween);
    top->addWidget(told_, 1);
    auto* picture = new QPushButton(tr("Pict&ure…"));
    picture->setObjectName(QStringLiteral("picture"));
    picture->setAccessibleName(tr("Save the chart as a picture, PNG or SVG (Ctrl+C copies it)"));
    picture->setToolTip(picture->accessibleName());
    top->addWidget(picture);
    column.addLayout(top);
    connect(choice_, &QComboBox::activated, this,
            [this](int index) { setSpan(static_cast<ChartSpan>(index)); });
    connect(kindChoice_, &QComboBox::activated, this,
            [this](int index) { setKind(static_cast<ChartKind>(index)); });
    connect(hourChoice_, &QComboBox::activated, this,
            [this](int index) { stage_->setHour(static_cast<std::size_t>(std::max(0, index))); });
    connect(picture, &QPushButton::clicked, this, &ChartPanel::askForPicture);
}

void ChartPanel::connectStage() {
    connect(stage_, &ChartStage::zoomAsked, this, &ChartPanel::zoom);
    connect(stage_, &ChartStage::moveAsked, this, &ChartPanel::moveBy);
    connect(stage_, &ChartStage::pointHovered, this, [this](const std::optional<record::Instant>& instant) {
        hovered_ = instant;
        tellCaret();
    });
    connect(stage_, &ChartStage::pointChosen, this, [this](record::Instant instant) {
        setFocus();
        putCaret(instant);
    });
    connect(stage_, &ChartStage::pointOpened, this, [this](record::Instant instant) {
        putCaret(instant);
        openCaret();
    });
    connect(&otherYears_, &OtherYears::found, this, &ChartPanel::showAverages);
    connect(&readings_, &ChartReadings::loaded, this, [this] {
        if (span_ == ChartSpan::All && stage_->kind() != ChartKind::YearsTogether) {
            setSpan(span_);
        } else {
            show(from_, to_);
        }
    });
    connect(&readings_, &ChartReadings::progressed, this, [this](qint64 done, qint64 total) {
        const QString share =
            total > 0 ? locale_.toString(done * 100 / total) + kNoBreakSpace + locale_.percent() : QString{};
        empty_->setText(tr("Reading the register beside the window… %1").arg(share));
        empty_->show();
    });
}

void ChartPanel::setKind(ChartKind kind) {
    kindChoice_->setCurrentIndex(static_cast<int>(kind));
    hourChoice_->setVisible(kind == ChartKind::YearsTogether);
    stage_->setKind(kind);
    show(from_, to_);
}

record::StationDate ChartPanel::dateAt(record::Instant instant) const {
    return date::floor<date::days>(session_.station().periodAt(instant).zone.localAt(instant));
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
    show(startOf(session_.station(), first), startOf(session_.station(), last + date::days{1}));
}

void ChartPanel::reload() {
    readings_.forget();
    show(from_, to_);
}

void ChartPanel::show(record::Instant from, record::Instant to) {
    from_ = from;
    to_ = to;
    const record::StationDate first = dateAt(from);
    const record::StationDate last = dateAt(to - std::chrono::seconds{1});
    const bool years = stage_->kind() == ChartKind::YearsTogether;
    // Without the whole register at hand, what is there is shown until it is.
    if (auto points = years ? readings_.whole() : readings_.of(first, last); points && points != points_) {
        points_ = std::move(points);
        order_ = points_->inTimeOrder();
        stage_->setPoints(points_);
        showHours();
        if (caret_ && placeOf(*caret_) == order_.end()) {
            caret_.reset();
        }
    }
    showAverages();
    stage_->setSpan(from, to, first, last);
    const auto past = std::lower_bound(
        order_.begin(), order_.end(), from,
        [](const ChartPoint* point, record::Instant instant) { return point->instant < instant; });
    const bool nothing = past == order_.end() || (*past)->instant >= to;
    const QString problem = readings_.problem();
    empty_->setVisible(nothing || readings_.isReading() || !problem.isEmpty());
    empty_->setText(!problem.isEmpty()      ? problem
                    : readings_.isReading() ? tr("Reading the register beside the window…")
                    : points_->empty()
                        ? tr("No readings here yet. They appear as they are written down.")
                        : tr("No readings in this span. + and − zoom, Ctrl+← and Ctrl+→ move."));
    tellCaret();
}

void ChartPanel::showAverages() {
    const record::StationDate first = dateAt(from_);
    const record::StationDate last = dateAt(to_ - std::chrono::seconds{1});
    stage_->setAverages(otherYears_.band(Quantity::Humidity, first, last),
                        otherYears_.band(Quantity::DewPoint, first, last));
}

void ChartPanel::showHours() {
    const int chosen = std::max(0, hourChoice_->currentIndex());
    hourChoice_->clear();
    for (const HourLine& line : points_->hours) {
        hourChoice_->addItem(hourWords(line.hour));
    }
    hourChoice_->setCurrentIndex(std::min(chosen, hourChoice_->count() - 1));
    stage_->setHour(static_cast<std::size_t>(std::max(0, hourChoice_->currentIndex())));
}

void ChartPanel::zoom(record::Instant about, double factor) {
    const double before = static_cast<double>((about - from_).count()) / factor;
    const double after = static_cast<double>((to_ - about).count()) / factor;
    const auto length = std::chrono::seconds{static_cast<std::int64_t>(before + after)};
    if (length < kShortest || length > kLongest) {
        return;
    }
    const auto from = about - std::chrono::seconds{static_cast<std::int64_t>(before)};
    choice_->setCurrentIndex(-1); // none of the usual spans any more
    show(from, from + length);
}

void ChartPanel::moveBy(std::chrono::seconds by) {
    show(from_ + by, to_ + by);
}

std::vector<const ChartPoint*>::const_iterator ChartPanel::placeOf(record::Instant instant) const {
    const auto found = std::lower_bound(
        order_.begin(), order_.end(), instant,
        [](const ChartPoint* point, record::Instant wanted) { return point->instant < wanted; });
    return found != order_.end() && (*found)->instant == instant ? found : order_.end();
}

std::optional<record::ObservingHour> ChartPanel::caret() const {
    const auto place = caret_ ? placeOf(*caret_) : order_.end();
    return place == order_.end() ? std::nullopt : std::optional{(*place)->hour};
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
    auto place = caret_ ? placeOf(*caret_) : order_.end();
    if (place == order_.end()) {
        // The first step lands on the newest reading in sight.
        const auto past = std::lower_bound(
            order_.begin(), order_.end(), to_,
            [](const ChartPoint* point, record::Instant instant) { return point->instant < instant; });
        place = past == order_.begin() ? past : std::prev(past);
    } else {
        const auto index = std::clamp<std::ptrdiff_t>(place - order_.cbegin() + steps, 0,
                                                      static_cast<std::ptrdiff_t>(order_.size()) - 1);
        place = order_.cbegin() + index;
    }
    putCaret((*place)->instant);
}

QString ChartPanel::caretWords() const {
    const auto place = caret_ ? placeOf(*caret_) : order_.end();
    return place == order_.end() ? QString{} : wordsOf(**place);
}

QString ChartPanel::wordsOf(const ChartPoint& point) const {
    const units::TemperatureUnit unit = session_.unit();
    const auto temperature = [&](const std::optional<double>& celsius) {
        return celsius ? temperatureWords(locale_, units::Temperature::fromCelsius(*celsius), unit) +
                             QChar(0x00A0) + unitWords(unit)
                       : numberWords(locale_, std::nullopt, 1);
    };
    QStringList parts{hourAndDateWords(locale_, point.hour)};
    QString humidity = tr("RH %1").arg(percentWords(locale_, point.humidity));
    if (point.humidityU95) {
        humidity += QLatin1Char(' ') + plusMinusWords(locale_, point.humidityU95, 0);
    }
    parts << humidity << tr("dew point %1").arg(temperature(point.dewPoint))
          << tr("dry %1, wet %2").arg(temperature(point.dry), temperature(point.wet));
    if (point.mark == PointMark::Doubtful) {
        parts << tr("doubtful");
    } else if (point.mark == PointMark::Erroneous) {
        parts << tr("erroneous");
    }
    return parts.join(QStringLiteral(" · "));
}

void ChartPanel::tellCaret() {
    stage_->setCaret(caret_);
    const QString words = caretWords();
    const auto rests = hovered_ ? placeOf(*hovered_) : order_.end();
    if (rests != order_.end()) {
        told_->setText(wordsOf(**rests));
    } else if (stage_->kind() == ChartKind::YearsTogether) {
        told_->setText(
            stage_->singledOut()
                ? tr("%1 singled out").arg(QString::number(static_cast<int>(*stage_->singledOut())))
                : tr("↑ and ↓ single out a year"));
    } else {
        told_->setText(words.isEmpty() && !order_.empty() ? tr("← and → walk the readings") : words);
    }
    setAccessibleDescription(stage_->kind() == ChartKind::YearsTogether ? told_->text() : words);
    if (!words.isEmpty() && hasFocus()) {
        QAccessibleEvent event(this, QAccessible::DescriptionChanged);
        QAccessible::updateAccessibility(&event);
    }
}

void ChartPanel::stepYear(int steps) {
    if (stage_->kind() == ChartKind::YearsTogether) {
        stage_->stepYear(steps);
        tellCaret();
    }
}

void ChartPanel::openCaret() {
    if (const auto hour = caret()) {
        emit openAsked(*hour);
    }
}

void ChartPanel::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        copyPicture();
        return;
    }
    const bool control = event->modifiers().testFlag(Qt::ControlModifier);
    const auto middle = from_ + (to_ - from_) / 2;
    switch (event->key()) {
    case Qt::Key_Left:
        control ? moveBy(-(to_ - from_) / 4) : walk(-1);
        return;
    case Qt::Key_Right:
        control ? moveBy((to_ - from_) / 4) : walk(1);
        return;
    case Qt::Key_Up:
        stepYear(1);
        return;
    case Qt::Key_Down:
        stepYear(-1);
        return;
    case Qt::Key_Home:
        if (!order_.empty()) {
            putCaret(order_.front()->instant); // also where no reading has the caret yet
        }
        return;
    case Qt::Key_End:
        if (!order_.empty()) {
            putCaret(order_.back()->instant);
        }
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
    if (event->type() == QEvent::PaletteChange && stage_ != nullptr) {
        stage_->followPalette();
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
