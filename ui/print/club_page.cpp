// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/club_page.h"

#include "core/psychrometry/exposure.h"
#include "ui/print/page_writer.h"
#include "ui/print/paper_text.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <memory>

namespace wickbook::ui {

namespace {

constexpr double kClubWords = 9;

PageTable clubTable(const report::ClubSheet& sheet, const std::string& exposure, const QLocale& locale,
                    QStringList& withheld) {
    PageTable table;
    table.fontSize = kClubWords;
    table.columns = {{PaperText::tr("station"), 3, Qt::AlignLeft},
                     {PaperText::tr("height, m"), 1.2, Qt::AlignRight},
                     {PaperText::tr("hour"), 1, Qt::AlignRight},
                     {PaperText::tr("n of"), 1.2, Qt::AlignRight},
                     {PaperText::tr("mean RH"), 1.2, Qt::AlignRight},
                     {PaperText::tr("highest"), 1, Qt::AlignRight},
                     {PaperText::tr("lowest"), 1, Qt::AlignRight},
                     {PaperText::tr("mean e, hPa"), 1.7, Qt::AlignRight},
                     {PaperText::tr("its dew point"), 1.6, Qt::AlignRight}};
    for (const report::ClubLine& line : sheet.lines) {
        if (line.exposure != exposure) {
            continue;
        }
        QString name = QString::fromStdString(line.station);
        if (line.invented && !name.contains(QLatin1String("invented"), Qt::CaseInsensitive)) {
            name = PaperText::tr("%1 (%2)").arg(name, inventedWords());
        }
        if (line.withheld != climate::Withheld::No) {
            withheld
                << QStringLiteral("%1, %2: %3").arg(name, hourWords(line.hour), withheldWords(line.withheld));
        }
        table.rows.push_back(
            {name, numberWords(locale, line.elevation, 0), hourWords(line.hour),
             PaperText::tr("%1 of %2").arg(QString::number(line.n), QString::number(line.days)),
             percentWords(locale, line.meanHumidity), percentWords(locale, line.highestHumidity),
             percentWords(locale, line.lowestHumidity), numberWords(locale, line.meanVapourPressure, 1),
             numberWords(locale, line.dewPointOfMeanVapourPressure, 1)});
    }
    return table;
}

} // namespace

PaperSheet clubPageSheet(report::ClubSheet sheet, const QLocale& locale, Paper paper) {
    const QString title = PaperText::tr("The club's stations · %1").arg(monthWords(locale, sheet.month));
    const auto shared = std::make_shared<const report::ClubSheet>(std::move(sheet));
    return {title, paper, [shared, locale, title](QPagedPaintDevice& device) {
                PageWriter page(device, title);
                if (!page.isActive()) {
                    return false;
                }
                page.heading(title, 15);
                page.paragraph(PaperText::tr("At observing hours; RH relative humidity, e vapour pressure, "
                                             "dew point in °C. n readings "
                                             "that count, of the days of the month."),
                               kClubWords, lightTokens().soft);
                if (shared->unlikeExposures) {
                    page.paragraph(
                        PaperText::tr(
                            "Thermometers that hang differently read differently in the same air, and so do "
                            "other hours and heights: the groups below are not for ranking one another, and "
                            "stations stand in alphabetical order."),
                        kClubWords, lightTokens().ink);
                }
                QStringList withheld;
                std::string exposure;
                for (const report::ClubLine& line : shared->lines) {
                    if (line.exposure == exposure) {
                        continue;
                    }
                    exposure = line.exposure;
                    const auto known = psychrometry::exposureFromName(exposure);
                    page.need(80);
                    page.heading(known ? exposureWords(*known) : QString::fromStdString(exposure), 12);
                    page.table(clubTable(*shared, exposure, locale, withheld));
                }
                for (const QString& sentence : withheld) {
                    page.paragraph(sentence, kClubWords - 1, lightTokens().soft);
                }
                return page.finish();
            }};
}

} // namespace wickbook::ui
