// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/report/month_report.h"
#include "ui/session/session.h"

#include <QFrame>
#include <QLocale>

class QLabel;
class QListWidget;

namespace wickbook::ui {

/// What a line has been through: each revision with when, who and why, what was read first and what each one
/// changed; above it what the checks say. Text only, never markup.
class HistoryPanel : public QFrame {
    Q_OBJECT

public:
    explicit HistoryPanel(Session& session, QLocale locale, QWidget* parent = nullptr);

    /// nullptr: no line.
    void show(const report::MonthLine* line);

private:
    [[nodiscard]] QString revisionText(const record::ObservationRevision& revision,
                                       const record::Observation* before, std::size_t number) const;

    Session& session_;
    QLocale locale_;
    QLabel* heading_ = nullptr;
    QLabel* queries_ = nullptr;
    QFrame* note_ = nullptr;
    QLabel* nothing_ = nullptr;
    QListWidget* list_ = nullptr;
};

/// What was read, in one line: "dry 16.0, wet 12.4, wick water, fog". For a missing one its reason.
QString observationWords(const QLocale& locale, const record::Observation& observation);
/// What the second has otherwise than the first: "wet 12.4, was 14.2"; empty where nothing differs.
QStringList changeWords(const QLocale& locale, const record::Observation& before,
                        const record::Observation& after);

} // namespace wickbook::ui
