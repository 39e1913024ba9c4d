// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/gallery/looked_at.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFontMetrics>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QPushButton>
#include <QRadioButton>
#include <QRegularExpression>
#include <QTextDocument>

namespace wickbook::test {

namespace {

/// A pixel or two are the rounding of fonts.
constexpr int kTolerance = 2;

QString plain(QString text) {
    return text.remove(QLatin1Char('&'));
}

QString told(const QWidget& widget, const QString& text, int has, int needs) {
    return QStringLiteral("%1 “%2” (%3): %4 of %5 px")
        .arg(QLatin1String(widget.metaObject()->className()), text.left(60), widget.objectName())
        .arg(has)
        .arg(needs);
}

void lookAtLabel(const QLabel& label, QStringList& found) {
    if (label.text().isEmpty() || !label.pixmap(Qt::ReturnByValue).isNull()) {
        return;
    }
    const int width = label.contentsRect().width();
    if (label.wordWrap()) {
        const int needs = label.heightForWidth(label.width());
        if (needs > label.height() + kTolerance) {
            found << told(label, label.text(), label.height(), needs);
        }
        return;
    }
    const int needs = label.sizeHint().width() - (label.width() - width);
    if (needs > width + kTolerance) {
        found << told(label, label.text(), width, needs);
    }
}

void lookAtButton(const QAbstractButton& button, QStringList& found) {
    if (button.text().isEmpty()) {
        return;
    }
    const int needs = button.fontMetrics().size(Qt::TextShowMnemonic, button.text()).width();
    // A push button has a frame and room round its words.
    const int round = qobject_cast<const QPushButton*>(&button) != nullptr ? 14 : 4;
    if (needs > button.width() - round + kTolerance) {
        found << told(button, button.text(), button.width() - round, needs);
    }
}

void lookAtHead(const QHeaderView& head, QStringList& found) {
    if (head.orientation() != Qt::Horizontal || head.model() == nullptr) {
        return;
    }
    for (int at = 0; at < head.count(); ++at) {
        const QString text = head.model()->headerData(at, Qt::Horizontal).toString();
        if (head.isSectionHidden(at) || text.isEmpty()) {
            continue;
        }
        int needs = 0;
        for (const QString& line : text.split(QLatin1Char('\n'))) {
            needs = std::max(needs, head.fontMetrics().horizontalAdvance(line));
        }
        if (needs > head.sectionSize(at) - 10) {
            found << told(head, text, head.sectionSize(at), needs);
        }
    }
}

/// Numbers, units, keys, names of formats, dates as the locale has them, paths, and what the invented
/// observers wrote.
bool isNobodysWords(QString text) {
    const auto removeAll = [&text](const QRegularExpression& what) {
        for (qsizetype before = -1; before != text.size();) { // one text stands within another
            before = text.size();
            text.remove(what);
        }
    };
    // A text may be cut where a key stands behind its words.
    static const QRegularExpression translated(QStringLiteral("⟦[^⟦⟧]*(⟧|$)"));
    static const QRegularExpression paths(QStringLiteral("\\S*/sample station copies|\\S*/\\S*"));
    static const QRegularExpression dates(
        QStringLiteral("\\b(January|February|March|April|May|June|July|August|September|October|November|"
                       "December|Jan|Feb|Apr|Jun|"
                       "Jul|Aug|Sep|Oct|Nov|Dec|Monday|Tuesday|Wednesday|Thursday|Friday|Saturday|Sunday|Mon|"
                       "Tue|Wed|Thu|Fri|Sat|"
                       "Sun)\\b"));
    static const QRegularExpression observers(QStringLiteral(
        "Louvred screen 1.25 m above short grass; hedge 2 m high 12 m to the west\\.|"
        "Hedge cut back to 1.2 m; screen washed and painted\\.|New wick\\.|spirit|certificate"));
    static const QRegularExpression same(
        QStringLiteral("Quillmere|invented|Wickbook|sample "
                       "station|wickbook|A4|A5|Letter|PDF|CSV|RH|UTC|hPa|Enter|Ctrl|Shift|Alt|Esc|"
                       "F\\d|Space|English|Deutsch|Français|Min|Max|AM|PM|QT-\\w+|[A-Z]{1,3}-?\\d+"));
    for (const auto* what : {&translated, &paths, &dates, &observers, &same}) {
        removeAll(*what);
    }
    static const QRegularExpression twoLetters(QStringLiteral("\\p{L}{3,}"));
    return !twoLetters.match(text).hasMatch();
}

void lookAtText(const QWidget& widget, const QString& text, QStringList& found) {
    QString bare = text;
    if (Qt::mightBeRichText(bare)) {
        QTextDocument document;
        document.setHtml(bare);
        bare = document.toPlainText();
    }
    if (!isNobodysWords(bare)) {
        found << QStringLiteral("%1 (%2): “%3”")
                     .arg(QLatin1String(widget.metaObject()->className()), widget.objectName(),
                          text.left(100));
    }
}

} // namespace

QStringList clippedTexts(const QWidget& window) {
    QStringList found;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisibleTo(&window)) {
            continue;
        }
        if (const auto* label = qobject_cast<const QLabel*>(widget)) {
            lookAtLabel(*label, found);
        } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
            lookAtButton(*button, found);
        } else if (const auto* head = qobject_cast<const QHeaderView*>(widget)) {
            lookAtHead(*head, found);
        } else if (const auto* choice = qobject_cast<const QComboBox*>(widget)) {
            const int needs = choice->fontMetrics().horizontalAdvance(choice->currentText());
            if (needs > choice->width() - 24 + kTolerance && !choice->isEditable()) {
                found << told(*choice, choice->currentText(), choice->width() - 24, needs);
            }
        } else if (const auto* field = qobject_cast<const QLineEdit*>(widget)) {
            const int needs = field->fontMetrics().horizontalAdvance(field->placeholderText());
            if (field->text().isEmpty() && needs > field->width() - 12 + kTolerance) {
                found << told(*field, field->placeholderText(), field->width() - 12, needs);
            }
        }
    }
    return found;
}

QStringList untranslatedTexts(const QWidget& window) {
    QStringList found;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        for (const QAction* action : widget->actions()) {
            if (!action->text().isEmpty()) {
                lookAtText(*widget, plain(action->text()), found);
            }
        }
        lookAtText(*widget, widget->toolTip(), found);
        lookAtText(*widget, widget->accessibleName(), found);
        if (const auto* label = qobject_cast<const QLabel*>(widget)) {
            lookAtText(*widget, plain(label->text()), found);
        } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
            lookAtText(*widget, plain(button->text()), found);
        } else if (const auto* field = qobject_cast<const QLineEdit*>(widget)) {
            lookAtText(*widget, field->placeholderText(), found);
        } else if (const auto* choice = qobject_cast<const QComboBox*>(widget)) {
            for (int at = 0; at < choice->count(); ++at) {
                lookAtText(*widget, choice->itemText(at), found);
            }
        } else if (const auto* head = qobject_cast<const QHeaderView*>(widget)) {
            for (int at = 0; head->model() != nullptr && at < head->count(); ++at) {
                lookAtText(*widget, head->model()->headerData(at, head->orientation()).toString(), found);
            }
        }
    }
    found.removeDuplicates();
    return found;
}

QStringList unseenFocus(QWidget& window) {
    QStringList found;
    QApplication::setActiveWindow(&window);
    const QPointer<QWidget> before = window.focusWidget();
    // What is waited for may make parts of a page anew.
    const QList<QWidget*> all = window.findChildren<QWidget*>();
    for (const QPointer<QWidget>& widget : QList<QPointer<QWidget>>(all.begin(), all.end())) {
        if (!widget || !widget->isVisibleTo(&window) || !widget->isEnabled() ||
            !(widget->focusPolicy() & Qt::TabFocus) || widget->focusProxy() != nullptr ||
            widget->window() != &window || widget->visibleRegion().isEmpty()) {
            continue;
        }
        widget->clearFocus();
        window.setFocus(Qt::OtherFocusReason);
        QCoreApplication::processEvents();
        if (!widget) {
            continue;
        }
        const QImage without = widget->grab().toImage();
        widget->setFocus(Qt::TabFocusReason);
        QCoreApplication::processEvents();
        if (widget && widget->hasFocus() && widget->grab().toImage() == without) {
            found << QStringLiteral("%1 “%2” (%3)")
                         .arg(QLatin1String(widget->metaObject()->className()), widget->accessibleName(),
                              widget->objectName());
        }
    }
    if (before) {
        before->setFocus(Qt::OtherFocusReason);
    }
    return found;
}

} // namespace wickbook::test
