// SPDX-License-Identifier: GPL-3.0-or-later
// What the window does by itself with copies, and what it remembers: over real books and a real settings
// file.
#include "tests/support/open_book.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/prompts.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QTest>

namespace {

using namespace wickbook;

class NoPrompts final : public ui::Prompts {
public:
    QString newBookPath(QWidget*, const QString&, const QString&) override { return {}; }
    QString bookToOpen(QWidget*) override { return {}; }
};

class WindowCopies : public ::testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(ui::Session::create(
            book(), record::factsOf(test::hillStation(), [] { return record::Uuid::random(); }), {"A", {}},
            clock_));
    }
    void open() {
        window_ = std::make_unique<ui::MainWindow>(settings_, prompts_, clock_);
        window_->show();
        ASSERT_TRUE(window_->openBook(book()));
        settle();
    }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !keeper().doing(); }, 20000));
    }
    [[nodiscard]] ui::CopyKeeper& keeper() { return window_->pages()->session().copies(); }
    [[nodiscard]] QString book() const { return folder_.filePath(QStringLiteral("hill.wickbook")); }
    [[nodiscard]] QString ini() const { return folder_.filePath(QStringLiteral("window.ini")); }
    [[nodiscard]] QLabel& banner() const {
        return *window_->findChild<QLabel*>(QStringLiteral("readOnlyBanner"));
    }
    [[nodiscard]] qsizetype copies(const char* folder) const {
        return QDir(folder_.filePath(QLatin1String(folder))).entryList(QDir::Files).size();
    }

    QTemporaryDir folder_;
    std::shared_ptr<test::SettableClock> clock_ = std::make_shared<test::SettableClock>();
    NoPrompts prompts_;
    ui::WindowSettings settings_{folder_.filePath(QStringLiteral("window.ini"))};
    std::unique_ptr<ui::MainWindow> window_;
};

TEST_F(WindowCopies, AreKeptWhenABookIsOpenedAndNotOfTheSample) {
    open();
    EXPECT_EQ(copies("hill copies"), 1);
    EXPECT_FALSE(banner().isVisible());
    window_->openSample();
    EXPECT_FALSE(keeper().isKeeping());
}

TEST_F(WindowCopies, GoWhereThePersonSaidNextTimeToo) {
    ASSERT_TRUE(QDir(folder_.path()).mkdir(QStringLiteral("drive")));
    open();
    keeper().choose({false, folder_.filePath(QStringLiteral("drive"))});
    settle();
    window_.reset();
    open();
    EXPECT_FALSE(keeper().choice().daily);
    keeper().choose({true, folder_.filePath(QStringLiteral("drive"))});
    settle();
    EXPECT_EQ(copies("drive"), 1);
}

TEST_F(WindowCopies, ThatFailAreToldInTheBannerUntilTheyAreKept) {
    const QString drive = folder_.filePath(QStringLiteral("drive"));
    settings_.setCopyChoice(book(), {true, drive});
    open();
    EXPECT_TRUE(banner().isVisible());
    EXPECT_TRUE(banner().text().contains(QStringLiteral("Plug in the drive")))
        << banner().text().toStdString();
    ASSERT_TRUE(QDir().mkdir(drive));
    keeper().keepIfDue();
    settle();
    EXPECT_FALSE(banner().isVisible());
    EXPECT_EQ(copies("drive"), 1);
}

TEST_F(WindowCopies, InitialsAreRememberedAtOnce) {
    open();
    window_->pages()->session().setObserver(QStringLiteral("MK"));
    // Read by another that knows nothing of this window, which still stands open.
    EXPECT_EQ(ui::WindowSettings(ini()).observer(), QStringLiteral("MK"));
}

TEST_F(WindowCopies, ASettingsFileOfGarbageIsPutAsideWithASentence) {
    QByteArray garbage;
    for (int i = 0; i < 4000; ++i) {
        garbage.append(static_cast<char>((i * 7919 + 13) % 251));
    }
    for (const QByteArray& content : {garbage, QByteArray("[window\nnothing here"), QByteArray(3000, '\0')}) {
        QFile file(ini());
        ASSERT_TRUE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
        file.write(content);
        file.close();
        ui::WindowSettings settings(ini());
        ui::MainWindow window(settings, prompts_, clock_);
        window.show();
        QStringList shown;
        for (const QLabel* label : window.findChildren<QLabel*>()) {
            shown << label->text();
        }
        EXPECT_TRUE(
            shown.join(QLatin1Char('\n')).contains(QStringLiteral("could not be read and was put aside")))
            << content.left(20).toStdString();
        QFile aside(ini() + QStringLiteral(".unreadable"));
        ASSERT_TRUE(aside.open(QIODevice::ReadOnly));
        EXPECT_EQ(aside.readAll(), content);
        EXPECT_TRUE(settings.recentBooks().isEmpty());
        ASSERT_TRUE(window.openBook(book()));
        EXPECT_EQ(ui::WindowSettings(ini()).lastBook(), book());
    }
}

TEST_F(WindowCopies, ASettingsFileIsWrittenWholeOrNotAtAll) {
    settings_.setObserver(QStringLiteral("MK"));
    QFile file(ini());
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray before = file.readAll();
    // The old file stays one file under one handle: a new one has taken its name, as a rename does it.
    settings_.setObserver(QStringLiteral("AB"));
    file.seek(0);
    EXPECT_EQ(file.readAll(), before) << "written over in place";
    EXPECT_EQ(ui::WindowSettings(ini()).observer(), QStringLiteral("AB"));
}

} // namespace
