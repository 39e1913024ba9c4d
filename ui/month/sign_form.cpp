// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/sign_form.h"

#include "ui/text/time_words.h"

#include <QLineEdit>

namespace wickbook::ui {

namespace {

QString whatIsSigned(const report::MonthReport& report) {
    const climate::HourSummary& all = report.summary.all;
    QString words =
        SignForm::tr("%1 of %2 readings at observing hours count. The numbers and the readings are "
                     "kept as they are now. A change stays possible afterwards; the month and its "
                     "report then say so.")
            .arg(QString::number(all.n), QString::number(all.expected));
    if (report.openQueries > 0) {
        words +=
            QLatin1Char(' ') +
            SignForm::tr("Queries still open: %1; their readings stay set aside. Better settle them first.")
                .arg(QString::number(report.openQueries));
    }
    return words;
}

} // namespace

SignForm::SignForm(const report::MonthReport& report, const QString& observer, const QLocale& locale,
                   QWidget* parent)
    : FactForm(tr("Sign off"), tr("Sign off %1").arg(monthWords(locale, report.month)), whatIsSigned(report),
               parent) {
    by_ = addLine(tr("&Initials or name"), "signBy", observer);
    note_ = addLine(tr("&Note"), "signNote");
    finish();
}

QString SignForm::problem() const {
    return by().isEmpty() ? tr("Write who signs the month off.") : QString{};
}

QString SignForm::by() const {
    return by_->text().trimmed();
}

QString SignForm::note() const {
    return note_->text().trimmed();
}

} // namespace wickbook::ui
