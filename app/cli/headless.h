// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/text/language.h"

#include <QApplication>

#include <array>

namespace wickbook::cli {

/// What drawing charts and pages needs, without a display. A platform that the person set stays. Remarks of
/// the toolkit (a runtime folder that is not set, a font) are no sentences for the person and are left out.
class HeadlessApplication {
public:
    /// In the words of that locale's language, where the program speaks it, and in English where not.
    explicit HeadlessApplication(const QLocale& locale = QLocale::c());

private:
    static bool prepare();

    bool prepared_ = prepare();
    int argc_ = 1;
    std::array<char, 9> name_{"wickbook"};
    std::array<char*, 2> argv_{name_.data(), nullptr};
    QApplication application_{argc_, argv_.data()};
    ui::Translations translations_;
};

} // namespace wickbook::cli
