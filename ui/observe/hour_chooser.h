// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/observe/entry_text.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

/// Which hour is written down, and when it was read: the page's heading, the line that says what to do first,
/// and the fields to choose another date, hour or time. Owns nothing of the entry but these.

namespace wickbook::ui {

class HourChooser : public QWidget {
    Q_OBJECT

public:
    explicit HourChooser(QWidget* parent = nullptr);

    /// Its hours are offered from now on; what is typed in the fields stays.
    void setStation(const record::StationRecord& station);
    /// Shows the date, hour and clock of an entry.
    void show(const EntryText& entry);
    void read(EntryText& entry) const;
    /// A date is half typed.
    [[nodiscard]] bool isBeingTyped() const;
    /// The line under the heading.
    void setGuidance(const QString& sentence);
    /// Asks which of a clock time that came twice is meant.
    void askWhich(bool cameTwice);
    void showProblem(EntryField field, const QString& sentence);

signals:
    /// The person chose another hour, date or time.
    void changed();

private:
    void fillHours();
    void readFields();
    void step(int direction);
    void showHeading();

    const record::StationRecord* station_ = nullptr;
    QDate date_;
    int hourMinutes_ = -1;
    bool showing_ = false;
    QLabel* heading_ = nullptr;
    QLabel* guidance_ = nullptr;
    QLineEdit* dateEdit_ = nullptr;
    QComboBox* hour_ = nullptr;
    QLineEdit* clock_ = nullptr;
    QComboBox* which_ = nullptr;
    QPushButton* earlier_ = nullptr;
    QPushButton* later_ = nullptr;
};

/// A date as typed: in the locale's short form, ISO, or "22.11." and "22/11" with the year left out, read in
/// the locale's order of day and month.
QDate dateFromTyped(const QLocale& locale, const QString& typed, int yearToAssume);

/// What to do before this hour: from half an hour ahead, then at it; a sentence, or the time alone.
/// frostLikely: the last readings stood near 0 °C or below. wickDays: since the last new wick, where that is
/// known; from a fortnight on it is said beforehand.
QString guidanceFor(const record::StationRecord& station, const EntryText& entry, record::Instant now,
                    bool frostLikely, std::optional<int> wickDays = {});

} // namespace wickbook::ui
