// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/beside_register.h"
#include "ui/session/session.h"

#include <QDialog>
#include <QLocale>
#include <tl/expected.hpp>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

/// The readings of another instrument beside the station's, typed one by one or out of a file, and what they
/// say: bias and spread, the own coefficient or why not, or whether two records may be joined. Each reading
/// is kept when Enter is pressed; all changes go by undo commands. The session outlives it.

namespace wickbook::ui {

class BesidePlot;
class TypedNumberEdit;

class BesideDialog : public QDialog {
    Q_OBJECT

public:
    BesideDialog(Session& session, const record::Uuid& comparison, QLocale locale, QWidget* parent = nullptr);

    /// The reading as typed, or the sentence about what can't be taken.
    [[nodiscard]] tl::expected<record::BesideReading, QString> typed() const;
    /// Brings a CSV file in; the sentence says how it went.
    void bringIn(const QString& path);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void buildTop();
    QWidget* buildEntry();
    QWidget* buildAnswer();
    void reload();
    void showReference(const desk::BesideReferenceAnswer& answer);
    void showOverlap(const desk::OverlapAnswer& answer);
    void fillTable();
    void addTyped();
    void takeBackChosen();
    void askFile();
    void useCoefficient();
    void joinRecords();
    void say(const QString& sentence, bool wrong);
    [[nodiscard]] record::SideBySide other() const;
    [[nodiscard]] record::Author author(const QString& why) const;
    [[nodiscard]] QString lackOf(const record::Uuid& id) const;

    Session& session_;
    record::Uuid comparison_;
    QLocale locale_;
    std::vector<record::BesideReading> shown_;
    std::vector<desk::LackingReading> lacking_;
    std::vector<std::pair<record::Uuid, double>> differences_; ///< own − other, % RH
    std::optional<record::OwnCoefficient> proposed_;
    bool alike_ = false; ///< the overlap says that the records may be joined
    QTableWidget* table_ = nullptr;
    QLineEdit* date_ = nullptr;
    QLineEdit* clock_ = nullptr;
    TypedNumberEdit* humidity_ = nullptr;
    TypedNumberEdit* temperature_ = nullptr;
    TypedNumberEdit* otherDry_ = nullptr;
    TypedNumberEdit* otherWet_ = nullptr;
    QComboBox* otherWick_ = nullptr;
    TypedNumberEdit* ownDry_ = nullptr;
    TypedNumberEdit* ownWet_ = nullptr;
    QComboBox* ownWick_ = nullptr;
    TypedNumberEdit* wind_ = nullptr;
    QLabel* answer_ = nullptr;
    QLabel* message_ = nullptr;
    BesidePlot* against_ = nullptr;
    BesidePlot* residuals_ = nullptr;
    BesidePlot* inWind_ = nullptr;
    QPushButton* use_ = nullptr;
    QPushButton* join_ = nullptr;
    QPushButton* takeBack_ = nullptr;
};

} // namespace wickbook::ui
