// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/month_page.h"

#include "ui/commands/revise_facts.h"
#include "ui/month/chart_panel.h"
#include "ui/month/month_numbers.h"
#include "ui/month/observations_export.h"
#include "ui/month/other_years.h"
#include "ui/month/queries_panel.h"
#include "ui/month/sign_form.h"
#include "ui/paper/sheet_output.h"
#include "ui/print/report_pdf.h"
#include "ui/style/patient_progress.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/text/error_words.h"
#include "ui/text/signing_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"
#include "ui/text/usual_words.h"

#include <QClipboard>
#include <QComboBox>
#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QUrl>
#include <QVBoxLayout>

namespace wickbook::ui {

MonthPage::MonthPage(Session& session, QWidget* parent) : QWidget(parent), session_(session) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    column->setSpacing(space::kGroup);
    column->addWidget(buildTop());
    empty_ = makeLabel({}, TypeSize::Body);
    empty_->setObjectName(QStringLiteral("empty"));
    empty_->setWordWrap(true);
    column->addWidget(empty_);

    completeness_ = makeLabel({}, TypeSize::Label, false);
    completeness_->setObjectName(QStringLiteral("completeness"));
    completeness_->setWordWrap(true);
    column->addWidget(completeness_);
    const auto line = [&](const char* name) {
        QLabel* made = makeLabel({}, TypeSize::Label, false);
        made->setObjectName(QLatin1String(name));
        made->setWordWrap(true);
        made->hide();
        column->addWidget(made);
        return made;
    };
    departure_ = line("departure");
    signing_ = line("signing");
    otherYears_ = new OtherYears(session_, this);
    connect(otherYears_, &OtherYears::found, this, &MonthPage::showDeparture);
    auto* halves = new QSplitter(Qt::Vertical);
    halves->setObjectName(QStringLiteral("monthHalves"));
    halves->setChildrenCollapsible(false);
    chart_ = new ChartPanel(session_, *otherYears_, locale());
    chart_->setObjectName(QStringLiteral("chart"));
    halves->addWidget(chart_);
    auto* below = new QSplitter(Qt::Horizontal);
    below->setObjectName(QStringLiteral("monthBelow"));
    below->setChildrenCollapsible(false);
    below->addWidget(buildNumbers());
    queries_ = new QueriesPanel(session_, locale());
    below->addWidget(queries_);
    below->setStretchFactor(0, 3);
    below->setStretchFactor(1, 2);
    below->setSizes({620, 420}); // the numbers' names are long
    halves->addWidget(below);
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    halves->setSizes({500, 500});
    setFocusProxy(chart_);
    column->addWidget(halves, 1);
    message_ = makeLabel({}, TypeSize::Label, false);
    message_->setObjectName(QStringLiteral("message"));
    message_->setWordWrap(true);
    message_->hide();
    openFolder_ = new QPushButton(tr("Open the &folder"));
    openFolder_->setObjectName(QStringLiteral("openFolder"));
    openFolder_->setAccessibleName(tr("Open the folder of the monthly return"));
    openFolder_->hide();
    connect(openFolder_, &QPushButton::clicked, this,
            [this] { QDesktopServices::openUrl(QUrl::fromLocalFile(returnFolder_)); });
    auto* foot = new QHBoxLayout;
    foot->addWidget(message_, 1);
    foot->addWidget(openFolder_);
    column->addLayout(foot);

    connect(chart_, &ChartPanel::openAsked, this, &MonthPage::openInRegister);
    connect(chart_, &ChartPanel::said, this, &MonthPage::say);
    connect(queries_, &QueriesPanel::openAsked, this, &MonthPage::openInRegister);
    connect(queries_, &QueriesPanel::said, this, &MonthPage::say);
    connect(&session_, &Session::observationsChanged, this, &MonthPage::bookChanged);
    connect(&session_, &Session::factsChanged, this, &MonthPage::bookChanged);
    connect(&session_, &Session::learnt, this, &MonthPage::bookChanged);
    // Reading the month and its other years waits until the page is looked at.
    month_ = monthToBeginWith();
}

/// This month; where nothing has been written down for two, as in a register that was brought in, the last
/// one that holds something.
date::year_month MonthPage::monthToBeginWith() const {
    const date::year_month_day today{session_.today()};
    const date::year_month now = today.year() / today.month();
    const auto span = session_.book().span();
    if (!span || !*span) {
        return now;
    }
    const record::Instant last = (*span)->second;
    const date::year_month_day day{
        date::floor<date::days>(session_.station().periodAt(last).zone.localAt(last))};
    const date::year_month newest = day.year() / day.month();
    return newest + date::months{2} < now ? newest : now;
}

MonthPage::~MonthPage() = default;

QWidget* MonthPage::buildTop() {
    auto* top = new QWidget;
    auto* row = new QHBoxLayout(top);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(space::kGroup);
    const auto button = [&](const QString& text, const QString& name, const QString& accessible) {
        auto* made = new QPushButton(text);
        made->setObjectName(name);
        made->setAccessibleName(accessible);
        made->setToolTip(accessible);
        return made;
    };
    auto* back = button(QStringLiteral("‹"), QStringLiteral("back"), tr("The month before (Alt+←)"));
    auto* on = button(QStringLiteral("›"), QStringLiteral("on"), tr("The month after (Alt+→)"));
    heading_ = makeHeading({});
    heading_->setObjectName(QStringLiteral("heading"));
    paper_ = new QComboBox;
    paper_->setObjectName(QStringLiteral("paper"));
    paper_->setAccessibleName(tr("Paper of the monthly return"));
    paper_->addItem(tr("A4"), static_cast<int>(Paper::A4));
    paper_->addItem(tr("Letter"), static_cast<int>(Paper::Letter));
    if (locale().measurementSystem() == QLocale::ImperialUSSystem) {
        paper_->setCurrentIndex(1);
    }
    sign_ = button(tr("&Sign off…"), QStringLiteral("sign"),
                   tr("Say that the month has been looked at and stands as it is"));
    connect(sign_, &QPushButton::clicked, this, &MonthPage::askToSign);
    auto* handOn = button(tr("Monthly re&turn…"), QStringLiteral("return"),
                          tr("Write the month's report, charts, tables and paragraph into a folder"));
    auto* print = button(tr("Pr&int…"), QStringLiteral("print"),
                         tr("Look at the month's pages as they will be printed"));
    connect(print, &QPushButton::clicked, this, &MonthPage::lookBeforePrinting);
    auto* all = button(tr("All readings as CS&V…"), QStringLiteral("export"),
                       tr("Write every observation of the book into one CSV file"));
    row->addWidget(back);
    row->addWidget(heading_);
    row->addWidget(on);
    row->addStretch();
    row->addWidget(sign_);
    row->addWidget(paper_);
    row->addWidget(print);
    row->addWidget(handOn);
    row->addWidget(all);
    const auto step = [this](int months) { showMonth(month_ + date::months{months}); };
    connect(back, &QPushButton::clicked, this, [step] { step(-1); });
    connect(on, &QPushButton::clicked, this, [step] { step(1); });
    connect(handOn, &QPushButton::clicked, this, &MonthPage::askForReturn);
    connect(all, &QPushButton::clicked, this, &MonthPage::askForExport);
    const auto shortcut = [&](const QKeySequence& keys, int months) {
        auto* made = new QShortcut(keys, this);
        made->setContext(Qt::WidgetWithChildrenShortcut);
        connect(made, &QShortcut::activated, this, [step, months] { step(months); });
    };
    shortcut(Qt::Key_PageUp, -1);
    shortcut(Qt::Key_PageDown, 1);
    shortcut(Qt::ALT | Qt::Key_Left, -1);
    shortcut(Qt::ALT | Qt::Key_Right, 1);
    return top;
}

QWidget* MonthPage::buildNumbers() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, space::kGroup, 0);
    column->setSpacing(space::kStep);
    numbers_ = new MonthNumbersModel(locale(), this);
    numbersView_ = new QTableView;
    numbersView_->setObjectName(QStringLiteral("numbers"));
    numbersView_->setModel(numbers_);
    numbersView_->setAccessibleName(tr("The month's numbers, at observing hours"));
    numbersView_->setSelectionMode(QAbstractItemView::SingleSelection);
    numbersView_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    numbersView_->setTabKeyNavigation(false);
    numbersView_->setShowGrid(false);
    numbersView_->setWordWrap(false);
    numbersView_->verticalHeader()->hide();
    numbersView_->verticalHeader()->setDefaultSectionSize(typePixels(20));
    numbersView_->horizontalHeader()->setHighlightSections(false);
    auto* copies = new QShortcut(QKeySequence::Copy, numbersView_);
    copies->setContext(Qt::WidgetShortcut);
    connect(copies, &QShortcut::activated, this, [this] {
        QGuiApplication::clipboard()->setText(numbers_->asTable());
        say(tr("The month's numbers are on the clipboard as a table."));
    });
    column->addWidget(numbersView_, 1);
    return box;
}

void MonthPage::showMonth(date::year_month month) {
    begun_ = true;
    month_ = month;
    say({});
    const bool stale = stale_;
    reload();
    chart_->showMonth(month);
    if (stale) {
        chart_->reload();
    }
}

void MonthPage::say(const QString& sentence) {
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty()); // an empty line is room for the numbers
    openFolder_->hide();
}

void MonthPage::bookChanged() {
    otherYears_->forget();
    if (!isVisible()) {
        stale_ = true;
        return;
    }
    reload();
    chart_->reload();
}

void MonthPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!begun_) {
        showMonth(month_);
    } else if (stale_) {
        reload();
        chart_->reload();
    }
}

void MonthPage::reload() {
    stale_ = false;
    heading_->setText(monthWords(locale(), month_));
    auto report = session_.monthReport(month_);
    if (!report) {
        report_.reset();
        say(storeErrorWords(report.error()));
        return;
    }
    report_ = std::move(*report);
    const bool nothing = report_->readings.empty();
    empty_->setText(tr("Nothing has been written down in %1.").arg(monthWords(locale(), month_)));
    empty_->setVisible(nothing);
    numbersView_->setVisible(!nothing);
    numbers_->show(*report_);
    QHeaderView& heads = *numbersView_->horizontalHeader();
    heads.setSectionResizeMode(QHeaderView::ResizeToContents);
    heads.setSectionResizeMode(0, QHeaderView::Stretch);
    completeness_->setText(completenessWords());
    completeness_->setVisible(!nothing);
    queries_->show(*report_);
    showSigning();
    showDeparture();
}

void MonthPage::showSigning() {
    const QStringList sentences = signingSentences(locale(), *report_);
    signing_->setText(sentences.join(QLatin1Char(' ')));
    signing_->setVisible(!sentences.isEmpty());
    const bool asSigned = report_->signedOff && report_->signedOff->asSigned();
    sign_->setText(asSigned ? tr("Take &signing back") : tr("&Sign off…"));
    sign_->setAccessibleName(asSigned ? tr("Take the month's signing back")
                                      : tr("Say that the month has been looked at and stands as it is"));
    sign_->setToolTip(sign_->accessibleName());
}

void MonthPage::showDeparture() {
    if (!report_) {
        return;
    }
    if (const report::OwnYears* years = otherYears_->of(report_->month)) {
        report_->ownYears = *years;
    }
    const bool nothing = report_->readings.empty();
    const QStringList sentences = departureSentences(locale(), *report_, session_.unit());
    departure_->setText(sentences.join(QLatin1Char(' ')));
    departure_->setVisible(!sentences.isEmpty() && !nothing);
}

QString MonthPage::signOff(const QString& by, const QString& note) {
    if (const QString readOnly = session_.readOnlySentence(); !readOnly.isEmpty()) {
        say(readOnly);
        return readOnly;
    }
    const std::string who = by.toStdString();
    const auto signing = report::signingOf(*report_, session_.now(), who, note.toStdString());
    const QString month = monthWords(locale(), month_);
    const auto done = reviseFact<record::MonthSigning>(session_, std::nullopt, signing, {who, "signed off"},
                                                       tr("%1 signed off").arg(month));
    const QString sentence =
        done ? tr("%1 is signed off (Ctrl+Z undoes it).").arg(month) : storeErrorWords(done.error());
    say(sentence);
    return sentence;
}

QString MonthPage::takeSigningBack() {
    if (const QString readOnly = session_.readOnlySentence(); !readOnly.isEmpty()) {
        say(readOnly);
        return readOnly;
    }
    const std::optional<record::MonthSigning> before = report_->signedOff->signing;
    const QString month = monthWords(locale(), month_);
    const QString text = tr("signing of %1 taken back").arg(month);
    const auto done = reviseFact<record::MonthSigning>(
        session_, before, std::nullopt, {session_.observer().toStdString(), text.toStdString()}, text);
    const QString sentence = done ? tr("%1 is no longer signed off (Ctrl+Z undoes it).").arg(month)
                                  : storeErrorWords(done.error());
    say(sentence);
    return sentence;
}

void MonthPage::askToSign() {
    if (!report_) {
        return;
    }
    if (report_->signedOff && report_->signedOff->asSigned()) {
        takeSigningBack();
        return;
    }
    if (report_->summary.hoursToCome > 0) {
        say(tr("%1 is not over: sign it off once its last hour has passed.")
                .arg(monthWords(locale(), month_)));
        return;
    }
    SignForm form(*report_, session_.observer(), locale(), this);
    if (form.exec() == QDialog::Accepted) {
        signOff(form.by(), form.note());
    }
}

QString MonthPage::completenessWords() const {
    const climate::HourSummary& all = report_->summary.all;
    QStringList sentences;
    sentences << tr("%1 of %2 readings at observing hours count; missing %3, set aside %4.")
                     .arg(QString::number(all.n), QString::number(all.expected), QString::number(all.missing),
                          QString::number(all.setAside));
    if (report_->summary.hoursToCome > 0) {
        const int toCome = report_->summary.hoursToCome;
        sentences << (toCome == 1 ? tr("One hour is still to come.")
                                  : tr("%n hours are still to come.", nullptr, toCome));
    }
    sentences << withheldSentences(*report_);
    const QString text = sentences.join(QLatin1Char(' '));
    return report_->station.facts().invented ? text + QStringLiteral(" · ") + inventedWords() : text;
}

QString MonthPage::writeReturn(const QString& folder, Paper paper) {
    if (stale_) {
        reload();
    }
    if (!report_) {
        return tr("The month could not be read, so nothing was written. Turn to another month and back, then "
                  "try again.");
    }
    const auto written = writeMonthFiles(*report_, {folder, paper, locale()});
    const QString sentence =
        written ? tr("%n files were written into %1.", nullptr, static_cast<int>(written->size()))
                      .arg(QDir::toNativeSeparators(folder))
                : written.error().sentence;
    say(sentence);
    returnFolder_ = folder;
    openFolder_->setVisible(written.has_value());
    return sentence;
}

QString MonthPage::exportAll(const QString& path) {
    PatientProgress progress(tr("Writing all readings…"), tr("&Cancel"), this);
    const auto written = exportObservations(
        session_, path, [&](std::size_t done, std::size_t total) { return progress.go(done, total); });
    const QString sentence = written ? tr("%1 observations were written to %2.")
                                           .arg(QString::number(*written), QDir::toNativeSeparators(path))
                                     : written.error();
    say(sentence);
    return sentence;
}

void MonthPage::lookBeforePrinting() {
    if (report_) {
        previewSheet({reportTitle(*report_, locale()), static_cast<Paper>(paper_->currentData().toInt()),
                      [this](QPagedPaintDevice& device) { return paintReport(*report_, locale(), device); }},
                     this);
    }
}

void MonthPage::askForReturn() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Folder for the monthly return"));
    if (!folder.isEmpty()) {
        writeReturn(folder, static_cast<Paper>(paper_->currentData().toInt()));
    }
}

void MonthPage::askForExport() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("All readings as CSV"), QStringLiteral("readings.csv"), tr("CSV files (*.csv)"));
    if (!path.isEmpty()) {
        exportAll(path);
    }
}

} // namespace wickbook::ui
