// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/salt_check_form.h"

#include "ui/dated/note_length.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/instrument_words.h"
#include "ui/text/number_words.h"

#include <QLabel>
#include <QLineEdit>

namespace wickbook::ui {

namespace {

/// A sensor may overshoot; further off it is not a relative humidity.
constexpr double kHighestShown = 110;

QString saltLabel(const comparison::SaltPoint& point) {
    const std::string_view name = record::saltName(point.salt);
    return SaltCheckForm::tr("%1, %2 %")
        .arg(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())))
        .arg(point.humidity, 0, 'f', 0);
}

} // namespace

SaltCheckForm::SaltCheckForm(Session& session, const std::optional<record::SaltCheck>& known,
                             const QLocale& locale, QWidget* parent)
    : FactForm(
          tr("Salt check"), tr("A sensor over saturated salt solutions"),
          tr("It checks an electronic sensor, not a psychrometer. Wet slurry of the salt in a closed jar, "
             "near "
             "25 °C, several hours until it stands still. Lithium chloride is poisonous: gloves, no kitchen "
             "vessels, local rules for disposal. A field may stay empty."),
          parent)
    , session_(session)
    , locale_(locale) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.date = session.today();
        start_.observer = session.observer().toStdString();
    }
    date_ = addLine(tr("Date, year-month-day"), "saltDate",
                    QString::fromStdString(record::dateText(start_.date)));
    sensor_ = addLine(tr("Sensor"), "saltSensor", QString::fromStdString(start_.sensor));
    temperature_ = new TypedNumberEdit(tr("temperature of the solutions"));
    temperature_->setSuffix(tr("°C"));
    if (start_.temperature) {
        temperature_->setValue(*start_.temperature);
    }
    addRow(tr("Temperature"), temperature_, "saltTemperature");
    for (const comparison::SaltPoint& point : comparison::saltPoints()) {
        const auto at = static_cast<std::size_t>(point.salt);
        const QString label = saltLabel(point);
        readings_.at(at) = new TypedNumberEdit(tr("reading over %1").arg(label));
        readings_.at(at)->setSuffix(tr("% read"));
        for (const record::SaltReading& reading : start_.readings) {
            if (reading.salt == point.salt) {
                readings_.at(at)->setValue(reading.humidity);
            }
        }
        addRow(label, readings_.at(at),
               QByteArray("salt" + QByteArray::number(static_cast<int>(at))).constData());
        connect(readings_.at(at), &QLineEdit::textChanged, this, &SaltCheckForm::showVerdict);
    }
    connect(temperature_, &QLineEdit::textChanged, this, &SaltCheckForm::showVerdict);
    note_ = addLine(tr("Note"), "saltNote", QString::fromStdString(start_.note));
    note_->setMaxLength(kLongestNote);
    verdict_ = makeLabel({}, TypeSize::Body, false);
    verdict_->setObjectName(QStringLiteral("saltVerdict"));
    verdict_->setWordWrap(true);
    addWide(verdict_);
    showVerdict();
    finish();
    sensor_->setFocus();
}

tl::expected<record::SaltCheck, QString> SaltCheckForm::read() const {
    record::SaltCheck made = start_;
    const auto date = record::parseDate(date_->text().trimmed().toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), date_->text()));
    }
    if (*date > session_.today()) {
        return tl::unexpected(tr("Write it down once it has happened; this date is still to come."));
    }
    made.date = *date;
    made.sensor = sensor_->text().trimmed().toStdString();
    if (!temperature_->isEmpty() && !temperature_->value()) {
        return tl::unexpected(temperature_->problem());
    }
    made.temperature = temperature_->value();
    made.readings.clear();
    for (int salt = 0; salt < record::kSalts; ++salt) {
        const TypedNumberEdit& field = *readings_.at(static_cast<std::size_t>(salt));
        if (field.isEmpty()) {
            continue;
        }
        if (!field.value()) {
            return tl::unexpected(field.problem());
        }
        const double shown = field.value()->toDouble();
        if (shown < 0 || shown > kHighestShown) {
            return tl::unexpected(
                tr("%1 is not a relative humidity. Look at the %2.").arg(field.text(), field.what()));
        }
        made.readings.push_back({static_cast<record::Salt>(salt), *field.value()});
    }
    if (made.readings.empty()) {
        return tl::unexpected(tr("Write what the sensor showed over at least one solution."));
    }
    if (made.sensor.empty()) {
        return tl::unexpected(tr("Write which sensor it was."));
    }
    made.note = note_->text().trimmed().toStdString();
    return made;
}

void SaltCheckForm::showVerdict() {
    record::SaltCheck made;
    made.temperature = temperature_->value();
    for (int salt = 0; salt < record::kSalts; ++salt) {
        if (const auto value = readings_.at(static_cast<std::size_t>(salt))->value()) {
            made.readings.push_back({static_cast<record::Salt>(salt), *value});
        }
    }
    verdict_->setText(made.readings.empty()
                          ? QString{}
                          : saltVerdictWords(locale_, comparison::judgeSalts(made)).join(QLatin1Char('\n')));
    verdict_->setVisible(!made.readings.empty());
}

QString SaltCheckForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::SaltCheck SaltCheckForm::check() const {
    return *read();
}

} // namespace wickbook::ui
