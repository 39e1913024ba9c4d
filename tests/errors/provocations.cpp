// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/errors/provocations.h"

#include <gtest/gtest.h>

#include <utility>

namespace wickbook::errors {

namespace {

std::string withAll(std::string text, const std::string& what, const std::string& with) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + with.size())) {
        text.replace(at, what.size(), with);
    }
    return text;
}

std::string bookBytes() {
    const apptest::Folder folder;
    const std::string path = folder.file("book.wbk");
    const auto made = apptest::run({"new", "--book", path, "--name", "Test Hill", "--elevation", "120",
                                    "--latitude", "53.4", "--longitude", "-6.2", "--zone", "Europe/Dublin",
                                    "--hours", "08:00,20:00", "--exposure", "screen"});
    EXPECT_EQ(made.code, 0) << made.err;
    const auto added =
        apptest::run({"add", "--book", path, "--at", "2025-03-01T08:00", "--dry", "10.0", "--wet", "9.0"});
    EXPECT_EQ(added.code, 0) << added.err;
    return apptest::contents(path);
}

} // namespace

Bench::Bench() {
    static const std::string kBytes = bookBytes();
    apptest::put(book(), kBytes);
}

std::string Bench::filled(std::string text) const {
    return withAll(withAll(std::move(text), "{book}", book()), "{dir}", folder_.path().string());
}

std::string Bench::plain(std::string text) const {
    return withAll(withAll(std::move(text), book(), "{book}"), folder_.path().string(), "{dir}");
}

Provocation said(std::string sentence, apptest::Arguments arguments, Fault fault) {
    auto provoke = [arguments = std::move(arguments), fault = std::move(fault)](const Bench& bench) {
        for (const auto& [name, text] : fault.files) {
            apptest::put(bench.file(name), text);
        }
        if (fault.before) {
            fault.before(bench);
        }
        apptest::Arguments filled;
        std::string command = "wickbook";
        for (const std::string& argument : arguments) {
            filled.push_back(bench.filled(argument));
            command += " " + argument;
        }
        apptest::Strain strain;
        if (fault.piped) {
            strain.wrapper = {"/bin/sh", "-c", "cat | \"$0\" \"$@\""};
        } else if (!fault.shell.empty()) {
            strain.wrapper = {"/bin/sh", "-c", "exec \"$0\" \"$@\" " + fault.shell};
        }
        const auto ran = apptest::run(filled, fault.input, strain);
        EXPECT_EQ(ran.code, fault.code) << command << "\n" << ran.err;
        return apptest::lines(bench.plain(ran.err));
    };
    return {std::move(sentence), std::move(provoke)};
}

std::vector<Provocation> everyProvocation() {
    std::vector<Provocation> all;
    for (const auto& group :
         {optionProvocations(), parserProvocations(), fileProvocations(), importProvocations(),
          bookProvocations(), registerProvocations(), wordProvocations(), instrumentProvocations()}) {
        all.insert(all.end(), group.begin(), group.end());
    }
    return all;
}

} // namespace wickbook::errors
