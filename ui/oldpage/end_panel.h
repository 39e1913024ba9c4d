// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/oldpage/page_line.h"
#include "ui/style/marginal_note.h"

#include <QWidget>

#include <optional>
#include <vector>

class QLabel;
class QListWidget;
class QVBoxLayout;

/// The page's end: everything that still wants an answer, keyed through from top to bottom. 1 to 3 answer
/// what the note asks, S, D and E judge, Enter goes to the line. Holds no judgement of its own.

namespace wickbook::ui {

/// One thing to look at again.
struct EndQuery {
    enum class Kind { Unreadable, Differs, Finding };
    Kind kind = Kind::Finding;
    int line = 0;
    PageField field = PageField::Dry;
    QString head; ///< "3 Nov, 9 h"
    NoteText note;
    std::vector<checks::LikelyCause> causes; ///< of a finding, one for each of the note's
};

class EndPanel : public QWidget {
    Q_OBJECT

public:
    explicit EndPanel(QWidget* parent = nullptr);

    /// summary: what else the page has to say, under the heading.
    void show(std::vector<EndQuery> queries, const QString& summary);
    [[nodiscard]] const std::vector<EndQuery>& queries() const { return queries_; }
    void focusFirst();
    /// Puts the line's first query before the person; false: it has none.
    bool focusLine(int line);
    /// As if the answer at this place (from 0) were chosen.
    void answer(int index);

signals:
    /// A likely cause was taken: paperSaysSo is a slip of these keys, else one of the observer's at the time.
    void causeTaken(int line, const wickbook::checks::LikelyCause& cause, const QString& reason,
                    bool paperSaysSo);
    /// What the paper says where two passes differ: again is what was typed the second time.
    void differenceSettled(int line, wickbook::ui::PageField field, bool again);
    void judged(int line, wickbook::record::Quality quality);
    void lineAsked(int line, wickbook::ui::PageField field);
    void closeAsked();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showNote();
    [[nodiscard]] const EndQuery* current() const;

    std::vector<EndQuery> queries_;
    std::optional<std::size_t> asking_; ///< which cause was taken, while the paper is asked
    QLabel* heading_ = nullptr;
    QLabel* summary_ = nullptr;
    QLabel* keys_ = nullptr;
    QListWidget* list_ = nullptr;
    QVBoxLayout* noteColumn_ = nullptr;
    MarginalNote* note_ = nullptr;
};

} // namespace wickbook::ui
