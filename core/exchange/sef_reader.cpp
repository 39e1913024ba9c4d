// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/sef_reader.h"

#include "core/exchange/cell_text.h"
#include "core/exchange/sef_line.h"
#include "core/exchange/text_lines.h"

#include <array>
#include <sstream>

namespace wickbook::exchange {

namespace {

constexpr std::array<std::string_view, 12> kLabels{"sef",    "id",   "name", "lat",  "lon",   "alt",
                                                   "source", "link", "vbl",  "stat", "units", "meta"};
constexpr std::array<std::string_view, 8> kSefHead{"year",   "month",  "day",   "hour",
                                                   "minute", "period", "value", "meta"};

/// Codes of the standard's list of variables that this register has a place for.
std::optional<SefVariable> variableOf(const std::string& code) {
    if (code == "ta" || code == "t_air") {
        return SefVariable::DryBulb;
    }
    if (code == "tb" || code == "t_wet") {
        return SefVariable::WetBulb;
    }
    if (code == "ibt") {
        return SefVariable::IceBulb;
    }
    return code == "p" ? std::optional{SefVariable::Pressure} : std::nullopt;
}

std::string& fieldOf(SefHeader& header, std::size_t place) {
    static constexpr std::array<std::string SefHeader::*, 12> kFields{
        &SefHeader::version,   &SefHeader::id,        &SefHeader::name,   &SefHeader::latitude,
        &SefHeader::longitude, &SefHeader::altitude,  &SefHeader::source, &SefHeader::link,
        &SefHeader::variable,  &SefHeader::statistic, &SefHeader::units,  &SefHeader::meta};
    return header.*kFields.at(place);
}

tl::unexpected<ImportError> stopped(ImportErrorKind kind, std::string detail = {}) {
    return tl::unexpected(ImportError{kind, std::move(detail)});
}

std::string troubleDetail(TextLine::Trouble trouble) {
    switch (trouble) {
    case TextLine::Trouble::TooLong:
        return "line-too-long";
    case TextLine::Trouble::NulByte:
        return "nul-byte";
    case TextLine::Trouble::BrokenText:
        return "broken-utf-16";
    case TextLine::Trouble::None:
        break;
    }
    return {};
}

tl::expected<SefHeader, ImportError> readHeader(TextLines& lines) {
    SefHeader header;
    for (std::size_t place = 0; place < kLabels.size(); ++place) {
        const auto line = lines.next();
        if (!line) {
            return place == 0 ? stopped(ImportErrorKind::EmptyFile)
                              : stopped(ImportErrorKind::SefHeader, std::to_string(place + 1));
        }
        const auto cells = tabCells(line->text);
        if (line->trouble != TextLine::Trouble::None ||
            loweredAscii(trimmedCell(cells.front())) != kLabels.at(place)) {
            return stopped(ImportErrorKind::SefHeader, std::to_string(place + 1));
        }
        fieldOf(header, place) = cells.size() > 1 ? std::string(trimmedCell(cells[1])) : std::string{};
        if (place == 0 && header.version != "1.0.0" && header.version != "0.2.0") {
            return stopped(ImportErrorKind::SefVersion, header.version);
        }
    }
    const auto columns = lines.next();
    const auto cells = columns ? tabCells(columns->text) : std::vector<std::string_view>{};
    for (std::size_t i = 0; i < kSefHead.size(); ++i) {
        if (i >= cells.size() || loweredAscii(trimmedCell(cells[i])) != kSefHead.at(i)) {
            return stopped(ImportErrorKind::SefHeader, std::to_string(kLabels.size() + 1));
        }
    }
    return header;
}

/// Readings by another calendar than ours would land on wrong days.
bool isOtherCalendar(const SefHeader& header) {
    const auto meta = loweredAscii(header.meta);
    const auto at = meta.find("calendar=");
    return at != std::string::npos && meta.compare(at + 9, 9, "gregorian") != 0;
}

} // namespace

bool beginsAsSef(std::string_view head) {
    if (head.starts_with("\xEF\xBB\xBF")) {
        head.remove_prefix(3);
    }
    return head.size() > 3 && head.starts_with("SEF") && (head[3] == '\t' || head[3] == ' ');
}

tl::expected<SefFile, ImportError> readSef(std::istream& input, const std::string& fileName,
                                           const ImportProgress& progress) {
    TextLines lines(input);
    auto header = readHeader(lines);
    if (!header) {
        if (lines.failed()) {
            return stopped(ImportErrorKind::NotReadable);
        }
        return tl::unexpected(std::move(header.error()));
    }
    SefFile file;
    file.name = fileName;
    file.header = std::move(*header);
    file.variable = variableOf(file.header.variable);
    file.encoding = lines.encoding();
    if (!file.variable) {
        file.aside = "variable";
        return file;
    }
    if (loweredAscii(file.header.statistic) != "point") {
        file.variable.reset();
        file.aside = "statistic";
        return file;
    }
    const auto unit = sefUnit(file.header.units, *file.variable);
    if (!unit) {
        return stopped(ImportErrorKind::SefUnits, file.header.units);
    }
    if (isOtherCalendar(file.header)) {
        return stopped(ImportErrorKind::SefCalendar, file.header.meta);
    }
    const auto reject = [&file](RejectedLine line, TextLine& at) {
        line.file = file.name;
        line.line = at.number;
        line.text = std::move(at.text);
        file.rejected.push_back(std::move(line));
    };
    while (auto line = lines.next()) {
        if (line->trouble == TextLine::Trouble::None && trimmedCell(line->text).empty()) {
            continue;
        }
        ++file.lines;
        if (file.lines > kMostSefLines) {
            return stopped(ImportErrorKind::TooManyLines, std::to_string(kMostSefLines));
        }
        if (progress && file.lines % kLinesBetweenQuestions == 0 && !progress(lines.bytesRead())) {
            return stopped(ImportErrorKind::Stopped);
        }
        if (line->trouble != TextLine::Trouble::None) {
            reject({{}, 0, {}, RejectReason::Unreadable, {}, {}, troubleDetail(line->trouble)}, *line);
            continue;
        }
        auto row = readSefLine(line->text, *file.variable, *unit);
        if (!row) {
            reject(std::move(row.error()), *line);
            continue;
        }
        row->line = line->number;
        row->text = std::move(line->text);
        file.rows.push_back(std::move(*row));
    }
    if (lines.failed()) {
        return stopped(ImportErrorKind::NotReadable);
    }
    file.encoding = lines.encoding();
    return file;
}

tl::expected<SefFile, ImportError> readSef(std::string_view bytes) {
    std::istringstream input{std::string(bytes)};
    return readSef(input, "SEF");
}

} // namespace wickbook::exchange
