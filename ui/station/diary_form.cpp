// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/diary_form.h"

#include "ui/dated/note_length.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/diary_words.h"
#include "ui/text/error_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

DiaryForm::DiaryForm(const std::optional<record::DiaryEntry>& known, record::StationDate today,
                     QWidget* parent)
    : QDialog(parent), today_(today) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.date = today;
        start_.kind = record::DiaryKind::Washed;
    }
    setWindowTitle(tr("Exposure diary"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->addWidget(makeHeading(known ? tr("Change an entry of the diary") : tr("What happened")));
    QLabel* what =
        makeLabel(tr("Nothing is worked out from it. It is for whoever asks later why the readings "
                     "changed. A new place is a period: “From a date on the station differs”."));
    what->setWordWrap(true);
    column->addWidget(what);
    auto* form = new QFormLayout;
    const auto row = [&](const QString& label, QWidget* field, const char* name) {
        field->setAccessibleName(label);
        field->setObjectName(QLatin1String(name));
        QLabel* words = makeLabel(label);
        words->setBuddy(field);
        form->addRow(words, field);
    };
    date_ = new QLineEdit(QString::fromStdString(record::dateText(start_.date)));
    row(tr("Date, year-month-day"), date_, "diaryDate");
    kind_ = new QComboBox;
    for (int kind = 0; kind < record::kDiaryKinds; ++kind) {
        kind_->addItem(diaryKindWords(static_cast<record::DiaryKind>(kind)), kind);
    }
    kind_->setCurrentIndex(static_cast<int>(start_.kind));
    row(tr("What"), kind_, "diaryKind");
    note_ = new QLineEdit(QString::fromStdString(start_.note));
    note_->setMaxLength(kLongestNote);
    row(tr("Note"), note_, "diaryNote");
    column->addLayout(form);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("diaryFormMessage"));
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Keep it"));
    buttons->button(QDialogButtonBox::Ok)->setProperty("primary", true);
    connect(buttons, &QDialogButtonBox::accepted, this, &DiaryForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    resize(typePixels(460), sizeHint().height());
    date_->selectAll();
}

tl::expected<record::DiaryEntry, QString> DiaryForm::entry() const {
    record::DiaryEntry made = start_;
    const auto date = record::parseDate(date_->text().trimmed().toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), date_->text()));
    }
    if (*date > today_) {
        return tl::unexpected(tr("Write it down once it has happened; this date is still to come."));
    }
    made.date = *date;
    made.kind = static_cast<record::DiaryKind>(kind_->currentData().toInt());
    made.note = note_->text().trimmed().toStdString();
    if (made.kind == record::DiaryKind::Other && made.note.empty()) {
        return tl::unexpected(tr("Write in the note what it was."));
    }
    return made;
}

void DiaryForm::accept() {
    const auto made = entry();
    message_->setVisible(!made);
    if (made) {
        QDialog::accept();
    } else {
        message_->setText(made.error());
    }
}

} // namespace wickbook::ui
