// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/salvage_judge.h"

#include "core/store/facts_body.h"
#include "core/store/observation_body.h"
#include "core/store/observation_index.h"

#include <algorithm>
#include <map>
#include <memory>
#include <tuple>
#include <utility>

namespace wickbook::store {

namespace {

/// Bytes made to harm could hold any number of rows under one number, and of gaps.
constexpr std::size_t kMostAtOnePlace = 16;
constexpr std::size_t kMostFittings = 20'000;
constexpr std::size_t kMostLooks = 200;
constexpr std::size_t kMostEndsTried = 200;
constexpr std::size_t kMostFragments = 100;
constexpr std::size_t kLongestFragment = 4000;

Checksum storedChecksum(const std::string& bytes) {
    Checksum checksum{};
    for (std::size_t i = 0; i < checksum.size() && i < bytes.size(); ++i)
        checksum[i] = static_cast<std::uint8_t>(bytes[i]);
    return checksum;
}

auto contentsOfRow(const RevisionRow& row) {
    return std::tie(row.sequence, row.id, row.kind, row.subject, row.recordedAt, row.who, row.why, row.body);
}

/// The bytes as text: what is no UTF-8, and no sign of any writing, shown as ?
std::string mended(std::string_view bytes) {
    std::string text;
    for (std::size_t at = 0; at < bytes.size();) {
        std::size_t length = 1;
        while (length < 4 && at + length <= bytes.size() && !isUtf8(bytes.substr(at, length)))
            ++length;
        const std::string_view sign = bytes.substr(at, length);
        const bool isSign =
            sign.size() == length && isUtf8(sign) && static_cast<unsigned char>(sign[0]) >= 0x20;
        text += isSign ? sign : std::string_view{"?"};
        at += isSign ? length : 1;
    }
    return text;
}

std::string readable(std::string_view bytes) {
    return mended(bytes.substr(0, kLongestFragment));
}

RevisionRow mended(RevisionRow row) {
    for (std::string* text : {&row.kind, &row.who, &row.why, &row.body})
        *text = mended(std::string_view{*text});
    return row;
}

/// One row at one number, and what is known of it.
struct Contender {
    const FoundRevision* found = nullptr;
    Checksum checksum{}; ///< as stored, or as the next row says it was
    bool proved = false;
    bool parses = false;
};

/// A reading that isn't proved may be revised in the new book, and must be one that can be written.
bool canBeRevised(const RevisionRow& row) {
    try {
        if (row.kind == kind::kObservation)
            static_cast<void>(observationBody(observationFromBody(row.body)));
        return true;
    } catch (const UnkeepableValue&) {
        return false;
    }
}

class Judging {
public:
    Judging(const std::vector<FoundRevision>& found, const std::vector<FoundEnd>& ends, std::int64_t mostRows,
            const PageBytes& pageBytes)
        : ends_(ends), mostRows_(mostRows), pageBytes_(pageBytes) {
        for (const FoundRevision& revision : found)
            place(revision);
    }

    Judgement run() {
        for (auto& [sequence, contenders] : places_)
            prove(sequence, contenders);
        fitStrays();
        Judgement judgement;
        dropBeyondTheEnd(judgement);
        judgement.expected = expected();
        choose(judgement);
        return judgement;
    }

private:
    void place(const FoundRevision& revision) {
        Contender contender{&revision, storedChecksum(revision.checksum), false, valuesParse(revision.row)};
        if (revision.row.sequence < 1 || revision.row.sequence > mostRows_) {
            strays_.push_back(contender);
            return;
        }
        auto& contenders = places_[revision.row.sequence];
        const bool known = std::ranges::any_of(contenders, [&](const Contender& other) {
            return other.found->checksum == revision.checksum &&
                   contentsOfRow(other.found->row) == contentsOfRow(revision.row);
        });
        if (!known && contenders.size() < kMostAtOnePlace)
            contenders.push_back(contender);
    }

    /// Checksums that the row before may have: none where it is lost.
    [[nodiscard]] std::vector<Checksum> before(std::int64_t sequence) const {
        if (sequence == 1)
            return {Checksum{}};
        std::vector<Checksum> checksums;
        const auto it = places_.find(sequence - 1);
        if (it == places_.end())
            return checksums;
        for (const Contender& contender : it->second) {
            if (contender.proved)
                return {contender.checksum};
            checksums.push_back(contender.checksum);
        }
        return checksums;
    }

    /// Whether the row after, or the recorded end, was made upon this checksum.
    [[nodiscard]] bool followedFrom(std::int64_t sequence, const Checksum& checksum) const {
        for (const FoundEnd& end : ends_) {
            if (end.count == sequence && end.head == bytesOf(checksum))
                return true;
        }
        const auto it = places_.find(sequence + 1);
        return it != places_.end() && std::ranges::any_of(it->second, [&](const Contender& next) {
                   return chainChecksum(checksum, next.found->row) == storedChecksum(next.found->checksum);
               });
    }

    void prove(std::int64_t sequence, std::vector<Contender>& contenders) const {
        const std::vector<Checksum> previous = before(sequence);
        for (Contender& contender : contenders) {
            for (const Checksum& checksum : previous) {
                const Checksum made = chainChecksum(checksum, contender.found->row);
                if (made != contender.checksum && !followedFrom(sequence, made))
                    continue;
                contender.checksum = made;
                contender.proved = true;
                return;
            }
        }
        if (!isKnownBefore(sequence)) {
            for (Contender& contender : contenders) {
                if (lostChecksumLiesBeside(*contender.found)) {
                    contender.proved = true;
                    return;
                }
            }
        }
    }

    /// The row before is lost, but its checksum may stand in the bytes beside. It is the last of its row, and
    /// rows lie one before the other from the page's end on: after it comes the row before that one, whose
    /// number stands behind its length, or the end of the page.
    bool lostChecksumLiesBeside(const FoundRevision& row) const {
        if (looks_ >= kMostLooks)
            return false;
        ++looks_;
        const std::string bytes = pageBytes_(row.page);
        const Checksum stored = storedChecksum(row.checksum);
        const auto endsAt = [&](std::size_t end) {
            return end >= stored.size() && end <= bytes.size() &&
                   chainChecksum(storedChecksum(bytes.substr(end - stored.size(), stored.size())), row.row) ==
                       stored;
        };
        if (endsAt(bytes.size()))
            return true;
        const std::string number =
            varintOf(static_cast<std::uint64_t>(std::max<std::int64_t>(row.row.sequence - 2, 0)));
        std::size_t tries = 0;
        for (std::size_t at = bytes.find(number); at != std::string::npos && tries < kMostEndsTried;
             at = bytes.find(number, at + 1)) {
            for (std::size_t length = 1; length <= 3 && length <= at; ++length) {
                if (varintAt(bytes, at - length).length != length)
                    continue;
                ++tries;
                if (endsAt(at - length))
                    return true;
            }
        }
        return false;
    }

    /// Rows whose number can't be theirs, or that the chain does not know at their number, tried at the
    /// places that are missing.
    void fitStrays() {
        std::vector<Contender> loose = strays_;
        for (const auto& [sequence, contenders] : places_) {
            for (const Contender& contender : contenders) {
                if (!contender.proved)
                    loose.push_back(contender);
            }
        }
        std::vector<std::int64_t> gaps;
        std::int64_t next = 1;
        for (const auto& [sequence, contenders] : places_) {
            if (sequence != next && gaps.size() < kMostFittings)
                gaps.push_back(next);
            next = sequence + 1;
        }
        gaps.push_back(next);
        std::size_t tries = 0;
        for (const Contender& stray : loose) {
            for (const std::int64_t gap : gaps) {
                if (places_.contains(gap) || ++tries > kMostFittings)
                    continue;
                RevisionRow row = stray.found->row;
                row.sequence = gap;
                const auto previous = before(gap);
                const bool fits = std::ranges::any_of(previous, [&](const Checksum& checksum) {
                    return chainChecksum(checksum, row) == stray.checksum;
                });
                if (!fits)
                    continue;
                settle(stray, std::move(row));
                break;
            }
        }
    }

    void settle(const Contender& stray, RevisionRow row) {
        if (const auto it = places_.find(stray.found->row.sequence); it != places_.end()) {
            std::erase_if(it->second, [&](const Contender& one) { return one.found == stray.found; });
            if (it->second.empty())
                places_.erase(it);
        }
        FoundRevision moved = *stray.found;
        moved.row = std::move(row);
        const std::int64_t sequence = moved.row.sequence;
        moved_.push_back(std::make_unique<FoundRevision>(std::move(moved)));
        places_[sequence] = {{moved_.back().get(), stray.checksum, true, valuesParse(moved_.back()->row)}};
        if (const auto after = places_.find(sequence + 1); after != places_.end())
            prove(sequence + 1, after->second);
    }

    /// A row whose number is hurt stands far beyond all others: where the recorded end is proved, what lies
    /// beyond it and has nothing before it was never there.
    void dropBeyondTheEnd(Judgement& judgement) {
        std::int64_t end = 0;
        for (const FoundEnd& one : ends_) {
            const auto it = places_.find(one.count);
            if (it != places_.end() && bestOf(it->second).proved &&
                bytesOf(bestOf(it->second).checksum) == one.head)
                end = std::max(end, one.count);
        }
        while (end > 0 && places_.rbegin()->first > end) {
            const auto last = std::prev(places_.end());
            if (bestOf(last->second).proved || places_.contains(last->first - 1))
                return;
            keepFragment(judgement, bestOf(last->second).found->row);
            places_.erase(last);
        }
    }

    /// How many there were: the highest number that a row has, or the recorded count where that is more and
    /// the recorded checksum is not the highest row's own, which would show that the count is what is hurt.
    [[nodiscard]] std::int64_t expected() const {
        const std::int64_t highest = places_.empty() ? 0 : places_.rbegin()->first;
        std::int64_t most = highest;
        for (const FoundEnd& end : ends_) {
            if (end.count <= most || end.count > mostRows_)
                continue;
            const bool countIsHurt =
                highest > 0 && std::ranges::any_of(places_.rbegin()->second, [&](const Contender& last) {
                    return bytesOf(last.checksum) == end.head;
                });
            if (!countIsHurt)
                most = end.count;
        }
        return most;
    }

    void choose(Judgement& judgement) const {
        std::int64_t next = 1;
        const auto lose = [&](std::int64_t last) {
            if (last < next)
                return;
            if (!judgement.lost.empty() && judgement.lost.back().last == next - 1)
                judgement.lost.back().last = last;
            else
                judgement.lost.push_back({next, last});
            next = last + 1;
        };
        for (const auto& [sequence, contenders] : places_) {
            lose(sequence - 1);
            const Contender& best = bestOf(contenders);
            if (best.proved && best.parses) {
                judgement.rows.push_back({best.found->row, Standing::Proved});
                next = sequence + 1;
                continue;
            }
            // One byte that is no letter any more must not lose a reading with it.
            RevisionRow row = best.parses ? best.found->row : mended(best.found->row);
            if (best.proved || !valuesParse(row) || !canBeRevised(row)) {
                keepFragment(judgement, best.found->row);
                lose(sequence);
                continue;
            }
            const Standing standing =
                best.parses && !isKnownBefore(sequence) ? Standing::Unproven : Standing::Altered;
            judgement.rows.push_back({std::move(row), standing});
            next = sequence + 1;
        }
        lose(judgement.expected);
        const auto last = places_.find(judgement.expected);
        for (const FoundEnd& end : ends_) {
            const bool agrees = last != places_.end() && bestOf(last->second).proved &&
                                bytesOf(bestOf(last->second).checksum) == end.head;
            if (end.count == judgement.expected && (agrees || last == places_.end()))
                judgement.head = end.head;
        }
    }

    /// Whether the checksum that this row was made upon is known for sure: an altered row's own may be hurt
    /// too.
    [[nodiscard]] bool isKnownBefore(std::int64_t sequence) const {
        const auto it = places_.find(sequence - 1);
        return sequence == 1 || (it != places_.end() && bestOf(it->second).proved);
    }

    static const Contender& bestOf(const std::vector<Contender>& contenders) {
        return *std::ranges::max_element(contenders, {}, [](const Contender& one) {
            return std::pair{one.proved, one.parses};
        });
    }

    static void keepFragment(Judgement& judgement, const RevisionRow& row) {
        if (judgement.fragments.size() < kMostFragments)
            judgement.fragments.push_back(
                {row.sequence, readable(row.kind), readable(row.who), readable(row.why), readable(row.body)});
    }

    const std::vector<FoundEnd>& ends_;
    std::int64_t mostRows_;
    const PageBytes& pageBytes_;
    std::map<std::int64_t, std::vector<Contender>> places_;
    std::vector<Contender> strays_;
    std::vector<std::unique_ptr<FoundRevision>> moved_;
    mutable std::size_t looks_ = 0;
};

} // namespace

std::int64_t Judgement::count(Standing standing) const {
    return std::ranges::count(rows, standing, &JudgedRevision::standing);
}

bool Judgement::whole() const {
    return !rows.empty() && lost.empty() && count(Standing::Proved) == static_cast<std::int64_t>(rows.size());
}

Judgement judge(const std::vector<FoundRevision>& found, const std::vector<FoundEnd>& ends,
                std::int64_t mostRows, const PageBytes& pageBytes) {
    return Judging(found, ends, mostRows, pageBytes).run();
}

std::vector<SequenceRange> joined(std::vector<SequenceRange> ranges) {
    std::vector<SequenceRange> joint;
    for (const SequenceRange& range : ranges) {
        if (!joint.empty() && joint.back().last + 1 == range.first)
            joint.back().last = range.last;
        else
            joint.push_back(range);
    }
    return joint;
}

bool valuesParse(const RevisionRow& row) {
    if (row.id.size() != 16 || row.subject.size() != 16 || row.kind.empty() || !isUtf8(row.kind) ||
        !isUtf8(row.who) || !isUtf8(row.why) || !isUtf8(row.body) || !row.body.starts_with('{') ||
        !row.body.ends_with('}'))
        return false;
    try {
        record::Uuid subject;
        std::ranges::transform(row.subject, subject.bytes.begin(),
                               [](char c) { return static_cast<std::uint8_t>(c); });
        if (row.kind == kind::kObservation) {
            static_cast<void>(observationFromBody(row.body));
        } else {
            record::StationFacts facts;
            addFact(facts, {row.kind, subject, row.body});
        }
    } catch (const MalformedBody&) {
        return false;
    }
    return true;
}

} // namespace wickbook::store
