// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/month_form.h"

#include "ui/print/month_figure.h"
#include "ui/print/page_writer.h"
#include "ui/print/paper_text.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <memory>
#include <numeric>

namespace wickbook::ui {

namespace {

constexpr double kLine = 19.85; // points: 7 mm
constexpr double kHead = 26;
constexpr double kFormWords = 10;
constexpr double kFormSmall = 8.5;
constexpr double kHandwriting = 24; // room for a name written by hand

/// Columns by their share of the width.
enum FormColumn { Day, Hour, Time, Dry, Wet, Water, Ice, Weather, Wind, Initials, Note, FormColumns };
constexpr double kShares[FormColumns] = {1.5, 1.2, 1.2, 2.2, 2.2, 1.0, 0.7, 1.7, 0.8, 1.0, 2.9};

class FormPainter {
public:
    FormPainter(const report::BlankMonth& month, const QLocale& locale, QPagedPaintDevice& device)
        : month_(month)
        , locale_(locale)
        , page_(device, QStringLiteral("%1 · %2").arg(stationHeading(month.station),
                                                      monthWords(locale, month.month))) {}

    bool paint() {
        if (!page_.isActive()) {
            return false;
        }
        title();
        head();
        for (std::size_t at = 0; at < month_.lines.size(); ++at) {
            if (page_.roomLeft() < kLine) {
                page_.newPage();
                head();
            }
            const bool newDay = at == 0 || month_.lines[at - 1].hour.date != month_.lines[at].hour.date;
            line(month_.lines[at].hour, newDay);
        }
        if (month_.lines.empty()) {
            page_.paragraph(PaperText::tr("The station keeps no observing hour in this month."), kFormWords,
                            lightTokens().ink);
        }
        foot();
        return page_.finish();
    }

private:
    void title() {
        page_.heading(
            QStringLiteral("%1 · %2").arg(stationHeading(month_.station), monthWords(locale_, month_.month)),
            16);
        page_.figure(kHandwriting, [&](QPainter& painter, const QRectF& where) {
            const QStringList names{PaperText::tr("Observer"), PaperText::tr("Book"), PaperText::tr("Page")};
            const double shares[] = {0.6, 0.2, 0.2};
            double x = where.left();
            for (qsizetype at = 0; at < names.size(); ++at) {
                const QRectF box{x, where.top(), where.width() * shares[at] - 8, kHandwriting};
                words(painter, box, names[at], kFormSmall, Qt::AlignLeft | Qt::AlignBottom);
                painter.setPen(QPen(lightTokens().soft, 0.6));
                painter.drawLine(QPointF{x + 48, where.bottom() - 2},
                                 QPointF{box.right(), where.bottom() - 2});
                x += where.width() * shares[at];
            }
        });
        page_.space(6);
    }

    static void words(QPainter& painter, const QRectF& where, const QString& text, double points, int flags) {
        QFont font = ChartLook::paper().font;
        font.setPixelSize(static_cast<int>(points * 10));
        painter.save();
        painter.scale(0.1, 0.1);
        painter.setFont(font);
        painter.setPen(lightTokens().ink);
        painter.drawText(QRectF{where.topLeft() * 10, where.size() * 10}, flags | Qt::TextWordWrap, text);
        painter.restore();
    }

    [[nodiscard]] std::vector<double> edges(const QRectF& where) const {
        const double all = std::accumulate(std::begin(kShares), std::end(kShares), 0.0);
        std::vector<double> places{where.left()};
        for (const double share : kShares) {
            places.push_back(places.back() + where.width() * share / all);
        }
        return places;
    }

    void head() {
        const QStringList names{PaperText::tr("day"),
                                PaperText::tr("hour"),
                                PaperText::tr("time"),
                                PaperText::tr("dry %1").arg(unitWords(month_.dryUnit)),
                                PaperText::tr("wet %1").arg(unitWords(month_.wetUnit)),
                                PaperText::tr("water"),
                                PaperText::tr("ice"),
                                PaperText::tr("weather"),
                                PaperText::tr("wind"),
                                PaperText::tr("who"),
                                PaperText::tr("note")};
        page_.figure(kHead, [&](QPainter& painter, const QRectF& where) {
            const auto places = edges(where);
            for (qsizetype at = 0; at < names.size(); ++at) {
                const auto column = static_cast<std::size_t>(at);
                words(painter,
                      QRectF{places[column] + 1, where.top(), places[column + 1] - places[column] - 2,
                             kHead - 3},
                      names[at], kFormSmall, Qt::AlignHCenter | Qt::AlignBottom);
            }
            painter.setPen(QPen(lightTokens().ink, 1));
            painter.drawLine(where.bottomLeft(), where.bottomRight());
        });
    }

    /// Two boxes for whole degrees and, where the thermometer is read finer, a mark and one for tenths; a
    /// place before them for the sign.
    static void degreeBoxes(QPainter& painter, const QRectF& where, bool tenths) {
        const double side = std::min(where.height() - 4, where.width() / 5.2);
        const double top = where.center().y() - side / 2;
        double x = where.left() + where.width() / 2 - side * (tenths ? 2.3 : 1.5);
        painter.setPen(QPen(lightTokens().soft, 0.6));
        painter.setBrush(Qt::NoBrush);
        // The sign's place is open: an empty box would ask for something.
        painter.drawLine(QPointF{x + side * 0.15, top + side}, QPointF{x + side * 0.85, top + side});
        x += side;
        painter.drawRect(QRectF{x, top, side, side});
        painter.drawRect(QRectF{x + side, top, side, side});
        if (tenths) {
            painter.setBrush(lightTokens().ink);
            painter.drawEllipse(QPointF{x + side * 2.3, top + side - 1.5}, 1, 1);
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(QRectF{x + side * 2.6, top, side, side});
        }
    }

    void line(const record::ObservingHour& hour, bool newDay) {
        page_.figure(kLine, [&](QPainter& painter, const QRectF& where) {
            const auto places = edges(where);
            const auto cell = [&](FormColumn column) {
                const auto at = static_cast<std::size_t>(column);
                return QRectF{places[at], where.top(), places[at + 1] - places[at], where.height()};
            };
            if (newDay) {
                painter.setPen(QPen(lightTokens().soft, 0.8));
                painter.drawLine(where.topLeft(), where.topRight());
                words(painter, cell(Day).adjusted(2, 0, -2, 0),
                      locale_.toString(toQDate(hour.date), QStringLiteral("d ddd")), kFormWords,
                      Qt::AlignLeft | Qt::AlignVCenter);
            }
            words(painter, cell(Hour).adjusted(0, 0, -2, 0), hourWords(hour.hour), kFormWords,
                  Qt::AlignRight | Qt::AlignVCenter);
            degreeBoxes(painter, cell(Dry), month_.dryTenths);
            degreeBoxes(painter, cell(Wet), month_.wetTenths);
            painter.setPen(QPen(lightTokens().soft, 0.6));
            for (const FormColumn tick : {Water, Ice}) {
                const QRectF box = cell(tick);
                painter.drawRect(QRectF{box.center().x() - 5, box.center().y() - 5, 10, 10});
            }
            painter.setPen(QPen(lightTokens().rule, 0.5));
            for (const FormColumn column : {Time, Weather, Wind, Initials, Note}) {
                painter.drawLine(cell(column).topLeft(), cell(column).bottomLeft());
            }
            painter.drawLine(where.bottomLeft(), where.bottomRight());
        });
    }

    void foot() {
        const QString order =
            month_.whirled
                ? PaperText::tr(
                      "Whirl in the shade, facing the wind, until the wet bulb falls no further. Read the "
                      "wet bulb first, at once, then the dry bulb.")
                : PaperText::tr("Read the dry bulb first, then the wet bulb, without breathing on them.");
        const QStringList sentences{
            order,
            PaperText::tr("Tenths before whole degrees. Write what you read; corrections are made later."),
            PaperText::tr("With the wet bulb at 0 °C (32 °F) or below tick water or ice."),
            PaperText::tr(
                "A missed hour stays empty; say why in the note. Strike out a slip, so that it can still be "
                "read, and write the right figure beside it."),
            PaperText::tr(
                "Keep clear of people and glass when whirling; mind ice underfoot, and stay in when there is "
                "thunder.")};
        page_.space(6);
        page_.paragraph(sentences.join(QLatin1Char(' ')), kFormSmall, lightTokens().ink);
    }

    const report::BlankMonth& month_;
    const QLocale& locale_;
    PageWriter page_;
};

} // namespace

PaperSheet monthFormSheet(report::BlankMonth month, const QLocale& locale, Paper paper) {
    const QString title =
        PaperText::tr("Form for %1 · %2").arg(monthWords(locale, month.month), stationHeading(month.station));
    const auto shared = std::make_shared<const report::BlankMonth>(std::move(month));
    return {title, paper, [shared, locale](QPagedPaintDevice& device) {
                return FormPainter(*shared, locale, device).paint();
            }};
}

} // namespace wickbook::ui
