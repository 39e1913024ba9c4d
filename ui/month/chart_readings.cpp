// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/chart_readings.h"

#include "ui/text/error_words.h"

namespace wickbook::ui {

namespace {

constexpr date::days kReadAtOnce{400};

/// Runs beside the window.
store::Result<std::shared_ptr<const ChartPoints>> readBook(const std::string& path, record::Instant now,
                                                           WorkWatch& watch) {
    const auto book = store::Book::open(std::filesystem::path{path}, store::OpenMode::ReadOnly);
    if (!book) {
        return tl::unexpected(book.error());
    }
    const auto station = book->station();
    if (!station) {
        return tl::unexpected(station.error());
    }
    const auto model = desk::stationModel(*book, *station, [&watch] { return !watch.stop.load(); });
    if (!model) {
        return tl::unexpected(model.error());
    }
    // A chart shows which readings count, not what else they may have been.
    const auto readings = desk::checkedAll(
        *book, *station, now, &*model,
        [&watch](std::size_t done, std::size_t total) {
            return watch.go(static_cast<std::int64_t>(done), static_cast<std::int64_t>(total));
        },
        checks::Slips::Leave);
    if (!readings) {
        return tl::unexpected(readings.error());
    }
    if (watch.stop || readings->empty()) {
        return std::make_shared<const ChartPoints>();
    }
    const auto dayOf = [](const checks::CheckedReading& checked) {
        return record::filedDate(checked.reading.values());
    };
    // Time order is not filed order round midnight.
    const record::StationDate first = dayOf(readings->front()) - date::days{1};
    const record::StationDate last = dayOf(readings->back()) + date::days{1};
    return std::make_shared<const ChartPoints>(chartPoints(*readings, *station, first, last));
}

} // namespace

ChartReadings::ChartReadings(Session& session, QObject* parent) : QObject(parent), session_(session) {
    connect(&work_, &BackgroundWork::progressed, this, &ChartReadings::progressed);
}

std::shared_ptr<const ChartPoints> ChartReadings::of(record::StationDate first, record::StationDate last) {
    if (whole_) {
        return whole_;
    }
    if (covered_ && first >= covered_->first && last <= covered_->second) {
        return part_;
    }
    if (last - first > kReadAtOnce) {
        readWhole();
        return nullptr;
    }
    const auto half = (last - first) / 2 + date::days{1};
    const auto readings = session_.checkedOn(first - half, last + half);
    if (!readings) {
        problem_ = storeErrorWords(readings.error());
        return nullptr;
    }
    problem_.clear();
    covered_ = {first - half, last + half};
    part_ = std::make_shared<const ChartPoints>(
        chartPoints(*readings, session_.station(), covered_->first, covered_->second));
    return part_;
}

std::shared_ptr<const ChartPoints> ChartReadings::whole() {
    if (!whole_) {
        readWhole();
    }
    return whole_;
}

void ChartReadings::forget() {
    part_.reset();
    whole_.reset();
    covered_.reset();
    ++generation_;
    work_.stop();
}

void ChartReadings::readWhole() {
    if (work_.isRunning()) {
        return;
    }
    const auto result = std::make_shared<store::Result<std::shared_ptr<const ChartPoints>>>();
    const int generation = generation_;
    work_.start([path = session_.path().toStdString(), now = session_.now(),
                 result](WorkWatch& watch) { *result = readBook(path, now, watch); },
                [this, result, generation] {
                    if (generation != generation_) {
                        readWhole(); // the book has changed meanwhile
                        return;
                    }
                    if (*result) {
                        whole_ = **result;
                        problem_.clear();
                    } else {
                        problem_ = storeErrorWords(result->error());
                    }
                    emit loaded();
                });
}

} // namespace wickbook::ui
