// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/missing_reasons.h"

#include <QCoreApplication>

namespace wickbook::ui {

QStringList missingReasons() {
    return {QStringLiteral("away"), QStringLiteral("ill"), QStringLiteral("wick dry"),
            QStringLiteral("broken"), QStringLiteral("forgotten")};
}

QString missingReasonWords(const QString& reason) {
    const char* const kWords[] = {QT_TRANSLATE_NOOP("missing", "away"), QT_TRANSLATE_NOOP("missing", "ill"),
                                  QT_TRANSLATE_NOOP("missing", "wick dry"),
                                  QT_TRANSLATE_NOOP("missing", "broken"),
                                  QT_TRANSLATE_NOOP("missing", "forgotten")};
    const auto place = missingReasons().indexOf(reason);
    return place < 0 ? reason : QCoreApplication::translate("missing", kWords[place]);
}

QString missingReasonFromWords(const QString& words) {
    const QString plain = words.simplified();
    for (const QString& reason : missingReasons()) {
        if (plain.compare(missingReasonWords(reason), Qt::CaseInsensitive) == 0) {
            return reason;
        }
    }
    return plain;
}

} // namespace wickbook::ui
