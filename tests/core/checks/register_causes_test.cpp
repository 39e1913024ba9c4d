// SPDX-License-Identifier: GPL-3.0-or-later
// A real manual register (dry and wet bulb, 1886 to 1900, open data, kept outside the project): its own
// slips, and slips planted in it. tests/bench/plant_slips prints the whole table; here stand the floors.
#include "core/checks/likely_causes.h"
#include "core/checks/rule_support.h"
#include "tests/bench/plant_slips/planted.h"
#include "tests/bench/plant_slips/register_file.h"
#include "tests/core/checks/checks_support.h"

#include <map>

namespace wickbook::checks::test {

namespace {

const std::optional<bench::Register>& theRegister() {
    static const auto kRegister =
        bench::readRegister(std::string{WICKBOOK_DATASETS} + "/rosario_1886_1900_dry_wet_pressure.csv");
    return kRegister;
}

const StationModel& theModel() {
    static const StationModel kModel{theRegister()->readings};
    return kModel;
}

#define SKIP_WITHOUT_REGISTER()                                                                              \
    if (!theRegister()) {                                                                                    \
        GTEST_SKIP() << "The register is not at WICKBOOK_DATASETS; nothing was tried.";                      \
    }

} // namespace

TEST(RegisterCauses, ItsOwnSlipsGetTheCauseAPersonWouldGive) {
    SKIP_WITHOUT_REGISTER();
    const auto& source = *theRegister();
    const auto checked = checkSeries(source.readings, 0, source.readings.size(), source.station, Limits{}, {},
                                     {}, &theModel());
    /// Written pair, and the value of one bulb that must be among the three.
    struct Slip {
        const char* dry;
        const char* wet;
        double dryMeant, wetMeant;
    };
    for (const Slip& slip : {Slip{"220.9", "19.6", 20.9, 19.6}, Slip{"220.9", "19.6", 22.9, 19.6},
                             Slip{"9.6", "718.0", 9.6, 7.8}, Slip{"17.7", "1.6", 17.7, 16.0},
                             Slip{"5.0", "27.7", 35.0, 27.7}, Slip{"22.5", "29.0", 29.0, 22.5},
                             Slip{"25.4", "222.2", 25.4, 22.2}, Slip{"82.9", "26.4", 28.9, 26.4}}) {
        const auto it = std::find_if(checked.begin(), checked.end(), [&](const CheckedReading& one) {
            const auto& values = one.reading.values();
            return values.hasPair() && values.dry.value->value.toText() == slip.dry &&
                   values.wet.value->value.toText() == slip.wet;
        });
        ASSERT_NE(it, checked.end()) << slip.dry << " / " << slip.wet;
        EXPECT_TRUE(it->leftOut) << slip.dry << " / " << slip.wet;
        bool named = false;
        for (const Finding& finding : it->findings) {
            for (const auto& cause : finding.causes) {
                named = named || (std::abs(cause.dryCelsius.value_or(-99) - slip.dryMeant) < 0.051 &&
                                  std::abs(cause.wetCelsius.value_or(-99) - slip.wetMeant) < 0.051);
            }
        }
        EXPECT_TRUE(named) << slip.dry << " / " << slip.wet << " as " << slip.dryMeant << " / "
                           << slip.wetMeant;
    }
}

TEST(RegisterCauses, PlantedSlipsAreFoundAndSoundReadingsLeftAlone) {
    SKIP_WITHOUT_REGISTER();
    const auto& all = theRegister()->readings;
    const auto& station = theRegister()->station;
    const auto clean = checkSeries(all, 0, all.size(), station, Limits{}, {});
    struct Count {
        int planted = 0, marked = 0, first = 0, top = 0;
    };
    std::map<std::string, Count> counts;
    std::mt19937 random{5};
    int sound = 0;
    int soundMarked = 0;
    for (std::size_t i = 20; i + 20 < all.size(); i += 7) {
        if (!std::all_of(clean.begin() + static_cast<std::ptrdiff_t>(i) - 3,
                         clean.begin() + static_cast<std::ptrdiff_t>(i) + 4,
                         [](const auto& one) { return one.findings.empty(); }) ||
            all[i + 3].values().instant - all[i - 3].values().instant > std::chrono::hours{120}) {
            continue;
        }
        const auto judge = [&](const record::DerivedReading& reading) {
            return checkReading({reading,
                                 station,
                                 Limits{},
                                 std::span{all}.subspan(i - 12, 12),
                                 std::span{all}.subspan(i + 1, 8),
                                 {},
                                 false,
                                 {},
                                 &theModel()});
        };
        ++sound;
        soundMarked += judge(all[i]).empty() ? 0 : 1;
        if (sound % 3 != 0) {
            continue;
        }
        for (const auto& planted : bench::plantAll(all[i].values(), nullptr, random)) {
            const auto findings = judge(record::deriveReading(planted.observation, station));
            Count& count = counts[planted.kind];
            ++count.planted;
            count.marked += findings.empty() ? 0 : 1;
            bool named = false;
            for (const Finding& finding : findings) {
                for (std::size_t place = 0; place < finding.causes.size() && !named; ++place) {
                    const auto& cause = finding.causes[place];
                    named = std::abs(cause.dryCelsius.value_or(-99) - *dryCelsius(all[i])) < 0.051 &&
                            std::abs(cause.wetCelsius.value_or(-99) - *wetCelsius(all[i])) < 0.051;
                    count.first += named && place == 0 ? 1 : 0;
                }
            }
            count.top += named ? 1 : 0;
        }
    }
    ASSERT_GT(sound, 500);
    EXPECT_LE(soundMarked, sound / 100) << soundMarked << " of " << sound;
    // Floors a little under what the whole table shows, for the sample is small.
    const auto atLeast = [&](const std::string& kind, double marked, double first, double top) {
        const Count& count = counts[kind];
        ASSERT_GT(count.planted, 100) << kind;
        EXPECT_GE(100.0 * count.marked / count.planted, marked) << kind;
        EXPECT_GE(100.0 * count.first / count.marked, first) << kind;
        EXPECT_GE(100.0 * count.top / count.marked, top) << kind;
    };
    atLeast("swapped", 99.5, 88, 99);
    atLeast("ten", 98, 95, 99);
    atLeast("five", 84, 76, 96);
    atLeast("sign", 99, 96, 98.5);
    atLeast("decimal-point", 99, 94, 99);
    atLeast("exchanged, tens", 99, 79, 95);
    atLeast("exchanged, tenths", 50, 40, 92);
}

} // namespace wickbook::checks::test
