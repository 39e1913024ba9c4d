// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>

#include <algorithm>

namespace wickbook::ui {

const std::vector<Language>& languages() {
    static const std::vector<Language> all{{QStringLiteral("en"), QStringLiteral("English")},
                                           {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                           {QStringLiteral("fr"), QStringLiteral("Français")}};
    return all;
}

bool isLanguage(const QString& code) {
    return std::any_of(languages().begin(), languages().end(),
                       [&](const Language& language) { return language.code == code; });
}

QLocale localeFor(const QString& chosen, const QLocale& system) {
    if (!isLanguage(chosen)) {
        return system;
    }
    const QLocale asked(chosen);
    if (asked.language() == system.language()) {
        return system;
    }
    // English without a country would write months before days.
    return asked.language() == QLocale::English ? QLocale(QLocale::English, QLocale::UnitedKingdom) : asked;
}

Translations::Translations(const QLocale& locale) {
    if (QCoreApplication::instance() == nullptr || locale.language() == QLocale::English) {
        return;
    }
    const auto install = [&](const QString& name, const QString& folder) {
        auto translator = std::make_unique<QTranslator>();
        if (translator->load(locale, name, QStringLiteral("_"), folder)) {
            QCoreApplication::installTranslator(translator.get());
            installed_.push_back(std::move(translator));
        }
    };
    if (!isLanguage(locale.name().section(QLatin1Char('_'), 0, 0))) {
        return; // half a window in another language helps nobody
    }
    install(QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(QStringLiteral("wickbook"), QStringLiteral(":/translations"));
}

Translations::~Translations() {
    for (const auto& translator : installed_) {
        QCoreApplication::removeTranslator(translator.get());
    }
}

} // namespace wickbook::ui
