// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/page_writer.h"

#include "ui/print/chart_look.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace wickbook::ui {

namespace {

constexpr double kFootRoom = 22;
constexpr double kPointsPerInch = 72;
/// Letters are set in tenths of a point: font sizes are whole pixels there, and widths measured so are those
/// printed.
constexpr double kTypeScale = 10;
constexpr double kCellPadding = 2.5;

} // namespace

PageWriter::PageWriter(QPagedPaintDevice& device, QString foot) : device_(device), foot_(std::move(foot)) {
    if (!painter_.begin(&device_)) {
        return;
    }
    painter_.scale(device_.logicalDpiX() / kPointsPerInch, device_.logicalDpiY() / kPointsPerInch);
    width_ = device_.pageLayout().paintRectPoints().width();
    bottom_ = device_.pageLayout().paintRectPoints().height() - kFootRoom;
}

PageWriter::~PageWriter() = default;

QFont PageWriter::font(double points, bool bold) const {
    QFont font = ChartLook::paper().font;
    font.setPixelSize(static_cast<int>(std::lround(points * kTypeScale)));
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // No ligatures: whoever copies "first" out of the page gets its five letters. A spacing of 100 % adds
    // nothing and turns them off; an absolute one would be scaled with the device, and lines break elsewhere
    // than was measured.
    font.setLetterSpacing(QFont::PercentageSpacing, 100);
    return font;
}

double PageWriter::wrappedHeight(const QString& text, const QFont& font, double width) const {
    const QFontMetricsF metrics(font);
    const QRectF room{0, 0, width * kTypeScale, 1e7};
    return metrics.boundingRect(room, Qt::TextWordWrap, text).height() / kTypeScale;
}

double PageWriter::textWidth(const QString& text, const QFont& font) const {
    return QFontMetricsF(font).horizontalAdvance(text) / kTypeScale;
}

double PageWriter::lineHeight(const QFont& font) const {
    return QFontMetricsF(font).height() / kTypeScale;
}

void PageWriter::write(const QRectF& where, int flags, const QString& text, const QFont& font,
                       const QColor& colour) {
    painter_.save();
    painter_.scale(1 / kTypeScale, 1 / kTypeScale);
    painter_.setFont(font);
    painter_.setPen(colour);
    painter_.drawText(QRectF{where.topLeft() * kTypeScale, where.size() * kTypeScale}, flags, text);
    painter_.restore();
}

void PageWriter::foot() {
    const QRectF where{0, bottom_ + 6, width_, kFootRoom - 6};
    write(where, Qt::AlignLeft | Qt::AlignBottom, foot_, font(7.5), tokens_.soft);
    write(where, Qt::AlignRight | Qt::AlignBottom, QString::number(page_), font(7.5), tokens_.soft);
}

bool PageWriter::finish() {
    foot();
    return painter_.end();
}

void PageWriter::newPage() {
    foot();
    device_.newPage();
    ++page_;
    y_ = 0;
}

void PageWriter::need(double points) {
    if (roomLeft() < points && y_ > 0) {
        newPage();
    }
}

void PageWriter::heading(const QString& text, double fontSize) {
    const QFont face = font(fontSize, true);
    const double height = wrappedHeight(text, face, width_);
    need(height + 30);
    write(QRectF{0, y_, width_, height + 2}, Qt::TextWordWrap, text, face, tokens_.ink);
    y_ += height + fontSize * 0.3;
}

void PageWriter::paragraph(const QString& text, double fontSize, const QColor& colour) {
    const QFont face = font(fontSize);
    const double height = wrappedHeight(text, face, width_);
    need(height);
    write(QRectF{0, y_, width_, height + 2}, Qt::TextWordWrap, text, face, colour);
    y_ += height + fontSize * 0.5;
}

void PageWriter::facts(const std::vector<std::pair<QString, QString>>& lines, double fontSize) {
    const QFont face = font(fontSize);
    double names = 0;
    for (const auto& [name, value] : lines) {
        names = std::max(names, textWidth(name, face));
    }
    names = std::min(names + 12, width_ * 0.4);
    for (const auto& [name, value] : lines) {
        const double height =
            std::max(wrappedHeight(name, face, names - 8), wrappedHeight(value, face, width_ - names));
        need(height);
        write(QRectF{0, y_, names - 8, height + 2}, Qt::TextWordWrap, name, face, tokens_.soft);
        write(QRectF{names, y_, width_ - names, height + 2}, Qt::TextWordWrap, value, face, tokens_.ink);
        y_ += height + 2;
    }
    y_ += 4;
}

void PageWriter::rule() {
    painter_.setPen(QPen(tokens_.rule, 0.7));
    painter_.drawLine(QPointF{0, y_}, QPointF{width_, y_});
    y_ += 6;
}

void PageWriter::figure(double height, const std::function<void(QPainter&, const QRectF&)>& paint) {
    need(height);
    painter_.save();
    paint(painter_, QRectF{0, y_, width_, height});
    painter_.restore();
    y_ += height;
}

void PageWriter::tableHead(const PageTable& table, const std::vector<double>& edges, double line) {
    if (!table.groups.empty()) {
        std::size_t column = 0;
        for (const PageGroup& group : table.groups) {
            const std::size_t next = column + static_cast<std::size_t>(group.columns);
            const QRectF where{edges[column], y_, edges[next] - edges[column], line};
            write(where, Qt::AlignHCenter | Qt::AlignVCenter, group.text, font(table.fontSize, true),
                  tokens_.ink);
            if (!group.text.isEmpty()) {
                painter_.setPen(QPen(tokens_.rule, 0.7));
                painter_.drawLine(QPointF{where.left() + 3, where.bottom()},
                                  QPointF{where.right() - 3, where.bottom()});
            }
            column = next;
        }
        y_ += line;
    }
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const QRectF where{edges[i] + kCellPadding, y_, edges[i + 1] - edges[i] - 2 * kCellPadding, line};
        write(where, static_cast<int>(table.columns[i].alignment | Qt::AlignVCenter), table.columns[i].head,
              font(table.fontSize - 0.5), tokens_.soft);
    }
    y_ += line;
    painter_.setPen(QPen(tokens_.ink, 0.8));
    painter_.drawLine(QPointF{0, y_}, QPointF{width_, y_});
    y_ += 1;
}

void PageWriter::table(const PageTable& table) {
    const double shares = std::accumulate(table.columns.begin(), table.columns.end(), 0.0,
                                          [](double sum, const auto& column) { return sum + column.share; });
    std::vector<double> edges{0};
    for (const PageColumn& column : table.columns) {
        edges.push_back(edges.back() + width_ * column.share / shares);
    }
    const QFont face = font(table.fontSize);
    const double line = lineHeight(face) + table.rowPadding;
    const auto rowHeight = [&](const QStringList& row) {
        double height = std::max(line, table.leastRowHeight);
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            const double room = edges[i + 1] - edges[i] - 2 * kCellPadding;
            height = std::max(height, wrappedHeight(row.value(static_cast<qsizetype>(i)), face, room) +
                                          table.rowPadding);
        }
        return height;
    };
    need(line * 5);
    tableHead(table, edges, line);
    int done = 0;
    for (const QStringList& row : table.rows) {
        const double height = rowHeight(row);
        if (roomLeft() < height) {
            newPage();
            tableHead(table, edges, line);
        }
        for (std::size_t i = 0; i < table.columns.size(); ++i) {
            if (table.shadeColumns && i % 2 == 1) {
                // Below the rule of the row before, which would else be painted over.
                painter_.fillRect(QRectF{edges[i], y_ + 0.5, edges[i + 1] - edges[i], height - 0.5},
                                  tokens_.paper);
            }
            const QRectF where{edges[i] + kCellPadding, y_, edges[i + 1] - edges[i] - 2 * kCellPadding,
                               height};
            write(where, static_cast<int>(table.columns[i].alignment) | Qt::AlignVCenter | Qt::TextWordWrap,
                  row.value(static_cast<qsizetype>(i)), face, tokens_.ink);
        }
        y_ += height;
        const bool strong = table.strongRuleEvery > 0 && ++done % table.strongRuleEvery == 0;
        painter_.setPen(strong ? QPen(tokens_.soft, 0.8) : QPen(tokens_.rule, 0.5));
        painter_.drawLine(QPointF{0, y_}, QPointF{width_, y_});
    }
    y_ += 8;
}

} // namespace wickbook::ui
