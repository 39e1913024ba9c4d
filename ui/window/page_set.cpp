// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/page_set.h"

#include "ui/instruments/instruments_page.h"
#include "ui/month/month_page.h"
#include "ui/observe/observe_page.h"
#include "ui/oldpage/old_page.h"
#include "ui/register/register_page.h"
#include "ui/review/review_window.h"
#include "ui/station/station_page.h"
#include "ui/style/sheet.h"
#include "ui/window/page_room.h"

#include <QDir>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

PageSet::PageSet(std::unique_ptr<Session> session, const QString& draftFolder, QWidget* parent)
    : QWidget(parent), session_(std::move(session)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    auto* sheet = new Sheet;
    auto* inside = new QVBoxLayout(sheet);
    inside->setContentsMargins(1, 1, 1, 1);
    stack_ = new QStackedWidget;
    inside->addWidget(stack_);
    column->addWidget(sheet);

    observe_ = new ObservePage(*session_, draftFolder);
    register_ = new RegisterPage(*session_);
    month_ = new MonthPage(*session_);
    stack_->addWidget(observe_);
    stack_->addWidget(register_);
    stack_->addWidget(month_);
    stack_->addWidget(new InstrumentsPage(*session_));
    station_ = new StationPage(*session_);
    stack_->addWidget(station_);
    oldPage_ = new OldPage(*session_, QDir(draftFolder).filePath(QStringLiteral("old-pages.ini")));
    stack_->addWidget(oldPage_);
    connect(station_, &StationPage::openBookAsked, this, &PageSet::openBookAsked);
    connect(oldPage_, &OldPage::closeAsked, this, [this] { turnTo(Observe); });
    connect(oldPage_, &OldPage::stationAsked, this, [this] { turnTo(Station); });

    const auto toRegister = [this](const record::ObservingHour& hour) {
        turnTo(Register);
        register_->showHour(hour);
    };
    connect(observe_, &ObservePage::openInRegister, this, toRegister);
    connect(month_, &MonthPage::openInRegister, this, toRegister);
    connect(register_, &RegisterPage::openInObserve, this, [this](const record::ObservingHour& hour) {
        turnTo(Observe);
        observe_->openHour(hour);
    });
    letFrontPageDecide(*stack_);
}

PageSet::~PageSet() {
    // Pages refer to the session: they go first.
    review_.reset();
    delete stack_;
}

QStringList PageSet::titles() {
    return {tr("Observe"), tr("Register"), tr("Month"), tr("Instruments"), tr("Station")};
}

void PageSet::turnTo(int page) {
    stack_->setCurrentIndex(page);
    if (page == Observe) {
        observe_->focusEntry();
    } else {
        stack_->currentWidget()->setFocus(Qt::OtherFocusReason);
    }
    emit turned(page);
}

void PageSet::openOldPage() {
    stack_->setCurrentWidget(oldPage_);
    oldPage_->focusPage();
    emit turned(Observe);
}

int PageSet::current() const {
    return stack_->currentWidget() == oldPage_ ? static_cast<int>(Observe) : stack_->currentIndex();
}

QString PageSet::helpPage() const {
    static const QStringList names{QStringLiteral("observe"), QStringLiteral("register"),
                                   QStringLiteral("month"), QStringLiteral("instruments"),
                                   QStringLiteral("station")};
    return stack_->currentWidget() == oldPage_ ? QStringLiteral("oldpages") : names.value(current());
}

void PageSet::openMark(const desk::HourMark& mark) {
    if (mark.observation) {
        turnTo(Register);
        register_->showHour(mark.expected.hour);
    } else {
        turnTo(Observe);
        observe_->openHour(mark.expected.hour);
    }
}

void PageSet::openReview() {
    if (!review_) {
        review_ = std::make_unique<ReviewWindow>(*session_);
        connect(review_.get(), &ReviewWindow::openInRegister, this,
                [this](const record::ObservingHour& hour) {
                    turnTo(Register);
                    register_->showHour(hour);
                    window()->raise();
                    window()->activateWindow();
                });
    }
    const bool shown = review_->isVisible();
    review_->show();
    review_->raise();
    review_->activateWindow();
    if (!shown) {
        review_->look();
    }
}

void PageSet::openCopies() {
    turnTo(Station);
    station_->showCopies();
}

void PageSet::closeReview() {
    if (review_) {
        review_->close();
    }
}

} // namespace wickbook::ui
