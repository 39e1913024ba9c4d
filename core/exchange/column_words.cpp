// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/column_words.h"

#include "core/exchange/cell_text.h"

#include <array>

namespace wickbook::exchange {

namespace {

constexpr std::array kWords{
    FieldWord{"time_utc", ImportField::Time},
    FieldWord{"utc_time", ImportField::Time},
    FieldWord{"datetime_utc", ImportField::Time},
    FieldWord{"timestamp_utc", ImportField::Time},
    FieldWord{"timestamp", ImportField::Time},
    FieldWord{"datetime", ImportField::Time},
    FieldWord{"date_time", ImportField::Time},
    FieldWord{"time", ImportField::Time},
    FieldWord{"time_local", ImportField::Time},
    FieldWord{"local_time", ImportField::Time},
    FieldWord{"utc", ImportField::Time},
    FieldWord{"date", ImportField::Date},
    FieldWord{"local_date", ImportField::Date},
    FieldWord{"date_local", ImportField::Date},
    FieldWord{"date_utc", ImportField::Date},
    FieldWord{"hour", ImportField::Hour},
    FieldWord{"observing_hour", ImportField::Hour},
    FieldWord{"nominal_hour", ImportField::Hour},
    FieldWord{"obs_hour", ImportField::Hour},
    FieldWord{"clock", ImportField::Clock},
    FieldWord{"clock_time", ImportField::Clock},
    FieldWord{"time_of_day", ImportField::Clock},
    FieldWord{"actual_time", ImportField::Clock},
    FieldWord{"read_at", ImportField::Clock},
    FieldWord{"dry", ImportField::Dry},
    FieldWord{"dry_bulb", ImportField::Dry},
    FieldWord{"dry_read", ImportField::Dry},
    FieldWord{"dry_bulb_read", ImportField::Dry},
    FieldWord{"drybulb", ImportField::Dry},
    FieldWord{"dry_bulb_temperature", ImportField::Dry},
    FieldWord{"dry_bulb_temp", ImportField::Dry},
    FieldWord{"dry_temperature", ImportField::Dry},
    FieldWord{"dry_temp", ImportField::Dry},
    FieldWord{"t_dry", ImportField::Dry},
    FieldWord{"tdry", ImportField::Dry},
    FieldWord{"air_temperature", ImportField::Dry},
    FieldWord{"temperature", ImportField::Dry},
    FieldWord{"ta", ImportField::Dry},
    FieldWord{"wet", ImportField::Wet},
    FieldWord{"wet_bulb", ImportField::Wet},
    FieldWord{"wet_read", ImportField::Wet},
    FieldWord{"wet_bulb_read", ImportField::Wet},
    FieldWord{"wetbulb", ImportField::Wet},
    FieldWord{"wet_bulb_temperature", ImportField::Wet},
    FieldWord{"wet_bulb_temp", ImportField::Wet},
    FieldWord{"wet_temperature", ImportField::Wet},
    FieldWord{"wet_temp", ImportField::Wet},
    FieldWord{"t_wet", ImportField::Wet},
    FieldWord{"twet", ImportField::Wet},
    FieldWord{"tw", ImportField::Wet},
    FieldWord{"tb", ImportField::Wet},
    FieldWord{"wick", ImportField::Wick},
    FieldWord{"wick_state", ImportField::Wick},
    FieldWord{"water_or_ice", ImportField::Wick},
    FieldWord{"bulb_state", ImportField::Wick},
    FieldWord{"station_pressure", ImportField::Pressure},
    FieldWord{"pressure", ImportField::Pressure},
    FieldWord{"air_pressure", ImportField::Pressure},
    FieldWord{"surface_air_pressure", ImportField::Pressure},
    FieldWord{"weather", ImportField::Weather},
    FieldWord{"present_weather", ImportField::Weather},
    FieldWord{"wind_beaufort", ImportField::Wind},
    FieldWord{"wind_force", ImportField::Wind},
    FieldWord{"beaufort", ImportField::Wind},
    FieldWord{"wind", ImportField::Wind},
    FieldWord{"max", ImportField::Maximum},
    FieldWord{"maximum", ImportField::Maximum},
    FieldWord{"max_temperature", ImportField::Maximum},
    FieldWord{"maximum_temperature", ImportField::Maximum},
    FieldWord{"max_temp", ImportField::Maximum},
    FieldWord{"tmax", ImportField::Maximum},
    FieldWord{"min", ImportField::Minimum},
    FieldWord{"minimum", ImportField::Minimum},
    FieldWord{"min_temperature", ImportField::Minimum},
    FieldWord{"minimum_temperature", ImportField::Minimum},
    FieldWord{"min_temp", ImportField::Minimum},
    FieldWord{"tmin", ImportField::Minimum},
    FieldWord{"note", ImportField::Note},
    FieldWord{"notes", ImportField::Note},
    FieldWord{"remark", ImportField::Note},
    FieldWord{"remarks", ImportField::Note},
    FieldWord{"comment", ImportField::Note},
    FieldWord{"comments", ImportField::Note},
    FieldWord{"observer", ImportField::Observer},
    FieldWord{"initials", ImportField::Observer},
    FieldWord{"read_by", ImportField::Observer},
    FieldWord{"origin", ImportField::Origin},
    FieldWord{"quality", ImportField::Quality},
    FieldWord{"unit", ImportField::Unit},
    FieldWord{"units", ImportField::Unit},
    FieldWord{"temperature_unit", ImportField::Unit},
    FieldWord{"pressure_source", ImportField::PressureSource},
    FieldWord{"max_read", ImportField::Maximum},
    FieldWord{"min_read", ImportField::Minimum},
    FieldWord{"max_min_unit", ImportField::MaxMinUnit},
    FieldWord{"wick_care", ImportField::WickCare},
    FieldWord{"whirls", ImportField::Whirls},
    FieldWord{"missing_reason", ImportField::MissingReason},
    FieldWord{"from_paper", ImportField::FromPaper},
    FieldWord{"paper_book", ImportField::PaperBook},
    FieldWord{"paper_page", ImportField::PaperPage},
    FieldWord{"read_back", ImportField::ReadBack},
    FieldWord{"zone", ImportField::Zone},
    FieldWord{"utc_offset", ImportField::UtcOffset},
    FieldWord{"day", ImportField::Date},
    FieldWord{"hour_of_observation", ImportField::Hour},
    FieldWord{"dry_bulb_thermometer", ImportField::Dry},
    FieldWord{"dry_thermometer", ImportField::Dry},
    FieldWord{"wet_bulb_thermometer", ImportField::Wet},
    FieldWord{"wet_thermometer", ImportField::Wet},
    FieldWord{"obs", ImportField::Observer},
    // German.
    FieldWord{"zeitpunkt", ImportField::Time},
    FieldWord{"datum_uhrzeit", ImportField::Time},
    FieldWord{"datum", ImportField::Date},
    FieldWord{"tag", ImportField::Date},
    FieldWord{"termin", ImportField::Hour},
    FieldWord{"stunde", ImportField::Hour},
    FieldWord{"uhrzeit", ImportField::Clock},
    FieldWord{"zeit", ImportField::Clock},
    FieldWord{"trocken", ImportField::Dry},
    FieldWord{"trockenthermometer", ImportField::Dry},
    FieldWord{"trockentemperatur", ImportField::Dry},
    FieldWord{"trockenes_thermometer", ImportField::Dry},
    FieldWord{"lufttemperatur", ImportField::Dry},
    FieldWord{"feucht", ImportField::Wet},
    FieldWord{"feuchtthermometer", ImportField::Wet},
    FieldWord{"feuchttemperatur", ImportField::Wet},
    FieldWord{"feuchtes_thermometer", ImportField::Wet},
    FieldWord{"feuchtkugeltemperatur", ImportField::Wet},
    FieldWord{"nass", ImportField::Wet},
    FieldWord{"docht", ImportField::Wick},
    FieldWord{"wasser_eis", ImportField::Wick},
    FieldWord{"luftdruck", ImportField::Pressure},
    FieldWord{"stationsdruck", ImportField::Pressure},
    FieldWord{"druck", ImportField::Pressure},
    FieldWord{"wetter", ImportField::Weather},
    FieldWord{"witterung", ImportField::Weather},
    FieldWord{"windstarke", ImportField::Wind},
    FieldWord{"windstaerke", ImportField::Wind},
    FieldWord{"hochst", ImportField::Maximum},
    FieldWord{"hoechst", ImportField::Maximum},
    FieldWord{"hochsttemperatur", ImportField::Maximum},
    FieldWord{"hoechsttemperatur", ImportField::Maximum},
    FieldWord{"tiefst", ImportField::Minimum},
    FieldWord{"tiefsttemperatur", ImportField::Minimum},
    FieldWord{"bemerkung", ImportField::Note},
    FieldWord{"bemerkungen", ImportField::Note},
    FieldWord{"beobachter", ImportField::Observer},
    FieldWord{"beobachterin", ImportField::Observer},
    FieldWord{"kurzel", ImportField::Observer},
    FieldWord{"kuerzel", ImportField::Observer},
    FieldWord{"einheit", ImportField::Unit},
    // French.
    FieldWord{"date_heure", ImportField::Time},
    FieldWord{"jour", ImportField::Date},
    FieldWord{"heure", ImportField::Clock},
    FieldWord{"heure_d_observation", ImportField::Hour},
    FieldWord{"sec", ImportField::Dry},
    FieldWord{"thermometre_sec", ImportField::Dry},
    FieldWord{"thermo_sec", ImportField::Dry},
    FieldWord{"mouille", ImportField::Wet},
    FieldWord{"thermometre_mouille", ImportField::Wet},
    FieldWord{"thermo_mouille", ImportField::Wet},
    FieldWord{"humide", ImportField::Wet},
    FieldWord{"thermometre_humide", ImportField::Wet},
    FieldWord{"meche", ImportField::Wick},
    FieldWord{"pression", ImportField::Pressure},
    FieldWord{"pression_station", ImportField::Pressure},
    FieldWord{"temps_present", ImportField::Weather},
    FieldWord{"temps_qu_il_fait", ImportField::Weather},
    FieldWord{"force_du_vent", ImportField::Wind},
    FieldWord{"vent", ImportField::Wind},
    FieldWord{"remarque", ImportField::Note},
    FieldWord{"remarques", ImportField::Note},
    FieldWord{"observateur", ImportField::Observer},
    FieldWord{"observatrice", ImportField::Observer},
    FieldWord{"unite", ImportField::Unit},
};

/// Letters with accents, as UTF-8, and the plain letters they stand for.
struct Accent {
    std::string_view letter;
    std::string_view plain;
};
constexpr std::array kAccents{Accent{"\u00E0", "a"},  Accent{"\u00E2", "a"}, Accent{"\u00E4", "a"},
                              Accent{"\u00E7", "c"},  Accent{"\u00E8", "e"}, Accent{"\u00E9", "e"},
                              Accent{"\u00EA", "e"},  Accent{"\u00EB", "e"}, Accent{"\u00EE", "i"},
                              Accent{"\u00EF", "i"},  Accent{"\u00F4", "o"}, Accent{"\u00F6", "o"},
                              Accent{"\u00F9", "u"},  Accent{"\u00FB", "u"}, Accent{"\u00FC", "u"},
                              Accent{"\u00DF", "ss"}, Accent{"\u00C4", "a"}, Accent{"\u00D6", "o"},
                              Accent{"\u00DC", "u"},  Accent{"\u00C9", "e"}, Accent{"\u00C8", "e"}};

/// The accent that begins here; nullptr: none.
const Accent* accentAt(std::string_view text) {
    for (const Accent& accent : kAccents) {
        if (text.starts_with(accent.letter)) {
            return &accent;
        }
    }
    return nullptr;
}

} // namespace

std::span<const FieldWord> columnWords() {
    return kWords;
}

std::string plainHeader(std::string_view header) {
    const std::string low = loweredAscii(header);
    const std::string_view rest{low};
    std::string result;
    bool gap = false;
    for (std::size_t i = 0; i < rest.size();) {
        const Accent* accent = accentAt(rest.substr(i));
        const char c = rest[i];
        const bool kept = accent != nullptr || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (kept) {
            if (gap && !result.empty()) {
                result.push_back('_');
            }
            result += accent != nullptr ? accent->plain : rest.substr(i, 1);
        }
        i += accent != nullptr ? accent->letter.size() : 1;
        gap = !kept;
    }
    return result;
}

} // namespace wickbook::exchange
