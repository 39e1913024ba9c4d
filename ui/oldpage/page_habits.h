// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QString>
#include <QStringList>

#include <vector>

/// How the page in hand is laid out and how it is typed off: kept per book, so that the next page of the same
/// register is met as the last was left. Losing the file loses nothing but these choices.

namespace wickbook::ui {

/// What a page may have written down at an hour.
enum class PageField { Dry, Wet, Wick, Weather, Wind, Pressure, Maximum, Minimum, Note };
inline constexpr int kPageFieldCount = 9;

/// "dry", "wet", …: for the settings file only.
QString pageFieldName(PageField field);
/// A column's head: "Dry", what it is: "Dry bulb as read", and that within a sentence: "dry bulb".
QString pageFieldHead(PageField field);
QString pageFieldWords(PageField field);
QString pageFieldWhat(PageField field);

struct OldPageColumn {
    PageField field = PageField::Dry;
    bool shown = true;
    bool onTheWay = false; ///< Enter stops here
    bool operator==(const OldPageColumn&) const = default;
};

struct PageHabits {
    std::vector<OldPageColumn> columns = usualColumns(); ///< every field once, in the order of the paper
    bool withoutPoint = false;                           ///< 234 is 23.4
    bool downTheColumn = false; ///< Enter goes to the line below, not to the next column
    bool hoursAbreast = false;  ///< each hour a block of columns, not a line of its own
    bool notesAtEnd = false;    ///< marginal notes wait for the page's end
    QDate month;                ///< turned to last
    QString paperBook;
    QString readBy; ///< initials on the paper

    static std::vector<OldPageColumn> usualColumns();
    [[nodiscard]] std::vector<PageField> shownFields() const;
    [[nodiscard]] bool isOnTheWay(PageField field) const;
    /// Takes the field out and puts it before the place given (0 … count).
    void moveColumn(PageField field, int before);
    bool operator==(const PageHabits&) const = default;

    /// key: the book, as its station's id.
    static PageHabits load(const QString& file, const QString& key);
    void save(const QString& file, const QString& key) const;
};

} // namespace wickbook::ui
