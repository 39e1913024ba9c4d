// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/reading_choices.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/takein/takein_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QTimeZone>

namespace wickbook::ui {

namespace {

constexpr int kAsFound = -1;
constexpr int kColumns = 4;

template <typename T>
void addItem(QComboBox& box, const QString& words, T value) {
    box.addItem(words, static_cast<int>(value));
}

template <typename T>
void choose(QComboBox& box, T value) {
    box.setCurrentIndex(std::max(0, box.findData(static_cast<int>(value))));
}

template <typename T>
T chosen(const QComboBox& box) {
    return static_cast<T>(box.currentData().toInt());
}

} // namespace

QComboBox* ReadingChoices::add(QGridLayout& grid, int place, const QString& label, const char* name) {
    auto* box = new QComboBox;
    box->setObjectName(QLatin1String(name));
    box->setAccessibleName(label);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(18);
    auto* words = makeLabel(label);
    words->setBuddy(box);
    grid.addWidget(words, 2 * (place / kColumns), place % kColumns);
    grid.addWidget(box, 2 * (place / kColumns) + 1, place % kColumns);
    return box;
}

ReadingChoices::ReadingChoices(const QString& stationZone, QWidget* parent) : QWidget(parent) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kBetween);
    grid->setVerticalSpacing(space::kStep);
    begins_ = add(*grid, 0, tr("The file begins with"), "takeInBegins");
    addItem(*begins_, tr("a line of names"), 0);
    addItem(*begins_, tr("a reading"), 1);
    separator_ = add(*grid, 1, tr("Between the cells stands a"), "takeInSeparator");
    addItem(*separator_, tr("mark as found"), kAsFound);
    for (const char mark : {',', ';', '\t'}) {
        addItem(*separator_, separatorWords(mark), mark);
    }
    unit_ = add(*grid, 2, tr("The bulbs were read in"), "takeInUnit");
    addItem(*unit_, tr("the unit in the names, or the station's"), kAsFound);
    addItem(*unit_, tr("°C"), units::TemperatureUnit::Celsius);
    addItem(*unit_, tr("°F"), units::TemperatureUnit::Fahrenheit);
    decimal_ = add(*grid, 3, tr("Decimal mark"), "takeInDecimal");
    addItem(*decimal_, tr("comma or point"), units::DecimalMark::Either);
    addItem(*decimal_, tr("point"), units::DecimalMark::Point);
    addItem(*decimal_, tr("comma"), units::DecimalMark::Comma);
    dates_ = add(*grid, 4, tr("Dates like 3/4/2025 are"), "takeInDates");
    addItem(*dates_, tr("as the other dates show"), exchange::DateOrder::Unknown);
    addItem(*dates_, tr("day, then month"), exchange::DateOrder::DayFirst);
    addItem(*dates_, tr("month, then day"), exchange::DateOrder::MonthFirst);
    zone_ = add(*grid, 5, tr("Times without an offset are by"), "takeInZone");
    zone_->setEditable(true);
    zone_->addItem(tr("the station's clock (%1)").arg(stationZone));
    zone_->addItem(QStringLiteral("UTC"));
    for (const QByteArray& name : QTimeZone::availableTimeZoneIds()) {
        zone_->addItem(QString::fromLatin1(name));
    }
    twice_ = add(*grid, 6, tr("Times the clock showed twice are"), "takeInTwice");
    addItem(*twice_, tr("left out"), exchange::DoubleTimes::Reject);
    addItem(*twice_, tr("the earlier"), exchange::DoubleTimes::Earlier);
    addItem(*twice_, tr("the later"), exchange::DoubleTimes::Later);
    for (int column = 0; column < kColumns; ++column) {
        grid->setColumnStretch(column, 1);
    }
    for (QComboBox* box : {unit_, decimal_, dates_, zone_, twice_}) {
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            if (!filling_) {
                emit changed();
            }
        });
    }
    connect(zone_, &QComboBox::editTextChanged, this, [this] {
        if (!filling_) {
            emit changed();
        }
    });
    for (QComboBox* box : {begins_, separator_}) {
        connect(box, &QComboBox::currentIndexChanged, this, [this] {
            if (!filling_) {
                emit shapeChanged();
            }
        });
    }
}

void ReadingChoices::showFound(const exchange::CsvFormat& format, bool headless) {
    filling_ = true;
    separator_->setItemText(0, tr("%1, as found").arg(separatorWords(format.separator)));
    begins_->setCurrentIndex(headless ? 1 : 0);
    filling_ = false;
}

void ReadingChoices::setOptions(const exchange::ImportOptions& options) {
    filling_ = true;
    choose(*unit_, options.unit ? static_cast<int>(*options.unit) : kAsFound);
    choose(*decimal_, options.decimal);
    choose(*dates_, options.dateOrder);
    choose(*twice_, options.doubleTimes);
    if (options.zone) {
        zone_->setCurrentText(QString::fromStdString(options.zone->name()));
    } else {
        zone_->setCurrentIndex(0);
    }
    filling_ = false;
}

std::optional<char> ReadingChoices::separator() const {
    const int mark = separator_->currentData().toInt();
    return mark == kAsFound ? std::nullopt : std::optional{static_cast<char>(mark)};
}

bool ReadingChoices::headless() const {
    return begins_->currentIndex() == 1;
}

exchange::ImportOptions ReadingChoices::options() const {
    exchange::ImportOptions options;
    options.headless = headless();
    options.separator = separator();
    if (unit_->currentData().toInt() != kAsFound) {
        options.unit = chosen<units::TemperatureUnit>(*unit_);
        // What the person says goes before what the names say.
        for (const auto field : {exchange::ImportField::Dry, exchange::ImportField::Wet,
                                 exchange::ImportField::Maximum, exchange::ImportField::Minimum}) {
            options.columnUnits[field] = *options.unit;
        }
    }
    options.decimal = chosen<units::DecimalMark>(*decimal_);
    options.dateOrder = chosen<exchange::DateOrder>(*dates_);
    options.doubleTimes = chosen<exchange::DoubleTimes>(*twice_);
    if (zone_->currentText() != zone_->itemText(0)) {
        options.zone = record::Zone::named(zone_->currentText().trimmed().toStdString());
    }
    return options;
}

QString ReadingChoices::problem() const {
    const bool known = zone_->currentText() == zone_->itemText(0) ||
                       record::Zone::named(zone_->currentText().trimmed().toStdString()).has_value();
    return known ? QString{} : tr("There is no time zone of that name. Choose one from the list.");
}

} // namespace wickbook::ui
