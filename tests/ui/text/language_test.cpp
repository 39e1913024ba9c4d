// SPDX-License-Identifier: GPL-3.0-or-later
// Languages: complete catalogues that say what the sources say, placeholders kept, and the locale that goes
// with them.
#include "ui/text/copy_words.h"
#include "ui/text/language.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

namespace {

using namespace wickbook;

struct Message {
    QString context;
    QString source;
    QStringList forms;
    bool counted = false;
    bool finished = true;
};

std::vector<Message> messagesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << qPrintable(path);
    QXmlStreamReader xml(&file);
    std::vector<Message> messages;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        const auto name = xml.name();
        if (name == QLatin1String("name")) {
            context = xml.readElementText();
        } else if (name == QLatin1String("message")) {
            messages.push_back({context,
                                {},
                                {},
                                xml.attributes().value(QLatin1String("numerus")) == QLatin1String("yes"),
                                true});
        } else if (name == QLatin1String("source")) {
            messages.back().source = xml.readElementText();
        } else if (name == QLatin1String("translation")) {
            messages.back().finished = !xml.attributes().hasAttribute(QLatin1String("type"));
            if (!messages.back().counted) {
                messages.back().forms << xml.readElementText();
            }
        } else if (name == QLatin1String("numerusform")) {
            messages.back().forms << xml.readElementText();
        }
    }
    EXPECT_FALSE(xml.hasError()) << qPrintable(xml.errorString());
    return messages;
}

QSet<QString> placeholders(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("%L?\\d|%n"));
    QSet<QString> found;
    for (auto match = pattern.globalMatch(text); match.hasNext();) {
        found.insert(match.next().captured());
    }
    return found;
}

qsizetype accelerators(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("(?<!&)&(?!&)(?!\\w+;)"));
    qsizetype count = 0;
    for (auto match = pattern.globalMatch(text); match.hasNext(); match.next()) {
        ++count;
    }
    return count;
}

class Catalogue : public ::testing::TestWithParam<const char*> {
protected:
    [[nodiscard]] static QString file() {
        return QStringLiteral(WICKBOOK_SOURCE_DIR "/resources/translations/wickbook_%1.ts")
            .arg(QLatin1String(GetParam()));
    }
};

TEST_P(Catalogue, EverySentenceIsTranslatedAndKeepsItsPlaceholders) {
    const auto messages = messagesOf(file());
    EXPECT_GT(messages.size(), 2'000U);
    for (const Message& message : messages) {
        const std::string where = message.context.toStdString() + ": " + message.source.toStdString();
        EXPECT_TRUE(message.finished) << where;
        EXPECT_EQ(message.forms.size(), message.counted ? 2 : 1) << where;
        for (const QString& form : message.forms) {
            EXPECT_FALSE(form.trimmed().isEmpty()) << where;
            QSet<QString> wanted = placeholders(message.source);
            QSet<QString> given = placeholders(form);
            if (message.counted && &form == &message.forms.front()) { // one may be said in words
                wanted.remove(QStringLiteral("%n"));
                given.remove(QStringLiteral("%n"));
            }
            EXPECT_EQ(given, wanted) << where << " → " << form.toStdString();
            EXPECT_EQ(accelerators(form), accelerators(message.source))
                << where << " → " << form.toStdString();
            EXPECT_EQ(form.startsWith(QLatin1Char(' ')), message.source.startsWith(QLatin1Char(' ')))
                << where;
            EXPECT_EQ(form.endsWith(QLatin1Char(' ')), message.source.endsWith(QLatin1Char(' '))) << where;
        }
    }
}

TEST_P(Catalogue, HoldsWhatTheSourcesSayAndNothingElse) {
    if (QStandardPaths::findExecutable(QStringLiteral("lupdate")).isEmpty() &&
        !QFile::exists(QStringLiteral("/usr/lib/qt6/bin/lupdate"))) {
        GTEST_SKIP() << "lupdate is not installed";
    }
    const QTemporaryDir folder;
    QProcess update;
    update.setProcessChannelMode(QProcess::MergedChannels);
    update.start(QStringLiteral("bash"), {QStringLiteral(WICKBOOK_SOURCE_DIR "/packaging/update-texts.sh"),
                                          QStringLiteral("--into"), folder.path()});
    ASSERT_TRUE(update.waitForFinished(240'000));
    ASSERT_EQ(update.exitCode(), 0) << update.readAll().toStdString();
    const auto keys = [](const QString& path) {
        QSet<QString> all;
        for (const Message& message : messagesOf(path)) {
            all.insert(message.context + QStringLiteral(": ") + message.source);
        }
        return all;
    };
    const QSet<QString> kept = keys(file());
    const QSet<QString> fresh =
        keys(folder.filePath(QStringLiteral("wickbook_%1.ts").arg(QLatin1String(GetParam()))));
    for (const QString& key : fresh - kept) {
        ADD_FAILURE() << "run packaging/update-texts.sh and translate: " << key.toStdString();
    }
    for (const QString& key : kept - fresh) {
        ADD_FAILURE() << "run packaging/update-texts.sh, for the sources no longer say: "
                      << key.toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Languages, Catalogue, ::testing::Values("de", "fr"));

TEST(LanguageTest, SpeaksTheChosenLanguageAndPutsItBack) {
    const QString english = ui::weatherWords(record::Weather::Fog);
    {
        const ui::Translations german(QLocale(QStringLiteral("de_AT")));
        EXPECT_EQ(ui::weatherWords(record::Weather::Fog), QStringLiteral("Nebel"));
        EXPECT_EQ(ui::readingCountWords(QLocale(QLocale::German), 1), QStringLiteral("1 Ablesung"));
        EXPECT_EQ(ui::readingCountWords(QLocale(QLocale::German), 3), QStringLiteral("3 Ablesungen"));
    }
    {
        const ui::Translations french(QLocale(QStringLiteral("fr_CA")));
        EXPECT_EQ(ui::weatherWords(record::Weather::Fog), QStringLiteral("brouillard"));
        EXPECT_EQ(ui::readingCountWords(QLocale(QLocale::French), 2), QStringLiteral("2 relevés"));
    }
    EXPECT_EQ(ui::weatherWords(record::Weather::Fog), english);
}

TEST(LanguageTest, ALanguageThatIsNotSpokenHereLeavesEnglish) {
    const ui::Translations swahili(QLocale(QStringLiteral("sw")));
    EXPECT_EQ(ui::weatherWords(record::Weather::Fog), QStringLiteral("fog"));
}

TEST(LanguageTest, TheChosenLanguageKeepsTheSystemsCountryWhereBothAgree) {
    const QLocale austrian(QStringLiteral("de_AT"));
    EXPECT_EQ(ui::localeFor({}, austrian).name(), QStringLiteral("de_AT"));
    EXPECT_EQ(ui::localeFor(QStringLiteral("de"), austrian).name(), QStringLiteral("de_AT"));
    EXPECT_EQ(ui::localeFor(QStringLiteral("fr"), austrian).language(), QLocale::French);
    EXPECT_EQ(ui::localeFor(QStringLiteral("fr"), austrian).decimalPoint(), QStringLiteral(","));
    EXPECT_EQ(ui::localeFor(QStringLiteral("en"), austrian).decimalPoint(), QStringLiteral("."));
    EXPECT_EQ(ui::localeFor(QStringLiteral("tlh"), austrian).name(), QStringLiteral("de_AT"));
}

TEST(LanguageTest, DatesAreWrittenAsTheLanguageWritesThem) {
    const record::StationDate date{date::days{20'600}}; // 2026-05-27
    const ui::Translations german(QLocale(QStringLiteral("de")));
    EXPECT_EQ(ui::longDateWords(QLocale(QStringLiteral("de")), date),
              QStringLiteral("Mittwoch, 27. Mai 2026"));
}

} // namespace
