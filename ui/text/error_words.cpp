// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/error_words.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace wickbook::ui {

namespace {

struct ErrorText {
    Q_DECLARE_TR_FUNCTIONS(ErrorText)
};

/// The file's name without its folder: sentences are read aloud and copied into mails.
QString fileName(const std::string& path) {
    const QString name = QFileInfo(QString::fromStdString(path)).fileName();
    return name.isEmpty() ? ErrorText::tr("the book") : name;
}

QString shortened(QString text) {
    constexpr int kMost = 60;
    text = text.simplified();
    if (text.size() > kMost) {
        text = text.left(kMost - 1) + QChar(0x2026);
    }
    return text;
}

} // namespace

QString storeErrorWords(const store::StoreError& error) {
    const QString file = fileName(error.path);
    const QString detail = QString::fromStdString(error.detail);
    using Kind = store::StoreErrorKind;
    switch (error.kind) {
    case Kind::NoSuchFile:
        return ErrorText::tr("%1 is not there: look for it in another folder, or start a new station.")
            .arg(file);
    case Kind::AlreadyThere:
        return ErrorText::tr("%1 is there already and was left as it is: choose another name.").arg(file);
    case Kind::NotABook:
        return ErrorText::tr("%1 is not a book of this program and was left untouched: choose another file.")
            .arg(file);
    case Kind::Damaged:
        return ErrorText::tr(
                   "%1 is damaged and was left untouched: keep it, and restore the newest backup into a new "
                   "file. (%2)")
            .arg(file, detail);
    case Kind::NewerBook:
        return ErrorText::
            tr("%1 was written by a later version: it can be read here but not written. Install the later "
               "version "
               "to write in it.")
                .arg(file);
    case Kind::ReadOnly:
        return ErrorText::tr(
                   "%1 can't be written: make the file and its folder writable, or copy the book to a folder "
                   "of your "
                   "own.")
            .arg(file);
    case Kind::Busy:
        return ErrorText::tr(
                   "%1 is being written by another program: nothing was saved yet. Try again in a moment.")
            .arg(file);
    case Kind::DiskFull:
        return ErrorText::tr(
                   "The disk that holds %1 is full: nothing was saved. Free some space and try again.")
            .arg(file);
    case Kind::CannotOpen:
        return ErrorText::tr("%1 can't be opened: check that you may read the file and its folder. (%2)")
            .arg(file, detail);
    case Kind::InputOutput:
        return ErrorText::
            tr("The disk that holds %1 failed to read or write: nothing was saved. Check the drive or the "
               "network, "
               "then try again. (%2)")
                .arg(file, detail);
    case Kind::HourTaken:
        return ErrorText::tr(
            "There is a reading at this hour already: open it in the register to correct it, or choose "
            "another "
            "hour.");
    case Kind::ChangedMeanwhile:
        return ErrorText::tr("This reading was changed meanwhile: look at it again, then make your change.");
    case Kind::NoSuchReading:
        return ErrorText::tr("There is no reading at this time: check date and hour.");
    case Kind::OutOfMemory:
        return ErrorText::
            tr("There is too little memory free to work with %1: nothing was saved. Close other programs and "
               "try again.")
                .arg(file);
    case Kind::Internal:
        return ErrorText::tr(
                   "%1 could not be written because of an error in the program: nothing was saved. Please "
                   "report it. "
                   "(%2)")
            .arg(file, detail);
    }
    return detail;
}

QString verifyProblemWords(const store::VerifyProblem& problem) {
    const QString detail = QString::fromStdString(problem.detail);
    const QString where = problem.sequence
                              ? ErrorText::tr("Revision %1").arg(static_cast<qlonglong>(*problem.sequence))
                              : ErrorText::tr("The book");
    return QStringLiteral("%1: %2").arg(where, detail);
}

QString importErrorWords(const exchange::ImportError& error) {
    const QString detail = QString::fromStdString(error.detail);
    using Kind = exchange::ImportErrorKind;
    switch (error.kind) {
    case Kind::EmptyFile:
        return ErrorText::tr("%1 is empty: choose another file.").arg(detail);
    case Kind::NotReadable:
        return ErrorText::tr("%1 can't be read as text: save it as CSV in UTF-8 and try again.").arg(detail);
    case Kind::NoLines:
        return ErrorText::tr("%1 has a line of names and nothing below: choose another file.").arg(detail);
    case Kind::BinaryFile:
        return ErrorText::tr("%1 is no text: save the register as CSV and try again.").arg(detail);
    case Kind::SefVersion:
        return ErrorText::tr(
                   "This is the Station Exchange Format in version %1; versions 1.0.0 and 0.2.0 can be read. "
                   "Ask for the file in one of these.")
            .arg(detail);
    case Kind::SefHeader:
        return ErrorText::tr(
                   "The file begins as the Station Exchange Format does, but its line %1 is not as that "
                   "format "
                   "has it: look at the first thirteen lines.")
            .arg(detail);
    case Kind::SefUnits:
        return ErrorText::tr(
                   "The values are in “%1”; bulbs can be read in C, F or K and pressures in hPa, Pa or kPa. "
                   "Have them worked out in one of these.")
            .arg(detail);
    case Kind::SefCalendar:
        return ErrorText::tr("The days are counted by another calendar (%1), and only the Gregorian one can "
                             "be read: have the dates "
                             "worked out in it first.")
            .arg(detail);
    case Kind::SefStationsDiffer:
        return ErrorText::tr(
                   "These files are of different stations (%1): bring them in one by one, each into its own "
                   "book.")
            .arg(detail);
    case Kind::SefNothing:
        return ErrorText::tr(
                   "None of these files holds a dry bulb (ta), a wet bulb (tb) or a pressure (p), read at a "
                   "moment: give at least one that does. (%1)")
            .arg(detail);
    case Kind::NoTimeColumn:
        return ErrorText::tr(
                   "No column tells the time: name one with --map COLUMN=time, or two with =date and =hour. "
                   "(%1)")
            .arg(detail);
    case Kind::NoBesideColumns:
        return ErrorText::
            tr("The first line of %1 must name the columns: time (or date and clock), and rh or other_dry "
               "and other_wet.")
                .arg(detail);
    case Kind::NoDryOrWetColumn:
        return ErrorText::tr("No column holds the dry or wet bulb: name them with --map COLUMN=dry and --map "
                             "COLUMN=wet. (%1)")
            .arg(detail);
    case Kind::UnknownMappedColumn:
        return ErrorText::tr("There is no column %1 in the file: check the name in the --map option.")
            .arg(detail);
    case Kind::FieldTwice:
        return ErrorText::tr("Two columns would be the same field (%1): say with --map which one it is.")
            .arg(detail);
    case Kind::Stopped:
        return ErrorText::tr("Stopped: nothing was imported.");
    case Kind::DatesWait:
        return ErrorText::tr(
                   "More than %1 lines have dates that can be read as day and month or as month and day: say "
                   "with --date-order which it is, or import from a file.")
            .arg(detail);
    case Kind::TooManyLines:
        return ErrorText::tr(
                   "The file has more lines than can be taken at once: split it and import the parts. (%1)")
            .arg(detail);
    }
    return detail;
}

namespace {

/// Words for the details that say more than the reason alone; %1 the value, %2 the column. One table, so that
/// a test can hold it against the list in import_plan.h.
struct DetailWords {
    const char* detail;
    const char* words;
};
constexpr DetailWords kDetails[] = {
    {"two-digit-year", QT_TRANSLATE_NOOP("ErrorText", "“%1” has a year of two digits: write all four")},
    {"day-or-month",
     QT_TRANSLATE_NOOP("ErrorText",
                       "“%1” can be read as day and month or as month and day: write dates as 2025-03-01")},
    {"no-such-date",
     QT_TRANSLATE_NOOP("ErrorText", "“%1” is not a day of the calendar: check day and month")},
    {"no-such-clock-time",
     QT_TRANSLATE_NOOP("ErrorText", "“%1” is not an hour of the day: check hour and minute")},
    {"far-from-hour",
     QT_TRANSLATE_NOOP("ErrorText",
                       "the time and the hour beside it lie more than half a day apart: check “%1”")},
    {"grouped-digits",
     QT_TRANSLATE_NOOP("ErrorText",
                       "“%1” in the column %2 has more than one mark: write one decimal mark and no groups")},
    {"too-many-digits",
     QT_TRANSLATE_NOOP("ErrorText", "“%1” in the column %2 has too many digits: check it")},
    {"not-beaufort",
     QT_TRANSLATE_NOOP("ErrorText", "“%1” in the column %2 is not a Beaufort force: write 0 to 12")},
    {"not-a-moment",
     QT_TRANSLATE_NOOP("ErrorText",
                       "“%1” says that the value stands for a stretch of time, not for a moment: take "
                       "what was read at a moment")},
    {"decimal-comma",
     QT_TRANSLATE_NOOP(
         "ErrorText",
         "the line has too many cells, as a decimal comma makes it in a file with commas between cells: "
         "use semicolons or decimal points")},
    {"too-many-cells",
     QT_TRANSLATE_NOOP("ErrorText",
                       "the line has more cells than the first line: look for a stray separator")},
    {"too-few-cells",
     QT_TRANSLATE_NOOP("ErrorText", "the line has fewer cells than the first line: complete it")},
    {"open-quote",
     QT_TRANSLATE_NOOP("ErrorText", "a quotation mark is opened and never closed: close it or take it away")},
    {"text-after-quote",
     QT_TRANSLATE_NOOP("ErrorText", "text follows a closing quotation mark: look at the quotation marks")},
    {"quote-in-text",
     QT_TRANSLATE_NOOP(
         "ErrorText",
         "a quotation mark stands within the text: put the whole cell in quotation marks and double it")},
    {"line-too-long",
     QT_TRANSLATE_NOOP("ErrorText",
                       "the line is longer than any reading can be: look for missing line ends")},
    {"nul-byte",
     QT_TRANSLATE_NOOP("ErrorText", "the line holds a zero byte and is no text: save the file again as CSV")},
    {"broken-utf-16",
     QT_TRANSLATE_NOOP("ErrorText", "the line is broken UTF-16: save the file again as CSV in UTF-8")},
    {"same-moment",
     QT_TRANSLATE_NOOP("ErrorText", "another line of the file holds the same moment: keep one of them")},
};

const char* plainReason(exchange::RejectReason reason) {
    using Reason = exchange::RejectReason;
    switch (reason) {
    case Reason::NoTime:
        return QT_TRANSLATE_NOOP("ErrorText", "no time is given: add it");
    case Reason::BadTime:
        return QT_TRANSLATE_NOOP("ErrorText",
                                 "“%1” is not a time that can be read: write it as 2025-03-01T09:00");
    case Reason::DoubleTime:
        return QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” came twice that night, when the clocks went back: add the offset from UTC");
    case Reason::ImpossibleTime:
        return QT_TRANSLATE_NOOP(
            "ErrorText", "“%1” never was on the clock, it was put forward that night: check the hour");
    case Reason::BadNumber:
        return QT_TRANSLATE_NOOP("ErrorText",
                                 "“%1” in the column %2 is not a number that can be read: check it");
    case Reason::BadWord:
        return QT_TRANSLATE_NOOP("ErrorText", "“%1” in the column %2 is not a word known there: check it");
    case Reason::NothingRead:
        return QT_TRANSLATE_NOOP(
            "ErrorText", "nothing was read on this line: write a bulb, or the origin missing and why");
    case Reason::RaggedRow:
        return QT_TRANSLATE_NOOP(
            "ErrorText", "the line has more or fewer cells than the first line: look for a stray separator");
    case Reason::SameHourTwice:
        return QT_TRANSLATE_NOOP("ErrorText",
                                 "another line of the file holds the same hour: keep one of them");
    case Reason::HourTaken:
        return QT_TRANSLATE_NOOP(
            "ErrorText",
            "the book holds a reading at this hour already: keep it, or import with --on-conflict revise");
    case Reason::Unreadable:
        return QT_TRANSLATE_NOOP("ErrorText", "the line can't be read as CSV: look at its quotation marks");
    }
    return "";
}

} // namespace

QString rejectWords(const exchange::RejectedLine& line) {
    const char* words = plainReason(line.reason);
    for (const DetailWords& entry : kDetails) {
        if (line.detail == entry.detail) {
            words = entry.words;
        }
    }
    QString sentence = ErrorText::tr(words);
    // Both places in one go: a value may itself hold something that looks like a place.
    if (sentence.contains(QStringLiteral("%2"))) {
        return sentence.arg(shortened(QString::fromStdString(line.value)),
                            QString::fromStdString(line.field));
    }
    return sentence.contains(QStringLiteral("%1"))
               ? sentence.arg(shortened(QString::fromStdString(line.value)))
               : sentence;
}

QString asideFileWords(const exchange::AsideFile& file) {
    const QString word = shortened(QString::fromStdString(file.word));
    return file.why == "variable"
               ? ErrorText::tr("left aside: it holds “%1”, for which the register has no place.").arg(word)
               : ErrorText::tr("left aside: its values are “%1” over a time, not read at a moment.")
                     .arg(word);
}

QString decimalErrorWords(units::DecimalError error, const QString& what, const QString& typed) {
    switch (error) {
    case units::DecimalError::Empty:
        return ErrorText::tr("Type the %1 as read.").arg(what);
    case units::DecimalError::NotANumber:
        return ErrorText::tr("“%2” is not a number: type the %1 as read, like 7.3.")
            .arg(what, shortened(typed));
    case units::DecimalError::GroupedDigits:
        return ErrorText::tr("“%2” has more than one mark: type the %1 with one decimal mark, like 7.3.")
            .arg(what, shortened(typed));
    case units::DecimalError::TooLong:
        return ErrorText::tr("“%2” has too many digits: type the %1 as read, like 7.3.")
            .arg(what, shortened(typed));
    }
    return {};
}

QString timeErrorWords(record::TimeTextError error, const QString& typed) {
    switch (error) {
    case record::TimeTextError::Empty:
        return ErrorText::tr("A time is needed: write it as 2025-03-01T09:00.");
    case record::TimeTextError::NotATime:
        return ErrorText::tr("“%1” is not a time: write it as 2025-03-01T09:00.").arg(shortened(typed));
    case record::TimeTextError::NoSuchDate:
        return ErrorText::tr("“%1” is not a day of the calendar: check day and month.").arg(shortened(typed));
    case record::TimeTextError::NoSuchClockTime:
        return ErrorText::tr("“%1” is not an hour of the day: check hour and minute.").arg(shortened(typed));
    }
    return {};
}

QString psychrometryErrorWords(psychrometry::PsychrometryError error) {
    using Error = psychrometry::PsychrometryError;
    switch (error) {
    case Error::TemperatureOutOfRange:
        return ErrorText::tr("A temperature outside −60…60 °C can't be worked with: read again.");
    case Error::PressureOutOfRange:
        return ErrorText::tr("A pressure outside 300…1100 hPa can't be worked with: check it.");
    case Error::CoefficientOutOfRange:
        return ErrorText::tr("This coefficient can't be: check it, such numbers lie near 0.0007 per kelvin.");
    case Error::WickStateUnknown:
        return ErrorText::tr("Say whether the wick is water or ice.");
    case Error::WetAboveDry:
        return ErrorText::tr("The wet bulb stands above the dry bulb: read both again.");
    case Error::IceOverDry:
        return ErrorText::tr("The ice bulb stands too far above the dry bulb: read both again.");
    case Error::IceAboveZero:
        return ErrorText::tr("Ice can't be warmer than 0 °C: say water, or read again.");
    case Error::NoVapour:
        return ErrorText::tr("The bulbs stand too far apart: no air is that dry. Read both again.");
    case Error::BelowRange:
        return ErrorText::tr("The dew point lies below −60 °C and is not given.");
    case Error::AboveRange:
        return ErrorText::tr("The dew point lies above 60 °C and is not given.");
    case Error::NoSolution:
        return ErrorText::tr("No wet bulb belongs to this humidity: check the humidity and the dry bulb.");
    }
    return {};
}

} // namespace wickbook::ui
