// SPDX-License-Identifier: GPL-3.0-or-later
// One picture of every window, page and dialog, to be looked at page by page.
//   gallery FOLDER [--language en|de|fr|pseudo] [--dark] [--right-to-left] [--letters 100…200]
//           [--size WIDTHxHEIGHT] [--sharp] [--focus] [--strict]
// Pictures go into FOLDER; texts without room, and with pseudo those that were never translated, to standard
// output.
#include "tests/gallery/looked_at.h"
#include "tests/gallery/pseudo_language.h"
#include "tests/gallery/visits.h"
#include "ui/style/quiet_style.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/language.h"
#include "ui/window/page_room.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFont>
#include <QPixmap>
#include <QScrollBar>
#include <QStyleFactory>
#include <QWidget>

#include <cstdio>

int main(int argc, char** argv) {
    using namespace wickbook;
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    for (int i = 1; i < argc; ++i) {
        if (qstrcmp(argv[i], "--sharp") == 0) {
            qputenv("QT_SCALE_FACTOR", "2");
        }
    }
    QApplication application(argc, argv);
    QApplication::setStyle(new ui::QuietStyle(QStyleFactory::create(QStringLiteral("Fusion"))));
    QCommandLineParser arguments;
    arguments.addPositionalArgument(QStringLiteral("folder"), QStringLiteral("where the pictures go"));
    arguments.addOption({QStringLiteral("language"), QStringLiteral("en, de, fr or pseudo"),
                         QStringLiteral("code"), QStringLiteral("en")});
    arguments.addOption({QStringLiteral("dark"), QStringLiteral("in the dark colours")});
    arguments.addOption({QStringLiteral("right-to-left"), QStringLiteral("mirrored")});
    arguments.addOption(
        {QStringLiteral("letters"), QStringLiteral("per cent"), QStringLiteral("n"), QStringLiteral("100")});
    arguments.addOption({QStringLiteral("size"), QStringLiteral("of the window"), QStringLiteral("WxH"),
                         QStringLiteral("1280x760")});
    arguments.addOption({QStringLiteral("sharp"), QStringLiteral("two pixels for one")});
    arguments.addOption({QStringLiteral("strict"), QStringLiteral("end with 1 where something was found")});
    arguments.addOption(
        {QStringLiteral("focus"), QStringLiteral("try whether the focus is seen everywhere")});
    arguments.addHelpOption();
    arguments.process(application);
    if (arguments.positionalArguments().size() != 1) {
        arguments.showHelp(2);
    }
    const QDir folder(arguments.positionalArguments().constFirst());
    folder.mkpath(QStringLiteral("."));

    const QString code = arguments.value(QStringLiteral("language"));
    const bool pseudo = code == QStringLiteral("pseudo");
    const QLocale locale = ui::localeFor(pseudo ? QStringLiteral("en") : code, QLocale::c());
    QLocale::setDefault(locale);
    const ui::Translations translations(locale);
    test::PseudoLanguage invented(QStringLiteral(":/translations/wickbook_de.qm"));
    if (pseudo) {
        QCoreApplication::installTranslator(&invented);
    }
    if (arguments.isSet(QStringLiteral("right-to-left"))) {
        QGuiApplication::setLayoutDirection(Qt::RightToLeft);
    }
    QApplication::setPalette(
        ui::paletteOf(arguments.isSet(QStringLiteral("dark")) ? ui::darkTokens() : ui::lightTokens()));
    ui::growLetters(QApplication::font(), arguments.value(QStringLiteral("letters")).toInt() / 100.0);

    const QStringList size = arguments.value(QStringLiteral("size")).split(QLatin1Char('x'));
    int wrong = 0;
    const auto tell = [&](const QString& name, const char* what, const QStringList& found) {
        for (const QString& each : found) {
            std::printf("%s: %s: %s\n", qPrintable(name), what, each.toUtf8().constData());
            ++wrong;
        }
    };
    test::visitAll({size.value(0).toInt(), size.value(1).toInt()}, [&](const QString& name, QWidget& window) {
        window.grab().save(folder.filePath(name + QStringLiteral(".png")));
        if (arguments.isSet(QStringLiteral("focus"))) {
            tell(name, "focus not to be seen", test::unseenFocus(window));
        }
        // At the usual letters no page scrolls as a whole, also on a small screen.
        if (const auto* room = window.findChild<ui::PageRoom*>();
            room != nullptr && arguments.value(QStringLiteral("letters")) == QStringLiteral("100") &&
            !pseudo && room->verticalScrollBar()->maximum() + room->horizontalScrollBar()->maximum() > 0) {
            tell(name, "the page scrolls",
                 {QStringLiteral("%1 px down, %2 px across")
                      .arg(room->verticalScrollBar()->maximum())
                      .arg(room->horizontalScrollBar()->maximum())});
        }
        if (!pseudo) { // a third longer than English is more than any page promises
            tell(name, "no room", test::clippedTexts(window));
        } else {
            tell(name, "not translated", test::untranslatedTexts(window));
        }
    });
    if (pseudo) {
        tell(QStringLiteral("all"), "not in the German catalogue", invented.unknown());
    }
    std::printf("%d to look at\n", wrong);
    return arguments.isSet(QStringLiteral("strict")) && wrong > 0 ? 1 : 0;
}
