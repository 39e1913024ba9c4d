// SPDX-License-Identifier: GPL-3.0-or-later
// Measures the likely causes: plants one slip at a time in the sound stretches of a real register and prints,
// per kind of slip, how often the reading is marked, how often the planted cause is then named first or among
// three, and how often a sound reading is marked. plant_slips REGISTER.csv|sample [count] [held-out]
// count: readings that slips are planted in, 1000 unless given. held-out: each year is judged by a model
// learnt without it (years with the same last figure are left out together). sample: a hundred years of the
// invented station.
#include "core/checks/check_series.h"
#include "core/checks/likely_causes.h"
#include "tests/bench/plant_slips/planted.h"
#include "tests/bench/plant_slips/register_file.h"

#include <fmt/core.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <map>
#include <string>
#include <vector>

namespace {

using namespace wickbook;
using checks::Finding;
using record::DerivedReading;

struct Tally {
    int planted = 0, marked = 0, bySlip = 0, first = 0, topThree = 0;
    std::map<std::string, int> mistakenFor; ///< what was named first instead
};

/// By tenths of weight: how many causes were given it, the sum of weights, how many of them were true.
struct Calibration {
    int given = 0, right = 0;
    double weight = 0;
};

struct Measured {
    std::map<std::string, Tally> kinds;
    std::array<Calibration, 10> calibration{};
    int sound = 0, soundMarked = 0;
};

bool isMarked(const std::vector<Finding>& findings) {
    return std::any_of(findings.begin(), findings.end(),
                       [](const Finding& finding) { return finding.root != checks::Root::Time; });
}

bool has(const std::vector<Finding>& findings, std::string_view code) {
    return std::any_of(findings.begin(), findings.end(),
                       [&](const Finding& finding) { return finding.code == code; });
}

std::vector<checks::LikelyCause> causesOf(const std::vector<Finding>& findings) {
    for (const Finding& finding : findings) {
        if (!finding.causes.empty()) {
            return finding.causes;
        }
    }
    return {};
}

bool isTrue(const checks::LikelyCause& cause, const bench::Planted& planted, const DerivedReading& sound) {
    if (!planted.pairIsKnown) {
        return cause.code == planted.cause;
    }
    constexpr double kSame = 0.051; // a value once turned into °F comes back to the tenth
    // As read: corrections differ a little from one mark of the scale to another.
    const auto same = [](const std::optional<units::ReadTemperature>& named,
                         const record::BulbReading& bulb) {
        return named &&
               std::abs(named->temperature().celsius() - bulb.value->temperature().celsius()) < kSame;
    };
    return same(cause.dryRead, sound.values().dry) && same(cause.wetRead, sound.values().wet);
}

class Measurement {
public:
    Measurement(const bench::Register& source, bool lookingBack, bool heldOut)
        : source_(source)
        , lookingBack_(lookingBack)
        , clean_(checks::checkSeries(source.readings, 0, source.readings.size(), source.station, limits_, {}))
        , models_{modelsFor(source, heldOut)} {}

    Measured run(std::size_t sample) {
        std::mt19937 random{20240229};
        std::vector<std::size_t> places;
        for (std::size_t i = 0; i < source_.readings.size(); ++i) {
            if (isSoundStretch(i)) {
                places.push_back(i);
            }
        }
        std::shuffle(places.begin(), places.end(), random);
        Measured measured;
        for (std::size_t n = 0; n < places.size(); ++n) {
            const std::size_t i = places[n];
            ++measured.sound;
            const auto findings = judge(i, source_.readings[i]);
            measured.soundMarked += isMarked(findings) ? 1 : 0;
            if (n < sample) {
                for (const auto& planted : bench::plantAll(source_.readings[i].values(),
                                                           &source_.readings[i - 1].values(), random)) {
                    count(planted, i, measured);
                }
            }
        }
        return measured;
    }

private:
    /// One for all, or one for each last figure of the year that it is to judge.
    static std::vector<checks::StationModel> modelsFor(const bench::Register& source, bool heldOut) {
        if (!heldOut) {
            return {checks::StationModel{source.readings}};
        }
        std::vector<checks::StationModel> models;
        for (int figure = 0; figure < 10; ++figure) {
            std::vector<DerivedReading> others;
            for (const DerivedReading& reading : source.readings) {
                if (yearOf(reading) % 10 != figure) {
                    others.push_back(reading);
                }
            }
            models.emplace_back(others);
        }
        return models;
    }
    static int yearOf(const DerivedReading& reading) {
        return static_cast<int>(date::year_month_day{record::filedDate(reading.values())}.year());
    }

    /// The reading and three each way trip no rule and lie within two and a half days.
    bool isSoundStretch(std::size_t i) const {
        constexpr std::size_t kEachWay = 3;
        constexpr std::chrono::hours kReach{60};
        if (i < kEachWay || i + kEachWay >= clean_.size()) {
            return false;
        }
        for (std::size_t j = i - kEachWay; j <= i + kEachWay; ++j) {
            if (!clean_[j].findings.empty() || !source_.readings[j].derivation ||
                !source_.readings[j].values().hour) {
                return false;
            }
        }
        const auto at = [&](std::size_t j) { return source_.readings[j].values().instant; };
        return at(i) - at(i - kEachWay) < kReach && at(i + kEachWay) - at(i) < kReach;
    }

    std::vector<Finding> judge(std::size_t i, const DerivedReading& reading) const {
        const std::span<const DerivedReading> all{source_.readings};
        const std::size_t back = std::min<std::size_t>(i, checks::kNeighboursBefore);
        const std::size_t on =
            lookingBack_ ? 0 : std::min<std::size_t>(all.size() - i - 1, checks::kNeighboursAfter);
        const auto& values = reading.values();
        const auto month = static_cast<unsigned>(date::year_month_day{record::filedDate(values)}.month());
        const auto& model =
            models_.at(models_.size() == 1 ? 0 : static_cast<std::size_t>(yearOf(reading) % 10));
        return checks::checkReading({reading, source_.station, limits_, all.subspan(i - back, back),
                                     all.subspan(i + 1, on), std::nullopt, false,
                                     values.hour ? model.average(month, values.hour->hour) : std::nullopt,
                                     &model});
    }

    void count(const bench::Planted& planted, std::size_t i, Measured& measured) const {
        const auto findings = judge(i, record::deriveReading(planted.observation, source_.station));
        const auto causes = causesOf(findings);
        Tally& tally = measured.kinds[planted.kind];
        ++tally.planted;
        tally.bySlip += has(findings, "unlikely") ? 1 : 0;
        if (!isMarked(findings)) {
            return;
        }
        ++tally.marked;
        if (causes.empty() || !isTrue(causes.front(), planted, source_.readings[i])) {
            ++tally.mistakenFor[causes.empty() ? "none named" : causes.front().code];
        }
        bool named = false;
        for (std::size_t place = 0; place < causes.size(); ++place) {
            const bool right = isTrue(causes[place], planted, source_.readings[i]);
            tally.first += right && place == 0 ? 1 : 0;
            tally.topThree += right && !named ? 1 : 0;
            named = named || right;
            auto& bin = measured.calibration.at(
                std::min<std::size_t>(static_cast<std::size_t>(causes[place].weight * 10), 9));
            ++bin.given;
            bin.right += right ? 1 : 0;
            bin.weight += causes[place].weight;
        }
    }

    const bench::Register& source_;
    bool lookingBack_;
    checks::Limits limits_;
    std::vector<checks::CheckedReading> clean_;
    std::vector<checks::StationModel> models_; ///< modelsFor()
};

double percent(int part, int whole) {
    return whole == 0 ? 0.0 : 100.0 * part / whole;
}

void print(const Measured& measured) {
    fmt::print("{:<20}{:>8}{:>9}{:>13}  of the marked:{:>7}{:>9}  of all:{:>7}{:>9}\n", "planted", "n",
               "marked", "by unlikely", "first", "top 3", "first", "top 3");
    for (const auto& [kind, tally] : measured.kinds) {
        fmt::print("{:<20}{:>8}{:>8.1f}%{:>12.1f}%{:>22.1f}%{:>8.1f}%{:>15.1f}%{:>8.1f}%\n", kind,
                   tally.planted, percent(tally.marked, tally.planted), percent(tally.bySlip, tally.planted),
                   percent(tally.first, tally.marked), percent(tally.topThree, tally.marked),
                   percent(tally.first, tally.planted), percent(tally.topThree, tally.planted));
    }
    fmt::print("mistaken for\n");
    for (const auto& [kind, tally] : measured.kinds) {
        std::vector<std::pair<int, std::string>> wrong;
        for (const auto& [code, count] : tally.mistakenFor) {
            wrong.emplace_back(count, code);
        }
        std::sort(wrong.rbegin(), wrong.rend());
        fmt::print("{:<20}", kind);
        for (std::size_t place = 0; place < std::min<std::size_t>(wrong.size(), 5); ++place) {
            fmt::print("  {} {:.1f}%", wrong[place].second, percent(wrong[place].first, tally.marked));
        }
        fmt::print("\n");
    }
    fmt::print("sound readings marked: {} of {}, {:.2f} %\n", measured.soundMarked, measured.sound,
               percent(measured.soundMarked, measured.sound));
    fmt::print("causes given a weight of    were true\n");
    for (const auto& bin : measured.calibration) {
        if (bin.given > 0) {
            fmt::print("{:>6.0f} % (n = {:>5})          {:>5.0f} %\n", 100 * bin.weight / bin.given,
                       bin.given, percent(bin.right, bin.given));
        }
    }
}

void printOwnSlips(const bench::Register& source) {
    const auto begin = std::chrono::steady_clock::now();
    const checks::StationModel model{source.readings};
    const auto start = std::chrono::steady_clock::now();
    fmt::print("\nmodel built in {:.2f} s\n", std::chrono::duration<double>(start - begin).count());
    const auto checked = checks::checkSeries(source.readings, 0, source.readings.size(), source.station,
                                             checks::Limits{}, {}, {}, &model);
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - start;
    std::map<std::string, int> codes;
    fmt::print("\nThe register's own: readings set aside, and their causes\n");
    for (const auto& one : checked) {
        for (const Finding& finding : one.findings) {
            ++codes[std::string{finding.code}];
        }
        const auto causes = causesOf(one.findings);
        const bool grave = std::any_of(one.findings.begin(), one.findings.end(),
                                       [](const Finding& f) { return checks::setsAside(f.severity); });
        if (!grave || !one.reading.values().hasPair()) {
            continue;
        }
        fmt::print("{} {:>6} / {:<6} {:<14}", record::instantText(one.reading.values().instant),
                   one.reading.values().dry.value->value.toText(),
                   one.reading.values().wet.value->value.toText(), one.findings.front().code);
        for (const auto& cause : causes) {
            fmt::print("  {} {:.1f}/{:.1f} {:.0f}%", cause.code, cause.dryCelsius.value_or(-99),
                       cause.wetCelsius.value_or(-99), 100 * cause.weight);
        }
        fmt::print("\n");
    }
    fmt::print("\nfindings in {} readings, {:.2f} s:\n", checked.size(), took.count());
    for (const auto& [code, count] : codes) {
        fmt::print("{:<22}{:>6}\n", code, count);
    }
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        fmt::print(
            stderr,
            "plant_slips REGISTER.csv|sample [count] [held-out]: name the register to plant slips in.\n");
        return 2;
    }
    const bool invented = std::string{argv[1]} == "sample";
    const auto source = invented ? std::optional{bench::sampleRegister()} : bench::readRegister(argv[1]);
    if (!source) {
        fmt::print(stderr, "{} can't be read.\n", argv[1]);
        return 2;
    }
    const std::size_t count = argc > 2 ? std::stoul(argv[2]) : 1000;
    const bool heldOut = argc > 3;
    for (const bool lookingBack : {false, true}) {
        fmt::print("\n{}{}\n", lookingBack ? "Looking back only" : "Neighbours before and after",
                   heldOut ? ", the model learnt from the other years" : "");
        print(Measurement{*source, lookingBack, heldOut}.run(count));
    }
    if (!invented) {
        printOwnSlips(*source);
    }
    return 0;
}
