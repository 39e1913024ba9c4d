// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/book.h"
#include "tests/fuzz/book_edits.h"
#include "tests/fuzz/memory_folder.h"
#include "tests/fuzz/stations.h"

#include <stdexcept>

namespace wickbook::fuzz {

namespace {

using record::Uuid;

class StoppedClock final : public record::Clock {
public:
    [[nodiscard]] record::Instant now() const override {
        return record::Instant{date::sys_days{date::year{2025} / 3 / 9}};
    }
};

record::Observation pairAt(int number) {
    record::Observation values;
    const auto day = record::StationDate{date::local_days{date::year{2025} / 3 / 1}} + date::days{number / 2};
    const std::chrono::hours hour{number % 2 == 0 ? 9 : 21};
    values.hour = record::ObservingHour{day, hour};
    values.instant = record::Instant{(day + hour).time_since_epoch()};
    values.zone = "Europe/London";
    values.dry.value = {{164 + number, 1}, units::TemperatureUnit::Celsius};
    values.wet.value = {{143 + number, 1}, units::TemperatureUnit::Celsius};
    values.observer = "ab";
    return values;
}

record::StationFacts factsOfEveryKind() {
    record::StationFacts facts = stationOfUtcHours().facts();
    const Uuid wet = facts.fittings.empty() ? Uuid{} : facts.fittings.front().wet;
    facts.corrections = {
        {Uuid::fromSeed(20, 1), wet, std::nullopt, {{0, 0.2}, {30, -0.1}}, 0.05, "ice point", false}};
    facts.limits[{"very-dry.lowest-humidity"}] = 8.5;
    record::Absence absence;
    absence.id = Uuid::fromSeed(20, 2);
    absence.from = record::StationDate{date::local_days{date::year{2025} / 3 / 6}};
    absence.to = absence.from + date::days{2};
    absence.reason = "away";
    facts.absences = {absence};
    record::DiaryEntry entry;
    entry.id = Uuid::fromSeed(20, 3);
    entry.date = absence.from;
    entry.kind = record::DiaryKind::Washed;
    facts.diary = {entry};
    return facts;
}

std::vector<store::ObservationChange> changes() {
    std::vector<store::ObservationChange> all;
    const auto add = [&](const record::Observation& values, std::uint64_t subject, const char* why) {
        store::ObservationChange change;
        change.revision = Uuid::fromSeed(21, all.size());
        change.subject = Uuid::fromSeed(22, subject);
        change.values = values;
        change.author = {"ab", why};
        all.push_back(std::move(change));
    };
    for (int i = 0; i < 8; ++i) {
        add(pairAt(i), static_cast<std::uint64_t>(i), "");
    }
    record::Observation corrected = pairAt(2);
    corrected.wet.value->value = {144, 1};
    corrected.origin = record::Origin::Corrected;
    corrected.note = "Nebel über dem Bach";
    add(corrected, 2, "read again");
    record::Observation withdrawn = pairAt(3);
    withdrawn.withdrawn = true;
    add(withdrawn, 3, "wrong page");
    record::Observation extra = pairAt(8);
    extra.hour.reset();
    extra.pressure = units::Decimal{10132, 1};
    extra.weather = record::WeatherSet{};
    extra.paper = record::PaperPlace{"3", "17"};
    add(extra, 8, "");
    record::Observation missing = pairAt(9);
    missing.dry = {};
    missing.wet = {};
    missing.origin = record::Origin::Missing;
    missing.missingReason = "ill";
    add(missing, 9, "");
    return all;
}

void demand(bool done, const char* what) {
    if (!done) {
        throw std::runtime_error(what);
    }
}

std::string madeBook() {
    const MemoryFolder folder;
    const auto path = folder.path() / "sound.wbk";
    {
        auto book = store::Book::create(path, factsOfEveryKind(), {"ab", "first set up"},
                                        std::make_shared<StoppedClock>());
        demand(book.has_value(), "the sound book could not be made");
        demand(book->appendAll(changes()).has_value(), "its readings could not be put in");
        record::StationFacts later = factsOfEveryKind();
        later.corrections.clear();
        demand(book->reviseFacts(later, {"ab", "certificate withdrawn"}).has_value(),
               "its facts could not be revised");
        const auto report = book->verify();
        demand(report && report->sound(), "the sound book is not sound");
    }
    return readWhole(path);
}

} // namespace

const std::string& soundBook() {
    static const std::string kBytes = madeBook();
    return kBytes;
}

} // namespace wickbook::fuzz
