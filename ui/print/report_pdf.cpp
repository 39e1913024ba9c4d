// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/report_pdf.h"

#include "ui/print/month_figure.h"
#include "ui/print/month_return.h"
#include "ui/print/page_writer.h"
#include "ui/print/paper_text.h"
#include "ui/print/pdf_page.h"
#include "ui/text/month_paragraph.h"
#include "ui/text/signing_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"
#include "ui/text/usual_words.h"

#include <QPdfWriter>

namespace wickbook::ui {

namespace {

constexpr double kBody = 9;
constexpr double kSmall = 8;
constexpr double kPart = 11;

void newsletter(PageWriter& page, const report::MonthReport& report, const QLocale& locale) {
    page.heading(
        QStringLiteral("%1 · %2").arg(stationHeading(report.station), monthWords(locale, report.month)), 15);
    MonthFigure figure(report, locale, {760, 380}, false);
    page.figure(page.width() * 380 / 760,
                [&](QPainter& painter, const QRectF& where) { figure.paint(painter, where); });
    page.space(8);
    page.paragraph(monthParagraph(locale, report, unitOf(report)), kBody + 1, lightTokens().ink);
    page.space(4);
    if (report.summary.all.n > 1) {
        page.table(keyNumbersTable(report, locale));
        page.space(4);
    }
    page.paragraph(stationLine(report, locale), kSmall, lightTokens().soft);
    if (const QStringList signing = signingSentences(locale, report); !signing.isEmpty()) {
        page.paragraph(signing.join(QLatin1Char(' ')), kSmall, lightTokens().soft);
    }
}

void sentences(PageWriter& page, const QString& heading, const QStringList& lines) {
    if (lines.isEmpty()) {
        return;
    }
    page.heading(heading, kPart);
    for (const QString& line : lines) {
        page.paragraph(line, kSmall, lightTokens().ink);
    }
    page.space(6);
}

void monthlyReturn(PageWriter& page, const report::MonthReport& report, const QLocale& locale,
                   bool withStation) {
    page.newPage();
    page.heading(PaperText::tr("Monthly return · %1 · %2")
                     .arg(stationHeading(report.station), monthWords(locale, report.month)),
                 13);
    page.paragraph(
        PaperText::tr("T dry bulb and Tw wet bulb as read, Td dew point, in %1; RH relative humidity in %. "
                      "All at observing hours.")
            .arg(unitOf(report) == units::TemperatureUnit::Celsius ? QStringLiteral("°C")
                                                                   : QStringLiteral("°F")),
        kSmall, lightTokens().soft);
    for (const PageTable& table : dayTables(report, locale)) {
        page.table(table);
    }
    if (const PageTable extras = extrasTable(report, locale); !extras.rows.empty()) {
        page.heading(PaperText::tr("Extra readings, outside the means"), kPart);
        page.table(extras);
    }
    page.need(260);
    page.heading(PaperText::tr("The month's numbers, at observing hours"), kPart);
    page.table(numbersTable(report, locale));
    for (const QString& sentence : withheldSentences(report)) {
        page.paragraph(sentence, kSmall, lightTokens().ink);
    }
    for (const QString& sentence : departureSentences(locale, report, unitOf(report))) {
        page.paragraph(sentence, kSmall, lightTokens().ink);
    }
    if (report.openQueries > 0) {
        page.paragraph(PaperText::tr("Queries still open, set aside until they are judged: %1.")
                           .arg(QString::number(report.openQueries)),
                       kSmall, lightTokens().ink);
    }
    page.space(6);
    sentences(page, PaperText::tr("Signed off"), signingSentences(locale, report));
    sentences(page, PaperText::tr("Corrections made"), correctionSentences(report, locale));
    if (!withStation) {
        return;
    }
    for (const FactLines& block : stationBlocks(report, locale)) {
        page.need(90);
        page.heading(PaperText::tr("The station"), kPart);
        page.facts(block, kSmall);
    }
    sentences(page, PaperText::tr("How the numbers were made"), methodSentences(report, locale));
}

} // namespace

QString reportTitle(const report::MonthReport& report, const QLocale& locale) {
    return QStringLiteral("%1 · %2").arg(stationHeading(report.station), monthWords(locale, report.month));
}

void paintMonthPages(PageWriter& page, const report::MonthReport& report, const QLocale& locale,
                     bool withStation) {
    newsletter(page, report, locale);
    monthlyReturn(page, report, locale, withStation);
}

bool paintReport(const report::MonthReport& report, const QLocale& locale, QPagedPaintDevice& device) {
    PageWriter page(device, reportTitle(report, locale));
    if (!page.isActive()) {
        return false;
    }
    paintMonthPages(page, report, locale, true);
    return page.finish();
}

bool writeReportPdf(const report::MonthReport& report, Paper paper, const QLocale& locale,
                    QIODevice& device) {
    QPdfWriter writer(&device);
    setUpPdf(writer, reportTitle(report, locale), paper);
    return paintReport(report, locale, writer);
}

} // namespace wickbook::ui
