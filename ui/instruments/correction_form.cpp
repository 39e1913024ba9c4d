// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/instruments/correction_form.h"

#include "core/units/number_text.h"
#include "ui/commands/revise_facts.h"
#include "ui/instruments/correction_curve.h"
#include "ui/instruments/fitting_form.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QTableWidget>

#include <algorithm>
#include <cmath>

namespace wickbook::ui {

namespace {

constexpr int kPointLines = 12;
/// A thermometer further off than this is broken or misread, in degrees of its scale.
constexpr double kLargestCorrection = 10.0;

} // namespace

CorrectionForm::CorrectionForm(Session& session, const std::optional<record::Correction>& known,
                               const QLocale& locale, QWidget* parent)
    : FactForm(
          tr("Correction"), tr("A thermometer's correction"),
          tr("From a certificate or the ice point: what to add at which reading. Between the points it is "
             "taken as a straight line, beyond them as the nearest. It holds until the thermometer's next "
             "one."),
          parent)
    , session_(session)
    , locale_(locale) {
    if (known) {
        start_ = *known;
    }
    if (start_.id == record::Uuid{}) {
        start_.id = record::Uuid::random();
    }
    thermometer_ = new QComboBox;
    fillThermometers(*thermometer_, session.station(), start_.thermometer);
    addRow(tr("Thermometer"), thermometer_, "correctionThermometer");
    from_ = addLine(tr("From, year-month-day"), "correctionFrom",
                    known ? typedFrom(start_.from, session.station())
                          : QString::fromStdString(record::dateText(session.today())));
    from_->setPlaceholderText(tr("empty: from the beginning"));
    points_ = new QTableWidget(kPointLines, 2);
    points_->setHorizontalHeaderLabels({tr("At a reading of"), tr("add")});
    points_->verticalHeader()->hide();
    points_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    points_->setFont(typeFont(TypeSize::Body));
    for (std::size_t i = 0; i < start_.points.size() && i < kPointLines; ++i) {
        const auto put = [&](int column, double value) {
            const auto text = units::parseDecimal(units::exactText(value));
            points_->setItem(static_cast<int>(i), column,
                             new QTableWidgetItem(text ? readWords(locale, *text) : QString{}));
        };
        put(0, start_.points[i].reading);
        put(1, start_.points[i].correction);
    }
    points_->setFixedHeight(points_->horizontalHeader()->sizeHint().height() + 4 * points_->rowHeight(0) +
                            2 * points_->frameWidth());
    addRow(tr("Points"), points_, "correctionPoints");
    curve_ = new CorrectionCurve;
    addRow(tr("Drawn"), curve_, "correctionCurve");
    uncertainty_ = new TypedNumberEdit(tr("standard uncertainty"));
    if (const auto text = units::parseDecimal(units::exactText(start_.standardUncertainty))) {
        uncertainty_->setValue(*text);
    }
    uncertainty_->setSuffix(tr("degrees, standard (half of a ± for 95 %)"));
    addRow(tr("Uncertainty"), uncertainty_, "correctionUncertainty");
    source_ = addLine(tr("Where it comes from"), "correctionSource", QString::fromStdString(start_.source));
    source_->setPlaceholderText(tr("certificate and number, ice point, …"));
    connect(points_, &QTableWidget::cellChanged, this, &CorrectionForm::pointsChanged);
    connect(thermometer_, &QComboBox::currentIndexChanged, this, &CorrectionForm::pointsChanged);
    finish();
    previewChanges(session, locale, [this] {
        const record::Correction made = correction();
        return factsWith(session_.station().facts(), {{made.id, std::optional{made}}});
    });
    pointsChanged();
}

units::TemperatureUnit CorrectionForm::unit() const {
    const auto id = chosenThermometer(*thermometer_);
    const record::Thermometer* thermometer = id ? session_.station().thermometer(*id) : nullptr;
    return thermometer == nullptr ? units::TemperatureUnit::Celsius : thermometer->unit;
}

void CorrectionForm::pointsChanged() {
    curve_->show(points().value_or(std::vector<record::CorrectionPoint>{}), unit());
}

tl::expected<std::vector<record::CorrectionPoint>, QString> CorrectionForm::points() const {
    std::vector<record::CorrectionPoint> points;
    for (int row = 0; row < points_->rowCount(); ++row) {
        const auto text = [&](int column) {
            const QTableWidgetItem* item = points_->item(row, column);
            return item == nullptr ? QString{} : item->text().trimmed();
        };
        if (text(0).isEmpty() && text(1).isEmpty()) {
            continue;
        }
        const auto reading = units::parseDecimal(text(0).toStdString());
        if (!reading) {
            return tl::unexpected(
                decimalErrorWords(reading.error(), tr("reading in line %1").arg(row + 1), text(0)));
        }
        const auto add = units::parseDecimal(text(1).toStdString());
        if (!add) {
            return tl::unexpected(
                decimalErrorWords(add.error(), tr("correction in line %1").arg(row + 1), text(1)));
        }
        if (std::abs(add->toDouble()) > kLargestCorrection) {
            return tl::unexpected(tr("A correction of %1 is that of a broken thermometer. Look at line %2.")
                                      .arg(text(1), QString::number(row + 1)));
        }
        points.push_back({reading->toDouble(), add->toDouble()});
    }
    std::ranges::stable_sort(points, {}, &record::CorrectionPoint::reading);
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].reading == points[i - 1].reading) {
            return tl::unexpected(tr("Two points stand at the reading %1. Leave one of them out.")
                                      .arg(numberWords(locale_, points[i].reading, 1)));
        }
    }
    return points;
}

tl::expected<record::Correction, QString> CorrectionForm::read() const {
    record::Correction made = start_;
    const auto thermometer = chosenThermometer(*thermometer_);
    if (!thermometer) {
        return tl::unexpected(tr("Write down the thermometer first, under “Thermometers”."));
    }
    made.thermometer = *thermometer;
    const auto from = fromTyped(from_->text(), session_.station());
    if (!from) {
        return tl::unexpected(from.error());
    }
    made.from = *from;
    auto typed = points();
    if (!typed) {
        return tl::unexpected(typed.error());
    }
    if (typed->empty()) {
        return tl::unexpected(tr("Write at least one point: a reading, and what to add to it."));
    }
    made.points = std::move(*typed);
    if (!uncertainty_->isEmpty() && !uncertainty_->value()) {
        return tl::unexpected(uncertainty_->problem());
    }
    made.standardUncertainty = uncertainty_->value() ? uncertainty_->value()->toDouble() : 0.0;
    if (made.standardUncertainty < 0) {
        return tl::unexpected(tr("An uncertainty is not below zero."));
    }
    made.source = source_->text().trimmed().toStdString();
    if (made.source.empty()) {
        return tl::unexpected(tr("Write where the correction comes from: a certificate, an ice point."));
    }
    return made;
}

QString CorrectionForm::problem() const {
    const auto made = read();
    return made ? QString{} : made.error();
}

record::Correction CorrectionForm::correction() const {
    return *read();
}

} // namespace wickbook::ui
