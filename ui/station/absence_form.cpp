// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/absence_form.h"

#include "ui/dated/note_length.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/missing_reasons.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {
constexpr int kLongestInitials = 12;
} // namespace

AbsenceForm::AbsenceForm(const std::optional<record::Absence>& known, record::StationDate today,
                         QWidget* parent)
    : QDialog(parent) {
    if (known) {
        start_ = *known;
    } else {
        start_.id = record::Uuid::random();
        start_.from = today;
        start_.to = today;
        start_.reason = "away";
    }
    setWindowTitle(tr("Absence"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->addWidget(makeHeading(known ? tr("Change an absence") : tr("An absence ahead")));
    QLabel* what = makeLabel(tr("Without a deputy, hours missed on these days have their reason by "
                                "themselves. A reading made all the same counts as always."));
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
    from_ = new QLineEdit(QString::fromStdString(record::dateText(start_.from)));
    to_ = new QLineEdit(QString::fromStdString(record::dateText(start_.to)));
    row(tr("First day, year-month-day"), from_, "absenceFrom");
    row(tr("Last day"), to_, "absenceTo");
    reason_ = new QComboBox;
    reason_->setEditable(true);
    reason_->setInsertPolicy(QComboBox::NoInsert);
    for (const QString& reason : missingReasons()) {
        reason_->addItem(missingReasonWords(reason));
    }
    reason_->setEditText(missingReasonWords(QString::fromStdString(start_.reason)));
    row(tr("Why"), reason_, "absenceReason");
    deputy_ = new QLineEdit(QString::fromStdString(start_.deputy));
    deputy_->setMaxLength(kLongestInitials);
    deputy_->setPlaceholderText(tr("nobody"));
    row(tr("Who reads meanwhile, initials"), deputy_, "absenceDeputy");
    note_ = new QLineEdit(QString::fromStdString(start_.note));
    note_->setMaxLength(kLongestNote);
    row(tr("Note"), note_, "absenceNote");
    column->addLayout(form);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("absenceFormMessage"));
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Keep it"));
    buttons->button(QDialogButtonBox::Ok)->setProperty("primary", true);
    connect(buttons, &QDialogButtonBox::accepted, this, &AbsenceForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    resize(typePixels(460), sizeHint().height());
    from_->selectAll();
}

tl::expected<record::Absence, QString> AbsenceForm::absence() const {
    record::Absence made = start_;
    for (const auto& [field, date] : {std::pair{from_, &made.from}, std::pair{to_, &made.to}}) {
        const auto typed = record::parseDate(field->text().trimmed().toStdString());
        if (!typed) {
            return tl::unexpected(timeErrorWords(typed.error(), field->text()));
        }
        *date = *typed;
    }
    if (made.to < made.from) {
        return tl::unexpected(tr("Put the last day on or after the first; it lies before it."));
    }
    made.reason = missingReasonFromWords(reason_->currentText()).toStdString();
    if (made.reason.empty()) {
        return tl::unexpected(tr("Choose a reason or write one in your own words."));
    }
    made.deputy = deputy_->text().trimmed().toStdString();
    made.note = note_->text().trimmed().toStdString();
    return made;
}

void AbsenceForm::accept() {
    const auto made = absence();
    message_->setVisible(!made);
    if (made) {
        QDialog::accept();
    } else {
        message_->setText(made.error());
    }
}

} // namespace wickbook::ui
