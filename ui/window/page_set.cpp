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

namespace {
/// The old page stands behind the tabs' own.
constexpr int kOldPagePlace = PageSet::Station + 1;
} // namespace

PageSet::PageSet(std::unique_ptr<Session> session, const QString& draftFolder, QWidget* parent)
    : QWidget(parent), session_(std::move(session)), draftFolder_(draftFolder) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    // Made where it will stand: what is moved into its window asks all that is on it for its looks once more.
    auto* sheet = new Sheet(this);
    auto* inside = new QVBoxLayout(sheet);
    inside->setContentsMargins(1, 1, 1, 1);
    stack_ = new QStackedWidget(sheet);
    inside->addWidget(stack_);
    column->addWidget(sheet);

    // A place for each, in the order of Page and the old page last; the page itself is made when it is turned
    // to.
    for (int place = Observe; place <= kOldPagePlace; ++place) {
        stack_->addWidget(new QWidget(stack_));
    }
    observe_ = new ObservePage(*session_, draftFolder, stack_);
    put(Observe, observe_);
    connect(observe_, &ObservePage::openInRegister, this, &PageSet::openInRegister);
    letFrontPageDecide(*stack_);
}

void PageSet::put(int place, QWidget* page) {
    QWidget* empty = stack_->widget(place);
    const bool front = stack_->currentIndex() == place;
    stack_->insertWidget(place, page);
    if (front) {
        stack_->setCurrentIndex(place);
    }
    stack_->removeWidget(empty);
    delete empty;
    emit made(page);
}

RegisterPage& PageSet::registerPage() {
    if (register_ == nullptr) {
        register_ = new RegisterPage(*session_, stack_);
        connect(register_, &RegisterPage::openInObserve, this, [this](const record::ObservingHour& hour) {
            turnTo(Observe);
            observe_->openHour(hour);
        });
        put(Register, register_);
    }
    return *register_;
}

StationPage& PageSet::stationPage() {
    if (station_ == nullptr) {
        station_ = new StationPage(*session_, stack_);
        connect(station_, &StationPage::openBookAsked, this, &PageSet::openBookAsked);
        put(Station, station_);
    }
    return *station_;
}

OldPage& PageSet::oldPage() {
    if (oldPage_ == nullptr) {
        oldPage_ =
            new OldPage(*session_, QDir(draftFolder_).filePath(QStringLiteral("old-pages.ini")), stack_);
        connect(oldPage_, &OldPage::closeAsked, this, [this] { turnTo(Observe); });
        connect(oldPage_, &OldPage::stationAsked, this, [this] { turnTo(Station); });
        put(kOldPagePlace, oldPage_);
    }
    return *oldPage_;
}

void PageSet::make(int page) {
    switch (page) {
    case Register:
        registerPage();
        break;
    case Month:
        if (month_ == nullptr) {
            month_ = new MonthPage(*session_, stack_);
            connect(month_, &MonthPage::openInRegister, this, &PageSet::openInRegister);
            put(Month, month_);
        }
        break;
    case Instruments:
        if (instruments_ == nullptr) {
            instruments_ = new InstrumentsPage(*session_, stack_);
            put(Instruments, instruments_);
        }
        break;
    case Station:
        stationPage();
        break;
    default:
        break;
    }
}

void PageSet::openInRegister(const record::ObservingHour& hour) {
    turnTo(Register);
    register_->showHour(hour);
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
    make(page);
    stack_->setCurrentIndex(page);
    if (page == Observe) {
        observe_->focusEntry();
    } else {
        stack_->currentWidget()->setFocus(Qt::OtherFocusReason);
    }
    emit turned(page);
}

void PageSet::openOldPage() {
    stack_->setCurrentWidget(&oldPage());
    oldPage_->focusPage();
    emit turned(Observe);
}

int PageSet::current() const {
    return stack_->currentIndex() == kOldPagePlace ? static_cast<int>(Observe) : stack_->currentIndex();
}

QString PageSet::helpPage() const {
    static const QStringList names{QStringLiteral("observe"), QStringLiteral("register"),
                                   QStringLiteral("month"), QStringLiteral("instruments"),
                                   QStringLiteral("station")};
    return stack_->currentIndex() == kOldPagePlace ? QStringLiteral("oldpages") : names.value(current());
}

void PageSet::openMark(const desk::HourMark& mark) {
    if (mark.observation) {
        openInRegister(mark.expected.hour);
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
                    openInRegister(hour);
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
    stationPage().showCopies();
}

void PageSet::closeReview() {
    if (review_) {
        review_->close();
    }
}

} // namespace wickbook::ui
