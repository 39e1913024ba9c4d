// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/wait_beside.h"

#include "ui/style/look.h"
#include "ui/style/type.h"

#include <QApplication>
#include <QLabel>
#include <QProgressBar>
#include <QThread>
#include <QVBoxLayout>

#include <memory>

namespace wickbook::ui {

namespace {

constexpr unsigned long kLookMilliseconds = 40;
constexpr int kWaitParts = 1000;

/// Over the middle of the active window.
class WaitSheet : public QWidget {
public:
    explicit WaitSheet(const QString& words)
        : QWidget(QApplication::activeWindow(), Qt::ToolTip | Qt::FramelessWindowHint) {
        setAttribute(Qt::WA_ShowWithoutActivating);
        Look::follow(*this);
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
        column->addWidget(makeLabel(words, TypeSize::Body, false));
        bar_ = new QProgressBar;
        bar_->setAccessibleName(words);
        bar_->setTextVisible(false);
        bar_->setFixedHeight(typePixels(8));
        bar_->setMinimumWidth(typePixels(280));
        bar_->setRange(0, 0);
        column->addWidget(bar_);
        adjustSize();
        if (const QWidget* over = parentWidget()) {
            move(over->mapToGlobal(over->rect().center()) - rect().center());
        }
        show();
    }
    void tell(const WorkWatch& watch) {
        const std::int64_t total = watch.total;
        bar_->setRange(0, total > 0 ? kWaitParts : 0);
        bar_->setValue(total > 0 ? static_cast<int>(watch.done * kWaitParts / total) : 0);
    }

private:
    QProgressBar* bar_ = nullptr;
};

} // namespace

void waitBeside(const QString& words, const std::function<void(WorkWatch&)>& work) {
    WorkWatch watch;
    const std::unique_ptr<QThread> thread(QThread::create([&] { work(watch); }));
    WaitSheet sheet(words);
    thread->start();
    while (!thread->wait(kLookMilliseconds)) {
        sheet.tell(watch);
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents);
    }
}

} // namespace wickbook::ui
