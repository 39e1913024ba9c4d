// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/output.h"

#include "core/exchange/csv.h"
#include "core/exchange/file_head.h"
#include "core/units/number_text.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <system_error>

namespace wickbook::cli {

namespace {

Refusal standardOutputFailed() {
    return {ExitCode::BookTrouble,
            fmt::format(
                "The answer can't be written to standard output: {}. Look at where it goes, then try again.",
                std::generic_category().message(errno))};
}

} // namespace

Outcome<Output> Output::open(const std::string& path) {
    Output output;
    if (path == "-") {
        return output;
    }
    if (exchange::isDatabase(path)) {
        return refuse(fmt::format(
            "{} is a book or another database, and nothing is written over one: choose another name.", path));
    }
    auto file = SafeFile::create(path);
    if (!file) {
        return refuse(std::move(file.error()), ExitCode::BookTrouble);
    }
    output.file_ = std::move(*file);
    return output;
}

void Output::text(std::string_view bytes) {
    if (trouble_) {
        return;
    }
    if (file_) {
        if (auto written = file_->write(bytes); !written) {
            trouble_ = Refusal{ExitCode::BookTrouble, written.error()};
        }
    } else if (std::fwrite(bytes.data(), 1, bytes.size(), stdout) != bytes.size()) {
        trouble_ = standardOutputFailed();
    }
}

void Output::csv(const std::vector<std::string>& cells) {
    text(exchange::csvLine(cells));
    text(exchange::kCsvLineEnd);
}

void Output::json(const JsonValue& document) {
    text(document.dump(2, ' ', false, JsonValue::error_handler_t::replace));
    text("\n");
}

bool Output::isReadAlong() const {
    if (file_) {
        return !file_->isFile();
    }
    struct stat found {};
    return ::fstat(STDOUT_FILENO, &found) != 0 || !S_ISREG(found.st_mode);
}

Outcome<void> Output::flush() {
    if (!trouble_ && !file_ && std::fflush(stdout) != 0) {
        trouble_ = standardOutputFailed();
    }
    if (!trouble_ && file_) {
        if (auto written = file_->flushBuffer(); !written) {
            trouble_ = Refusal{ExitCode::BookTrouble, written.error()};
        }
    }
    if (trouble_) {
        return tl::unexpected(*trouble_);
    }
    return {};
}

Outcome<void> Output::finish() {
    if (auto flushed = flush(); !flushed) {
        return flushed;
    }
    if (file_) {
        if (auto finished = file_->finish(); !finished) {
            return refuse(finished.error(), ExitCode::BookTrouble);
        }
    }
    return {};
}

JsonValue jsonNumber(const std::optional<double>& value) {
    // The same digits as the CSV has: nobody should get another number from another format.
    return value ? JsonValue(std::strtod(units::dataText(value).c_str(), nullptr)) : JsonValue(nullptr);
}

JsonValue jsonText(std::string_view text) {
    return text.empty() ? JsonValue(nullptr) : JsonValue(std::string(text));
}

Outcome<Format> formatFrom(const std::string& name) {
    if (name == "text") {
        return Format::Text;
    }
    if (name == "json") {
        return Format::Json;
    }
    if (name == "csv") {
        return Format::Csv;
    }
    return refuse(fmt::format("--format can be text, json or csv; \"{}\" is none of them.", name));
}

} // namespace wickbook::cli
