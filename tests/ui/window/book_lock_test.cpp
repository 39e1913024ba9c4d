// SPDX-License-Identifier: GPL-3.0-or-later
// Who has a book open, and how another window is called forward.
#include "ui/window/book_lock.h"
#include "ui/window/book_taken.h"
#include "ui/window/raise_line.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSignalSpy>
#include <QSysInfo>
#include <QTemporaryDir>
#include <gtest/gtest.h>

using namespace wickbook::ui;

namespace {

class BookLockTest : public ::testing::Test {
protected:
    QTemporaryDir folder_;
    QString book_ = folder_.filePath(QStringLiteral("hill.wickbook"));
    void SetUp() override {
        QFile file(book_);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    }
};

} // namespace

TEST_F(BookLockTest, OneWindowHasABookAndTheNextIsToldWhich) {
    const BookLock first(book_);
    EXPECT_FALSE(first.heldByAnother());
    const BookLock second(book_);
    ASSERT_TRUE(second.heldByAnother());
    EXPECT_EQ(second.heldByAnother()->process, QCoreApplication::applicationPid());
    EXPECT_TRUE(second.heldByAnother()->onThisComputer);
}

TEST_F(BookLockTest, IsGoneWithItsWindow) {
    { const BookLock first(book_); }
    EXPECT_FALSE(QFile::exists(BookLock::fileFor(book_)));
    EXPECT_FALSE(BookLock(book_).heldByAnother());
}

TEST_F(BookLockTest, IsOneForABookAndALinkToIt) {
    const QString link = folder_.filePath(QStringLiteral("link.wickbook"));
    ASSERT_TRUE(QFile::link(book_, link));
    const BookLock first(book_);
    EXPECT_TRUE(BookLock(link).heldByAnother());
}

TEST_F(BookLockTest, HoldsNobodyOffAFolderThatCantBeWritten) {
    const BookLock lock(QStringLiteral("/proc/hill.wickbook"));
    EXPECT_FALSE(lock.heldByAnother());
}

TEST_F(BookLockTest, OfAnotherComputerIsNamedAndNotCalledForward) {
    // Lines of the lock file: process, program, computer (QLockFile, Qt 6).
    QFile file(BookLock::fileFor(book_));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("4242\nwickbook\nhut-on-the-hill\n\n\n");
    file.close();
    const BookLock lock(book_);
    ASSERT_TRUE(lock.heldByAnother());
    EXPECT_FALSE(lock.heldByAnother()->onThisComputer);
    EXPECT_FALSE(broughtForward(lock));
    EXPECT_EQ(onlyToReadWords(book_, *lock.heldByAnother()),
              QStringLiteral(
                  "hill.wickbook is open on the computer hut-on-the-hill and can only be read here: close "
                  "it there, then open it here again."));
}

TEST(ARaiseLine, IsHeardByTheProcessThatListens) {
    RaiseLine line;
    QSignalSpy calls(&line, &RaiseLine::called);
    ASSERT_TRUE(RaiseLine::call(QCoreApplication::applicationPid()));
    ASSERT_TRUE(calls.wait(5000));
    EXPECT_EQ(calls.size(), 1);
}

TEST(ARaiseLine, ToAProcessThatDoesNotListenIsFoundOut) {
    EXPECT_FALSE(RaiseLine::call(1));
    { const RaiseLine gone; }
    EXPECT_FALSE(RaiseLine::call(QCoreApplication::applicationPid()));
}
