// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/term_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

namespace {
QString tr(const char* text) {
    return QCoreApplication::translate("terms", text);
}
} // namespace

QString exposureWords(psychrometry::Exposure exposure) {
    switch (exposure) {
    case psychrometry::Exposure::Aspirated:
        return tr("drawn by a fan");
    case psychrometry::Exposure::Whirled:
        return tr("whirled by hand");
    case psychrometry::Exposure::SlingUs:
        return tr("sling, US practice");
    case psychrometry::Exposure::Screen:
        return tr("in a louvred screen");
    case psychrometry::Exposure::Still:
        return tr("still air indoors");
    case psychrometry::Exposure::Own:
        return tr("own coefficient");
    }
    return {};
}

QString exposureExplained(psychrometry::Exposure exposure) {
    switch (exposure) {
    case psychrometry::Exposure::Aspirated:
        return tr("A fan draws air past both bulbs at 2.5 m/s or more.");
    case psychrometry::Exposure::Whirled:
        return tr("The frame is whirled by hand, 3 m/s or more at the bulbs.");
    case psychrometry::Exposure::SlingUs:
        return tr("A sling with the coefficient of the older US tables.");
    case psychrometry::Exposure::Screen:
        return tr("Both thermometers hang in a louvred screen, in natural air of about 1 m/s.");
    case psychrometry::Exposure::Still:
        return tr("No ventilation. The humidity is only a rough guide.");
    case psychrometry::Exposure::Own:
        return tr("A coefficient fitted by comparison at this station.");
    }
    return {};
}

QString wickWords(record::WickState wick) {
    switch (wick) {
    case record::WickState::Water:
        return tr("water");
    case record::WickState::Ice:
        return tr("ice");
    case record::WickState::NotGiven:
        break;
    }
    return {};
}

QString weatherWords(record::Weather weather) {
    switch (weather) {
    case record::Weather::Haze:
        return tr("haze");
    case record::Weather::Mist:
        return tr("mist");
    case record::Weather::Fog:
        return tr("fog");
    case record::Weather::Drizzle:
        return tr("drizzle");
    case record::Weather::Rain:
        return tr("rain");
    case record::Weather::Snow:
        return tr("snow");
    case record::Weather::Sleet:
        return tr("sleet");
    case record::Weather::Hail:
        return tr("hail");
    case record::Weather::Thunder:
        return tr("thunder");
    case record::Weather::Dew:
        return tr("dew");
    case record::Weather::HoarFrost:
        return tr("hoar frost");
    case record::Weather::Rime:
        return tr("rime");
    case record::Weather::Glaze:
        return tr("glaze");
    }
    return {};
}

QString weatherSetWords(const std::optional<record::WeatherSet>& weather) {
    if (!weather) {
        return {};
    }
    if (weather->empty()) {
        return tr("none");
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
        return tr("observed");
    case record::Origin::Corrected:
        return tr("corrected");
    case record::Origin::Estimated:
        return tr("estimated");
    case record::Origin::Missing:
        return tr("missing");
    }
    return {};
}

QString qualityWords(record::Quality quality) {
    switch (quality) {
    case record::Quality::NotJudged:
        return tr("not judged");
    case record::Quality::Sound:
        return tr("sound");
    case record::Quality::Doubtful:
        return tr("doubtful");
    case record::Quality::Erroneous:
        return tr("erroneous");
    }
    return {};
}

QString hourRuleWords(record::HourRule rule) {
    switch (rule) {
    case record::HourRule::Utc:
        return tr("UTC");
    case record::HourRule::Standard:
        return tr("standard time, all the year");
    case record::HourRule::Clock:
        return tr("the clock, with summer time");
    }
    return {};
}

QString pressureSourceWords(record::PressureSource source) {
    return source == record::PressureSource::Read ? tr("read") : tr("from elevation");
}

QString withheldWords(climate::Withheld withheld) {
    switch (withheld) {
    case climate::Withheld::No:
        return {};
    case climate::Withheld::TooManyMissing:
        return tr("No mean: 11 or more days are missing (WMO-No. 1203).");
    case climate::Withheld::TooManyInARow:
        return tr("No mean: 5 or more days in a row are missing (WMO-No. 1203).");
    case climate::Withheld::NothingRead:
        return tr("No mean: nothing was read.");
    }
    return {};
}

QString inventedWords() {
    return tr("invented station");
}

QStringList cautionWords() {
    return {
        tr("Whirl in clear space, away from people, walls and glasses: keep 1.5 m clear. Check the cord, the "
           "swivel "
           "and the binding first. Not in a thunderstorm, and mind the ground underfoot."),
        tr("Broken glass cuts. Spilled mercury is poisonous: leave the room, air it, use neither broom nor "
           "vacuum "
           "cleaner, and follow your local rules for disposal. Prefer spirit thermometers."),
        tr("In frost look out for ice on the path, the ladder and the screen; in heat, for yourself."),
        tr("These numbers serve a weather register. They are not for aviation, heat stress, spraying, "
           "burning, frost "
           "protection, food or process safety, medical or legal decisions, nor for claims of records: those "
           "need "
           "instruments and people licensed for them."),
    };
}

} // namespace wickbook::ui
