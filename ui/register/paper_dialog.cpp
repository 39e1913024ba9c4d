// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/paper_dialog.h"

#include "ui/register/paper_words.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {
constexpr int kLongestPlace = 60;
}

PaperDialog::PaperDialog(std::vector<Choice> choices, const std::optional<record::PaperPlace>& place,
                         QWidget* parent)
    : QDialog(parent), choices_(std::move(choices)) {
    Look::follow(*this);
    setWindowTitle(tr("Where these lines stand on paper"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kEdge, space::kEdge, space::kEdge);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(tr("Where these lines stand on paper")));
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(space::kBetween);
    grid->setVerticalSpacing(space::kGroup);
    column->addLayout(grid);
    const auto add = [&](int row, const QString& words, QWidget* field, const QString& name) {
        auto* label = makeLabel(words);
        label->setBuddy(field);
        field->setObjectName(name);
        field->setAccessibleName(QString(words).remove(QLatin1Char('&')));
        grid->addWidget(label, row, 0);
        grid->addWidget(field, row, 1);
    };
    which_ = new QComboBox;
    for (const Choice& choice : choices_) {
        which_->addItem(choice.words);
    }
    add(0, tr("&Which lines"), which_, QStringLiteral("paperWhich"));
    const auto text = [](const std::string& words) { return QString::fromStdString(words).simplified(); };
    book_ = new QLineEdit(place ? text(place->book) : QString{});
    book_->setPlaceholderText(tr("Pocket-book 3"));
    add(1, tr("&Book"), book_, QStringLiteral("paperBook"));
    page_ = new QLineEdit(place ? text(place->page) : QString{});
    page_->setPlaceholderText(QStringLiteral("17"));
    add(2, tr("&Page"), page_, QStringLiteral("paperPage"));
    for (QLineEdit* field : {book_, page_}) {
        field->setMaxLength(kLongestPlace);
        connect(field, &QLineEdit::textChanged, this, &PaperDialog::preview);
    }
    summary_ = makeLabel({}, TypeSize::Body, false);
    summary_->setObjectName(QStringLiteral("paperSummary"));
    summary_->setWordWrap(true);
    summary_->setMinimumWidth(typePixels(400));
    column->addWidget(summary_);
    auto* buttons = new QHBoxLayout;
    keep_ = new QPushButton(tr("&Keep"));
    keep_->setObjectName(QStringLiteral("paperKeep"));
    keep_->setProperty("primary", true);
    keep_->setDefault(true);
    auto* leave = new QPushButton(tr("Leave it as it is"));
    buttons->addStretch();
    buttons->addWidget(leave);
    buttons->addWidget(keep_);
    column->addLayout(buttons);
    connect(keep_, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    connect(which_, &QComboBox::currentIndexChanged, this, &PaperDialog::preview);
    preview();
    book_->setFocus();
    book_->selectAll();
}

const std::vector<record::StoredObservation>& PaperDialog::lines() const {
    return choices_[static_cast<std::size_t>(std::max(0, which_->currentIndex()))].lines;
}

std::optional<record::PaperPlace> PaperDialog::place() const {
    const record::PaperPlace typed{book_->text().simplified().toStdString(),
                                   page_->text().simplified().toStdString()};
    return typed.book.empty() && typed.page.empty() ? std::nullopt : std::optional{typed};
}

void PaperDialog::preview() {
    const auto to = place();
    const auto changed = std::count_if(lines().begin(), lines().end(),
                                       [&](const auto& line) { return line.values.paper != to; });
    const int count = static_cast<int>(changed);
    if (changed == 0) {
        summary_->setText(tr("They stand so already."));
    } else if (!to) {
        summary_->setText(changed == 1
                              ? tr("One line will have no place on paper any more.")
                              : tr("%n lines will have no place on paper any more.", nullptr, count));
    } else {
        summary_->setText(changed == 1
                              ? tr("One line will stand on: %1.").arg(paperWords(to))
                              : tr("%n lines will stand on: %1.", nullptr, count).arg(paperWords(to)));
    }
    keep_->setEnabled(changed > 0);
}

} // namespace wickbook::ui
