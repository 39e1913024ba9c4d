// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run_window.h"

#include "ui/style/quiet_style.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/language.h"
#include "ui/window/book_taken.h"
#include "ui/window/main_window.h"
#include "ui/window/prompts.h"
#include "ui/window/trouble_log.h"
#include "ui/window/window_settings.h"

#include <QApplication>
#include <QDir>
#include <QFileInfo>
#include <QIcon>
#include <QScreen>
#include <QStandardPaths>
#include <QStyleFactory>
#include <QSysInfo>

#if defined(__GLIBC__)
#include <malloc.h>
#endif

#include <cstdio>
#include <cstdlib>
#include <cstring>

namespace wickbook::ui {

namespace {

constexpr int kNoDisplay = 3; ///< as for everything the machine does not let be opened

const char* const kNoDisplaySentence =
    "There is no display to open the window on: start Wickbook from a desktop, or give it a verb; \"wickbook "
    "--help\" lists them.\n";

bool isGiven(const char* variable) {
    const char* value = std::getenv(variable);
    return value != nullptr && *value != '\0';
}

bool platformAsked(int argc, char** argv) {
    for (int i = 1; i < argc; ++i) {
        if (std::strcmp(argv[i], "-platform") == 0 || std::strcmp(argv[i], "--platform") == 0) {
            return true;
        }
    }
    return isGiven("QT_QPA_PLATFORM");
}

/// The toolkit would abort where the display can't be reached; a sentence says more.
void refuseWithoutDisplay(QtMsgType type, const QMessageLogContext& context, const QString& message) {
    if (type == QtFatalMsg &&
        std::strcmp(context.category == nullptr ? "" : context.category, "default") == 0 &&
        message.contains(QLatin1String("platform plugin"))) {
        std::fputs(kNoDisplaySentence, stderr);
        std::fflush(stderr);
        std::_Exit(kNoDisplay);
    }
    std::fputs(qPrintable(message + QLatin1Char('\n')), stderr);
}

/// Language, light or dark, size of letters, for a window that is yet to be made.
void apply(const Preferences& preferences, const QFont& desktopFont, const QLocale& locale) {
    QLocale::setDefault(locale);
    if (preferences.shade == Shade::AsDesktop) {
        QApplication::setPalette(QPalette());
    } else {
        QApplication::setPalette(paletteOf(preferences.shade == Shade::Dark ? darkTokens() : lightTokens()));
    }
    growLetters(desktopFont, preferences.letters / 100.0);
}

void noteStart(const QLocale& locale) {
    TroubleLog::note(QStringLiteral("Wickbook %1 starts: Qt %2, %3, %4, %5, locale %6, %7 × %8 at %9")
                         .arg(QCoreApplication::applicationVersion(), QString::fromLatin1(qVersion()),
                              QSysInfo::prettyProductName(), QSysInfo::currentCpuArchitecture(),
                              QGuiApplication::platformName(), locale.name())
                         .arg(QGuiApplication::primaryScreen() == nullptr
                                  ? 0
                                  : QGuiApplication::primaryScreen()->size().width())
                         .arg(QGuiApplication::primaryScreen() == nullptr
                                  ? 0
                                  : QGuiApplication::primaryScreen()->size().height())
                         .arg(qApp->devicePixelRatio()));
}

void openFirst(MainWindow& window, const WindowRequest& request, const WindowSettings& settings) {
    if (request.sample) {
        window.openSample();
    } else if (!request.book.isEmpty()) {
        window.openBook(request.book);
    } else if (const QString last = settings.lastBook(); !last.isEmpty() && QFileInfo::exists(last)) {
        window.openBook(last);
    }
}

} // namespace

int runWindow(int& argc, char** argv, const WindowRequest& request) {
#if defined(__GLIBC__)
    // One heap for all threads: what a reading of the whole register leaves free serves the window too. Two
    // or three threads at most ask for memory at a time.
    mallopt(M_ARENA_MAX, 1);
#endif
    if (!platformAsked(argc, argv) && !isGiven("DISPLAY") && !isGiven("WAYLAND_DISPLAY")) {
        std::fputs(kNoDisplaySentence, stderr);
        return kNoDisplay;
    }
    QApplication::setApplicationName(QStringLiteral("wickbook"));
    QGuiApplication::setDesktopFileName(QStringLiteral("org.wickbook.Wickbook"));
    qInstallMessageHandler(&refuseWithoutDisplay);
    QApplication application(argc, argv);
    qInstallMessageHandler(nullptr);
    QApplication::setWindowIcon(QIcon(QStringLiteral(":/icons/org.wickbook.Wickbook.svg")));
    QApplication::setStyle(
        new QuietStyle(QStyleFactory::create(QStringLiteral("Fusion")))); // it owns the style
    const QFont desktopFont = QApplication::font();
    const QLocale system = QLocale::system();

    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppConfigLocation);
    QDir().mkpath(folder);
    WindowSettings settings(QDir(folder).filePath(QStringLiteral("window.ini")));
    TroubleLog log(QDir(stateFolder()).filePath(QStringLiteral("wickbook.log")));

    std::optional<MainWindow::Anew> before;
    for (bool first = true;; first = false) {
        const Preferences preferences = settings.preferences();
        const QLocale locale = localeFor(preferences.language, system);
        apply(preferences, desktopFont, locale);
        const Translations translations(locale);
        if (first) {
            noteStart(locale);
            if (!request.book.isEmpty()) {
                const BookLock lock(request.book);
                if (broughtForward(lock)) {
                    std::fputs(qPrintable(openElsewhereWords(request.book) + QLatin1Char('\n')), stderr);
                    return 0;
                }
            }
        }
        DialogPrompts prompts;
        MainWindow window(settings, prompts, std::make_shared<record::SystemClock>());
        // The book first: the window comes with it, and is not laid out twice.
        if (first) {
            openFirst(window, request, settings);
        } else if (before) {
            window.resume(std::move(*before));
        }
        window.show();
        const int ended = QApplication::exec();
        before = window.takeAnew();
        if (!before) {
            TroubleLog::note(QStringLiteral("ends"));
            return ended;
        }
    }
}

} // namespace wickbook::ui
