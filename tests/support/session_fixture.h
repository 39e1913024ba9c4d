// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observing_hours.h"
#include "core/record/station_record.h"
#include "core/units/number_text.h"
#include "ui/session/session.h"

#include <QCoreApplication>
#include <QTemporaryDir>
#include <gtest/gtest.h>

#include <memory>

/// A real book in a folder of its own, with a clock that stands still: what cases of the pages begin with.
/// The station reads at 09 and 21 UTC in a louvred screen; all values are made up here.

namespace wickbook::ui::test {

using namespace std::chrono_literals;
using namespace date::literals;

class StandingClock final : public record::Clock {
public:
    explicit StandingClock(record::Instant now) : now_(now) {}
    [[nodiscard]] record::Instant now() const override { return now_; }

private:
    record::Instant now_;
};

inline record::StationDate day(int year, unsigned month, unsigned number) {
    return record::StationDate{
        date::local_days{date::year{year} / static_cast<int>(month) / static_cast<int>(number)}};
}

class SessionCase : public ::testing::Test {
protected:
    void SetUp() override { open({9h, 21h}); }

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
        auto session = Session::create(folder_.filePath(QStringLiteral("elder.wickbook")),
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
            for (const record::HourOfDay hour : {record::HourOfDay{9h}, record::HourOfDay{21h}}) {
                const double dry =
                    12.0 + (count * 7 % 11) * 0.3 + (hour == record::HourOfDay{9h} ? 1.0 : 0.0);
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
    std::shared_ptr<StandingClock> clock_ =
        std::make_shared<StandingClock>(record::Instant{date::sys_days{2025_y / 5 / 14} + 12h});
    std::unique_ptr<Session> session_;
};

} // namespace wickbook::ui::test
