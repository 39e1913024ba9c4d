// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_pages.h"

#include "core/checks/limits.h"
#include "ui/text/limit_words.h"

#include <QFile>

#include <algorithm>

namespace wickbook::ui {

namespace {

QString fileText(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString{};
}

QString pageText(const QString& language, const QString& name) {
    const QString text = fileText(QStringLiteral(":/help/%1/%2.md").arg(language, name));
    return text.isEmpty() ? fileText(QStringLiteral(":/help/en/%1.md").arg(name)) : text;
}

/// One item for each rule that has limits, in the order of the table.
QString ruleList() {
    QString list;
    std::vector<std::string_view> told;
    for (const checks::LimitEntry& limit : checks::limitTable()) {
        const std::string_view rule = ruleOfLimit(limit.name);
        if (std::find(told.begin(), told.end(), rule) != told.end()) {
            continue;
        }
        told.push_back(rule);
        const LimitRuleWords words = limitRuleWords(rule);
        list += QStringLiteral("- **%1**: %2\n").arg(words.title, words.does);
    }
    return list;
}

} // namespace

const QStringList& helpPageNames() {
    static const QStringList names{
        QStringLiteral("start"),       QStringLiteral("making"),   QStringLiteral("whirling"),
        QStringLiteral("reading"),     QStringLiteral("wick"),     QStringLiteral("frost"),
        QStringLiteral("humidity"),    QStringLiteral("observe"),  QStringLiteral("marks"),
        QStringLiteral("oldpages"),    QStringLiteral("register"), QStringLiteral("month"),
        QStringLiteral("instruments"), QStringLiteral("station"),  QStringLiteral("copies"),
        QStringLiteral("keys"),        QStringLiteral("cautions")};
    return names;
}

std::vector<HelpPage> helpPages(const QLocale& locale) {
    const QString language = locale.name().section(QLatin1Char('_'), 0, 0);
    std::vector<HelpPage> pages;
    for (const QString& name : helpPageNames()) {
        QString text = pageText(language, name);
        text.replace(QStringLiteral("{{rules}}"), ruleList());
        HelpPage page{name, text.section(QLatin1Char('\n'), 0, 0).mid(2).trimmed(),
                      text.section(QLatin1Char('\n'), 1).trimmed()};
        pages.push_back(std::move(page));
    }
    return pages;
}

std::vector<std::size_t> findHelp(const std::vector<HelpPage>& pages, const QString& sought) {
    const QStringList words = sought.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<std::size_t> inTitle;
    std::vector<std::size_t> inText;
    for (std::size_t at = 0; at < pages.size(); ++at) {
        const auto all = [&](const QString& text) {
            return std::all_of(words.begin(), words.end(),
                               [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
        };
        if (all(pages[at].title)) {
            inTitle.push_back(at);
        } else if (all(pages[at].title + QLatin1Char('\n') + pages[at].text)) {
            inText.push_back(at);
        }
    }
    inTitle.insert(inTitle.end(), inText.begin(), inText.end());
    return inTitle;
}

} // namespace wickbook::ui
