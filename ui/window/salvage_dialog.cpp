// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/salvage_dialog.h"

#include "ui/style/look.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/salvage_words.h"
#include "ui/window/prompts.h"

#include <QFileInfo>
#include <QLabel>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kSalvageWidth = 640;
constexpr int kSalvageHeight = 420;
constexpr int kBarHeight = 8;

} // namespace

SalvageDialog::SalvageDialog(const QString& damaged, const QString& who, Prompts& prompts,
                             Session::Clock clock, QWidget* parent)
    : QDialog(parent), damaged_(damaged), who_(who), prompts_(prompts), clock_(std::move(clock)) {
    build();
    connect(&work_, &BackgroundWork::progressed, this, [this](qint64 done, qint64 total) {
        bar_->setRange(0, static_cast<int>(total));
        bar_->setValue(static_cast<int>(done));
    });
    showStage(false);
    begin_->setFocus();
}

void SalvageDialog::build() {
    setWindowTitle(tr("Save what can be read"));
    Look::follow(*this);
    resize(typePixels(kSalvageWidth), typePixels(kSalvageHeight));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(tr("Save what can be read of %1").arg(QFileInfo(damaged_).fileName())));
    sentence_ = makeLabel(tr("Every revision that can still be read goes into a new book, and what can't is "
                             "counted. The damaged book stays as it is: keep it. Where there is a copy that "
                             "verifies, restore that one first."),
                          TypeSize::Body, false);
    sentence_->setObjectName(QStringLiteral("salvageSentence"));
    sentence_->setTextFormat(Qt::PlainText);
    sentence_->setWordWrap(true);
    column->addWidget(sentence_);
    details_ = new QPlainTextEdit;
    details_->setObjectName(QStringLiteral("salvageDetails"));
    details_->setAccessibleName(tr("what came back and what is lost"));
    details_->setReadOnly(true);
    details_->setTabChangesFocus(true);
    details_->setFont(typeFont(TypeSize::Body));
    column->addWidget(details_, 1);
    column->addStretch(0);

    auto* row = new QHBoxLayout;
    row->setSpacing(space::kGroup);
    bar_ = new QProgressBar;
    bar_->setAccessibleName(tr("how far it is"));
    bar_->setTextVisible(false);
    bar_->setFixedHeight(typePixels(kBarHeight));
    row->addWidget(bar_, 1);
    row->addStretch(0);
    const auto button = [&](const QString& words, const char* name, auto slot) {
        auto* made = new QPushButton(words);
        made->setObjectName(QLatin1String(name));
        connect(made, &QPushButton::clicked, this, slot);
        row->addWidget(made);
        return made;
    };
    begin_ = button(tr("&Name the new book…"), "salvageBegin", [this] { begin(); });
    begin_->setProperty("primary", true);
    stop_ = button(tr("&Stop"), "salvageStop", [this] { work_.stop(); });
    open_ = button(tr("&Open the new book"), "salvageOpen", [this] { accept(); });
    open_->setProperty("primary", true);
    close_ = button(tr("&Close"), "salvageClose", [this] { reject(); });
    column->addLayout(row);
}

void SalvageDialog::showStage(bool running) {
    bar_->setVisible(running);
    stop_->setVisible(running);
    begin_->setVisible(!running && !made_);
    open_->setVisible(!running && made_);
    close_->setVisible(!running);
    details_->setVisible(!details_->toPlainText().isEmpty());
}

void SalvageDialog::begin() {
    target_ = prompts_.newBookPath(this, tr("%1 salvaged").arg(QFileInfo(damaged_).completeBaseName()),
                                   QFileInfo(damaged_).absolutePath());
    if (target_.isEmpty()) {
        return;
    }
    sentence_->setText(tr("Reading %1 page by page.").arg(QFileInfo(damaged_).fileName()));
    details_->clear();
    bar_->setRange(0, 0);
    showStage(true);
    stop_->setFocus();
    answer_ = std::make_shared<std::optional<store::Result<store::SalvageReport>>>();
    work_.start(
        [answer = answer_, from = damaged_.toStdString(), to = target_.toStdString(),
         words = salvageWords(who_), clock = clock_](WorkWatch& watch) {
            answer->emplace(
                store::salvage(from, to, words, clock,
                               [&](std::int64_t done, std::int64_t total) { return watch.go(done, total); }));
        },
        [this] { end(); });
}

void SalvageDialog::end() {
    const store::Result<store::SalvageReport>& answer = **answer_;
    if (!answer) {
        sentence_->setText(storeErrorWords(answer.error()));
    } else {
        made_ = !answer->stopped;
        sentence_->setText(salvageSentence(*answer));
        details_->setPlainText(salvageDetails(*answer).join(QStringLiteral("\n\n")));
    }
    showStage(false);
    (made_ ? open_ : begin_)->setFocus();
}

QString SalvageDialog::bookToOpen() const {
    return made_ && result() == Accepted ? target_ : QString{};
}

void SalvageDialog::reject() {
    if (work_.isRunning()) {
        work_.stop();
        return;
    }
    QDialog::reject();
}

bool salvageMayHelp(const store::StoreError& error) {
    using Kind = store::StoreErrorKind;
    if (error.kind == Kind::Damaged || error.kind == Kind::InputOutput) {
        return true;
    }
    // A book whose first bytes are hurt doesn't look like one; its name may still say so.
    const QFileInfo file(QString::fromStdString(error.path));
    return error.kind == Kind::NotABook && file.size() > 0 &&
           file.suffix().compare(QLatin1String("wickbook"), Qt::CaseInsensitive) == 0;
}

} // namespace wickbook::ui
