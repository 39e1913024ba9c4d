// SPDX-License-Identifier: GPL-3.0-or-later
// What a frame of the register costs while it is scrolled line by line, as a ratio to a bare widget that
// draws the same texts in the same places; taken turn and turn about in one run, nothing is asserted.
// Argument: a book; its fullest month of the last year is shown. QT_QPA_PLATFORM=offscreen does.
#include "core/desk/checked_range.h"
#include "tests/bench/interleaved.h"
#include "ui/register/register_model.h"
#include "ui/register/register_view.h"

#include <QApplication>
#include <QHeaderView>
#include <QImage>
#include <QPainter>
#include <QScrollBar>

#include <memory>

using namespace wickbook;

namespace {

constexpr QSize kSize{1100, 700};

/// What stands in one cell, taken once from the view.
struct DrawnText {
    QRect place;
    int alignment = 0;
    QString text;
};

class ByHand : public QWidget {
public:
    void take(std::vector<DrawnText> texts) { texts_ = std::move(texts); }

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.fillRect(rect(), palette().base());
        painter.setPen(palette().color(QPalette::Text));
        for (const DrawnText& text : texts_) {
            painter.drawText(text.place, text.alignment, text.text);
        }
    }

private:
    std::vector<DrawnText> texts_;
};

std::vector<DrawnText> textsOf(const ui::RegisterView& view) {
    std::vector<DrawnText> texts;
    const QAbstractItemModel& model = *view.model();
    for (int row = 0; row < model.rowCount(); ++row) {
        for (int column = 0; column < model.columnCount(); ++column) {
            const QModelIndex index = model.index(row, column);
            const QRect place = view.visualRect(index);
            const QString text = index.data(Qt::DisplayRole).toString();
            if (place.intersects(view.viewport()->rect()) && !text.isEmpty() &&
                column != ui::RegisterModel::State && column != ui::RegisterModel::ReadBack) {
                texts.push_back({place.adjusted(6, 0, -6, 0), index.data(Qt::TextAlignmentRole).toInt(),
                                 view.fontMetrics().elidedText(text, Qt::ElideRight, place.width() - 12)});
            }
        }
    }
    return texts;
}

void paint(QWidget& widget, QImage& image) {
    QPainter painter(&image);
    widget.render(&painter, {}, QRect{QPoint{0, 0}, widget.size()}, QWidget::DrawWindowBackground);
}

} // namespace

int main(int argc, char** argv) {
    const QApplication application(argc, argv);
    if (argc != 2) {
        fmt::print(stderr, "Name one book.\n");
        return 2;
    }
    const auto book = store::Book::open(argv[1], store::OpenMode::ReadOnly);
    const auto station = book ? book->station() : tl::unexpected(book.error());
    const auto span = book ? book->span() : tl::unexpected(book.error());
    if (!station || !span || !*span) {
        fmt::print(stderr, "{} can't be read or is empty.\n", argv[1]);
        return 1;
    }
    const date::year_month_day last{date::floor<date::days>((*span)->second)};
    std::optional<report::MonthReport> fullest;
    for (int back = 0; back < 12; ++back) {
        auto report = desk::monthReport(*book, *station, last.year() / last.month() - date::months{back}, {});
        if (report && (!fullest || report->lines.size() > fullest->lines.size())) {
            fullest.emplace(std::move(*report));
        }
    }
    ui::RegisterModel model{QLocale::c()};
    model.show(std::move(*fullest), units::TemperatureUnit::Celsius);
    ui::RegisterView view;
    view.setModel(&model);
    view.resize(kSize);
    view.horizontalHeader()->resizeSections(QHeaderView::ResizeToContents);
    view.show();
    QCoreApplication::processEvents();

    ByHand hand;
    hand.setFont(view.font());
    hand.resize(view.viewport()->size());
    hand.show();
    QCoreApplication::processEvents();

    QImage image(view.viewport()->size(), QImage::Format_ARGB32_Premultiplied);
    QScrollBar& bar = *view.verticalScrollBar();
    const int steps = std::max(1, bar.maximum());
    std::vector<std::vector<DrawnText>> texts;
    for (int at = 0; at <= steps; ++at) {
        bar.setValue(at);
        texts.push_back(textsOf(view));
    }
    int at = 0;
    const auto times = bench::interleaved(
        200,
        [&] {
            at = (at + 1) % (steps + 1);
            bar.setValue(at);
            paint(*view.viewport(), image);
        },
        [&] {
            hand.take(texts[static_cast<std::size_t>(at)]);
            paint(hand, image);
        });
    fmt::print("{} lines, {} texts in a frame\n", model.rowCount(), texts.front().size());
    bench::tell("register.scroll", times.first, times.second);
    return 0;
}
