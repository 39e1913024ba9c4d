// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/salvage_words.h"

#include <QCoreApplication>

#include <algorithm>

namespace wickbook::ui {

namespace {

struct SalvageText {
    Q_DECLARE_TR_FUNCTIONS(SalvageText)
};

constexpr std::size_t kMostRanges = 20;

/// The kinds of the station's facts that are altered, each once, as a person knows them.
QString factKindWords(const std::vector<std::string>& kinds) {
    QStringList words;
    for (const std::string& kind : kinds) {
        QString word;
        if (kind == "station") {
            word = SalvageText::tr("name");
        } else if (kind == "period") {
            word = SalvageText::tr("place and hours");
        } else if (kind == "thermometer") {
            word = SalvageText::tr("thermometer");
        } else if (kind == "fitting") {
            word = SalvageText::tr("which thermometers hang");
        } else if (kind == "correction") {
            word = SalvageText::tr("correction");
        } else if (kind == "limit") {
            word = SalvageText::tr("limit of the checks");
        } else if (kind == "absence") {
            word = SalvageText::tr("absence");
        } else if (kind == "diary") {
            word = SalvageText::tr("diary");
        } else if (kind == "pair_check") {
            word = SalvageText::tr("check of the pair");
        } else if (kind == "salt_check") {
            word = SalvageText::tr("check over salts");
        } else if (kind == "side_by_side" || kind == "beside_reading") {
            word = SalvageText::tr("comparison with another instrument");
        } else {
            word = SalvageText::tr("a fact of a later version");
        }
        if (!words.contains(word)) {
            words << word;
        }
    }
    return words.join(QStringLiteral(", "));
}

} // namespace

store::SalvageWords salvageWords(const QString& who) {
    store::SalvageWords words;
    words.author = {who.toStdString(), SalvageText::tr("salvaged from a damaged book").toStdString()};
    words.alteredWhy =
        SalvageText::tr("salvage: bytes of this reading changed in the damaged book, so that it "
                        "may not be what was read")
            .toStdString();
    words.hourWhy = SalvageText::tr("salvage: a reading written later stands at this hour; what withdrew or "
                                    "moved this one is lost")
                        .toStdString();
    words.stationName = SalvageText::tr("Salvaged station, its facts lost").toStdString();
    return words;
}

QString rangeWords(const std::vector<store::SequenceRange>& ranges) {
    QStringList words;
    for (std::size_t i = 0; i < std::min(ranges.size(), kMostRanges); ++i) {
        const store::SequenceRange& range = ranges[i];
        words << (range.first == range.last ? QString::number(range.first)
                                            : QStringLiteral("%1–%2").arg(QString::number(range.first),
                                                                          QString::number(range.last)));
    }
    QString text = words.join(QStringLiteral(", "));
    if (ranges.size() > kMostRanges) {
        text = SalvageText::tr("%1 and %2 more")
                   .arg(text, QString::number(static_cast<qulonglong>(ranges.size() - kMostRanges)));
    }
    return text;
}

QString salvageSentence(const store::SalvageReport& report) {
    if (report.stopped) {
        return SalvageText::tr("Stopped: there is no new book, and the damaged one is as it was.");
    }
    const QString expected = QString::number(report.expected);
    if (report.chainKept) {
        return SalvageText::tr("Everything came back: all %1 revisions are there and proved.").arg(expected);
    }
    return SalvageText::tr("%1 of %2 revisions came back, %3 of them proved to be as they were written.")
        .arg(QString::number(report.proved + report.unproven + report.altered), expected,
             QString::number(report.proved));
}

QStringList salvageDetails(const store::SalvageReport& report) {
    QStringList lines;
    const auto number = [](std::int64_t count) { return QString::number(count); };
    if (report.lost > 0) {
        lines << SalvageText::tr(
                     "Revisions that can't be read and are lost: %1 (number %2). Look for them in the newest "
                     "copy that verifies, or in the paper register.")
                     .arg(number(report.lost), rangeWords(report.lostAt));
    }
    if (report.altered > 0) {
        lines << SalvageText::tr("Revisions that came in altered, as they now read: %1 (number %2).")
                     .arg(number(report.altered), rangeWords(report.alteredAt));
    }
    if (report.judgedDoubtful > 0) {
        lines << SalvageText::tr(
                     "Altered readings that are judged doubtful: %1. Compare them with the paper register, "
                     "correct them, or judge them sound.")
                     .arg(number(report.judgedDoubtful));
    }
    if (!report.alteredFacts.empty()) {
        lines << SalvageText::tr("Facts of the station are altered (%1): check them on the pages Station and "
                                 "Instruments.")
                     .arg(factKindWords(report.alteredFacts));
    }
    if (report.unproven > 0) {
        lines << SalvageText::tr(
                     "Revisions that can't be proved, since the one before is hurt: %1 (number %2). Nothing "
                     "says that they changed.")
                     .arg(number(report.unproven), rangeWords(report.unprovenAt));
    }
    if (report.movedFromHour > 0) {
        lines
            << SalvageText::tr(
                   "Readings that became extra ones, judged doubtful: %1. A reading written later stands at "
                   "their hour, and what withdrew or moved them is lost: withdraw them or give them "
                   "another hour.")
                   .arg(number(report.movedFromHour));
    }
    if (report.stationLost) {
        lines << SalvageText::tr(
            "The station's name is lost: enter it, and what else is missing, on the pages "
            "Station and Instruments.");
    }
    if (report.pagesUnread > 0) {
        lines << SalvageText::tr("%1 of %2 pages of the file could not be read as what they should be.")
                     .arg(QString::number(static_cast<qulonglong>(report.pagesUnread)),
                          QString::number(static_cast<qulonglong>(report.pages)));
    }
    if (report.writeTakenBack) {
        lines << SalvageText::tr(
            "A write that had been interrupted was taken back, as opening the book would "
            "have done.");
    }
    return lines;
}

} // namespace wickbook::ui
