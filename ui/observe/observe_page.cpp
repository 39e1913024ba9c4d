// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/observe/observe_page.h"

#include "core/desk/likely_observer.h"
#include "core/desk/wick_care.h"
#include "core/record/observing_hours.h"
#include "ui/observe/answer_panel.h"
#include "ui/observe/entry_form.h"
#include "ui/observe/fortnight_chart.h"
#include "ui/observe/hour_chooser.h"
#include "ui/observe/notes_panel.h"
#include "ui/observe/thermometer_drawing.h"
#include "ui/observe/whirl_timer.h"
#include "ui/observe/wick_choice.h"
#include "ui/observe/working_dialog.h"
#include "ui/observe/working_text.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace wickbook::ui {

namespace {

constexpr int kMinuteMilliseconds = 20000;
/// A station that notes no new wick for so long does not note them at all.
constexpr int kWickLookBackDays = 120;
constexpr int kFortnightDays = 13;
/// Where the columns stand before anything is typed, in °C.
constexpr double kUsualCelsius = 12;
/// A wet bulb as low as this within the last day and a half: the wick may freeze (our judgement).
constexpr double kFrostBelowCelsius = 2.0;
constexpr std::chrono::hours kFrostLookBack{36};

} // namespace

ObservePage::ObservePage(Session& session, const QString& draftFolder, QWidget* parent)
    : QWidget(parent), session_(session), draft_(std::make_unique<EntryDraft>(draftFolder, session.path())) {
    build();
    connectParts();
    chooser_->setStation(session_.station());
    if (const auto unfinished = draft_->read()) {
        showDraft(*unfinished);
    } else {
        offerHour();
    }
    minute_.start(kMinuteMilliseconds);
}

ObservePage::~ObservePage() {
    // A field that is left because the page goes would tell parts that are gone already.
    chooser_->disconnect(this);
    form_->disconnect(this);
}

void ObservePage::connectParts() {
    connect(chooser_, &HourChooser::changed, this, [this] {
        freshHour_ = false;
        edited();
        showKeptAlready();
    });
    connect(form_, &EntryForm::edited, this, &ObservePage::edited);
    connect(form_, &EntryForm::fieldLeft, this, [this] {
        // The keyboard went nowhere: the window lost it, or is going. What is going must not be built on.
        const bool nowhere = QApplication::focusWidget() == nullptr;
        QMetaObject::invokeMethod(
            this, [this] { speak(false); }, nowhere ? Qt::QueuedConnection : Qt::DirectConnection);
    });
    connect(form_, &EntryForm::saveRequested, this, &ObservePage::save);
    connect(form_, &EntryForm::beatWanted, this, &ObservePage::showBeat);
    connect(notes_, &NotesPanel::causeTaken, this, &ObservePage::takeCause);
    connect(&session_.undoStack(), &QUndoStack::indexChanged, this, [this](int index) {
        if (savedIndex_ && index < *savedIndex_ && !undo_->isHidden()) {
            say(tr("Taken back. Ctrl+Shift+Z keeps it again."));
        }
    });
    connect(notes_, &NotesPanel::readRightChosen, this, &ObservePage::save);
    connect(answer_, &AnswerPanel::workingWanted, this, &ObservePage::showWorking);
    connect(dryDrawing_, &ThermometerDrawing::moved, this, [this](double value) { moveBulb(true, value); });
    connect(wetDrawing_, &ThermometerDrawing::moved, this, [this](double value) { moveBulb(false, value); });
    connect(dryDrawing_, &ThermometerDrawing::movedBelowScale, this,
            [this] { form_->setBulbBelowScale(true); });
    connect(wetDrawing_, &ThermometerDrawing::movedBelowScale, this,
            [this] { form_->setBulbBelowScale(false); });
    connect(&session_, &Session::observationsChanged, this, [this] {
        showChart();
        if (!saving_) {
            showKeptAlready();
            speak(false);
        }
    });
    connect(&session_, &Session::factsChanged, this, [this] {
        showStation(); // the reading being typed is never overwritten by anything
        if (entry_.untouched()) {
            proposeObserver(entry_); // an absence may have been entered ahead
            showing_ = true;
            form_->setObserver(entry_.observer);
            showing_ = false;
        }
        showColumns();
        showLive();
        showChart();
    });
    connect(&session_, &Session::learnt, this, [this] {
        showChart();
        showLive();
    });
    connect(&session_, &Session::storageFailed, this, &ObservePage::storageFailed);
    connect(&minute_, &QTimer::timeout, this, &ObservePage::followClock);
}

EntryText ObservePage::entry() const {
    return entry_;
}

void ObservePage::keepDraft() {
    draft_->flush();
}

void ObservePage::focusEntry() {
    form_->focusFirst();
}

void ObservePage::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        form_->focusField(EntryField::Wet);
        return;
    }
    // Where no field takes the digit as a number, it takes a likely cause.
    const int cause = event->key() - Qt::Key_1;
    if ((event->modifiers() & ~Qt::KeypadModifier) == Qt::NoModifier && cause >= 0 && cause < 9 &&
        notes_->takeCause(cause)) {
        return;
    }
    QWidget::keyPressEvent(event);
}

void ObservePage::openHour(const record::ObservingHour& hour) {
    EntryText next = entry_;
    next.date = toQDate(hour.date);
    next.hourMinutes = static_cast<int>(hour.hour.count());
    next.clock.clear();
    proposeObserver(next);
    freshHour_ = false;
    showEntry(next);
    if (!next.untouched()) {
        draft_->keep(next);
    }
    showKeptAlready();
    focusEntry();
}

void ObservePage::showDraft(const EntryText& unfinished) {
    showEntry(unfinished);
    proposed_ = likelyObserver(unfinished.date);
    freshHour_ = false;
    const auto kept =
        entry_.hourMinutes < 0
            ? store::Result<std::optional<record::StoredObservation>>{std::nullopt}
            : session_.book().atHour({fromQDate(entry_.date), std::chrono::minutes{entry_.hourMinutes}});
    const auto typed = readEntry(entry_, session_.station(), session_.now());
    if (kept && *kept && typed && (*kept)->values.dry == typed->dry && (*kept)->values.wet == typed->wet) {
        // Ended after the reading went into the book and before its draft was taken away.
        draft_->drop();
        offerHour();
        return;
    }
    speak(false);
    say(tr("Your unfinished entry is here again."));
    showKeptAlready();
}

void ObservePage::offerHour() {
    const auto offer = session_.hourOnOffer();
    freshHour_ = true;
    if (!offer) {
        say(storeErrorWords(offer.error()), true);
    }
    if (offer && *offer) {
        startEntry(**offer);
    } else { // a station without hours keeps extra readings
        EntryText empty;
        empty.date = toQDate(session_.today());
        empty.observer = proposed_ = likelyObserver(empty.date);
        showEntry(empty);
    }
}

QString ObservePage::likelyObserver(QDate date) const {
    return QString::fromStdString(desk::likelyObserver(session_.book(), session_.station(), fromQDate(date),
                                                       session_.observer().toStdString()));
}

/// Initials that were proposed follow the date; initials that were typed stay.
void ObservePage::proposeObserver(EntryText& entry) {
    const QString likely = likelyObserver(entry.date);
    if (entry.observer == proposed_) {
        entry.observer = likely;
    }
    proposed_ = likely;
}

void ObservePage::startEntry(const record::ExpectedHour& hour) {
    EntryText empty;
    empty.date = toQDate(hour.hour.date);
    empty.hourMinutes = static_cast<int>(hour.hour.hour.count());
    empty.observer = proposed_ = likelyObserver(empty.date);
    showEntry(empty);
}

void ObservePage::showEntry(const EntryText& entry) {
    showing_ = true;
    entry_ = entry;
    chooser_->show(entry);
    form_->fill(entry);
    chooser_->read(entry_); // an hour the date does not have has become another
    showing_ = false;
    notes_->clear();
    seen_.reset();
    showStation();
    showColumns();
    showLive();
    showChart();
}

void ObservePage::showStation() {
    showing_ = true;
    chooser_->setStation(session_.station());
    chooser_->read(entry_);
    showing_ = false;
    const ThermometerScale scale = usualScale();
    if (!scale.sameThermometer(dryDrawing_->scale())) {
        dryDrawing_->setScale(scale);
        wetDrawing_->setScale(scale);
    }
    const record::StationPeriod& period = session_.station().periodAt(session_.now());
    form_->setUnit(session_.unit());
    const record::Thermometer* wet = session_.station().wetThermometerAt(session_.now());
    form_->setSettleStep(wet == nullptr ? 0.1 : wet->step.toDouble());
    form_->setWetFirst(period.exposure == psychrometry::Exposure::Whirled ||
                       period.exposure == psychrometry::Exposure::SlingUs);
}

ThermometerScale ObservePage::usualScale() const {
    const double usual = session_.unit() == units::TemperatureUnit::Celsius
                             ? kUsualCelsius
                             : units::Temperature::fromCelsius(kUsualCelsius).fahrenheit();
    return scaleOf(session_.station().dryThermometerAt(session_.now()), usual);
}

void ObservePage::edited() {
    if (showing_) {
        return;
    }
    EntryText next = entry_;
    form_->read(next);
    chooser_->read(next);
    if (next == entry_) {
        return;
    }
    if (next.date != entry_.date && next.observer == entry_.observer) {
        proposeObserver(next);
        showing_ = true;
        form_->setObserver(next.observer);
        showing_ = false;
    }
    if (next.dry != entry_.dry || next.wet != entry_.wet || next.wick != entry_.wick ||
        next.repeats != entry_.repeats) {
        notes_->clear(); // while a number is being typed the margin stays silent
    }
    entry_ = next;
    seen_.reset();
    message_->hide();
    if (undo_->isVisible()) {
        undo_->hide();
    }
    if (entry_.untouched()) {
        draft_->drop();
    } else {
        draft_->keep(entry_);
    }
    showColumns();
    showLive();
}

void ObservePage::showColumns() {
    const auto valueOf = [&](EntryField field) -> std::optional<double> {
        const auto value = form_->field(field)->value();
        return value ? std::optional{value->toDouble()} : std::nullopt;
    };
    const auto dry = valueOf(EntryField::Dry);
    const auto wet = valueOf(EntryField::Wet);
    const ThermometerScale scale = dryDrawing_->scale().showing(dry, wet);
    for (ThermometerDrawing* drawing : {dryDrawing_, wetDrawing_}) {
        drawing->setScale(scale);
    }
    dryDrawing_->setReading(dry, form_->field(EntryField::Dry)->isBelowScale());
    wetDrawing_->setReading(wet, form_->field(EntryField::Wet)->isBelowScale());
    bracket_->update();
}

void ObservePage::showLive() {
    chooser_->setGuidance(guidanceFor(session_.station(), entry_, session_.now(), frostLikely_, wickDays_));
    const auto time = entryTime(entry_, session_.station(), session_.now());
    chooser_->askWhich(time && time->cameTwice);
    EntryText readable = entry_;
    if (!time) { // a time still being typed is no reason to go without an answer
        readable.clock.clear();
    }
    const auto observation = readEntry(readable, session_.station(), session_.now());
    if (!observation) {
        answer_->showNothing({});
        return;
    }
    const record::DerivedReading reading = record::deriveReading(*observation, session_.station());
    const record::StationPeriod& period = session_.station().periodAt(observation->instant);
    if (observation->pressure) {
        form_->setPressureTaken({}, tr("as read"));
    } else {
        form_->setPressureTaken(numberWords(QLocale(), reading.pressure.hectopascals(), 0),
                                tr("from %1 m").arg(numberWords(QLocale(), period.elevation.metres(), 0)));
    }
    askWhereNeeded(*observation, reading);
    if (reading.derivation) {
        answer_->showReading(reading, period, session_.unit());
    } else if (observation->dry.belowScale || observation->wet.belowScale) {
        answer_->showNothing(
            tr("Below the scale there is no number to work with; it is kept as below scale."));
    } else {
        answer_->showNothing({});
    }
    if (working_ != nullptr && working_->isVisible()) {
        const QString hour = observation->hour ? hourAndDateWords(QLocale(), *observation->hour)
                                               : longDateWords(QLocale(), record::filedDate(*observation));
        const QString about = QString::fromStdString(session_.station().name()) + QStringLiteral(", ") + hour;
        working_->showWorking([reading, period, about, unit = session_.unit()](const Tokens& tokens) {
            return workingHtml(reading, period, unit, about, tokens);
        });
    }
}

void ObservePage::moveBulb(bool dry, double value) {
    form_->setBulb(dry, units::roundedDecimal(value, dryDrawing_->scale().decimals));
}

void ObservePage::showChart() {
    const record::StationDate today = session_.today();
    const record::StationDate from = today - date::days{kFortnightDays};
    const auto readings = session_.checkedOn(from, today);
    if (!readings) {
        return;
    }
    frostLikely_ = std::any_of(readings->begin(), readings->end(), [&](const auto& judged) {
        const auto& wet = judged.reading.wet.temperature;
        return wet && wet->celsius() <= kFrostBelowCelsius &&
               session_.now() - judged.reading.values().instant <= kFrostLookBack;
    });
    wickDays_.reset();
    if (const auto care = desk::wickCare(session_.book(), session_.station(),
                                         today - date::days{kWickLookBackDays}, today)) {
        if (const auto last = desk::lastNewWick(*care)) {
            wickDays_ = static_cast<int>((today - *last).count());
        }
    }
    const record::Zone zone = session_.station().periodAt(session_.now()).zone;
    auto expected = record::expectedHours(session_.station(), from, today);
    std::erase_if(expected, [&](const record::ExpectedHour& hour) { return hour.instant > session_.now(); });
    chart_->setPoints(fortnightPoints(*readings, expected), record::startOfDate(from, zone),
                      record::startOfDate(today + date::days{1}, zone));
}

void ObservePage::showBeat() {
    beat_->setVisible(beat_->isHidden());
    if (beat_->isHidden()) {
        form_->focusFirst();
    } else {
        beat_->focusStart();
    }
}

void ObservePage::showWorking() {
    if (working_ == nullptr) {
        working_ = new WorkingDialog(this);
    }
    working_->show();
    working_->raise();
    showLive();
}

void ObservePage::followClock() {
    if (freshHour_ && entry_.untouched() && !chooser_->isBeingTyped()) {
        const auto offer = session_.hourOnOffer();
        if (offer && *offer &&
            (toQDate((*offer)->hour.date) != entry_.date ||
             static_cast<int>((*offer)->hour.hour.count()) != entry_.hourMinutes)) {
            const QString observer = entry_.observer; // initials may be all that is typed so far
            const bool typed = observer != proposed_;
            startEntry(**offer);
            if (typed) {
                form_->setObserver(observer);
            }
            return;
        }
    }
    chooser_->setGuidance(guidanceFor(session_.station(), entry_, session_.now(), frostLikely_, wickDays_));
}

} // namespace wickbook::ui
