// SPDX-License-Identifier: GPL-3.0-or-later
// The arrows between rooms, held against every include of every source file: which rooms a room may know, and
// which libraries. A new room, or a new arrow, is a line in the tables below, and so a decision.

#include <gmock/gmock.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using Names = std::set<std::string>;

/// Room → rooms it may include from (beside itself).
const std::map<std::string, Names>& arrows() {
    static const std::map<std::string, Names> kArrows = [] {
        std::map<std::string, Names> table{
            {"core/units", {}},
            {"core/psychrometry", {"core/units"}},
        };
        // A room may know whatever the rooms it knows may know.
        const auto add = [&](const std::string& room, const Names& direct) {
            Names all = direct;
            for (const std::string& known : direct) {
                const Names& further = table.at(known);
                all.insert(further.begin(), further.end());
            }
            table[room] = all;
        };
        add("core/record", {"core/psychrometry"});
        add("core/climate", {"core/record"});
        add("core/comparison", {"core/climate"});
        add("core/checks", {"core/climate"});
        add("core/report", {"core/checks"});
        add("core/store", {"core/record"});
        add("core/exchange", {"core/checks", "core/report"});
        add("core/sample", {"core/record"});
        add("core/desk", {"core/store", "core/exchange", "core/report", "core/sample", "core/comparison"});
        add("ui/text", {"core/desk", "core/comparison"});
        add("ui/session", {"ui/text", "core/desk", "core/sample"});
        add("ui/commands", {"ui/session"});
        add("ui/style", {"ui/text"});
        add("ui/print", {"ui/style", "ui/text"});
        add("ui/observe", {"ui/commands", "ui/style", "ui/print"});
        add("ui/moving", {"ui/commands", "ui/style"});
        add("ui/oldpage", {"ui/moving"});
        add("ui/register", {"ui/moving"});
        add("ui/review", {"ui/commands", "ui/style"});
        add("ui/dated", {"ui/commands", "ui/style"});
        add("ui/paper", {"ui/session", "ui/style", "ui/print"});
        add("ui/month", {"ui/dated", "ui/paper"});
        add("ui/instruments", {"ui/dated", "ui/print"});
        add("ui/station", {"ui/dated"});
        add("ui/takein", {"ui/commands", "ui/style"});
        add("ui/classround", {"ui/paper"});
        add("ui/window", {"ui/classround", "ui/review", "ui/observe", "ui/oldpage", "ui/register", "ui/month",
                          "ui/instruments", "ui/station", "ui/takein"});
        add("app/cli", {"ui/text", "ui/print", "core/desk", "core/sample"});
        add("app", {"app/cli", "ui/window"});
        return table;
    }();
    return kArrows;
}

struct Include {
    fs::path file;
    std::string room;
    std::string target; ///< as written between the marks
    bool quoted = false;
};

std::string roomOf(const std::string& path) {
    const std::string folder = fs::path{path}.parent_path().generic_string();
    return folder;
}

std::vector<Include> allIncludes() {
    static const std::regex kInclude{R"re(^\s*#\s*include\s*(["<])([^">]+)[">])re"};
    const fs::path top{WICKBOOK_SOURCE_DIR};
    std::vector<Include> includes;
    for (const char* tree : {"core", "ui", "app"}) {
        for (const auto& entry : fs::recursive_directory_iterator(top / tree)) {
            const auto extension = entry.path().extension();
            if (extension != ".h" && extension != ".cpp") {
                continue;
            }
            const std::string relative = fs::relative(entry.path(), top).generic_string();
            std::ifstream stream{entry.path()};
            std::string line;
            while (std::getline(stream, line)) {
                std::smatch match;
                if (std::regex_search(line, match, kInclude)) {
                    includes.push_back({relative, roomOf(relative), match[2].str(), match[1].str() == "\""});
                }
            }
        }
    }
    return includes;
}

bool isOurs(const std::string& target) {
    return target.starts_with("core/") || target.starts_with("ui/") || target.starts_with("app/");
}

TEST(Architecture, everyRoomIsOnTheMap) {
    Names rooms;
    for (const Include& include : allIncludes()) {
        rooms.insert(include.room);
    }
    ASSERT_GE(rooms.size(), 10U) << "the sources were not found";
    for (const std::string& room : rooms) {
        EXPECT_TRUE(arrows().contains(room))
            << room << " is not on the map: add it to the table with its arrows";
    }
}

TEST(Architecture, includesFollowTheArrows) {
    for (const Include& include : allIncludes()) {
        if (!include.quoted) {
            continue;
        }
        ASSERT_TRUE(isOurs(include.target) || include.target.ends_with(".moc"))
            << include.file << " includes \"" << include.target << "\": write includes from the top";
        const std::string target = roomOf(include.target);
        if (target == include.room || !isOurs(include.target)) {
            continue;
        }
        const auto room = arrows().find(include.room);
        ASSERT_NE(room, arrows().end()) << include.room;
        EXPECT_TRUE(room->second.contains(target))
            << include.file << " includes " << include.target << ": no arrow leads from " << include.room
            << " to " << target;
    }
}

TEST(Architecture, coreKnowsNoQt) {
    static const std::regex kQt{"^(Q[A-Z]|Qt)"};
    for (const Include& include : allIncludes()) {
        if (include.room.starts_with("core/")) {
            EXPECT_FALSE(std::regex_search(include.target, kQt))
                << include.file << " includes " << include.target;
        }
    }
}

TEST(Architecture, wordsNeedNoDisplay) {
    // ui/text serves the command line: QtCore only.
    static const Names kQtCore{"QCoreApplication", "QDate",       "QDateTime",   "QFileInfo", "QLocale",
                               "QLibraryInfo",     "QString",     "QStringList", "QTime",     "QChar",
                               "QStringView",      "QTranslator", "QVariant",    "QtGlobal"};
    for (const Include& include : allIncludes()) {
        if (include.room == "ui/text" && include.target.starts_with("Q")) {
            EXPECT_TRUE(kQtCore.contains(include.target)) << include.file << " includes " << include.target;
        }
    }
}

TEST(Architecture, onlyTheStoreKnowsSqlite) {
    static const std::regex kSqlite{"sqlite|SQLiteCpp|QSql", std::regex::icase};
    for (const Include& include : allIncludes()) {
        if (include.room != "core/store") {
            EXPECT_FALSE(!include.quoted && std::regex_search(include.target, kSqlite))
                << include.file << " includes " << include.target;
        }
    }
}

TEST(Architecture, nothingReachesTheNetwork) {
    static const std::regex kNetwork{"QNetwork|QtNetwork|QTcp|QUdp|sys/socket|curl|asio|netdb"};
    for (const Include& include : allIncludes()) {
        EXPECT_FALSE(std::regex_search(include.target, kNetwork))
            << include.file << " includes " << include.target;
    }
}

TEST(Architecture, everySourceSaysItsLicence) {
    const fs::path top{WICKBOOK_SOURCE_DIR};
    int seen = 0;
    for (const char* tree : {"core", "ui", "app", "tests", "resources/schema", "packaging/cmake"}) {
        for (const auto& entry : fs::recursive_directory_iterator(top / tree)) {
            static const Names kSources{".h", ".cpp", ".sql", ".cmake", ".sh", ".py"};
            if (!kSources.contains(entry.path().extension().string())) {
                continue;
            }
            std::ifstream stream{entry.path()};
            std::string first;
            std::string second;
            std::getline(stream, first);
            std::getline(stream, second);
            EXPECT_NE((first + second).find("SPDX-License-Identifier: GPL-3.0-or-later"), std::string::npos)
                << entry.path();
            ++seen;
        }
    }
    EXPECT_GT(seen, 50);
}

TEST(Architecture, filesStaySmall) {
    const fs::path top{WICKBOOK_SOURCE_DIR};
    for (const char* tree : {"core", "ui", "app", "tests"}) {
        for (const auto& entry : fs::recursive_directory_iterator(top / tree)) {
            const auto extension = entry.path().extension();
            if (extension != ".h" && extension != ".cpp") {
                continue;
            }
            std::ifstream stream{entry.path()};
            const auto lines =
                std::count(std::istreambuf_iterator<char>{stream}, std::istreambuf_iterator<char>{}, '\n');
            EXPECT_LE(lines, 450) << entry.path() << " is long: is it two things?";
        }
    }
}

} // namespace
