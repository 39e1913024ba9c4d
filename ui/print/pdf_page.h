// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QPdfWriter;

namespace wickbook::ui {

enum class Paper { A4, Letter };

/// How every PDF of ours begins: upright, 15 mm of margin, fine enough that tenths of a point are placed
/// truly, the title and nothing of the machine in it.
void setUpPdf(QPdfWriter& writer, const QString& title, Paper paper);

} // namespace wickbook::ui
