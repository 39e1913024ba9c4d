// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/month_files.h"
#include "ui/session/session.h"

#include <QWidget>
#include <date/date.h>

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

/// Where the month is looked at, settled and handed on: the chart, the month's numbers, the queries still
/// open, and the monthly return as files. Owns its widgets; the session outlives it.

namespace wickbook::ui {

class ChartPanel;
class MonthNumbersModel;
class OtherYears;
class QueriesPanel;

class MonthPage : public QWidget {
    Q_OBJECT

public:
    explicit MonthPage(Session& session, QWidget* parent = nullptr);
    ~MonthPage() override;

    [[nodiscard]] date::year_month month() const { return month_; }

    /// Writes the monthly return into a folder, without asking. The sentence shown: what was written, or what
    /// could not be.
    QString writeReturn(const QString& folder, Paper paper);
    /// Signs the month off as it stands, without asking; the sentence to show.
    QString signOff(const QString& by, const QString& note);
    /// Takes the latest signing back; the sentence to show.
    QString takeSigningBack();
    /// Every observation of the book as CSV with its sidecar; the sentence to show.
    QString exportAll(const QString& path);

public slots:
    void showMonth(date::year_month month);

signals:
    /// A reading to be opened on its line; for an extra reading its filed date and clock time.
    void openInRegister(const wickbook::record::ObservingHour& hour);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* buildTop();
    QWidget* buildNumbers();
    /// Something in the book has changed: read again now, or once the page is looked at.
    void bookChanged();
    void reload();
    [[nodiscard]] date::year_month monthToBeginWith() const;
    void say(const QString& sentence);
    [[nodiscard]] QString completenessWords() const;
    void askForReturn();
    void askForExport();
    void lookBeforePrinting();
    void askToSign();
    void showSigning();
    void showDeparture();

    Session& session_;
    date::year_month month_{};
    bool begun_ = false; ///< the page has been looked at
    bool stale_ = false; ///< the book has changed while the page was out of sight
    std::optional<report::MonthReport> report_;
    QLabel* heading_ = nullptr;
    QLabel* empty_ = nullptr;
    QLabel* completeness_ = nullptr;
    QLabel* departure_ = nullptr;
    QLabel* signing_ = nullptr;
    QPushButton* sign_ = nullptr;
    OtherYears* otherYears_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* openFolder_ = nullptr; ///< of the return that has just been written
    QString returnFolder_;
    QComboBox* paper_ = nullptr;
    ChartPanel* chart_ = nullptr;
    MonthNumbersModel* numbers_ = nullptr;
    QTableView* numbersView_ = nullptr;
    QueriesPanel* queries_ = nullptr;
};

} // namespace wickbook::ui
