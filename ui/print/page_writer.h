// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/style/tokens.h"

#include <QFont>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QString>
#include <QStringList>

#include <functional>
#include <vector>

/// A pen that runs down paper pages: paragraphs, ruled tables, a foot with the page's number. It knows
/// nothing of readings. Measures are points (1/72 inch), whatever the device. Text is always plain text.
/// Invariant: nothing is painted below the foot's line; whoever needs room asks for it first.

namespace wickbook::ui {

struct PageColumn {
    QString head;
    double share = 1; ///< of the table's width
    Qt::Alignment alignment = Qt::AlignRight;
};

/// A second head line over several columns: "9 h" over T, Tw …
struct PageGroup {
    QString text;
    int columns = 1;
};

struct PageTable {
    std::vector<PageGroup> groups; ///< none, or together as many columns as there are
    std::vector<PageColumn> columns;
    std::vector<QStringList> rows;
    double fontSize = 8;       ///< points
    double leastRowHeight = 0; ///< points; room to write by hand
    double rowPadding = 2;     ///< points between lines
    int strongRuleEvery = 0;   ///< rows; for an eye that follows a line. 0: none
    bool shadeColumns = false; ///< every other column, for an eye that goes down one
};

class PageWriter {
public:
    /// A PDF or a printer whose layout and resolution are set; it must outlive the pen.
    /// foot: stands on every page, left of the page's number.
    PageWriter(QPagedPaintDevice& device, QString foot);
    ~PageWriter();
    PageWriter(const PageWriter&) = delete;
    PageWriter& operator=(const PageWriter&) = delete;

    [[nodiscard]] bool isActive() const { return painter_.isActive(); }
    /// Ends the last page; false when something could not be painted or written.
    bool finish();

    [[nodiscard]] double width() const { return width_; }
    [[nodiscard]] double roomLeft() const { return bottom_ - y_; }
    [[nodiscard]] double y() const { return y_; }
    /// Of the page being written, from 1.
    [[nodiscard]] int page() const { return page_; }
    void newPage();
    void space(double points) { y_ += points; }
    /// A new page unless so much room is left.
    void need(double points);

    void heading(const QString& text, double fontSize);
    void paragraph(const QString& text, double fontSize, const QColor& colour);
    /// "name: value" lines, the name soft and in a column of its own.
    void facts(const std::vector<std::pair<QString, QString>>& lines, double fontSize);
    void table(const PageTable& table);
    /// A box of this height, across the page, for something painted by others.
    void figure(double height, const std::function<void(QPainter&, const QRectF&)>& paint);
    void rule();

private:
    [[nodiscard]] QFont font(double points, bool bold = false) const;
    [[nodiscard]] double wrappedHeight(const QString& text, const QFont& font, double width) const;
    [[nodiscard]] double textWidth(const QString& text, const QFont& font) const;
    [[nodiscard]] double lineHeight(const QFont& font) const;
    void write(const QRectF& where, int flags, const QString& text, const QFont& font, const QColor& colour);
    void foot();
    void tableHead(const PageTable& table, const std::vector<double>& edges, double line);

    QPagedPaintDevice& device_;
    QString foot_;
    QPainter painter_;
    Tokens tokens_ = lightTokens();
    double width_ = 0;
    double bottom_ = 0;
    double y_ = 0;
    int page_ = 1;
};

} // namespace wickbook::ui
