// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/decimal.h"
#include "ui/session/session.h"

#include <QLocale>
#include <QObject>
#include <QString>

#include <optional>

/// Looks for a text, a number or a date through the whole register, line by line from where the caret stands,
/// round the end and on from the beginning. The book is read in stretches of a few weeks and the window
/// answers between them, so a long register is no wait and can be stopped. Reads only.

namespace wickbook::ui {

/// What is looked for. A date or a month is looked for by when a line is filed; a number among what was read,
/// whatever digits it was written with (16 finds 16.0), and in the texts; anything else in all that a line
/// says, its newest reason too.
class SearchTerm {
public:
    SearchTerm() = default;
    SearchTerm(const QLocale& locale, const QString& typed);

    [[nodiscard]] bool isEmpty() const { return text_.isEmpty(); }
    [[nodiscard]] const QString& text() const { return text_; }
    [[nodiscard]] bool isIn(const record::StoredObservation& line) const;

private:
    [[nodiscard]] bool isAmongNumbers(const record::Observation& values) const;

    QLocale locale_;
    QString text_;
    std::optional<units::Decimal> number_;
    std::optional<record::StationDate> date_;
    std::optional<date::year_month> month_;
};

class RegisterSearch : public QObject {
    Q_OBJECT

public:
    explicit RegisterSearch(Session& session, QObject* parent = nullptr);

    /// Where a search begins: a line is before or after this by its moment, then by its identity.
    struct Place {
        record::Instant instant{};
        record::Uuid id{}; ///< nil on an hour without a reading
        auto operator<=>(const Place&) const = default;
    };

    /// Stops what is being looked for and begins anew. The answer comes later, always.
    void start(const SearchTerm& term, bool forward, const Place& from);
    void stop();
    [[nodiscard]] bool isRunning() const { return running_; }

signals:
    /// wrapped: beyond the register's end, from its other one on. The line searched from is found last.
    void found(const wickbook::record::ObservingHour& hour, bool wrapped);
    void nothingFound();
    void progressed(int percent);
    void failed(const QString& sentence);

private:
    void step();
    /// Looks through the next stretch; true when the search has come to its end.
    bool lookOn();

    Session& session_;
    SearchTerm term_;
    bool forward_ = true;
    bool running_ = false;
    bool wrapped_ = false;
    Place from_;
    record::Instant next_{};  ///< forward: where the next stretch begins; back: where it ends
    record::Instant first_{}; ///< the register's span, half-open
    record::Instant end_{};
    int run_ = 0; ///< of which start a queued step is
};

} // namespace wickbook::ui
