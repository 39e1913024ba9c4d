// SPDX-License-Identifier: GPL-3.0-or-later
// What the forms of the Station page say of a field that can't be taken: the sentences themselves.
#include "tests/support/open_book.h"
#include "ui/station/absence_form.h"
#include "ui/station/diary_form.h"
#include "ui/station/limits_form.h"
#include "ui/station/period_form.h"
#include "ui/station/station_form.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QTest>

namespace {

using namespace wickbook;

void fill(QWidget& form, const char* name, const char* text) {
    form.findChild<QLineEdit*>(QLatin1String(name))->setText(QString::fromUtf8(text));
}

void place(ui::StationForm& form, const char* latitude = "52", const char* elevation = "120") {
    fill(form, "stationName", "Invented Brook");
    fill(form, "stationLatitude", latitude);
    fill(form, "stationLongitude", "-1.5");
    fill(form, "stationElevation", elevation);
}

QString saidBy(const ui::StationForm& form) {
    const auto station = form.station();
    return station ? QString{} : station.error();
}

TEST(StationFormSentences, SayWhatAFieldNeeds) {
    ui::StationForm form;
    EXPECT_EQ(saidBy(form),
              QStringLiteral("Give the station a name, so that its book can be told from others."));
    fill(form, "stationName", "Invented Brook");
    EXPECT_EQ(saidBy(form), QStringLiteral("Write the latitude: the checks and the pressure need it."));
    place(form, "152");
    EXPECT_EQ(
        saidBy(form),
        QStringLiteral("There is no such place: latitude runs from −90 to 90, longitude from −180 to 180."));
    place(form, "52", "9500");
    EXPECT_EQ(saidBy(form),
              QStringLiteral("The elevation must lie between −500 and 9000 m; write it in metres."));
    place(form);
    auto* zone = form.findChild<QComboBox*>(QStringLiteral("stationZone"));
    const QString before = zone->currentText();
    zone->setEditText(QStringLiteral("Atlantis/Middle"));
    EXPECT_EQ(saidBy(form), QStringLiteral("There is no time zone of that name. Choose one from the list."));
    zone->setEditText(before);
    EXPECT_EQ(saidBy(form), QString{});
}

TEST(PeriodFormSentences, SayWhatAFieldNeeds) {
    test::OpenBook book;
    ui::PeriodForm form(book.session().station(), test::day(2026, 11, 22));
    EXPECT_EQ(form.change().error(),
              QStringLiteral("Nothing differs yet from what is in force. Change a field, or close this."));
    fill(form, "periodFrom", "2026-02-30");
    EXPECT_EQ(form.change().error(),
              QStringLiteral("“2026-02-30” is not a day of the calendar: check day and month."));
}

TEST(AbsenceFormSentences, SayWhatAFieldNeeds) {
    ui::AbsenceForm form(std::nullopt, test::day(2026, 11, 22));
    fill(form, "absenceTo", "2026-11-21");
    EXPECT_EQ(form.absence().error(),
              QStringLiteral("Put the last day on or after the first; it lies before it."));
    fill(form, "absenceTo", "2026-11-30");
    form.findChild<QComboBox*>(QStringLiteral("absenceReason"))->setEditText(QString{});
    EXPECT_EQ(form.absence().error(), QStringLiteral("Choose a reason or write one in your own words."));
}

TEST(DiaryFormSentences, SayWhatAFieldNeeds) {
    ui::DiaryForm form(std::nullopt, test::day(2026, 11, 22));
    fill(form, "diaryDate", "2026-11-23");
    EXPECT_EQ(form.entry().error(),
              QStringLiteral("Write it down once it has happened; this date is still to come."));
    fill(form, "diaryDate", "2026-11-22");
    form.findChild<QComboBox*>(QStringLiteral("diaryKind"))->setCurrentIndex(record::kDiaryKinds - 1);
    EXPECT_EQ(form.entry().error(), QStringLiteral("Write in the note what it was."));
}

TEST(LimitFormSentences, SayWhatAFieldNeeds) {
    test::OpenBook book;
    const auto* entry = checks::limitEntry("very-dry.lowest-humidity");
    ASSERT_NE(entry, nullptr);
    ui::LimitForm form(book.session(), *entry, false, QLocale::c());
    auto& message = *form.findChild<QLabel*>(QStringLiteral("limitMessage"));
    fill(form, "limitValue", "");
    EXPECT_EQ(form.changes().error(), QStringLiteral("Write the limit."));
    fill(form, "limitValue", "4");
    form.accept();
    EXPECT_EQ(message.text(), QStringLiteral("Write why: the reason is kept with the limit."));
    ui::LimitForm back(book.session(), *entry, true, QLocale::c());
    back.accept();
    EXPECT_EQ(back.findChild<QLabel*>(QStringLiteral("limitMessage"))->text(),
              QStringLiteral("The limit is so already."));
}

} // namespace
