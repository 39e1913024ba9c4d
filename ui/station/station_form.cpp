// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/station_form.h"

#include "core/record/clock.h"
#include "core/record/observing_hours.h"
#include "core/record/zone.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QTimeZone>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr int kLongestName = 120;

QLabel* formLabel(const QString& text) {
    return makeLabel(text, TypeSize::Label, true);
}

TypedNumberEdit* numberField(const QString& what, const QString& suffix, const QString& value) {
    auto* field = new TypedNumberEdit(what);
    field->setFont(typeFont(TypeSize::Body));
    field->setSuffix(suffix);
    field->setText(value);
    field->setFixedWidth(typePixels(150));
    return field;
}

} // namespace

tl::expected<std::vector<record::HourOfDay>, QString> hoursFromTyped(const QString& typed) {
    static const QRegularExpression between(QStringLiteral("[\\s,;]+"));
    std::vector<record::HourOfDay> hours;
    for (const QString& part : typed.split(between, Qt::SkipEmptyParts)) {
        if (part == QLatin1String("h")) {
            continue;
        }
        const auto hour = record::parseHour(part.toStdString());
        if (!hour) {
            return tl::unexpected(timeErrorWords(hour.error(), part));
        }
        hours.push_back(*hour);
    }
    std::sort(hours.begin(), hours.end());
    hours.erase(std::unique(hours.begin(), hours.end()), hours.end());
    return hours;
}

void fillZones(QComboBox& box, const QString& chosen) {
    box.setEditable(true); // some hundred names: typing finds one faster than scrolling
    box.setInsertPolicy(QComboBox::NoInsert);
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds()) {
        box.addItem(QString::fromUtf8(id));
    }
    if (box.completer() != nullptr) {
        box.completer()->setFilterMode(Qt::MatchContains);
        box.completer()->setCompletionMode(QCompleter::PopupCompletion);
    }
    box.setCurrentText(chosen);
}

QString hourRuleExplained(record::HourRule rule, const std::optional<record::Zone>& zone,
                          const std::vector<record::HourOfDay>& hours, record::Instant now) {
    QString words;
    switch (rule) {
    case record::HourRule::Standard:
        words = StationForm::tr("The hours follow standard time all the year, and so the sun; while summer "
                                "time is in force the clock is ahead of them.");
        break;
    case record::HourRule::Clock:
        words = StationForm::tr("The hours go with the clock on the wall; when it changes in spring and "
                                "autumn they move against the sun, which changes a humidity record.");
        break;
    case record::HourRule::Utc:
        words = StationForm::tr("The hours are those of UTC, the same moment everywhere.");
        break;
    }
    if (!zone || hours.empty()) {
        return words;
    }
    record::NewStation fresh;
    fresh.zone = zone->name();
    fresh.hours = hours;
    fresh.hourRule = rule;
    const record::StationRecord station{record::factsOf(fresh, [] { return record::Uuid{}; })};
    const auto tomorrow = date::floor<date::days>(zone->localAt(now)) + date::days{1};
    const auto moment = record::momentOf(station, {tomorrow, hours.front()});
    if (!moment) {
        return words + QLatin1Char(' ') +
               StationForm::tr("Tomorrow the clock skips %1, so nothing is expected then.")
                   .arg(hourWords(hours.front()));
    }
    return words + QLatin1Char(' ') +
           StationForm::tr("Tomorrow %1 is read when the clock shows %2.")
               .arg(hourWords(hours.front()), clockWords(*moment, zone->offsetAt(*moment)));
}

units::TemperatureUnit usualUnit(const QLocale& locale) {
    return locale.measurementSystem() == QLocale::ImperialUSSystem ? units::TemperatureUnit::Fahrenheit
                                                                   : units::TemperatureUnit::Celsius;
}

StationForm::StationForm(QWidget* parent, std::optional<record::Instant> now)
    : QWidget(parent), now_(now.value_or(record::SystemClock{}.now())) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kBetween);
    column->addWidget(makeHeading(tr("Start a station")));
    column->addWidget(makeLabel(tr("One page; everything on it can be changed later.")));
    form_ = new QFormLayout;
    form_->setHorizontalSpacing(space::kBetween);
    form_->setVerticalSpacing(space::kGroup);
    form_->setFieldGrowthPolicy(QFormLayout::FieldsStayAtSizeHint);
    buildPlace();
    buildHours();
    buildInstrument();
    column->addLayout(form_);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("stationMessage"));
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* row = new QHBoxLayout;
    auto* start = new QPushButton(tr("&Start the book"));
    start->setObjectName(QStringLiteral("stationStart"));
    start->setProperty("primary", true);
    start->setAutoDefault(true);
    auto* cancel = new QPushButton(tr("Back"));
    cancel->setProperty("quiet", true);
    row->addWidget(start);
    row->addWidget(cancel);
    row->addStretch();
    column->addLayout(row);
    column->addStretch();
    connect(start, &QPushButton::clicked, this, &StationForm::finish);
    connect(cancel, &QPushButton::clicked, this, &StationForm::cancelled);
    for (QLineEdit* edit : findChildren<QLineEdit*>()) {
        connect(edit, &QLineEdit::returnPressed, this, &StationForm::finish);
    }
    unitChanged();
    hoursChanged();
    // Each field is looked at once it is left; a sentence about it stands under it until it is mended.
    for (QLineEdit* edit : findChildren<QLineEdit*>()) {
        connect(edit, &QLineEdit::editingFinished, this, [this, edit] {
            if (edit->isModified()) {
                showProblem();
            }
        });
    }
}

void StationForm::hoursChanged() {
    const auto hours = hoursFromTyped(hours_->text());
    ruleLine_->setText(hourRuleExplained(static_cast<record::HourRule>(rule_->currentData().toInt()),
                                         record::Zone::named(zone_->currentText().trimmed().toStdString()),
                                         hours.value_or(std::vector<record::HourOfDay>{}), now_));
}

/// Whether a place, its elevation or a mark can be so; empty when it can.
void StationForm::showProblem() {
    QString problem;
    const auto within = [&](const TypedNumberEdit* field, double low, double high, const QString& sentence) {
        if (problem.isEmpty() && !field->isEmpty()) {
            problem = field->problem();
            if (problem.isEmpty() &&
                (field->value()->toDouble() < low || field->value()->toDouble() > high)) {
                problem = sentence;
            }
        }
    };
    within(latitude_, -90, 90, tr("Latitude runs from −90 to 90."));
    within(longitude_, -180, 180, tr("Longitude runs from −180 to 180."));
    within(elevation_, -500, 9000, tr("The elevation must lie between −500 and 9000 m; write it in metres."));
    if (const auto hours = hoursFromTyped(hours_->text()); problem.isEmpty() && !hours) {
        problem = hours.error();
    }
    if (problem.isEmpty() && !record::Zone::named(zone_->currentText().trimmed().toStdString())) {
        problem = tr("There is no time zone of that name. Choose one from the list.");
    }
    message_->setText(problem);
    message_->setVisible(!problem.isEmpty());
}

void StationForm::buildPlace() {
    name_ = new QLineEdit;
    name_->setObjectName(QStringLiteral("stationName"));
    name_->setAccessibleName(tr("name of the station"));
    name_->setMaxLength(kLongestName);
    name_->setFixedWidth(typePixels(320));
    form_->addRow(formLabel(tr("Name")), name_);
    latitude_ = numberField(tr("latitude"), tr("° north"), {});
    longitude_ = numberField(tr("longitude"), tr("° east"), {});
    latitude_->setObjectName(QStringLiteral("stationLatitude"));
    longitude_->setObjectName(QStringLiteral("stationLongitude"));
    latitude_->setToolTip(tr("Degrees and decimals, south with a minus sign."));
    longitude_->setToolTip(tr("Degrees and decimals, west with a minus sign."));
    auto* place = new QHBoxLayout;
    place->setSpacing(space::kGroup);
    place->addWidget(latitude_);
    place->addWidget(longitude_);
    form_->addRow(formLabel(tr("Place, south and west with −")), place);
    elevation_ = numberField(tr("elevation"), tr("m"), {});
    elevation_->setObjectName(QStringLiteral("stationElevation"));
    form_->addRow(formLabel(tr("Elevation above the sea")), elevation_);
}

void StationForm::buildHours() {
    hours_ = new QLineEdit(QStringLiteral("09:00, 21:00"));
    hours_->setObjectName(QStringLiteral("stationHours"));
    hours_->setAccessibleName(tr("observing hours"));
    hours_->setFixedWidth(typePixels(320));
    form_->addRow(formLabel(tr("Observing hours")), hours_);
    rule_ = new QComboBox;
    rule_->setObjectName(QStringLiteral("stationRule"));
    rule_->setAccessibleName(tr("what the hours follow"));
    for (const record::HourRule rule :
         {record::HourRule::Standard, record::HourRule::Clock, record::HourRule::Utc}) {
        rule_->addItem(hourRuleWords(rule), static_cast<int>(rule));
    }
    form_->addRow(formLabel(tr("They follow")), rule_);
    ruleLine_ = makeLabel({});
    ruleLine_->setObjectName(QStringLiteral("stationRuleLine"));
    ruleLine_->setWordWrap(true);
    ruleLine_->setMinimumWidth(typePixels(520));
    form_->addRow(QString{}, ruleLine_);
    zone_ = new QComboBox;
    zone_->setObjectName(QStringLiteral("stationZone"));
    zone_->setAccessibleName(tr("time zone"));
    zone_->setMinimumWidth(typePixels(240));
    const QString own = QString::fromUtf8(QTimeZone::systemTimeZoneId());
    fillZones(*zone_, record::Zone::named(own.toStdString()) ? own : QStringLiteral("UTC"));
    form_->addRow(formLabel(tr("Time zone")), zone_);
    connect(hours_, &QLineEdit::textChanged, this, &StationForm::hoursChanged);
    connect(rule_, &QComboBox::currentIndexChanged, this, &StationForm::hoursChanged);
    connect(zone_, &QComboBox::currentTextChanged, this, &StationForm::hoursChanged);
}

void StationForm::buildInstrument() {
    exposure_ = new QComboBox;
    exposure_->setAccessibleName(tr("how the thermometers are exposed"));
    for (const psychrometry::ExposureEntry& entry : psychrometry::exposureTable()) {
        if (entry.exposure != psychrometry::Exposure::Own) { // fitted later, from comparisons
            exposure_->addItem(exposureWords(entry.exposure), static_cast<int>(entry.exposure));
        }
    }
    exposure_->setCurrentIndex(exposure_->findData(static_cast<int>(psychrometry::Exposure::Screen)));
    exposureLine_ = makeLabel({});
    const auto explain = [this] {
        exposureLine_->setText(
            exposureExplained(static_cast<psychrometry::Exposure>(exposure_->currentData().toInt())));
    };
    connect(exposure_, &QComboBox::currentIndexChanged, this, explain);
    explain();
    form_->addRow(formLabel(tr("The thermometers are")), exposure_);
    form_->addRow(QString{}, exposureLine_);
    unit_ = new QComboBox;
    unit_->setObjectName(QStringLiteral("stationUnit"));
    unit_->setAccessibleName(tr("scale of the thermometers"));
    unit_->addItem(QStringLiteral("°C"), static_cast<int>(units::TemperatureUnit::Celsius));
    unit_->addItem(QStringLiteral("°F"), static_cast<int>(units::TemperatureUnit::Fahrenheit));
    unit_->setCurrentIndex(unit_->findData(static_cast<int>(usualUnit(locale()))));
    connect(unit_, &QComboBox::currentIndexChanged, this, &StationForm::unitChanged);
    step_ = new QComboBox;
    step_->setAccessibleName(tr("finest step that is read"));
    step_->addItem(tr("tenths"), QStringLiteral("0.1"));
    step_->addItem(tr("fifths"), QStringLiteral("0.2"));
    step_->addItem(tr("halves"), QStringLiteral("0.5"));
    step_->addItem(tr("whole degrees"), QStringLiteral("1"));
    auto* scale = new QHBoxLayout;
    scale->setSpacing(space::kGroup);
    scale->addWidget(unit_);
    scale->addWidget(makeLabel(tr("read to")));
    scale->addWidget(step_);
    scale->addStretch();
    form_->addRow(formLabel(tr("Scale")), scale);
    lowest_ = numberField(tr("lowest mark"), QStringLiteral("°C"), {});
    highest_ = numberField(tr("highest mark"), QStringLiteral("°C"), {});
    auto* marks = new QHBoxLayout;
    marks->setSpacing(space::kGroup);
    marks->addWidget(lowest_);
    marks->addWidget(makeLabel(tr("to")));
    marks->addWidget(highest_);
    form_->addRow(formLabel(tr("Marks run from")), marks);
}

void StationForm::unitChanged() {
    const auto unit = static_cast<units::TemperatureUnit>(unit_->currentData().toInt());
    const bool celsius = unit == units::TemperatureUnit::Celsius;
    for (TypedNumberEdit* field : {lowest_, highest_}) {
        field->setSuffix(unitWords(unit));
    }
    lowest_->setValue({-40, 0}); // −40 is the same cold on both scales
    highest_->setValue(celsius ? units::Decimal{60, 0} : units::Decimal{140, 0});
}

tl::expected<record::NewStation, QString> StationForm::station() const {
    record::NewStation station;
    station.name = name_->text().trimmed().toStdString();
    if (station.name.empty()) {
        return tl::unexpected(tr("Give the station a name, so that its book can be told from others."));
    }
    for (const TypedNumberEdit* field : {latitude_, longitude_, elevation_, lowest_, highest_}) {
        if (field->isEmpty()) {
            return tl::unexpected(
                tr("Write the %1: the checks and the pressure need it.").arg(field->what()));
        }
        if (const QString problem = field->problem(); !problem.isEmpty()) {
            return tl::unexpected(problem);
        }
    }
    station.position = {latitude_->value()->toDouble(), longitude_->value()->toDouble()};
    if (station.position.latitude < -90 || station.position.latitude > 90 ||
        station.position.longitude < -180 || station.position.longitude > 180) {
        return tl::unexpected(
            tr("There is no such place: latitude runs from −90 to 90, longitude from −180 to 180."));
    }
    const double metres = elevation_->value()->toDouble();
    if (metres < -500 || metres > 9000) {
        return tl::unexpected(tr("The elevation must lie between −500 and 9000 m; write it in metres."));
    }
    station.elevation = units::Elevation::fromMetres(metres);
    station.zone = zone_->currentText().trimmed().toStdString();
    if (!record::Zone::named(station.zone)) {
        return tl::unexpected(tr("There is no time zone of that name. Choose one from the list."));
    }
    const auto hours = hoursFromTyped(hours_->text());
    if (!hours) {
        return tl::unexpected(hours.error());
    }
    station.hours = *hours;
    station.hourRule = static_cast<record::HourRule>(rule_->currentData().toInt());
    station.exposure = static_cast<psychrometry::Exposure>(exposure_->currentData().toInt());
    station.unit = static_cast<units::TemperatureUnit>(unit_->currentData().toInt());
    station.step = *units::parseDecimal(step_->currentData().toString().toStdString());
    station.lowestMark = *lowest_->value();
    station.highestMark = *highest_->value();
    if (station.lowestMark.toDouble() >= station.highestMark.toDouble()) {
        return tl::unexpected(tr("The lowest mark of the scale must lie below the highest."));
    }
    return station;
}

void StationForm::focusFirst() {
    name_->setFocus(Qt::OtherFocusReason);
}

void StationForm::finish() {
    const auto made = station();
    message_->setVisible(!made);
    if (!made) {
        message_->setText(made.error());
        return;
    }
    emit finished(*made);
}

} // namespace wickbook::ui
