// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/checked_range.h"
#include "core/desk/hour_marks.h"
#include "core/record/clock.h"
#include "core/store/book.h"
#include "ui/session/copy_keeper.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>

#include <memory>
#include <optional>

/// The open book as every page is handed it: the store, the undo stack and signals of what changed.
/// Owns the book. Pages read through it and write only by pushing commands (ui/commands) on the undo stack.
/// A write by another program is seen within two seconds and told like one of our own.

namespace wickbook::ui {

class Session : public QObject {
    Q_OBJECT

public:
    using Clock = std::shared_ptr<const record::Clock>;

    static store::Result<std::unique_ptr<Session>> open(const QString& path, Clock clock);
    /// For reading only, with the sentence that says why.
    static store::Result<std::unique_ptr<Session>> openToRead(const QString& path, Clock clock,
                                                              const QString& because);
    static store::Result<std::unique_ptr<Session>>
    create(const QString& path, const record::StationFacts& facts, const record::Author& author, Clock clock);

    [[nodiscard]] QString path() const;
    [[nodiscard]] const record::StationRecord& station() const { return station_; }
    [[nodiscard]] const store::Book& book() const { return book_; }
    [[nodiscard]] QUndoStack& undoStack() { return undoStack_; }
    [[nodiscard]] record::Instant now() const { return clock_->now(); }
    [[nodiscard]] record::StationDate today() const;
    /// The unit the station's thermometers read in.
    [[nodiscard]] units::TemperatureUnit unit() const;
    /// Why nothing can be written; empty when it can.
    [[nodiscard]] QString readOnlySentence() const;
    /// Initials of who sits here, kept with the revisions. Remembered by the window.
    [[nodiscard]] QString observer() const { return observer_; }
    void setObserver(const QString& initials);
    /// Copies of the book; they are kept once the window has said where.
    [[nodiscard]] CopyKeeper& copies() { return *copies_; }

    // Reading: the desk, with this station, this clock and what the station usually reads.
    [[nodiscard]] store::Result<std::vector<checks::CheckedReading>> checkedOn(record::StationDate from,
                                                                               record::StationDate to) const;
    /// progress as desk::checkedAll() asks it.
    [[nodiscard]] store::Result<std::vector<checks::CheckedReading>>
    checkedAll(const std::function<bool(std::size_t done, std::size_t total)>& progress = {}) const;
    [[nodiscard]] store::Result<checks::CheckedReading>
    judgeEntry(const record::Observation& entry, const std::optional<record::Uuid>& replacing,
               bool live) const;
    [[nodiscard]] store::Result<report::MonthReport> monthReport(date::year_month month) const;
    [[nodiscard]] store::Result<std::vector<desk::HourMark>> hourMarks(record::StationDate from,
                                                                       record::StationDate to) const;
    [[nodiscard]] store::Result<std::optional<record::ExpectedHour>> hourOnOffer() const;

    /// Works out beside the window what the station usually reads, which takes a moment in an old book. Until
    /// learnt() readings are judged by the rules alone, without likely causes.
    void learnBeside();
    [[nodiscard]] bool isLearning() const { return aboutToLearn_ || learning_.isRunning(); }

    // Writing: for commands only. On failure the signal storageFailed is emitted too.
    store::Result<store::Receipt> write(const store::ObservationChange& change);
    store::Result<std::vector<store::Receipt>> writeAll(std::span<const store::ObservationChange> changes,
                                                        const store::Progress& progress = {});
    store::Result<void> reviseFacts(const record::StationFacts& facts, const record::Author& author);
    /// At once rather than within two seconds: for who has written through a book of its own.
    void lookForOutsideChanges();

signals:
    /// Observations were added, revised or withdrawn, here or by another program.
    void observationsChanged();
    /// The station's facts changed: everything derived is to be read again.
    void factsChanged();
    void observerChanged(const QString& initials);
    /// What the station usually reads is known now: what was judged without it is to be judged again.
    void learnt();
    /// A write failed; the book is as it was and the entry must stay on the screen.
    void storageFailed(const wickbook::store::StoreError& error);

private:
    Session(store::Book book, record::StationRecord station, Clock clock);
    static store::Result<std::unique_ptr<Session>> over(store::Result<store::Book> book, Clock clock);
    const checks::StationModel* model() const;
    void grew(std::int64_t changes);
    void beginLearning();

    store::Book book_;
    record::StationRecord station_;
    Clock clock_;
    QUndoStack undoStack_;
    QTimer outsideTimer_;
    std::int64_t outsideVersion_ = 0;
    QString observer_;
    std::unique_ptr<CopyKeeper> copies_;
    QString readOnlyBecause_; ///< where it is not the book itself that can't be written
    /// What the station usually reads, for likely causes: worked out when first asked for, and again when the
    /// facts change or the book has grown by a month of twice-daily readings and a twentieth (a register
    /// brought in). A reading more or less does not move it, so an entry never waits for it.
    mutable std::optional<checks::StationModel> model_;
    mutable std::int64_t modelReadings_ = 0; ///< observations in the book when it was worked out
    mutable std::int64_t sinceModel_ = 0;    ///< changes written since: counted, never asked of the book
    bool aboutToLearn_ = false;              ///< as soon as the window has been shown
    bool overtaken_ = false;  ///< what is being worked out no longer holds: the facts have changed meanwhile
    BackgroundWork learning_; ///< last, so that it ends first
};

} // namespace wickbook::ui
