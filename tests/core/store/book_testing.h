// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

#include <gtest/gtest.h>
#include <stdlib.h>
#include <sys/stat.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <memory>
#include <random>
#include <string>

/// What the store's tests share: a folder of their own, a clock that stands still, an invented station and
/// observations drawn from a seed.

namespace wickbook::store::testing {

/// A folder that goes with the test. Readable for other users, so that a test may become one.
class TempFolder {
public:
    TempFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "wickbook-store-XXXXXX").string();
        path_ = ::mkdtemp(name.data());
        ::chmod(path_.c_str(), 0755);
    }
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    ~TempFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    std::filesystem::path operator/(const std::string& name) const { return path_ / name; }

private:
    std::filesystem::path path_;
};

class StandingClock final : public record::Clock {
public:
    explicit StandingClock(record::Instant when) : instant(when) {}
    [[nodiscard]] record::Instant now() const override { return instant; }
    record::Instant instant;
};

inline record::Instant at(std::int64_t seconds) {
    return record::Instant{std::chrono::seconds{seconds}};
}

inline std::string bytesAt(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void writeBytes(const std::filesystem::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// Every file of a folder with its contents: equal before and after means nothing was written.
inline std::map<std::string, std::string> contentsOf(const std::filesystem::path& folder) {
    std::map<std::string, std::string> contents;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        contents[entry.path().filename().string()] =
            entry.is_regular_file() ? bytesAt(entry.path()) : std::string{"(not a file)"};
    return contents;
}

inline constexpr std::int64_t kMarch2025 = 1740787200; ///< 2025-03-01T00:00:00Z, `date -u -d 2025-03-01 +%s`

/// An invented station with one fact of every kind.
inline record::StationFacts inventedStation() {
    using namespace units;
    std::uint64_t count = 0;
    const auto id = [&] { return record::Uuid::fromSeed(1, ++count); };
    record::StationFacts facts;
    facts.id = id();
    facts.name = "Nirgends am Bach (invented)";
    facts.invented = true;
    facts.hourWindowMinutes = 45;
    record::PeriodChange first;
    first.id = id();
    first.position = record::Position{52.25, -1.125};
    first.elevation = Elevation::fromMetres(123.5);
    first.zone = "Europe/London";
    first.hours = std::vector<record::HourOfDay>{record::HourOfDay{540}, record::HourOfDay{1260}};
    first.hourRule = record::HourRule::Utc;
    first.exposure = psychrometry::Exposure::Screen;
    first.surroundings = "lawn, hedge to the north";
    record::PeriodChange second;
    second.id = id();
    second.from = at(kMarch2025);
    second.exposure = psychrometry::Exposure::Own;
    second.ownCoefficient = record::OwnCoefficient{0.000712, 0.00063, 0.04};
    facts.periods = {first, second};
    record::Thermometer dry;
    dry.id = id();
    dry.name = "No. 17";
    dry.liquid = "mercury";
    dry.unit = TemperatureUnit::Fahrenheit;
    dry.step = {5, 1};
    dry.lowestMark = {-20, 0};
    dry.highestMark = {120, 0};
    record::Thermometer wet = dry;
    wet.id = id();
    wet.name = "No. 18";
    facts.thermometers = {dry, wet};
    facts.fittings = {{id(), std::nullopt, dry.id, wet.id, false}};
    record::Correction correction;
    correction.id = id();
    correction.thermometer = wet.id;
    correction.from = at(kMarch2025);
    correction.points = {{32, 0.3}, {62.5, 0.1}};
    correction.standardUncertainty = 0.05;
    correction.source = "ice point";
    facts.corrections = {correction};
    facts.limits[{"very-dry.lowest-humidity"}] = 8.5;
    return facts;
}

/// A plain reading at an observing hour of March 2025: number 0 is the 1st at 09:00, 1 at 21:00, …
inline record::Observation reading(int number) {
    record::Observation o;
    const int day = number / 2;
    const int hour = number % 2 == 0 ? 9 : 21;
    const std::int64_t midnight = kMarch2025 + std::int64_t{86400} * day;
    o.hour = record::ObservingHour{record::StationDate{date::days{midnight / 86400}},
                                   record::HourOfDay{hour * 60}};
    o.instant = at(midnight + 3600 * hour);
    o.zone = "Europe/London";
    o.dry.value = units::ReadTemperature{{160 + number, 1}, units::TemperatureUnit::Celsius};
    o.wet.value = units::ReadTemperature{{140 + number, 1}, units::TemperatureUnit::Celsius};
    o.observer = "ab";
    return o;
}

inline ObservationChange change(const record::Observation& values, std::uint64_t number,
                                std::string why = {}) {
    ObservationChange made;
    made.revision = record::Uuid::fromSeed(2, number);
    made.subject = record::Uuid::fromSeed(3, number);
    made.values = values;
    made.author = {"ab", std::move(why)};
    return made;
}

inline const record::Author kAuthor{"ab", "first set up"};

inline Book newBook(const std::filesystem::path& path) {
    auto book = Book::create(path, inventedStation(), kAuthor,
                             std::make_shared<StandingClock>(at(kMarch2025 + 7 * 3600)));
    if (!book)
        throw std::runtime_error("no book: " + book.error().detail);
    return std::move(*book);
}

/// What verify says, as text: empty for a sound book.
inline std::string problemsOf(const Book& book) {
    const auto report = book.verify();
    if (!report)
        return "verify failed: " + report.error().detail;
    std::string text;
    for (const auto& problem : report->problems)
        text += problem.code + ": " + problem.detail + "\n";
    return text;
}

} // namespace wickbook::store::testing
