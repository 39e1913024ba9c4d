// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <gtest/gtest.h>

namespace {

using namespace wickbook;
using namespace wickbook::ui;
using namespace std::chrono_literals;
using namespace date::literals;

const QLocale kPlain{QLocale::C};
const QLocale kGerman{QLocale::German, QLocale::Germany};

TEST(NumberWords, comeBackAsRead) {
    EXPECT_EQ(readWords(kPlain, {160, 1}), "16.0");
    EXPECT_EQ(readWords(kGerman, {160, 1}), "16,0");
    EXPECT_EQ(readWords(kGerman, {-6, 1}), QStringLiteral("\u22120,6"));
    EXPECT_EQ(readTemperatureWords(kPlain, {{615, 1}, units::TemperatureUnit::Fahrenheit}),
              QStringLiteral("61.5\u00A0°F"));
}

TEST(NumberWords, missingIsADash) {
    EXPECT_EQ(numberWords(kPlain, std::nullopt, 1), QStringLiteral("–"));
    EXPECT_EQ(percentWords(kPlain, std::nullopt), QStringLiteral("–"));
    EXPECT_EQ(plusMinusWords(kPlain, std::nullopt, 0), QString{});
}

TEST(NumberWords, noMinusZero) {
    EXPECT_EQ(numberWords(kPlain, -0.04, 1), "0.0");
}

TEST(NumberWords, plusMinusNeverPromisesTooMuch) {
    EXPECT_EQ(plusMinusWords(kPlain, 1.5, 0), QStringLiteral("±\u00A02"));
    EXPECT_EQ(plusMinusWords(kPlain, 0.30000000000000004, 1), QStringLiteral("±\u00A00.3"));
}

TEST(TimeWords, hoursAsInARegister) {
    EXPECT_EQ(hourWords(9h), "9 h");
    EXPECT_EQ(hourWords(9h + 30min), "9:30 h");
    const record::StationDate day{date::local_days{2026_y / 11 / 22}};
    EXPECT_EQ(longDateWords(kPlain, day), "Sunday 22 November 2026");
    EXPECT_EQ(fromQDate(toQDate(day)), day);
}

// Every rule, and every code that a pair can bring about, has words of its own: a title, a reason and a thing
// to do.
TEST(FindingWords, noCodeIsWithoutWords) {
    std::vector<std::string_view> codes{"out-of-range", "coefficient-missing", "dew-point-below-range",
                                        "extrapolated", "pressure-assumed",    "digit-preference"};
    for (const checks::Rule& rule : checks::ruleTable()) {
        codes.push_back(rule.code);
    }
    ASSERT_GT(codes.size(), 25U);
    for (const std::string_view code : codes) {
        // The rule that reports what the derivation says carries several codes, all named above.
        if (code == "derivation-notes" || code == "derivation") {
            continue;
        }
        checks::Finding finding;
        finding.code = code;
        const FindingWords words = findingWords(kPlain, finding, units::TemperatureUnit::Celsius);
        EXPECT_NE(words.title.toStdString(), std::string{code}) << "no words for " << code;
        EXPECT_FALSE(words.message.isEmpty()) << code;
        EXPECT_TRUE(words.remedy.endsWith(QLatin1Char('.')) || words.remedy.endsWith(QLatin1Char('?')))
            << code;
        for (const QString& text : {words.title, words.message, words.remedy}) {
            EXPECT_FALSE(text.contains(QLatin1Char('!'))) << code;
            EXPECT_FALSE(text.contains(QStringLiteral("%1"))) << code << ": " << text.toStdString();
        }
    }
}

TEST(FindingWords, speakInTheStationsUnit) {
    checks::Finding finding;
    finding.code = "wet-above-dry";
    finding.arguments = {{"excess", 1.0}, {"limit", 0.2}};
    EXPECT_TRUE(findingWords(kPlain, finding, units::TemperatureUnit::Celsius)
                    .message.contains(QStringLiteral("1.0\u00A0°C")));
    EXPECT_TRUE(findingWords(kPlain, finding, units::TemperatureUnit::Fahrenheit)
                    .message.contains(QStringLiteral("1.8\u00A0°F")));
}

// The codes listed in core/checks/likely_causes.h.
TEST(CauseWords, noCauseIsWithoutWords) {
    std::vector<std::string> codes{"swapped",
                                   "both-ten-high",
                                   "both-ten-low",
                                   "both-sign",
                                   "both-decimal-point",
                                   "fahrenheit-as-celsius",
                                   "celsius-as-fahrenheit",
                                   "ice-taken-for-water",
                                   "water-taken-for-ice",
                                   "line-above-copied",
                                   "dry-wick"};
    for (const char* bulb : {"dry-", "wet-"}) {
        for (const char* kind :
             {"ten-high", "ten-low", "five-high", "five-low", "sign", "decimal-point", "digits-exchanged",
              "digit-dropped", "digit-doubled", "digit-extra", "tenths-downwards", "column-broken"}) {
            codes.push_back(std::string{bulb} + kind);
        }
    }
    for (const std::string& code : codes) {
        checks::LikelyCause cause;
        cause.code = code;
        cause.dryRead = units::ReadTemperature{{171, 1}, units::TemperatureUnit::Celsius};
        cause.wetRead = units::ReadTemperature{{142, 1}, units::TemperatureUnit::Celsius};
        const QString words = causeWords(kPlain, cause, units::TemperatureUnit::Celsius);
        EXPECT_NE(words.toStdString(), code) << "no words for " << code;
        EXPECT_FALSE(words.contains(QStringLiteral("%1"))) << code;
    }
}

TEST(ErrorWords, everyErrorSaysWhatAndWhatToDo) {
    using Kind = store::StoreErrorKind;
    for (int kind = 0; kind <= static_cast<int>(Kind::Internal); ++kind) {
        const QString text =
            storeErrorWords({static_cast<Kind>(kind), "/home/someone/books/garden.wickbook", "detail"});
        EXPECT_GT(text.size(), 30) << kind;
        EXPECT_TRUE(text.contains(QLatin1Char(':'))) << text.toStdString();
        EXPECT_FALSE(text.contains(QStringLiteral("/home")))
            << "a sentence carries no path: " << text.toStdString();
        EXPECT_FALSE(text.contains(QStringLiteral("%1"))) << text.toStdString();
    }
    for (int reason = 0; reason <= static_cast<int>(exchange::RejectReason::Unreadable); ++reason) {
        exchange::RejectedLine line;
        line.reason = static_cast<exchange::RejectReason>(reason);
        line.field = "dry";
        line.value = "1.234,5";
        EXPECT_GT(rejectWords(line).size(), 10) << reason;
        EXPECT_FALSE(rejectWords(line).contains(QStringLiteral("%1"))) << reason;
    }
}

TEST(ErrorWords, detailsOfARejectedLineSayMoreThanTheReason) {
    for (const char* detail :
         {"no-such-date", "no-such-clock-time", "two-digit-year", "day-or-month", "far-from-hour",
          "grouped-digits", "too-many-digits", "not-beaufort", "decimal-comma", "too-many-cells",
          "too-few-cells", "open-quote", "text-after-quote", "quote-in-text", "line-too-long", "nul-byte",
          "broken-utf-16", "same-moment"}) {
        exchange::RejectedLine line;
        line.reason = exchange::RejectReason::NoTime;
        const QString plain = rejectWords(line);
        line.detail = detail;
        line.value = "%2 odd";
        line.field = "dry";
        EXPECT_NE(rejectWords(line), plain) << detail;
    }
}

TEST(TermWords, everyTermHasAWord) {
    for (const auto& entry : psychrometry::exposureTable()) {
        EXPECT_FALSE(exposureWords(entry.exposure).isEmpty());
        EXPECT_TRUE(exposureExplained(entry.exposure).endsWith(QLatin1Char('.')));
    }
    for (int i = 0; i < record::kWeatherCount; ++i) {
        EXPECT_FALSE(weatherWords(static_cast<record::Weather>(i)).isEmpty());
    }
    EXPECT_EQ(weatherSetWords(std::nullopt), QString{});
    EXPECT_EQ(weatherSetWords(record::WeatherSet{}), QStringLiteral("none"));
    EXPECT_GE(cautionWords().size(), 4);
}

} // namespace
