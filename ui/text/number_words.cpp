// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <cmath>

namespace wickbook::ui {

namespace {

constexpr QChar kMinus{0x2212};
constexpr QChar kEnDash{0x2013};

QString missing() {
    return QString{kEnDash};
}

/// A comma where the locale writes one, and a real minus. Other marks belong to other digits than the ones
/// used here, and an entry would not take them back.
QString dressed(const QLocale& locale, QString plain) {
    if (locale.decimalPoint() == QLatin1String(",")) {
        plain.replace(QLatin1Char('.'), QLatin1Char(','));
    }
    plain.replace(QLatin1Char('-'), kMinus);
    return plain;
}

} // namespace

QString numberWords(const QLocale& locale, std::optional<double> value, int decimals) {
    if (!value) {
        return missing();
    }
    QString plain = QString::number(*value, 'f', decimals);
    // "-0.0" says nothing that "0.0" does not.
    if (plain.startsWith(QLatin1Char('-')) && plain.toDouble() == 0.0) {
        plain.remove(0, 1);
    }
    return dressed(locale, plain);
}

QString readWords(const QLocale& locale, const units::Decimal& value) {
    return dressed(locale, QString::fromStdString(value.toText()));
}

QString readTemperatureWords(const QLocale& locale, const units::ReadTemperature& reading) {
    return readWords(locale, reading.value) + kNoBreakSpace + unitWords(reading.unit);
}

QString bulbWords(const QLocale& locale, const record::BulbReading& bulb) {
    if (bulb.belowScale) {
        return QCoreApplication::translate("text", "below scale");
    }
    return bulb.value ? readWords(locale, bulb.value->value) : missing();
}

QString unitWords(units::TemperatureUnit unit) {
    return unit == units::TemperatureUnit::Celsius ? QStringLiteral("°C") : QStringLiteral("°F");
}

QString temperatureWords(const QLocale& locale, std::optional<units::Temperature> temperature,
                         units::TemperatureUnit unit, int decimals) {
    if (!temperature) {
        return missing();
    }
    return numberWords(
        locale, unit == units::TemperatureUnit::Celsius ? temperature->celsius() : temperature->fahrenheit(),
        decimals);
}

QString differenceWords(const QLocale& locale, units::TemperatureDifference difference,
                        units::TemperatureUnit unit, int decimals) {
    return numberWords(locale,
                       unit == units::TemperatureUnit::Celsius ? difference.kelvins()
                                                               : difference.fahrenheitDegrees(),
                       decimals);
}

QString percentWords(const QLocale& locale, std::optional<double> percent) {
    return percent ? numberWords(locale, percent, 0) + kNoBreakSpace + locale.percent() : missing();
}

QString plusMinusWords(const QLocale& locale, std::optional<double> u95, int decimals) {
    if (!u95) {
        return {};
    }
    const double scale = std::pow(10.0, decimals);
    // A hair of slack, or 0.30000000000000004 would be stated as 0.4.
    const double stated = std::ceil(*u95 * scale - 1e-6) / scale;
    return QStringLiteral("±") + kNoBreakSpace + numberWords(locale, stated, decimals);
}

} // namespace wickbook::ui
