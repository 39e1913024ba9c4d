// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/finding_text.h"
#include "app/cli/grouped_findings.h"
#include "app/cli/interrupt.h"
#include "app/cli/options.h"
#include "app/cli/verb_table.h"
#include "core/desk/checked_range.h"
#include "core/desk/register_review.h"
#include "core/desk/whole_register.h"
#include "ui/text/term_words.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <memory>

namespace wickbook::cli {

namespace {

struct CheckOptions {
    std::string book, from, to, format = "text", out = "-";
    bool strict = false;
    bool grouped = false;
};

/// One finding of one reading, with what stands beside it in every format.
struct FindingLine {
    std::string timeUtc;
    std::string localDate;
    std::string hour; ///< empty for an extra reading
    const checks::Finding& finding;
    ui::FindingWords words;
};

template <typename Each>
void forEachFinding(const std::vector<checks::CheckedReading>& readings, units::TemperatureUnit unit,
                    Each each) {
    for (const checks::CheckedReading& reading : readings) {
        const record::Observation& values = reading.reading.values();
        for (const checks::Finding& finding : reading.findings) {
            each(FindingLine{record::instantText(values.instant), record::dateText(record::filedDate(values)),
                             values.hour ? record::hourText(values.hour->hour) : std::string{}, finding,
                             wordsFor(finding, unit)});
        }
    }
}

void writeText(Output& output, const std::vector<checks::CheckedReading>& readings,
               units::TemperatureUnit unit) {
    std::string lastTime;
    forEachFinding(readings, unit, [&](const FindingLine& line) {
        if (line.timeUtc != lastTime) {
            output.text(fmt::format("{} {} ({})\n", line.localDate,
                                    line.hour.empty() ? std::string{"extra reading"} : line.hour,
                                    line.timeUtc));
            lastTime = line.timeUtc;
        }
        output.text(fmt::format("  {} ({}): {} {}\n", line.finding.code,
                                checks::severityName(line.finding.severity), line.words.message.toStdString(),
                                line.words.remedy.toStdString()));
        for (const checks::LikelyCause& cause : line.finding.causes) {
            output.text(fmt::format("    likely: {} ({} %)\n",
                                    ui::causeWords(QLocale::c(), cause, unit).toStdString(),
                                    static_cast<int>(cause.weight * 100 + 0.5)));
        }
    });
}

void writeJson(Output& output, const std::vector<checks::CheckedReading>& readings,
               units::TemperatureUnit unit) {
    JsonValue list = JsonValue::array();
    forEachFinding(readings, unit, [&](const FindingLine& line) {
        list.push_back({{"time_utc", line.timeUtc},
                        {"local_date", line.localDate},
                        {"hour", jsonText(line.hour)},
                        {"code", std::string{line.finding.code}},
                        {"severity", std::string{checks::severityName(line.finding.severity)}},
                        {"message", line.words.message.toStdString()},
                        {"remedy", line.words.remedy.toStdString()},
                        {"causes", causesJson(line.finding, unit)}});
    });
    output.json(list);
}

void writeCsv(Output& output, const std::vector<checks::CheckedReading>& readings,
              units::TemperatureUnit unit) {
    output.csv({"time_utc", "local_date", "hour", "code", "severity", "message", "remedy", "causes"});
    forEachFinding(readings, unit, [&](const FindingLine& line) {
        std::string causes;
        for (const checks::LikelyCause& cause : line.finding.causes) {
            causes += (causes.empty() ? "" : ";") + cause.code;
        }
        output.csv({line.timeUtc, line.localDate, line.hour, std::string{line.finding.code},
                    std::string{checks::severityName(line.finding.severity)},
                    line.words.message.toStdString(), line.words.remedy.toStdString(), causes});
    });
}

tl::unexpected<Refusal> stoppedAt(std::int64_t done, std::int64_t total) {
    return refuse(fmt::format("Stopped at reading {} of {}; nothing was printed, and nothing was changed.",
                              done, total),
                  ExitCode::Interrupted);
}

std::string_view doing(desk::WholeStage stage) {
    switch (stage) {
    case desk::WholeStage::Reading:
        return "reading the book";
    case desk::WholeStage::Learning:
        return "learning what the station usually reads";
    case desk::WholeStage::Judging:
        break;
    }
    return "checking";
}

/// The whole register.
Outcome<std::vector<checks::CheckedReading>> wholeRegister(const OpenedBook& opened) {
    const record::SystemClock clock;
    const Interrupt interrupt;
    std::int64_t judged = 0;
    std::int64_t all = 0;
    std::optional<desk::WholeStage> shown;
    std::optional<ProgressLine> progress;
    auto checked = desk::checkWhole(opened.book, opened.station, clock.now(),
                                    [&](desk::WholeStage stage, std::size_t done, std::size_t total) {
                                        if (shown != stage) {
                                            shown = stage;
                                            progress.emplace(doing(stage));
                                        }
                                        all = static_cast<std::int64_t>(total);
                                        judged = stage == desk::WholeStage::Judging
                                                     ? static_cast<std::int64_t>(done)
                                                     : 0;
                                        progress->show(static_cast<std::int64_t>(done), all);
                                        return !interrupt.wished();
                                    });
    progress.reset();
    if (!checked) {
        return refuse(checked.error());
    }
    if (!*checked) {
        return stoppedAt(judged, all);
    }
    return std::move(**checked);
}

/// Readings of the dates asked for.
Outcome<std::vector<checks::CheckedReading>> checkedReadings(const OpenedBook& opened,
                                                             const DateRange& range) {
    const Interrupt interrupt;
    const auto model = desk::stationModel(opened.book, opened.station, [&] { return !interrupt.wished(); });
    if (!model) {
        return refuse(model.error());
    }
    const record::SystemClock clock;
    std::int64_t judged = 0;
    std::int64_t all = 0;
    ProgressLine progress("checking");
    auto checked = desk::checkedOn(opened.book, opened.station, range.from.value_or(kEarliestDate),
                                   range.to.value_or(kLatestDate), clock.now(), &*model,
                                   [&](std::size_t done, std::size_t total) {
                                       judged = static_cast<std::int64_t>(done);
                                       all = static_cast<std::int64_t>(total);
                                       progress.show(judged, all);
                                       return !interrupt.wished();
                                   });
    if (!checked) {
        return refuse(checked.error());
    }
    if (interrupt.wished()) {
        return stoppedAt(judged, all);
    }
    return std::move(*checked);
}

Outcome<ExitCode> check(const CheckOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    if (options.grouped && *format != Format::Text) {
        return refuse(
            "--grouped is for reading and goes with --format text only; json and csv have one entry "
            "for each finding.");
    }
    const auto range = dateRangeFrom(options.from, options.to);
    if (!range) {
        return tl::unexpected(range.error());
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto checked = range->from || range->to ? checkedReadings(*opened, *range) : wholeRegister(*opened);
    if (!checked) {
        return tl::unexpected(checked.error());
    }
    auto output = Output::open(options.out);
    if (!output) {
        return tl::unexpected(output.error());
    }
    const units::TemperatureUnit unit = opened->unit();
    switch (*format) {
    case Format::Text:
        if (options.grouped) {
            writeGroups(*output, desk::reviewOf(*checked), unit);
        } else {
            writeText(*output, *checked, unit);
        }
        break;
    case Format::Json:
        writeJson(*output, *checked, unit);
        break;
    case Format::Csv:
        writeCsv(*output, *checked, unit);
        break;
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    std::size_t findings = 0;
    std::size_t marked = 0;
    std::size_t leftOut = 0;
    for (const checks::CheckedReading& reading : *checked) {
        findings += reading.findings.size();
        marked += reading.findings.empty() ? 0U : 1U;
        leftOut += reading.leftOut ? 1U : 0U;
    }
    say(fmt::format("{} {} checked: {} {} in {} of them, {} set aside from statistics.", checked->size(),
                    checked->size() == 1 ? "reading" : "readings", findings,
                    findings == 1 ? "finding" : "findings", marked, leftOut));
    return options.strict && findings > 0 ? ExitCode::Found : ExitCode::Done;
}

} // namespace

VerbAction declareCheck(OptionList command) {
    auto options = std::make_shared<CheckOptions>();
    command.needed("--book", options->book, "The book");
    command.text("--from", options->from, "First date, 2025-03-01 (the first reading)");
    command.text("--to", options->to, "Last date (the last reading)");
    command.text("--format", options->format, "text, json or csv (text)");
    command.text("--out", options->out, "File for the answer (standard output)");
    command.flag("--grouped", options->grouped,
                 "Only what is not yet judged, similar ones together, the worst first (text)");
    command.flag("--strict", options->strict, "Exit code 1 where there is any finding, notes included");
    return [options] { return check(*options); };
}

} // namespace wickbook::cli
