// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPageLayout>
#include <QString>

class QPdfWriter;

namespace wickbook::ui {

enum class Paper { A4, Letter, A5 };

/// Upright, 15 mm of margin; A5, a card, 10 mm.
QPageLayout pageLayoutOf(Paper paper);

/// How every PDF of ours begins: upright, 15 mm of margin, fine enough that tenths of a point are placed
/// truly, the title and nothing of the machine in it.
void setUpPdf(QPdfWriter& writer, const QString& title, Paper paper);

} // namespace wickbook::ui
