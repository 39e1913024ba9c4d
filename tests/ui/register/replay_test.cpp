// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing is ever lost: a hundred acts at random on a real book, then the log is read by plain SQL and folded
// by this file alone, not by the program's own hands. What the book says must be that, whatever was undone
// and done again meanwhile.
#include "tests/ui/register/register_case.h"
#include "ui/commands/absence_hours.h"
#include "ui/commands/move_observations.h"
#include "ui/commands/read_back.h"
#include "ui/commands/revise_observation.h"

#include <nlohmann/json.hpp>
#include <sqlite3.h>

#include <fstream>
#include <map>
#include <random>

namespace wickbook::ui {

namespace {

using namespace std::chrono_literals;
using test::day;
using Json = nlohmann::json;

/// Subject → what its line says; withdrawn ones are not there.
using Said = std::map<std::string, std::string>;

struct RawRevision {
    std::string subject;
    std::string body;
    bool operator==(const RawRevision&) const = default;
};

/// The rows of observations as the file holds them, oldest first, by SQL alone.
std::vector<RawRevision> rawRevisions(const QString& path) {
    sqlite3* book = nullptr;
    EXPECT_EQ(sqlite3_open_v2(path.toUtf8().constData(), &book, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK);
    sqlite3_stmt* rows = nullptr;
    EXPECT_EQ(sqlite3_prepare_v2(book,
                                 "SELECT lower(hex(subject)), body FROM revision WHERE kind = 'observation' "
                                 "ORDER BY sequence",
                                 -1, &rows, nullptr),
              SQLITE_OK);
    std::vector<RawRevision> all;
    const auto text = [&](int column) {
        return std::string{reinterpret_cast<const char*>(sqlite3_column_text(rows, column))};
    };
    while (sqlite3_step(rows) == SQLITE_ROW) {
        all.push_back({text(0), text(1)});
    }
    sqlite3_finalize(rows);
    sqlite3_close(book);
    return all;
}

std::string piece(const char* name, const std::string& value) {
    return value.empty() ? std::string{} : std::string{name} + "=" + value + " ";
}

/// A body's JSON, field by field, in this test's own words.
std::string lineOf(const Json& body) {
    const auto text = [&](const char* key) { return body.value(key, std::string{}); };
    const auto read = [&](const char* key) {
        if (!body.contains(key)) {
            return std::string{};
        }
        const Json& parts = body[key];
        return std::to_string(parts[0].get<long long>()) + "e-" + std::to_string(parts[1].get<int>()) +
               parts[2].get<std::string>();
    };
    std::string line;
    if (body.contains("hour")) {
        line += piece("hour", std::to_string(body["hour"][0].get<long long>()) + "/" +
                                  std::to_string(body["hour"][1].get<int>()));
    }
    line += piece("instant", std::to_string(body["instant"].get<long long>()));
    line += piece("dry", read("dry")) + piece("wet", read("wet")) + piece("wick", text("wick"));
    line +=
        piece("note", text("note")) + piece("observer", text("observer")) + piece("origin", text("origin"));
    line += piece("quality", text("quality")) + piece("reason", text("missing_reason"));
    if (body.contains("paper")) {
        line += "paper=" + body["paper"].value("book", std::string{}) + "/" +
                body["paper"].value("page", std::string{}) + " ";
    }
    return line + (body.value("read_back", false) ? "ticked" : "");
}

/// The same of what the program says.
std::string lineOf(const record::Observation& values) {
    const auto read = [](const record::BulbReading& bulb) {
        return bulb.value ? std::to_string(bulb.value->value.mantissa) + "e-" +
                                std::to_string(bulb.value->value.decimals) + "C"
                          : std::string{};
    };
    std::string line;
    if (values.hour) {
        line += piece("hour", std::to_string(values.hour->date.time_since_epoch().count()) + "/" +
                                  std::to_string(values.hour->hour.count()));
    }
    line += piece("instant", std::to_string(values.instant.time_since_epoch().count()));
    line += piece("dry", read(values.dry)) + piece("wet", read(values.wet)) +
            piece("wick", std::string{record::wickName(values.wick)});
    line += piece("note", values.note) + piece("observer", values.observer) +
            piece("origin", std::string{record::originName(values.origin)});
    line += piece("quality", values.quality == record::Quality::NotJudged
                                 ? std::string{}
                                 : std::string{record::qualityName(values.quality)});
    line += piece("reason", values.missingReason);
    if (values.paper) {
        line += "paper=" + values.paper->book + "/" + values.paper->page + " ";
    }
    return line + (values.readBack ? "ticked" : "");
}

Said replayed(const std::vector<RawRevision>& log) {
    Said said;
    for (const RawRevision& revision : log) {
        const Json body = Json::parse(revision.body);
        if (body.value("withdrawn", false)) {
            said.erase(revision.subject);
        } else {
            said[revision.subject] = lineOf(body);
        }
    }
    return said;
}

class Replay : public test::RegisterPageCase, public ::testing::WithParamInterface<unsigned> {
protected:
    Said told() const {
        Said said;
        const auto lines = session_->book().observationsOn(day(2025, 1, 1), day(2025, 12, 31));
        EXPECT_TRUE(lines.has_value());
        for (const record::StoredObservation& line : *lines) {
            std::string subject = line.id().toText();
            std::erase(subject, '-');
            said[subject] = lineOf(line.values);
        }
        return said;
    }

    unsigned below(unsigned count) { return std::uniform_int_distribution<unsigned>{0, count - 1}(random_); }
    record::ObservingHour anyHour() {
        return {day(2025, 5, 1) + date::days{static_cast<int>(below(13))},
                below(2) == 0 ? record::HourOfDay{9h} : record::HourOfDay{21h}};
    }
    std::vector<record::StoredObservation> lines(unsigned most) {
        auto all = session_->book().observationsOn(day(2025, 1, 1), day(2025, 12, 31)).value();
        std::shuffle(all.begin(), all.end(), random_);
        all.resize(std::min<std::size_t>(all.size(), 1 + below(most)));
        return all;
    }
    void press(Qt::Key pressed, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        page_->showHour(anyHour());
        for (unsigned i = below(3); i > 0; --i) {
            key(Qt::Key_Down, Qt::ShiftModifier);
        }
        key(pressed, modifiers);
    }
    void act();
    /// A reading where none is, a missing line, or nothing.
    void writeDown() {
        const record::ObservingHour hour = anyHour();
        if (session_->book().atHour(hour).value()) {
            return;
        }
        if (below(2) == 0) {
            const record::ExpectedHour expected{hour, *record::momentOf(session_->station(), hour)};
            ASSERT_TRUE(ExcuseHours::perform(*session_, std::span{&expected, 1}, "ill", {"T", ""}, "ill"));
        } else {
            ASSERT_TRUE(ReviseObservation::perform(
                *session_, std::nullopt, reading(hour.date, hour.hour, "17.5", "13.0"), {"T", ""}, "found"));
        }
    }
    void revise() {
        for (const record::StoredObservation& line : lines(1)) {
            record::Observation after = line.values;
            after.dry.value = units::ReadTemperature{{100 + static_cast<std::int64_t>(below(100)), 1},
                                                     units::TemperatureUnit::Celsius};
            after.note = "seen " + std::to_string(below(1000));
            after.readBack = false;
            ASSERT_TRUE(ReviseObservation::perform(*session_, line, after, {"T", "again"}, "revise"));
        }
    }
    void move() {
        desk::Destination to;
        if (below(3) == 0) {
            to.month = date::year{2025} / date::month{3 + below(2)};
        } else {
            to.days = static_cast<int>(below(9)) - 4;
        }
        const auto plan = planMove(*session_, lines(8), to);
        ASSERT_TRUE(plan);
        ASSERT_TRUE(MoveObservations::perform(*session_, *plan, {"T", "wrong place"}, "move"));
    }

    std::mt19937 random_;
};

void Replay::act() {
    switch (below(9)) {
    case 0:
        return writeDown();
    case 1:
    case 2:
        return revise();
    case 3:
    case 4:
        return move();
    case 5:
        return press(below(2) == 0 ? Qt::Key_D : Qt::Key_S);
    case 6:
        return press(Qt::Key_Delete);
    case 7:
        return press(Qt::Key_Space, below(4) == 0 ? Qt::ShiftModifier : Qt::NoModifier);
    default: {
        const auto place =
            below(4) == 0 ? std::nullopt : std::optional{record::PaperPlace{"3", std::to_string(below(40))}};
        ASSERT_TRUE(PlaceOnPaper::perform(*session_, lines(20), place, {"T", ""}, "page"));
        return;
    }
    }
}

TEST_P(Replay, OfTheLogIsWhatTheBookSays) {
    random_.seed(GetParam());
    std::vector<RawRevision> log = rawRevisions(session_->path());
    std::map<std::string, std::string> first; // subject → what was first written
    for (const RawRevision& revision : log) {
        first.emplace(revision.subject, revision.body);
    }
    std::vector<Said> states{told()}; // what the book said after each act that can be undone
    std::size_t here = 0;
    QUndoStack& stack = session_->undoStack();
    int undone = 0;
    int redone = 0;
    for (int i = 0; i < 100; ++i) {
        const int before = stack.index();
        const unsigned choice = below(10);
        if (choice < 2 && stack.canUndo()) {
            key(Qt::Key_Z, Qt::ControlModifier);
            ASSERT_EQ(stack.index(), before - 1);
            --here;
            ++undone;
        } else if (choice < 4 && stack.canRedo()) {
            key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
            ASSERT_EQ(stack.index(), before + 1);
            ++here;
            ++redone;
        } else {
            act();
            if (stack.index() != before) {
                states.resize(++here);
                states.push_back(told());
            }
        }
        const std::vector<RawRevision> now = rawRevisions(session_->path());
        ASSERT_GE(now.size(), log.size());
        ASSERT_TRUE(std::equal(log.begin(), log.end(), now.begin()))
            << "what was written is not there any more";
        log = now;
        for (const RawRevision& revision : log) {
            first.emplace(revision.subject, revision.body);
        }
        ASSERT_EQ(told(), replayed(log)) << "act " << i;
        ASSERT_EQ(told(), states[here])
            << "act " << i << ": undo or redo did not bring back what stood there";
    }
    EXPECT_GT(undone + redone, 5);
    EXPECT_GT(stack.count(), 10);
    // Every value first written is still there, as the first revision of its line.
    for (const auto& written : first) {
        const auto& subject = written.first;
        const auto found = std::find_if(log.begin(), log.end(),
                                        [&](const RawRevision& one) { return one.subject == subject; });
        ASSERT_NE(found, log.end());
        EXPECT_EQ(found->body, written.second);
    }
    while (stack.canUndo()) {
        stack.undo();
    }
    EXPECT_EQ(told(), states.front());
    EXPECT_EQ(told(), replayed(rawRevisions(session_->path())));
    EXPECT_TRUE(session_->book().verify()->sound());
}

INSTANTIATE_TEST_SUITE_P(Seeds, Replay, ::testing::Range(1U, 7U));

} // namespace

} // namespace wickbook::ui
