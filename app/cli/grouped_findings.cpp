// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/grouped_findings.h"

#include "app/cli/finding_text.h"
#include "ui/text/number_words.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

std::string runSpanText(const desk::ReviewRun& run) {
    const std::string from = record::dateText(run.from);
    return run.from == run.to ? from : from + " to " + record::dateText(run.to);
}

void writeReading(Output& output, const checks::CheckedReading& checked, units::TemperatureUnit unit) {
    const record::Observation& values = checked.reading.values();
    const std::string hour = values.hour ? record::hourText(values.hour->hour) : std::string{"extra reading"};
    output.text(fmt::format("  {} {}  dry {}  wet {}{}\n", record::dateText(record::filedDate(values)), hour,
                            ui::bulbWords(QLocale::c(), values.dry).toStdString(),
                            ui::bulbWords(QLocale::c(), values.wet).toStdString(),
                            values.note.empty() ? std::string{} : "  note: " + values.note));
    for (const checks::Finding& finding : checked.findings) {
        for (const checks::LikelyCause& cause : finding.causes) {
            output.text(fmt::format("    likely: {} ({} %)\n",
                                    ui::causeWords(QLocale::c(), cause, unit).toStdString(),
                                    static_cast<int>(cause.weight * 100 + 0.5)));
        }
    }
}

} // namespace

void writeGroups(Output& output, const desk::RegisterReview& review, units::TemperatureUnit unit) {
    for (const desk::ReviewRun& run : review.runs) {
        const ui::FindingWords words = wordsFor(run.lead, unit);
        output.text(fmt::format("{} ({}), {} {}, {}\n", words.title.toStdString(),
                                checks::severityName(run.lead.severity), run.asked,
                                run.asked == 1 ? "reading" : "readings", runSpanText(run)));
        output.text(fmt::format("  {}\n", words.remedy.toStdString()));
        for (const desk::ReviewLine& line : run.lines) {
            if (line.asked) {
                writeReading(output, line.checked, unit);
            }
        }
    }
}

} // namespace wickbook::cli
