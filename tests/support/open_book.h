// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observing_hours.h"
#include "core/record/station_record.h"
#include "core/units/number_text.h"
#include "ui/session/session.h"

#include <QTemporaryDir>
#include <date/date.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <string>
#include <utility>
#include <vector>

/// A real book in a folder of its own, with a clock that a case can set. The one thing that is not real is
/// the hour.

namespace wickbook::test {

class SettableClock final : public record::Clock {
public:
    SettableClock() = default;
    explicit SettableClock(record::Instant now) : now_(now) {}
    [[nodiscard]] record::Instant now() const override { return now_; }
    void set(record::Instant now) { now_ = now; }

private:
    record::Instant now_ =
        date::sys_days{date::year{2026} / 11 / 22} + std::chrono::hours{8} + std::chrono::minutes{52};
};

inline record::NewStation hillStation() {
    using namespace std::chrono_literals;
    record::NewStation station;
    station.name = "Invented Hill";
    station.position = {52.0, -1.0};
    station.elevation = units::Elevation::fromMetres(0);
    station.zone = "Europe/London";
    station.hours = {9h, 21h};
    station.hourRule = record::HourRule::Utc;
    station.exposure = psychrometry::Exposure::Screen;
    station.lowestMark = {-30, 0};
    station.highestMark = {50, 0};
    station.invented = true;
    return station;
}

class OpenBook {
public:
    explicit OpenBook(const record::NewStation& station = hillStation()) {
        auto made = ui::Session::create(
            path(), record::factsOf(station, [] { return record::Uuid::random(); }), {"A", {}}, clock_);
        if (made) {
            session_ = std::move(*made);
        }
    }

    [[nodiscard]] QString path() const { return folder_.filePath(QStringLiteral("hill.wickbook")); }
    [[nodiscard]] QString drafts() const { return folder_.filePath(QStringLiteral("drafts")); }
    [[nodiscard]] QString folder() const { return folder_.path(); }
    [[nodiscard]] ui::Session& session() { return *session_; }
    [[nodiscard]] bool isOpen() const { return session_ != nullptr; }
    [[nodiscard]] std::shared_ptr<SettableClock> clock() const { return clock_; }
    void close() { session_.reset(); }

    /// The newest revision at an hour; none where nothing live stands there.
    [[nodiscard]] std::optional<record::Observation> at(record::StationDate date, int hour) const {
        const auto found = session_->book().atHour({date, std::chrono::hours{hour}});
        return found && *found ? std::optional{(*found)->values} : std::nullopt;
    }

    /// Writes a reading at an hour, past the pages.
    void keep(record::StationDate date, int hour, units::Decimal dry, units::Decimal wet) {
        record::Observation observation;
        const record::ObservingHour key{date, std::chrono::hours{hour}};
        record::placeInTime(observation, session_->station(), *record::momentOf(session_->station(), key));
        observation.hour = key;
        observation.dry.value = units::ReadTemperature{dry, session_->unit()};
        observation.wet.value = units::ReadTemperature{wet, session_->unit()};
        store::ObservationChange change;
        change.values = observation;
        change.author = {"A", {}};
        ASSERT_TRUE(session_->write(change).has_value());
    }

private:
    QTemporaryDir folder_;
    std::shared_ptr<SettableClock> clock_ = std::make_shared<SettableClock>();
    std::unique_ptr<ui::Session> session_;
};

inline record::StationDate day(int year, unsigned month, unsigned dayOfMonth) {
    return date::local_days{date::year{year} / date::month{month} / date::day{dayOfMonth}};
}

/// What cases of the register and the month begin with: a station that reads at 09 and 21 UTC in a louvred
/// screen, and readings written past the pages. All values are made up here.
class SessionCase : public ::testing::Test {
protected:
    void SetUp() override { open({std::chrono::hours{9}, std::chrono::hours{21}}); }

    void open(std::vector<record::HourOfDay> hours) {
        ASSERT_TRUE(folder_.isValid());
        record::NewStation station;
        station.name = "Elder Bank";
        station.position = {52.25, -1.5};
        station.elevation = units::Elevation::fromMetres(84);
        station.zone = "UTC";
        station.hours = std::move(hours);
        station.hourRule = record::HourRule::Utc;
        station.invented = true;
        auto session = ui::Session::create(folder_.filePath(QStringLiteral("elder.wickbook")),
                                           record::factsOf(station, [] { return record::Uuid::random(); }),
                                           {"T", ""}, clock_);
        ASSERT_TRUE(session.has_value()) << session.error().detail;
        session_ = std::move(*session);
        session_->setObserver(QStringLiteral("T"));
    }

    /// A reading at its hour, as written: "16.4", "12.1".
    record::Observation reading(record::StationDate date, record::HourOfDay hour, const std::string& dry,
                                const std::string& wet) const {
        record::Observation observation;
        record::placeInTime(observation, session_->station(),
                            record::Instant{(date + hour).time_since_epoch()});
        observation.dry.value =
            units::ReadTemperature{*units::parseDecimal(dry), units::TemperatureUnit::Celsius};
        observation.wet.value =
            units::ReadTemperature{*units::parseDecimal(wet), units::TemperatureUnit::Celsius};
        observation.wick = record::WickState::Water;
        observation.observer = "T";
        return observation;
    }

    store::ObservationChange change(record::Observation observation) const {
        store::ObservationChange made;
        made.values = std::move(observation);
        made.author = {"T", ""};
        return made;
    }

    void write(const record::Observation& observation) {
        const auto receipt = session_->write(change(observation));
        ASSERT_TRUE(receipt.has_value()) << receipt.error().detail;
    }

    /// Both hours of the days given, mild and unlike each other, so that no rule has anything to say; the
    /// days named in without are left out whole.
    void fill(record::StationDate from, record::StationDate to,
              const std::vector<record::StationDate>& without = {}) {
        std::vector<store::ObservationChange> changes;
        int count = 0;
        for (record::StationDate date = from; date <= to; date += date::days{1}) {
            if (std::find(without.begin(), without.end(), date) != without.end()) {
                continue;
            }
            for (const record::HourOfDay hour :
                 {record::HourOfDay{std::chrono::hours{9}}, record::HourOfDay{std::chrono::hours{21}}}) {
                const double dry = 12.0 + (count * 7 % 11) * 0.3 +
                                   (hour == record::HourOfDay{std::chrono::hours{9}} ? 1.0 : 0.0);
                const double wet = dry - 2.0 - (count * 5 % 7) * 0.1;
                changes.push_back(
                    change(reading(date, hour, units::fixedText(dry, 1), units::fixedText(wet, 1))));
                ++count;
            }
        }
        const auto receipts = session_->writeAll(changes);
        ASSERT_TRUE(receipts.has_value()) << receipts.error().detail;
    }

    [[nodiscard]] record::StoredObservation at(record::StationDate date, record::HourOfDay hour) const {
        const auto found = session_->book().atHour({date, hour});
        EXPECT_TRUE(found && *found) << record::dateText(date);
        return found && *found ? **found : record::StoredObservation{};
    }

    QTemporaryDir folder_;
    /// 14 May 2025, 12:00 UTC.
    std::shared_ptr<SettableClock> clock_ = std::make_shared<SettableClock>(
        record::Instant{date::sys_days{date::year{2025} / 5 / 14} + std::chrono::hours{12}});
    std::unique_ptr<ui::Session> session_;
};

} // namespace wickbook::test
