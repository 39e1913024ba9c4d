// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gallery/pseudo_language.h"

#include <QRegularExpression>

namespace wickbook::test {

namespace {

bool isOurs(const char* context) {
    // The toolkit's own classes begin with Q and a capital; ours never do, but for QObject and the query
    // mark.
    const QString name = QString::fromLatin1(context);
    return !(name.size() > 1 && name[0] == QLatin1Char('Q') && name[1].isUpper()) ||
           name == QLatin1String("QObject");
}

/// Date formats, file filters and markup must stay what they are to mean anything.
bool isForm(const QString& text) {
    static const QRegularExpression date(QStringLiteral("^[dMyHhms ,.:/]+$"));
    return date.match(text).hasMatch() || text.contains(QStringLiteral("(*")) ||
           QRegularExpression(QStringLiteral("<[a-z/]")).match(text).hasMatch();
}

QString accented(QString text) {
    static const QHash<QChar, QChar> letters{{u'a', u'á'}, {u'e', u'é'}, {u'i', u'í'}, {u'o', u'ó'},
                                             {u'u', u'ú'}, {u'A', u'Á'}, {u'E', u'É'}, {u'I', u'Í'},
                                             {u'O', u'Ó'}, {u'U', u'Ú'}};
    bool afterMark = false;
    for (QChar& letter : text) {
        if (!afterMark) { // neither an accelerator nor a number's letter
            letter = letters.value(letter, letter);
        }
        afterMark = letter == QLatin1Char('&') || letter == QLatin1Char('%');
    }
    return text;
}

} // namespace

PseudoLanguage::PseudoLanguage(const QString& known) : hasKnown_(known_.load(known)) {}

QString PseudoLanguage::translate(const char* context, const char* source, const char* disambiguation,
                                  int n) const {
    if (!isOurs(context) || source == nullptr || *source == '\0') {
        return {};
    }
    if (hasKnown_ && known_.translate(context, source, disambiguation, n).isEmpty()) {
        unknown_.insert(QStringLiteral("%1: %2").arg(QLatin1String(context), QString::fromUtf8(source)));
    }
    const QString text = QString::fromUtf8(source);
    if (isForm(text)) {
        return text;
    }
    const auto more = std::max<qsizetype>(1, text.size() * 3 / 10);
    return QChar(0x27E6) + accented(text) + QString(more, QLatin1Char('~')) + QChar(0x27E7);
}

QStringList PseudoLanguage::unknown() const {
    QStringList all(unknown_.begin(), unknown_.end());
    all.sort();
    return all;
}

} // namespace wickbook::test
