// SPDX-License-Identifier: GPL-3.0-or-later
// The pen that runs down a page: what is painted takes the room that was measured for it. A font whose
// advances grow with the device would break lines elsewhere, and the last one would run into what follows.
#include "tests/ui/print/pdf_support.h"
#include "ui/print/page_writer.h"
#include "ui/print/pdf_page.h"

#include <QFile>
#include <QPdfWriter>
#include <QTemporaryDir>

#include <cstdint>

namespace wickbook::ui {

namespace {

using namespace test;

constexpr double kMargin = 15 / 25.4 * 72;
constexpr int kPages = 150;
constexpr int kWords = 140;

TEST(PageWriter, AParagraphEndsWhereItWasMeasured) {
    if (!hasPoppler()) {
        GTEST_SKIP() << "pdftotext is not installed: the page was not read back.";
    }
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("page.pdf"));
    std::vector<double> measured; // below which nothing may stand, from the page's top
    {
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        QPdfWriter writer(&file);
        setUpPdf(writer, QStringLiteral("lines"), Paper::A4);
        PageWriter page(writer, {});
        // Words in ever another order, so that breaks fall close to the edge somewhere. No chance in it: the
        // same pages every time.
        const QStringList words{QStringLiteral("a"),   QStringLiteral("fifth"),    QStringLiteral("humidity"),
                                QStringLiteral("ill"), QStringLiteral("observed"), QStringLiteral("wet")};
        std::uint32_t turn = 1;
        for (int number = 0; number < kPages; ++number) {
            QStringList text;
            for (int count = 0; count < kWords; ++count) {
                turn = turn * 1664525U + 1013904223U;
                text << words[static_cast<qsizetype>((turn >> 16U) %
                                                     static_cast<std::uint32_t>(words.size()))];
            }
            if (number > 0) {
                page.newPage();
            }
            page.paragraph(text.join(QLatin1Char(' ')), 10, lightTokens().ink);
            measured.push_back(kMargin + page.y() - 10 * 0.5);
        }
        ASSERT_TRUE(page.finish());
    }
    const QString boxes =
        tool(QStringLiteral("pdftotext"), {QStringLiteral("-bbox"), path, QStringLiteral("-")});
    const QRegularExpression word(QStringLiteral("yMax=\"([\\d.]+)\">([^<]*)<"));
    const QStringList pages = boxes.split(QStringLiteral("<page "));
    ASSERT_EQ(static_cast<std::size_t>(pages.size()), measured.size() + 1);
    for (std::size_t at = 0; at < measured.size(); ++at) {
        double lowest = 0;
        int words = 0;
        auto found = word.globalMatch(pages[static_cast<qsizetype>(at) + 1]);
        while (found.hasNext()) {
            const auto match = found.next();
            if (match.captured(2) == QString::number(at + 1)) {
                continue; // the page's number, in its foot
            }
            lowest = std::max(lowest, match.captured(1).toDouble());
            ++words;
        }
        EXPECT_EQ(words, kWords) << "page " << at + 1;
        // Within a fraction of a line: a line more or less is twelve points.
        EXPECT_NEAR(lowest, measured[at], 4) << "page " << at + 1;
    }
}

} // namespace

} // namespace wickbook::ui
