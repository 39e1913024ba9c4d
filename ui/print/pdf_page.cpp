// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/pdf_page.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>

namespace wickbook::ui {

namespace {

constexpr double kMarginMillimetres = 15;
constexpr double kSmallMarginMillimetres = 10;
constexpr int kDotsPerInch = 1200;

} // namespace

QPageLayout pageLayoutOf(Paper paper) {
    const double margin = paper == Paper::A5 ? kSmallMarginMillimetres : kMarginMillimetres;
    const QPageSize size(paper == Paper::A4       ? QPageSize::A4
                         : paper == Paper::Letter ? QPageSize::Letter
                                                  : QPageSize::A5);
    return {size, QPageLayout::Portrait, QMarginsF(margin, margin, margin, margin), QPageLayout::Millimeter};
}

void setUpPdf(QPdfWriter& writer, const QString& title, Paper paper) {
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Wickbook"));
    writer.setPageLayout(pageLayoutOf(paper));
    writer.setResolution(kDotsPerInch);
}

} // namespace wickbook::ui
