// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/program.h"

#include <gtest/gtest.h>

namespace wickbook::apptest {

/// A station of its own in a fresh folder: hours 08:00 and 20:00 by the clock, Dublin, screen, 120 m.
class Station {
public:
    explicit Station(const Arguments& more = {}) {
        Arguments arguments{"new",         "--book", book(),          "--name",  "Test Hill",
                            "--elevation", "120",    "--latitude",    "53.4",    "--longitude",
                            "-6.2",        "--zone", "Europe/Dublin", "--hours", "08:00,20:00",
                            "--exposure",  "screen"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        const auto ran = run(arguments);
        EXPECT_EQ(ran.code, 0) << ran.err;
        EXPECT_EQ(ran.out, "");
    }
    [[nodiscard]] std::string book() const { return folder_.file("test.wickbook"); }
    [[nodiscard]] std::string file(const std::string& name) const { return folder_.file(name); }

    /// Runs a verb on the book.
    [[nodiscard]] Ran verb(const std::string& verb, const Arguments& more = {},
                           const std::string& input = {}) const {
        Arguments arguments{verb, "--book", book()};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return run(arguments, input);
    }
    /// All observations as exported.
    [[nodiscard]] Table exported() const {
        const auto ran = verb("export", {"--out", "-"});
        EXPECT_EQ(ran.code, 0) << ran.err;
        return table(ran.out);
    }

private:
    Folder folder_;
};

} // namespace wickbook::apptest
