// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage_book.h"

#include "core/store/body.h"
#include "core/store/book_header.h"
#include "core/store/connection.h"
#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "core/store/observation_index.h"
#include "core/store/revision_log.h"
#include "core/store/schema.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <tuple>

namespace wickbook::store {

namespace {

using body::Json;

constexpr std::string_view kSalvageKind = "salvage";

record::Uuid identityFrom(const std::string& bytes) {
    record::Uuid uuid;
    std::ranges::transform(bytes.substr(0, uuid.bytes.size()), uuid.bytes.begin(),
                           [](char c) { return static_cast<std::uint8_t>(c); });
    return uuid;
}

std::string hexadecimal(const std::string& bytes) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string text;
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        text += kDigits[byte >> 4U];
        text += kDigits[byte & 0x0FU];
    }
    return text;
}

/// How one reading stands after the revisions so far.
struct SalvagedReading {
    record::Observation values;
    std::int64_t sequence = 0;   ///< in the new book
    std::int64_t newestRead = 0; ///< of those that were returned, in the damaged book
    std::int64_t revisions = 0;
    Standing newest = Standing::Proved;
};

class SalvageWriting {
public:
    SalvageWriting(const Connection& connection, const Judgement& judgement, const SalvageWords& words,
                   SalvageReport& report)
        : judgement_(judgement), words_(words), report_(report), log_(connection), index_(connection) {}

    /// False: stopped.
    bool run(const Progress& progress) {
        const auto total = static_cast<std::int64_t>(judgement_.rows.size());
        const std::string station = stationIdentity();
        std::int64_t done = 0;
        for (const JudgedRevision& revision : judgement_.rows) {
            if (progress && !progress(done++, total))
                return false;
            if (revision.standing == Standing::Altered && revision.row.kind == kind::kStation &&
                revision.row.subject != station) {
                // Another identity of the station would be another station: its text is kept, not its row.
                loseAltered(revision.row);
                continue;
            }
            appendRow(revision);
        }
        judgeDoubtful();
        clearHours();
        nameStation(station);
        report_.chainKept = report_.chainKept && report_.movedFromHour == 0 && !report_.stationLost;
        if (!report_.chainKept)
            appendSalvage();
        for (const auto& [subject, reading] : readings_) {
            index_.put(subject, reading.values, reading.sequence, reading.revisions);
            report_.observations += reading.values.withdrawn ? 0 : 1;
        }
        log_.finish();
        return true;
    }

private:
    /// Of the station's fact: the oldest that is proved, else the oldest.
    [[nodiscard]] std::string stationIdentity() const {
        std::string identity;
        for (const JudgedRevision& revision : judgement_.rows) {
            if (revision.row.kind != kind::kStation)
                continue;
            if (revision.standing != Standing::Altered)
                return revision.row.subject;
            if (identity.empty())
                identity = revision.row.subject;
        }
        return identity;
    }

    void loseAltered(const RevisionRow& row) {
        --report_.altered;
        ++report_.lost;
        std::erase(report_.alteredAt, SequenceRange{row.sequence, row.sequence});
        report_.lostAt.push_back({row.sequence, row.sequence});
        std::ranges::sort(report_.lostAt, {}, &SequenceRange::first);
        moreFragments_.push_back({row.sequence, row.kind, row.who, row.why, row.body});
    }

    void appendRow(const JudgedRevision& revision) {
        const RevisionRow& row = revision.row;
        record::Uuid id = identityFrom(row.id);
        if (!identities_.insert(row.id).second) {
            // Two rows of one identity: bytes of one changed into the other's. Both come in.
            id = uuidFromText("salvaged:" + row.id + std::to_string(row.sequence));
            identities_.insert(bytesOf(id));
        }
        const record::Uuid subject = identityFrom(row.subject);
        const Receipt receipt = log_.append(id, row.kind, subject, {row.who, row.why}, row.body,
                                            record::Instant{std::chrono::seconds{row.recordedAt}});
        if (row.kind == kind::kObservation) {
            SalvagedReading& reading = readings_[subject];
            reading.values = observationFromBody(row.body);
            reading.sequence = receipt.sequence;
            reading.newestRead = row.sequence;
            ++reading.revisions;
            reading.newest = revision.standing;
        } else if (revision.standing == Standing::Altered) {
            report_.alteredFacts.push_back(row.kind);
        }
    }

    void revise(const record::Uuid& subject, SalvagedReading& reading, const std::string& why) {
        const std::string body = observationBody(reading.values);
        reading.sequence = log_.append(log_.nextId(kind::kObservation, subject, body), kind::kObservation,
                                       subject, {words_.author.who, why}, body)
                               .sequence;
        ++reading.revisions;
    }

    static void makeDoubtful(SalvagedReading& reading) {
        if (reading.values.quality != record::Quality::Erroneous)
            reading.values.quality = record::Quality::Doubtful;
    }

    void judgeDoubtful() {
        for (const auto& [sequence, subject] : inOrder()) {
            SalvagedReading& reading = readings_[subject];
            if (reading.newest != Standing::Altered)
                continue;
            makeDoubtful(reading);
            revise(subject, reading, words_.alteredWhy);
            ++report_.judgedDoubtful;
        }
    }

    /// No two live readings ever stood at one hour, so that whichever was written last had it, and what took
    /// the other away from there is lost; an altered one may never have been there.
    void clearHours() {
        std::map<record::ObservingHour, std::vector<std::tuple<bool, std::int64_t, record::Uuid>>> hours;
        for (const auto& [subject, reading] : readings_) {
            if (reading.values.hour && !reading.values.withdrawn)
                hours[*reading.values.hour].emplace_back(reading.newest == Standing::Altered,
                                                         -reading.newestRead, subject);
        }
        for (auto& [hour, claims] : hours) {
            std::ranges::sort(claims);
            for (std::size_t i = 1; i < claims.size(); ++i) {
                const record::Uuid& subject = std::get<2>(claims[i]);
                SalvagedReading& reading = readings_[subject];
                reading.values.hour.reset();
                makeDoubtful(reading);
                revise(subject, reading, words_.hourWhy);
                ++report_.movedFromHour;
            }
        }
    }

    void nameStation(const std::string& identity) {
        if (!identity.empty())
            return;
        record::StationFacts facts;
        facts.id = uuidFromText("salvaged station" + judgement_.rows.front().row.id);
        facts.name = words_.stationName;
        const FactRow row = factRows(facts).front();
        log_.append(log_.nextId(row.kind, row.subject, row.body), row.kind, row.subject, words_.author,
                    row.body);
        report_.stationLost = true;
    }

    [[nodiscard]] std::vector<std::pair<std::int64_t, record::Uuid>> inOrder() const {
        std::vector<std::pair<std::int64_t, record::Uuid>> order;
        for (const auto& [subject, reading] : readings_)
            order.emplace_back(reading.sequence, subject);
        std::ranges::sort(order);
        return order;
    }

    static Json rangesAsJson(const std::vector<SequenceRange>& ranges) {
        Json list = Json::array();
        for (const SequenceRange& range : joined(ranges))
            list.push_back(Json::array({range.first, range.last}));
        return list;
    }

    void appendSalvage() {
        Json object = Json::object();
        if (judgement_.head)
            object["from_head"] = hexadecimal(*judgement_.head);
        object["expected"] = report_.expected;
        object["lost"] = rangesAsJson(report_.lostAt);
        object["altered"] = rangesAsJson(report_.alteredAt);
        object["unproven"] = rangesAsJson(report_.unprovenAt);
        Json fragments = Json::array();
        const auto add = [&](const Fragment& fragment) {
            Json one = Json::object();
            one["sequence"] = fragment.sequence;
            body::putText(one, "kind", fragment.kind);
            body::putText(one, "who", fragment.who);
            body::putText(one, "why", fragment.why);
            body::putText(one, "body", fragment.body);
            fragments.push_back(std::move(one));
        };
        std::ranges::for_each(judgement_.fragments, add);
        std::ranges::for_each(moreFragments_, add);
        object["fragments"] = std::move(fragments);
        const std::string text = body::dump(object);
        const record::Uuid subject = uuidFromText("salvage" + text);
        log_.append(log_.nextId(kSalvageKind, subject, text), kSalvageKind, subject, words_.author, text);
    }

    const Judgement& judgement_;
    const SalvageWords& words_;
    SalvageReport& report_;
    RevisionLog log_;
    ObservationIndex index_;
    std::map<record::Uuid, SalvagedReading> readings_;
    std::set<std::string> identities_;
    std::vector<Fragment> moreFragments_;
};

} // namespace

Result<void> createSalvaged(const std::filesystem::path& path, const std::filesystem::path& file,
                            const Judgement& judgement, const SalvageWords& words,
                            std::shared_ptr<const record::Clock> clock, SalvageReport& report,
                            const Progress& progress) {
    return guarded(path, nullptr, [&]() -> Result<void> {
        Connection connection;
        connection.path = path;
        connection.clock = std::move(clock);
        connection.database =
            std::make_unique<SQLite::Database>(file.string(), SQLite::OPEN_READWRITE, kPatienceMilliseconds);
        setUp(connection.db());
        return guarded(connection, [&]() -> Result<void> {
            connection.db().exec("PRAGMA journal_mode=DELETE");
            connection.db().exec(fmt::format("PRAGMA application_id={}", kApplicationId).c_str());
            migrate(connection.db(), path, migrations());
            WriteGuard guard(connection.db());
            SalvageWriting writing(connection, judgement, words, report);
            report.stopped = !writing.run(progress);
            if (!report.stopped)
                guard.commit();
            return {};
        });
    });
}

} // namespace wickbook::store
