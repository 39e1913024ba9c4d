// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/month_files.h"

#include "core/exchange/csv.h"
#include "core/exchange/observation_columns.h"
#include "core/exchange/sidecar.h"
#include "core/report/summary_table.h"
#include "ui/print/month_figure.h"
#include "ui/print/report_pdf.h"
#include "ui/text/month_paragraph.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QSaveFile>

#include <functional>

namespace wickbook::ui {

namespace {

struct FileText {
    Q_DECLARE_TR_FUNCTIONS(FileText)
};

QByteArray bytesOf(const std::string& text) {
    return {text.data(), static_cast<qsizetype>(text.size())};
}

std::string csvText(const std::vector<std::string>& header,
                    const std::vector<std::vector<std::string>>& rows) {
    std::string text = exchange::csvLine(header);
    text += exchange::kCsvLineEnd;
    for (const auto& row : rows) {
        text += exchange::csvLine(row);
        text += exchange::kCsvLineEnd;
    }
    return text;
}

std::string observationsText(const report::MonthReport& report) {
    std::vector<std::vector<std::string>> rows;
    rows.reserve(report.readings.size());
    for (const checks::CheckedReading& reading : report.readings) {
        rows.push_back(exchange::observationRow(reading, report.station));
    }
    return csvText(exchange::observationHeader(), rows);
}

/// The bytes a painter makes; painting needs a device that can be sought, and a failure must leave no file.
std::optional<QByteArray> painted(const std::function<bool(QIODevice&)>& paint) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::ReadWrite) || !paint(buffer)) {
        return std::nullopt;
    }
    buffer.close();
    return bytes;
}

} // namespace

tl::expected<void, FileError> writeWholeFile(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    const auto refused = [&] {
        //: %1 a path, %2 the system's own reason
        return tl::unexpected(FileError{
            path,
            FileText::tr(
                "%1 could not be written: %2. Choose another folder or free some space, then try again.")
                .arg(QDir::toNativeSeparators(path), file.errorString())});
    };
    if (!file.open(QIODevice::WriteOnly)) {
        return refused();
    }
    // Flushed by hand: a full disk shows here, with its reason, which commit() no longer tells.
    if (file.write(bytes) != bytes.size() || !file.flush() || !file.commit()) {
        return refused();
    }
    return {};
}

tl::expected<QStringList, FileError> writeMonthFiles(const report::MonthReport& report,
                                                     const MonthFilesRequest& request) {
    const QDir folder(request.folder);
    if (!folder.exists() && !QDir().mkpath(request.folder)) {
        return tl::unexpected(
            FileError{request.folder,
                      FileText::tr("The folder %1 could not be made. Choose another place and try again.")
                          .arg(QDir::toNativeSeparators(request.folder))});
    }
    struct Part {
        QString name;
        std::function<std::optional<QByteArray>()> bytes;
    };
    const QLocale& locale = request.locale;
    const std::vector<Part> parts{
        {QStringLiteral("month.csv"), [&] { return std::optional{bytesOf(observationsText(report))}; }},
        {QStringLiteral("month.csv-metadata.json"),
         [&] { return std::optional{bytesOf(exchange::sidecarMetadata(report.station, "month.csv"))}; }},
        {QStringLiteral("summary.csv"),
         [&] {
             return std::optional{bytesOf(
                 csvText(report::summaryHeader(report.options), report::summaryRows(report.summary)))};
         }},
        {QStringLiteral("report.pdf"),
         [&] {
             return painted(
                 [&](QIODevice& device) { return writeReportPdf(report, request.paper, locale, device); });
         }},
        {QStringLiteral("chart.png"),
         [&] { return painted([&](QIODevice& device) { return writeFigurePng(report, locale, device); }); }},
        {QStringLiteral("chart.svg"),
         [&] { return painted([&](QIODevice& device) { return writeFigureSvg(report, locale, device); }); }},
        {QStringLiteral("paragraph.txt"),
         [&] { return std::optional{(monthParagraph(locale, report, unitOf(report)) + u'\n').toUtf8()}; }},
    };
    QStringList written;
    for (const Part& part : parts) {
        const QString path = folder.filePath(part.name);
        const std::optional<QByteArray> bytes = part.bytes();
        if (!bytes) {
            return tl::unexpected(
                FileError{path, FileText::tr("%1 could not be drawn because of an error in the program. The "
                                             "files before it were written. Please report it.")
                                    .arg(QDir::toNativeSeparators(path))});
        }
        if (auto done = writeWholeFile(path, *bytes); !done) {
            return tl::unexpected(done.error());
        }
        written << path;
    }
    return written;
}

} // namespace wickbook::ui
