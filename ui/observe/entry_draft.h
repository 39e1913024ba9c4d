// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/observe/entry_text.h"

#include <QTimer>

#include <optional>

/// The unfinished entry of one book, kept in a small file so that a crash or a closed window loses nothing
/// that was typed. Written a moment after each change, beside its name and renamed; gone once the entry is
/// saved. A draft that can't be written is no reason to stop: the entry is still on the screen.

namespace wickbook::ui {

class EntryDraft : public QObject {
    Q_OBJECT

public:
    /// folder: where drafts live, beside the settings; empty: keep none. book: whose entry it is.
    EntryDraft(const QString& folder, const QString& book, QObject* parent = nullptr);
    ~EntryDraft() override; ///< writes what is still waiting

    [[nodiscard]] std::optional<EntryText> read() const;
    void keep(const EntryText& entry); ///< written within a quarter of a second
    void flush();                      ///< now
    void drop();                       ///< the entry was saved or emptied
    [[nodiscard]] QString path() const { return path_; }

private:
    QString path_;
    QTimer timer_;
    std::optional<EntryText> waiting_;
};

} // namespace wickbook::ui
