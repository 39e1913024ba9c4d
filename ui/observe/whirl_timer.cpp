// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/whirl_timer.h"

#include "ui/observe/whirl_beat.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QApplication>
#include <QCheckBox>
#include <QCryptographicHash>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QSettings>
#include <QStyle>
#include <QVBoxLayout>

#include <cmath>
#include <numbers>

namespace wickbook::ui {

namespace {

constexpr int kFrameMilliseconds = 33;
constexpr int kStillMilliseconds = 200;
const units::Decimal kUsualArm{30, 0}; // cm
const QLatin1String kSound("whirl/sound");
const QLatin1String kStill("whirl/still");

/// The arm belongs to the instrument, and so to the book.
QString armKey(const QString& book) {
    const QByteArray digest =
        QCryptographicHash::hash(QFileInfo(book).absoluteFilePath().toUtf8(), QCryptographicHash::Sha256);
    return QStringLiteral("whirl/arm-%1").arg(QString::fromLatin1(digest.toHex().left(24)));
}

} // namespace

WhirlCircle::WhirlCircle(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize WhirlCircle::sizeHint() const {
    return {typePixels(112), typePixels(112)};
}

void WhirlCircle::showTurns(double turns, int seconds, bool moving) {
    turns_ = turns;
    seconds_ = seconds;
    moving_ = moving;
    update();
}

void WhirlCircle::paintEvent(QPaintEvent* /*event*/) {
    const Tokens& tokens = tokensFor(palette());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double radius = std::min(width(), height()) / 2.0 - 12.0;
    const QPointF centre(width() / 2.0, height() / 2.0);
    painter.setPen(QPen(tokens.soft, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawEllipse(centre, radius, radius);
    if (moving_) {
        const double angle = 2.0 * std::numbers::pi * turns_;
        const QPointF dot(centre.x() + radius * std::sin(angle), centre.y() - radius * std::cos(angle));
        painter.setPen(Qt::NoPen);
        painter.setBrush(tokens.wet);
        painter.drawEllipse(dot, 8.0, 8.0);
    }
    painter.setPen(tokens.ink);
    painter.setFont(typeFont(TypeSize::Entry, true));
    painter.drawText(rect(), Qt::AlignCenter, tr("%1 s").arg(QLocale().toString(seconds_)));
}

WhirlTimer::WhirlTimer(const QString& settingsFile, const QString& book, QWidget* parent)
    : QWidget(parent), settingsFile_(settingsFile), book_(book) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    auto* row = new QHBoxLayout;
    row->setSpacing(space::kBetween);
    circle_ = new WhirlCircle;
    row->addWidget(circle_);
    auto* beside = new QVBoxLayout;
    beside->setSpacing(space::kStep);
    arm_ = new TypedNumberEdit(tr("from the hand to the bulbs, centimetres"));
    arm_->setObjectName(QStringLiteral("whirlArm"));
    arm_->setSuffix(tr("cm"));
    arm_->setFixedWidth(typePixels(104));
    rate_ = makeLabel({}, TypeSize::Body, false);
    rate_->setObjectName(QStringLiteral("whirlRate"));
    rate_->setWordWrap(true);
    start_ = new QPushButton;
    start_->setObjectName(QStringLiteral("whirlStart"));
    start_->setAutoDefault(false);
    counted_ = makeLabel({});
    counted_->setObjectName(QStringLiteral("whirlCounted"));
    sound_ = new QCheckBox(tr("a sound at each turn"));
    still_ = new QCheckBox(tr("no movement, numbers only"));
    QLabel* armLabel = makeLabel(tr("From the hand to the bulbs"));
    armLabel->setBuddy(arm_);
    beside->addWidget(armLabel);
    beside->addWidget(arm_);
    beside->addWidget(rate_);
    auto* startRow = new QHBoxLayout;
    startRow->addWidget(start_);
    startRow->addWidget(counted_, 1);
    beside->addLayout(startRow);
    row->addLayout(beside, 1);
    column->addLayout(row);
    column->addWidget(sound_);
    column->addWidget(still_);
    QLabel* caution = makeLabel(cautionWords().value(0));
    caution->setWordWrap(true);
    column->addWidget(caution);

    // A desktop that asks for no animations is followed until the person says otherwise.
    const bool calm = style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, this) == 0;
    arm_->setValue(kUsualArm);
    still_->setChecked(calm);
    if (!settingsFile_.isEmpty()) {
        const QSettings settings(settingsFile_, QSettings::IniFormat);
        const QString arm = settings.value(armKey(book_)).toString();
        if (!arm.isEmpty()) {
            arm_->setText(arm);
        }
        sound_->setChecked(settings.value(kSound, false).toBool());
        still_->setChecked(settings.value(kStill, calm).toBool());
    }
    connect(arm_, &QLineEdit::textChanged, this, [this] {
        showRate();
        remember();
    });
    for (QCheckBox* tick : {sound_, still_}) {
        connect(tick, &QCheckBox::toggled, this, &WhirlTimer::remember);
    }
    connect(start_, &QPushButton::clicked, this, &WhirlTimer::toggle);
    connect(&timer_, &QTimer::timeout, this, &WhirlTimer::beat);
    QWidget* const order[] = {arm_, start_, sound_, still_};
    for (std::size_t index = 1; index < std::size(order); ++index) {
        setTabOrder(order[index - 1], order[index]);
    }
    showRate();
    stop();
}

std::optional<double> WhirlTimer::rate() const {
    const auto arm = arm_->value();
    return arm ? turnsPerSecond(arm->toDouble()) : std::nullopt;
}

void WhirlTimer::showRate() {
    const auto perSecond = rate();
    start_->setEnabled(perSecond.has_value());
    rate_->setText(perSecond ? tr("%1 turns a second").arg(numberWords(QLocale(), perSecond, 1))
                             : tr("Write the distance, from 5 to 100 cm."));
    if (!perSecond) {
        stop();
    }
}

void WhirlTimer::toggle() {
    if (running_) {
        stop();
        return;
    }
    if (!rate()) {
        return;
    }
    running_ = true;
    turnsDone_ = 0;
    since_.start();
    start_->setText(tr("Stop"));
    timer_.start(still_->isChecked() ? kStillMilliseconds : kFrameMilliseconds);
    beat();
}

void WhirlTimer::stop() {
    running_ = false;
    timer_.stop();
    start_->setText(tr("Start"));
}

void WhirlTimer::focusStart() {
    start_->setFocus(Qt::OtherFocusReason);
}

void WhirlTimer::hideEvent(QHideEvent* event) {
    stop();
    QWidget::hideEvent(event);
}

void WhirlTimer::beat() {
    const auto perSecond = rate();
    if (!running_ || !perSecond) {
        return;
    }
    const double seconds = static_cast<double>(since_.elapsed()) / 1000.0;
    const double turns = seconds * *perSecond;
    circle_->showTurns(turns, static_cast<int>(seconds), !still_->isChecked());
    const int whole = static_cast<int>(turns);
    if (whole != turnsDone_) {
        turnsDone_ = whole;
        if (sound_->isChecked()) {
            QApplication::beep();
        }
    }
    const QString counted = tr("turn %1").arg(QLocale().toString(whole));
    if (counted_->text() != counted) {
        counted_->setText(counted);
    }
}

void WhirlTimer::remember() const {
    if (settingsFile_.isEmpty()) {
        return;
    }
    QSettings settings(settingsFile_, QSettings::IniFormat);
    if (rate()) {
        settings.setValue(armKey(book_), arm_->text().trimmed());
    }
    settings.setValue(kSound, sound_->isChecked());
    settings.setValue(kStill, still_->isChecked());
}

} // namespace wickbook::ui
