// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/record/clock.h"
#include "ui/session/copy_work.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <memory>
#include <optional>
#include <vector>

/// Keeps copies of the open book by itself: one when the book is opened and one a day while it stays open,
/// if the book has changed since the last. Works beside the window with a book of its own; what failed is
/// told as a sentence by trouble() and tried again later. Does nothing until begin().

namespace wickbook::ui {

/// What a person chose for one book. Remembered by the window, never in the book.
struct CopyChoice {
    bool daily = true;
    QString folder{}; ///< empty: "<book> copies" beside the book
    bool operator==(const CopyChoice&) const = default;
};

class CopyKeeper : public QObject {
    Q_OBJECT

public:
    using Task = CopyRequest::Task;

    CopyKeeper(const QString& book, std::shared_ptr<const record::Clock> clock, QObject* parent = nullptr);

    /// From now on copies are kept. Not called for a book that keeps none (the sample station's).
    void begin(const CopyChoice& choice);
    [[nodiscard]] bool isKeeping() const { return begun_; }

    [[nodiscard]] const CopyChoice& choice() const { return choice_; }
    void choose(const CopyChoice& choice);
    /// Where copies go, whether they are kept daily or not.
    [[nodiscard]] store::CopyShelf shelf() const;
    [[nodiscard]] QString folder() const;

    /// Another one now, whether it is due or not.
    void keepNow();
    void keepIfDue();
    /// Reads the folder again.
    void look();
    void verify(const std::vector<std::filesystem::path>& copies);
    /// Verifying stops; a copy that is being written is finished.
    void stop() { work_.stop(); }

    /// What is being done just now; none: nothing.
    [[nodiscard]] std::optional<Task> doing() const { return doing_; }
    /// Of this book, the newest first, as last looked at.
    [[nodiscard]] const std::vector<ShownCopy>& copies() const { return answer_.copies; }
    /// Why the last copy could not be kept, with what to do; empty: nothing is wrong.
    [[nodiscard]] QString trouble() const { return trouble_; }
    /// The copy kept last, and what else there was to say of it.
    [[nodiscard]] const CopyAnswer& answer() const { return answer_; }

signals:
    /// Something began or ended: what the functions above tell may be another.
    void changed();
    void choiceChanged(const wickbook::ui::CopyChoice& choice);
    void progressed(qint64 done, qint64 total);
    /// A copy was kept by keepNow().
    void keptByHand();

private:
    void ask(CopyRequest request);
    void run(const CopyRequest& request);
    void done(const CopyRequest& request, CopyAnswer answer);
    [[nodiscard]] CopyRequest request(Task task) const;

    QString book_;
    std::shared_ptr<const record::Clock> clock_;
    bool begun_ = false;
    CopyChoice choice_;
    CopyAnswer answer_;
    QString trouble_;
    std::optional<Task> doing_;
    std::optional<CopyRequest> next_; ///< asked for while another was being done; the last one asked counts
    QTimer again_;
    BackgroundWork work_; ///< last, so that it ends first
};

} // namespace wickbook::ui
