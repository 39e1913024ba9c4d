// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QLocale>
#include <QWidget>

#include <functional>
#include <optional>
#include <vector>

class QHBoxLayout;
class QLabel;
class QListWidget;
class QPushButton;

/// A list of dated facts on a page, folded away until wanted: each a line, the newest first, added
/// (Insert), changed (Enter) and taken back (Delete) by keys. What a fact is, is its subclass's; this knows
/// the list and the keys. Changes go by undo commands; the session outlives the section.

namespace wickbook::ui {

class DatedSection : public QWidget {
    Q_OBJECT

public:
    struct Line {
        record::Uuid id;
        QString text;
    };

    void reload();

protected:
    /// name: prefix of the controls' object names, "absence"; title with its mnemonic: "&Absences".
    DatedSection(Session& session, const char* name, QString title, QLocale locale, QWidget* parent);
    /// Builds the widgets and shows the facts; subclasses call it once they are whole.
    void build(const QString& addWords);
    /// One more thing to do with the fact chosen, also where nothing can be written. After build().
    void addAction(const QString& words, const char* name, std::function<void(const record::Uuid&)> act);

    [[nodiscard]] virtual std::vector<Line> lines() const = 0;   ///< the newest first
    [[nodiscard]] virtual QString empty() const = 0;             ///< shown where there is no line
    virtual void ask(const std::optional<record::Uuid>& id) = 0; ///< none: a new one
    virtual void takeBack(const record::Uuid& id) = 0;

    void say(const QString& sentence, bool wrong);
    /// Says how a command went: the sentence of the failure, or what was done.
    void tell(const store::Result<void>& done, const QString& sentence);
    [[nodiscard]] record::Author author(const QString& why) const;
    [[nodiscard]] Session& session() const { return session_; }
    [[nodiscard]] const QLocale& ownLocale() const { return locale_; }
    /// "22 Nov 2026".
    [[nodiscard]] QString dayWords(record::StationDate date) const;

    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void unfold(bool open);
    /// One list is open at a time, so that the page stays usable in a low window.
    void foldOthers();
    void showFold();
    [[nodiscard]] std::optional<record::Uuid> chosen() const;
    void chosenChanged();

    Session& session_;
    QString name_;
    QString title_;
    QLocale locale_;
    QPushButton* fold_ = nullptr;
    QWidget* content_ = nullptr;
    QListWidget* list_ = nullptr;
    QLabel* empty_ = nullptr;
    QPushButton* change_ = nullptr;
    QPushButton* takeBack_ = nullptr;
    QHBoxLayout* buttons_ = nullptr;
    std::vector<QPushButton*> further_; ///< of addAction
    QLabel* message_ = nullptr;
    std::vector<Line> shown_;
};

} // namespace wickbook::ui
