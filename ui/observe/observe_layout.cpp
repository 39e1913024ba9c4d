// SPDX-License-Identifier: GPL-3.0-or-later
// How the Observe page is laid out: thermometers and fields on the left, the answer and the margin's notes
// on the right, a ruled line between.
#include "ui/observe/answer_panel.h"
#include "ui/observe/entry_form.h"
#include "ui/observe/fortnight_chart.h"
#include "ui/observe/hour_chooser.h"
#include "ui/observe/notes_panel.h"
#include "ui/observe/observe_page.h"
#include "ui/observe/thermometer_drawing.h"
#include "ui/observe/whirl_timer.h"
#include "ui/style/sheet.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/time_words.h"

#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

/// As high as the form wants while there is room; with rows unfolded in a low window it scrolls, and the
/// button under it stays in sight.
class FormScroll : public QScrollArea {
public:
    explicit FormScroll(QWidget* form) {
        setWidgetResizable(true);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        setFocusPolicy(Qt::NoFocus);
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
        setWidget(form);
        form->setAutoFillBackground(false);
        viewport()->setAutoFillBackground(false);
    }
    [[nodiscard]] QSize sizeHint() const override {
        return {widget()->minimumWidth() + kBar, widget()->sizeHint().height()};
    }
    [[nodiscard]] QSize minimumSizeHint() const override {
        return {sizeHint().width(), std::min(sizeHint().height(), typePixels(240))};
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::LayoutRequest) {
            updateGeometry();
        }
        return QScrollArea::eventFilter(watched, event);
    }

private:
    static constexpr int kBar = 12; ///< the scroll bar, beside the fields
};

QVBoxLayout* withWord(ThermometerDrawing* drawing, const QString& word, const char* bulb) {
    auto* column = new QVBoxLayout;
    column->setSpacing(space::kStep);
    QLabel* label = makeLabel(word, TypeSize::Label, false);
    label->setFont(typeFont(TypeSize::Label, true));
    label->setProperty("bulb", QLatin1String(bulb));
    column->addWidget(label);
    column->addWidget(drawing, 1);
    return column;
}

} // namespace

void ObservePage::build() {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    row->setSpacing(space::kEdge);
    row->addWidget(buildLeft(), 0);
    row->addWidget(new RuledLine(Qt::Vertical));
    row->addWidget(buildRight(), 1);
}

QWidget* ObservePage::buildLeft() {
    auto* left = new QWidget;
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kGroup);
    chooser_ = new HourChooser;
    column->addWidget(chooser_);

    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    dryDrawing_ = new ThermometerDrawing(Bulb::Dry);
    wetDrawing_ = new ThermometerDrawing(Bulb::Wet);
    for (ThermometerDrawing* drawing : {dryDrawing_, wetDrawing_}) {
        drawing->setScale(usualScale());
    }
    bracket_ = new DepressionBracket(*dryDrawing_, *wetDrawing_);
    auto* between = new QVBoxLayout;
    between->setSpacing(space::kStep);
    between->addWidget(makeLabel(QStringLiteral(" ")));
    between->addWidget(bracket_, 1);
    row->addLayout(withWord(dryDrawing_, tr("Dry bulb"), "dry"));
    row->addLayout(between);
    row->addLayout(withWord(wetDrawing_, tr("Wet bulb"), "wet"));
    row->addSpacing(space::kBetween);

    auto* entry = new QVBoxLayout;
    entry->setSpacing(space::kBetween);
    form_ = new EntryForm;
    // The words of another language may need more.
    const int formWidth = std::max(typePixels(340), form_->minimumSizeHint().width());
    form_->setFixedWidth(formWidth);
    entry->addWidget(new FormScroll(form_));
    auto* buttons = new QHBoxLayout;
    save_ = new QPushButton(tr("&Save  ⏎"));
    save_->setObjectName(QStringLiteral("observeSave"));
    save_->setProperty("primary", true);
    save_->setFont(typeFont(TypeSize::Body, true));
    save_->setAutoDefault(true);
    connect(save_, &QPushButton::clicked, this, &ObservePage::save);
    undo_ = new QPushButton(tr("Undo"));
    undo_->setProperty("quiet", true);
    undo_->hide();
    connect(undo_, &QPushButton::clicked, this, [this] { session_.undoStack().undo(); });
    openKept_ = new QPushButton(tr("Open it in the register"));
    openKept_->setProperty("quiet", true);
    openKept_->hide();
    connect(openKept_, &QPushButton::clicked, this, [this] {
        emit openInRegister({fromQDate(entry_.date), std::chrono::minutes{entry_.hourMinutes}});
    });
    buttons->addWidget(save_);
    buttons->addWidget(undo_);
    buttons->addWidget(openKept_);
    buttons->addStretch();
    entry->addLayout(buttons);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("observeMessage"));
    message_->setWordWrap(true);
    message_->setFixedWidth(formWidth);
    message_->hide();
    entry->addWidget(message_);
    entry->addStretch();
    row->addLayout(entry);
    column->addLayout(row, 1);
    return left;
}

QWidget* ObservePage::buildRight() {
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space::kBetween);
    answer_ = new AnswerPanel;
    notes_ = new NotesPanel;
    chart_ = new FortnightChart;
    beat_ = new WhirlTimer(draft_->path().isEmpty()
                               ? QString{}
                               : QFileInfo(draft_->path()).dir().filePath(QStringLiteral("whirl.ini")),
                           session_.path());
    beat_->hide();
    column->addWidget(answer_);
    column->addWidget(notes_);
    column->addWidget(beat_);
    column->addStretch();
    column->addWidget(makeLabel(tr("Last two weeks")));
    column->addWidget(chart_);
    // Several notes at once may need more height than the window has.
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(inside);
    inside->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    return scroll;
}

} // namespace wickbook::ui
