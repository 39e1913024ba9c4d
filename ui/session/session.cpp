// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/session.h"

#include "ui/text/error_words.h"

#include <algorithm>
#include <chrono>
#include <iterator>

namespace wickbook::ui {

namespace {
constexpr std::chrono::milliseconds kOutsideLook{2000};
/// The window is shown first; two threads that ask for memory at once would hold each other up.
constexpr std::chrono::milliseconds kFirstFrame{80};
} // namespace

store::Result<std::unique_ptr<Session>> Session::over(store::Result<store::Book> book, Clock clock) {
    if (!book) {
        return tl::unexpected(book.error());
    }
    auto station = book->station();
    if (!station) {
        return tl::unexpected(station.error());
    }
    return std::unique_ptr<Session>(new Session(std::move(*book), std::move(*station), std::move(clock)));
}

store::Result<std::unique_ptr<Session>> Session::open(const QString& path, Clock clock) {
    return over(
        store::Book::open(std::filesystem::path{path.toStdString()}, store::OpenMode::ReadWrite, clock),
        clock);
}

store::Result<std::unique_ptr<Session>> Session::openToRead(const QString& path, Clock clock,
                                                            const QString& because) {
    auto session =
        over(store::Book::open(std::filesystem::path{path.toStdString()}, store::OpenMode::ReadOnly, clock),
             clock);
    if (session) {
        (*session)->readOnlyBecause_ = because;
    }
    return session;
}

store::Result<std::unique_ptr<Session>> Session::create(const QString& path,
                                                        const record::StationFacts& facts,
                                                        const record::Author& author, Clock clock) {
    return over(store::Book::create(std::filesystem::path{path.toStdString()}, facts, author, clock), clock);
}

Session::Session(store::Book book, record::StationRecord station, Clock clock)
    : book_(std::move(book)), station_(std::move(station)), clock_(std::move(clock)) {
    copies_ = std::make_unique<CopyKeeper>(path(), clock_);
    outsideVersion_ = book_.externalVersion().value_or(0);
    connect(&outsideTimer_, &QTimer::timeout, this, &Session::lookForOutsideChanges);
    outsideTimer_.start(kOutsideLook);
}

QString Session::path() const {
    return QString::fromStdString(book_.path().string());
}

void Session::setObserver(const QString& initials) {
    if (initials != observer_) {
        observer_ = initials;
        emit observerChanged(observer_);
    }
}

record::StationDate Session::today() const {
    const record::Instant moment = now();
    return date::floor<date::days>(station_.periodAt(moment).zone.localAt(moment));
}

units::TemperatureUnit Session::unit() const {
    const record::Thermometer* dry = station_.dryThermometerAt(now());
    return dry == nullptr ? units::TemperatureUnit::Celsius : dry->unit;
}

QString Session::readOnlySentence() const {
    if (!readOnlyBecause_.isEmpty()) {
        return readOnlyBecause_;
    }
    const auto because = book_.readOnlyBecause();
    return because ? storeErrorWords(*because) : QString{};
}

const checks::StationModel* Session::model() const {
    if (isLearning()) {
        return nullptr;
    }
    if (!model_) {
        // Where the book can't be read just now there are findings without causes, and it is asked again next
        // time.
        auto model = desk::stationModel(book_, station_);
        if (!model) {
            return nullptr;
        }
        model_ = std::move(*model);
        modelReadings_ = book_.observationCount().value_or(0);
        sinceModel_ = 0;
    }
    return &*model_;
}

void Session::learnBeside() {
    if (!model_ && !isLearning()) {
        aboutToLearn_ = true;
        QTimer::singleShot(kFirstFrame, this, &Session::beginLearning);
    }
}

void Session::beginLearning() {
    aboutToLearn_ = false;
    const auto found = std::make_shared<std::optional<checks::StationModel>>();
    overtaken_ = false;
    sinceModel_ = 0;
    learning_.start(
        [path = book_.path(), found](WorkWatch& watch) {
            const auto book = store::Book::open(path, store::OpenMode::ReadOnly);
            const auto station = book ? book->station() : tl::unexpected(book.error());
            if (!station) {
                return; // asked again, and told, when it is wanted
            }
            auto model = desk::stationModel(*book, *station, [&watch] { return !watch.stop.load(); });
            if (model && !watch.stop) {
                *found = std::move(*model);
            }
        },
        [this, found] {
            if (*found && !overtaken_) {
                model_ = std::move(**found);
                modelReadings_ = book_.observationCount().value_or(0);
                grew(0);
            }
            emit learnt();
        });
}

void Session::grew(std::int64_t changes) {
    sinceModel_ += changes;
    if (sinceModel_ > 60 + modelReadings_ / 20) {
        model_.reset();
    }
}

store::Result<std::vector<checks::CheckedReading>> Session::checkedOn(record::StationDate from,
                                                                      record::StationDate to) const {
    return desk::checkedOn(book_, station_, from, to, now(), model());
}

store::Result<std::vector<checks::CheckedReading>>
Session::checkedAll(const std::function<bool(std::size_t done, std::size_t total)>& progress) const {
    return desk::checkedAll(book_, station_, now(), model(), progress);
}

store::Result<checks::CheckedReading> Session::judgeEntry(const record::Observation& entry,
                                                          const std::optional<record::Uuid>& replacing,
                                                          bool live) const {
    return desk::judgeEntry(book_, station_, entry, replacing, now(), live, model());
}

store::Result<report::MonthReport> Session::monthReport(date::year_month month) const {
    return desk::monthReport(book_, station_, month, now(), {}, model());
}

store::Result<std::vector<desk::HourMark>> Session::hourMarks(record::StationDate from,
                                                              record::StationDate to) const {
    return desk::hourMarks(book_, station_, from, to, now());
}

store::Result<std::optional<record::ExpectedHour>> Session::hourOnOffer() const {
    return desk::hourOnOffer(book_, station_, now());
}

store::Result<store::Receipt> Session::write(const store::ObservationChange& change) {
    auto receipt = book_.append(change);
    if (!receipt) {
        emit storageFailed(receipt.error());
    } else {
        grew(1);
        emit observationsChanged();
    }
    return receipt;
}

store::Result<std::vector<store::Receipt>>
Session::writeAll(std::span<const store::ObservationChange> changes, const store::Progress& progress) {
    auto receipts = book_.appendAll(changes, progress);
    if (!receipts) {
        emit storageFailed(receipts.error());
    } else if (!receipts->empty()) {
        grew(std::ssize(changes));
        emit observationsChanged();
    }
    return receipts;
}

store::Result<void> Session::reviseFacts(const record::StationFacts& facts, const record::Author& author) {
    const auto receipts = book_.reviseFacts(facts, author);
    if (!receipts) {
        emit storageFailed(receipts.error());
        return tl::unexpected(receipts.error());
    }
    auto station = book_.station();
    if (!station) {
        emit storageFailed(station.error());
        return tl::unexpected(station.error());
    }
    station_ = std::move(*station);
    model_.reset();
    overtaken_ = true;
    emit factsChanged();
    return {};
}

void Session::lookForOutsideChanges() {
    const auto version = book_.externalVersion();
    if (!version || *version == outsideVersion_) {
        return; // a book that can't be looked at just now (a lock, a drive asleep) is looked at again soon
    }
    outsideVersion_ = *version;
    if (auto station = book_.station(); station && station->facts() != station_.facts()) {
        station_ = std::move(*station);
        model_.reset();
        overtaken_ = true;
        emit factsChanged();
    }
    // How much another program has written is asked of the book; that is seldom.
    const auto count = book_.observationCount();
    grew(count && model_ ? std::max<std::int64_t>(*count - modelReadings_ - sinceModel_, 1) : 1);
    emit observationsChanged();
}

} // namespace wickbook::ui
