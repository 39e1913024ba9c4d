// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLockFile>
#include <QString>

#include <memory>
#include <optional>

/// Which window has a book open, told by a small hidden file beside it, so that a second window on the same
/// book brings the first one forward instead of showing another truth. It guards no data: SQLite's own locks
/// do that for every program at every write. A file left by a program that is gone is recognised and
/// replaced. Where no such file can be made (a folder for reading only, a full disk) the book opens all the
/// same.

namespace wickbook::ui {

class BookLock {
public:
    /// Who holds it.
    struct Holder {
        qint64 process = 0;
        QString host;
        bool onThisComputer = true;
    };

    /// Takes the book, or says who has it. The holder's own window is asked for by process.
    explicit BookLock(const QString& book);

    [[nodiscard]] const std::optional<Holder>& heldByAnother() const { return other_; }
    /// Who has the book open just now, without taking it; none: nobody.
    static std::optional<Holder> holderOf(const QString& book);
    /// The hidden file beside a book; links are followed, so that one book has one.
    static QString fileFor(const QString& book);

private:
    std::unique_ptr<QLockFile> file_;
    std::optional<Holder> other_;
};

} // namespace wickbook::ui
