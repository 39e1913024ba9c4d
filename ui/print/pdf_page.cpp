// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/pdf_page.h"

#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>

namespace wickbook::ui {

namespace {

constexpr double kMarginMillimetres = 15;
constexpr int kDotsPerInch = 1200;

} // namespace

void setUpPdf(QPdfWriter& writer, const QString& title, Paper paper) {
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Wickbook"));
    writer.setPageLayout(
        QPageLayout(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait,
                    QMarginsF(kMarginMillimetres, kMarginMillimetres, kMarginMillimetres, kMarginMillimetres),
                    QPageLayout::Millimeter));
    writer.setResolution(kDotsPerInch);
}

} // namespace wickbook::ui
