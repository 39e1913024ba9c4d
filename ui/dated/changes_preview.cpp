// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/dated/changes_preview.h"

#include "core/desk/changed_months.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/changed_words.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

struct ChangesPreview::Answer {
    std::optional<desk::ChangedRegister> changed; ///< none: stopped, or it failed
    QString failed;
};

ChangesPreview::ChangesPreview(Session& session, QLocale locale, QWidget* parent)
    : QWidget(parent), session_(session), locale_(std::move(locale)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    sentence_ = makeLabel({}, TypeSize::Body, false);
    sentence_->setObjectName(QStringLiteral("previewSentence"));
    sentence_->setWordWrap(true);
    column->addWidget(sentence_);
    months_ = new QTableWidget(0, 7);
    months_->setObjectName(QStringLiteral("previewMonths"));
    months_->setAccessibleName(tr("what would change, month by month"));
    months_->setHorizontalHeaderLabels({tr("Month"), tr("Readings"), tr("RH % now"), tr("then"),
                                        tr("Dew point now"), tr("then"), tr("Largest, % RH")});
    months_->verticalHeader()->hide();
    months_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    months_->setSelectionBehavior(QAbstractItemView::SelectRows);
    months_->setTabKeyNavigation(false);
    column->addWidget(months_);
    auto* row = new QHBoxLayout;
    progress_ = new QProgressBar;
    progress_->setAccessibleName(tr("how far the register has been looked through"));
    stop_ = new QPushButton(tr("Stop looking"));
    stop_->setObjectName(QStringLiteral("previewStop"));
    row->addWidget(progress_, 1);
    row->addWidget(stop_);
    column->addLayout(row);
    connect(stop_, &QPushButton::clicked, this, [this] {
        if (work_) {
            work_->stop();
        }
    });
    clear();
}

void ChangesPreview::clear() {
    work_.reset();
    for (QWidget* each : std::initializer_list<QWidget*>{sentence_, months_, progress_, stop_}) {
        each->hide();
    }
}

void ChangesPreview::begin(const record::StationFacts& after) {
    clear();
    auto answer = std::make_shared<Answer>();
    work_ = std::make_unique<BackgroundWork>();
    connect(work_.get(), &BackgroundWork::progressed, this, [this](qint64 finished, qint64 total) {
        progress_->setRange(0, static_cast<int>(std::min<qint64>(total, 1'000'000'000)));
        progress_->setValue(static_cast<int>(std::min<qint64>(finished, 1'000'000'000)));
        progress_->show();
        stop_->show();
    });
    work_->start(
        [answer, after, path = session_.path().toStdString()](WorkWatch& watch) {
            const auto book = store::Book::open(std::filesystem::path{path}, store::OpenMode::ReadOnly);
            if (!book) {
                answer->failed = storeErrorWords(book.error());
                return;
            }
            const auto now = book->station();
            if (!now) {
                answer->failed = storeErrorWords(now.error());
                return;
            }
            auto changed = desk::changedMonths(
                *book, *now, record::StationRecord{after}, [&watch](std::size_t finished, std::size_t total) {
                    return watch.go(static_cast<std::int64_t>(finished), static_cast<std::int64_t>(total));
                });
            if (!changed) {
                answer->failed = storeErrorWords(changed.error());
            } else {
                answer->changed = std::move(*changed);
            }
        },
        [this, answer] { show(*answer); });
}

void ChangesPreview::show(const Answer& answer) {
    progress_->hide();
    stop_->hide();
    const bool failed = !answer.failed.isEmpty();
    sentence_->setProperty("wrong", failed);
    sentence_->setText(failed ? answer.failed
                       : answer.changed
                           ? changedRegisterWords(locale_, *answer.changed)
                           : tr("Stopped before the end; nothing is known of what would change."));
    refreshLook(*sentence_);
    sentence_->show();
    const auto months = answer.changed ? answer.changed->months : std::vector<desk::ChangedMonth>{};
    months_->setRowCount(static_cast<int>(months.size()));
    for (int row = 0; row < months_->rowCount(); ++row) {
        const ChangedMonthWords words =
            changedMonthWords(locale_, months[static_cast<std::size_t>(row)], session_.unit());
        int at = 0;
        for (const QString& cell : {words.month, words.readings, words.humidityBefore, words.humidityAfter,
                                    words.dewPointBefore, words.dewPointAfter, words.largest}) {
            auto* item = new QTableWidgetItem(cell);
            item->setTextAlignment(at == 0 ? Qt::AlignLeft | Qt::AlignVCenter
                                           : Qt::AlignRight | Qt::AlignVCenter);
            months_->setItem(row, at++, item);
        }
    }
    months_->resizeColumnsToContents();
    constexpr int kMostShown = 6;
    const int rows = std::min(months_->rowCount(), kMostShown);
    months_->setFixedHeight(months_->horizontalHeader()->sizeHint().height() +
                            rows * (months_->rowCount() > 0 ? months_->rowHeight(0) : 0) +
                            2 * months_->frameWidth() + space::kGroup);
    months_->setVisible(!months.empty());
    emit done(answer.changed.has_value());
}

} // namespace wickbook::ui
