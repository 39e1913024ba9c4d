// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/page_habits.h"

#include <QCoreApplication>
#include <QSettings>

#include <algorithm>
#include <array>

namespace wickbook::ui {

namespace {

struct FieldName {
    const char* name;
    const char* head;
    const char* words;
    const char* what; ///< within a sentence
};
constexpr std::array<FieldName, kPageFieldCount> kFields{{
    {"dry", QT_TRANSLATE_NOOP("oldpage", "Dry"), QT_TRANSLATE_NOOP("oldpage", "Dry bulb as read"),
     QT_TRANSLATE_NOOP("oldpage", "dry bulb")},
    {"wet", QT_TRANSLATE_NOOP("oldpage", "Wet"), QT_TRANSLATE_NOOP("oldpage", "Wet bulb as read"),
     QT_TRANSLATE_NOOP("oldpage", "wet bulb")},
    {"wick", QT_TRANSLATE_NOOP("oldpage", "Wick"), QT_TRANSLATE_NOOP("oldpage", "Water or ice on the wick"),
     QT_TRANSLATE_NOOP("oldpage", "wick")},
    {"weather", QT_TRANSLATE_NOOP("oldpage", "Weather"), QT_TRANSLATE_NOOP("oldpage", "Weather"),
     QT_TRANSLATE_NOOP("oldpage", "weather")},
    {"wind", QT_TRANSLATE_NOOP("oldpage", "Wind"), QT_TRANSLATE_NOOP("oldpage", "Wind, Beaufort force"),
     QT_TRANSLATE_NOOP("oldpage", "wind")},
    {"pressure", QT_TRANSLATE_NOOP("oldpage", "hPa"), QT_TRANSLATE_NOOP("oldpage", "Pressure, hPa"),
     QT_TRANSLATE_NOOP("oldpage", "pressure")},
    {"maximum", QT_TRANSLATE_NOOP("oldpage", "Max"), QT_TRANSLATE_NOOP("oldpage", "Maximum as read"),
     QT_TRANSLATE_NOOP("oldpage", "maximum")},
    {"minimum", QT_TRANSLATE_NOOP("oldpage", "Min"), QT_TRANSLATE_NOOP("oldpage", "Minimum as read"),
     QT_TRANSLATE_NOOP("oldpage", "minimum")},
    {"note", QT_TRANSLATE_NOOP("oldpage", "Note"), QT_TRANSLATE_NOOP("oldpage", "Note"),
     QT_TRANSLATE_NOOP("oldpage", "note")},
}};

const FieldName& nameOf(PageField field) {
    return kFields.at(static_cast<std::size_t>(field));
}

/// "dry+*": shown, Enter stops there; "wind": neither.
QString columnText(const OldPageColumn& column) {
    return pageFieldName(column.field) + (column.shown ? QStringLiteral("+") : QString{}) +
           (column.onTheWay ? QStringLiteral("*") : QString{});
}

} // namespace

QString pageFieldName(PageField field) {
    return QString::fromLatin1(nameOf(field).name);
}

QString pageFieldHead(PageField field) {
    return QCoreApplication::translate("oldpage", nameOf(field).head);
}

QString pageFieldWords(PageField field) {
    return QCoreApplication::translate("oldpage", nameOf(field).words);
}

QString pageFieldWhat(PageField field) {
    return QCoreApplication::translate("oldpage", nameOf(field).what);
}

std::vector<OldPageColumn> PageHabits::usualColumns() {
    return {{PageField::Dry, true, true},       {PageField::Wet, true, true},
            {PageField::Wick, true, false},     {PageField::Weather, true, false},
            {PageField::Wind, false, false},    {PageField::Pressure, false, false},
            {PageField::Maximum, false, false}, {PageField::Minimum, false, false},
            {PageField::Note, true, false}};
}

std::vector<PageField> PageHabits::shownFields() const {
    std::vector<PageField> shown;
    for (const OldPageColumn& column : columns) {
        if (column.shown) {
            shown.push_back(column.field);
        }
    }
    return shown;
}

bool PageHabits::isOnTheWay(PageField field) const {
    return std::any_of(columns.begin(), columns.end(), [field](const OldPageColumn& column) {
        return column.field == field && column.shown && column.onTheWay;
    });
}

void PageHabits::moveColumn(PageField field, int before) {
    const auto at = std::find_if(columns.begin(), columns.end(),
                                 [field](const OldPageColumn& column) { return column.field == field; });
    const auto from = static_cast<int>(at - columns.begin());
    const int to = std::clamp(before, 0, static_cast<int>(columns.size()));
    if (from < to) {
        std::rotate(columns.begin() + from, columns.begin() + from + 1, columns.begin() + to);
    } else {
        std::rotate(columns.begin() + to, columns.begin() + from, columns.begin() + from + 1);
    }
}

PageHabits PageHabits::load(const QString& file, const QString& key) {
    PageHabits habits;
    if (file.isEmpty()) {
        return habits;
    }
    QSettings settings(file, QSettings::IniFormat);
    settings.beginGroup(key);
    habits.withoutPoint = settings.value(QStringLiteral("withoutPoint"), false).toBool();
    habits.downTheColumn = settings.value(QStringLiteral("downTheColumn"), false).toBool();
    habits.hoursAbreast = settings.value(QStringLiteral("hoursAbreast"), false).toBool();
    habits.notesAtEnd = settings.value(QStringLiteral("notesAtEnd"), false).toBool();
    habits.month = settings.value(QStringLiteral("month")).toDate();
    habits.paperBook = settings.value(QStringLiteral("paperBook")).toString();
    habits.readBy = settings.value(QStringLiteral("readBy")).toString();
    std::vector<OldPageColumn> kept;
    for (const QString& text : settings.value(QStringLiteral("columns")).toStringList()) {
        QString name = text;
        OldPageColumn column;
        column.onTheWay = name.endsWith(QLatin1Char('*'));
        name.remove(QLatin1Char('*'));
        column.shown = name.endsWith(QLatin1Char('+'));
        name.remove(QLatin1Char('+'));
        for (int field = 0; field < kPageFieldCount; ++field) {
            column.field = static_cast<PageField>(field);
            const bool again = std::any_of(kept.begin(), kept.end(), [&column](const OldPageColumn& other) {
                return other.field == column.field;
            });
            if (pageFieldName(column.field) == name && !again) {
                kept.push_back(column);
                break;
            }
        }
    }
    // A file from another version, or edited by hand, may lack a field: the usual columns then.
    if (std::ssize(kept) == kPageFieldCount) {
        habits.columns = kept;
    }
    return habits;
}

void PageHabits::save(const QString& file, const QString& key) const {
    if (file.isEmpty()) {
        return;
    }
    QSettings settings(file, QSettings::IniFormat);
    settings.beginGroup(key);
    settings.setValue(QStringLiteral("withoutPoint"), withoutPoint);
    settings.setValue(QStringLiteral("downTheColumn"), downTheColumn);
    settings.setValue(QStringLiteral("hoursAbreast"), hoursAbreast);
    settings.setValue(QStringLiteral("notesAtEnd"), notesAtEnd);
    settings.setValue(QStringLiteral("month"), month);
    settings.setValue(QStringLiteral("paperBook"), paperBook);
    settings.setValue(QStringLiteral("readBy"), readBy);
    QStringList texts;
    for (const OldPageColumn& column : columns) {
        texts << columnText(column);
    }
    settings.setValue(QStringLiteral("columns"), texts);
}

} // namespace wickbook::ui
