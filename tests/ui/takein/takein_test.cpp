// SPDX-License-Identifier: GPL-3.0-or-later
// Bringing in a register, on the real window over a real book. All values are invented.
#include "tests/support/open_book.h"
#include "ui/takein/columns_view.h"
#include "ui/takein/takein_dialog.h"
#include "ui/takein/verdict_model.h"
#include "ui/takein/withdraw_import.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QTest>

namespace {

using namespace wickbook;
using test::day;

const char* const kRegister = "date;hour;trocken;feucht;Bemerkung\n"
                              "2026-03-01;9:00;6,4;5,1;\n"
                              "2026-03-01;21:00;4,2;3,9;mist\n"
                              "2026-03-02;9:00;3,0;x;\n"
                              "2026-03-02;21:00;5,0;4,1;\n";

class TakeIn : public ::testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(book_.isOpen()); }

    QString put(const char* name, const QByteArray& text) const {
        const QString path = QDir(book_.folder()).filePath(QLatin1String(name));
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return path;
    }
    void open(const QString& file) {
        dialog_ = std::make_unique<ui::TakeInDialog>(book_.session(), memory());
        dialog_->show();
        dialog_->takeFiles({file});
        settle();
    }
    void settle() {
        ASSERT_TRUE(QTest::qWaitFor([this] { return !dialog_->isBusy(); }, 20000));
    }
    [[nodiscard]] QString memory() const { return settings_.filePath(QStringLiteral("memory.ini")); }
    template <typename T>
    [[nodiscard]] T& find(const char* name) const {
        T* found = dialog_->findChild<T*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return *found;
    }
    [[nodiscard]] ui::ColumnsView& columns() const { return *dialog_->findChild<ui::ColumnsView*>(); }
    [[nodiscard]] std::string sentence() const { return find<QLabel>("takeInSentence").text().toStdString(); }
    [[nodiscard]] QAbstractItemModel& lines() const { return *find<QTableView>("takeInLines").model(); }
    [[nodiscard]] std::string cell(int row, int column) const {
        return lines().index(row, column).data().toString().toStdString();
    }
    void press(const char* button) const {
        auto& found = find<QPushButton>(button);
        ASSERT_TRUE(found.isVisible() && found.isEnabled()) << button;
        found.setFocus();
        QTest::keyClick(&found, Qt::Key_Space);
    }
    void choose(const char* box, int index) { find<QComboBox>(box).setCurrentIndex(index); }
    [[nodiscard]] QByteArray bookBytes() const {
        QFile file(book_.path());
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return QCryptographicHash::hash(file.readAll(), QCryptographicHash::Sha256);
    }
    [[nodiscard]] QStringList folder() const {
        return QDir(book_.folder()).entryList(QDir::AllEntries | QDir::NoDotAndDotDot, QDir::Name);
    }

    test::OpenBook book_;
    QTemporaryDir settings_;
    std::unique_ptr<ui::TakeInDialog> dialog_;
};

TEST_F(TakeIn, GuessesShowsAndBringsIn) {
    open(put("r.csv", kRegister));
    const auto layout = columns().columnLayout();
    using Field = exchange::ImportField;
    ASSERT_EQ(layout.size(), 5U);
    EXPECT_EQ(layout[0], Field::Date);
    EXPECT_EQ(layout[1], Field::Hour);
    EXPECT_EQ(layout[2], Field::Dry);
    EXPECT_EQ(layout[3], Field::Wet);
    EXPECT_EQ(layout[4], Field::Note);
    EXPECT_EQ(sentence().find("4 lines: 3 new"), 0U) << sentence();
    ASSERT_EQ(lines().rowCount(), 4);
    EXPECT_EQ(cell(0, ui::VerdictModel::When), "2026-03-01 9 h");
    EXPECT_EQ(cell(2, ui::VerdictModel::Verdict), "left out");
    EXPECT_NE(cell(2, ui::VerdictModel::Sentence).find("is not a number"), std::string::npos);
    EXPECT_FALSE(book_.at(day(2026, 3, 1), 9)) << "nothing is written before the button";

    press("takeInBring");
    settle();
    EXPECT_EQ(sentence().find("Brought in: 3"), 0U) << sentence();
    const auto reading = book_.at(day(2026, 3, 1), 21);
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->dry.value->value, (units::Decimal{42, 1}));
    EXPECT_EQ(reading->note, "mist");
    // A copy of the book as it was stands among its copies, and holds nothing of what came in.
    const QDir shelf(QDir(book_.folder()).filePath(QStringLiteral("hill copies")));
    const auto copies = shelf.entryList(QDir::Files);
    ASSERT_EQ(copies.size(), 1);
    EXPECT_TRUE(copies.front().endsWith(QStringLiteral(" before-bringing-in.wickbook")));
    const auto copy =
        store::Book::open(shelf.filePath(copies.front()).toStdString(), store::OpenMode::ReadOnly);
    ASSERT_TRUE(copy);
    EXPECT_EQ(copy->observationCount().value(), 0);
}

TEST_F(TakeIn, IsOneStepOfUndo) {
    book_.keep(day(2026, 3, 1), 9, {70, 1}, {60, 1});
    open(put("r.csv", kRegister));
    choose("takeInConflict", 1); // take the file's
    press("takeInBring");
    settle();
    EXPECT_EQ(book_.at(day(2026, 3, 1), 9)->dry.value->value, (units::Decimal{64, 1}));
    ASSERT_EQ(book_.session().undoStack().count(), 1);
    press("takeInWithdraw");
    EXPECT_EQ(book_.at(day(2026, 3, 1), 9)->dry.value->value, (units::Decimal{70, 1}));
    EXPECT_FALSE(book_.at(day(2026, 3, 1), 21));
    book_.session().undoStack().redo();
    EXPECT_EQ(book_.at(day(2026, 3, 1), 9)->dry.value->value, (units::Decimal{64, 1}));
    EXPECT_TRUE(book_.at(day(2026, 3, 1), 21));
    EXPECT_TRUE(book_.session().book().verify()->sound());
}

TEST_F(TakeIn, ConflictsAreThePersonsChoice) {
    book_.keep(day(2026, 3, 1), 9, {70, 1}, {60, 1});
    book_.keep(day(2026, 3, 1), 21, {42, 1}, {39, 1});
    open(put("r.csv", "date,hour,dry,wet\n2026-03-01,9,6.4,5.1\n2026-03-01,21,4.2,3.9\n2026-03-02,9,5,4\n"));
    EXPECT_NE(sentence().find("1 new"), std::string::npos) << sentence();
    EXPECT_NE(sentence().find("1 there already"), std::string::npos);
    EXPECT_NE(sentence().find("1 in conflict"), std::string::npos);
    EXPECT_EQ(cell(0, ui::VerdictModel::Verdict), "conflict: kept");
    EXPECT_TRUE(find<QPushButton>("takeInBring").text().endsWith(QStringLiteral(" 1")));
    choose("takeInConflict", 1);
    EXPECT_EQ(cell(0, ui::VerdictModel::Verdict), "conflict: revised");
    EXPECT_TRUE(find<QPushButton>("takeInBring").text().endsWith(QStringLiteral(" 2")));
    choose("takeInConflict", 2);
    EXPECT_EQ(cell(0, ui::VerdictModel::Verdict), "conflict: left out");
    choose("takeInShow", 3);
    EXPECT_EQ(lines().rowCount(), 1);
    find<QTableView>("takeInLines").setCurrentIndex(lines().index(0, 0));
    EXPECT_EQ(find<QLabel>("takeInDetail").text().toStdString().find("The book has 7.0"), 0U);
    choose("takeInConflict", 0);
    press("takeInBring");
    settle();
    EXPECT_EQ(book_.at(day(2026, 3, 1), 9)->dry.value->value, (units::Decimal{70, 1}));
    EXPECT_TRUE(book_.at(day(2026, 3, 2), 9));
}

TEST_F(TakeIn, AnotherMeaningOfAColumnIsTriedAgain) {
    open(put("r.csv", "time,a,b,c\n2026-03-01T09:00Z,5.1,6.4,p\n2026-03-01T21:00Z,3.9,4.2,q\n"));
    EXPECT_NE(sentence().find("dry bulb"), std::string::npos) << sentence();
    EXPECT_FALSE(find<QPushButton>("takeInBring").isEnabled());
    const auto set = [&](int column, exchange::ImportField field) {
        auto* chooser = columns().chooser(column);
        chooser->setCurrentIndex(chooser->findData(static_cast<int>(field)));
    };
    set(2, exchange::ImportField::Dry);
    set(1, exchange::ImportField::Dry);
    settle();
    EXPECT_NE(sentence().find("can't be the same"), std::string::npos) << sentence();
    set(1, exchange::ImportField::Wet);
    settle();
    EXPECT_NE(sentence().find("2 new"), std::string::npos) << sentence();
    press("takeInBring");
    settle();
    EXPECT_EQ(book_.at(day(2026, 3, 1), 9)->dry.value->value, (units::Decimal{64, 1}));

    // The next file with these names is read in the same way.
    open(put("next.csv", "time,a,b,c\n2026-03-03T09:00Z,5.1,6.4,p\n"));
    EXPECT_EQ(columns().columnLayout()[2], exchange::ImportField::Dry);
    EXPECT_NE(sentence().find("1 new"), std::string::npos) << sentence();
}

TEST_F(TakeIn, ANeighboursFahrenheitStaysFahrenheit) {
    open(put("n.csv", "Date,Time,Dry bulb,Wet bulb\n3/4/2026,9:00 ,61.5,57\n"));
    EXPECT_NE(cell(0, ui::VerdictModel::Sentence).find("say above which"), std::string::npos)
        << cell(0, ui::VerdictModel::Sentence);
    choose("takeInDates", 2); // month first
    choose("takeInUnit", 2);  // °F
    settle();
    EXPECT_NE(sentence().find("1 new"), std::string::npos) << sentence();
    press("takeInBring");
    settle();
    const auto span = book_.session().book().span();
    ASSERT_TRUE(span && *span);
    const auto all =
        book_.session().book().observationsBetween((*span)->first, (*span)->second + std::chrono::seconds{1});
    ASSERT_TRUE(all);
    ASSERT_EQ(all->size(), 1U);
    const auto& values = all->front().values;
    EXPECT_EQ(values.dry.value, (units::ReadTemperature{{615, 1}, units::TemperatureUnit::Fahrenheit}));
    EXPECT_EQ(record::instantText(values.instant), "2026-03-04T09:00:00Z");
}

TEST_F(TakeIn, DoubleTimesAreAskedAbout) {
    // London, 25 October 2026: 01:30 came twice; 29 March 2026: it never came.
    open(put("d.csv", "time,dry,wet\n2026-10-25T01:30,6,5\n2026-03-29T01:30,6,5\n2026-10-25T03:30,6,5\n"));
    EXPECT_NE(cell(0, ui::VerdictModel::Sentence).find("came twice"), std::string::npos);
    EXPECT_NE(cell(1, ui::VerdictModel::Sentence).find("never was on the clock"), std::string::npos);
    choose("takeInTwice", 2);
    settle();
    EXPECT_EQ(cell(0, ui::VerdictModel::Verdict).find("new"), 0U);
    EXPECT_EQ(cell(1, ui::VerdictModel::Verdict), "left out");
    press("takeInBring");
    settle();
    EXPECT_TRUE(*book_.session().book().atInstant(date::sys_days{date::year{2026} / 10 / 25} +
                                                  std::chrono::minutes{90}));
}

QByteArray longRegister(int days) {
    QByteArray text = "time_utc,dry_c,wet_c\n";
    const date::sys_days first{date::year{1990} / 1 / 1};
    for (int i = 0; i < days; ++i) {
        const auto date = record::dateText(record::StationDate{(first + date::days{i}).time_since_epoch()});
        text += QByteArray::fromStdString(date) + "T09:00Z,6." + QByteArray::number(i % 10) + ",5.0\n";
        text += QByteArray::fromStdString(date) + "T21:00Z,5." + QByteArray::number(i % 10) + ",4.0\n";
    }
    return text;
}

TEST_F(TakeIn, ManyAreTakenBackBesideTheWindowAfterACopyWasKept) {
    book_.session().copies().begin({});
    ASSERT_TRUE(QTest::qWaitFor([this] { return !book_.session().copies().doing(); }, 20000));
    open(put("long.csv", longRegister(600)));
    press("takeInBring");
    settle();
    ASSERT_EQ(book_.session().book().observationCount().value(), 1200);
    press("takeInWithdraw");
    EXPECT_EQ(book_.session().book().observationCount().value(), 0);
    const QDir shelf(QDir(book_.folder()).filePath(QStringLiteral("hill copies")));
    const auto before = shelf.entryList({QStringLiteral("*before-taking-back.wickbook")}, QDir::Files);
    ASSERT_EQ(before.size(), 1);
    EXPECT_EQ(store::Book::open(shelf.filePath(before.front()).toStdString(), store::OpenMode::ReadOnly)
                  ->observationCount()
                  .value(),
              1200);
    book_.session().undoStack().redo();
    EXPECT_EQ(book_.session().book().observationCount().value(), 1200);
    book_.session().undoStack().undo();
    EXPECT_EQ(book_.session().book().observationCount().value(), 0);
    EXPECT_TRUE(book_.session().book().verify()->sound());
}

TEST_F(TakeIn, StoppingLeavesNoTrace) {
    book_.keep(day(2026, 3, 1), 9, {70, 1}, {60, 1});
    open(put("long.csv", longRegister(4000)));
    EXPECT_NE(sentence().find("8,000 new"), std::string::npos) << sentence();
    const QByteArray before = bookBytes();
    const QStringList files = folder();
    press("takeInBring");
    EXPECT_TRUE(dialog_->isBusy());
    press("takeInClose"); // says Stop while it works
    settle();
    EXPECT_EQ(sentence(), "Stopped. Nothing was written.");
    EXPECT_EQ(bookBytes(), before);
    EXPECT_EQ(folder(), files);
    EXPECT_EQ(book_.session().book().observationCount().value(), 1);
    EXPECT_EQ(book_.session().undoStack().count(), 0);
    // And it can still be brought in.
    find<QCheckBox>("takeInCopy").setChecked(false);
    press("takeInBring");
    settle();
    EXPECT_EQ(book_.session().book().observationCount().value(), 8001);
    EXPECT_EQ(folder(), files);
}

TEST_F(TakeIn, LookingLeavesNoTraceEither) {
    const QByteArray before = bookBytes();
    open(put("r.csv", kRegister));
    dialog_->reject();
    EXPECT_EQ(bookBytes(), before);
}

TEST_F(TakeIn, OfALongFileTheHeadIsTriedFirst) {
    QByteArray text = longRegister(4000);
    text.replace("\n", "," + QByteArray(600, 'x') + "\n");
    open(put("huge.csv", text));
    EXPECT_NE(sentence().find("The first 401 lines of a long file"), std::string::npos) << sentence();
    EXPECT_FALSE(find<QPushButton>("takeInBring").isEnabled());
    press("takeInWhole");
    settle();
    EXPECT_NE(sentence().find("8,000 lines"), std::string::npos) << sentence();
    EXPECT_TRUE(find<QPushButton>("takeInBring").isEnabled());
}

TEST_F(TakeIn, WhatCannotBeUsedIsOneSentence) {
    for (const auto& [text, words] :
         {std::pair{QByteArray{}, "is empty"}, std::pair{QByteArray{"PK\x03\x04\0\0", 6}, "is no text"},
          std::pair{QByteArray{"date,hour,dry,wet\n"}, "nothing below"},
          std::pair{QByteArray{"colour,shape\nred,round\n"}, "date and time"}}) {
        open(put("odd.csv", text));
        EXPECT_NE(sentence().find(words), std::string::npos) << sentence();
        EXPECT_FALSE(find<QPushButton>("takeInBring").isEnabled());
    }
    open(book_.folder());
    EXPECT_NE(sentence().find("is a folder"), std::string::npos) << sentence();
}

TEST_F(TakeIn, RejectsAreSavedWithTheirReasons) {
    open(put("r.csv", kRegister));
    const QString path = QDir(book_.folder()).filePath(QStringLiteral("left out.csv"));
    const std::vector<exchange::RejectedLine> rejects{{"r.csv", 4, "2026-03-02;9:00;3,0;x;",
                                                       exchange::RejectReason::BadNumber, "wet", "x",
                                                       "not-a-number"}};
    EXPECT_EQ(ui::saveRejects(path, rejects), QString{});
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll(),
              QByteArray("file,line,reason,field,value,text\r\n"
                         "r.csv,4,bad-number:not-a-number,wet,x,\"2026-03-02;9:00;3,0;x;\"\r\n")
                  .replace("\"2026-03-02;9:00;3,0;x;\"", "\"2026-03-02;9:00;3,0;x;\""));
    EXPECT_FALSE(ui::saveRejects(QStringLiteral("/nowhere/at/all.csv"), rejects).isEmpty());
    EXPECT_TRUE(find<QPushButton>("takeInSave").isVisible());
}

TEST_F(TakeIn, SefFilesComeTogether) {
    dialog_ = std::make_unique<ui::TakeInDialog>(book_.session(), memory());
    dialog_->show();
    QStringList files;
    for (const char* name : {"mill_ta.tsv", "mill_tb.tsv", "mill_p.tsv", "mill_rh.tsv"}) {
        files << QStringLiteral(WICKBOOK_TEST_DATA "/data/sef/") + QLatin1String(name);
    }
    dialog_->takeFiles(files);
    settle();
    EXPECT_NE(sentence().find("8 new"), std::string::npos) << sentence();
    EXPECT_NE(sentence().find("mill_rh.tsv: left aside"), std::string::npos) << sentence();
    press("takeInBring");
    settle();
    const auto reading = book_.at(day(1912, 3, 1), 9);
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->wet.value, (units::ReadTemperature{{57, 0}, units::TemperatureUnit::Fahrenheit}));
    EXPECT_EQ(reading->pressure, (units::Decimal{10084, 1}));
}

TEST_F(TakeIn, EverythingHasANameAndIsReachedByTab) {
    open(put("r.csv", kRegister));
    for (const QWidget* widget : dialog_->findChildren<QWidget*>()) {
        if (widget->isVisible() && widget->focusPolicy() != Qt::NoFocus &&
            (qobject_cast<const QComboBox*>(widget) || qobject_cast<const QTableView*>(widget))) {
            EXPECT_FALSE(widget->accessibleName().isEmpty()) << widget->objectName().toStdString();
        }
    }
    QApplication::setActiveWindow(dialog_.get());
    find<QPushButton>("takeInChoose").setFocus();
    QStringList met;
    for (int i = 0; i < 40; ++i) {
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
        met << QApplication::focusWidget()->objectName();
    }
    for (const char* name : {"takeInBegins", "takeInUnit", "takeInTwice", "takeInShow", "takeInLines",
                             "takeInCopy", "takeInBring", "takeInClose"}) {
        EXPECT_TRUE(met.contains(QLatin1String(name))) << name;
    }
    EXPECT_LT(met.indexOf(QStringLiteral("takeInUnit")), met.indexOf(QStringLiteral("takeInShow")));
    EXPECT_LT(met.indexOf(QStringLiteral("takeInShow")), met.indexOf(QStringLiteral("takeInBring")));
}

TEST(VerdictModel, KeepsTheRulesOfModels) {
    ui::VerdictModel model;
    QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    auto preview = std::make_shared<desk::ImportPreview>();
    for (int i = 0; i < 5; ++i) {
        desk::PreviewLine line;
        line.line = i + 2;
        line.verdict = static_cast<desk::LineVerdict>(i % 3);
        preview->lines.push_back(line);
    }
    model.setPreview(preview);
    EXPECT_EQ(model.rowCount(), 5);
    model.setShow(ui::VerdictModel::Show::Conflicts);
    EXPECT_EQ(model.rowCount(), 1);
    model.setOnConflict(exchange::OnConflict::Revise);
    model.setPreview(nullptr);
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace
