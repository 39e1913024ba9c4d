// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/limit_list.h"
#include "app/cli/options.h"
#include "app/cli/output.h"
#include "app/cli/verb_table.h"
#include "core/desk/limit_preview.h"
#include "ui/text/limit_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <memory>

namespace wickbook::cli {

namespace {

struct LimitOptions {
    std::string book, from, why, format = "text";
    std::vector<std::string> set, reset;
    bool history = false;
    bool dryRun = false;
};

constexpr auto kUnit = units::TemperatureUnit::Celsius; // as all data of the command line

/// "very-dry.lowest-humidity=4".
Outcome<checks::LimitEdit> editFrom(const std::string& text, std::optional<record::Instant> from) {
    const auto sign = text.find('=');
    if (sign == std::string::npos || sign == 0) {
        return refuse(fmt::format("--set {}: write it as RULE.LIMIT=VALUE, such as "
                                  "very-dry.lowest-humidity=5.",
                                  text));
    }
    checks::LimitEdit edit;
    edit.name = text.substr(0, sign);
    edit.from = from;
    const auto value = realFrom("--set " + edit.name, text.substr(sign + 1));
    if (!value) {
        // Of an unknown name nothing else is worth saying.
        if (const auto problem = checks::problemOf(edit.name, 0); problem && !checks::limitEntry(edit.name)) {
            return refuse(ui::limitProblemWords(QLocale::c(), *problem, kUnit).toStdString());
        }
        return tl::unexpected(value.error());
    }
    edit.value = *value;
    return edit;
}

Outcome<std::vector<checks::LimitEdit>> editsFrom(const LimitOptions& options,
                                                  std::optional<record::Instant> from) {
    std::vector<checks::LimitEdit> edits;
    const auto add = [&](checks::LimitEdit edit) -> Outcome<void> {
        const bool twice = std::any_of(edits.begin(), edits.end(),
                                       [&](const auto& other) { return other.name == edit.name; });
        if (twice) {
            return refuse(fmt::format("{} is named twice; say what it shall be once.", edit.name));
        }
        edits.push_back(std::move(edit));
        return {};
    };
    for (const std::string& text : options.set) {
        auto edit = editFrom(text, from);
        if (!edit) {
            return tl::unexpected(edit.error());
        }
        if (auto added = add(std::move(*edit)); !added) {
            return tl::unexpected(added.error());
        }
    }
    for (const std::string& name : options.reset) {
        if (auto added = add({name, from, std::nullopt}); !added) {
            return tl::unexpected(added.error());
        }
    }
    return edits;
}

/// What was done, or would be, one sentence for each limit.
void tell(std::span<const checks::LimitEdit> edits, const std::string& from) {
    const std::string since = from.empty() ? std::string{"from the beginning"} : "from " + from + " on";
    for (const checks::LimitEdit& edit : edits) {
        const checks::LimitEntry* entry = checks::limitEntry(edit.name);
        if (entry == nullptr) {
            say(fmt::format("{}: taken back; no rule uses it.", edit.name));
            continue;
        }
        const auto words = [&](double value) {
            return ui::limitValueWords(QLocale::c(), *entry, value, kUnit).toStdString();
        };
        say(edit.value ? fmt::format("{} {}: {} (built in: {}).", edit.name, since, words(*edit.value),
                                     words(entry->value))
                       : fmt::format("{} {}: {}, as built in.", edit.name, since, words(entry->value)));
    }
}

Outcome<ExitCode> preview(const OpenedBook& opened, const record::LimitChanges& after) {
    const record::SystemClock clock;
    ProgressLine progress("judging");
    const auto found = desk::previewLimits(
        opened.book, opened.station, after, clock.now(), [&](std::size_t done, std::size_t total) {
            progress.show(static_cast<std::int64_t>(done), static_cast<std::int64_t>(total));
            return true;
        });
    if (!found) {
        return refuse(found.error());
    }
    say(ui::limitPreviewWords(found->value_or(desk::LimitPreview{})));
    say(std::string_view{"Nothing was stored."});
    return ExitCode::Done;
}

Outcome<ExitCode> change(const LimitOptions& options) {
    if (options.why.empty() && !options.dryRun) {
        return refuse("Say why with --why: the reason is kept with the limit.");
    }
    // Names and numbers are read before the book is touched.
    if (const auto early = editsFrom(options, {}); !early) {
        return tl::unexpected(early.error());
    }
    std::optional<record::StationDate> date;
    if (!options.from.empty()) {
        const auto given = dateFrom("--from", options.from);
        if (!given) {
            return tl::unexpected(given.error());
        }
        date = *given;
    }
    auto opened = options.dryRun ? openToRead(options.book) : openToWrite(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto edits =
        editsFrom(options, date ? std::optional{record::startOfDate(*date, opened->station)} : std::nullopt);
    record::StationFacts facts = opened->station.facts();
    auto after = checks::edited(facts.limits, *edits);
    if (!after) {
        return refuse(ui::limitProblemWords(QLocale::c(), after.error(), kUnit).toStdString());
    }
    if (*after == facts.limits) {
        say(std::string_view{"Nothing to change: the limits are so already."});
        return ExitCode::Done;
    }
    tell(*edits, options.from);
    if (options.dryRun) {
        return preview(*opened, *after);
    }
    facts.limits = std::move(*after);
    if (const auto stored = opened->book.reviseFacts(facts, {accountName(), options.why}); !stored) {
        return refuse(stored.error());
    }
    return ExitCode::Done;
}

Outcome<ExitCode> limits(const LimitOptions& options) {
    const auto format = formatFrom(options.format);
    if (!format) {
        return tl::unexpected(format.error());
    }
    const bool changing = !options.set.empty() || !options.reset.empty();
    if (changing && options.history) {
        return refuse("Change limits, or read their history with --history, not both at once.");
    }
    if (changing) {
        return change(options);
    }
    if (!options.from.empty() || !options.why.empty() || options.dryRun) {
        return refuse("--from, --why and --dry-run belong to --set or --reset: say what shall change.");
    }
    const auto opened = openToRead(options.book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    const auto revisions = opened->book.limitHistory();
    if (!revisions) {
        return refuse(revisions.error());
    }
    auto output = Output::open("-");
    if (options.history) {
        writeLimitHistory(*output, *format, *revisions);
    } else {
        const record::SystemClock clock;
        writeLimits(*output, *format, opened->station, *revisions, clock.now());
    }
    if (auto finished = output->finish(); !finished) {
        return tl::unexpected(finished.error());
    }
    return ExitCode::Done;
}

} // namespace

VerbAction declareLimits(OptionList command) {
    auto options = std::make_shared<LimitOptions>();
    command.needed("--book", options->book, "The book");
    command.many("--set", options->set,
                 "RULE.LIMIT=VALUE, in the unit that the list gives; may be given several times");
    command.many("--reset", options->reset,
                 "RULE.LIMIT: back to the built-in value, with --from from that date on, else for good");
    command.text(
        "--from", options->from,
        "Date the change holds from, by the station's clock: 1994-05-01 (from the beginning). Readings are "
        "judged by the limits that hold for their own date");
    command.text("--why", options->why, "Reason, kept with the change; needed");
    command.flag("--dry-run", options->dryRun,
                 "Only tell how many readings would be judged otherwise; nothing is stored");
    command.flag("--history", options->history, "Every change of the limits, oldest first");
    command.text("--format", options->format, "text, json or csv (text)");
    return [options] { return limits(*options); };
}

} // namespace wickbook::cli
