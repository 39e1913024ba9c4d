// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/copy_words.h"

#include "ui/text/error_words.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFileInfo>

namespace wickbook::ui {

namespace {

struct CopyText {
    Q_DECLARE_TR_FUNCTIONS(CopyText)
};

QString nameOfPath(const std::filesystem::path& path) {
    const std::string name = path.filename().string();
    return QString::fromStdString(name.empty() ? path.string() : name);
}

} // namespace

QString copyReasonWords(store::CopyReason reason) {
    switch (reason) {
    case store::CopyReason::Daily:
        return CopyText::tr("daily");
    case store::CopyReason::ByHand:
        return CopyText::tr("by hand");
    case store::CopyReason::BeforeBringingIn:
        return CopyText::tr("before bringing in");
    case store::CopyReason::BeforeTakingBack:
        return CopyText::tr("before taking back");
    }
    return {};
}

QString copyMomentWords(const QLocale& locale, record::Instant moment) {
    const QDateTime local = QDateTime::fromSecsSinceEpoch(moment.time_since_epoch().count());
    //: day, short month, year and clock time, in Qt's date format
    return locale.toString(local, CopyText::tr("d MMM yyyy, HH:mm"));
}

QString copyLineWords(const QLocale& locale, const store::KeptCopy& copy) {
    return QStringList{copyMomentWords(locale, copy.name.moment), copyReasonWords(copy.name.reason),
                       copy.trouble ? unreadableCopyWords(*copy.trouble)
                                    : readingCountWords(locale, copy.readings)}
        .join(QStringLiteral(" · "));
}

QString copyTroubleWords(const store::StoreError& error, const std::filesystem::path& folder) {
    const QString where = nameOfPath(folder);
    using Kind = store::StoreErrorKind;
    switch (error.kind) {
    case Kind::Damaged:
    case Kind::NotABook:
        // The book itself: a copy is only kept of one that verifies.
        return CopyText::tr("No copy was kept, for the book did not verify; the copies made before stay. %1")
            .arg(storeErrorWords(error));
    case Kind::NoSuchFile:
        return CopyText::tr("No copy was kept: the folder for copies, “%1”, is not there. Plug in the drive "
                            "it lies on, or choose another folder. The copies made before stay.")
            .arg(where);
    case Kind::DiskFull:
        return CopyText::tr("No copy was kept: the disk that holds “%1” is full. Free some space, or choose "
                            "another folder. The copies made before stay.")
            .arg(where);
    case Kind::ReadOnly:
    case Kind::CannotOpen:
        return CopyText::tr("No copy was kept: nothing can be written in “%1”. Make it writable, or choose "
                            "another folder. The copies made before stay. (%2)")
            .arg(where, QString::fromStdString(error.detail));
    case Kind::Busy:
        return CopyText::tr("No copy was kept: another program is writing in the book. It is tried again "
                            "later.");
    default:
        return CopyText::tr("No copy was kept in “%1”: check the drive, or choose another folder. The copies "
                            "made before stay. (%2)")
            .arg(where, QString::fromStdString(error.detail));
    }
}

QString handOnTroubleWords(const store::StoreError& error) {
    if (error.kind == store::StoreErrorKind::ReadOnly || error.kind == store::StoreErrorKind::CannotOpen) {
        return CopyText::tr("No copy was made: “%1” can't be written there. Choose another folder. (%2)")
            .arg(nameOfPath(error.path), QString::fromStdString(error.detail));
    }
    return CopyText::tr("No copy was made. %1").arg(storeErrorWords(error));
}

QString stuckCopyWords(const store::StoreError& error) {
    return CopyText::tr("The old copy “%1” could not be deleted and stays: delete it by hand if it is not "
                        "wanted. (%2)")
        .arg(nameOfPath(error.path), QString::fromStdString(error.detail));
}

QString unreadableCopyWords(const store::StoreError& error) {
    return error.kind == store::StoreErrorKind::Damaged
               ? CopyText::tr("damaged; it is never deleted by itself")
               : CopyText::tr("can't be read (%1)").arg(QString::fromStdString(error.detail));
}

QString copyCountWords(const QLocale& locale, std::int64_t count) {
    return count == 1 ? CopyText::tr("1 copy")
                      : CopyText::tr("%1 copies", nullptr, static_cast<int>(count))
                            .arg(locale.toString(static_cast<qlonglong>(count)));
}

QString readingCountWords(const QLocale& locale, std::int64_t count) {
    return count == 1 ? CopyText::tr("1 reading")
                      : CopyText::tr("%1 readings", nullptr, static_cast<int>(count))
                            .arg(locale.toString(static_cast<qlonglong>(count)));
}

} // namespace wickbook::ui
