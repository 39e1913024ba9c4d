// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/look.h"

#include <QApplication>
#include <QEvent>
#include <QStyle>
#include <QWidget>

namespace wickbook::ui {

namespace {

const char* const kSheet = R"(
QLabel, QCheckBox, QRadioButton, QGroupBox { color: @ink; }
QLabel[soft="true"], QCheckBox[soft="true"] { color: @soft; }
QLabel[wrong="true"] { color: @wrong; }
QLabel[bulb="dry"] { color: @dry; }
QLabel[bulb="wet"] { color: @wet; }
QLineEdit, QPlainTextEdit, QTextEdit, QComboBox, QDateEdit, QAbstractSpinBox {
    background: @sheet; color: @ink; border: 1px solid @soft; border-radius: 4px; padding: 3px 8px;
    selection-background-color: @accent; selection-color: @onAccent; min-height: 24px;
}
QLineEdit[bulb="dry"] { color: @dry; }
QLineEdit[bulb="wet"] { color: @wet; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QComboBox:focus, QDateEdit:focus,
QAbstractSpinBox:focus { border: 2px solid @accent; padding: 2px 7px; }
QLineEdit[problem="true"] { border: 2px solid @wrong; padding: 2px 7px; }
QLineEdit:disabled, QComboBox:disabled { color: @soft; border-color: @rule; }
QCheckBox::indicator { width: 12px; height: 12px; border: 1px solid @soft; border-radius: 3px;
    background: @sheet; }
QCheckBox::indicator:checked { border: 3px solid @sheet; outline: 1px solid @accent; background: @accent;
    width: 8px; height: 8px; }
QCheckBox:focus { color: @accent; text-decoration: underline; }
QListView { background: transparent; color: @ink; border: 2px solid transparent; selection-background-color: @accent;
    selection-color: @onAccent; }
QListView:focus { border: 2px solid @accent; }
QHeaderView { background: @paper; border: none; }
QComboBox::drop-down { border: none; width: 22px; }
QComboBox::down-arrow { image: none; width: 0; height: 0; border-left: 4px solid @sheet;
    border-right: 4px solid @sheet; border-top: 5px solid @soft; }
QComboBox QAbstractItemView { background: @sheet; color: @ink; border: 1px solid @soft;
    selection-background-color: @accent; selection-color: @onAccent; }
QPushButton { outline: none; background: @sheet; color: @ink; border: 1px solid @soft; border-radius: 4px;
    padding: 5px 14px; }
QPushButton:hover { border-color: @accent; }
QPushButton:focus { border: 2px solid @accent; padding: 4px 13px; }
QPushButton:pressed { background: @paper; }
QPushButton:disabled { color: @soft; border-color: @rule; }
QPushButton[primary="true"] { background: @accent; color: @onAccent; border: 1px solid @accent;
    font-weight: bold; padding: 9px 24px; }
QPushButton[primary="true"]:focus { border: 2px solid @ink; padding: 8px 23px; }
QPushButton[primary="true"]:disabled { background: @rule; color: @soft; border-color: @rule; }
QPushButton[door="true"] { text-align: left; padding: 9px 14px; }
QPushButton[door="true"]:focus { padding: 8px 13px; }
QPushButton[quiet="true"] { background: transparent; border: 1px solid transparent; color: @accent;
    padding: 3px 6px; }
QPushButton[quiet="true"]:hover { text-decoration: underline; }
QPushButton[quiet="true"]:focus { border: 2px solid @accent; padding: 2px 5px; }
QPushButton[quiet="true"]:disabled { color: @soft; }
QPushButton[choice="true"] { padding: 5px 10px; min-height: 22px; }
QPushButton[choice="true"]:checked { background: @accent; color: @onAccent; border-color: @accent; }
QPushButton[choice="true"]:focus { border: 2px solid @ink; padding: 4px 9px; }
QPushButton[asked="true"] { border: 2px solid @query; padding: 4px 9px; }
QPushButton[field="true"] { text-align: left; padding: 3px 8px; min-height: 24px; }
QPushButton[field="true"]:focus { padding: 2px 7px; }
QPushButton[field="true"]::menu-indicator { width: 0; }
QFrame[query="true"] { background: @queryPaper; border: 1px solid @queryRule; border-radius: 4px; }
QFrame[query="true"]:focus { border: 2px solid @accent; }
QFrame[query="true"] QLabel, QFrame[query="true"] QWidget { background: transparent; border: none; }
QFrame[query="true"] QPushButton { border: 1px solid transparent; padding: 2px 6px; text-align: left; }
QFrame[query="true"] QPushButton:hover { border: 1px solid @query; }
QFrame[query="true"] QPushButton:focus { border: 2px solid @accent; padding: 1px 5px; }
QWidget[sheet="true"] { background: @sheet; }
QMenuBar { background: @paper; color: @ink; }
QMenuBar::item { background: transparent; padding: 4px 10px; }
QMenuBar::item:selected, QMenu::item:selected { background: @accent; color: @onAccent; }
QMenu { background: @sheet; color: @ink; border: 1px solid @soft; }
QMenu::item { padding: 5px 28px 5px 20px; }
QMenu::item:disabled { color: @soft; }
QMenu::separator { height: 1px; background: @rule; margin: 4px 0; }
QToolTip { background: @sheet; color: @ink; border: 1px solid @soft; padding: 4px; }
QTableView, QTreeView { background: @sheet; color: @ink; border: 1px solid @rule; gridline-color: @rule;
    selection-background-color: @accent; selection-color: @onAccent; }
QTableView:focus, QTreeView:focus { border: 2px solid @accent; }
QTreeView::item { padding: 2px 0; }
QHeaderView::section { background: @paper; color: @soft; border: none; border-bottom: 1px solid @rule;
    padding: 4px 6px; }
QScrollArea { background: transparent; border: none; }
QScrollArea[column="true"] { border: 2px solid transparent; }
QScrollArea[column="true"]:focus { border: 2px solid @accent; }
QProgressBar { background: @sheet; color: @ink; border: 1px solid @soft; border-radius: 4px; }
QProgressBar::chunk { background: @accent; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle { background: @rule; border-radius: 4px; min-height: 28px; min-width: 28px; }
QScrollBar::handle:hover { background: @soft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QTextBrowser { border: none; background: @sheet; }
)";

const char* const kLookName = "wickbook-look";

} // namespace

QString styleSheetOf(const Tokens& tokens) {
    QString sheet = QString::fromLatin1(kSheet);
    // Longer names first: @queryPaper before @query.
    sheet.replace(QLatin1String("@queryPaper"), tokens.queryPaper.name());
    sheet.replace(QLatin1String("@queryRule"), tokens.queryRule.name());
    sheet.replace(QLatin1String("@query"), tokens.query.name());
    sheet.replace(QLatin1String("@onAccent"), tokens.onAccent.name());
    sheet.replace(QLatin1String("@accent"), tokens.accent.name());
    sheet.replace(QLatin1String("@paper"), tokens.paper.name());
    sheet.replace(QLatin1String("@sheet"), tokens.sheet.name());
    sheet.replace(QLatin1String("@ink"), tokens.ink.name());
    sheet.replace(QLatin1String("@soft"), tokens.soft.name());
    sheet.replace(QLatin1String("@rule"), tokens.rule.name());
    sheet.replace(QLatin1String("@dry"), tokens.dry.name());
    sheet.replace(QLatin1String("@wet"), tokens.wet.name());
    sheet.replace(QLatin1String("@wrong"), tokens.wrong.name());
    return sheet;
}

void Look::follow(QWidget& window) {
    if (window.findChild<Look*>(QLatin1String(kLookName), Qt::FindDirectChildrenOnly) == nullptr) {
        new Look(window);
    }
}

Look::Look(QWidget& window) : QObject(&window), window_(window) {
    setObjectName(QLatin1String(kLookName));
    window.installEventFilter(this);
    apply();
}

bool Look::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &window_ && event->type() == QEvent::ApplicationPaletteChange) {
        apply();
    }
    return QObject::eventFilter(watched, event);
}

void Look::apply() {
    const Tokens& tokens = tokensFor(QApplication::palette());
    window_.setPalette(paletteOf(tokens));
    const QString sheet = styleSheetOf(tokens);
    if (window_.styleSheet() != sheet) {
        window_.setStyleSheet(sheet);
    }
}

void refreshLook(QWidget& widget) {
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
    widget.update();
}

} // namespace wickbook::ui
