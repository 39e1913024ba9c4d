// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QWidget>

class QLabel;
class QVBoxLayout;

/// What is known of the station, each fact with the date it holds from: places lived at, observing hours and
/// their rule, exposure, surroundings. A change is one more period; nothing is overwritten.
/// Owns its widgets; the session outlives it.

namespace wickbook::ui {

class CopiesSection;
class PeriodSection;

class StationPage : public QWidget {
    Q_OBJECT

public:
    explicit StationPage(Session& session, QWidget* parent = nullptr);

    /// Keeps a change of period in the book; the sentence when it could not be.
    QString keep(const record::PeriodChange& change, const QString& why);

    /// Opens the section of copies.
    void showCopies();

signals:
    void openBookAsked(const QString& path);

private:
    void reload();
    QWidget* periodBlock(const record::StationPeriod& period, bool current) const;

    Session& session_;
    QVBoxLayout* periods_ = nullptr;
    QLabel* heading_ = nullptr;
    QLabel* book_ = nullptr;
    PeriodSection* differs_ = nullptr;
    CopiesSection* copies_ = nullptr;
};

} // namespace wickbook::ui
