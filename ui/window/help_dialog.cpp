// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_dialog.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/term_words.h"

#include <QDialogButtonBox>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

struct Part {
    const char* anchor;
    QString title;
    QStringList paragraphs;
};

QList<Part> parts() {
    const auto t = [](const char* text) { return HelpDialog::tr(text); };
    return {
        {"observe",
         t("Observe"),
         {t("The page offers the hour nearest to now. Type the dry bulb, Enter, the wet bulb, Enter: the "
            "reading "
            "is saved. 16, 16.4 and 16,4 are all taken; a plain hyphen is a minus sign; < stands for a "
            "column "
            "that has gone into the bulb."),
          t("W and I say whether the wick is wet or frozen; it must be said when the wet bulb is near 0 °C "
            "or "
            "below. T notes that the wick was wetted, N that a new one was put on. ? shows how to tell water "
            "from ice."),
          t("R opens a row for each whirl, wet bulb first: when two successive wet bulbs agree, the lowest "
            "of "
            "them with its own dry bulb is the reading, and all rows are kept with it. B shows the beat for "
            "a whirled instrument: how many turns a second its arm needs."),
          t("Show the working opens the equation with this reading's numbers, and beside it the station's "
            "table with the cell marked, to copy, to print, or to keep as a PDF."),
          t("In a drawn thermometer the arrow keys move the column by one step, Page Up and Page Down by "
            "ten."),
          t("The margin speaks once a field is left. 1 to 3 take a likely cause, Enter keeps the reading as "
            "read. "
            "Nothing is thrown away: a doubtful value is saved and marked."),
          t("Ctrl+Z takes the last act back, Ctrl+Shift+Z does it again. An unfinished entry is there again "
            "at "
            "the next start.")}},
        {"register",
         t("Register"),
         {t("A line for every hour the station promised. Enter revises a line and asks why; every earlier "
            "writing stays in its history. An estimate is marked as one there."),
          t("With the paper in one hand: Space ticks the line as read back and goes on to the next, "
            "Shift+Space "
            "takes the tick off, P names the book and page. A tick goes when what was read changes."),
          t("Shift with the arrow keys marks several lines: S, D and E judge them, Delete withdraws them, V "
            "moves them to the hour, date or month they belong to, each as one step of undo. What can't go "
            "is "
            "told before anything moves."),
          t("Ctrl+Shift+F finds a word, a number or a date in all years; F3 finds the next, Shift+F3 the one "
            "before, Esc stops. Ctrl+F shows only the month's lines that hold a word, Ctrl+C copies the "
            "lines "
            "shown as a table.")}},
        {"month",
         t("Month"),
         {t("Humidity and dew point over weeks, the month's numbers, the queries still open, and the monthly "
            "return as files.")}},
        {"instruments",
         t("Instruments"),
         {t("What hangs in the screen now, and below it lists of what holds from when and of what was done. "
            "Insert "
            "adds, Enter changes, Delete takes back, Ctrl+Z undoes."),
          t("A correction or a coefficient that comes late holds from its own date. Before it is kept you "
            "see the months "
            "it changes, before and after; what was read stays."),
          t("Both bulbs in one bath: without wick, first in slush of crushed ice, then in stirred water. The "
            "ice point "
            "tells each thermometer's own error; a difference elsewhere does not say which of them errs."),
          t("Beside another instrument: its readings, typed or from a file, find the station's within five "
            "minutes. They "
            "say how far the station lies off, and give its own coefficient where thirty pairs with three "
            "degrees of "
            "depression or more are enough for it.")}},
        {"station",
         t("Station"),
         {t("Where the station stood and when it read. When it moves or its hours change, put in the date "
            "from "
            "which that holds; what went before stays as it was."),
          t("Copies of the book keep themselves, on every day the book has changed, and old ones give way to "
            "newer ones. Under Copies of the book they are seen, verified, put on another disk, and "
            "restored: "
            "into a new book, with what differs from the one that is open.")}},
        {"margin",
         t("The margin above the pages"),
         {t("Eight weeks at a glance: a tick is an hour kept, a hollow circle a doubtful reading, a cross an "
            "erroneous one, a short stroke an hour missing with its reason, an empty place an hour not "
            "written "
            "down, a bar the hour due now. The arrow keys walk it, Enter opens the hour.")}},
        {"cautions", t("Cautions"), cautionWords()},
    };
}

} // namespace

HelpDialog::HelpDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("Help"));
    Look::follow(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kBetween, space::kBetween, space::kBetween, space::kBetween);
    text_ = new QTextBrowser;
    text_->setAccessibleName(tr("Help"));
    text_->setFont(typeFont(TypeSize::Body));
    QString html;
    for (const Part& part : parts()) {
        html += QStringLiteral("<h3><a name='%1'></a>%2</h3>")
                    .arg(QLatin1String(part.anchor), part.title.toHtmlEscaped());
        for (const QString& paragraph : part.paragraphs) {
            html += QStringLiteral("<p>%1</p>").arg(paragraph.toHtmlEscaped());
        }
    }
    text_->setHtml(html);
    column->addWidget(text_, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    column->addWidget(buttons);
    resize(typePixels(620), typePixels(620));
}

void HelpDialog::showPart(HelpPart part) {
    static const char* const anchors[] = {"observe",     "register", "month",
                                          "instruments", "station",  "cautions"};
    text_->scrollToAnchor(QLatin1String(anchors[static_cast<int>(part)]));
}

QString HelpDialog::plainText() const {
    return text_->toPlainText();
}

} // namespace wickbook::ui
