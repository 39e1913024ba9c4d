// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/paper_options.h"

#include <fmt/format.h>

namespace wickbook::cli {

namespace {

Outcome<ui::Paper> paperFrom(const std::string& paper) {
    if (paper == "a4" || paper == "A4") {
        return ui::Paper::A4;
    }
    if (paper == "letter" || paper == "Letter") {
        return ui::Paper::Letter;
    }
    return refuse(fmt::format("--paper can be a4 or letter; \"{}\" is neither.", paper));
}

Outcome<QLocale> localeFrom(const std::string& language) {
    if (language.empty()) {
        return QLocale::c();
    }
    const QString asked = QString::fromStdString(language);
    const QLocale locale(asked);
    // QLocale takes an unknown name for "C" without a word.
    if (locale.language() == QLocale::C) {
        return refuse(fmt::format(
            "--language: \"{}\" is no language of this system; write it like en, de or pt_BR.", language));
    }
    return locale;
}

} // namespace

void PaperOptions::declare(OptionList& command) {
    command.text("--paper", paper, "a4 or letter (a4)");
    command.text("--language", language, "Language of the pages, such as de (English)");
}

Outcome<PaperOptions::Pages> PaperOptions::read() const {
    const auto size = paperFrom(paper);
    if (!size) {
        return tl::unexpected(size.error());
    }
    const auto locale = localeFrom(language);
    if (!locale) {
        return tl::unexpected(locale.error());
    }
    return Pages{*size, *locale};
}

Outcome<void> writeSheet(const ui::PaperSheet& sheet, const std::string& path) {
    if (const auto written = ui::writeSheetPdf(sheet, QString::fromStdString(path)); !written) {
        return refuse(written.error().sentence.toStdString(), ExitCode::BookTrouble);
    }
    return {};
}

} // namespace wickbook::cli
