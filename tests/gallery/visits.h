// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <functional>

class QWidget;

namespace wickbook::test {

/// Every window, page and dialog of the program in turn, over a fresh copy of the invented station: see is
/// called with a name for a file and the window as it stands. Language, letters and colours are those in
/// force.
struct VisitSize {
    int width = 1280;
    int height = 760;
};
void visitAll(VisitSize size, const std::function<void(const QString& name, QWidget& window)>& see);

} // namespace wickbook::test
