// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/wick_form.h"

#include "ui/dated/note_length.h"
#include "ui/text/diary_words.h"
#include "ui/text/error_words.h"

#include <QComboBox>
#include <QLineEdit>

namespace wickbook::ui {

WickForm::WickForm(const std::optional<record::DiaryEntry>& known, record::StationDate today, QWidget* parent)
    : FactForm(
          tr("Wick and water"), known ? tr("Change an entry of the log") : tr("What was done to the wick"),
          tr("A new wick: muslin soaked and washed free of dressing, one layer, tied above and below the "
             "bulb, "
             "a thread of cotton to the reservoir; not touched with the fingers. Water: distilled or rain."),
          parent)
    , today_(today) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.date = today;
        start_.kind = record::DiaryKind::NewWick;
    }
    date_ = addLine(tr("Date, year-month-day"), "wickDate",
                    QString::fromStdString(record::dateText(start_.date)));
    what_ = new QComboBox;
    for (const auto kind : {record::DiaryKind::NewWick, record::DiaryKind::Water}) {
        what_->addItem(diaryKindWords(kind), static_cast<int>(kind));
    }
    what_->setCurrentIndex(what_->findData(static_cast<int>(start_.kind)));
    addRow(tr("What"), what_, "wickWhat");
    note_ = addLine(tr("Note"), "wickNote", QString::fromStdString(start_.note));
    note_->setMaxLength(kLongestNote);
    finish();
    date_->selectAll();
}

tl::expected<record::DiaryEntry, QString> WickForm::read() const {
    record::DiaryEntry made = start_;
    const auto date = record::parseDate(date_->text().trimmed().toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), date_->text()));
    }
    if (*date > today_) {
        return tl::unexpected(tr("Write it down once it has happened; this date is still to come."));
    }
    made.date = *date;
    made.kind = static_cast<record::DiaryKind>(what_->currentData().toInt());
    made.note = note_->text().trimmed().toStdString();
    return made;
}

QString WickForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::DiaryEntry WickForm::entry() const {
    return *read();
}

} // namespace wickbook::ui
