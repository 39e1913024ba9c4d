// SPDX-License-Identifier: GPL-3.0-or-later
// Salvage of books that were hurt at one known place: what is returned, what is said of it, and that the new
// book is a sound one.
#include "tests/core/store/salvage_testing.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;
using ::testing::HasSubstr;

namespace {

constexpr int kReadings = 60;

class ABookToBeSalvaged : public ::testing::Test {
protected:
    TempFolder folder;
    std::filesystem::path damaged = folder / "damaged";
    std::filesystem::path fresh = folder / "fresh";
    std::string bytes;
    std::vector<PlainRow> sound;

    void make(const std::function<void(Book&)>& more = {}) {
        {
            Book book = newBook(damaged);
            std::vector<ObservationChange> changes;
            for (int i = 0; i < kReadings; ++i)
                changes.push_back(change(reading(i), static_cast<std::uint64_t>(i)));
            ASSERT_TRUE(book.appendAll(changes));
            if (more)
                more(book);
        }
        bytes = bytesAt(damaged);
        sound = askSqlite(damaged, kAllRevisions);
    }
    /// Where the record of a revision stands: its identity, followed by its kind. Indexes hold it alone.
    [[nodiscard]] std::size_t recordOf(std::int64_t sequence) const {
        const PlainRow& row = sound.at(static_cast<std::size_t>(sequence - 1));
        const std::string wanted = row[1].substr(2) + row[2].substr(2);
        const std::size_t place = bytes.find(wanted);
        EXPECT_NE(place, std::string::npos) << sequence;
        return place;
    }
    /// The header of the record is no header any more: the row can't be found.
    void lose(std::int64_t sequence) { bytes.replace(recordOf(sequence) - 8, 8, std::string(8, '\xee')); }
    /// A value in the body becomes another.
    void alter(std::int64_t sequence, const std::string& from, const std::string& to) {
        ASSERT_EQ(from.size(), to.size());
        const std::size_t place = bytes.find(from, recordOf(sequence));
        ASSERT_LT(place, recordOf(sequence) + 600);
        bytes.replace(place, from.size(), to);
    }
    SalvageReport salvageIt() {
        writeBytes(damaged, bytes);
        const auto report = salvaged(damaged, fresh);
        EXPECT_TRUE(report) << report.error().detail;
        EXPECT_TRUE(bytesAt(damaged) == bytes) << "the damaged book was written to";
        const auto book = Book::open(fresh);
        EXPECT_TRUE(book);
        if (book) {
            EXPECT_EQ(problemsOf(*book), "");
            EXPECT_FALSE(book->readOnlyBecause());
        }
        EXPECT_EQ(contentsOf(folder.path()).size(), 2U) << "something was left beside";
        return report ? *report : SalvageReport{};
    }
    /// The place in the damaged book of a reading's first revision.
    [[nodiscard]] std::int64_t placeOf(int number) const {
        return static_cast<std::int64_t>(sound.size()) - kReadings + number + 1;
    }
    static record::Uuid subjectOf(int number) {
        return change(reading(number), static_cast<std::uint64_t>(number)).subject;
    }
    nlohmann::json salvageBody() const {
        const auto rows = askSqlite(fresh, "SELECT body FROM revision WHERE kind = 'salvage'");
        return rows.size() == 1 ? nlohmann::json::parse(rows[0][0].substr(2)) : nlohmann::json{};
    }
};

} // namespace

TEST_F(ABookToBeSalvaged, ComesBackWithItsOwnChainWhenItIsSound) {
    make();
    const auto report = salvageIt();
    EXPECT_TRUE(report.chainKept);
    EXPECT_EQ(report.proved, static_cast<std::int64_t>(sound.size()));
    EXPECT_EQ(report.lost + report.altered + report.unproven, 0);
    EXPECT_EQ(report.pagesUnread, 0U);
    EXPECT_EQ(report.observations, kReadings);
    EXPECT_EQ(askSqlite(fresh, kAllRevisions), sound);
    EXPECT_EQ(askSqlite(fresh, "SELECT * FROM chain"), askSqlite(damaged, "SELECT * FROM chain"));
    EXPECT_EQ(askSqlite(fresh, "SELECT * FROM observation ORDER BY subject"),
              askSqlite(damaged, "SELECT * FROM observation ORDER BY subject"));
}

TEST_F(ABookToBeSalvaged, ReturnsAnAlteredReadingAsItReadsAndJudgesItDoubtful) {
    make();
    alter(placeOf(20), "[180,1,\"C\"]", "[980,1,\"C\"]"); // reading 20 has 18.0 °C dry
    const auto report = salvageIt();
    EXPECT_FALSE(report.chainKept);
    EXPECT_EQ(report.altered, 1);
    EXPECT_EQ(report.alteredAt, (std::vector<SequenceRange>{{placeOf(20), placeOf(20)}}));
    EXPECT_EQ(report.judgedDoubtful, 1);
    EXPECT_EQ(report.lost, 0);
    EXPECT_EQ(report.proved, static_cast<std::int64_t>(sound.size()) - 1);
    const auto history = Book::open(fresh)->history(subjectOf(20));
    ASSERT_TRUE(history);
    ASSERT_EQ(history->size(), 2U);
    EXPECT_EQ(history->front().values.dry.value->value, (units::Decimal{980, 1}));
    EXPECT_EQ(history->front().values.quality, record::Quality::NotJudged);
    EXPECT_EQ(history->back().values.quality, record::Quality::Doubtful);
    EXPECT_EQ(history->back().values.dry, history->front().values.dry);
    EXPECT_EQ(history->back().stamp.author, (record::Author{"cd", "bytes changed"}));
    const auto body = salvageBody();
    EXPECT_EQ(body["altered"], (nlohmann::json{{placeOf(20), placeOf(20)}}));
    EXPECT_EQ(body["lost"], nlohmann::json::array());
    // The old chain's end, as SQLite reads it from the damaged book.
    std::string head;
    for (const char c : askSqlite(damaged, "SELECT hex(head) FROM chain").at(0).at(0).substr(2))
        head += static_cast<char>(std::tolower(c));
    EXPECT_EQ(body["from_head"], head);
}

TEST_F(ABookToBeSalvaged, DoesNotDoubtAReadingWhoseAlteredRevisionWasRevisedSince) {
    make([](Book& book) {
        auto again = change(reading(3), 900, "read the wrong mark");
        again.subject = subjectOf(3);
        again.values.note = "corrected";
        ASSERT_TRUE(book.append(again));
    });
    // The first revision of reading 3; the newest one is as it was written.
    const std::int64_t first = static_cast<std::int64_t>(sound.size()) - kReadings + 3;
    alter(first, "[163,1,\"C\"]", "[963,1,\"C\"]");
    const auto report = salvageIt();
    EXPECT_EQ(report.altered, 1);
    EXPECT_EQ(report.judgedDoubtful, 0);
    const auto now = Book::open(fresh)->observation(subjectOf(3));
    ASSERT_TRUE(now && *now);
    EXPECT_EQ((*now)->values.quality, record::Quality::NotJudged);
    EXPECT_EQ((*now)->values.note, "corrected");
    EXPECT_EQ((*now)->revisionCount, 2);
}

TEST_F(ABookToBeSalvaged, ProvesARowOfWhichOnlyTheChecksumIsHurt) {
    make();
    for (const std::int64_t sequence : {placeOf(10), placeOf(kReadings - 1), std::int64_t{1}}) {
        const std::string stored = sound[static_cast<std::size_t>(sequence - 1)][8].substr(2);
        std::size_t place = bytes.find(stored, recordOf(sequence));
        ASSERT_NE(place, std::string::npos);
        bytes[place + 7] = static_cast<char>(bytes[place + 7] ^ 0x10);
    }
    const auto report = salvageIt();
    EXPECT_TRUE(report.chainKept) << rangesText(report.alteredAt) << "/" << rangesText(report.lostAt);
    EXPECT_EQ(askSqlite(fresh, kAllRevisions), sound);
}

TEST_F(ABookToBeSalvaged, ProvesARowOfWhichOnlyTheNumberIsHurt) {
    make();
    // The number's last byte stands before the record's header: its length, then ten bytes of types.
    const std::size_t record = recordOf(placeOf(30));
    std::size_t header = record;
    while (bytes.substr(header, 2) != std::string{"\0\x2c", 2})
        --header;
    ASSERT_EQ(static_cast<unsigned char>(bytes[header - 2]), placeOf(30));
    bytes[header - 2] = static_cast<char>(placeOf(30) ^ 0x40);
    const auto report = salvageIt();
    EXPECT_TRUE(report.chainKept) << rangesText(report.alteredAt) << "/" << rangesText(report.lostAt);
    EXPECT_EQ(askSqlite(fresh, kAllRevisions), sound);
}

TEST_F(ABookToBeSalvaged, NamesTheLostAndProvesTheOneAfterByTheChecksumLeftBehind) {
    make();
    lose(placeOf(10));
    lose(placeOf(11));
    lose(placeOf(40));
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 3);
    EXPECT_EQ(rangesText(report.lostAt), std::to_string(placeOf(10)) + "-" + std::to_string(placeOf(11)) +
                                             " " + std::to_string(placeOf(40)) + "-" +
                                             std::to_string(placeOf(40)) + " ");
    EXPECT_EQ(report.unproven, 0);
    EXPECT_EQ(report.altered, 0);
    EXPECT_EQ(report.observations, kReadings - 3);
    EXPECT_EQ(report.expected, static_cast<std::int64_t>(sound.size()));
    EXPECT_EQ(salvageBody()["lost"],
              (nlohmann::json{{placeOf(10), placeOf(11)}, {placeOf(40), placeOf(40)}}));
}

TEST_F(ABookToBeSalvaged, SaysThatARowCannotBeProvedWhenAllOfTheOneBeforeIsGone) {
    make();
    const std::size_t place = recordOf(placeOf(10));
    const std::string checksum = sound[static_cast<std::size_t>(placeOf(10) - 1)][8].substr(2);
    const std::size_t end = bytes.find(checksum, place) + checksum.size();
    bytes.replace(place - 12, end - place + 12, std::string(end - place + 12, '\0'));
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 1);
    EXPECT_EQ(report.unproven, 1);
    EXPECT_EQ(report.unprovenAt, (std::vector<SequenceRange>{{placeOf(11), placeOf(11)}}));
    EXPECT_EQ(report.judgedDoubtful, 0) << "nothing says that it changed";
}

TEST_F(ABookToBeSalvaged, CountsRowsMissingAtTheEndByTheRecordedCount) {
    make();
    lose(placeOf(kReadings - 2));
    lose(placeOf(kReadings - 1));
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 2);
    EXPECT_EQ(report.expected, static_cast<std::int64_t>(sound.size()));
}

TEST_F(ABookToBeSalvaged, DoesNotMissRowsThatOnlyAHurtCountSpeaksOf) {
    make();
    // The row of "chain": header 04 00 4c, then the count's type; the count follows the checksum.
    const std::string head = askSqlite(damaged, "SELECT head FROM chain").at(0).at(0).substr(2);
    std::size_t place = 0;
    int hurt = 0;
    while ((place = bytes.find(std::string{"\4\0\x4c", 3}, place)) != std::string::npos) {
        if (bytes.substr(place + 4, 32) == head) {
            bytes[place + 36] = static_cast<char>(bytes[place + 36] + 20);
            ++hurt;
        }
        ++place;
    }
    ASSERT_GT(hurt, 0);
    const auto report = salvageIt();
    EXPECT_EQ(report.expected, static_cast<std::int64_t>(sound.size()));
    EXPECT_TRUE(report.chainKept);
}

TEST_F(ABookToBeSalvaged, KeepsTheTextOfWhatCanNoLongerBeRead) {
    make();
    alter(placeOf(20), "\"dry\":[180", "\"dry\"![18:");
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 1);
    EXPECT_EQ(report.altered, 0);
    const auto fragments = salvageBody()["fragments"];
    ASSERT_EQ(fragments.size(), 1U);
    EXPECT_EQ(fragments[0]["sequence"], placeOf(20));
    EXPECT_THAT(fragments[0]["body"].get<std::string>(), HasSubstr("\"dry\"![18:,1,\"C\"]"));
}

TEST_F(ABookToBeSalvaged, DoesNotLoseAReadingForOneByteThatIsNoLetterAnyMore) {
    make([](Book& book) {
        auto noted = change(reading(kReadings), 903);
        noted.values.note = "Nebel über dem Bach";
        ASSERT_TRUE(book.append(noted));
    });
    const auto last = static_cast<std::int64_t>(sound.size());
    alter(last, "Bach", "B\xff\x01h");
    const auto report = salvageIt();
    EXPECT_EQ(report.altered, 1);
    EXPECT_EQ(report.lost, 0);
    const auto kept = Book::open(fresh)->atHour(*reading(kReadings).hour);
    ASSERT_TRUE(kept && *kept);
    EXPECT_EQ((*kept)->values.note, "Nebel über dem B??h");
    EXPECT_EQ((*kept)->values.dry, reading(kReadings).dry);
    EXPECT_EQ((*kept)->values.quality, record::Quality::Doubtful);
}

TEST_F(ABookToBeSalvaged, LosesNoReadingWhereTwoClaimOneHourAfterALostWithdrawal) {
    make([](Book& book) {
        auto away = change(reading(5), 901, "entered on the wrong day");
        away.subject = subjectOf(5);
        away.values.withdrawn = true;
        ASSERT_TRUE(book.append(away));
        auto anew = change(reading(5), 902);
        anew.values.dry.value->value = {171, 1};
        ASSERT_TRUE(book.append(anew));
    });
    lose(static_cast<std::int64_t>(sound.size()) - 1); // the withdrawal
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 1);
    EXPECT_EQ(report.movedFromHour, 1);
    EXPECT_EQ(report.observations, kReadings + 1) << "both are there";
    const auto book = Book::open(fresh);
    const auto standing = book->atHour(*reading(5).hour);
    ASSERT_TRUE(standing && *standing);
    EXPECT_EQ((*standing)->values.dry.value->value, (units::Decimal{171, 1}))
        << "written last: it had the hour";
    const auto other = book->observation(subjectOf(5));
    ASSERT_TRUE(other && *other);
    EXPECT_FALSE((*other)->values.hour);
    EXPECT_FALSE((*other)->values.withdrawn);
    EXPECT_EQ((*other)->values.quality, record::Quality::Doubtful);
    EXPECT_EQ((*other)->stamp.author.why, "hour claimed twice");
}

TEST_F(ABookToBeSalvaged, GivesAnAlteredHourUpToTheReadingThatHasIt) {
    make();
    // Reading 41 comes to stand at the hour of reading 40.
    const auto minute = [](int number) { return std::to_string(reading(number).hour->hour.count()); };
    const std::string day = std::to_string(reading(40).hour->date.time_since_epoch().count());
    ASSERT_EQ(reading(41).hour->date, reading(40).hour->date);
    alter(placeOf(41), "\"hour\":[" + day + "," + minute(41) + "]",
          "\"hour\":[" + day + ",0" + minute(40) + "]");
    // "0540" is no JSON number: the row is lost, as a text.
    EXPECT_EQ(salvageIt().lost, 1);
    std::filesystem::remove(fresh);

    const std::string other = std::to_string(reading(43).hour->date.time_since_epoch().count());
    bytes.replace(bytes.find("\"hour\":[" + other + "," + minute(43), recordOf(placeOf(43))),
                  8 + other.size(), "\"hour\":[" + day);
    // Now 43 says the evening of the 21st, where 41 stood and is lost: no conflict, and it is doubted.
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 1);
    EXPECT_EQ(report.altered, 1);
    EXPECT_EQ(report.movedFromHour, 0);
    std::filesystem::remove(fresh);

    const std::string third = std::to_string(reading(45).hour->date.time_since_epoch().count());
    bytes.replace(bytes.find("\"hour\":[" + third + "," + minute(45), recordOf(placeOf(45))),
                  8 + third.size(),
                  "\"hour\":[" + std::to_string(reading(47).hour->date.time_since_epoch().count()));
    const auto both = salvageIt();
    EXPECT_EQ(both.altered, 2);
    EXPECT_EQ(both.movedFromHour, 1);
    const auto book = Book::open(fresh);
    const auto standing = book->atHour(*reading(47).hour);
    ASSERT_TRUE(standing && *standing);
    EXPECT_EQ((*standing)->id(), subjectOf(47));
    const auto moved = book->observation(subjectOf(45));
    ASSERT_TRUE(moved && *moved);
    EXPECT_FALSE((*moved)->values.hour);
    EXPECT_EQ((*moved)->values.quality, record::Quality::Doubtful);
}

TEST_F(ABookToBeSalvaged, OpensWithoutAnyFactOfTheStationAndInventsNone) {
    make();
    const auto facts = static_cast<std::int64_t>(sound.size()) - kReadings;
    for (std::int64_t sequence = 1; sequence <= facts; ++sequence)
        lose(sequence);
    const auto report = salvageIt();
    EXPECT_TRUE(report.stationLost);
    EXPECT_EQ(report.lost, facts);
    EXPECT_EQ(report.observations, kReadings);
    auto book = Book::open(fresh);
    const auto station = book->station();
    ASSERT_TRUE(station);
    EXPECT_EQ(station->name(), "Unnamed");
    EXPECT_TRUE(station->facts().periods.empty());
    EXPECT_TRUE(station->facts().thermometers.empty());
    // The facts can be entered anew.
    auto entered = inventedStation();
    entered.id = station->facts().id;
    const auto revised = book->reviseFacts(entered, kAuthor);
    ASSERT_TRUE(revised) << revised.error().detail;
    EXPECT_EQ(book->station()->name(), inventedStation().name);
    EXPECT_EQ(problemsOf(*book), "");
}

TEST_F(ABookToBeSalvaged, KeepsOneIdentityOfTheStation) {
    make([](Book& book) {
        auto facts = inventedStation();
        facts.name = "Nirgends am Fluss (invented)";
        ASSERT_TRUE(book.reviseFacts(facts, kAuthor));
    });
    // The last revision renames the station; its subject is hurt.
    const auto last = static_cast<std::int64_t>(sound.size());
    const std::size_t subject = recordOf(last) + 16 + std::string{"station"}.size();
    bytes[subject] = static_cast<char>(bytes[subject] ^ 1);
    const auto report = salvageIt();
    EXPECT_EQ(report.lost, 1);
    EXPECT_EQ(report.altered, 0);
    EXPECT_EQ(rangesText(report.lostAt), std::to_string(last) + "-" + std::to_string(last) + " ");
    EXPECT_THAT(salvageBody()["fragments"].dump(), HasSubstr("Nirgends am Fluss"));
    auto book = Book::open(fresh);
    auto facts = book->station()->facts();
    EXPECT_EQ(facts.id, inventedStation().id);
    facts.name = "Nirgends am Fluss (invented)";
    EXPECT_TRUE(book->reviseFacts(facts, kAuthor)) << "the station can still be revised";
}

TEST_F(ABookToBeSalvaged, TellsWhichFactsAreAltered) {
    make();
    std::int64_t period = 0;
    for (const PlainRow& row : sound) {
        if (period == 0 && row[2] == "3:period")
            period = std::stoll(row[0].substr(2));
    }
    alter(period, "\"elevation\":123.5", "\"elevation\":923.5");
    const auto report = salvageIt();
    EXPECT_EQ(report.alteredFacts, (std::vector<std::string>{"period"}));
    EXPECT_EQ(Book::open(fresh)->station()->facts().periods.front().elevation->metres(), 923.5);
}

TEST_F(ABookToBeSalvaged, LeavesNothingWhenItIsStopped) {
    make();
    lose(placeOf(10));
    writeBytes(damaged, bytes);
    int asked = 0;
    ASSERT_TRUE(salvaged(damaged, folder / "counted", [&](std::int64_t, std::int64_t) {
        ++asked;
        return true;
    }));
    std::filesystem::remove(folder / "counted");
    ASSERT_GT(asked, 100);
    for (int stop = 1; stop <= asked; stop += 1 + asked / 12) {
        int count = 0;
        std::int64_t before = 0;
        const auto report = salvaged(damaged, fresh, [&](std::int64_t done, std::int64_t total) {
            EXPECT_LE(done, total);
            EXPECT_GE(done, 0);
            before = done;
            return ++count < stop;
        });
        ASSERT_TRUE(report);
        EXPECT_TRUE(report->stopped) << stop;
        EXPECT_EQ(contentsOf(folder.path()).size(), 1U) << stop;
    }
}

TEST_F(ABookToBeSalvaged, IsReadFromWhatEverElseLiesThere) {
    make();
    const auto kindOf = [&](const std::filesystem::path& from, const std::filesystem::path& to) {
        const auto before = contentsOf(folder.path());
        const auto report = salvaged(from, to);
        EXPECT_TRUE(contentsOf(folder.path()) == before);
        return report ? std::optional<StoreErrorKind>{} : report.error().kind;
    };
    writeBytes(folder / "empty", {});
    writeBytes(folder / "text", "dear diary, the wick was dry again\n");
    runSql(folder / "other", "CREATE TABLE revision (x); INSERT INTO revision VALUES (1);");
    EXPECT_EQ(kindOf(folder / "nowhere", fresh), StoreErrorKind::NoSuchFile);
    EXPECT_EQ(kindOf(folder / "empty", fresh), StoreErrorKind::NotABook);
    EXPECT_EQ(kindOf(folder / "text", fresh), StoreErrorKind::NotABook);
    EXPECT_EQ(kindOf(folder / "other", fresh), StoreErrorKind::NotABook);
    EXPECT_EQ(kindOf(folder.path(), fresh), StoreErrorKind::CannotOpen);
    EXPECT_EQ(kindOf(damaged, folder / "text"), StoreErrorKind::AlreadyThere);
    EXPECT_EQ(kindOf(damaged, damaged), StoreErrorKind::AlreadyThere);
    EXPECT_EQ(kindOf(damaged, folder / "no folder" / "fresh"), StoreErrorKind::CannotOpen);
    writeBytes(folder / "gone", bytes.substr(0, 100) + std::string(8192, '\0'));
    EXPECT_EQ(kindOf(folder / "gone", fresh), StoreErrorKind::Damaged);
}
