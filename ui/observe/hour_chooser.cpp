// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/hour_chooser.h"

#include "core/desk/wick_care.h"
#include "core/record/observing_hours.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/time_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QRegularExpression>
#include <QSignalBlocker>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr std::chrono::minutes kBeforeHour{30};
constexpr std::chrono::minutes kAtHour{5};

QString dateFormat(const QLocale& locale) {
    QString format = locale.dateFormat(QLocale::ShortFormat);
    if (!format.contains(QLatin1String("yyyy"))) {
        format.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    }
    return format;
}

} // namespace

QDate dateFromTyped(const QLocale& locale, const QString& typed, int yearToAssume) {
    const QString text = typed.trimmed();
    if (const QDate iso = QDate::fromString(text, Qt::ISODate); iso.isValid()) {
        return iso;
    }
    if (const QDate own = locale.toDate(text, dateFormat(locale)); own.isValid()) {
        return own;
    }
    static const QRegularExpression twoOrThree(
        QStringLiteral("^(\\d{1,2})[./ -](\\d{1,2})(?:[./ -](\\d{2}|\\d{4})?)?$"));
    const QRegularExpressionMatch match = twoOrThree.match(text);
    if (!match.hasMatch()) {
        return {};
    }
    const bool monthFirst = dateFormat(locale).startsWith(QLatin1Char('M'));
    const int first = match.captured(1).toInt();
    const int second = match.captured(2).toInt();
    int year = match.captured(3).isEmpty() ? yearToAssume : match.captured(3).toInt();
    if (match.captured(3).size() == 2) {
        year += yearToAssume / 100 * 100;
    }
    return monthFirst ? QDate(year, first, second) : QDate(year, second, first);
}

namespace {

/// Wetting and freezing take ten to fifteen minutes, so frost is prepared for first of all.
QString beforeWords(psychrometry::Exposure exposure, bool whirled, bool frostLikely) {
    if (whirled) {
        return frostLikely
                   ? HourChooser::tr("frost is likely: wet the wick now and touch it with ice; hang "
                                     "the frame out in the shade, look at the columns")
                   : HourChooser::tr("hang the frame out in the shade, look at the wick and the columns");
    }
    if (frostLikely && exposure == psychrometry::Exposure::Screen) {
        return HourChooser::tr("frost is likely: take the reservoir away and brush a little ice-cold water "
                               "on the wick now; look at the columns");
    }
    return frostLikely
               ? HourChooser::tr("frost is likely: wet the wick now; look at the wick and the columns")
               : HourChooser::tr("look at the wick and the columns");
}

} // namespace

QString guidanceFor(const record::StationRecord& station, const EntryText& entry, record::Instant now,
                    bool frostLikely, std::optional<int> wickDays) {
    const record::StationPeriod& period = station.periodAt(now);
    const QString clock = clockWords(now, period.zone.offsetAt(now));
    const auto moment =
        entry.hourMinutes < 0 || !entry.date.isValid()
            ? std::nullopt
            : record::momentOf(station, {fromQDate(entry.date), std::chrono::minutes{entry.hourMinutes}});
    const QString nowWords = HourChooser::tr("now %1").arg(clock);
    if (!moment) {
        return nowWords;
    }
    const std::chrono::seconds ahead = *moment - now;
    if (ahead > kBeforeHour || ahead < -std::chrono::seconds{std::chrono::minutes{60}}) {
        return nowWords;
    }
    const bool whirled = period.exposure == psychrometry::Exposure::Whirled ||
                         period.exposure == psychrometry::Exposure::SlingUs;
    QString what;
    if (ahead > kAtHour) {
        what = beforeWords(period.exposure, whirled, frostLikely);
        if (wickDays && *wickDays >= desk::kWickDays) {
            what += QStringLiteral("; ") + HourChooser::tr("the wick is %1 days old").arg(*wickDays);
        }
    } else {
        what = whirled ? HourChooser::tr("whirl until the wet bulb falls no further, read the wet bulb first")
                       : HourChooser::tr("read the dry bulb first, tenths before whole degrees");
    }
    return nowWords + QStringLiteral(" · ") + what;
}

HourChooser::HourChooser(QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kStep);
    heading_ = makeHeading({});
    heading_->setObjectName(QStringLiteral("observeHeading"));
    guidance_ = makeLabel({});
    guidance_->setWordWrap(true);
    column->addWidget(heading_);
    column->addWidget(guidance_);

    auto* row = new QHBoxLayout;
    row->setSpacing(space::kGroup);
    const auto button = [&](const QString& sign, const QString& name) {
        auto* made = new QPushButton(sign);
        made->setProperty("quiet", true);
        made->setAccessibleName(name);
        made->setToolTip(name);
        return made;
    };
    earlier_ = button(QStringLiteral("‹"), tr("the hour before"));
    later_ = button(QStringLiteral("›"), tr("the hour after"));
    dateEdit_ = new QLineEdit;
    dateEdit_->setObjectName(QStringLiteral("observeDate"));
    dateEdit_->setAccessibleName(tr("date"));
    dateEdit_->setFixedWidth(typePixels(118));
    hour_ = new QComboBox;
    hour_->setObjectName(QStringLiteral("observeHour"));
    hour_->setAccessibleName(tr("observing hour"));
    clock_ = new QLineEdit;
    clock_->setObjectName(QStringLiteral("observeClock"));
    clock_->setAccessibleName(tr("read at, by the clock"));
    clock_->setFixedWidth(typePixels(72));
    clock_->setToolTip(tr("Left empty: now, or for an older reading the hour itself."));
    which_ = new QComboBox;
    which_->setAccessibleName(tr("which of the two"));
    which_->addItems({tr("the first time"), tr("the second time")});
    which_->hide();
    for (QWidget* widget : {static_cast<QWidget*>(earlier_), static_cast<QWidget*>(dateEdit_),
                            static_cast<QWidget*>(hour_), static_cast<QWidget*>(later_)}) {
        row->addWidget(widget);
    }
    QLabel* readAt = makeLabel(tr("read at"));
    readAt->setBuddy(clock_);
    row->addSpacing(space::kGroup);
    row->addWidget(readAt);
    row->addWidget(clock_);
    row->addWidget(which_);
    row->addStretch();
    column->addLayout(row);
    QWidget* const order[] = {earlier_, dateEdit_, hour_, later_, clock_, which_};
    for (std::size_t index = 1; index < std::size(order); ++index) {
        setTabOrder(order[index - 1], order[index]);
    }

    connect(earlier_, &QPushButton::clicked, this, [this] { step(-1); });
    connect(later_, &QPushButton::clicked, this, [this] { step(1); });
    connect(dateEdit_, &QLineEdit::editingFinished, this, &HourChooser::readFields);
    connect(clock_, &QLineEdit::textChanged, this, [this] {
        if (!showing_) {
            emit changed();
        }
    });
    connect(hour_, &QComboBox::activated, this, &HourChooser::readFields);
    connect(which_, &QComboBox::activated, this, &HourChooser::changed);
}

void HourChooser::setStation(const record::StationRecord& station) {
    station_ = &station;
    fillHours();
}

bool HourChooser::isBeingTyped() const {
    return dateEdit_->hasFocus() && dateEdit_->isModified();
}

void HourChooser::fillHours() {
    const QSignalBlocker quiet(hour_);
    hour_->clear();
    if (station_ != nullptr && date_.isValid()) {
        for (const record::ExpectedHour& expected :
             record::expectedHours(*station_, fromQDate(date_), fromQDate(date_))) {
            hour_->addItem(hourWords(expected.hour.hour), static_cast<int>(expected.hour.hour.count()));
        }
    }
    hour_->addItem(tr("an extra reading"), -1);
    int index = hour_->findData(hourMinutes_);
    if (index < 0) {
        index = hourMinutes_ < 0 ? hour_->count() - 1 : 0;
        hourMinutes_ = hour_->itemData(index).toInt();
    }
    hour_->setCurrentIndex(index);
}

void HourChooser::show(const EntryText& entry) {
    showing_ = true;
    date_ = entry.date;
    hourMinutes_ = entry.hourMinutes;
    fillHours();
    dateEdit_->setText(QLocale().toString(date_, dateFormat(QLocale())));
    clock_->setText(entry.clock);
    which_->setCurrentIndex(entry.secondOfDouble ? 1 : 0);
    showHeading();
    showing_ = false;
}

void HourChooser::read(EntryText& entry) const {
    entry.date = date_;
    entry.hourMinutes = hourMinutes_;
    entry.clock = clock_->text();
    entry.secondOfDouble = which_->isVisibleTo(this) && which_->currentIndex() == 1;
}

void HourChooser::setGuidance(const QString& sentence) {
    if (guidance_->text() != sentence) {
        guidance_->setText(sentence);
    }
}

void HourChooser::askWhich(bool cameTwice) {
    which_->setVisible(cameTwice);
}

void HourChooser::showProblem(EntryField field, const QString& sentence) {
    QLineEdit* edit = field == EntryField::Date ? dateEdit_ : field == EntryField::Clock ? clock_ : nullptr;
    for (QLineEdit* each : {dateEdit_, clock_}) {
        const bool bad = each == edit && !sentence.isEmpty();
        if (each->property("problem").toBool() != bad) {
            each->setProperty("problem", bad);
            refreshLook(*each);
        }
        each->setAccessibleDescription(bad ? sentence : QString{});
    }
}

void HourChooser::readFields() {
    if (showing_) {
        return;
    }
    const int year = date_.isValid() ? date_.year() : QDate::currentDate().year();
    const QDate typed = dateFromTyped(QLocale(), dateEdit_->text(), year);
    const int hour = hour_->currentData().toInt();
    if (typed == date_ && hour == hourMinutes_) {
        return;
    }
    if (!typed.isValid()) {
        showProblem(EntryField::Date, tr("There is no such date. Write it as day, month and year."));
        return;
    }
    date_ = typed;
    hourMinutes_ = hour;
    EntryText entry;
    read(entry);
    show(entry);
    emit changed();
}

void HourChooser::step(int direction) {
    if (station_ == nullptr || !date_.isValid()) {
        return;
    }
    const record::StationDate date = fromQDate(date_);
    const auto hours = record::expectedHours(*station_, date - date::days{8}, date + date::days{8});
    const record::ObservingHour here{date, std::chrono::minutes{std::max(hourMinutes_, 0)}};
    const record::ExpectedHour* found = nullptr;
    for (const record::ExpectedHour& each : hours) {
        if (direction < 0 && each.hour < here) {
            found = &each;
        }
        if (direction > 0 && found == nullptr && here < each.hour) {
            found = &each;
        }
    }
    if (found == nullptr) {
        return;
    }
    date_ = toQDate(found->hour.date);
    hourMinutes_ = static_cast<int>(found->hour.hour.count());
    EntryText entry;
    read(entry);
    entry.clock.clear();
    show(entry);
    emit changed();
}

void HourChooser::showHeading() {
    const QString day = date_.isValid() ? longDateWords(QLocale(), fromQDate(date_)) : tr("Choose a date");
    const QString hour =
        hourMinutes_ < 0 ? tr("an extra reading") : hourWords(std::chrono::minutes{hourMinutes_});
    heading_->setText(tr("%1, %2").arg(day, hour));
}

} // namespace wickbook::ui
