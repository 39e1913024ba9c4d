// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <QStringList>

#include <vector>

/// The pages of the help as they lie in resources/help: one Markdown file a page, a folder a language,
/// drawings beside. A page that a language lacks is shown in English.

namespace wickbook::ui {

struct HelpPage {
    QString name;  ///< the file's name without ending: "wick"
    QString title; ///< its first heading
    QString text;  ///< Markdown, without the first heading
};

/// In the order of reading.
const QStringList& helpPageNames();

/// All pages in the language of the locale. The list of rules ("marks") is written from the rules themselves,
/// so that it is never behind them.
std::vector<HelpPage> helpPages(const QLocale& locale);

/// Pages that hold every word of what is sought, those with one in the title first; letter case does not
/// matter. Nothing sought: all, in their order.
std::vector<std::size_t> findHelp(const std::vector<HelpPage>& pages, const QString& sought);

} // namespace wickbook::ui
