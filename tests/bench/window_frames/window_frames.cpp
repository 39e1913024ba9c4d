// SPDX-License-Identifier: GPL-3.0-or-later
// The program's own start with a book, watched from outside:
//   window_frames first BOOK    ends with the first frame
//   window_frames memory BOOK   turns to the Month page, charts the whole register, waits until it is drawn
//   and
//                               tells how much memory the process takes, MiB
#include "tests/bench/first_paint.h"
#include "ui/month/chart_panel.h"
#include "ui/window/main_window.h"
#include "ui/window/page_set.h"
#include "ui/window/run_window.h"

#include <cstring>

using namespace wickbook;

namespace {

bool g_memory = false;

/// Looks again until the chart holds what was read, then a little longer.
void waitForChart(QMainWindow& window, const ui::ChartPanel* panel, int looks) {
    QTimer::singleShot(100, &window, [&window, panel, looks] {
        if (looks == 0) {
            std::fputs("The chart was never read.\n", stderr);
            std::_Exit(1);
        }
        if (panel->isReading() || panel->stage().points() == nullptr || panel->stage().points()->empty()) {
            waitForChart(window, panel, looks - 1);
            return;
        }
        QTimer::singleShot(3000, &window, [] {
            std::printf("%.2f\n", bench::residentMebibytes());
            bench::endHere();
        });
    });
}

void atFirstFrame(QMainWindow& window) {
    if (!g_memory) {
        bench::endHere();
    }
    auto* own = qobject_cast<ui::MainWindow*>(&window);
    if (own == nullptr || own->pages() == nullptr) {
        std::fputs("The book did not open.\n", stderr);
        std::_Exit(1);
    }
    std::fprintf(stderr, "with the book: %.2f\n", bench::residentMebibytes());
    own->pages()->turnTo(ui::PageSet::Month);
    auto* panel = own->pages()->findChild<ui::ChartPanel*>();
    panel->setSpan(ui::ChartSpan::All);
    waitForChart(window, panel, 1200);
}

/// runWindow() makes the application itself; this comes with it.
void watch() {
    static bench::FirstPaint first(&atFirstFrame);
    qApp->installEventFilter(&first);
}
Q_COREAPP_STARTUP_FUNCTION(watch)

} // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::fputs("window_frames first|memory BOOK\n", stderr);
        return 2;
    }
    g_memory = std::strcmp(argv[1], "memory") == 0;
    return ui::runWindow(argc, argv, {QString::fromLocal8Bit(argv[2]), false});
}
