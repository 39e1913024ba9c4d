// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/session/session.h"

#include <QFrame>
#include <QLocale>
#include <tl/expected.hpp>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;

/// The entry of one line, opened beside the page: what was read, to be read again or written down late. A
/// change to something that is in the book already must say why. Nothing is stored here: the page asks for
/// the observation and stores it, and the entry stays as typed until that has worked.

namespace wickbook::ui {

class EntryPanel : public QFrame {
    Q_OBJECT

public:
    explicit EntryPanel(Session& session, QLocale locale, QWidget* parent = nullptr);

    /// Opens a line: for revising its reading, or for writing down one that is not in the book.
    void open(const report::MonthLine& line);
    /// The observation as the fields have it, or the sentence that says which field can't be taken (the caret
    /// stands there then).
    [[nodiscard]] tl::expected<record::Observation, QString> observation();
    [[nodiscard]] const std::optional<record::StoredObservation>& before() const { return before_; }
    [[nodiscard]] QString why() const;
    /// What went wrong on storing, shown where the entry is.
    void say(const QString& sentence);

signals:
    void saveAsked();
    void closeAsked();

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    QLineEdit* addField(QGridLayout& grid, int row, int column, const QString& name, const QString& key);
    void showLive();
    [[nodiscard]] tl::expected<record::BulbReading, QString> bulb(QLineEdit& field,
                                                                  const QString& name) const;
    [[nodiscard]] tl::expected<record::Observation, std::pair<QLineEdit*, QString>> read() const;
    [[nodiscard]] tl::expected<void, std::pair<QLineEdit*, QString>> readRest(record::Observation& to) const;

    Session& session_;
    QLocale locale_;
    std::optional<record::StoredObservation> before_;
    record::Observation start_; ///< what the fields were filled from
    QLabel* heading_ = nullptr;
    QLineEdit* dry_ = nullptr;
    QLineEdit* wet_ = nullptr;
    QComboBox* wick_ = nullptr;
    QLineEdit* pressure_ = nullptr;
    QLineEdit* weather_ = nullptr;
    QLineEdit* wind_ = nullptr;
    QLineEdit* observer_ = nullptr;
    QLineEdit* note_ = nullptr;
    QCheckBox* estimated_ = nullptr;
    QLineEdit* why_ = nullptr;
    QLabel* live_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* save_ = nullptr;
};

/// "fog, rime" or "none" as a set; nothing for an empty text; the word that is none of them as error.
tl::expected<std::optional<record::WeatherSet>, QString> weatherFromWords(const QString& text);

} // namespace wickbook::ui
