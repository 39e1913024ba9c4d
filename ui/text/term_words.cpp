// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/term_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

namespace {
struct TermText {
    Q_DECLARE_TR_FUNCTIONS(TermText)
};
} // namespace

QString exposureWords(psychrometry::Exposure exposure) {
    switch (exposure) {
    case psychrometry::Exposure::Aspirated:
        return TermText::tr("drawn by a fan");
    case psychrometry::Exposure::Whirled:
        return TermText::tr("whirled by hand");
    case psychrometry::Exposure::SlingUs:
        return TermText::tr("sling, US practice");
    case psychrometry::Exposure::Screen:
        return TermText::tr("in a louvred screen");
    case psychrometry::Exposure::Still:
        return TermText::tr("still air indoors");
    case psychrometry::Exposure::Own:
        return TermText::tr("own coefficient");
    }
    return {};
}

QString exposureExplained(psychrometry::Exposure exposure) {
    switch (exposure) {
    case psychrometry::Exposure::Aspirated:
        return TermText::tr("A fan draws air past both bulbs at 2.5 m/s or more.");
    case psychrometry::Exposure::Whirled:
        return TermText::tr("The frame is whirled by hand, 3 m/s or more at the bulbs.");
    case psychrometry::Exposure::SlingUs:
        return TermText::tr("A sling with the coefficient of the older US tables.");
    case psychrometry::Exposure::Screen:
        return TermText::tr("Both thermometers hang in a louvred screen, in natural air of about 1 m/s.");
    case psychrometry::Exposure::Still:
        return TermText::tr("No ventilation. The humidity is only a rough guide.");
    case psychrometry::Exposure::Own:
        return TermText::tr("A coefficient fitted by comparison at this station.");
    }
    return {};
}

QString wickWords(record::WickState wick) {
    switch (wick) {
    case record::WickState::Water:
        return TermText::tr("water");
    case record::WickState::Ice:
        return TermText::tr("ice");
    case record::WickState::NotGiven:
        break;
    }
    return {};
}

QString weatherWords(record::Weather weather) {
    switch (weather) {
    case record::Weather::Haze:
        return TermText::tr("haze");
    case record::Weather::Mist:
        return TermText::tr("mist");
    case record::Weather::Fog:
        return TermText::tr("fog");
    case record::Weather::Drizzle:
        return TermText::tr("drizzle");
    case record::Weather::Rain:
        return TermText::tr("rain");
    case record::Weather::Snow:
        return TermText::tr("snow");
    case record::Weather::Sleet:
        return TermText::tr("sleet");
    case record::Weather::Hail:
        return TermText::tr("hail");
    case record::Weather::Thunder:
        return TermText::tr("thunder");
    case record::Weather::Dew:
        return TermText::tr("dew");
    case record::Weather::HoarFrost:
        return TermText::tr("hoar frost");
    case record::Weather::Rime:
        return TermText::tr("rime");
    case record::Weather::Glaze:
        return TermText::tr("glaze");
    }
    return {};
}

QString weatherSetWords(const std::optional<record::WeatherSet>& weather) {
    if (!weather) {
        return {};
    }
    if (weather->empty()) {
        return TermText::tr("none");
    }
    QStringList words;
    for (const record::Weather one : weather->all()) {
        words.append(weatherWords(one));
    }
    return words.join(QStringLiteral(", "));
}

QString originWords(record::Origin origin) {
    switch (origin) {
    case record::Origin::Observed:
        return TermText::tr("observed");
    case record::Origin::Corrected:
        return TermText::tr("corrected");
    case record::Origin::Estimated:
        return TermText::tr("estimated");
    case record::Origin::Missing:
        return TermText::tr("missing");
    }
    return {};
}

QString qualityWords(record::Quality quality) {
    switch (quality) {
    case record::Quality::NotJudged:
        return TermText::tr("not judged");
    case record::Quality::Sound:
        return TermText::tr("sound");
    case record::Quality::Doubtful:
        return TermText::tr("doubtful");
    case record::Quality::Erroneous:
        return TermText::tr("erroneous");
    }
    return {};
}

QString hourRuleWords(record::HourRule rule) {
    switch (rule) {
    case record::HourRule::Utc:
        return TermText::tr("UTC");
    case record::HourRule::Standard:
        return TermText::tr("standard time, all the year");
    case record::HourRule::Clock:
        return TermText::tr("the clock, with summer time");
    }
    return {};
}

QString pressureSourceWords(record::PressureSource source) {
    return source == record::PressureSource::Read          ? TermText::tr("read")
           : source == record::PressureSource::StationMean ? TermText::tr("station mean")
                                                           : TermText::tr("from elevation");
}

QString withheldWords(climate::Withheld withheld, const climate::CompletenessRule& rule) {
    const climate::CompletenessRule usual;
    const bool isUsual = rule.daysMissing == usual.daysMissing && rule.daysInARow == usual.daysInARow;
    const QString source = isUsual ? TermText::tr("WMO-No. 1203") : TermText::tr("this station's rule");
    switch (withheld) {
    case climate::Withheld::No:
        return {};
    case climate::Withheld::TooManyMissing:
        return TermText::tr("No mean: %1 or more days are missing (%2).")
            .arg(QString::number(rule.daysMissing), source);
    case climate::Withheld::TooManyInARow:
        return TermText::tr("No mean: %1 or more days in a row are missing (%2).")
            .arg(QString::number(rule.daysInARow), source);
    case climate::Withheld::NothingRead:
        return TermText::tr("No mean: nothing was read.");
    }
    return {};
}

QString inventedWords() {
    return TermText::tr("invented station");
}

QStringList cautionWords() {
    return {
        TermText::tr("Whirl in clear space, away from people, walls and glasses: keep 1.5 m clear. Check the "
                     "cord, the "
                     "swivel "
                     "and the binding first. Not in a thunderstorm, and mind the ground underfoot."),
        TermText::tr(
            "Broken glass cuts. Spilled mercury is poisonous: leave the room, air it, use neither broom nor "
            "vacuum "
            "cleaner, and follow your local rules for disposal. Prefer spirit thermometers."),
        TermText::tr(
            "In frost look out for ice on the path, the ladder and the screen; in heat, for yourself."),
        TermText::tr(
            "These numbers serve a weather register. They are not for aviation, heat stress, spraying, "
            "burning, frost "
            "protection, food or process safety, medical or legal decisions, nor for claims of records: "
            "those "
            "need "
            "instruments and people licensed for them."),
    };
}

} // namespace wickbook::ui
