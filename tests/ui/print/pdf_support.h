// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProcess>
#include <QRectF>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QString>
#include <gtest/gtest.h>

#include <utility>
#include <vector>

/// PDF files read back by poppler's tools, which are another hand than the one that wrote them.

namespace wickbook::ui::test {

inline bool hasPoppler() {
    return !QStandardPaths::findExecutable(QStringLiteral("pdftotext")).isEmpty();
}

inline QString tool(const QString& name, const QStringList& arguments) {
    QProcess process;
    process.start(name, arguments);
    process.waitForFinished(60'000);
    return QString::fromUtf8(process.readAllStandardOutput());
}

inline QString textOf(const QString& path) {
    return tool(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
}
/// Every word within the margins, millimetres; fonts embedded.
inline void expectSoundPages(const QString& path, double margin) {
    const QString fonts = tool(QStringLiteral("pdffonts"), {path});
    const QStringList lines = fonts.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GT(lines.size(), 2) << "no font, so no text to select";
    for (const QString& line : lines.mid(2)) {
        EXPECT_TRUE(line.contains(QRegularExpression(QStringLiteral("\\syes\\s")))) << line.toStdString();
    }
    const QString boxes =
        tool(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")});
    const QRegularExpression page(QStringLiteral("<page width=\"([\\d.]+)\" height=\"([\\d.]+)\">"));
    const QRegularExpression word(QStringLiteral(
        "<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">"));
    double width = 0;
    double height = 0;
    int words = 0;
    const double edge = margin / 25.4 * 72 - 1.5; // a glyph may lean out by a point
    for (const QString& line : boxes.split(QLatin1Char('\n'))) {
        if (const auto found = page.match(line); found.hasMatch()) {
            width = found.captured(1).toDouble();
            height = found.captured(2).toDouble();
        } else if (const auto at = word.match(line); at.hasMatch()) {
            ++words;
            EXPECT_GE(at.captured(1).toDouble(), edge) << line.toStdString();
            EXPECT_GE(at.captured(2).toDouble(), edge) << line.toStdString();
            EXPECT_LE(at.captured(3).toDouble(), width - edge) << line.toStdString();
            EXPECT_LE(at.captured(4).toDouble(), height - edge) << line.toStdString();
        }
    }
    EXPECT_GT(words, 40);
}

/// No two words of the first page stand in one another: where a line breaks elsewhere than was measured, the
/// last line runs into what follows.
inline void expectNoWordOverAnother(const QString& path) {
    const QString boxes =
        tool(QStringLiteral("pdftotext"),
             {QStringLiteral("-l"), QStringLiteral("1"), QStringLiteral("-bbox"), path, QStringLiteral("-")});
    const QRegularExpression word(QStringLiteral(
        "<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">([^<]*)<"));
    std::vector<std::pair<QRectF, QString>> words;
    for (const QString& line : boxes.split(QLatin1Char('\n'))) {
        if (const auto at = word.match(line); at.hasMatch()) {
            const QPointF from{at.captured(1).toDouble(), at.captured(2).toDouble()};
            const QPointF to{at.captured(3).toDouble(), at.captured(4).toDouble()};
            words.emplace_back(QRectF{from, to}.adjusted(0.5, 2, -0.5, -2), at.captured(5));
        }
    }
    for (std::size_t a = 0; a < words.size(); ++a) {
        for (std::size_t b = a + 1; b < words.size(); ++b) {
            EXPECT_FALSE(words[a].first.intersects(words[b].first))
                << words[a].second.toStdString() << " and " << words[b].second.toStdString();
        }
    }
}

} // namespace wickbook::ui::test
