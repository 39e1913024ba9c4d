// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/import_plan.h"

#include <QString>

#include <optional>

namespace wickbook::ui {

/// How a file with this header was read the last time, for this book. May be lost without harm.
class TakeInMemory {
public:
    /// file: an INI file; empty: nothing is remembered.
    TakeInMemory(QString file, QString book) : file_(std::move(file)), book_(std::move(book)) {}

    void remember(const std::vector<std::string>& header, const exchange::ImportOptions& options);
    [[nodiscard]] std::optional<exchange::ImportOptions>
    remembered(const std::vector<std::string>& header) const;

private:
    [[nodiscard]] QString group(const std::vector<std::string>& header) const;

    QString file_;
    QString book_;
};

} // namespace wickbook::ui
