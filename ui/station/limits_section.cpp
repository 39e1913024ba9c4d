// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/limits_section.h"

#include "ui/commands/revise_limits.h"
#include "ui/station/limits_form.h"
#include "ui/station/limits_model.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/limit_words.h"
#include "ui/text/time_words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

LimitsSection::LimitsSection(Session& session, QLocale locale, QWidget* parent)
    : QWidget(parent), session_(session), locale_(std::move(locale)) {
    build();
    connect(&session_, &Session::factsChanged, this, &LimitsSection::reload);
    unfold(false);
    chosen();
}

void LimitsSection::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    auto* head = new QHBoxLayout;
    fold_ = new QPushButton;
    fold_->setObjectName(QStringLiteral("limitsFold"));
    fold_->setCheckable(true);
    connect(fold_, &QPushButton::toggled, this, [this](bool open) {
        unfold(open);
        if (open) {
            view_->setFocus();
        }
    });
    head->addWidget(fold_);
    head->addStretch();
    column->addLayout(head);

    content_ = new QWidget;
    auto* inside = new QVBoxLayout(content_);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(space::kGroup);
    model_ = new LimitsModel(session_, locale_, this);
    view_ = new QTreeView;
    view_->setObjectName(QStringLiteral("limits"));
    view_->setAccessibleName(tr("limits of the checks"));
    view_->setModel(model_);
    view_->setAllColumnsShowFocus(true);
    view_->setUniformRowHeights(true);
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->header()->setSectionResizeMode(QHeaderView::Interactive);
    view_->header()->setStretchLastSection(true);
    view_->setTabKeyNavigation(false);
    view_->setMinimumHeight(typePixels(120));
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, &LimitsSection::chosen);
    connect(view_, &QTreeView::activated, this, [this](const QModelIndex& index) {
        if (model_->limitAt(index) != nullptr && change_->isEnabled()) {
            ask(false);
        }
    });
    inside->addWidget(view_, 3);

    does_ = makeLabel({}, TypeSize::Body, false);
    does_->setObjectName(QStringLiteral("limitsDoes"));
    does_->setWordWrap(true);
    inside->addWidget(does_);
    auto* buttons = new QHBoxLayout;
    change_ = new QPushButton(tr("&Change this limit…"));
    change_->setObjectName(QStringLiteral("limitChange"));
    back_ = new QPushButton(tr("Back to the &built-in value…"));
    back_->setObjectName(QStringLiteral("limitBack"));
    connect(change_, &QPushButton::clicked, this, [this] { ask(false); });
    connect(back_, &QPushButton::clicked, this, [this] { ask(true); });
    buttons->addWidget(change_);
    buttons->addWidget(back_);
    buttons->addStretch();
    inside->addLayout(buttons);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setWordWrap(true);
    message_->hide();
    inside->addWidget(message_);
    history_ = new QListWidget;
    history_->setObjectName(QStringLiteral("limitHistory"));
    history_->setAccessibleName(tr("history of this limit"));
    history_->setWordWrap(true);
    inside->addWidget(history_);
    column->addWidget(content_, 1);
}

void LimitsSection::unfold(bool open) {
    const auto own = session_.station().facts().limits.size();
    QString text = open ? tr("&Limits of the checks: fold away") : tr("&Limits of the checks");
    if (!open && own > 0) {
        text += QStringLiteral(" · ") +
                (own == 1 ? tr("1 of this station's own")
                          : tr("%n of this station's own", nullptr, static_cast<int>(own)));
    }
    fold_->setText(text);
    content_->setVisible(open);
    setSizePolicy(QSizePolicy::Preferred, open ? QSizePolicy::Expanding : QSizePolicy::Maximum);
    if (open && !view_->currentIndex().isValid()) {
        view_->expandAll();
        for (int column = 0; column < LimitsModel::Why; ++column) {
            view_->resizeColumnToContents(column);
        }
        view_->setCurrentIndex(model_->index(0, 0, model_->index(0, 0)));
    }
}

void LimitsSection::reload() {
    model_->load();
    unfold(fold_->isChecked());
    chosen();
}

void LimitsSection::chosen() {
    const QModelIndex index = view_->currentIndex();
    const checks::LimitEntry* limit = model_->limitAt(index);
    does_->setText(index.isValid() ? limitRuleWords(model_->ruleAt(index)).does : QString{});
    const bool canWrite = session_.readOnlySentence().isEmpty();
    bool own = false;
    for (const auto& [moment, value] : session_.station().facts().limits) {
        own = own || (limit != nullptr && moment.name == limit->name);
    }
    change_->setEnabled(canWrite && limit != nullptr && !checks::isFixed(*limit));
    back_->setEnabled(canWrite && own);
    showHistory(limit == nullptr ? std::string_view{} : limit->name);
}

void LimitsSection::showHistory(std::string_view limit) {
    history_->clear();
    const auto revisions = session_.book().limitHistory();
    const checks::LimitEntry* entry = checks::limitEntry(limit);
    if (!revisions || entry == nullptr) {
        history_->hide();
        return;
    }
    for (const record::LimitRevision& revision : *revisions) {
        if (revision.limit.name != limit) {
            continue;
        }
        const auto day = [&](record::Instant instant) {
            const record::Zone zone = session_.station().periodAt(instant).zone;
            return longDateWords(locale_, date::floor<date::days>(zone.localAt(instant)));
        };
        const QString value = revision.withdrawn ? tr("taken back")
                              : revision.value
                                  ? limitValueWords(locale_, *entry, *revision.value, session_.unit())
                                  : tr("as built in");
        QString line = QStringLiteral("%1: %2, %3")
                           .arg(day(revision.stamp.recordedAt), value,
                                revision.limit.from ? tr("from %1 on").arg(day(*revision.limit.from))
                                                    : tr("from the beginning"));
        if (!revision.stamp.author.why.empty()) {
            line += QStringLiteral(" · ") + QString::fromStdString(revision.stamp.author.why);
        }
        if (!revision.stamp.author.who.empty()) {
            line += QStringLiteral(" (%1)").arg(QString::fromStdString(revision.stamp.author.who));
        }
        history_->insertItem(0, line); // the newest first
    }
    history_->setVisible(history_->count() > 0);
    // As high as its lines, up to three; more are scrolled.
    constexpr int kMostLines = 3;
    const int lines = std::min(history_->count(), kMostLines);
    history_->setFixedHeight(lines * history_->sizeHintForRow(0) + 2 * history_->frameWidth() + space::kStep);
}

QString LimitsSection::keep(const record::LimitChanges& after, std::string_view limit, bool back,
                            const QString& why) {
    const QString title = limitRuleWords(ruleOfLimit(limit)).title;
    const auto kept = ReviseLimits::perform(
        session_, after, {session_.observer().toStdString(), why.toStdString()},
        back ? tr("limit back to built in: %1").arg(title) : tr("limit changed: %1").arg(title));
    return kept ? QString{} : storeErrorWords(kept.error());
}

void LimitsSection::ask(bool back) {
    const checks::LimitEntry* limit = model_->limitAt(view_->currentIndex());
    if (limit == nullptr) {
        return;
    }
    LimitForm form(session_, *limit, back, locale_, this);
    if (form.exec() != QDialog::Accepted) {
        return;
    }
    const auto after = form.changes();
    const QString failed = after ? keep(*after, limit->name, back, form.why()) : after.error();
    message_->setProperty("wrong", !failed.isEmpty());
    message_->setText(failed.isEmpty() ? tr("Kept. The readings are judged afresh; undo takes it back.")
                                       : failed);
    message_->show();
    refreshLook(*message_);
    view_->setFocus();
}

} // namespace wickbook::ui
