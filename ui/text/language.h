// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLocale>
#include <QString>
#include <QTranslator>

#include <memory>
#include <vector>

/// The languages the program speaks. English is the source; the others are catalogues of
/// resources/translations, held in the program itself.

namespace wickbook::ui {

struct Language {
    QString code; ///< ISO 639-1: "de"
    QString name; ///< in its own words: "Deutsch"
};

/// English first, then by name.
const std::vector<Language>& languages();

/// Whether code is one of them.
bool isLanguage(const QString& code);

/// The locale for words, numbers and dates. chosen: a code of languages(), or empty to follow the system.
/// Where the system speaks the chosen language already, its country stays (de_AT); a system in a language
/// that is not spoken here keeps its numbers and dates, and its words are English.
QLocale localeFor(const QString& chosen, const QLocale& system);

/// The catalogues of one language, ours and the toolkit's own, installed in the running application until
/// this ends. English has none and needs none. Without an application nothing happens.
class Translations {
public:
    explicit Translations(const QLocale& locale);
    ~Translations();
    Translations(const Translations&) = delete;
    Translations& operator=(const Translations&) = delete;

private:
    std::vector<std::unique_ptr<QTranslator>> installed_;
};

} // namespace wickbook::ui
