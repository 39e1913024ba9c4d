// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/salvage.h"

#include <QString>
#include <QStringList>

#include <vector>

/// Words of the salvage: what it writes into the new book, and what it says of the damaged one.

namespace wickbook::ui {

/// who: initials or account of the person who salvages.
store::SalvageWords salvageWords(const QString& who);

/// One sentence: how much came back.
QString salvageSentence(const store::SalvageReport& report);
/// Each thing to know or to do next, a sentence each; empty where everything came back.
QStringList salvageDetails(const store::SalvageReport& report);

/// "12–14, 40"; from so many ranges on "and 7 more".
QString rangeWords(const std::vector<store::SequenceRange>& ranges);

} // namespace wickbook::ui
