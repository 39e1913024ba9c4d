// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/book_access.h"

#include <pwd.h>
#include <unistd.h>

namespace wickbook::cli {

namespace {

Outcome<OpenedBook> opened(store::Result<store::Book> book) {
    if (!book) {
        return refuse(book.error());
    }
    auto station = book->station();
    if (!station) {
        return refuse(station.error());
    }
    return OpenedBook{std::move(*book), std::move(*station)};
}

} // namespace

units::TemperatureUnit OpenedBook::unit() const {
    const record::SystemClock clock;
    const auto* thermometer = station.dryThermometerAt(clock.now());
    return thermometer == nullptr ? units::TemperatureUnit::Celsius : thermometer->unit;
}

Outcome<OpenedBook> openToRead(const std::string& path) {
    return opened(store::Book::open(path, store::OpenMode::ReadOnly));
}

Outcome<OpenedBook> openToWrite(const std::string& path) {
    return opened(store::Book::open(path)).and_then([](OpenedBook book) -> Outcome<OpenedBook> {
        if (const auto because = book.book.readOnlyBecause()) {
            return refuse(*because);
        }
        return book;
    });
}

std::string accountName() {
    const passwd* account = getpwuid(geteuid());
    return account == nullptr || account->pw_name == nullptr ? std::string{} : std::string{account->pw_name};
}

} // namespace wickbook::cli
