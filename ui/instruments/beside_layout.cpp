// SPDX-License-Identifier: GPL-3.0-or-later
// How the comparison's window is laid out and filled; what its keys do is in beside_dialog.cpp.
#include "ui/instruments/beside_dialog.h"
#include "ui/instruments/beside_plot.h"
#include "ui/style/look.h"
#include "ui/style/scrolled_column.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/instrument_words.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace wickbook::ui {

namespace {

enum BesideTableColumn { WhenColumn, OtherColumn, OwnColumn, DifferenceColumn, RemarkColumn, BesideColumns };

QComboBox* wickBox() {
    auto* box = new QComboBox;
    box->addItem(QStringLiteral("–"), static_cast<int>(record::WickState::NotGiven));
    for (const auto wick : {record::WickState::Water, record::WickState::Ice}) {
        box->addItem(wickWords(wick), static_cast<int>(wick));
    }
    return box;
}

} // namespace

BesideDialog::BesideDialog(Session& session, const record::Uuid& comparison, QLocale locale, QWidget* parent)
    : QDialog(parent), session_(session), comparison_(comparison), locale_(std::move(locale)) {
    setWindowTitle(tr("Beside another instrument"));
    setObjectName(QStringLiteral("besideDialog"));
    Look::follow(*this);
    buildTop();
    connect(&session_, &Session::factsChanged, this, &BesideDialog::reload);
    reload();
    resize(typePixels(980), typePixels(620));
}

void BesideDialog::buildTop() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(makeHeading(QString::fromStdString(other().name)));
    auto* halves = new QHBoxLayout;
    halves->setSpacing(space::kBetween);
    auto* left = new QVBoxLayout;
    table_ = new QTableWidget(0, BesideColumns);
    table_->setObjectName(QStringLiteral("besideReadings"));
    table_->setAccessibleName(tr("readings of the other instrument"));
    table_->setHorizontalHeaderLabels(
        {tr("When"), tr("Other, RH %"), tr("Station, RH %"), tr("Difference"), tr("Remark")});
    table_->verticalHeader()->hide();
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setTabKeyNavigation(false);
    table_->installEventFilter(this);
    left->addWidget(table_, 1);
    left->addWidget(buildEntry());
    halves->addLayout(left, 1);
    halves->addWidget(buildAnswer(), 1);
    column->addLayout(halves, 1);
    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("besideMessage"));
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    const bool canWrite = session_.readOnlySentence().isEmpty();
    const auto button = [&](const QString& words, const char* name) {
        auto* made = buttons->addButton(words, QDialogButtonBox::ActionRole);
        made->setObjectName(QLatin1String(name));
        made->setAutoDefault(false);
        made->setEnabled(canWrite);
        return made;
    };
    connect(button(tr("&Bring in a file…"), "besideFile"), &QPushButton::clicked, this,
            &BesideDialog::askFile);
    takeBack_ = button(tr("&Take back"), "besideTakeBack");
    takeBack_->setToolTip(tr("Delete, in the table. Undo brings it again."));
    connect(takeBack_, &QPushButton::clicked, this, &BesideDialog::takeBackChosen);
    use_ = button(tr("&Use this coefficient…"), "besideUse");
    connect(use_, &QPushButton::clicked, this, &BesideDialog::useCoefficient);
    join_ = button(tr("&Join the records"), "besideJoin");
    join_->setToolTip(tr("The record goes on across the change of place or exposure"));
    connect(join_, &QPushButton::clicked, this, &BesideDialog::joinRecords);
    buttons->button(QDialogButtonBox::Close)->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    column->addWidget(buttons);
    clock_->setFocus();
}

QWidget* BesideDialog::buildEntry() {
    auto* entry = new QWidget;
    auto* grid = new QGridLayout(entry);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(space::kGroup);
    grid->setVerticalSpacing(space::kStep);
    int at = 0;
    constexpr int kInRow = 4;
    const auto add = [&](const QString& label, QWidget* field, const char* name) {
        field->setAccessibleName(label);
        field->setObjectName(QLatin1String(name));
        field->installEventFilter(this);
        QLabel* words = makeLabel(label);
        words->setBuddy(field);
        grid->addWidget(words, at / kInRow * 2, at % kInRow);
        grid->addWidget(field, at / kInRow * 2 + 1, at % kInRow);
        ++at;
    };
    const auto number = [&](const QString& label, const QString& what, const char* name) {
        auto* field = new TypedNumberEdit(what);
        add(label, field, name);
        return field;
    };
    date_ = new QLineEdit(QString::fromStdString(record::dateText(session_.today())));
    add(tr("Date"), date_, "besideDate");
    clock_ = new QLineEdit;
    clock_->setPlaceholderText(QStringLiteral("09:05"));
    add(tr("Time"), clock_, "besideClock");
    humidity_ = number(tr("Other: RH %"), tr("humidity of the other instrument"), "besideHumidity");
    temperature_ =
        number(tr("its air temperature"), tr("air temperature of the other instrument"), "besideTemperature");
    otherDry_ = number(tr("or its dry bulb"), tr("dry bulb of the other instrument"), "besideOtherDry");
    otherWet_ = number(tr("its wet bulb"), tr("wet bulb of the other instrument"), "besideOtherWet");
    otherWick_ = wickBox();
    add(tr("its wick"), otherWick_, "besideOtherWick");
    wind_ = number(tr("Wind, Beaufort"), tr("wind"), "besideWind");
    ownDry_ = number(tr("Station: dry"), tr("dry bulb of the station"), "besideOwnDry");
    ownWet_ = number(tr("wet"), tr("wet bulb of the station"), "besideOwnWet");
    ownWick_ = wickBox();
    add(tr("wick"), ownWick_, "besideOwnWick");
    QLabel* hint = makeLabel(tr("Enter keeps it. Empty: the register's reading within five minutes."));
    hint->setWordWrap(true);
    grid->addWidget(hint, at / kInRow * 2, at % kInRow, 2, 1);
    entry->setEnabled(session_.readOnlySentence().isEmpty());
    return entry;
}

QWidget* BesideDialog::buildAnswer() {
    const ScrolledColumn scrolled = makeScrolledColumn(tr("what the readings say"), space::kGroup);
    scrolled.area->setFrameShape(QFrame::NoFrame);
    QVBoxLayout* column = scrolled.column;
    answer_ = makeLabel({}, TypeSize::Body, false);
    answer_->setObjectName(QStringLiteral("besideAnswer"));
    answer_->setWordWrap(true);
    answer_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    column->addWidget(answer_);
    against_ = new BesidePlot(tr("other, RH %"), tr("station, RH %"));
    residuals_ = new BesidePlot(tr("depression, °C"), tr("station − other, RH %"));
    column->addWidget(against_, 1);
    column->addWidget(residuals_, 1);
    inWind_ = new BesidePlot(tr("wind, Beaufort"), tr("station − other, RH %"));
    inWind_->hide();
    column->addWidget(inWind_, 1);
    return scrolled.area;
}

void BesideDialog::say(const QString& sentence, bool wrong) {
    message_->setProperty("wrong", wrong);
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
    refreshLook(*message_);
}

void BesideDialog::reload() {
    shown_ = desk::readingsOf(session_.station().facts(), comparison_);
    differences_.clear();
    lacking_.clear();
    alike_ = false;
    proposed_.reset();
    const record::SideBySide compared = other();
    if (compared.purpose == record::BesidePurpose::Reference) {
        const auto answer = desk::besideReference(session_.book(), session_.station(), compared);
        answer ? showReference(*answer) : say(storeErrorWords(answer.error()), true);
    } else {
        const auto answer = desk::besideOverlap(session_.book(), session_.station(), compared);
        answer ? showOverlap(*answer) : say(storeErrorWords(answer.error()), true);
    }
    join_->setVisible(compared.purpose == record::BesidePurpose::Overlap);
    join_->setEnabled(alike_ && session_.readOnlySentence().isEmpty());
    use_->setVisible(compared.purpose == record::BesidePurpose::Reference);
    use_->setEnabled(proposed_.has_value() && session_.readOnlySentence().isEmpty());
    fillTable();
}

void BesideDialog::showReference(const desk::BesideReferenceAnswer& answer) {
    lacking_ = answer.lacking;
    std::vector<QPointF> against;
    std::vector<QPointF> residuals;
    for (const comparison::HumidityDifference& each : answer.spread.differences) {
        differences_.emplace_back(answer.readings.at(each.index).id, each.difference());
        against.emplace_back(each.reference, each.own);
        residuals.emplace_back(each.depression, each.difference());
    }
    QStringList lines = besideReferenceWords(locale_, answer.spread);
    lines << fittedCoefficientWords(locale_, answer.water) << fittedCoefficientWords(locale_, answer.ice);
    answer_->setText(lines.join(QLatin1Char('\n')));
    against_->show(std::move(against), {0, 1}, std::nullopt);
    std::optional<BesidePlot::Line> fitted;
    if (answer.spread.onDepression) {
        fitted = BesidePlot::Line{answer.spread.onDepression->intercept.value,
                                  answer.spread.onDepression->slope.value};
    }
    residuals_->show(std::move(residuals), {0, 0}, fitted);
    std::vector<QPointF> inWind;
    for (const comparison::HumidityDifference& each : answer.spread.differences) {
        if (each.windBeaufort) {
            inWind.emplace_back(*each.windBeaufort, each.difference());
        }
    }
    std::optional<BesidePlot::Line> windFit;
    if (answer.spread.onWind) {
        windFit = BesidePlot::Line{answer.spread.onWind->intercept.value, answer.spread.onWind->slope.value};
    }
    inWind_->show(std::move(inWind), {0, 0}, windFit);
    if (answer.water.usable()) {
        proposed_.emplace();
        proposed_->waterPerKelvin = answer.water.fit->slope.value;
        proposed_->relativeUncertainty = answer.water.relativeUncertainty;
        if (answer.ice.usable()) {
            proposed_->icePerKelvin = answer.ice.fit->slope.value;
        }
    }
}

void BesideDialog::showOverlap(const desk::OverlapAnswer& answer) {
    lacking_ = answer.lacking;
    std::vector<QPointF> against;
    std::vector<QPointF> residuals;
    for (std::size_t i = 0; i < answer.pairs.size(); ++i) {
        const auto old = psychrometry::derive(answer.pairs[i].station);
        const auto fresh = psychrometry::derive(answer.pairs[i].other);
        if (!old.relativeHumidity || !fresh.relativeHumidity) {
            continue;
        }
        const double difference = old.relativeHumidity->percent() - fresh.relativeHumidity->percent();
        differences_.emplace_back(answer.readings[i].id, difference);
        against.emplace_back(fresh.relativeHumidity->percent(), old.relativeHumidity->percent());
        residuals.emplace_back(old.depression.kelvins(), difference);
    }
    alike_ = answer.overlap.verdict == comparison::JoinVerdict::Alike;
    answer_->setText(overlapWords(locale_, answer.overlap).join(QLatin1Char('\n')));
    against_->show(std::move(against), {0, 1}, std::nullopt);
    residuals_->show(std::move(residuals), {0, 0}, std::nullopt);
}

void BesideDialog::fillTable() {
    const int before = table_->currentRow();
    table_->setRowCount(static_cast<int>(shown_.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const record::BesideReading& reading = shown_[static_cast<std::size_t>(row)];
        const auto local = session_.station().periodAt(reading.instant).zone.localAt(reading.instant);
        const QString when =
            locale_.toString(toQDate(date::floor<date::days>(local)), tr("d MMM yyyy")) + QLatin1Char(' ') +
            clockWords(reading.instant,
                       session_.station().periodAt(reading.instant).zone.offsetAt(reading.instant));
        QString otherWords = reading.humidity ? readWords(locale_, *reading.humidity) : QString{};
        if (otherWords.isEmpty() && reading.otherDry && reading.otherWet) {
            otherWords = tr("%1 / %2").arg(readWords(locale_, reading.otherDry->value),
                                           readWords(locale_, reading.otherWet->value));
        }
        QString difference;
        QString station;
        for (const auto& [id, value] : differences_) {
            if (id == reading.id) {
                difference = numberWords(locale_, value, 1);
                if (reading.humidity) {
                    station = numberWords(locale_, value + reading.humidity->toDouble(), 1);
                }
            }
        }
        int at = 0;
        for (const QString& cell : {when, otherWords, station, difference, lackOf(reading.id)}) {
            auto* item = new QTableWidgetItem(cell);
            const bool words = at == WhenColumn || at == RemarkColumn;
            item->setTextAlignment((words ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
            table_->setItem(row, at++, item);
        }
    }
    table_->resizeColumnsToContents();
    table_->setCurrentCell(std::min(std::max(before, 0), table_->rowCount() - 1), 0);
    takeBack_->setEnabled(!shown_.empty() && session_.readOnlySentence().isEmpty());
}

} // namespace wickbook::ui
