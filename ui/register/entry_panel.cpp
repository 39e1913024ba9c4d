// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/entry_panel.h"

#include "core/desk/revising.h"
#include "core/record/observing_hours.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kHighestForce = 12;

using FieldError = std::pair<QLineEdit*, QString>;

} // namespace

tl::expected<std::optional<record::WeatherSet>, QString> weatherFromWords(const QString& text) {
    const QString plain = text.simplified();
    if (plain.isEmpty()) {
        return std::optional<record::WeatherSet>{};
    }
    record::WeatherSet set;
    if (plain.compare(weatherSetWords(record::WeatherSet{}), Qt::CaseInsensitive) == 0) {
        return std::optional{set};
    }
    for (const QString& part : plain.split(QRegularExpression(QStringLiteral("[,;+]")), Qt::SkipEmptyParts)) {
        const QString word = part.trimmed();
        std::optional<record::Weather> found = record::weatherFromName(word.toLower().toStdString());
        for (int i = 0; i < record::kWeatherCount && !found; ++i) {
            const auto weather = static_cast<record::Weather>(i);
            if (word.compare(weatherWords(weather), Qt::CaseInsensitive) == 0) {
                found = weather;
            }
        }
        if (!found) {
            return tl::unexpected(word);
        }
        set.add(*found);
    }
    return std::optional{set};
}

EntryPanel::EntryPanel(Session& session, QLocale locale, QWidget* parent)
    : QFrame(parent), session_(session), locale_(std::move(locale)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, 0, 0, 0);
    column->setSpacing(space::kGroup);
    heading_ = makeHeading({});
    heading_->setWordWrap(true);
    column->addWidget(heading_);

    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kGroup);
    grid->setVerticalSpacing(space::kStep);
    dry_ = addField(*grid, 0, 0, tr("&Dry bulb"), QStringLiteral("dry"));
    wet_ = addField(*grid, 0, 1, tr("&Wet bulb"), QStringLiteral("wet"));
    dry_->setProperty("bulb", "dry");
    wet_->setProperty("bulb", "wet");
    wick_ = new QComboBox;
    wick_->setObjectName(QStringLiteral("wick"));
    wick_->setAccessibleName(tr("Wick"));
    for (const auto state : {record::WickState::NotGiven, record::WickState::Water, record::WickState::Ice}) {
        wick_->addItem(state == record::WickState::NotGiven ? tr("not given") : wickWords(state),
                       static_cast<int>(state));
    }
    auto* wickLabel = makeLabel(tr("Wic&k"));
    wickLabel->setBuddy(wick_);
    grid->addWidget(wickLabel, 2, 0);
    grid->addWidget(wick_, 3, 0);
    pressure_ = addField(*grid, 2, 1, tr("&Pressure, hPa"), QStringLiteral("pressure"));
    pressure_->setPlaceholderText(tr("from elevation"));
    weather_ = addField(*grid, 4, 0, tr("Weat&her"), QStringLiteral("weather"));
    weather_->setPlaceholderText(tr("fog, rime"));
    wind_ = addField(*grid, 4, 1, tr("W&ind force"), QStringLiteral("wind"));
    note_ = addField(*grid, 6, 0, tr("&Note"), QStringLiteral("note"));
    observer_ = addField(*grid, 6, 1, tr("&Observer"), QStringLiteral("observer"));
    column->addLayout(grid);

    live_ = makeLabel({}, TypeSize::Body, false);
    live_->setObjectName(QStringLiteral("live"));
    live_->setWordWrap(true);
    column->addWidget(live_);

    estimated_ = new QCheckBox(tr("es&timated, not read"));
    estimated_->setObjectName(QStringLiteral("estimated"));
    estimated_->setToolTip(tr("An estimate is marked, and stays out of means and extremes."));
    column->addWidget(estimated_);
    why_ = new QLineEdit;
    why_->setObjectName(QStringLiteral("why"));
    why_->setAccessibleName(tr("Why"));
    auto* whyLabel = makeLabel(tr("Wh&y?"));
    whyLabel->setBuddy(why_);
    column->addWidget(whyLabel);
    column->addWidget(why_);
    message_ = makeLabel({}, TypeSize::Label, false);
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->setObjectName(QStringLiteral("entryMessage"));
    column->addWidget(message_);

    auto* buttons = new QHBoxLayout;
    save_ = new QPushButton(tr("Write down"));
    save_->setObjectName(QStringLiteral("save"));
    save_->setProperty("primary", true);
    auto* leave = new QPushButton(tr("Leave as it is"));
    leave->setObjectName(QStringLiteral("leave"));
    buttons->addWidget(save_);
    buttons->addWidget(leave);
    buttons->addStretch();
    column->addLayout(buttons);
    column->addStretch();

    connect(save_, &QPushButton::clicked, this, &EntryPanel::saveAsked);
    connect(leave, &QPushButton::clicked, this, &EntryPanel::closeAsked);
    connect(wick_, &QComboBox::currentIndexChanged, this, &EntryPanel::showLive);
    for (QLineEdit* field : {dry_, wet_, pressure_, wind_}) {
        connect(field, &QLineEdit::textChanged, this, &EntryPanel::showLive);
    }
}

QLineEdit* EntryPanel::addField(QGridLayout& grid, int row, int column, const QString& name,
                                const QString& key) {
    auto* field = new QLineEdit;
    field->setObjectName(key);
    field->setAccessibleName(QString(name).remove(QLatin1Char('&')));
    auto* label = makeLabel(name);
    label->setBuddy(field);
    grid.addWidget(label, row, column);
    grid.addWidget(field, row + 1, column);
    return field;
}

void EntryPanel::open(const report::MonthLine& line) {
    const bool written = line.reading != nullptr;
    before_ = written ? std::optional{line.reading->reading.stored} : std::nullopt;
    if (written) {
        start_ = before_->values;
    } else {
        start_ = record::Observation{};
        record::placeInTime(start_, session_.station(), line.instant);
        start_.hour = line.hour;
        start_.observer = session_.observer().toStdString();
    }
    const bool wasMissing = written && start_.origin == record::Origin::Missing;
    heading_->setText(hourAndDateWords(locale_, line.hour));
    const auto bulbText = [&](const record::BulbReading& bulb) {
        return bulb.given() ? bulbWords(locale_, bulb) : QString{};
    };
    dry_->setText(bulbText(start_.dry));
    wet_->setText(bulbText(start_.wet));
    wick_->setCurrentIndex(wick_->findData(static_cast<int>(start_.wick)));
    pressure_->setText(start_.pressure ? readWords(locale_, *start_.pressure) : QString{});
    weather_->setText(weatherSetWords(start_.weather));
    wind_->setText(start_.windBeaufort ? QString::number(*start_.windBeaufort) : QString{});
    note_->setText(QString::fromStdString(start_.note));
    observer_->setText(QString::fromStdString(start_.observer));
    estimated_->setChecked(start_.origin == record::Origin::Estimated);
    why_->clear();
    why_->setPlaceholderText(!written     ? tr("not needed for a first entry")
                             : wasMissing ? tr("found in the pocket-book")
                                          : tr("misread, read again on paper …"));
    say({});
    showLive();
    dry_->setFocus();
    dry_->selectAll();
}

QString EntryPanel::why() const {
    return why_->text().simplified();
}

void EntryPanel::say(const QString& sentence) {
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
}

tl::expected<record::BulbReading, QString> EntryPanel::bulb(QLineEdit& field, const QString& name) const {
    record::BulbReading reading;
    const QString typed = field.text().trimmed();
    if (typed.isEmpty()) {
        return reading;
    }
    record::BulbReading below;
    below.belowScale = true;
    if (typed == QLatin1String("<") || typed.compare(bulbWords(locale_, below), Qt::CaseInsensitive) == 0) {
        return below;
    }
    const auto value = units::parseDecimal(typed.toStdString());
    if (!value) {
        return tl::unexpected(decimalErrorWords(value.error(), name, typed));
    }
    const record::Thermometer* thermometer = &field == dry_
                                                 ? session_.station().dryThermometerAt(start_.instant)
                                                 : session_.station().wetThermometerAt(start_.instant);
    const record::BulbReading& first = &field == dry_ ? start_.dry : start_.wet;
    const units::TemperatureUnit unit = first.value              ? first.value->unit
                                        : thermometer != nullptr ? thermometer->unit
                                                                 : session_.unit();
    reading.value = units::ReadTemperature{*value, unit};
    return reading;
}

tl::expected<void, std::pair<QLineEdit*, QString>> EntryPanel::readRest(record::Observation& to) const {
    to.pressure.reset();
    if (const QString typed = pressure_->text().trimmed(); !typed.isEmpty()) {
        const auto value = units::parseDecimal(typed.toStdString());
        if (!value) {
            return tl::unexpected(
                FieldError{pressure_, decimalErrorWords(value.error(), tr("pressure"), typed)});
        }
        to.pressure = *value;
    }
    const auto weather = weatherFromWords(weather_->text());
    if (!weather) {
        QStringList known;
        for (int i = 0; i < record::kWeatherCount; ++i) {
            known << weatherWords(static_cast<record::Weather>(i));
        }
        return tl::unexpected(
            FieldError{weather_, tr("“%1” is not a weather word. Write one of: %2.")
                                     .arg(weather.error(), known.join(QStringLiteral(", ")))});
    }
    to.weather = *weather;
    to.windBeaufort.reset();
    if (const QString typed = wind_->text().trimmed(); !typed.isEmpty()) {
        bool isNumber = false;
        const int force = typed.toInt(&isNumber);
        if (!isNumber || force < 0 || force > kHighestForce) {
            return tl::unexpected(FieldError{
                wind_, tr("Write the wind as a Beaufort force from 0 to 12; “%1” is none.").arg(typed)});
        }
        to.windBeaufort = force;
    }
    to.note = note_->text().toStdString();
    to.observer = observer_->text().trimmed().toStdString();
    return {};
}

tl::expected<record::Observation, std::pair<QLineEdit*, QString>> EntryPanel::read() const {
    record::Observation entry = start_;
    auto dry = bulb(*dry_, tr("dry bulb"));
    if (!dry) {
        return tl::unexpected(FieldError{dry_, dry.error()});
    }
    auto wet = bulb(*wet_, tr("wet bulb"));
    if (!wet) {
        return tl::unexpected(FieldError{wet_, wet.error()});
    }
    entry.dry = *dry;
    entry.wet = *wet;
    entry.wick = static_cast<record::WickState>(wick_->currentData().toInt());
    if (auto rest = readRest(entry); !rest) {
        return tl::unexpected(rest.error());
    }
    return entry;
}

tl::expected<record::Observation, QString> EntryPanel::observation() {
    auto entry = read();
    if (!entry) {
        entry.error().first->setFocus();
        entry.error().first->selectAll();
        return tl::unexpected(entry.error().second);
    }
    if (!entry->dry.given() && !entry->wet.given()) {
        dry_->setFocus();
        return tl::unexpected(
            tr("Write at least one of the two readings. An hour without any is given a reason "
               "with M."));
    }
    const bool estimate = estimated_->isChecked();
    if (before_ && *entry == start_ && estimate == (start_.origin == record::Origin::Estimated)) {
        return *entry; // nothing changed: nothing to explain
    }
    if (why().isEmpty() && (before_ || estimate)) {
        why_->setFocus();
        return tl::unexpected(before_ ? tr("Say why: what stood here first is kept, and so is the reason.")
                                      : tr("Say why, and from what it is estimated: the reason is kept."));
    }
    if (before_) {
        return desk::asRevised(start_, *std::move(entry), estimate);
    }
    entry->origin = estimate ? record::Origin::Estimated : record::Origin::Observed;
    return *entry;
}

void EntryPanel::showLive() {
    const auto entry = read();
    if (!entry || !entry->hasPair()) {
        live_->clear();
        return;
    }
    record::Observation asked = *entry;
    asked.origin = record::Origin::Observed;
    asked.quality = record::Quality::NotJudged;
    const auto judged =
        session_.judgeEntry(asked, before_ ? std::optional{before_->id()} : std::nullopt, false);
    if (!judged) {
        live_->setText(storeErrorWords(judged.error()));
        return;
    }
    QStringList lines;
    if (judged->reading.humidityPercent()) {
        lines << tr("RH %1, dew point %2 %3")
                     .arg(percentWords(locale_, judged->reading.humidityPercent()),
                          temperatureWords(locale_, judged->reading.derivation->dewPoint, session_.unit()),
                          unitWords(session_.unit()));
    }
    for (const checks::SpokenNote& note : checks::spokenNotes(judged->findings)) {
        const FindingWords words = findingWords(locale_, note.lead, session_.unit());
        lines << QStringLiteral("○ %1. %2").arg(words.title, words.message);
    }
    live_->setText(lines.join(QLatin1Char('\n')));
}

void EntryPanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        emit closeAsked();
    } else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        emit saveAsked();
    } else {
        QFrame::keyPressEvent(event);
    }
}

} // namespace wickbook::ui
