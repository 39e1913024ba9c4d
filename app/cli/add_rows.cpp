// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/add_rows.h"

#include "app/cli/book_access.h"
#include "app/cli/console.h"
#include "app/cli/finding_text.h"
#include "app/cli/input.h"
#include "app/cli/output.h"
#include "core/desk/checked_range.h"
#include "core/exchange/byte_decoder.h"
#include "core/record/derived_reading.h"
#include "ui/text/error_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>

namespace wickbook::cli {

namespace {

using exchange::ImportField;

/// As long after its moment a reading can still be repeated.
constexpr std::chrono::minutes kLiveWithin{60};

bool hasTime(const ReadingFields& fields) {
    return fields.contains(ImportField::Time) || fields.contains(ImportField::Date) ||
           fields.contains(ImportField::Hour) || fields.contains(ImportField::Clock);
}

/// Why a row was not entered; fatal where the book itself is in trouble.
struct NotEntered {
    Refusal refusal;
    bool fatal = false;
};

struct Entered {
    record::Instant instant;
    std::vector<checks::Finding> findings;
};

class Desk {
public:
    explicit Desk(OpenedBook opened) : opened_(std::move(opened)) {}

    /// Judges, stores, and returns once the reading is durable.
    tl::expected<Entered, NotEntered> enter(ReadingFields fields);
    [[nodiscard]] units::TemperatureUnit unit() const { return opened_.unit(); }

private:
    static tl::unexpected<NotEntered> notEntered(std::string sentence) {
        return tl::unexpected(NotEntered{{ExitCode::BadInput, std::move(sentence)}, false});
    }
    static tl::unexpected<NotEntered> notEntered(const store::StoreError& error) {
        const Refusal refusal = refuse(error).value();
        return tl::unexpected(NotEntered{refusal, refusal.code != ExitCode::BadInput});
    }

    /// What the station usually reads, learnt when the first marked reading asks for it: from the newest
    /// 12,000 readings, so that it costs no more in an old book, and never where nothing is marked.
    const checks::StationModel* model();
    /// Judged by the rules; where one of them marks it, once more with likely causes.
    store::Result<checks::CheckedReading> judge(const record::Observation& values, record::Instant now,
                                                bool live);

    OpenedBook opened_;
    record::SystemClock clock_;
    std::optional<checks::StationModel> model_;
};

const checks::StationModel* Desk::model() {
    if (!model_) {
        auto learnt = desk::stationModel(opened_.book, opened_.station);
        if (!learnt) {
            return nullptr; // the marks stand without causes; the trouble shows when it comes to storing
        }
        model_ = std::move(*learnt);
    }
    return &*model_;
}

store::Result<checks::CheckedReading> Desk::judge(const record::Observation& values, record::Instant now,
                                                  bool live) {
    auto judged = desk::judgeEntry(opened_.book, opened_.station, values, std::nullopt, now, live);
    const bool marked = judged && std::any_of(judged->findings.begin(), judged->findings.end(),
                                              [](const checks::Finding& finding) {
                                                  return finding.severity >= checks::Severity::Soft;
                                              });
    if (!marked || !values.hasPair()) {
        return judged;
    }
    const checks::StationModel* habits = model();
    return habits == nullptr
               ? std::move(judged)
               : desk::judgeEntry(opened_.book, opened_.station, values, std::nullopt, now, live, habits);
}

tl::expected<Entered, NotEntered> Desk::enter(ReadingFields fields) {
    const record::Instant now = clock_.now();
    if (!hasTime(fields)) {
        fields.emplace(ImportField::Time, record::instantText(now));
    }
    const auto invalid = std::find_if(fields.begin(), fields.end(),
                                      [](const auto& field) { return !exchange::isUtf8(field.second); });
    if (invalid != fields.end()) {
        return notEntered(fmt::format("{} is not UTF-8 text; write it again.", fieldName(invalid->first)));
    }
    auto values = exchange::observationFromFields(fields, opened_.station, {});
    if (!values) {
        return notEntered(fmt::format("Not saved: {}.", ui::rejectWords(values.error()).toStdString()));
    }
    const bool live = std::chrono::abs(values->instant - now) <= kLiveWithin;
    auto judged = judge(*values, now, live);
    if (!judged) {
        return notEntered(judged.error());
    }
    const auto& reading = judged->reading;
    const auto refusedBulb = [](const record::BulbReading& read, const record::UsedBulb& used) {
        return used.offScale && !read.belowScale;
    };
    if (live && (refusedBulb(values->dry, reading.dry) || refusedBulb(values->wet, reading.wet))) {
        for (const checks::Finding& finding : judged->findings) {
            if (finding.code == "off-scale") {
                const auto words = wordsFor(finding, unit());
                return notEntered(
                    fmt::format("Not saved: {} {}", words.message.toStdString(), words.remedy.toStdString()));
            }
        }
        return notEntered("Not saved: a bulb stands off the thermometer's scale; read again.");
    }
    store::ObservationChange change;
    change.author.who = values->observer.empty() ? accountName() : values->observer;
    change.values = std::move(*values);
    const auto stored = opened_.book.append(change);
    if (!stored) {
        return notEntered(stored.error());
    }
    return Entered{change.values.instant, std::move(judged->findings)};
}

/// Tells of a reading that is saved.
Outcome<void> tellSaved(Output& output, const Entered& entered, units::TemperatureUnit unit) {
    const std::string time = record::instantText(entered.instant);
    output.text(fmt::format("saved {}\n", time));
    auto flushed = output.flush();
    for (const checks::Finding& finding : entered.findings) {
        const auto words = wordsFor(finding, unit);
        say(fmt::format("{} {} ({}): {} {}", time, finding.code, checks::severityName(finding.severity),
                        words.message.toStdString(), words.remedy.toStdString()));
        for (const checks::LikelyCause& cause : finding.causes) {
            say(fmt::format("{} likely: {} ({} %)", time,
                            ui::causeWords(QLocale::c(), cause, unit).toStdString(),
                            static_cast<int>(cause.weight * 100 + 0.5)));
        }
    }
    return flushed;
}

/// Which column of the stream is which field.
Outcome<std::vector<std::optional<ImportField>>> fieldsOfHeader(const std::vector<std::string>& header,
                                                                const std::string& name) {
    std::vector<std::optional<ImportField>> fields;
    for (const std::string& cell : header) {
        const auto begin = cell.find_first_not_of(" \t");
        const std::string trimmed = begin == std::string::npos
                                        ? std::string{}
                                        : cell.substr(begin, cell.find_last_not_of(" \t") - begin + 1);
        const auto field = exchange::fieldFromName(trimmed);
        if (field && std::find(fields.begin(), fields.end(), field) != fields.end()) {
            return refuse(fmt::format("{} has two columns {}; rename or remove one.", name, trimmed));
        }
        if (!field) {
            say(fmt::format("{}: the column \"{}\" is no field of a reading and is passed over.", name,
                            trimmed));
        }
        fields.push_back(field);
    }
    const auto has = [&](ImportField wanted) {
        return std::find(fields.begin(), fields.end(), std::optional{wanted}) != fields.end();
    };
    if (!has(ImportField::Dry) && !has(ImportField::Wet)) {
        return refuse(
            fmt::format("{} has neither a column dry nor a column wet; its first line must name the "
                        "columns.",
                        name));
    }
    return fields;
}

exchange::RejectedLine unreadableLine(const exchange::CsvError& error) {
    return {{}, error.line, error.text, exchange::RejectReason::Unreadable, {}, {}, {}};
}

} // namespace

Outcome<ExitCode> addOne(const std::string& book, const ReadingFields& fields, bool strict) {
    auto opened = openToWrite(book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    Desk desk(std::move(*opened));
    const auto entered = desk.enter(fields);
    if (!entered) {
        return tl::unexpected(entered.error().refusal);
    }
    auto output = Output::open("-");
    if (auto told = tellSaved(*output, *entered, desk.unit()); !told) {
        return tl::unexpected(told.error());
    }
    return strict && !entered->findings.empty() ? ExitCode::Found : ExitCode::Done;
}

Outcome<ExitCode> addRows(const std::string& book, const std::string& in, bool strict) {
    auto opened = openToWrite(book);
    if (!opened) {
        return tl::unexpected(opened.error());
    }
    auto input = Input::open(in);
    if (!input) {
        return tl::unexpected(input.error());
    }
    exchange::CsvReader reader(input->stream());
    const auto first = reader.next();
    if (!first || !*first) {
        return refuse(
            fmt::format("{} has no first line that names the columns, such as time,dry,wet.", input->name()));
    }
    const auto columns = fieldsOfHeader((*first)->cells, input->name());
    if (!columns) {
        return tl::unexpected(columns.error());
    }
    Desk desk(std::move(*opened));
    auto output = Output::open("-");
    std::int64_t saved = 0;
    std::int64_t rejected = 0;
    bool findings = false;
    const auto reject = [&](std::int64_t line, const std::string& why) {
        ++rejected;
        say(fmt::format("{}, line {}: {}", input->name(), line, why));
    };
    while (true) {
        const auto record = reader.next();
        if (!record) {
            reject(record.error().line, ui::rejectWords(unreadableLine(record.error())).toStdString());
            if (record.error().kind == exchange::CsvErrorKind::NotReadable && input->stream().bad()) {
                return refuse(fmt::format(
                    "{} can't be read beyond line {}; {} saved so far. Look whether its disk or network is "
                    "there, then give the lines that are missing.",
                    input->name(), record.error().line, saved));
            }
            continue;
        }
        if (!*record) {
            break;
        }
        const auto& cells = (*record)->cells;
        if (cells.size() != columns->size()) {
            reject((*record)->line,
                   fmt::format("Not saved: {} cells where the first line has {}; look for a stray separator.",
                               cells.size(), columns->size()));
            continue;
        }
        ReadingFields fields;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if ((*columns)[i]) {
                fields.emplace(*(*columns)[i], cells[i]);
            }
        }
        const auto entered = desk.enter(std::move(fields));
        if (!entered) {
            if (entered.error().fatal) {
                return tl::unexpected(entered.error().refusal);
            }
            reject((*record)->line, entered.error().refusal.sentence);
            continue;
        }
        ++saved;
        findings = findings || !entered->findings.empty();
        if (auto told = tellSaved(*output, *entered, desk.unit()); !told) {
            return tl::unexpected(told.error());
        }
    }
    say(fmt::format("{}: {} saved, {} rejected.", input->name(), saved, rejected));
    return strict && (rejected > 0 || findings) ? ExitCode::Found : ExitCode::Done;
}

} // namespace wickbook::cli
