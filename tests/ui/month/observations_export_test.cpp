// SPDX-License-Identifier: GPL-3.0-or-later
// Everything in the book as a table with its metadata, as the month page writes it.
#include "tests/support/open_book.h"
#include "ui/month/observations_export.h"

#include <QDir>
#include <QFile>
#include <gmock/gmock.h>

namespace wickbook::ui {

namespace {

using test::day;

class ObservationsExportCase : public test::SessionCase {
protected:
    void SetUp() override {
        SessionCase::SetUp();
        fill(day(2025, 4, 1), day(2025, 4, 3), {});
    }
    static QByteArray bytesOf(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray{};
    }
};

TEST_F(ObservationsExportCase, BothFilesOrNeither) {
    const QString path = folder_.filePath(QStringLiteral("all.csv"));
    const auto written = exportObservations(*session_, path);
    ASSERT_TRUE(written) << written.error().toStdString();
    EXPECT_EQ(*written, 6);
    EXPECT_TRUE(bytesOf(path).startsWith("time_utc,local_date,hour,"));
    EXPECT_EQ(bytesOf(path).count("\r\n"), 7);
    EXPECT_TRUE(bytesOf(path + QStringLiteral("-metadata.json")).contains("\"url\": \"all.csv\""));

    // Where the metadata can't be written there is no table either.
    const QString half = folder_.filePath(QStringLiteral("half.csv"));
    ASSERT_TRUE(QDir().mkpath(half + QStringLiteral("-metadata.json")));
    const auto refused = exportObservations(*session_, half);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.error().toStdString(),
                ::testing::HasSubstr("half.csv-metadata.json could not be written: "));
    EXPECT_FALSE(QFile::exists(half));
}

TEST_F(ObservationsExportCase, ABookIsNeverWrittenOver) {
    const QString book = session_->path();
    const QByteArray before = bytesOf(book);
    const auto refused = exportObservations(*session_, book);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(),
              QStringLiteral(
                  "%1 is a book or another database, and nothing is written over one. Choose another name.")
                  .arg(QDir::toNativeSeparators(book)));
    EXPECT_EQ(bytesOf(book), before);
    EXPECT_FALSE(QFile::exists(book + QStringLiteral("-metadata.json")));
}

} // namespace

} // namespace wickbook::ui
