// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_model.h"

#include "ui/register/paper_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <algorithm>

namespace wickbook::ui {

bool isQuery(const report::MonthLine& line) {
    if (line.reading == nullptr) {
        return !line.toCome && line.excuse.empty();
    }
    const record::Observation& values = line.reading->reading.values();
    return values.quality == record::Quality::NotJudged && values.origin != record::Origin::Missing &&
           std::any_of(line.reading->findings.begin(), line.reading->findings.end(),
                       [](const auto& finding) { return checks::setsAside(finding.severity); });
}

LineState lineStateOf(const report::MonthLine& line) {
    if (line.reading == nullptr) {
        return line.toCome ? LineState::ToCome : line.excuse.empty() ? LineState::Missed : LineState::Excused;
    }
    const record::Observation& values = line.reading->reading.values();
    if (values.origin == record::Origin::Missing) {
        return LineState::Excused;
    }
    if (values.quality == record::Quality::Erroneous) {
        return LineState::Erroneous;
    }
    const bool marked =
        values.quality == record::Quality::NotJudged &&
        std::any_of(line.reading->findings.begin(), line.reading->findings.end(),
                    [](const auto& finding) { return finding.severity >= checks::Severity::Erroneous; });
    if (marked) {
        return LineState::Erroneous;
    }
    if (values.origin == record::Origin::Estimated && values.quality != record::Quality::Doubtful) {
        return LineState::Estimated; // how it came about, not what anybody thinks of it
    }
    if (line.reading->leftOut) {
        return LineState::Doubtful;
    }
    return values.hasPair() ? LineState::Kept : LineState::Incomplete;
}

QString lineStateWords(LineState state) {
    switch (state) {
    case LineState::Kept:
        return RegisterModel::tr("kept");
    case LineState::Doubtful:
        return RegisterModel::tr("doubtful");
    case LineState::Erroneous:
        return RegisterModel::tr("erroneous");
    case LineState::Incomplete:
        return RegisterModel::tr("incomplete");
    case LineState::Estimated:
        return RegisterModel::tr("estimated, not read");
    case LineState::Excused:
        return RegisterModel::tr("missing, with a reason");
    case LineState::Missed:
        return RegisterModel::tr("not written down");
    case LineState::ToCome:
        return RegisterModel::tr("to come");
    }
    return {};
}

RegisterModel::RegisterModel(QLocale locale, QObject* parent)
    : QAbstractTableModel(parent), locale_(std::move(locale)) {}

void RegisterModel::show(report::MonthReport report, units::TemperatureUnit unit) {
    beginResetModel();
    report_ = std::move(report);
    unit_ = unit;
    knowsPaper_ =
        std::any_of(report_.readings.begin(), report_.readings.end(), [](const checks::CheckedReading& one) {
            return one.reading.values().readBack || one.reading.values().paper;
        });
    texts_.assign(report_.lines.size() * ColumnCount, std::nullopt);
    endResetModel();
}

const QString& RegisterModel::shownText(const report::MonthLine& line, int row, int column) const {
    auto& kept = texts_[static_cast<std::size_t>(row * ColumnCount + column)];
    if (!kept) {
        kept = text(line, row, column);
    }
    return *kept;
}

int RegisterModel::readBackCount() const {
    return static_cast<int>(
        std::count_if(report_.readings.begin(), report_.readings.end(),
                      [](const checks::CheckedReading& one) { return one.reading.values().readBack; }));
}

PaperState RegisterModel::paperStateOf(const report::MonthLine& line) const {
    if (line.reading == nullptr) {
        return PaperState::Nothing;
    }
    return line.reading->reading.values().readBack ? PaperState::ReadBack
           : knowsPaper_                           ? PaperState::Open
                                                   : PaperState::Nothing;
}

const report::MonthLine* RegisterModel::line(int row) const {
    const auto index = static_cast<std::size_t>(row);
    return row >= 0 && index < report_.lines.size() ? &report_.lines[index] : nullptr;
}

int RegisterModel::rowOf(const record::ObservingHour& hour) const {
    // An expected hour stands before an extra reading made at the same clock time.
    for (const bool extra : {false, true}) {
        for (int row = 0; row < rowCount(); ++row) {
            const report::MonthLine& candidate = *line(row);
            if (candidate.extra == extra && candidate.hour == hour) {
                return row;
            }
        }
    }
    return -1;
}

int RegisterModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(report_.lines.size());
}

int RegisterModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString RegisterModel::readingText(const checks::CheckedReading& checked, int column) const {
    const record::DerivedReading& reading = checked.reading;
    const record::Observation& values = reading.values();
    switch (column) {
    case Dry:
        return bulbWords(locale_, values.dry);
    case Wet:
        return bulbWords(locale_, values.wet);
    case Depression:
        return reading.derivation ? differenceWords(locale_, reading.derivation->depression, unit_)
                                  : QString{};
    case Wick:
        return wickWords(values.wick);
    case Humidity:
        return reading.humidityPercent() ? numberWords(locale_, reading.humidityPercent(), 0) : QString{};
    case HumidityPlusMinus:
        return reading.humidityPercent() && reading.derivation->uncertainty
                   ? plusMinusWords(locale_, reading.derivation->uncertainty->relativeHumidityU95, 0)
                   : QString{};
    case DewPoint:
        return reading.derivation && reading.derivation->dewPoint
                   ? temperatureWords(locale_, reading.derivation->dewPoint, unit_)
                   : QString{};
    case Weather:
        return weatherSetWords(values.weather);
    case Wind:
        return values.windBeaufort ? QString::number(*values.windBeaufort) : QString{};
    case Initials:
        return QString::fromStdString(values.observer);
    case Origin:
        return originWords(values.origin);
    case Quality:
        return qualityWords(values.quality);
    case ReadBack:
        return values.readBack ? tr("read back") : QString{};
    case Paper:
        return paperWords(values.paper);
    case Note: {
        QStringList parts;
        if (values.origin == record::Origin::Missing) {
            parts << missingReasonWords(QString::fromStdString(values.missingReason));
        }
        if (!values.note.empty()) {
            parts << QString::fromStdString(values.note).simplified();
        }
        return parts.join(QStringLiteral("; "));
    }
    default:
        return {};
    }
}

QString RegisterModel::text(const report::MonthLine& line, int row, int column) const {
    switch (column) {
    case Date:
        return data(index(row, Date), NewDayRole).toBool()
                   ? QStringLiteral("%1 %2").arg(
                         locale_.dayName(toQDate(line.hour.date).dayOfWeek(), QLocale::ShortFormat),
                         QString::number(toQDate(line.hour.date).day())) // the heading names the month
                   : QString{};
    case Hour:
        return line.extra ? tr("%1, extra").arg(hourWords(line.hour.hour)) : hourWords(line.hour.hour);
    case State:
        return lineStateWords(lineStateOf(line));
    default:
        break;
    }
    if (line.reading == nullptr) {
        if (column == Note && !line.excuse.empty()) {
            return tr("%1 (absence)").arg(missingReasonWords(QString::fromStdString(line.excuse)));
        }
        return column == Note && !line.toCome ? lineStateWords(LineState::Missed) : QString{};
    }
    if (line.reading->reading.values().origin == record::Origin::Missing && column >= Dry &&
        column < Weather) {
        return {};
    }
    return readingText(*line.reading, column);
}

QVariant RegisterModel::sortKey(const report::MonthLine& line, int row, int column) const {
    if (column == Date || column == Hour) {
        const auto hour = static_cast<qlonglong>(line.hour.hour.count());
        const auto day = static_cast<qlonglong>(line.hour.date.time_since_epoch().count());
        return column == Date ? day * 1440 + hour : hour * 1'000'000 + day;
    }
    const record::DerivedReading* reading = line.reading == nullptr ? nullptr : &line.reading->reading;
    const auto read = [](const record::BulbReading& bulb) {
        return bulb.value ? QVariant{bulb.value->temperature().celsius()} : QVariant{};
    };
    switch (column) {
    case Dry:
        return reading == nullptr ? QVariant{} : read(reading->values().dry);
    case Wet:
        return reading == nullptr ? QVariant{} : read(reading->values().wet);
    case Depression:
        return reading != nullptr && reading->derivation ? QVariant{reading->derivation->depression.kelvins()}
                                                         : QVariant{};
    case Humidity:
        return reading != nullptr && reading->humidityPercent() ? QVariant{*reading->humidityPercent()}
                                                                : QVariant{};
    case HumidityPlusMinus:
        return reading != nullptr && reading->derivation && reading->derivation->uncertainty
                   ? QVariant{reading->derivation->uncertainty->relativeHumidityU95}
                   : QVariant{};
    case DewPoint:
        return reading != nullptr && reading->dewPointCelsius() ? QVariant{*reading->dewPointCelsius()}
                                                                : QVariant{};
    case Wind:
        return reading != nullptr && reading->values().windBeaufort
                   ? QVariant{*reading->values().windBeaufort}
                   : QVariant{};
    case State:
        return static_cast<int>(lineStateOf(line));
    default:
        return text(line, row, column);
    }
}

QString RegisterModel::notesText(const report::MonthLine& line) const {
    QStringList notes;
    if (line.reading != nullptr) {
        for (const checks::Finding& finding : line.reading->findings) {
            const FindingWords said = findingWords(locale_, finding, unit_);
            notes << QStringLiteral("%1. %2").arg(said.title, said.message);
        }
    }
    return notes.join(QLatin1Char('\n'));
}

QVariant RegisterModel::data(const QModelIndex& index, int role) const {
    const report::MonthLine* shown = index.isValid() ? line(index.row()) : nullptr;
    if (shown == nullptr) {
        return {};
    }
    switch (role) {
    case Qt::DisplayRole:
        return shownText(*shown, index.row(), index.column());
    case Qt::AccessibleTextRole:
        // A screen reader goes cell by cell: the date and the column's name go with each.
        return QStringLiteral("%1, %2: %3")
            .arg(hourAndDateWords(locale_, shown->hour),
                 headerData(index.column(), Qt::Horizontal, Qt::ToolTipRole).toString(),
                 text(*shown, index.row(), index.column()));
    case Qt::ToolTipRole:
        if (index.column() != State) {
            return text(*shown, index.row(), index.column());
        }
        return QStringList{lineStateWords(lineStateOf(*shown)), notesText(*shown)}
            .join(QLatin1Char('\n'))
            .trimmed();
    case Qt::TextAlignmentRole: {
        const bool number = (index.column() >= Dry && index.column() <= Depression) ||
                            (index.column() >= Humidity && index.column() <= DewPoint) ||
                            index.column() == Wind;
        return QVariant{(number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    case LongDateRole:
        return shortDateWords(locale_, shown->hour.date);
    case SortRole:
        return sortKey(*shown, index.row(), index.column());
    case PaperRole:
        return static_cast<int>(paperStateOf(*shown));
    case StateRole:
        return static_cast<int>(lineStateOf(*shown));
    case QueryRole:
        return isQuery(*shown);
    case NewDayRole: {
        const report::MonthLine* above = line(index.row() - 1);
        return above == nullptr || above->hour.date != shown->hour.date;
    }
    default:
        return {};
    }
}

QVariant RegisterModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) {
        return {};
    }
    const QString degrees = unitWords(unit_);
    const std::pair<QString, QString> names[ColumnCount] = {
        {tr("Date"), tr("Date")},
        {tr("Hour"), tr("Observing hour")},
        {tr("Dry"), tr("Dry bulb as read, %1").arg(degrees)},
        {tr("Wet"), tr("Wet bulb as read, %1").arg(degrees)},
        {tr("Depr."), tr("Wet-bulb depression, %1").arg(degrees)},
        {tr("Wick"), tr("Water or ice on the wick")},
        {tr("RH %"), tr("Relative humidity, %")},
        {tr("±"), tr("Relative humidity is good to, %")},
        {tr("Dew p."), tr("Dew point, %1").arg(degrees)},
        {tr("Weather"), tr("Weather")},
        {tr("Wind"), tr("Wind, Beaufort force")},
        {tr("Note"), tr("Note")},
        {tr("By"), tr("Observer's initials")},
        {tr("Origin"), tr("How the value came about")},
        {tr("Judged"), tr("What was judged of it")},
        {QString{}, tr("How the line stands")}, // the marks speak for themselves
        {QString{}, tr("Read back against the paper")},
        {tr("Paper"), tr("Book and page of the paper register")},
    };
    if (role == Qt::DisplayRole) {
        return names[section].first;
    }
    if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) {
        return names[section].second;
    }
    if (role == Qt::TextAlignmentRole) {
        const bool number = (section >= Dry && section <= Depression) ||
                            (section >= Humidity && section <= DewPoint) || section == Wind;
        return QVariant{(number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter};
    }
    return {};
}

} // namespace wickbook::ui
