// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sample/sample_register.h"

#include <cmath>

namespace wickbook::sample {

namespace {

using namespace std::chrono_literals;
using record::Observation;
using record::WickState;

units::Decimal& mantissaOf(record::BulbReading& bulb) {
    return bulb.value->value;
}

bool isMild(const Observation& values) {
    return values.dry.value->value.toDouble() > 4.0 && values.wick == WickState::NotGiven && values.hour;
}

/// A slip of the keys found the next day against the pocket-book.
void correctKeySlip(SampleRegister& book) {
    const auto index = book.find(20, [&](std::size_t i) { return isMild(book.newest(i)); });
    if (!index) {
        return;
    }
    const Observation right = book.newest(*index);
    Observation typed = right;
    mantissaOf(typed.dry).mantissa += 100;
    book.write(*index, typed);
    Observation corrected = right;
    corrected.origin = record::Origin::Corrected;
    book.revise(*index, corrected,
                "Typed ten degrees too high; the pocket-book has " + right.dry.value->value.toText() + ".",
                std::chrono::hours{23});
}

/// Two digits of the wet bulb exchanged, found in the read-back at the month's end.
void correctExchangedDigits(SampleRegister& book) {
    const auto exchanged = [](std::int64_t tenths) {
        return tenths / 100 * 100 + tenths % 10 * 10 + tenths / 10 % 10;
    };
    const auto index = book.find(110, [&](std::size_t i) {
        const std::int64_t wet = book.newest(i).wet.value->value.mantissa;
        return isMild(book.newest(i)) && wet > 40 && exchanged(wet) < wet - 5 && exchanged(wet) > wet - 30 &&
               exchanged(wet) > 20;
    });
    if (!index) {
        return;
    }
    const Observation right = book.newest(*index);
    Observation typed = right;
    mantissaOf(typed.wet).mantissa = exchanged(mantissaOf(typed.wet).mantissa);
    book.write(*index, typed);
    Observation corrected = right;
    corrected.origin = record::Origin::Corrected;
    corrected.quality = record::Quality::Sound;
    book.revise(*index, corrected, "Digits of the wet bulb exchanged; found in the read-back.",
                std::chrono::hours{24 * 12});
}

/// The wick had been ice, found out later.
void correctWick(SampleRegister& book) {
    const auto index = book.find(64, [&](std::size_t i) { return book.newest(i).wick == WickState::Ice; });
    if (!index) {
        return;
    }
    const Observation right = book.newest(*index);
    Observation first = right;
    first.wick = WickState::Water;
    book.write(*index, first);
    Observation corrected = right;
    corrected.origin = record::Origin::Corrected;
    corrected.note = "The wick was ice.";
    book.revise(*index, corrected, "The wick was ice; seen when it was wetted for the next reading.",
                std::chrono::hours{12});
}

void addEstimate(SampleRegister& book) {
    const auto index = book.find(90, [&](std::size_t i) { return isMild(book.newest(i)); });
    if (!index) {
        return;
    }
    Observation values = book.newest(*index);
    values.origin = record::Origin::Estimated;
    values.note = "Not read; estimated from the hours before and after.";
    values.maximum.reset();
    values.minimum.reset();
    book.write(*index, values);
}

void withdrawExtra(SampleRegister& book) {
    const auto index = book.find(45, [&](std::size_t i) { return !book.newest(i).hour; });
    if (!index) {
        return;
    }
    Observation values = book.newest(*index);
    values.withdrawn = true;
    book.revise(*index, values, "Read indoors for a visitor; not the station's air.",
                std::chrono::minutes{50});
}

void keepOneBulb(SampleRegister& book, int daysBefore, const std::string& note) {
    const auto index = book.find(daysBefore, [&](std::size_t i) { return book.newest(i).hour.has_value(); });
    if (!index) {
        return;
    }
    Observation values = book.newest(*index);
    values.wet = {};
    values.wick = WickState::NotGiven;
    values.wickCare = record::WickCare::None;
    values.note = note;
    book.write(*index, values);
}

} // namespace

void addHistory(SampleRegister& book) {
    correctKeySlip(book);
    keepOneBulb(book, 33, "The wick was dry and there was no time to wait.");
    withdrawExtra(book);
    correctWick(book);
    addEstimate(book);
    correctExchangedDigits(book);
    keepOneBulb(book, 201, "The wet thermometer is broken; a new one hangs from tomorrow.");
}

} // namespace wickbook::sample
