// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sef_join.h"

#include "core/exchange/plan_places.h"
#include "core/record/observing_hours.h"

#include <algorithm>
#include <map>

namespace wickbook::exchange {

namespace {

/// A judgement that a row brings with it: the worse of a pair's two stands.
record::Quality worseOf(record::Quality before, const SefRow& row) {
    if (!row.flagged || before == record::Quality::Erroneous) {
        return before;
    }
    return row.erroneous ? record::Quality::Erroneous : record::Quality::Doubtful;
}

/// What the files say of one moment.
struct Moment {
    struct Part {
        const SefFile* file;
        const SefRow* row;
    };
    std::optional<Part> dry;
    std::optional<Part> wet;
    std::optional<Part> pressure;
};

std::optional<Moment::Part>& placeFor(Moment& moment, SefVariable variable) {
    return variable == SefVariable::DryBulb    ? moment.dry
           : variable == SefVariable::Pressure ? moment.pressure
                                               : moment.wet;
}

RejectedLine rejectedOf(const SefFile& file, const SefRow& row, RejectReason reason, std::string detail) {
    return {file.name, row.line, row.text, reason, "Value", {}, std::move(detail)};
}

/// Every entry once; where bulbs or barometer differ, each with its variable before it.
void addRemarks(std::string& note, const Moment& moment) {
    std::vector<std::string> entries;
    for (const auto* part : {&moment.dry, &moment.wet, &moment.pressure}) {
        if (!*part) {
            continue;
        }
        for (const std::string& remark : (*part)->row->remarks) {
            const bool own =
                remark.starts_with("orig=") || remark.starts_with("Orig=") || remark.starts_with("qc=");
            std::string entry = own ? (*part)->file->header.variable + " " + remark : remark;
            if (std::find(entries.begin(), entries.end(), entry) == entries.end()) {
                entries.push_back(std::move(entry));
            }
        }
    }
    for (const std::string& entry : entries) {
        note += (note.empty() ? "" : "; ") + entry;
    }
}

bool sameValue(const SefRow& one, const SefRow& other) {
    return one.temperature == other.temperature && one.pressure == other.pressure;
}

class Joining {
public:
    explicit Joining(const record::StationRecord& station) : station_(station) {}

    void take(const SefFile& file) {
        for (const SefRow& row : file.rows) {
            auto& place = placeFor(moments_[row.instant], *file.variable);
            if (!place) {
                place = Moment::Part{&file, &row};
            } else if (!place->row->given() && row.given()) {
                place = Moment::Part{&file, &row};
            } else if (row.given() && !sameValue(*place->row, row)) {
                plan_.rejected.push_back(rejectedOf(file, row, RejectReason::SameHourTwice, "same-moment"));
            }
        }
        plan_.lines += file.lines;
        plan_.rejected.insert(plan_.rejected.end(), file.rejected.begin(), file.rejected.end());
    }

    ImportPlan finish() {
        PlanPlaces places;
        for (const auto& [instant, moment] : moments_) {
            plan(instant, moment, places);
        }
        return std::move(plan_);
    }

private:
    void plan(record::Instant instant, const Moment& moment, PlanPlaces& places) {
        PlannedObservation planned;
        record::Observation& values = planned.values;
        record::placeInTime(values, station_, instant);
        bool any = false;
        for (const auto* part : {&moment.dry, &moment.wet, &moment.pressure}) {
            if (!*part) {
                continue;
            }
            any = any || (*part)->row->given();
            if (planned.line == 0) {
                planned.file = (*part)->file->name;
                planned.line = (*part)->row->line;
                planned.text = (*part)->row->text;
            } else {
                planned.text += "\n" + (*part)->row->text;
            }
        }
        if (moment.dry) {
            values.dry.value = moment.dry->row->temperature;
            values.quality = worseOf(values.quality, *moment.dry->row);
        }
        if (moment.wet) {
            values.wet.value = moment.wet->row->temperature;
            values.quality = worseOf(values.quality, *moment.wet->row);
            if (moment.wet->file->variable == SefVariable::IceBulb && values.wet.value) {
                values.wick = record::WickState::Ice;
            }
        }
        if (moment.pressure) {
            values.pressure = moment.pressure->row->pressure;
        }
        addRemarks(values.note, moment);
        RejectedLine refusal{};
        if (!any) {
            refusal.reason = RejectReason::NothingRead;
            refusal.field = "Value";
        } else if (!places.take(values)) {
            refusal = placeTaken(values, ImportField::Time);
        } else {
            plan_.observations.push_back(std::move(planned));
            return;
        }
        refusal.file = std::move(planned.file);
        refusal.line = planned.line;
        refusal.text = std::move(planned.text);
        plan_.rejected.push_back(std::move(refusal));
    }

    const record::StationRecord& station_;
    std::map<record::Instant, Moment> moments_;
    ImportPlan plan_;
};

} // namespace

tl::expected<ImportPlan, ImportError> joinSef(std::span<const SefFile> files,
                                              const record::StationRecord& station) {
    Joining joining{station};
    const SefFile* first = nullptr;
    std::vector<AsideFile> aside;
    for (const SefFile& file : files) {
        if (!file.variable) {
            aside.push_back({file.name, file.aside,
                             file.aside == "variable" ? file.header.variable : file.header.statistic});
            continue;
        }
        if (first != nullptr && file.header.id != first->header.id) {
            return tl::unexpected(
                ImportError{ImportErrorKind::SefStationsDiffer, first->header.id + ", " + file.header.id});
        }
        if (first == nullptr) {
            first = &file;
        }
        joining.take(file);
    }
    if (first == nullptr) {
        return tl::unexpected(
            ImportError{ImportErrorKind::SefNothing, aside.empty() ? std::string{} : aside.front().word});
    }
    ImportPlan plan = joining.finish();
    plan.aside = std::move(aside);
    plan.format = {'\t', first->encoding};
    return plan;
}

} // namespace wickbook::exchange
