// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/diary_words.h"

#include <QCoreApplication>

namespace wickbook::ui {

namespace {
struct DiaryText {
    Q_DECLARE_TR_FUNCTIONS(DiaryText)
};
} // namespace

QString diaryKindWords(record::DiaryKind kind) {
    switch (kind) {
    case record::DiaryKind::Washed:
        return DiaryText::tr("screen washed");
    case record::DiaryKind::Painted:
        return DiaryText::tr("screen painted");
    case record::DiaryKind::SnowChoked:
        return DiaryText::tr("louvres choked with snow");
    case record::DiaryKind::HedgeGrown:
        return DiaryText::tr("hedge or trees grown");
    case record::DiaryKind::HedgeCut:
        return DiaryText::tr("hedge or trees cut");
    case record::DiaryKind::Moved:
        return DiaryText::tr("screen moved");
    case record::DiaryKind::Photograph:
        return DiaryText::tr("photograph taken");
    case record::DiaryKind::NewWick:
        return DiaryText::tr("new wick");
    case record::DiaryKind::Water:
        return DiaryText::tr("reservoir cleaned and filled");
    case record::DiaryKind::Other:
        return DiaryText::tr("other");
    }
    return {};
}

} // namespace wickbook::ui
