// SPDX-License-Identifier: GPL-3.0-or-later
// Values of limits, and sentences about a change of them.
#include "ui/text/limit_words.h"
#include "ui/text/number_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace wickbook::ui {

namespace {

constexpr int kMostDecimals = 3;

struct LimitChangeTextContext {
    Q_DECLARE_TR_FUNCTIONS(LimitChangeTextContext)
};

/// Without zeros that tell nothing.
QString shortNumber(const QLocale& locale, double value) {
    int decimals = 0;
    const auto rounded = [&](int places) {
        const double scale = std::pow(10.0, places);
        return std::round(value * scale) / scale;
    };
    while (decimals < kMostDecimals && std::abs(rounded(decimals) - value) > 1e-6) {
        ++decimals;
    }
    return numberWords(locale, value, decimals);
}

QString withUnit(const QString& number, const QString& unit) {
    if (unit.isEmpty()) {
        return number;
    }
    return unit == QStringLiteral("°") ? number + unit : number + kNoBreakSpace + unit;
}

/// "very-dry.lowest-humidity (ask below a humidity of)".
QString called(const std::string& name) {
    return QStringLiteral("%1 (%2)").arg(QString::fromStdString(name), limitNameWords(name));
}

/// What could have been meant: the limits of that rule, or the rules there are.
QString namesNear(const std::string& name) {
    const std::string_view rule = ruleOfLimit(name);
    QStringList limits;
    QStringList rules;
    for (const checks::LimitEntry& entry : checks::limitTable()) {
        const auto of = [](std::string_view text) {
            return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
        };
        if (ruleOfLimit(entry.name) == rule) {
            limits << of(entry.name);
        }
        if (rules.isEmpty() || rules.back() != of(ruleOfLimit(entry.name))) {
            rules << of(ruleOfLimit(entry.name));
        }
    }
    return limits.isEmpty()
               ? LimitChangeTextContext::tr("The rules with limits are %1.")
                     .arg(rules.join(QStringLiteral(", ")))
               : LimitChangeTextContext::tr("That rule has %1.").arg(limits.join(QStringLiteral(", ")));
}

QString count(std::size_t readings) {
    const int number = static_cast<int>(readings);
    return number == 1 ? LimitChangeTextContext::tr("1 reading")
                       : LimitChangeTextContext::tr("%n readings", nullptr, number);
}

} // namespace

QString limitValueWords(const QLocale& locale, const checks::LimitEntry& entry, double value,
                        units::TemperatureUnit unit) {
    return withUnit(shortNumber(locale, shownLimit(entry, value, unit)), limitUnitWords(entry, unit));
}

QString limitRangeWords(const QLocale& locale, const checks::LimitEntry& entry, units::TemperatureUnit unit) {
    return LimitChangeTextContext::tr("%1 to %2")
        .arg(shortNumber(locale, shownLimit(entry, entry.lowest, unit)),
             limitValueWords(locale, entry, entry.highest, unit));
}

QString limitProblemWords(const QLocale& locale, const checks::LimitProblem& problem,
                          units::TemperatureUnit unit) {
    using Kind = checks::LimitProblem::Kind;
    const checks::LimitEntry* entry = checks::limitEntry(problem.name);
    if (problem.kind == Kind::Unknown || entry == nullptr) {
        return LimitChangeTextContext::tr("There is no limit %1. %2")
            .arg(QString::fromStdString(problem.name), namesNear(problem.name));
    }
    const QString value = limitValueWords(locale, *entry, problem.value, unit);
    switch (problem.kind) {
    case Kind::Fixed:
        return LimitChangeTextContext::tr("%1 stays at %2: the humidity itself is worked out with it.")
            .arg(called(problem.name), limitValueWords(locale, *entry, entry->value, unit));
    case Kind::NotWhole:
        return LimitChangeTextContext::tr("%1 counts %2: give a whole number from %3 instead of %4.")
            .arg(called(problem.name), limitUnitWords(*entry, unit), limitRangeWords(locale, *entry, unit),
                 shortNumber(locale, problem.value));
    case Kind::Contradicts: {
        const checks::LimitEntry* other = checks::limitEntry(problem.other);
        const QString limit =
            other == nullptr ? QString{} : limitValueWords(locale, *other, problem.otherValue, unit);
        return (problem.mustBeBelow ? LimitChangeTextContext::tr(
                                          "%1 can't be %2, above %3 at %4: give %4 or less, or change both.")
                                    : LimitChangeTextContext::tr(
                                          "%1 can't be %2, below %3 at %4: give %4 or more, or change both."))
            .arg(called(problem.name), value, called(problem.other), limit);
    }
    case Kind::OutOfRange:
    case Kind::Unknown:
        break;
    }
    return LimitChangeTextContext::tr("%1 can't be %2: it may be %3.")
        .arg(called(problem.name), std::isfinite(problem.value) ? value : LimitChangeTextContext::tr("that"),
             limitRangeWords(locale, *entry, unit));
}

QString limitPreviewWords(const desk::LimitPreview& preview) {
    if (preview.readings == 0) {
        return LimitChangeTextContext::tr("There are no readings yet that this could change.");
    }
    if (preview.changed == 0) {
        return LimitChangeTextContext::tr("Of %1 in the book none would be judged otherwise.")
            .arg(count(preview.readings));
    }
    QStringList parts;
    const auto part = [&](std::size_t number, const QString& text) {
        if (number > 0) {
            parts << text.arg(static_cast<int>(number));
        }
    };
    part(preview.newlyMarked, LimitChangeTextContext::tr("%1 that are quiet now would be asked about"));
    part(preview.noLonger, LimitChangeTextContext::tr("%1 would be asked about no longer"));
    part(preview.setAside, LimitChangeTextContext::tr("%1 more would be left out of means until judged"));
    part(preview.takenIn, LimitChangeTextContext::tr("%1 would count in means again"));
    QString words = LimitChangeTextContext::tr("Of %1 in the book %2 would be judged otherwise")
                        .arg(count(preview.readings), QString::number(preview.changed));
    return words + (parts.isEmpty() ? QString{} : QStringLiteral(": ") + parts.join(QStringLiteral(", "))) +
           QLatin1Char('.');
}

} // namespace wickbook::ui
