// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/beside_dialog.h"

#include "core/exchange/beside_file.h"
#include "core/exchange/import_time.h"
#include "ui/commands/revise_facts.h"
#include "ui/instruments/beside_plot.h"
#include "ui/instruments/coefficient_form.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/instrument_words.h"

#include <QComboBox>
#include <QFileDialog>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>

#include <filesystem>
#include <fstream>

namespace wickbook::ui {

namespace {

constexpr double kMostHumidity = 110; ///< a sensor may overshoot
constexpr int kMostBeaufort = 12;

std::optional<units::ReadTemperature> readTemperature(const TypedNumberEdit& field,
                                                      units::TemperatureUnit unit) {
    return field.value() ? std::optional{units::ReadTemperature{*field.value(), unit}} : std::nullopt;
}

record::WickState chosenWick(const QComboBox& box) {
    return static_cast<record::WickState>(box.currentData().toInt());
}

} // namespace

record::SideBySide BesideDialog::other() const {
    return factNamed(session_.station().facts().sideBySides, comparison_).value_or(record::SideBySide{});
}

record::Author BesideDialog::author(const QString& why) const {
    return {session_.observer().toStdString(), why.toStdString()};
}

tl::expected<record::BesideReading, QString> BesideDialog::typed() const {
    record::BesideReading made;
    made.id = record::Uuid::random();
    made.comparison = comparison_;
    const auto date = record::parseDate(date_->text().trimmed().toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), date_->text()));
    }
    const auto clock = record::parseHour(clock_->text().trimmed().toStdString());
    if (!clock) {
        return tl::unexpected(timeErrorWords(clock.error(), clock_->text()));
    }
    const auto moment = exchange::resolveAtStation(session_.station(), record::LocalTime{*date} + *clock);
    if (std::holds_alternative<record::ImpossibleTime>(moment)) {
        return tl::unexpected(
            tr("The clock never showed that time: it was put forward. Look at “%1”.").arg(clock_->text()));
    }
    made.instant = std::holds_alternative<record::UniqueTime>(moment)
                       ? std::get<record::UniqueTime>(moment).instant
                       : std::get<record::DoubleTime>(moment).first;
    if (made.instant > session_.now()) {
        return tl::unexpected(tr("That time is still to come. Look at date and time."));
    }
    for (const TypedNumberEdit* field :
         {humidity_, temperature_, otherDry_, otherWet_, ownDry_, ownWet_, wind_}) {
        if (!field->isEmpty() && !field->value()) {
            return tl::unexpected(field->problem());
        }
    }
    const auto unit = session_.unit();
    made.humidity = humidity_->value();
    made.temperature = readTemperature(*temperature_, unit);
    made.otherDry = readTemperature(*otherDry_, unit);
    made.otherWet = readTemperature(*otherWet_, unit);
    made.otherWick = chosenWick(*otherWick_);
    made.ownDry = readTemperature(*ownDry_, unit);
    made.ownWet = readTemperature(*ownWet_, unit);
    made.ownWick = chosenWick(*ownWick_);
    if (made.humidity && (made.humidity->toDouble() < 0 || made.humidity->toDouble() > kMostHumidity)) {
        return tl::unexpected(tr("%1 is not a relative humidity in per cent.").arg(humidity_->text()));
    }
    if (!made.humidity && !(made.otherDry && made.otherWet)) {
        return tl::unexpected(tr("Write what the other instrument showed: its humidity, or both its bulbs."));
    }
    if (made.ownDry.has_value() != made.ownWet.has_value()) {
        return tl::unexpected(
            tr("Write both bulbs of the station's pair, or neither: then the register's reading counts."));
    }
    if (wind_->value()) {
        const double force = wind_->value()->toDouble();
        if (force < 0 || force > kMostBeaufort || wind_->value()->decimals != 0) {
            return tl::unexpected(tr("Wind is a whole number from 0 to 12, as Beaufort has it."));
        }
        made.windBeaufort = static_cast<int>(force);
    }
    return made;
}

void BesideDialog::addTyped() {
    const auto made = typed();
    if (!made) {
        say(made.error(), true);
        return;
    }
    const QString text = tr("reading of another instrument");
    const auto kept = reviseFact<record::BesideReading>(session_, std::nullopt, *made, author(text), text);
    if (!kept) {
        say(storeErrorWords(kept.error()), true);
        return;
    }
    for (TypedNumberEdit* field : {humidity_, temperature_, otherDry_, otherWet_, ownDry_, ownWet_, wind_}) {
        field->clear();
    }
    clock_->setFocus();
    clock_->selectAll();
    const QString lack = lackOf(made->id);
    say(lack.isEmpty() ? tr("Kept.") : tr("Kept, but it takes no part yet: %1.").arg(lack), false);
}

QString BesideDialog::lackOf(const record::Uuid& id) const {
    for (const desk::LackingReading& lacking : lacking_) {
        if (lacking.reading.id == id) {
            return besideLackWords(lacking.lack);
        }
    }
    return {};
}

void BesideDialog::takeBackChosen() {
    const int row = table_->currentRow();
    if (row < 0 || static_cast<std::size_t>(row) >= shown_.size() || !takeBack_->isEnabled()) {
        return;
    }
    const QString text = tr("reading of another instrument taken back");
    const auto kept = ReviseFacts::perform(
        session_, {{shown_[static_cast<std::size_t>(row)].id, std::optional<record::BesideReading>{}}},
        author(text), text);
    say(kept ? tr("Taken back. Undo brings it again.") : storeErrorWords(kept.error()), !kept);
}

void BesideDialog::askFile() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Readings of the other instrument"), {},
                                                      tr("CSV files (*.csv *.txt);;All files (*)"));
    if (!path.isEmpty()) {
        bringIn(path);
    }
}

void BesideDialog::bringIn(const QString& path) {
    const std::filesystem::path file{path.toStdString()};
    std::ifstream input(file, std::ios::binary);
    if (!input) {
        say(tr("%1 can't be opened. Choose another file.")
                .arg(QString::fromStdString(file.filename().string())),
            true);
        return;
    }
    auto read = exchange::readBesideFile(input, file.filename().string(), session_.station());
    if (!read) {
        say(importErrorWords(read.error()), true);
        return;
    }
    auto selected =
        desk::selectBeside(session_.book(), session_.station(), comparison_, std::move(read->readings));
    if (!selected) {
        say(storeErrorWords(selected.error()), true);
        return;
    }
    std::vector<FactEdit> edits;
    for (const record::BesideReading& reading : selected->taken) {
        edits.push_back({reading.id, std::optional{reading}});
    }
    const int came = static_cast<int>(selected->taken.size());
    const QString text = came == 1 ? tr("One reading of another instrument")
                                   : tr("%n readings of another instrument", nullptr, came);
    if (!edits.empty()) {
        if (const auto kept = ReviseFacts::perform(session_, std::move(edits), author(text), text); !kept) {
            say(storeErrorWords(kept.error()), true);
            return;
        }
    }
    QString words = came == 1 ? tr("One reading came in.") : tr("%n readings came in.", nullptr, came);
    if (selected->leftAside > 0) {
        words += QLatin1Char(' ') +
                 tr("%1 have no reading of the station within five minutes and were left aside.")
                     .arg(selected->leftAside);
    }
    if (selected->known > 0) {
        words += QLatin1Char(' ') + tr("%1 were there already.").arg(selected->known);
    }
    if (!read->rejected.empty()) {
        words += QLatin1Char(' ') + tr("%1 lines could not be read, the first: %2")
                                        .arg(read->rejected.size())
                                        .arg(rejectWords(read->rejected.front()));
    }
    say(words, false);
}

void BesideDialog::useCoefficient() {
    if (!proposed_) {
        return;
    }
    CoefficientForm form(session_, std::nullopt, locale_, this);
    form.propose(*proposed_);
    if (form.exec() == QDialog::Accepted) {
        const QString text =
            tr("own coefficient out of the comparison with %1").arg(QString::fromStdString(other().name));
        const auto kept =
            reviseFact<record::PeriodChange>(session_, std::nullopt, form.change(), author(text), text);
        say(kept ? tr("Kept. Readings are worked out afresh; undo takes it back.")
                 : storeErrorWords(kept.error()),
            !kept);
    }
}

void BesideDialog::joinRecords() {
    const auto change = desk::changeAfterOverlap(session_.station(), other());
    if (!change) {
        say(tr("There is no change of place or exposure yet. Write it down on the Station page, with its "
               "date, and join "
               "then."),
            true);
        return;
    }
    if (change->joined) {
        say(tr("The records are joined already."), false);
        return;
    }
    record::PeriodChange joined = *change;
    joined.joined = true;
    record::SideBySide decided = other();
    if (decided.decision.empty()) {
        decided.decision = tr("joined").toStdString();
    }
    const QString text =
        tr("records joined after the overlap with %1").arg(QString::fromStdString(decided.name));
    const auto kept = ReviseFacts::perform(
        session_, {{joined.id, std::optional{joined}}, {decided.id, std::optional{decided}}}, author(text),
        text);
    say(kept ? tr("Joined: charts and averages go on across the change. Undo takes it back.")
             : storeErrorWords(kept.error()),
        !kept);
}

void BesideDialog::keyPressEvent(QKeyEvent* event) {
    // Enter keeps the reading that is being typed; the dialog closes by Escape or its button.
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        event->accept();
        return;
    }
    if (event->matches(QKeySequence::Undo)) {
        session_.undoStack().undo();
        return;
    }
    if (event->matches(QKeySequence::Redo)) {
        session_.undoStack().redo();
        return;
    }
    QDialog::keyPressEvent(event);
}

bool BesideDialog::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
        if (watched == table_ && key->key() == Qt::Key_Delete) {
            takeBackChosen();
            return true;
        }
        if (enter && watched != table_ && session_.readOnlySentence().isEmpty()) {
            addTyped();
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace wickbook::ui
