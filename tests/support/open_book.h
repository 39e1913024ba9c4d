// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observing_hours.h"
#include "ui/session/session.h"

#include <QTemporaryDir>
#include <date/date.h>
#include <gtest/gtest.h>

#include <memory>

/// A real book in a folder of its own, with a clock that a case can set. The one thing that is not real is
/// the hour.

namespace wickbook::test {

class SettableClock final : public record::Clock {
public:
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

} // namespace wickbook::test
