// SPDX-License-Identifier: GPL-3.0-or-later
// The month on the page: what is read for it, how it is turned, what is said of the line under the pen.
#include "ui/oldpage/old_page.h"

#include "ui/oldpage/columns_dialog.h"
#include "ui/moving/month_edit.h"
#include "ui/oldpage/page_view.h"
#include "ui/style/look.h"
#include "ui/text/error_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/number_words.h"
#include "ui/text/time_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>
#include <map>

namespace wickbook::ui {

namespace {

date::year_month monthBefore(record::StationDate today) {
    const date::year_month_day day{today};
    return date::year_month{day.year(), day.month()} - date::months{1};
}

date::year_month monthOf(QDate date) {
    return date::year{date.year()} / date::month{static_cast<unsigned>(date.month())};
}

} // namespace

OldPage::OldPage(Session& session, QString settingsFile, QWidget* parent)
    : QWidget(parent), session_(session), settingsFile_(std::move(settingsFile)) {
    habits_ = PageHabits::load(settingsFile_, QString::fromStdString(session_.station().facts().id.toText()));
    model_ = new PageModel(QLocale(), this);
    build();
    connect(model_, &PageModel::cellTaken, this, [this] { showWords(); });
    connect(&session_, &Session::observationsChanged, this, &OldPage::bookChanged);
    connect(&session_, &Session::factsChanged, this, &OldPage::bookChanged);
    month_ = habits_.month.isValid() ? monthOf(habits_.month) : monthBefore(session_.today());
}

OldPage::~OldPage() {
    leaveAll(); // the book is closed with the pen on a line: that line too
}

store::Result<std::vector<PageLine>> OldPage::readLines() const {
    const record::StationDate first{date::local_days{month_ / 1}};
    const record::StationDate last{date::local_days{month_ / date::last}};
    const auto checked = session_.checkedOn(first, last);
    if (!checked) {
        return tl::unexpected(checked.error());
    }
    std::map<record::ObservingHour, PageLine> lines;
    for (const record::ExpectedHour& expected : record::expectedHours(session_.station(), first, last)) {
        PageLine line;
        line.expected = expected;
        line.toCome = expected.instant > session_.now();
        lines[expected.hour] = std::move(line);
    }
    for (const checks::CheckedReading& reading : *checked) {
        const record::Observation& values = reading.reading.values();
        if (!values.hour) {
            continue; // an extra reading has no line of its own on a page of hours
        }
        PageLine& line = lines[*values.hour]; // kept under an hour that is no longer due: shown as well
        if (line.expected.hour != *values.hour) {
            line.expected = {*values.hour, values.instant};
        }
        line.stored = reading.reading.stored;
        line.judged = reading;
        line.text = lineTextOf(values, QLocale());
    }
    std::vector<PageLine> result;
    for (auto& [hour, line] : lines) {
        result.push_back(std::move(line));
    }
    std::sort(result.begin(), result.end(),
              [](const PageLine& a, const PageLine& b) { return a.expected.instant < b.expected.instant; });
    return result;
}

void OldPage::showMonth(date::year_month month) {
    if (month_ != month && !leaveAll()) {
        say(tr("Some lines of this page are not in the book yet. Store them first, or empty them."), true);
        const QSignalBlocker quiet(monthEdit_);
        monthEdit_->setDate(firstOf(month_));
        return;
    }
    month_ = month;
    loaded_ = true;
    stale_ = false;
    reason_.clear();
    dropReason();
    closeEnd();
    {
        const QSignalBlocker quiet(monthEdit_);
        monthEdit_->setDate(firstOf(month));
    }
    auto lines = readLines();
    if (!lines) {
        say(storeErrorWords(lines.error()), true);
        lines = std::vector<PageLine>{};
    }
    const record::Thermometer* dry = session_.station().dryThermometerAt(
        lines->empty() ? session_.now() : lines->front().expected.instant);
    model_->setStation(&session_.station());
    model_->setReadOnly(!session_.readOnlySentence().isEmpty());
    model_->setImpliedDecimals(habits_.withoutPoint ? 1 : 0);
    model_->show(std::move(*lines), habits_, dry == nullptr ? units::TemperatureUnit::Celsius : dry->unit);
    heading_->setText(tr("From an old page"));
    say(session_.readOnlySentence(), true);
    fitColumns();
    showEmpty();
    keepHabits();
    view_->putPen(model_->firstOpenStop());
    showWords();
}

void OldPage::showEmpty() {
    const bool none = model_->lineCount() == 0;
    empty_->setVisible(none);
    view_->setVisible(!none);
    words_->setVisible(!none);
    if (!none) {
        return;
    }
    const auto& periods = session_.station().periods();
    const auto begun = std::find_if(periods.begin(), periods.end(), [](const record::StationPeriod& period) {
        return period.from && !period.hours.empty();
    });
    const QLocale locale;
    const record::Instant firstOfMonth{date::sys_days{month_ / 1}};
    if (begun != periods.end() && *begun->from > firstOfMonth) {
        const auto date = date::floor<date::days>(begun->zone.localAt(*begun->from));
        emptyWords_->setText(
            tr("This station's record begins on %1, so no reading was due in %2. To type this page off, let "
               "the station's first period begin earlier (Station page), or turn to the month it belongs to.")
                .arg(longDateWords(locale, date), monthWords(locale, month_)));
        emptyTurn_->setText(tr("&Turn to %1").arg(monthWords(locale, monthOf(toQDate(date)))));
        emptyTurn_->setProperty("month", firstOf(monthOf(toQDate(date))));
        emptyTurn_->show();
    } else {
        emptyWords_->setText(
            tr("This station has no observing hours in %1, so the page has no lines. Give it "
               "its hours on the Station page, then come back.")
                .arg(monthWords(locale, month_)));
        emptyTurn_->hide();
    }
}

void OldPage::bookChanged() {
    if (saving_ || !loaded_) {
        return;
    }
    if (!isVisible()) {
        stale_ = true;
        return;
    }
    stale_ = false;
    auto lines = readLines();
    if (!lines) {
        say(storeErrorWords(lines.error()), true);
        return;
    }
    const auto sameHours = [&] {
        return std::ssize(*lines) == model_->lineCount() &&
               std::equal(
                   lines->begin(), lines->end(), &model_->line(0),
                   [](const PageLine& a, const PageLine& b) { return a.expected.hour == b.expected.hour; });
    };
    if (lines->empty() || !sameHours()) {
        if (leaveAll()) {
            showMonth(month_);
        }
        return;
    }
    for (int number = 0; number < model_->lineCount(); ++number) {
        PageLine& shown = model_->line(number);
        PageLine& fresh = (*lines)[static_cast<std::size_t>(number)];
        const LineText was = shown.stored ? lineTextOf(shown.stored->values, QLocale()) : LineText{};
        if (shown.text == was) { // what is being typed is never overwritten by anything
            shown.text = fresh.text;
        }
        shown.stored = fresh.stored;
        shown.judged = fresh.judged;
        shown.toCome = fresh.toCome;
        model_->lineChanged(number);
    }
    if (end_->isVisible()) {
        refreshEnd();
    }
    showWords();
}

void OldPage::focusPage() {
    if (model_->lineCount() == 0) {
        monthEdit_->setFocus(Qt::OtherFocusReason);
        return;
    }
    if (!view_->currentIndex().isValid()) {
        view_->putPen(model_->firstOpenStop());
    }
    view_->setFocus(Qt::OtherFocusReason);
}

void OldPage::keepHabits() {
    habits_.month = firstOf(month_);
    habits_.paperBook = paperBook_->text().trimmed();
    habits_.readBy = readBy_->text().trimmed();
    habits_.save(settingsFile_, QString::fromStdString(session_.station().facts().id.toText()));
}

void OldPage::applyHabits(const PageHabits& habits) {
    if (habits == habits_) {
        return;
    }
    view_->takeOpenCell();
    const int line = model_->lineAt(view_->currentIndex());
    const PageField field =
        view_->currentIndex().isValid() ? model_->columnAt(view_->currentIndex()).field : PageField::Dry;
    habits_ = habits;
    model_->setImpliedDecimals(habits_.withoutPoint ? 1 : 0);
    model_->setHabits(habits_);
    fitColumns();
    if (line >= 0) {
        const QModelIndex same = model_->indexOf(line, field);
        view_->putPen(same.isValid() ? same : model_->indexOf(line, PageField::Dry));
    }
    keepHabits();
    showWords();
}

void OldPage::stepMonth(int by) {
    showMonth(month_ + date::months{by});
    view_->setFocus();
}

void OldPage::chooseMonth() {
    if (monthOf(monthEdit_->date()) != month_) {
        showMonth(monthOf(monthEdit_->date()));
    }
}

void OldPage::goToDay() {
    bool isNumber = false;
    const int wanted = day_->text().trimmed().toInt(&isNumber);
    for (int number = 0; isNumber && number < model_->lineCount(); ++number) {
        const date::year_month_day day{model_->line(number).expected.hour.date};
        if (static_cast<int>(static_cast<unsigned>(day.day())) == wanted) {
            day_->clear();
            const auto fields = habits_.shownFields();
            const auto stop = std::find_if(fields.begin(), fields.end(),
                                           [this](PageField field) { return habits_.isOnTheWay(field); });
            view_->putPen(model_->indexOf(number, stop == fields.end() ? PageField::Dry : *stop));
            view_->setFocus();
            return;
        }
    }
    say(tr("This month has no line for “%1”. Write the day as a number.").arg(day_->text().trimmed()), true);
    day_->selectAll();
}

void OldPage::movePenColumn(int by) {
    if (!view_->currentIndex().isValid() ||
        model_->columnAt(view_->currentIndex()).kind != PageModel::ColumnKind::Field) {
        return;
    }
    const PageField field = model_->columnAt(view_->currentIndex()).field;
    const auto shown = habits_.shownFields();
    const auto at = std::find(shown.begin(), shown.end(), field) - shown.begin();
    const auto to = at + by;
    if (to < 0 || to >= std::ssize(shown)) {
        return;
    }
    const PageField neighbour = shown[static_cast<std::size_t>(to)];
    PageHabits habits = habits_;
    const auto place =
        std::find_if(habits.columns.begin(), habits.columns.end(),
                     [neighbour](const OldPageColumn& column) { return column.field == neighbour; });
    habits.moveColumn(field, static_cast<int>(place - habits.columns.begin()) + (by > 0 ? 1 : 0));
    applyHabits(habits);
}

void OldPage::chooseColumns() {
    view_->takeOpenCell();
    auto* dialog = new ColumnsDialog(habits_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        PageHabits habits = habits_;
        habits.columns = dialog->columns();
        applyHabits(habits);
        view_->setFocus();
    });
    dialog->open();
}

void OldPage::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    const int was = model_->lineAt(previous);
    const int is = model_->lineAt(current);
    if (was >= 0 && was != is) {
        leaveLine(was);
    }
    showWords();
}

QString OldPage::lineWords(const PageLine& line) const {
    const QLocale locale;
    QStringList words;
    if (line.readAgain == ReadAgain::Differs && !habits_.notesAtEnd) {
        for (const PageField field : differences(line.text, line.again)) {
            words << tr("%1: first %2, the second time %3. Ctrl+E settles which the paper says.")
                         .arg(pageFieldWords(field),
                              line.text.missing.isEmpty() ? line.text.cell(field).text
                                                          : missingWords(line.text.missing),
                              line.again.missing.isEmpty() ? line.again.cell(field).text
                                                           : missingWords(line.again.missing));
        }
    }
    // In the second pass nothing is said of a line before it has been typed: it would give the first away.
    const bool blind = model_->isReadingBack() && line.readAgain == ReadAgain::NotYet;
    if (line.judged && line.stored && !habits_.notesAtEnd && !blind) {
        const bool half = !line.stored->values.dry.given() || !line.stored->values.wet.given();
        for (const checks::SpokenNote& note : checks::spokenNotes(line.judged->findings)) {
            if (half && note.lead.code == "incomplete") {
                continue; // the other bulb may be typed yet; the page's end asks for it
            }
            const FindingWords said = findingWords(locale, note.lead, session_.unit());
            QString sentence = QStringLiteral("%1. %2").arg(said.title, said.message);
            const NoteText causes = noteText(locale, note, session_.unit());
            for (std::size_t i = 0; i < causes.causes.size(); ++i) {
                sentence += QLatin1Char(' ') + tr("Alt+%1: %2 (%3).")
                                                   .arg(QString::number(i + 1), causes.causes[i].words,
                                                        causes.causes[i].humidity);
            }
            words << sentence;
        }
    }
    return words.join(QLatin1Char(' '));
}

void OldPage::showWords() {
    const QModelIndex here = view_->currentIndex();
    const int number = model_->lineAt(here);
    if (number < 0) {
        words_->setText({});
        return;
    }
    const PageLine& line = model_->line(number);
    const QString problem = here.data(PageModel::ProblemRole).toString();
    QString words = problem.isEmpty() ? lineWords(line) : problem;
    if (words.isEmpty() && line.toCome) {
        words = tr("This hour is still to come.");
    }
    const QString said = hourAndDateWords(QLocale(), line.expected.hour) + QStringLiteral(": ") +
                         (words.isEmpty() ? pageMarkWords(model_->markOf(line)) : words);
    words_->setText(said);
    words_->setToolTip(said);
    words_->setProperty("wrong", !problem.isEmpty());
    refreshLook(*words_);
}

void OldPage::say(const QString& sentence, bool wrong) {
    message_->setText(sentence);
    message_->setProperty("wrong", wrong);
    refreshLook(*message_);
    message_->setVisible(!sentence.isEmpty());
}

void OldPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    // Read when first looked at: a book opens no later for having this page.
    if (!loaded_) {
        showMonth(month_);
    } else if (stale_) {
        bookChanged();
    }
}

void OldPage::hideEvent(QHideEvent* event) {
    if (loaded_) {
        leaveAll();
        keepHabits();
    }
    QWidget::hideEvent(event);
}

} // namespace wickbook::ui
