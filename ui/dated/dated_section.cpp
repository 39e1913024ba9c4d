// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dated/dated_section.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/time_words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

DatedSection::DatedSection(Session& session, const char* name, QString title, QLocale locale, QWidget* parent)
    : QWidget(parent)
    , session_(session)
    , name_(QLatin1String(name))
    , title_(std::move(title))
    , locale_(std::move(locale)) {}

void DatedSection::build(const QString& addWords) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    auto* head = new QHBoxLayout;
    fold_ = new QPushButton;
    fold_->setObjectName(name_ + QStringLiteral("Fold"));
    fold_->setCheckable(true);
    head->addWidget(fold_);
    head->addStretch();
    column->addLayout(head);

    content_ = new QWidget;
    auto* inside = new QVBoxLayout(content_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(space::kGroup);
    empty_ = makeLabel(empty(), TypeSize::Body, true);
    empty_->setWordWrap(true);
    inside->addWidget(empty_);
    list_ = new QListWidget;
    list_->setObjectName(name_ + QStringLiteral("List"));
    QString plain = title_;
    list_->setAccessibleName(plain.remove(QLatin1Char('&')));
    list_->setFont(typeFont(TypeSize::Body));
    list_->setWordWrap(true);
    list_->installEventFilter(this);
    inside->addWidget(list_);
    auto* buttons = new QHBoxLayout;
    const auto button = [&](const QString& words, const char* name) {
        auto* made = new QPushButton(words);
        made->setObjectName(name_ + QLatin1String(name));
        buttons->addWidget(made);
        return made;
    };
    auto* add = button(addWords, "Add");
    add->setToolTip(tr("Insert, in the list"));
    add->setEnabled(session_.readOnlySentence().isEmpty());
    change_ = button(tr("Change…"), "Change");
    change_->setToolTip(tr("Enter, in the list"));
    takeBack_ = button(tr("Take back"), "TakeBack");
    takeBack_->setToolTip(tr("Delete, in the list. Undo brings it again."));
    buttons->addStretch();
    buttons_ = buttons;
    inside->addLayout(buttons);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(name_ + QStringLiteral("Message"));
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(content_, 1);
    column->addWidget(message_); // seen while the list is folded away too

    connect(fold_, &QPushButton::toggled, this, [this, add](bool open) {
        unfold(open);
        if (open) {
            foldOthers();
            shown_.empty() ? add->setFocus() : list_->setFocus();
        }
    });
    connect(add, &QPushButton::clicked, this, [this] { ask(std::nullopt); });
    connect(change_, &QPushButton::clicked, this, [this] {
        if (const auto id = chosen()) {
            ask(id);
        }
    });
    connect(takeBack_, &QPushButton::clicked, this, [this] {
        if (const auto id = chosen()) {
            takeBack(*id);
        }
    });
    connect(list_, &QListWidget::currentRowChanged, this, &DatedSection::chosenChanged);
    connect(list_, &QListWidget::itemDoubleClicked, change_, &QPushButton::click);
    connect(&session_, &Session::factsChanged, this, &DatedSection::reload);
    reload();
    unfold(false);
}

void DatedSection::addAction(const QString& words, const char* name,
                             std::function<void(const record::Uuid&)> act) {
    auto* button = new QPushButton(words);
    button->setObjectName(name_ + QLatin1String(name));
    buttons_->insertWidget(buttons_->count() - 1, button);
    connect(button, &QPushButton::clicked, this, [this, act = std::move(act)] {
        if (const auto id = chosen()) {
            act(*id);
        }
    });
    further_.push_back(button);
    chosenChanged();
}

void DatedSection::unfold(bool open) {
    content_->setVisible(open);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    showFold();
}

void DatedSection::foldOthers() {
    if (parentWidget() == nullptr) {
        return;
    }
    for (DatedSection* other :
         parentWidget()->findChildren<DatedSection*>(QString{}, Qt::FindDirectChildrenOnly)) {
        if (other != this) {
            other->fold_->setChecked(false);
        }
    }
}

void DatedSection::showFold() {
    QString text = title_;
    if (!shown_.empty()) {
        text += QStringLiteral(" · ") + QString::number(shown_.size());
    }
    fold_->setText(fold_->isChecked() ? tr("%1: fold away").arg(title_) : text);
}

std::optional<record::Uuid> DatedSection::chosen() const {
    const auto row = static_cast<std::size_t>(list_->currentRow());
    return list_->currentRow() >= 0 && row < shown_.size() ? std::optional{shown_[row].id} : std::nullopt;
}

void DatedSection::chosenChanged() {
    const bool can = chosen().has_value() && session_.readOnlySentence().isEmpty();
    change_->setEnabled(can);
    takeBack_->setEnabled(can);
    for (QPushButton* each : further_) {
        each->setEnabled(chosen().has_value());
    }
}

void DatedSection::reload() {
    const auto before = chosen();
    const int row = list_->currentRow();
    shown_ = lines();
    list_->clear();
    for (const Line& line : shown_) {
        list_->addItem(line.text);
    }
    const auto again =
        std::find_if(shown_.begin(), shown_.end(), [&](const Line& line) { return line.id == before; });
    list_->setCurrentRow(again != shown_.end() ? static_cast<int>(again - shown_.begin())
                                               : std::min(std::max(row, 0), list_->count() - 1));
    list_->setVisible(!shown_.empty());
    empty_->setVisible(shown_.empty());
    // As high as its lines, up to five; more are scrolled.
    constexpr int kMostLines = 5;
    const int count = std::min(list_->count(), kMostLines);
    list_->setFixedHeight(std::max(1, count) * std::max(list_->sizeHintForRow(0), typePixels(22)) +
                          2 * list_->frameWidth() + space::kGroup);
    showFold();
    chosenChanged();
}

void DatedSection::tell(const store::Result<void>& done, const QString& sentence) {
    say(done ? sentence : storeErrorWords(done.error()), !done.has_value());
}

void DatedSection::say(const QString& sentence, bool wrong) {
    message_->setProperty("wrong", wrong);
    message_->setText(sentence);
    message_->show();
    refreshLook(*message_);
    if (!shown_.empty()) {
        list_->setFocus();
    }
}

record::Author DatedSection::author(const QString& why) const {
    return {session_.observer().toStdString(), why.toStdString()};
}

QString DatedSection::dayWords(record::StationDate date) const {
    return locale_.toString(toQDate(date), QStringLiteral("d MMM yyyy"));
}

bool DatedSection::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool can = session_.readOnlySentence().isEmpty();
        if (key->key() == Qt::Key_Insert && can) {
            ask(std::nullopt);
            return true;
        }
        if ((key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) && change_->isEnabled()) {
            ask(chosen());
            return true;
        }
        if (key->key() == Qt::Key_Delete && takeBack_->isEnabled()) {
            takeBack(*chosen());
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace wickbook::ui
