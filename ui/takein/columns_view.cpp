// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/takein/columns_view.h"

#include "ui/style/sheet.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/takein/takein_words.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>

namespace wickbook::ui {

namespace {

constexpr int kFirstLines = 4;
constexpr int kMostColumns = 60;
constexpr int kNarrowest = 120;
constexpr int kLongestCell = 24;
constexpr int kLeftAside = -1;

QString shortened(const std::string& text) {
    QString shown = QString::fromStdString(text).simplified();
    return shown.size() > kLongestCell ? shown.left(kLongestCell - 1) + QChar(0x2026) : shown;
}

QLabel* cellLabel(const QString& text, bool soft) {
    QLabel* label = makeLabel(text, TypeSize::Label, soft);
    label->setTextFormat(Qt::PlainText); // what a file says is never markup
    return label;
}

} // namespace

ColumnsView::ColumnsView(QWidget* parent) : QScrollArea(parent) {
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    setAccessibleName(tr("the first rows of the file"));
}

void ColumnsView::showColumns(const std::vector<exchange::GuessedColumn>& columns,
                              const std::vector<std::vector<std::string>>& rows) {
    filling_ = true;
    choosers_.clear();
    auto* page = new QWidget;
    auto* grid = new QGridLayout(page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kGroup);
    grid->setVerticalSpacing(space::kStep);
    const int count = std::min(static_cast<int>(columns.size()), kMostColumns);
    for (int column = 0; column < count; ++column) {
        const auto& guessed = columns[static_cast<std::size_t>(column)];
        auto* chooser = new QComboBox;
        chooser->setMinimumWidth(typePixels(kNarrowest));
        chooser->addItem(tr("left aside"), kLeftAside);
        for (int field = 0; field < exchange::kImportFieldCount; ++field) {
            chooser->addItem(fieldWords(static_cast<exchange::ImportField>(field)), field);
        }
        chooser->setCurrentIndex(
            chooser->findData(guessed.field ? static_cast<int>(*guessed.field) : kLeftAside));
        chooser->setAccessibleName(
            tr("what column %1, “%2”, is").arg(column + 1).arg(QString::fromStdString(guessed.header)));
        connect(chooser, &QComboBox::currentIndexChanged, this, [this] {
            if (!filling_) {
                emit changed();
            }
        });
        choosers_.push_back(chooser);
        grid->addWidget(chooser, 0, column);
        grid->addWidget(cellLabel(shortened(guessed.header), true), 1, column);
    }
    grid->addWidget(new RuledLine(Qt::Horizontal), 2, 0, 1, std::max(count, 1));
    for (int row = 0; row < kFirstLines && row < static_cast<int>(rows.size()); ++row) {
        const auto& cells = rows[static_cast<std::size_t>(row)];
        for (int column = 0; column < count && column < static_cast<int>(cells.size()); ++column) {
            grid->addWidget(cellLabel(shortened(cells[static_cast<std::size_t>(column)]), false), row + 3,
                            column);
        }
    }
    grid->setColumnStretch(count, 1);
    grid->setRowStretch(kFirstLines + 3, 1);
    setWidget(page);
    page->setAutoFillBackground(false); // the area has just switched it on
    filling_ = false;
}

exchange::ColumnLayout ColumnsView::columnLayout() const {
    exchange::ColumnLayout layout;
    for (const QComboBox* chooser : choosers_) {
        const int field = chooser->currentData().toInt();
        layout.push_back(field == kLeftAside ? std::nullopt
                                             : std::optional{static_cast<exchange::ImportField>(field)});
    }
    return layout;
}

void ColumnsView::setColumnLayout(const exchange::ColumnLayout& layout) {
    filling_ = true;
    for (std::size_t i = 0; i < choosers_.size() && i < layout.size(); ++i) {
        choosers_[i]->setCurrentIndex(
            choosers_[i]->findData(layout[i] ? static_cast<int>(*layout[i]) : kLeftAside));
    }
    filling_ = false;
}

QComboBox* ColumnsView::chooser(int column) const {
    return choosers_.at(static_cast<std::size_t>(column));
}

} // namespace wickbook::ui
