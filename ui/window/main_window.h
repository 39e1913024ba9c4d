// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/session/session.h"
#include "ui/window/window_settings.h"

#include <QMainWindow>
#include <QTemporaryDir>

#include <memory>
#include <optional>

class QAction;
class QLabel;
class QMenu;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QVBoxLayout;

/// Menus and pages only. Opens books, turns pages, keeps the margin above them; what happens on a page is the
/// page's. Owns the open book through its PageSet; settings and prompts are borrowed and outlive it.

namespace wickbook::ui {

class ClassWindow;
class BookLock;
class FirstStartPage;
class HelpWindow;
class IndexTabs;
class MarginStrip;
class PageSet;
class Prompts;
class StationForm;

/// After other settings the window is made anew: what the next one is to open.
struct WindowAnew {
    QString book; ///< empty: the first page
    std::unique_ptr<QTemporaryDir> sampleFolder;
    int page = 0;
};

class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    MainWindow(WindowSettings& settings, Prompts& prompts, Session::Clock clock, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a book; on failure the sentence is shown, the book open before stays open. One that another
    /// window has open brings that window forward; where it can't be reached, the book opens for reading
    /// only.
    bool openBook(const QString& path);
    /// A fresh copy of the invented station, gone when the window closes.
    bool openSample();
    /// The first-start page with its three doors.
    void showFirstStart(const QString& sentence = {});
    void showStationForm();
    [[nodiscard]] PageSet* pages() const { return pages_; }
    [[nodiscard]] MarginStrip* margin() const { return margin_; }

    using Anew = WindowAnew;
    /// None: the window has ended for good.
    [[nodiscard]] std::optional<Anew> takeAnew() { return std::exchange(anew_, std::nullopt); }
    /// What the window before had open.
    void resume(Anew before);
    /// Uses other settings: keeps them, and asks for the window to be made anew.
    void usePreferences(const Preferences& preferences);

    /// Bringing in a register that was kept elsewhere; files: what was dropped, may be none.
    void takeIn(const QStringList& files);

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void build();
    void buildMenus();
    void makeStationForm();
    void buildPaperMenu(QMenu& menu);
    void buildPageMenu(QMenu& menu);
    void buildHelpMenu(QMenu& menu);
    void buildCopyMenu(QMenu& menu);
    /// What is worth remembering of an open book is kept when it changes, not when the window closes.
    void rememberFrom(Session& session);
    void beginCopies();
    void restoreFromCopy();
    void showPages(std::unique_ptr<Session> session);
    void closeBook();
    void comeForward();
    void startStation(const record::NewStation& station);
    void askForBook();
    void fillRecent();
    void turnTo(int page);
    void showHelp();
    void showHelpPage(const QString& name);
    void showHelpFor(QWidget* asking);
    void showPreferences();
    void showLog();
    void keepDivisions();
    void showAbout();
    void openClassRound();
    void updateBanner();
    void tell(const QString& sentence);
    void buildSalvageOffer(QVBoxLayout& column);
    /// A book that did not open: the sentence, and where it may help the way to the salvage.
    void tellUnopened(const store::StoreError& error, const QString& sentence, const QString& path);
    /// Empty: asks which book.
    void salvageBook(const QString& path);

    WindowSettings& settings_;
    Prompts& prompts_;
    Session::Clock clock_;
    std::unique_ptr<QTemporaryDir> sampleFolder_;
    std::optional<Anew> anew_;
    std::unique_ptr<BookLock> lock_;

    MarginStrip* margin_ = nullptr;
    QLabel* banner_ = nullptr;
    QPushButton* salvageOffer_ = nullptr; ///< under the banner
    QString salvageable_;                 ///< the book it is offered for
    QStackedWidget* front_ = nullptr;
    FirstStartPage* firstStart_ = nullptr;
    QScrollArea* formRoom_ = nullptr;
    StationForm* stationForm_ = nullptr; ///< made when it is first asked for
    PageSet* pages_ = nullptr;
    IndexTabs* tabs_ = nullptr;
    HelpWindow* help_ = nullptr;
    std::unique_ptr<ClassWindow> classRound_; ///< knows no book, and outlives the one that is open
    QMenu* recentMenu_ = nullptr;
    QAction* undo_ = nullptr;
    QAction* redo_ = nullptr;
    QAction* takeIn_ = nullptr;
    QAction* copyNow_ = nullptr;
    QString settingsProblem_; ///< told once
    QList<QAction*> pageActions_;
};

} // namespace wickbook::ui
