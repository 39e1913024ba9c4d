// SPDX-License-Identifier: GPL-3.0-or-later
// The real window on a display of its own: what was typed and entered is in the book when the program is
// killed a second later. Needs Xvfb and xdotool; without them the case says so and is skipped.
#include "tests/faults/processes.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <thread>

using namespace wickbook;
using namespace wickbook::store;
using namespace wickbook::store::testing;

namespace {

using namespace std::chrono_literals;

bool onPath(const char* program) {
    return std::system((std::string("command -v ") + program + " >/dev/null 2>&1").c_str()) == 0;
}

/// A program that runs until it is killed. An end of a pipe, where one is given, is its descriptor 3.
class Running {
public:
    Running(std::vector<std::string> words, const std::vector<std::string>& settings, int third = -1) {
        process_ = ::fork();
        if (process_ != 0)
            return;
        for (const std::string& setting : settings) {
            const auto equals = setting.find('=');
            ::setenv(setting.substr(0, equals).c_str(), setting.substr(equals + 1).c_str(), 1);
        }
        if (third >= 0)
            ::dup2(third, 3);
        std::vector<char*> arguments;
        for (std::string& word : words)
            arguments.push_back(word.data());
        arguments.push_back(nullptr);
        ::execvp(arguments[0], arguments.data());
        ::_exit(127);
    }
    Running(const Running&) = delete;
    Running& operator=(const Running&) = delete;
    ~Running() { kill(); }

    [[nodiscard]] pid_t process() const { return process_; }
    /// The signal it ended by, 0 where it had ended of itself.
    int kill() {
        if (process_ <= 0)
            return 0;
        ::kill(process_, SIGKILL);
        int status = 0;
        ::waitpid(process_, &status, 0);
        process_ = -1;
        return WIFSIGNALED(status) ? WTERMSIG(status) : 0;
    }

private:
    pid_t process_ = -1;
};

/// The display's name as Xvfb tells it once it can be used; empty where it doesn't come up in 20 s.
std::string displayTold(int end) {
    std::string number;
    pollfd waiting{end, POLLIN, 0};
    char letter = 0;
    while (::poll(&waiting, 1, 20'000) == 1 && ::read(end, &letter, 1) == 1 && letter != '\n')
        number += letter;
    return number.empty() ? std::string{} : ":" + number;
}

} // namespace

TEST(AReadingTypedInTheWindow, IsInTheBookWhenTheProgramIsKilledASecondLater) {
#ifndef WICKBOOK_PROGRAM
    GTEST_SKIP() << "the window is not built";
#else
    if (!onPath("Xvfb") || !onPath("xdotool"))
        GTEST_SKIP() << "Xvfb or xdotool is not installed";
    const TempFolder folder;
    newBook(folder / "hill.wickbook");
    int ends[2] = {-1, -1};
    ASSERT_EQ(::pipe(ends), 0);
    Running server({"Xvfb", "-displayfd", "3", "-screen", "0", "1280x800x24", "-nolisten", "tcp"}, {},
                   ends[1]);
    ::close(ends[1]);
    const std::string display = displayTold(ends[0]);
    ::close(ends[0]);
    ASSERT_NE(display, "") << "Xvfb did not come up";
    const std::string home = folder.path().string();
    Running window({WICKBOOK_PROGRAM, (folder / "hill.wickbook").string()},
                   {"DISPLAY=" + display, "QT_QPA_PLATFORM=xcb", "LANG=C.UTF-8", "HOME=" + home,
                    "XDG_CONFIG_HOME=" + home + "/config", "XDG_DATA_HOME=" + home + "/data"});
    const auto hand = [&](const std::string& words) {
        return std::system(("DISPLAY=" + display + " timeout 30 xdotool " + words).c_str());
    };
    ASSERT_EQ(hand("search --sync --onlyvisible --name 'Nirgends am Bach' windowfocus --sync >/dev/null"), 0)
        << "the window did not show the book";
    std::this_thread::sleep_for(1s);
    ASSERT_EQ(hand("type --delay 40 61.5"), 0);
    ASSERT_EQ(hand("key Tab"), 0);
    ASSERT_EQ(hand("type --delay 40 57"), 0);
    // Twice: once for the reading, once for a note that the margin may have on the hour.
    ASSERT_EQ(hand("key --delay 300 Return Return"), 0);
    std::this_thread::sleep_for(1s);
    ASSERT_EQ(window.kill(), SIGKILL) << "the program had ended before";

    const auto book = Book::open(folder / "hill.wickbook");
    ASSERT_TRUE(book) << book.error().detail;
    EXPECT_EQ(problemsOf(*book), "");
    ASSERT_EQ(book->observationCount().value(), 1);
    const auto span = book->span();
    ASSERT_TRUE(span && *span);
    const auto stored = book->atInstant((*span)->first);
    ASSERT_TRUE(stored && *stored);
    const record::Observation& values = (*stored)->values;
    ASSERT_TRUE(values.dry.value && values.wet.value);
    EXPECT_EQ(values.dry.value->value, (units::Decimal{615, 1}));
    EXPECT_EQ(values.wet.value->value, (units::Decimal{57, 0}));
    EXPECT_EQ(values.dry.value->unit, units::TemperatureUnit::Fahrenheit);
#endif
}
