// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/takein_memory.h"

#include <QCryptographicHash>
#include <QSettings>

namespace wickbook::ui {

namespace {

QString digest(const QByteArray& bytes) {
    return QString::fromLatin1(QCryptographicHash::hash(bytes, QCryptographicHash::Sha1).toHex().left(20));
}

} // namespace

QString TakeInMemory::group(const std::vector<std::string>& header) const {
    QByteArray bytes;
    for (const std::string& cell : header) {
        bytes += QByteArray::fromStdString(cell) + '\x1f';
    }
    return QStringLiteral("takein-%1/%2").arg(digest(book_.toUtf8()), digest(bytes));
}

void TakeInMemory::remember(const std::vector<std::string>& header, const exchange::ImportOptions& options) {
    if (file_.isEmpty() || !options.layout) {
        return;
    }
    QSettings settings(file_, QSettings::IniFormat);
    settings.beginGroup(group(header));
    QStringList layout;
    for (const auto& field : *options.layout) {
        layout << (field ? QString::fromLatin1(exchange::fieldName(*field).data()) : QStringLiteral("-"));
    }
    settings.setValue(QStringLiteral("layout"), layout);
    settings.setValue(QStringLiteral("unit"), options.unit ? static_cast<int>(*options.unit) : -1);
    settings.setValue(QStringLiteral("decimal"), static_cast<int>(options.decimal));
    settings.setValue(QStringLiteral("dates"), static_cast<int>(options.dateOrder));
    settings.setValue(QStringLiteral("double"), static_cast<int>(options.doubleTimes));
    settings.setValue(QStringLiteral("zone"),
                      options.zone ? QString::fromStdString(options.zone->name()) : QString{});
}

std::optional<exchange::ImportOptions>
TakeInMemory::remembered(const std::vector<std::string>& header) const {
    if (file_.isEmpty()) {
        return std::nullopt;
    }
    QSettings settings(file_, QSettings::IniFormat);
    settings.beginGroup(group(header));
    const QStringList names = settings.value(QStringLiteral("layout")).toStringList();
    if (names.size() != static_cast<qsizetype>(header.size())) {
        return std::nullopt;
    }
    exchange::ImportOptions options;
    options.layout.emplace();
    for (const QString& name : names) {
        options.layout->push_back(exchange::fieldFromName(name.toStdString()));
    }
    // The file may have been written to by hand: anything out of range is nothing remembered.
    const auto number = [&](const char* key, int lowest, int highest) {
        return std::clamp(settings.value(QLatin1String(key)).toInt(), lowest, highest);
    };
    if (const int unit = number("unit", -1, 1); unit >= 0) {
        options.unit = static_cast<units::TemperatureUnit>(unit);
    }
    options.decimal = static_cast<units::DecimalMark>(number("decimal", 0, 2));
    options.dateOrder = static_cast<exchange::DateOrder>(number("dates", 0, 2));
    options.doubleTimes = static_cast<exchange::DoubleTimes>(number("double", 0, 2));
    if (const QString zone = settings.value(QStringLiteral("zone")).toString(); !zone.isEmpty()) {
        options.zone = record::Zone::named(zone.toStdString());
    }
    return options;
}

} // namespace wickbook::ui
