// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/style/marginal_note.h"

#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

constexpr int kMarkSize = 16;
constexpr int kMostCauses = 3;

QLabel* wrapped(const QString& text, TypeSize size, bool soft) {
    QLabel* label = makeLabel(text, size, soft);
    label->setWordWrap(true);
    return label;
}

} // namespace

NoteText noteText(const QLocale& locale, const checks::SpokenNote& note, units::TemperatureUnit unit) {
    const FindingWords words = findingWords(locale, note.lead, unit);
    NoteText text;
    text.wrong = note.lead.severity >= checks::Severity::Erroneous;
    text.title = words.title;
    text.message = words.message;
    text.remedy = words.remedy;
    const auto addCauses = [&](const checks::Finding& finding) {
        for (const checks::LikelyCause& cause : finding.causes) {
            if (std::ssize(text.causes) < kMostCauses) {
                text.causes.push_back(
                    {causeWords(locale, cause, unit), percentWords(locale, cause.humidityPercent)});
            }
        }
    };
    addCauses(note.lead);
    return text;
}

QueryMark::QueryMark(bool wrong, QWidget* parent) : QWidget(parent), wrong_(wrong) {
    setFixedSize(typePixels(kMarkSize), typePixels(kMarkSize));
    setAccessibleName(wrong ? tr("cross: cannot be right") : tr("circle: doubtful"));
}

void QueryMark::paint(QPainter& painter, const QRectF& where, bool wrong, const QPalette& palette) {
    const Tokens& tokens = tokensFor(palette);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(wrong ? tokens.wrong : tokens.query, 2, Qt::SolidLine, Qt::RoundCap));
    const QRectF mark = where.adjusted(2, 2, -2, -2);
    if (wrong) {
        painter.drawLine(mark.topLeft(), mark.bottomRight());
        painter.drawLine(mark.topRight(), mark.bottomLeft());
    } else {
        painter.drawEllipse(mark);
    }
    painter.restore();
}

void QueryMark::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    paint(painter, rect(), wrong_, palette());
}

MarginalNote::MarginalNote(const NoteText& text, const QString& readRight, QWidget* parent)
    : QFrame(parent), text_(text) {
    setProperty("query", true);
    setFocusPolicy(text.causes.empty() && readRight.isEmpty() ? Qt::NoFocus : Qt::StrongFocus);
    setAccessibleName(text.title);
    setAccessibleDescription(text.message + QLatin1Char(' ') + text.remedy);

    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(space::kBetween, 12, space::kBetween, 12);
    row->setSpacing(space::kGroup);
    row->addWidget(new QueryMark(text.wrong), 0, Qt::AlignTop);
    auto* column = new QVBoxLayout;
    column->setSpacing(space::kStep);
    row->addLayout(column, 1);

    QLabel* title = wrapped(text.title, TypeSize::Body, false);
    title->setFont(typeFont(TypeSize::Body, true));
    column->addWidget(title);
    for (const QString& sentence : {text.message, text.remedy}) {
        if (!sentence.isEmpty()) {
            column->addWidget(wrapped(sentence, TypeSize::Label, false));
        }
    }
    addCauses(*column, readRight);
}

void MarginalNote::addCauses(QVBoxLayout& column, const QString& readRight) {
    if (!text_.causes.empty()) {
        column.addSpacing(space::kStep);
        column.addWidget(makeLabel(tr("Likely causes")));
        for (int index = 0; index < std::ssize(text_.causes); ++index) {
            const NoteText::Cause& cause = text_.causes[static_cast<std::size_t>(index)];
            QPushButton* button = causeRow(QString::number(index + 1), cause.words, cause.humidity);
            connect(button, &QPushButton::clicked, this, [this, index] { emit causeTaken(index); });
            column.addWidget(button);
        }
    }
    if (!readRight.isEmpty()) {
        QPushButton* button = causeRow(tr("Enter"), readRight, {});
        connect(button, &QPushButton::clicked, this, &MarginalNote::readRightChosen);
        column.addWidget(button);
    }
}

QPushButton* MarginalNote::causeRow(const QString& key, const QString& words, const QString& humidity) {
    auto* button = new QPushButton;
    button->setAutoDefault(true); // Enter on a cause takes it, and does not fall through to the note
    button->setAccessibleName(humidity.isEmpty() ? words
                                                 : tr("%1, then the humidity is %2").arg(words, humidity));
    auto* row = new QHBoxLayout(button);
    row->setContentsMargins(space::kStep, 2, space::kStep, 2);
    QLabel* keyLabel = makeLabel(key);
    keyLabel->setMinimumWidth(typePixels(18));
    row->addWidget(keyLabel, 0, Qt::AlignVCenter);
    QLabel* text = wrapped(words, TypeSize::Label, false);
    row->addWidget(text, 1);
    QLabel* result =
        makeLabel(humidity.isEmpty() ? humidity : tr("RH %1").arg(humidity), TypeSize::Label, false);
    result->setFont(typeFont(TypeSize::Label, true));
    row->addWidget(result);
    for (QLabel* label : {keyLabel, text, result}) {
        label->setAttribute(Qt::WA_TransparentForMouseEvents);
    }
    // A push button asks for the height of its own (empty) text; the row inside knows better.
    button->setMinimumHeight(row->sizeHint().height());
    button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
    return button;
}

void MarginalNote::keyPressEvent(QKeyEvent* event) {
    const int index = event->key() - Qt::Key_1;
    if (index >= 0 && index < std::ssize(text_.causes)) {
        emit causeTaken(index);
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        emit readRightChosen();
        return;
    }
    QFrame::keyPressEvent(event);
}

} // namespace wickbook::ui
