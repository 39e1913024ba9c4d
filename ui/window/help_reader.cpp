// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/help_reader.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QEvent>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSvgRenderer>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextFrame>
#include <QTextTable>

namespace wickbook::ui {

namespace {

constexpr int kDrawingWidth = 420;
constexpr int kPageEdge = 24;

/// The drawing's colours are names of tokens: @ink, @dry …
QByteArray inColours(QByteArray drawing, const Tokens& tokens) {
    const std::pair<const char*, QColor> colours[] = {
        {"@paper", tokens.paper}, {"@sheet", tokens.sheet},   {"@ink", tokens.ink},
        {"@soft", tokens.soft},   {"@rule", tokens.rule},     {"@dry", tokens.dry},
        {"@wet", tokens.wet},     {"@accent", tokens.accent}, {"@wrong", tokens.wrong}};
    for (const auto& colour : colours) {
        drawing.replace(colour.first, colour.second.name().toLatin1());
    }
    return drawing;
}

/// Room between lines and round tables, which Markdown has no word for.
void loosen(QTextDocument& document, const Tokens& tokens) {
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        QTextCursor cursor(block);
        QTextBlockFormat format = block.blockFormat();
        if (!block.text().contains(QChar::ObjectReplacementCharacter)) { // a drawing is a line of its own
            format.setLineHeight(125, QTextBlockFormat::ProportionalHeight);
        }
        if (format.headingLevel() == 0 && cursor.currentTable() == nullptr) {
            format.setTopMargin(typePixels(block.textList() != nullptr ? 3 : 5));
            format.setBottomMargin(typePixels(block.textList() != nullptr ? 3 : 7));
        }
        if (format.hasProperty(QTextFormat::BlockQuoteLevel)) {
            format.setBackground(tokens.queryPaper);
            format.setLeftMargin(typePixels(8));
        }
        cursor.setBlockFormat(format);
        if (QTextTable* table = cursor.currentTable()) {
            QTextTableFormat inTable = table->format();
            inTable.setBorderBrush(tokens.rule);
            inTable.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
            inTable.setBorderCollapse(true);
            inTable.setBorder(1);
            inTable.setCellPadding(typePixels(4));
            inTable.setTopMargin(typePixels(8));
            inTable.setColumnWidthConstraints({QTextLength(QTextLength::PercentageLength, 45),
                                               QTextLength(QTextLength::PercentageLength, 55)});
            inTable.setWidth(QTextLength(QTextLength::PercentageLength, 100));
            table->setFormat(inTable);
        }
    }
}

/// e_s and t_w as they are written by hand: the letter after the line below the other.
void writeBelow(QTextDocument& document) {
    static const QRegularExpression symbol(QStringLiteral("\\b[et]_[a-z]\\b"));
    QTextCursor found = document.find(symbol);
    while (!found.isNull()) {
        const int begin = found.selectionStart();
        QTextCursor line(&document);
        line.setPosition(begin + 1);
        line.deleteChar();
        line.setPosition(begin + 1);
        line.setPosition(begin + 2, QTextCursor::KeepAnchor);
        QTextCharFormat below;
        below.setVerticalAlignment(QTextCharFormat::AlignSubScript);
        line.mergeCharFormat(below);
        found = document.find(symbol, begin + 2);
    }
}

} // namespace

HelpReader::HelpReader(QWidget* parent) : QTextBrowser(parent) {
    setObjectName(QStringLiteral("helpReader"));
    setAccessibleName(tr("Help page"));
    setOpenLinks(false);
    setTextInteractionFlags(Qt::TextBrowserInteraction | Qt::TextSelectableByKeyboard);
    connect(this, &QTextBrowser::anchorClicked, this, [this](const QUrl& link) {
        QString name = link.toString();
        if (name.endsWith(QStringLiteral(".md"))) {
            name.chop(3);
            emit pageAsked(name);
        }
    });
}

void HelpReader::showPage(const QString& title, const QString& markdown) {
    title_ = title;
    markdown_ = markdown;
    const Tokens& tokens = tokensFor(palette());
    document()->setDefaultFont(typeFont(TypeSize::Body));
    document()->setDocumentMargin(kPageEdge);
    setMarkdown(QStringLiteral("# %1\n\n%2").arg(title, markdown));
    loosen(*document(), tokens);
    writeBelow(*document());
    moveCursor(QTextCursor::Start);
    verticalScrollBar()->setValue(0);
}

QVariant HelpReader::loadResource(int type, const QUrl& name) {
    if (type != QTextDocument::ImageResource) {
        return {}; // nothing but our own drawings
    }
    QFile file(QStringLiteral(":/help/drawings/") + name.fileName());
    if (!file.open(QIODevice::ReadOnly)) {
        return {};
    }
    QSvgRenderer drawing(inColours(file.readAll(), tokensFor(palette())));
    const double ratio = devicePixelRatioF();
    const QSize size = drawing.defaultSize().scaled(typePixels(kDrawingWidth), 10'000, Qt::KeepAspectRatio);
    QImage image(size * ratio, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(ratio);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    drawing.render(&painter, QRectF{QPointF{0, 0}, QSizeF{size}});
    return image;
}

void HelpReader::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && !markdown_.isEmpty()) {
        const int place = verticalScrollBar()->value();
        showPage(QString(title_), QString(markdown_));
        verticalScrollBar()->setValue(place);
    }
}

} // namespace wickbook::ui
