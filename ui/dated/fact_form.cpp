// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dated/fact_form.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

FactForm::FactForm(const QString& title, const QString& heading, const QString& explained, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(title);
    Look::follow(*this);
    column_ = new QVBoxLayout(this);
    column_->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column_->setSpacing(space::kGroup);
    column_->addWidget(makeHeading(heading));
    if (!explained.isEmpty()) {
        QLabel* words = makeLabel(explained);
        words->setWordWrap(true);
        column_->addWidget(words);
    }
    form_ = new QFormLayout;
    column_->addLayout(form_);
}

void FactForm::addRow(const QString& label, QWidget* field, const char* name) {
    field->setAccessibleName(label);
    field->setObjectName(QLatin1String(name));
    QLabel* words = makeLabel(label);
    words->setBuddy(field);
    form_->addRow(words, field);
}

void FactForm::addWide(QWidget* widget) {
    column_->addWidget(widget);
}

QLineEdit* FactForm::addLine(const QString& label, const char* name, const QString& text) {
    auto* line = new QLineEdit(text);
    addRow(label, line, name);
    return line;
}

void FactForm::finish() {
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("factMessage"));
    message_->setProperty("wrong", true);
    message_->setWordWrap(true);
    message_->hide();
    column_->addWidget(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    keep_ = buttons->button(QDialogButtonBox::Ok);
    keep_->setObjectName(QStringLiteral("factKeep"));
    keep_->setProperty("primary", true);
    connect(buttons, &QDialogButtonBox::accepted, this, &FactForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &FactForm::reject);
    column_->addWidget(buttons);
    for (QLineEdit* edit : findChildren<QLineEdit*>()) {
        connect(edit, &QLineEdit::textChanged, this, &FactForm::askAnew);
    }
    for (QComboBox* box : findChildren<QComboBox*>()) {
        connect(box, &QComboBox::currentIndexChanged, this, &FactForm::askAnew);
    }
    for (QTableWidget* table : findChildren<QTableWidget*>()) {
        connect(table, &QTableWidget::cellChanged, this, &FactForm::askAnew);
    }
    askAnew();
    resize(typePixels(560), sizeHint().height());
}

void FactForm::previewChanges(Session& session, const QLocale& locale, FactsAfter after) {
    after_ = std::move(after);
    preview_ = new ChangesPreview(session, locale);
    column_->insertWidget(column_->indexOf(message_), preview_);
    connect(preview_, &ChangesPreview::done, this, [this](bool whole) {
        seen_ = whole;
        keep_->setEnabled(true);
        keep_->setText(whole ? tr("Keep it") : tr("See what changes"));
        keep_->setFocus();
        adjustSize();
    });
    askAnew();
}

void FactForm::askAnew() {
    if (keep_ == nullptr) {
        return; // not yet whole
    }
    seen_ = false;
    keep_->setEnabled(true);
    keep_->setText(preview_ != nullptr ? tr("See what changes") : tr("Keep it"));
    if (preview_ != nullptr) {
        preview_->clear();
    }
    say({});
}

void FactForm::say(const QString& sentence) {
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
}

void FactForm::accept() {
    const QString wrong = problem();
    say(wrong);
    if (!wrong.isEmpty()) {
        return;
    }
    if (preview_ == nullptr || seen_) {
        QDialog::accept();
        return;
    }
    if (!preview_->isRunning()) {
        keep_->setEnabled(false);
        keep_->setText(tr("Looking…"));
        preview_->begin(after_());
    }
}

void FactForm::reject() {
    if (preview_ != nullptr) {
        preview_->clear();
    }
    QDialog::reject();
}

tl::expected<std::optional<record::Instant>, QString> fromTyped(const QString& typed,
                                                                const record::StationRecord& station) {
    const QString text = typed.trimmed();
    if (text.isEmpty()) {
        return std::optional<record::Instant>{};
    }
    const auto date = record::parseDate(text.toStdString());
    if (!date) {
        return tl::unexpected(timeErrorWords(date.error(), text));
    }
    return std::optional{record::startOfDate(*date, station)};
}

QString typedFrom(const std::optional<record::Instant>& from, const record::StationRecord& station) {
    if (!from) {
        return {};
    }
    return QString::fromStdString(
        record::dateText(date::floor<date::days>(station.periodAt(*from).zone.localAt(*from))));
}

} // namespace wickbook::ui
