// SPDX-License-Identifier: GPL-3.0-or-later
// Copies that keep themselves while a book is open: real files, real threads, only the hour is set.
#include "tests/support/open_book.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

namespace {

using namespace wickbook;
using test::day;

class CopyKeeperTest : public ::testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(book_.isOpen()); }
    [[nodiscard]] ui::CopyKeeper& keeper() { return book_.session().copies(); }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !keeper().doing(); }, 20000));
    }
    [[nodiscard]] QStringList files() const {
        return QDir(QDir(book_.folder()).filePath(QStringLiteral("hill copies"))).entryList(QDir::Files);
    }
    void later(std::chrono::hours hours) { book_.clock()->set(book_.clock()->now() + hours); }

    test::OpenBook book_;
};

TEST_F(CopyKeeperTest, KeepsOneADayAndOnlyWhenTheBookHasChanged) {
    EXPECT_FALSE(keeper().isKeeping());
    EXPECT_TRUE(files().isEmpty()) << "nothing before it is told to begin";
    book_.keep(day(2026, 11, 21), 9, {120, 1}, {110, 1});
    keeper().begin({});
    EXPECT_TRUE(keeper().doing()) << "beside the window, which does not wait";
    settle();
    ASSERT_EQ(files(), QStringList{QStringLiteral("hill copy 20261122T085200Z daily.wickbook")});
    ASSERT_EQ(keeper().copies().size(), 1U);
    EXPECT_EQ(keeper().copies().front().copy.readings, 1);
    EXPECT_EQ(keeper().copies().front().sound, true);
    EXPECT_TRUE(keeper().trouble().isEmpty()) << keeper().trouble().toStdString();

    book_.keep(day(2026, 11, 21), 21, {121, 1}, {111, 1});
    keeper().keepIfDue();
    settle();
    EXPECT_EQ(files().size(), 1) << "one a day";
    later(std::chrono::hours{24});
    keeper().keepIfDue();
    settle();
    EXPECT_EQ(files().size(), 2);
    later(std::chrono::hours{24});
    keeper().keepIfDue();
    settle();
    EXPECT_EQ(files().size(), 2) << "nothing new to keep";
    keeper().keepNow();
    settle();
    EXPECT_EQ(files().size(), 3) << "whoever asks for one gets one";
}

TEST_F(CopyKeeperTest, SaysWhatIsWrongAndTriesAgain) {
    const QString gone = QDir(book_.folder()).filePath(QStringLiteral("stick"));
    keeper().begin({true, gone});
    settle();
    EXPECT_TRUE(keeper().trouble().contains(QStringLiteral("“stick”, is not there. Plug in the drive")))
        << keeper().trouble().toStdString();
    EXPECT_FALSE(QFile::exists(gone)) << "no folder is made where a drive should be";
    keeper().look();
    settle();
    EXPECT_FALSE(keeper().trouble().isEmpty()) << "looking mends nothing";
    ASSERT_TRUE(QDir().mkdir(gone));
    keeper().keepIfDue();
    settle();
    EXPECT_TRUE(keeper().trouble().isEmpty()) << keeper().trouble().toStdString();
    EXPECT_EQ(QDir(gone).entryList(QDir::Files).size(), 1);
}

TEST_F(CopyKeeperTest, CanBeSwitchedOffAndElsewhere) {
    keeper().begin({false, {}});
    settle();
    EXPECT_TRUE(files().isEmpty());
    QSignalSpy chosen(&keeper(), &ui::CopyKeeper::choiceChanged);
    const QString other = QDir(book_.folder()).filePath(QStringLiteral("elsewhere"));
    ASSERT_TRUE(QDir().mkdir(other));
    keeper().choose({true, other});
    settle();
    EXPECT_EQ(chosen.count(), 1);
    EXPECT_TRUE(files().isEmpty());
    EXPECT_EQ(QDir(other).entryList(QDir::Files).size(), 1);
}

TEST_F(CopyKeeperTest, FindsADamagedCopyAndOneThatWentItsOwnWay) {
    book_.keep(day(2026, 11, 21), 9, {120, 1}, {110, 1});
    keeper().begin({});
    settle();
    // A later copy that holds a reading which the book does not hold.
    {
        QDir shelf(QDir(book_.folder()).filePath(QStringLiteral("hill copies")));
        const QString branch = shelf.filePath(QStringLiteral("hill copy 20261122T100000Z daily.wickbook"));
        ASSERT_TRUE(QFile::copy(shelf.filePath(files().front()), branch));
        auto other = store::Book::open(branch.toStdString());
        ASSERT_TRUE(other);
        store::ObservationChange change;
        record::placeInTime(change.values, book_.session().station(),
                            date::sys_days{date::year{2026} / 11 / 20} + std::chrono::hours{9});
        ASSERT_TRUE(other->append(change));
        const QString damaged = shelf.filePath(QStringLiteral("hill copy 20261122T110000Z daily.wickbook"));
        ASSERT_TRUE(QFile::copy(shelf.filePath(files().front()), damaged));
        QFile file(damaged);
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        QByteArray bytes = file.readAll();
        const auto where = bytes.indexOf("\"zone\":\"Europe/London\"");
        ASSERT_GT(where, 0);
        file.seek(where + 8);
        file.write("Africa");
    }
    keeper().look();
    settle();
    ASSERT_EQ(keeper().copies().size(), 3U);
    std::vector<std::filesystem::path> all;
    for (const ui::ShownCopy& copy : keeper().copies()) {
        all.push_back(copy.copy.path);
    }
    keeper().verify(all);
    settle();
    EXPECT_EQ(keeper().copies()[0].sound, false) << "11 h: its bytes are not as they were written";
    EXPECT_TRUE(keeper().copies()[1].ahead);
    EXPECT_EQ(keeper().copies()[1].sound, true);
    EXPECT_FALSE(keeper().copies()[2].ahead);
    EXPECT_EQ(keeper().copies()[2].sound, true);
}

TEST_F(CopyKeeperTest, IsNotWaitedForByAnEntry) {
    // A copy is asked for and readings are saved at once, each while the copying may be under way.
    keeper().begin({});
    for (unsigned n = 1; n <= 20; ++n) {
        book_.keep(day(2026, 10, n), 9, {120, 1}, {110, 1});
    }
    settle();
    EXPECT_EQ(book_.session().book().observationCount().value(), 20);
    ASSERT_EQ(keeper().copies().size(), 1U);
    EXPECT_LE(keeper().copies().front().copy.readings, 20);
    EXPECT_EQ(keeper().copies().front().sound, true);
}

} // namespace
