// SPDX-License-Identifier: GPL-3.0-or-later
// What the core says of a fault, in words: asked of the core with the fault itself wherever one can be made
// here. A full disk, a failing one and a book in another program's hands are made in tests/faults; here their
// words are read.
#include "core/psychrometry/derive.h"
#include "core/psychrometry/psychrometer.h"
#include "core/store/book.h"
#include "tests/errors/provocations.h"
#include "ui/text/copy_words.h"
#include "ui/text/error_words.h"

namespace wickbook::errors {

namespace {

using psychrometry::PairInput;
using psychrometry::WickState;

Provocation words(std::string sentence, std::function<QString(const Bench&)> ask) {
    return {std::move(sentence), [ask = std::move(ask)](const Bench& bench) {
                return std::vector<std::string>{bench.plain(ask(bench).toStdString())};
            }};
}

Provocation number(std::string sentence, const std::string& typed) {
    return words(std::move(sentence), [typed](const Bench&) {
        const auto read = units::parseDecimal(typed);
        return read ? QString{}
                    : ui::decimalErrorWords(read.error(), QStringLiteral("dry bulb"),
                                            QString::fromStdString(typed));
    });
}

Provocation time(std::string sentence, const std::string& typed) {
    return words(std::move(sentence), [typed](const Bench&) {
        const auto read = record::parseTime(typed);
        return read ? QString{} : ui::timeErrorWords(read.error(), QString::fromStdString(typed));
    });
}

PairInput pair(double dry, double wet, WickState wick = WickState::Water, double pressure = 1000) {
    PairInput input;
    input.dry = units::Temperature::fromCelsius(dry);
    input.wet = units::Temperature::fromCelsius(wet);
    input.wick = wick;
    input.pressure = units::Pressure::fromHectopascals(pressure);
    return input;
}

Provocation derived(std::string sentence, PairInput input) {
    return words(std::move(sentence), [input](const Bench&) {
        const auto result = psychrometry::derive(input);
        const auto& problem = result.problem ? result.problem : result.dewPointProblem;
        return problem ? ui::psychrometryErrorWords(*problem) : QStringLiteral("no problem");
    });
}

/// The words for an error that only another program, a full disk or a defect can cause.
Provocation ofTheDisk(std::string sentence, store::StoreErrorKind kind) {
    return words(std::move(sentence), [kind](const Bench& bench) {
        return ui::storeErrorWords({kind, bench.book(), "SQLITE_IOERR (10): disk I/O error"});
    });
}

/// Where copies of the book are kept: a drive that is not there, is full, is locked, or fails.
Provocation ofTheShelf(std::string sentence, store::StoreErrorKind kind) {
    return words(std::move(sentence), [kind](const Bench&) {
        return ui::copyTroubleWords({kind, "copies", "Input/output error"}, "copies");
    });
}

store::ObservationChange anotherReading(const store::Book& book) {
    const auto reading =
        book.observationsBetween(record::Instant{}, record::Instant{std::chrono::hours{24 * 365 * 90}});
    store::ObservationChange change;
    change.values = reading.value().front().values;
    change.values.dry.value->value.mantissa += 1;
    return change;
}

/// What the store says of a change that it can't take.
Provocation refused(std::string sentence,
                    std::function<void(store::ObservationChange&, const store::Book&)> spoil) {
    return words(std::move(sentence), [spoil = std::move(spoil)](const Bench& bench) {
        auto book = store::Book::open(bench.book());
        if (!book) {
            return ui::storeErrorWords(book.error());
        }
        store::ObservationChange change = anotherReading(*book);
        spoil(change, *book);
        const auto stored = book->append(change);
        return stored ? QStringLiteral("it was stored") : ui::storeErrorWords(stored.error());
    });
}

} // namespace

std::vector<Provocation> wordProvocations() {
    using Kind = store::StoreErrorKind;
    PairInput strange = pair(20, 15);
    strange.coefficient.perKelvin = 7;
    std::vector<Provocation> all{
        number("Type the dry bulb as read.", " "),
        number("“seven” is not a number: type the dry bulb as read, like 7.3.", "seven"),
        number("“1.234,5” has more than one mark: type the dry bulb with one decimal mark, like 7.3.",
               "1.234,5"),
        number("“12345678901234567” has too many digits: type the dry bulb as read, like 7.3.",
               "12345678901234567"),
        time("A time is needed: write it as 2025-03-01T09:00.", " "),
        time("“this morning” is not a time: write it as 2025-03-01T09:00.", "this morning"),
        time("“2025-02-30T09:00” is not a day of the calendar: check day and month.", "2025-02-30T09:00"),
        time("“2025-03-01T25:00” is not an hour of the day: check hour and minute.", "2025-03-01T25:00"),
        derived("A temperature outside −60…60 °C can't be worked with: read again.", pair(99, 15)),
        derived("A pressure outside 300…1100 hPa can't be worked with: check it.",
                pair(20, 15, WickState::Water, 10)),
        derived("This coefficient can't be: check it, such numbers lie near 0.0007 per kelvin.", strange),
        derived("Say whether the wick is water or ice.", pair(-3, -4, WickState::NotGiven)),
        derived("The wet bulb stands above the dry bulb: read both again.", pair(15, 20)),
        derived("The ice bulb stands too far above the dry bulb: read both again.",
                pair(-10, -5, WickState::Ice)),
        derived("Ice can't be warmer than 0 °C: say water, or read again.", pair(10, 5, WickState::Ice)),
        derived("The bulbs stand too far apart: no air is that dry. Read both again.", pair(40, 5)),
        derived("The dew point lies below −60 °C and is not given.", pair(20, 5.979)),
        words("No wet bulb belongs to this humidity: check the humidity and the dry bulb.",
              [](const Bench&) {
                  const auto bulb = psychrometry::wetBulbFor(
                      units::Temperature::fromCelsius(55), units::RelativeHumidity::fromPercent(160),
                      psychrometry::Surface::Water, units::Pressure::fromHectopascals(1000), {});
                  return bulb ? QStringLiteral("there is one") : ui::psychrometryErrorWords(bulb.error());
              }),
        refused("There is a reading at this hour already: open it in the register to correct it, or choose "
                "another "
                "hour.",
                [](store::ObservationChange&, const store::Book&) {}),
        refused("This reading was changed meanwhile: look at it again, then make your change.",
                [](store::ObservationChange& change, const store::Book& book) {
                    const auto stored = book.atHour(*change.values.hour);
                    change.subject = stored.value()->id();
                    change.replaces = stored.value()->stamp.sequence - 1;
                }),
        ofTheDisk(
            "book.wbk is being written by another program: nothing was saved yet. Try again in a moment.",
            Kind::Busy),
        ofTheDisk("The disk that holds book.wbk is full: nothing was saved. Free some space and try again.",
                  Kind::DiskFull),
        ofTheDisk(
            "The disk that holds book.wbk failed to read or write: nothing was saved. Check the drive or the "
            "network, then try again. (SQLITE_IOERR (10): disk I/O error)",
            Kind::InputOutput),
        ofTheDisk("book.wbk can't be written: make the file and its folder writable, or copy the book to a "
                  "folder of "
                  "your own.",
                  Kind::ReadOnly),
        ofTheDisk("book.wbk could not be written because of an error in the program: nothing was saved. "
                  "Please report "
                  "it. (SQLITE_IOERR (10): disk I/O error)",
                  Kind::Internal),
        ofTheDisk("There is too little memory free to work with book.wbk: nothing was saved. Close other "
                  "programs and try "
                  "again.",
                  Kind::OutOfMemory),
        ofTheShelf("No copy was kept: the folder for copies, “copies”, is not there. Plug in the drive it "
                   "lies on, or "
                   "choose another folder. The copies made before stay.",
                   Kind::NoSuchFile),
        ofTheShelf(
            "No copy was kept: the disk that holds “copies” is full. Free some space, or choose another "
            "folder. The copies made before stay.",
            Kind::DiskFull),
        ofTheShelf(
            "No copy was kept: nothing can be written in “copies”. Make it writable, or choose another "
            "folder. The copies made before stay. (Input/output error)",
            Kind::ReadOnly),
        ofTheShelf(
            "No copy was kept in “copies”: check the drive, or choose another folder. The copies made before "
            "stay. (Input/output error)",
            Kind::InputOutput),
        words(
            "No copy was made: “copy.wbk” can't be written there. Choose another folder. (Permission denied)",
            [](const Bench&) {
                return ui::handOnTroubleWords({Kind::ReadOnly, "copy.wbk", "Permission denied"});
            }),
        words(
            "The old copy “copy.wbk” could not be deleted and stays: delete it by hand if it is not wanted. "
            "(Permission denied)",
            [](const Bench&) {
                return ui::stuckCopyWords({Kind::ReadOnly, "copy.wbk", "Permission denied"});
            }),
    };
    return all;
}

} // namespace wickbook::errors
