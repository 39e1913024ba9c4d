// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/sample_register.h"

#include <algorithm>
#include <cmath>

namespace wickbook::sample {

namespace {

using namespace std::chrono_literals;
using record::Observation;
using record::WickState;

/// Days before the last, and what was done. The margins below are a little wider than the rules' limits, so
/// that a slip is a slip.
double dryOf(const Observation& values) {
    return values.dry.value->value.toDouble();
}
double wetOf(const Observation& values) {
    return values.wet.value->value.toDouble();
}
void setBulb(record::BulbReading& bulb, double celsius) {
    bulb.value->value = units::roundedDecimal(celsius, 1);
}
bool isWater(const Observation& values) {
    return values.wick == WickState::NotGiven && values.hour && dryOf(values) > 4.0;
}

/// What was read at the last and the next extremes can't be kept beside a slip of the dry bulb.
void dropExtremes(Observation& values) {
    values.maximum.reset();
    values.minimum.reset();
}

class Planter {
public:
    explicit Planter(SampleRegister& book) : book_(book) {}

    using Fits = std::function<bool(const Observation&, std::size_t)>;
    using Slip = std::function<void(Observation&)>;

    /// Plants a slip at the latest reading that fits, and keeps where.
    std::optional<std::size_t> plant(std::string_view code, std::string_view what, int daysBefore,
                                     const Fits& fits, const Slip& slip) {
        const auto index = book_.find(daysBefore, [&](std::size_t i) { return fits(book_.newest(i), i); });
        if (index) {
            Observation values = book_.newest(*index);
            slip(values);
            book_.write(*index, values);
            slips_.push_back({book_.subject(*index), code, what});
        }
        return index;
    }

    std::vector<PlantedSlip> take() && { return std::move(slips_); }
    void note(std::size_t index, std::string_view code, std::string_view what) {
        slips_.push_back({book_.subject(index), code, what});
    }

private:
    SampleRegister& book_;
    std::vector<PlantedSlip> slips_;
};

void plantPairSlips(Planter& planter) {
    planter.plant(
        "wet-above-dry", "dry and wet swapped", 6,
        [](const Observation& o, std::size_t) { return isWater(o) && dryOf(o) - wetOf(o) >= 1.5; },
        [](Observation& o) {
            std::swap(o.dry, o.wet);
            dropExtremes(o);
        });
    planter.plant(
        "wet-above-dry", "wet bulb misread above the dry", 19,
        [](const Observation& o, std::size_t) { return isWater(o); },
        [](Observation& o) { setBulb(o.wet, dryOf(o) + 1.4); });
    planter.plant(
        "wet-above-dry", "dry bulb read ten low", 48,
        [](const Observation& o, std::size_t) {
            return isWater(o) && dryOf(o) > 11.0 && dryOf(o) - wetOf(o) < 6.0;
        },
        [](Observation& o) {
            setBulb(o.dry, dryOf(o) - 10.0);
            dropExtremes(o);
        });
}

void plantDryWick(Planter& planter, const SampleRegister& book) {
    const auto fits = [&](const Observation& o, std::size_t i) {
        if (!isWater(o)) {
            return false;
        }
        // The air of the readings of the last day, and what the pair would give with a dry wick.
        double usual = 0;
        int compared = 0;
        for (std::size_t k = i; k-- > 0 && o.instant - book.newest(k).instant <= 26h;) {
            usual = std::max(usual, book.derived(k).vapourPressureHectopascals().value_or(1e9));
            ++compared;
        }
        if (compared < 2) {
            return false;
        }
        Observation slip = o;
        setBulb(slip.wet, dryOf(o) - 0.1);
        const auto vapour =
            record::deriveReading(slip, book.station()).vapourPressureHectopascals().value_or(0.0);
        return vapour > 1.4 * usual && vapour > usual + 2.3;
    };
    planter.plant("dry-wick", "the wick had dried out", 13, fits, [](Observation& o) {
        setBulb(o.wet, dryOf(o) - 0.1);
        o.weather = record::WeatherSet{};
        o.note.clear();
    });
}

void plantPersistence(Planter& planter, SampleRegister& book) {
    const auto isFog = [](const Observation& o) {
        return o.weather && (o.weather->has(record::Weather::Fog) || o.weather->has(record::Weather::Rime));
    };
    const auto fits = [&](const Observation& o, std::size_t i) {
        const Observation& first = book.newest(i - 2);
        const Observation& second = book.newest(i - 1);
        return isWater(first) && isWater(second) && isWater(o) && !isFog(first) && !isFog(second) &&
               !isFog(o) && first.hour->hour == 9h && o.instant - first.instant < 25h &&
               std::abs(dryOf(first) - dryOf(o)) < 6.0;
    };
    const auto index = book.find(27, [&](std::size_t i) { return fits(book.newest(i), i); });
    if (!index) {
        return;
    }
    const Observation first = book.newest(*index - 2);
    for (std::size_t i = *index - 1; i <= *index; ++i) {
        Observation values = book.newest(i);
        values.dry = first.dry;
        values.wet = first.wet;
        dropExtremes(values);
        values.weather.reset();
        book.write(i, values);
    }
    planter.note(*index, "persistence", "the line above copied twice");
}

void plantNoVapour(Planter& planter, SampleRegister& book) {
    const auto fits = [&](const Observation& o, std::size_t) {
        Observation slip = o;
        setBulb(slip.wet, wetOf(o) - 10.0);
        const auto derived = record::deriveReading(slip, book.station());
        return isWater(o) && wetOf(slip) > 0.5 &&
               derived.derivation->problem == psychrometry::PsychrometryError::NoVapour;
    };
    const auto index = planter.plant("no-vapour", "wet bulb read ten low", 40, fits,
                                     [](Observation& o) { setBulb(o.wet, wetOf(o) - 10.0); });
    if (index) {
        Observation judged = book.newest(*index);
        judged.quality = record::Quality::Erroneous;
        book.revise(*index, judged, "No such air; the wet bulb can't be made out in the pocket-book.",
                    std::chrono::hours{30});
    }
}

void plantSteps(Planter& planter, const SampleRegister& book) {
    const auto isNextToAHour = [&](std::size_t i) {
        return !book.newest(i).hour && isWater(book.newest(i - 1)) &&
               book.newest(i).instant - book.newest(i - 1).instant < 3h;
    };
    planter.plant(
        "step-temperature", "both bulbs of an extra reading read ten high", 55,
        [&](const Observation& o, std::size_t i) {
            return isNextToAHour(i) && dryOf(o) < 24.0 && dryOf(o) - dryOf(book.newest(i - 1)) > -0.5;
        },
        [](Observation& o) {
            setBulb(o.dry, dryOf(o) + 10.0);
            setBulb(o.wet, wetOf(o) + 10.0);
        });
    const auto lowered = [&](Observation o) {
        setBulb(o.wet, wetOf(o) - 5.0);
        return o;
    };
    planter.plant(
        "step-dew-point", "wet bulb of an extra reading read five low", 83,
        [&](const Observation& o, std::size_t i) {
            const auto dew = record::deriveReading(lowered(o), book.station()).dewPointCelsius();
            const auto before = book.derived(i - 1).dewPointCelsius();
            return isNextToAHour(i) && wetOf(o) > 6.5 && dew && before && *before - *dew > 8.5;
        },
        [&](Observation& o) { o = lowered(o); });
}

void plantFrostSlips(Planter& planter, const SampleRegister& book) {
    planter.plant(
        "wick-state-unknown", "water or ice not told", 4,
        [](const Observation& o, std::size_t) { return o.hour && wetOf(o) <= -0.5; },
        [](Observation& o) {
            o.wick = WickState::NotGiven;
            o.wickCare = record::WickCare::None;
        });
    // What stands on the scale where the corrected wet bulb is 0.0.
    const auto zeroOnScale = [&](const Observation& o) {
        const record::Thermometer* wet = book.station().wetThermometerAt(o.instant);
        const record::Correction* correction =
            wet == nullptr ? nullptr : book.station().correctionAt(wet->id, o.instant);
        return correction == nullptr ? 0.0 : -record::correctionAtReading(*correction, 0.0);
    };
    planter.plant(
        "freezing-halt", "read while the wick was freezing", 8,
        [&](const Observation& o, std::size_t i) {
            // Just below zero, or just above it after a reading in frost.
            const Observation& last = book.newest(i - 1);
            const bool afterFrost =
                o.instant - last.instant < 13h && (dryOf(last) < -0.2 || last.wick == WickState::Ice);
            return o.hour && wetOf(o) < -0.1 && dryOf(o) > -1.5 && dryOf(o) < (afterFrost ? 2.5 : -0.2);
        },
        [&](Observation& o) {
            setBulb(o.wet, zeroOnScale(o));
            o.wick = WickState::Water;
            o.wickCare = record::WickCare::Wetted;
            o.note = "Wetted a minute before.";
        });
    planter.plant(
        "ice-over-dry", "ice bulb read too high", 16,
        [](const Observation& o, std::size_t) {
            return o.hour && o.wick == WickState::Ice && dryOf(o) < -1.3;
        },
        [](Observation& o) { setBulb(o.wet, dryOf(o) + 0.9); });
}

void plantOldPage(Planter& planter, SampleRegister& book) {
    const record::StationDate first = record::filedDate(book.newest(0));
    for (std::size_t i = 0; i < book.size(); ++i) {
        const Observation& o = book.newest(i);
        if (record::filedDate(o) >= first + date::days{9} && book.isQuiet(i) && o.hour && isWater(o)) {
            Observation values = o;
            setBulb(values.dry, 118.4);
            values.note = "As it stands in the old book.";
            dropExtremes(values);
            book.write(i, values);
            planter.note(i, "off-scale", "a number off the scale, kept from an old page");
            return;
        }
    }
}

} // namespace

std::vector<PlantedSlip> plantSlips(SampleRegister& book) {
    Planter planter(book);
    plantPairSlips(planter);
    plantDryWick(planter, book);
    plantPersistence(planter, book);
    plantNoVapour(planter, book);
    plantSteps(planter, book);
    plantFrostSlips(planter, book);
    plantOldPage(planter, book);
    return std::move(planter).take();
}

} // namespace wickbook::sample
