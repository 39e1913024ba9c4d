// SPDX-License-Identifier: GPL-3.0-or-later
// A type's name means one thing in its namespace, whatever room it lives in: two of one name link without a
// word and corrupt memory where a template is made of both (the one-definition rule of the language,
// [basic.def.odr], asks for no message).

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>

namespace {

namespace fs = std::filesystem;

TEST(Architecture, ATypeNameMeansOneThing) {
    static const std::regex kNamespace{R"(^namespace (wickbook[\w:]*) \{)"};
    static const std::regex kType{R"(^(?:struct|class|enum class|enum) (\w+)(?: final)?(?: :[^:].*)? \{)"};
    const fs::path top{WICKBOOK_SOURCE_DIR};
    std::map<std::string, std::set<std::string>> places;
    for (const char* tree : {"core", "ui", "app"}) {
        for (const auto& entry : fs::recursive_directory_iterator(top / tree)) {
            const auto extension = entry.path().extension();
            if (extension != ".h" && extension != ".cpp") {
                continue;
            }
            std::ifstream stream{entry.path()};
            std::string line;
            std::string space;
            bool unnamed = false;
            while (std::getline(stream, line)) {
                std::smatch match;
                if (std::regex_search(line, match, kNamespace)) {
                    space = match[1].str();
                } else if (line == "namespace {") {
                    unnamed = true;
                } else if (line == "} // namespace") {
                    unnamed = false;
                } else if (!unnamed && std::regex_search(line, match, kType)) {
                    places[space + "::" + match[1].str()].insert(
                        fs::relative(entry.path(), top).generic_string());
                }
            }
        }
    }
    ASSERT_GT(places.size(), 200U) << "the sources were not found";
    for (const auto& [name, files] : places) {
        std::string all;
        for (const std::string& file : files) {
            all += " " + file;
        }
        EXPECT_EQ(files.size(), 1U) << name << " is defined in" << all << ": give one of them another name";
    }
}

} // namespace
