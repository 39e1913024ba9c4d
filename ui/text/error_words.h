// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"
#include "core/psychrometry/psychrometry_error.h"
#include "core/record/instant.h"
#include "core/store/book.h"
#include "core/units/decimal.h"

#include <QString>

/// One clear sentence for each error: what happened, where, what to do.

namespace wickbook::ui {

QString storeErrorWords(const store::StoreError& error);
QString verifyProblemWords(const store::VerifyProblem& problem);
QString importErrorWords(const exchange::ImportError& error);
/// Why a file of a set was left aside.
QString asideFileWords(const exchange::AsideFile& file);
QString rejectWords(const exchange::RejectedLine& line);
/// what: "dry bulb", "pressure" … ; typed: what stood there.
QString decimalErrorWords(units::DecimalError error, const QString& what, const QString& typed);
QString timeErrorWords(record::TimeTextError error, const QString& typed);
QString psychrometryErrorWords(psychrometry::PsychrometryError error);

} // namespace wickbook::ui
