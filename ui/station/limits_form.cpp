// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/station/limits_form.h"

#include "core/units/number_text.h"
#include "ui/station/limits_counting.h"
#include "ui/style/look.h"
#include "ui/style/tokens.h"
#include "ui/style/type.h"
#include "ui/style/typed_number_edit.h"
#include "ui/text/error_words.h"
#include "ui/text/limit_words.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <cmath>

namespace wickbook::ui {

namespace {

/// Shown values carry no binary fractions: 16.2 °F, not 16.200000000000003.
double tidy(double value) {
    return std::round(value * 1000) / 1000;
}

} // namespace

LimitForm::LimitForm(Session& session, const checks::LimitEntry& entry, bool back, QLocale locale,
                     QWidget* parent)
    : QDialog(parent), session_(session), entry_(entry), back_(back), locale_(std::move(locale)) {
    setWindowTitle(tr("A limit of the checks"));
    Look::follow(*this);
    counting_ = new LimitsCounting(this);
    build();
    connect(counting_, &LimitsCounting::progressed, progress_, &QProgressBar::setValue);
    connect(counting_, &LimitsCounting::finished, this, &LimitForm::counted);
}

LimitForm::~LimitForm() {
    counting_->disconnect(this);
}

void LimitForm::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(space::kEdge, space::kBetween, space::kEdge, space::kBetween);
    const LimitRuleWords rule = limitRuleWords(ruleOfLimit(entry_.name));
    column->addWidget(makeHeading(rule.title));
    QLabel* does = makeLabel(rule.does, TypeSize::Body, false);
    does->setWordWrap(true);
    column->addWidget(does);
    const auto unit = session_.unit();
    QLabel* builtIn =
        makeLabel(tr("Built in: %1 (%2). A station may have %3.")
                      .arg(limitValueWords(locale_, entry_, entry_.value, unit),
                           limitSourceWords(entry_.source), limitRangeWords(locale_, entry_, unit)));
    builtIn->setWordWrap(true);
    column->addWidget(builtIn);

    auto* form = new QFormLayout;
    const auto row = [&](const QString& label, QLineEdit* field, const char* name) {
        field->setAccessibleName(label);
        field->setObjectName(QLatin1String(name));
        connect(field, &QLineEdit::textEdited, this, &LimitForm::asksAnew);
        QLabel* buddy = makeLabel(label);
        buddy->setBuddy(field);
        form->addRow(buddy, field);
    };
    if (!back_) {
        value_ = new TypedNumberEdit(limitNameWords(entry_.name));
        value_->setSuffix(limitUnitWords(entry_, unit));
        const double now =
            checks::StationLimits{session_.station().facts().limits}.at(session_.now()).value(entry_.name);
        if (const auto text = units::parseDecimal(units::exactText(tidy(shownLimit(entry_, now, unit))))) {
            value_->setValue(*text);
        }
        value_->selectAll();
        row(limitNameWords(entry_.name), value_, "limitValue");
    }
    from_ = new QLineEdit;
    from_->setPlaceholderText(back_ ? tr("for all readings") : tr("from the beginning"));
    row(tr("From, year-month-day, or empty"), from_, "limitFrom");
    why_ = new QLineEdit;
    row(tr("Why"), why_, "limitWhy");
    column->addLayout(form);
    QLabel* dated = makeLabel(tr("Each reading is judged by the limits that hold for its own date."));
    dated->setWordWrap(true);
    column->addWidget(dated);

    message_ = makeLabel({}, TypeSize::Body, false);
    message_->setObjectName(QStringLiteral("limitMessage"));
    message_->setWordWrap(true);
    message_->hide();
    column->addWidget(message_);
    auto* work = new QHBoxLayout;
    progress_ = new QProgressBar;
    progress_->setAccessibleName(tr("readings judged"));
    progress_->setRange(0, 100);
    progress_->hide();
    stop_ = new QPushButton(tr("S&top counting"));
    stop_->setObjectName(QStringLiteral("limitStop"));
    stop_->setAutoDefault(false);
    stop_->hide();
    connect(stop_, &QPushButton::clicked, counting_, &LimitsCounting::stop);
    work->addWidget(progress_, 1);
    work->addWidget(stop_);
    column->addLayout(work);
    column->addStretch();

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    keep_ = buttons->button(QDialogButtonBox::Ok);
    keep_->setObjectName(QStringLiteral("limitKeep"));
    keep_->setProperty("primary", true);
    connect(buttons, &QDialogButtonBox::accepted, this, &LimitForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &LimitForm::reject);
    column->addWidget(buttons);
    resize(typePixels(520), sizeHint().height());
    asksAnew();
}

QString LimitForm::why() const {
    return why_->text().trimmed();
}

tl::expected<record::LimitChanges, QString> LimitForm::changes() const {
    checks::LimitEdit edit;
    edit.name = std::string{entry_.name};
    if (value_ != nullptr) {
        const auto typed = value_->value();
        if (!typed) {
            return tl::unexpected(value_->isEmpty() ? tr("Write the limit.") : value_->problem());
        }
        edit.value = limitFromShown(entry_, typed->toDouble(), session_.unit());
    }
    if (const QString from = from_->text().trimmed(); !from.isEmpty()) {
        const auto date = record::parseDate(from.toStdString());
        if (!date) {
            return tl::unexpected(timeErrorWords(date.error(), from));
        }
        edit.from = record::startOfDate(*date, session_.station());
    }
    const auto after = checks::edited(session_.station().facts().limits, std::span{&edit, 1});
    if (!after) {
        return tl::unexpected(limitProblemWords(locale_, after.error(), session_.unit()));
    }
    return *after;
}

void LimitForm::showMessage(const QString& sentence, bool wrong) {
    message_->setProperty("wrong", wrong);
    message_->setText(sentence);
    message_->setVisible(!sentence.isEmpty());
    refreshLook(*message_);
}

void LimitForm::asksAnew() {
    {
        const QSignalBlocker quiet(counting_); // who types on must not be taken away from the field
        counting_->stop();
    }
    counted_ = false;
    progress_->hide();
    stop_->hide();
    keep_->setEnabled(true);
    keep_->setText(tr("See what changes"));
    showMessage({}, false);
}

void LimitForm::count(const record::LimitChanges& after) {
    progress_->setValue(0);
    progress_->show();
    stop_->show();
    keep_->setEnabled(false);
    stop_->setFocus();
    showMessage(tr("Judging the whole register once as it is and once as it would be."), false);
    counting_->begin(session_.path(), after, session_.now());
}

void LimitForm::counted(const QString& sentence) {
    progress_->hide();
    stop_->hide();
    keep_->setEnabled(true);
    keep_->setText(tr("Keep it"));
    counted_ = true;
    showMessage(sentence.isEmpty() ? tr("Not counted to the end. It can be kept all the same.") : sentence,
                false);
    keep_->setFocus();
}

void LimitForm::accept() {
    const auto after = changes();
    if (!after) {
        showMessage(after.error(), true);
        (value_ != nullptr ? static_cast<QLineEdit*>(value_) : from_)->setFocus();
        return;
    }
    if (*after == session_.station().facts().limits) {
        showMessage(tr("The limit is so already."), true);
        return;
    }
    if (why().isEmpty()) {
        showMessage(tr("Write why: the reason is kept with the limit."), true);
        why_->setFocus();
        return;
    }
    if (counted_) {
        QDialog::accept();
        return;
    }
    if (!counting_->isRunning()) {
        count(*after);
    }
}

void LimitForm::reject() {
    counting_->disconnect(this);
    counting_->stop();
    QDialog::reject();
}

} // namespace wickbook::ui
