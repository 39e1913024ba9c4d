// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"

#include <QWidget>

#include <memory>

class QStackedWidget;

/// The five pages of one open book and the ways between them. Owns the session and the pages; made when a
/// book is opened, gone when another is. A page is made when it is first turned to: a book is there at once.

namespace wickbook::ui {

class InstrumentsPage;
class MonthPage;
class ObservePage;
class OldPage;
class RegisterPage;
class ReviewWindow;
class StationPage;

class PageSet : public QWidget {
    Q_OBJECT

public:
    enum Page { Observe, Register, Month, Instruments, Station };

    PageSet(std::unique_ptr<Session> session, const QString& draftFolder, QWidget* parent = nullptr);
    ~PageSet() override;

    [[nodiscard]] Session& session() { return *session_; }
    [[nodiscard]] ObservePage& observe() { return *observe_; }
    /// The words on the index tabs, in the order of Page.
    [[nodiscard]] static QStringList titles();

    void turnTo(int page);
    [[nodiscard]] int current() const;
    /// The page of the help that belongs to what is in front.
    [[nodiscard]] QString helpPage() const;
    /// A month typed off the paper register; it stands behind the Observe tab.
    void openOldPage();
    [[nodiscard]] OldPage& oldPage();
    /// From the margin: an hour kept is opened in the register, one that is not on the Observe page.
    void openMark(const desk::HourMark& mark);
    /// "Look through the whole register": a window of its own; opened already, it comes to the front.
    void openReview();
    void closeReview();
    /// The Station page with its copies unfolded.
    void openCopies();

signals:
    /// A book was restored and is to be opened.
    void openBookAsked(const QString& path);
    void turned(int page);
    /// A page was made.
    void made(QWidget* page);

private:
    void put(int place, QWidget* page);
    void make(int page);
    RegisterPage& registerPage();
    StationPage& stationPage();
    void openInRegister(const record::ObservingHour& hour);

    std::unique_ptr<Session> session_;
    QString draftFolder_;
    QStackedWidget* stack_ = nullptr;
    ObservePage* observe_ = nullptr;
    RegisterPage* register_ = nullptr;
    std::unique_ptr<ReviewWindow> review_;
    MonthPage* month_ = nullptr;
    InstrumentsPage* instruments_ = nullptr;
    StationPage* station_ = nullptr;
    OldPage* oldPage_ = nullptr;
};

} // namespace wickbook::ui
