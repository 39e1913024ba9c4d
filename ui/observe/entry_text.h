// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/observation.h"
#include "core/record/station_record.h"

#include <QDate>
#include <QJsonObject>
#include <QList>
#include <QString>
#include <tl/expected.hpp>

#include <optional>

/// One entry as it stands in the fields, letter for letter. It is what a draft keeps, and the only way from
/// what was typed to what is stored. Plain values, no widgets.

namespace wickbook::ui {

/// A slip that was taken as the explanation, and what stood in the fields before.
struct TakenCause {
    bool paperSaysSo = true; ///< a slip of the keys; otherwise a slip of the reading, kept as first revision
    QString reason;          ///< "wet bulb is 8.1, read one low"
    QString dryBefore;
    QString wetBefore;
    QString wickBefore; ///< wickName
    bool operator==(const TakenCause&) const = default;
};

/// One whirl as typed.
struct RepeatText {
    QString wet;
    QString dry;
    bool operator==(const RepeatText&) const = default;
};

struct EntryText {
    QDate date;
    int hourMinutes = -1;        ///< the observing hour, minutes after midnight; −1: an extra reading
    QString clock;               ///< when it was read, as typed; empty: see EntryTime
    bool secondOfDouble = false; ///< which of a clock time that came twice

    QString dry;
    QString wet;
    QString wick;     ///< "water", "ice" or empty
    QString wickCare; ///< "wetted", "changed" or empty
    QString pressure;
    QString weather; ///< names joined by ';', "none", or empty
    QString wind;
    QString maximum;
    QString minimum;
    QString observer;
    QString note;
    QList<RepeatText> repeats; ///< whirl by whirl, where that was asked for
    std::optional<TakenCause> taken;

    /// Nothing that a hand has typed: date, hour and observer do not count.
    [[nodiscard]] bool untouched() const;
    [[nodiscard]] QJsonObject toJson() const;
    static EntryText fromJson(const QJsonObject& object);
    bool operator==(const EntryText&) const = default;
};

enum class EntryField { None, Date, Clock, Dry, Wet, Wick, Pressure, Wind, Maximum, Minimum, Repeats };

/// Which field stands in the way, and the sentence.
struct EntryProblem {
    EntryField field = EntryField::None;
    QString sentence;
};

/// When the reading was made. A reading typed within the hour's window of now was read now; an older one is
/// taken at its hour unless a time was written.
struct EntryTime {
    record::Instant instant{};
    bool live = false;      ///< near enough to now to be read again
    bool cameTwice = false; ///< the clock showed it twice; secondOfDouble chooses
};
tl::expected<EntryTime, EntryProblem> entryTime(const EntryText& text, const record::StationRecord& station,
                                                record::Instant now);

/// The observation as it would be stored. Problems: not a number, a time that never was, a force beyond 12.
/// An empty bulb is no problem here: one bulb alone is kept as incomplete.
tl::expected<record::Observation, EntryProblem>
readEntry(const EntryText& text, const record::StationRecord& station, record::Instant now);

/// What an observation would look like in the fields; for opening a stored one.
EntryText entryTextOf(const record::Observation& observation);

/// A bulb as typed: digits, "<" for below scale, or nothing.
tl::expected<record::BulbReading, QString> readBulb(const QString& typed, const QString& what,
                                                    units::TemperatureUnit unit);

} // namespace wickbook::ui
