// SPDX-License-Identifier: GPL-3.0-or-later
// The help: whole in every language, its links and drawings there, found by words, opened at the right page.
#include "tests/support/silent_prompts.h"
#include "ui/station/restore_dialog.h"
#include "ui/text/language.h"
#include "ui/window/help_pages.h"
#include "ui/window/help_reader.h"
#include "ui/window/help_window.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/window_settings.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTextBlock>
#include <gtest/gtest.h>

namespace {

using namespace wickbook;

const QLocale kEnglish(QLocale::English, QLocale::UnitedKingdom);

QStringList targets(const QString& markdown, const char* pattern) {
    QStringList found;
    const QRegularExpression expression{QLatin1String(pattern)};
    for (auto match = expression.globalMatch(markdown); match.hasNext();) {
        found << match.next().captured(1);
    }
    return found;
}

TEST(HelpTest, EveryPageIsThereInEveryLanguageWithItsLinksAndDrawings) {
    for (const ui::Language& language : ui::languages()) {
        for (const QString& name : ui::helpPageNames()) {
            const QString path = QStringLiteral(":/help/%1/%2.md").arg(language.code, name);
            EXPECT_TRUE(QFile::exists(path)) << qPrintable(path);
        }
        const auto pages = ui::helpPages(QLocale(language.code));
        const auto english = ui::helpPages(kEnglish);
        ASSERT_EQ(pages.size(), english.size());
        for (std::size_t at = 0; at < pages.size(); ++at) {
            const std::string where = language.code.toStdString() + " " + pages[at].name.toStdString();
            EXPECT_FALSE(pages[at].title.isEmpty()) << where;
            EXPECT_GT(pages[at].text.size(), 300) << where;
            for (const QString& link : targets(pages[at].text, R"(\]\((\w+)\.md\))")) {
                EXPECT_TRUE(ui::helpPageNames().contains(link)) << where << ": " << link.toStdString();
            }
            const QStringList drawings = targets(pages[at].text, R"(!\[[^\]]*\]\((\w+\.svg)\))");
            for (const QString& drawing : drawings) {
                EXPECT_TRUE(QFile::exists(QStringLiteral(":/help/drawings/") + drawing)) << where;
            }
            // The same page in another language: as many drawings, links, paragraphs and lines of tables.
            EXPECT_EQ(drawings, targets(english[at].text, R"(!\[[^\]]*\]\((\w+\.svg)\))")) << where;
            EXPECT_EQ(targets(pages[at].text, R"(\]\((\w+)\.md\))"),
                      targets(english[at].text, R"(\]\((\w+)\.md\))"))
                << where;
            EXPECT_EQ(pages[at].text.count(QStringLiteral("\n\n")),
                      english[at].text.count(QStringLiteral("\n\n")))
                << where;
            EXPECT_EQ(pages[at].text.count(QStringLiteral("\n|")),
                      english[at].text.count(QStringLiteral("\n|")))
                << where;
        }
    }
}

TEST(HelpTest, CautionsStandWhereTheyBelong) {
    const auto pages = ui::helpPages(kEnglish);
    for (const char* name : {"making", "whirling", "frost", "cautions"}) {
        const auto page = std::find_if(pages.begin(), pages.end(), [&](const ui::HelpPage& each) {
            return each.name == QLatin1String(name);
        });
        ASSERT_NE(page, pages.end()) << name;
        EXPECT_TRUE(page->text.contains(QStringLiteral("aution")) ||
                    page->title.contains(QStringLiteral("aution")))
            << name;
    }
}

TEST(HelpTest, WhatEachRuleLooksForIsWrittenFromTheRules) {
    const auto pages = ui::helpPages(kEnglish);
    const auto marks = std::find_if(pages.begin(), pages.end(), [](const ui::HelpPage& each) {
        return each.name == QStringLiteral("marks");
    });
    ASSERT_NE(marks, pages.end());
    EXPECT_FALSE(marks->text.contains(QStringLiteral("{{")));
    EXPECT_TRUE(marks->text.contains(QStringLiteral("Wick run dry")));
    EXPECT_GT(marks->text.count(QStringLiteral("\n- **")), 20);
}

TEST(HelpTest, FindsWordsTitlesFirst) {
    const auto pages = ui::helpPages(kEnglish);
    const auto found = ui::findHelp(pages, QStringLiteral("wick WATER"));
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(pages[found.front()].name, QStringLiteral("wick"));
    EXPECT_EQ(ui::findHelp(pages, {}).size(), pages.size());
    EXPECT_TRUE(ui::findHelp(pages, QStringLiteral("barograph")).empty());
}

TEST(HelpTest, TheWindowIsUsedByKeysAlone) {
    ui::HelpWindow help(kEnglish);
    help.show();
    help.showPage(QStringLiteral("frost"));
    EXPECT_EQ(help.current(), QStringLiteral("frost"));
    auto* sought = help.findChild<QLineEdit*>(QStringLiteral("helpSought"));
    auto* contents = help.findChild<QListWidget*>(QStringLiteral("helpContents"));
    QTest::keyClicks(sought, QStringLiteral("certificate"));
    EXPECT_EQ(help.current(), QStringLiteral("instruments"));
    EXPECT_LT(contents->count(), ui::helpPageNames().size());
    QTest::keyClick(sought, Qt::Key_Escape); // ends the search, not the help
    EXPECT_TRUE(help.isVisible());
    EXPECT_EQ(contents->count(), ui::helpPageNames().size());
    QTest::keyClicks(sought, QStringLiteral("zzzz"));
    EXPECT_TRUE(contents->item(0)->text().startsWith(QStringLiteral("No page")));
    EXPECT_EQ(help.current(), QStringLiteral("instruments"));
    help.showPage(QStringLiteral("nowhere"));
    EXPECT_EQ(help.current(), QStringLiteral("start"));
}

/// Every key of the menus stands in the list of all keys, in each language with its own names of keys.
TEST(HelpTest, AllKeysOfTheMenusAreListed) {
    const QTemporaryDir folder;
    ui::WindowSettings settings(folder.filePath(QStringLiteral("window.ini")));
    test::SilentPrompts prompts;
    const ui::MainWindow window(settings, prompts, std::make_shared<record::SystemClock>());
    const auto pages = ui::helpPages(kEnglish);
    const auto keys = std::find_if(pages.begin(), pages.end(), [](const ui::HelpPage& each) {
        return each.name == QStringLiteral("keys");
    });
    ASSERT_NE(keys, pages.end());
    int listed = 0;
    for (const QAction* action : window.findChildren<QAction*>()) {
        static const QRegularExpression pageKey(QStringLiteral("^Ctrl\\+[2-4]$")); // "Ctrl+1 … Ctrl+5"
        const QList<QKeySequence> shortcuts = action->shortcuts();
        if (shortcuts.isEmpty() || pageKey.match(shortcuts.front().toString()).hasMatch()) {
            continue;
        }
        ++listed;
        EXPECT_TRUE(std::any_of(shortcuts.begin(), shortcuts.end(),
                                [&](const QKeySequence& each) {
                                    return keys->text.contains(each.toString(QKeySequence::PortableText));
                                }))
            << qPrintable(action->text()) << ": " << qPrintable(shortcuts.front().toString());
    }
    EXPECT_GT(listed, 10);
}

TEST(HelpTest, F1OpensTheRightPageAlsoInADialog) {
    const QTemporaryDir folder;
    ui::WindowSettings settings(folder.filePath(QStringLiteral("window.ini")));
    test::SilentPrompts prompts;
    ui::MainWindow window(settings, prompts, std::make_shared<record::SystemClock>());
    window.show();
    QApplication::setActiveWindow(&window);
    ASSERT_TRUE(window.openSample());
    const auto pageAfterF1 = [](QWidget& asking) {
        QTest::keyClick(&asking, Qt::Key_F1);
        const auto* help = asking.findChild<ui::HelpWindow*>();
        return help == nullptr ? QString{} : help->current();
    };
    window.pages()->turnTo(ui::PageSet::Register);
    EXPECT_EQ(pageAfterF1(window), QStringLiteral("register"));
    window.pages()->turnTo(ui::PageSet::Station);
    EXPECT_EQ(pageAfterF1(window), QStringLiteral("station"));
    window.pages()->openOldPage();
    EXPECT_EQ(pageAfterF1(window), QStringLiteral("oldpages"));
    ui::RestoreDialog dialog(ui::RestoreStart{}, kEnglish, &window);
    dialog.setModal(true);
    dialog.show();
    EXPECT_EQ(pageAfterF1(dialog), QStringLiteral("copies"));
}

TEST(HelpTest, DrawingsAreDrawn) {
    ui::HelpReader reader;
    reader.resize(600, 500);
    reader.showPage(QStringLiteral("t"), QStringLiteral("![a](pair.svg)"));
    bool found = false;
    for (QTextBlock block = reader.document()->begin(); block.isValid(); block = block.next()) {
        for (auto part = block.begin(); !part.atEnd(); ++part) {
            if (part.fragment().charFormat().isImageFormat()) {
                const QVariant image = reader.document()->resource(QTextDocument::ImageResource,
                                                                   QUrl(QStringLiteral("pair.svg")));
                found = image.value<QImage>().width() > 100;
            }
        }
    }
    EXPECT_TRUE(found);
}

} // namespace
