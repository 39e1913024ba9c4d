// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/classround/class_window.h"

#include "ui/classround/pairs_model.h"
#include "ui/classround/pairs_view.h"
#include "ui/paper/sheet_output.h"
#include "ui/print/class_sheet.h"
#include "ui/print/month_files.h"
#include "ui/style/look.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/class_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"

#include <QBuffer>
#include <QClipboard>
#include <QComboBox>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QPdfWriter>
#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr double kLowestPressure = 300; // hPa, as the checks' erroneous limit
constexpr double kHighestPressure = 1100;

} // namespace

ClassWindow::ClassWindow(const ClassStart& start, QWidget* parent)
    : QWidget(parent, Qt::Window), start_(start), model_(new PairsModel(this)) {
    setWindowTitle(tr("Class round"));
    model_->setLocale(QLocale());
    build(start);
    Look::follow(*this);
    applySetting();
    resize(typePixels(960), typePixels(640));
    connect(model_, &PairsModel::judged, this, &ClassWindow::showSummary);
    connect(new QShortcut(QKeySequence::Close, this), &QShortcut::activated, this, [this] { close(); });
    view_->setCurrentIndex(model_->index(0, PairsModel::Dry));
    view_->setFocus(Qt::OtherFocusReason);
}

void ClassWindow::build(const ClassStart& start) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(tr("Class round")));
    auto* what =
        makeLabel(tr("Many pairs of the same air, side by side. Pupils are numbers; nothing of this comes "
                     "into the station's register, and it is gone when the window has been started again."));
    what->setWordWrap(true);
    column->addWidget(what);
    column->addWidget(buildInstrument(start));

    view_ = new PairsView;
    view_->setAccessibleName(tr("Pairs of the class"));
    view_->setModel(model_);
    view_->horizontalHeader()->setSectionResizeMode(PairsModel::Notice, QHeaderView::Stretch);
    for (const int narrow : {PairsModel::Number, PairsModel::Dry, PairsModel::Wet}) {
        view_->setColumnWidth(narrow, typePixels(76));
    }
    for (const int wide :
         {PairsModel::Wick, PairsModel::Depression, PairsModel::Humidity, PairsModel::DewPoint}) {
        const QString head = model_->headerData(wide, Qt::Horizontal, Qt::DisplayRole).toString();
        const int needs = view_->horizontalHeader()->fontMetrics().horizontalAdvance(head);
        view_->setColumnWidth(
            wide, std::max(typePixels(wide == PairsModel::Wick ? 76 : 96), needs + typePixels(16)));
    }
    view_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    column->addWidget(view_, 1);

    summary_ = makeLabel({}, TypeSize::Body, false);
    summary_->setObjectName(QStringLiteral("classSummary"));
    summary_->setWordWrap(true);
    summary_->setAccessibleDescription(tr("What the class found"));
    column->addWidget(summary_);
    column->addWidget(buildFoot());
    message_ = makeLabel({});
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
}

QWidget* ClassWindow::buildInstrument(const ClassStart& start) {
    auto* box = new QWidget;
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    const auto add = [&](const QString& words, QWidget* field) {
        auto* label = makeLabel(words);
        label->setBuddy(field);
        field->setAccessibleName(QString(words).remove(QLatin1Char('&')));
        row->addWidget(label);
        row->addWidget(field);
        row->addSpacing(space::kGroup);
    };
    exposure_ = new QComboBox;
    for (const auto& entry : psychrometry::exposureTable()) {
        if (entry.exposure != psychrometry::Exposure::Own || start.coefficient.perKelvin) {
            exposure_->addItem(exposureWords(entry.exposure), static_cast<int>(entry.exposure));
        }
    }
    exposure_->setCurrentIndex(exposure_->findData(static_cast<int>(start.coefficient.exposure)));
    unit_ = new QComboBox;
    unit_->addItem(QStringLiteral("°C"), static_cast<int>(units::TemperatureUnit::Celsius));
    unit_->addItem(QStringLiteral("°F"), static_cast<int>(units::TemperatureUnit::Fahrenheit));
    unit_->setCurrentIndex(unit_->findData(static_cast<int>(start.unit)));
    step_ = new QComboBox;
    for (const double step : {0.1, 0.2, 0.5, 1.0}) {
        step_->addItem(numberWords(QLocale(), step, 1), step);
    }
    const double degrees =
        start.unit == units::TemperatureUnit::Celsius ? start.step.kelvins() : start.step.fahrenheitDegrees();
    for (int i = 0; i < step_->count(); ++i) {
        if (step_->itemData(i).toDouble() <= degrees + 1e-6) {
            step_->setCurrentIndex(i);
        }
    }
    pressure_ = new TypedNumberEdit(tr("pressure"));
    pressure_->setSuffix(QStringLiteral("hPa"));
    pressure_->setText(numberWords(QLocale(), start.pressure.hectopascals(), 0));
    pressure_->setMaximumWidth(typePixels(110));
    add(tr("&Instrument"), exposure_);
    add(tr("&Scale"), unit_);
    add(tr("Rea&d to"), step_);
    add(tr("&Pressure"), pressure_);
    row->addStretch(1);
    for (QComboBox* choice : {exposure_, unit_, step_}) {
        connect(choice, &QComboBox::currentIndexChanged, this, &ClassWindow::applySetting);
    }
    connect(pressure_, &QLineEdit::editingFinished, this, &ClassWindow::applySetting);
    return box;
}

QWidget* ClassWindow::buildFoot() {
    auto* box = new QWidget;
    auto* row = new QHBoxLayout(box);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    const auto sheets = [&](const QString& words, bool answers) {
        auto* button = new QPushButton(words);
        auto* menu = new QMenu(button);
        menu->addAction(tr("&Print…"), this, [this, answers] { print(answers); });
        menu->addAction(tr("&Save as PDF…"), this, [this, answers] { savePdf(answers); });
        button->setMenu(menu);
        row->addWidget(button);
        return button;
    };
    sheets(tr("&Work sheet"), false);
    answers_ = sheets(tr("Sheet with &answers"), true);
    auto* copy = new QPushButton(tr("&Copy as table"));
    connect(copy, &QPushButton::clicked, this, [this] {
        QGuiApplication::clipboard()->setText(model_->asTable());
        say(tr("Copied."));
    });
    row->addWidget(copy);
    row->addStretch(1);
    auto* again = new QPushButton(tr("Start a &new round"));
    connect(again, &QPushButton::clicked, this, &ClassWindow::startAgain);
    row->addWidget(again);
    return box;
}

void ClassWindow::applySetting() {
    comparison::RoundSetting setting;
    const auto exposure = static_cast<psychrometry::Exposure>(exposure_->currentData().toInt());
    setting.coefficient =
        exposure == start_.coefficient.exposure ? start_.coefficient : psychrometry::CoefficientRule{};
    setting.coefficient.exposure = exposure;
    const auto unit = static_cast<units::TemperatureUnit>(unit_->currentData().toInt());
    setting.step = units::scaleDegrees(step_->currentData().toDouble(), unit);
    setting.pressure = start_.pressure;
    QString problem = pressure_->problem();
    if (const auto pressure = pressure_->value()) {
        const double value = pressure->toDouble();
        if (value >= kLowestPressure && value <= kHighestPressure) {
            setting.pressure = units::Pressure::fromHectopascals(value);
        } else {
            problem = tr("The pressure where the class stands lies between %1 and %2 hPa: read it again.")
                          .arg(numberWords(QLocale(), kLowestPressure, 0),
                               numberWords(QLocale(), kHighestPressure, 0));
        }
    }
    pressure_->showProblem(problem);
    say(problem, true);
    model_->setSetting(setting, unit);
    showSummary();
}

void ClassWindow::showSummary() {
    summary_->setText(model_->isEmpty() ? tr("Type the first pair: dry, Enter, wet, Enter.")
                                        : roundWords(QLocale(), model_->round()));
    answers_->setEnabled(!model_->round().pupils.empty());
}

bool ClassWindow::paint(bool answers, QPagedPaintDevice& device) const {
    return writeClassSheet({model_->round(), model_->unit(), answers}, QLocale(), device);
}

void ClassWindow::print(bool answers) {
    const Paper paper =
        QLocale().measurementSystem() == QLocale::ImperialUSSystem ? Paper::Letter : Paper::A4;
    say(printSheet({classSheetTitle({{}, model_->unit(), answers}), paper,
                    [this, answers](QPagedPaintDevice& device) { return paint(answers, device); }},
                   this));
}

void ClassWindow::savePdf(bool answers) {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Save the sheet"), answers ? tr("class-answers.pdf") : tr("class-sheet.pdf"),
        tr("PDF (*.pdf)"));
    if (path.isEmpty()) {
        return;
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool painted = false;
    {
        QPdfWriter writer(&buffer);
        setUpPdf(writer, classSheetTitle({{}, model_->unit(), answers}), Paper::A4);
        painted = paint(answers, writer);
    }
    const auto written =
        painted ? writeWholeFile(path, bytes)
                : tl::unexpected(FileError{path, tr("The sheet could not be painted because of an error in "
                                                    "the program: nothing was written. Please report it.")});
    say(written ? tr("Saved.") : written.error().sentence, !written);
}

void ClassWindow::startAgain() {
    model_->clear();
    say({});
    view_->setCurrentIndex(model_->index(0, PairsModel::Dry));
    view_->setFocus(Qt::OtherFocusReason);
}

void ClassWindow::say(const QString& sentence, bool wrong) {
    message_->setProperty("wrong", wrong);
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
    refreshLook(*message_);
}

} // namespace wickbook::ui
