// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences for likely causes: what would have stood on the thermometer, and how it came to be written
// otherwise.
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"

#include <QCoreApplication>

#include <array>

namespace wickbook::ui {

namespace {

struct CauseText {
    Q_DECLARE_TR_FUNCTIONS(CauseText)
};

/// What one bulb's slip is called; the code is "dry-" or "wet-" and this.
struct BulbSlip {
    std::string_view kind;
    const char* words;
};

constexpr std::array kBulbSlips{
    BulbSlip{"ten-high", QT_TRANSLATE_NOOP("CauseText", "read ten high")},
    BulbSlip{"ten-low", QT_TRANSLATE_NOOP("CauseText", "read ten low")},
    BulbSlip{"five-high", QT_TRANSLATE_NOOP("CauseText", "read five high")},
    BulbSlip{"five-low", QT_TRANSLATE_NOOP("CauseText", "read five low")},
    BulbSlip{"sign", QT_TRANSLATE_NOOP("CauseText", "its sign lost or added")},
    BulbSlip{"decimal-point", QT_TRANSLATE_NOOP("CauseText", "its decimal mark lost or moved")},
    BulbSlip{"digits-exchanged", QT_TRANSLATE_NOOP("CauseText", "two digits exchanged")},
    BulbSlip{"digit-dropped", QT_TRANSLATE_NOOP("CauseText", "a digit dropped")},
    BulbSlip{"digit-doubled", QT_TRANSLATE_NOOP("CauseText", "a digit written twice")},
    BulbSlip{"digit-extra", QT_TRANSLATE_NOOP("CauseText", "a digit too many")},
    BulbSlip{"tenths-downwards",
             QT_TRANSLATE_NOOP("CauseText", "its tenths counted the wrong way below zero")},
    BulbSlip{"column-broken",
             QT_TRANSLATE_NOOP("CauseText", "its column parted: look at the thread for a gap")},
};

struct PairSlip {
    std::string_view code;
    const char* words; ///< %1 the pair as it would have stood, where the slip gives one
};

constexpr std::array kPairSlips{
    PairSlip{"swapped", QT_TRANSLATE_NOOP("CauseText", "dry and wet swapped: %1")},
    PairSlip{"both-ten-high", QT_TRANSLATE_NOOP("CauseText", "both read ten high: %1")},
    PairSlip{"both-ten-low", QT_TRANSLATE_NOOP("CauseText", "both read ten low: %1")},
    PairSlip{"both-sign", QT_TRANSLATE_NOOP("CauseText", "both signs lost or added: %1")},
    PairSlip{"both-decimal-point", QT_TRANSLATE_NOOP("CauseText", "both decimal marks lost: %1")},
    PairSlip{"fahrenheit-as-celsius", QT_TRANSLATE_NOOP("CauseText", "°F written as °C: %1")},
    PairSlip{"celsius-as-fahrenheit", QT_TRANSLATE_NOOP("CauseText", "°C written as °F: %1")},
    PairSlip{"ice-taken-for-water", QT_TRANSLATE_NOOP("CauseText", "the wick was ice, not water")},
    PairSlip{"water-taken-for-ice", QT_TRANSLATE_NOOP("CauseText", "the wick was water, not ice")},
    PairSlip{"line-above-copied", QT_TRANSLATE_NOOP("CauseText", "the line above was copied")},
    PairSlip{"dry-wick", QT_TRANSLATE_NOOP("CauseText", "the wick was dry: the wet bulb is of no use")},
};

/// As it would stand in the register; where only the corrected value is known, that.
QString bulb(const QLocale& locale, const std::optional<units::ReadTemperature>& read,
             const std::optional<double>& celsius, units::TemperatureUnit unit) {
    if (read) {
        return readTemperatureWords(locale, *read);
    }
    const auto temperature =
        celsius ? std::optional{units::Temperature::fromCelsius(*celsius)} : std::nullopt;
    return temperatureWords(locale, temperature, unit) + QChar(0x00A0) + unitWords(unit);
}

} // namespace

QString causeWords(const QLocale& locale, const checks::LikelyCause& cause, units::TemperatureUnit unit) {
    const QString dry = bulb(locale, cause.dryRead, cause.dryCelsius, unit);
    const QString wet = bulb(locale, cause.wetRead, cause.wetCelsius, unit);
    for (const PairSlip& slip : kPairSlips) {
        if (cause.code == slip.code) {
            const QString words = CauseText::tr(slip.words);
            //: %1 the dry bulb, %2 the wet bulb
            return words.contains(QStringLiteral("%1")) ? words.arg(CauseText::tr("%1 / %2").arg(dry, wet))
                                                        : words;
        }
    }
    const std::string_view code{cause.code};
    const bool isDry = code.starts_with("dry-");
    if (isDry || code.starts_with("wet-")) {
        for (const BulbSlip& slip : kBulbSlips) {
            if (code.substr(4) != slip.kind) {
                continue;
            }
            const bool known = isDry ? cause.dryRead || cause.dryCelsius : cause.wetRead || cause.wetCelsius;
            if (!known) {
                return (isDry ? CauseText::tr("dry bulb: %1") : CauseText::tr("wet bulb: %1"))
                    .arg(CauseText::tr(slip.words));
            }
            //: %1 a temperature, %2 what went wrong
            return (isDry ? CauseText::tr("dry bulb is %1, %2") : CauseText::tr("wet bulb is %1, %2"))
                .arg(isDry ? dry : wet, CauseText::tr(slip.words));
        }
    }
    return QString::fromStdString(cause.code);
}

} // namespace wickbook::ui
