// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/derived_reading.h"
#include "core/record/station_record.h"
#include "core/sample/sample_observer.h"
#include "core/sample/sample_station.h"

#include <functional>

/// The register while it is being made: readings in time order, and what is done to some of them afterwards.

namespace wickbook::sample {

class SampleRegister {
public:
    /// Borrows the record; it must outlive the register.
    SampleRegister(const SamplePlan& plan, const record::StationRecord& station)
        : plan_(plan), station_(station) {}

    /// A first entry, written down minutes after it was read. Entries come in time order.
    void add(const record::Observation& values);
    /// A later revision.
    void revise(std::size_t index, const record::Observation& values, const std::string& why,
                std::chrono::minutes later);
    /// Overwrites what the first revision says: the slip happened while reading or writing.
    void write(std::size_t index, const record::Observation& values);

    [[nodiscard]] std::size_t size() const { return observations_.size(); }
    [[nodiscard]] const record::Observation& newest(std::size_t index) const {
        return observations_[index].newest();
    }
    [[nodiscard]] record::DerivedReading derived(std::size_t index) const {
        return record::deriveReading(newest(index), station_);
    }
    [[nodiscard]] const record::Uuid& subject(std::size_t index) const {
        return observations_[index].subject;
    }
    [[nodiscard]] const record::StationRecord& station() const { return station_; }
    [[nodiscard]] const SamplePlan& plan() const { return plan_; }

    /// Whether this one and the four on each side are ordinary readings, so that a change to it stands among
    /// sound neighbours. Marking keeps later changes away from it.
    [[nodiscard]] bool isQuiet(std::size_t index) const;
    void mark(std::size_t index) { marked_[index] = true; }

    /// The latest quiet reading so many days or more before the last day that fits, within 400 days.
    [[nodiscard]] std::optional<std::size_t> find(int daysBefore,
                                                  const std::function<bool(std::size_t)>& fits) const;

    std::vector<SampleObservation> take() && { return std::move(observations_); }

private:
    const SamplePlan plan_;
    const record::StationRecord& station_;
    std::vector<SampleObservation> observations_;
    std::vector<bool> marked_;
};

/// Corrections with their history, an estimate, a withdrawn reading, one bulb alone.
void addHistory(SampleRegister& book);

/// The honest slips of SamplePlan::slips.
std::vector<PlantedSlip> plantSlips(SampleRegister& book);

} // namespace wickbook::sample
