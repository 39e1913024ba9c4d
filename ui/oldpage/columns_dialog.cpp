// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/oldpage/columns_dialog.h"

#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"

#include <QCheckBox>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

ColumnsDialog::ColumnsDialog(const PageHabits& habits, QWidget* parent)
    : QDialog(parent), columns_(habits.columns) {
    Look::follow(*this);
    setWindowTitle(tr("Columns of the page"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kEdge, space::kEdge, space::kEdge);
    column->setSpacing(space::kGroup);
    auto* how =
        makeLabel(tr("Put the columns as the page in hand has them. Space switches a column on or off, "
                     "Ctrl+↑ and Ctrl+↓ move it."),
                  TypeSize::Body, false);
    how->setWordWrap(true);
    column->addWidget(how);
    list_ = new QListWidget;
    list_->setObjectName(QStringLiteral("pageColumns"));
    list_->setAccessibleName(tr("Columns, in the page's order"));
    list_->setMinimumHeight(typePixels(26) * kPageFieldCount);
    list_->installEventFilter(this);
    column->addWidget(list_);
    stops_ = new QCheckBox(tr("&Enter stops at this column"));
    stops_->setObjectName(QStringLiteral("enterStops"));
    column->addWidget(stops_);
    auto* buttons = new QHBoxLayout;
    auto* up = new QPushButton(tr("Move &up"));
    auto* down = new QPushButton(tr("Move &down"));
    auto* done = new QPushButton(tr("Use these"));
    done->setObjectName(QStringLiteral("useColumns"));
    done->setProperty("primary", true);
    done->setDefault(true);
    auto* leave = new QPushButton(tr("Leave as it was"));
    for (QPushButton* button : {up, down}) {
        button->setAutoDefault(false);
        buttons->addWidget(button);
    }
    buttons->addStretch();
    buttons->addWidget(leave);
    buttons->addWidget(done);
    column->addLayout(buttons);
    fill(0);

    connect(list_, &QListWidget::currentRowChanged, this, &ColumnsDialog::rowChanged);
    connect(list_, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        columns_[static_cast<std::size_t>(list_->row(item))].shown = item->checkState() == Qt::Checked;
        rowChanged();
    });
    connect(stops_, &QCheckBox::toggled, this, [this](bool on) {
        if (list_->currentRow() >= 0) {
            columns_[static_cast<std::size_t>(list_->currentRow())].onTheWay = on;
        }
    });
    connect(up, &QPushButton::clicked, this, [this] { move(-1); });
    connect(down, &QPushButton::clicked, this, [this] { move(1); });
    connect(done, &QPushButton::clicked, this, &QDialog::accept);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    list_->setFocus();
}

void ColumnsDialog::fill(int row) {
    const QSignalBlocker quiet(list_);
    list_->clear();
    for (const OldPageColumn& column : columns_) {
        auto* item = new QListWidgetItem(pageFieldWords(column.field), list_);
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        // A reading is its two bulbs: these columns stay.
        const bool bulb = column.field == PageField::Dry || column.field == PageField::Wet;
        item->setFlags(bulb ? Qt::ItemIsEnabled | Qt::ItemIsSelectable : item->flags());
        item->setCheckState(column.shown ? Qt::Checked : Qt::Unchecked);
    }
    list_->setCurrentRow(row);
    rowChanged();
}

void ColumnsDialog::rowChanged() {
    const QSignalBlocker quiet(stops_);
    const int row = list_->currentRow();
    stops_->setEnabled(row >= 0 && columns_[static_cast<std::size_t>(row)].shown);
    stops_->setChecked(row >= 0 && columns_[static_cast<std::size_t>(row)].onTheWay);
}

void ColumnsDialog::move(int by) {
    const int row = list_->currentRow();
    const int to = row + by;
    if (row < 0 || to < 0 || to >= list_->count()) {
        return;
    }
    std::swap(columns_[static_cast<std::size_t>(row)], columns_[static_cast<std::size_t>(to)]);
    fill(to);
}

bool ColumnsDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool up = key->key() == Qt::Key_Up;
        if (key->modifiers().testFlag(Qt::ControlModifier) && (up || key->key() == Qt::Key_Down)) {
            move(up ? -1 : 1);
            return true;
        }
    }
    return QDialog::eventFilter(watched, event);
}

} // namespace wickbook::ui
