// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/entry_draft.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QSaveFile>

namespace wickbook::ui {

namespace {

constexpr int kWriteAfterMilliseconds = 250;
constexpr int kTryAgainAfterMilliseconds = 5000; ///< a full disk, a folder that is gone
/// A draft is a few hundred bytes; anything longer is not ours.
constexpr qint64 kLongestDraft = 64 * 1024;

struct NamedText {
    const char* name;
    QString EntryText::*field;
};
constexpr NamedText kTexts[] = {
    {"clock", &EntryText::clock},     {"dry", &EntryText::dry},           {"wet", &EntryText::wet},
    {"wick", &EntryText::wick},       {"wickCare", &EntryText::wickCare}, {"pressure", &EntryText::pressure},
    {"weather", &EntryText::weather}, {"wind", &EntryText::wind},         {"maximum", &EntryText::maximum},
    {"minimum", &EntryText::minimum}, {"observer", &EntryText::observer}, {"note", &EntryText::note},
};

QString fileName(const QString& book) {
    const QByteArray digest =
        QCryptographicHash::hash(QFileInfo(book).absoluteFilePath().toUtf8(), QCryptographicHash::Sha256);
    return QStringLiteral("entry-%1.json").arg(QString::fromLatin1(digest.toHex().left(24)));
}

} // namespace

QJsonObject EntryText::toJson() const {
    QJsonObject object;
    for (const NamedText& text : kTexts) {
        object.insert(QLatin1String(text.name), this->*text.field);
    }
    object.insert(QLatin1String("date"), date.toString(Qt::ISODate));
    object.insert(QLatin1String("hour"), hourMinutes);
    object.insert(QLatin1String("secondOfDouble"), secondOfDouble);
    if (!repeats.isEmpty()) {
        QJsonArray rows;
        for (const RepeatText& row : repeats) {
            rows.append(QJsonArray{row.wet, row.dry});
        }
        object.insert(QLatin1String("repeats"), rows);
    }
    if (taken) {
        object.insert(QLatin1String("taken"), QJsonObject{{QLatin1String("paper"), taken->paperSaysSo},
                                                          {QLatin1String("reason"), taken->reason},
                                                          {QLatin1String("dry"), taken->dryBefore},
                                                          {QLatin1String("wet"), taken->wetBefore},
                                                          {QLatin1String("wick"), taken->wickBefore}});
    }
    return object;
}

EntryText EntryText::fromJson(const QJsonObject& object) {
    EntryText entry;
    for (const NamedText& text : kTexts) {
        entry.*text.field = object.value(QLatin1String(text.name)).toString();
    }
    entry.date = QDate::fromString(object.value(QLatin1String("date")).toString(), Qt::ISODate);
    entry.hourMinutes = object.value(QLatin1String("hour")).toInt(-1);
    entry.secondOfDouble = object.value(QLatin1String("secondOfDouble")).toBool();
    for (const QJsonValue& row : object.value(QLatin1String("repeats")).toArray()) {
        entry.repeats.append({row.toArray().at(0).toString(), row.toArray().at(1).toString()});
    }
    if (const QJsonObject cause = object.value(QLatin1String("taken")).toObject(); !cause.isEmpty()) {
        entry.taken = TakenCause{
            cause.value(QLatin1String("paper")).toBool(true), cause.value(QLatin1String("reason")).toString(),
            cause.value(QLatin1String("dry")).toString(), cause.value(QLatin1String("wet")).toString(),
            cause.value(QLatin1String("wick")).toString()};
    }
    return entry;
}

EntryDraft::EntryDraft(const QString& folder, const QString& book, QObject* parent)
    : QObject(parent), path_(folder.isEmpty() ? QString{} : QDir(folder).filePath(fileName(book))) {
    timer_.setSingleShot(true);
    connect(&timer_, &QTimer::timeout, this, &EntryDraft::flush);
}

EntryDraft::~EntryDraft() {
    flush();
}

std::optional<EntryText> EntryDraft::read() const {
    QFile file(path_);
    if (path_.isEmpty() || !file.open(QIODevice::ReadOnly) || file.size() > kLongestDraft) {
        return std::nullopt;
    }
    const QJsonDocument document = QJsonDocument::fromJson(file.readAll());
    if (!document.isObject()) {
        return std::nullopt;
    }
    const EntryText entry = EntryText::fromJson(document.object());
    return entry.untouched() || !entry.date.isValid() ? std::nullopt : std::optional{entry};
}

void EntryDraft::keep(const EntryText& entry) {
    waiting_ = entry;
    // Not restarted by the next key: at steady typing the file still follows every quarter of a second.
    if (!timer_.isActive()) {
        timer_.start(kWriteAfterMilliseconds);
    }
}

void EntryDraft::flush() {
    timer_.stop();
    if (!waiting_ || path_.isEmpty()) {
        return;
    }
    QDir().mkpath(QFileInfo(path_).absolutePath());
    QSaveFile file(path_);
    bool written = false;
    if (file.open(QIODevice::WriteOnly)) {
        const QByteArray text = QJsonDocument(waiting_->toJson()).toJson(QJsonDocument::Compact);
        written = file.write(text) == text.size() && file.commit();
    }
    if (written) {
        waiting_.reset();
    } else {
        timer_.start(kTryAgainAfterMilliseconds); // the draft before stays meanwhile
    }
}

void EntryDraft::drop() {
    timer_.stop();
    waiting_.reset();
    if (!path_.isEmpty()) {
        QFile::remove(path_);
    }
}

} // namespace wickbook::ui
