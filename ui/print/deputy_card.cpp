// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/deputy_card.h"

#include "ui/print/month_figure.h"
#include "ui/print/month_return.h"
#include "ui/print/page_writer.h"
#include "ui/print/paper_text.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <memory>

namespace wickbook::ui {

namespace {

constexpr double kCardTitle = 16;
constexpr double kCardPart = 12;
constexpr double kCardWords = 10;
constexpr double kCardHandwriting = 26;

class CardPainter {
public:
    CardPainter(const record::StationRecord& station, record::StationDate today, const QLocale& locale,
                QPagedPaintDevice& device)
        : station_(station)
        , today_(today)
        , locale_(locale)
        , period_(station.latestPeriod())
        , page_(device, stationHeading(station)) {
        whirled_ = period_.exposure == psychrometry::Exposure::Whirled ||
                   period_.exposure == psychrometry::Exposure::SlingUs;
        const record::Instant now{today.time_since_epoch()};
        const record::Thermometer* dry = station.dryThermometerAt(now);
        fahrenheit_ = dry != nullptr && dry->unit == units::TemperatureUnit::Fahrenheit;
    }

    bool paint() {
        if (!page_.isActive()) {
            return false;
        }
        page_.heading(PaperText::tr("Reading %1 in my place").arg(stationHeading(station_)), kCardTitle);
        page_.facts(facts(), kCardWords);
        line(PaperText::tr("In doubt ask"));
        part(PaperText::tr("Before you go out"), before());
        part(PaperText::tr("Reading"), reading());
        part(PaperText::tr("In frost"), frost());
        part(PaperText::tr("Wick and water"), wick());
        part(PaperText::tr("When something is not right"), doubt());
        part(PaperText::tr("Take care"), cautionWords().mid(0, 3));
        return page_.finish();
    }

private:
    [[nodiscard]] FactLines facts() const {
        QStringList hours;
        for (const record::HourOfDay hour : period_.hours) {
            hours << hourWords(hour);
        }
        FactLines lines{{PaperText::tr("when"), hours.join(QStringLiteral(", ")) + QStringLiteral("; ") +
                                                    hourRuleWords(period_.hourRule)},
                        {PaperText::tr("where"), exposureWords(period_.exposure)}};
        const record::Instant now{today_.time_since_epoch()};
        if (const record::Thermometer* dry = station_.dryThermometerAt(now)) {
            lines.emplace_back(PaperText::tr("read to"),
                               readWords(locale_, dry->step) + kNoBreakSpace + unitWords(dry->unit));
        }
        for (const record::Absence& absence : station_.facts().absences) {
            if (!absence.withdrawn && absence.to >= today_ && !absence.deputy.empty()) {
                //: %1 and %2 are dates, %3 a deputy's initials
                lines.emplace_back(PaperText::tr("away"), PaperText::tr("%1 to %2; %3 reads")
                                                              .arg(shortDateWords(locale_, absence.from),
                                                                   shortDateWords(locale_, absence.to),
                                                                   QString::fromStdString(absence.deputy)));
            }
        }
        return lines;
    }

    void line(const QString& what) {
        page_.figure(kCardHandwriting, [&](QPainter& painter, const QRectF& where) {
            painter.setPen(QPen(lightTokens().soft, 0.7));
            painter.drawLine(where.bottomLeft() + QPointF{where.width() * 0.3, -4},
                             where.bottomRight() + QPointF{0, -4});
            QFont font = ChartLook::paper().font;
            font.setPixelSize(static_cast<int>(kCardWords * 10));
            painter.scale(0.1, 0.1);
            painter.setFont(font);
            painter.setPen(lightTokens().ink);
            painter.drawText(
                QRectF{where.left() * 10, where.top() * 10, where.width() * 3, where.height() * 10},
                Qt::AlignLeft | Qt::AlignBottom, what);
        });
        page_.space(6);
    }

    void part(const QString& title, const QStringList& sentences) {
        page_.need(70);
        page_.heading(title, kCardPart);
        page_.paragraph(sentences.join(QLatin1Char(' ')), kCardWords, lightTokens().ink);
        page_.space(2);
    }

    [[nodiscard]] QStringList before() const {
        return whirled_
                   ? QStringList{PaperText::tr(
                                     "Half an hour ahead hang the instrument outdoors in the shade. "
                                     "Look at the wick: clean, wet, tight round the bulb. Look for a "
                                     "break in each column."),
                                 PaperText::tr("Check the cord and the swivel.")}
                   : QStringList{PaperText::tr("Look at the wick when you open the screen: clean, wet, tight "
                                               "round the bulb. Look for a break in each column.")};
    }

    [[nodiscard]] QStringList reading() const {
        QStringList sentences;
        if (whirled_) {
            sentences << PaperText::tr(
                "Stand in the shade and face the wind, arm out, nobody and nothing within "
                "1.5 m. Whirl for about a minute at two turns a second, stop, and read the wet "
                "bulb first, at once, then the dry bulb. Whirl again until the wet bulb falls "
                "no further; the lowest counts, with the dry bulb beside it.");
        } else {
            sentences << PaperText::tr(
                "Read the dry bulb first, then the wet bulb, quickly and without breathing on "
                "them.");
        }
        sentences << PaperText::tr(
                         "Eye level with the top of the column. Tenths first, whole degrees after, then look "
                         "once more whether you are ten off.")
                  << PaperText::tr(
                         "Write both down as read, with the time and your initials, before you do anything "
                         "else.");
        return sentences;
    }

    [[nodiscard]] QStringList frost() const {
        const QString zero = fahrenheit_ ? PaperText::tr("32 °F") : PaperText::tr("0 °C");
        return {
            PaperText::tr(
                "With the wet bulb at %1 or below say whether the wick holds water or ice: touch it, or "
                "watch whether the column stands still at %1 on its way down.")
                .arg(zero),
            whirled_
                ? PaperText::tr("Wet the wick a quarter of an hour ahead and let it freeze before you whirl.")
                : PaperText::tr("Take the reservoir away. A quarter of an hour ahead brush on a thin film of "
                                "ice-cold water; melt thick ice off first."),
            PaperText::tr(
                "After a thaw old ice holds the bulb at %1: melt it with tepid water and wait until the "
                "column has risen.")
                .arg(zero)};
    }

    [[nodiscard]] static QStringList wick() {
        return {PaperText::tr(
            "Distilled or rain water only, never from the tap. Do not touch the wick with your "
            "fingers. Put on a new one when it is yellow, frayed or beads the water; write that "
            "down too.")};
    }

    [[nodiscard]] static QStringList doubt() {
        return {
            PaperText::tr(
                "The wet bulb stands above the dry one, or both read the same in clear dry weather: read "
                "again, wet the wick, wait, read once more. Write down what you read even if it looks "
                "wrong, and say so beside it."),
            PaperText::tr(
                "Missed an hour? Leave it empty and say why. A reading made late is written with its true "
                "time. Nothing is made up.")};
    }

    const record::StationRecord& station_;
    record::StationDate today_;
    const QLocale& locale_;
    const record::StationPeriod& period_;
    PageWriter page_;
    bool whirled_ = false;
    bool fahrenheit_ = false;
};

} // namespace

PaperSheet deputyCardSheet(const record::StationRecord& station, record::StationDate today,
                           const QLocale& locale) {
    const auto shared = std::make_shared<const record::StationRecord>(station);
    return {PaperText::tr("Deputy's card · %1").arg(stationHeading(station)), Paper::A5,
            [shared, today, locale](QPagedPaintDevice& device) {
                return CardPainter(*shared, today, locale, device).paint();
            }};
}

} // namespace wickbook::ui
