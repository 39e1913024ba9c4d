// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/month/other_years.h"

#include "core/desk/own_years.h"
#include "ui/print/month_figure.h"

namespace wickbook::ui {

namespace {

constexpr date::days kLongestSpan{100};

date::year_month monthOf(record::StationDate day) {
    const date::year_month_day ymd{day};
    return ymd.year() / ymd.month();
}

using Found = std::map<date::year_month, report::OwnYears>;

/// Runs beside the window. What could not be read is left out: the page itself tells of a book in trouble.
void lookUp(const std::string& path, const std::set<date::year_month>& months, record::Instant now,
            Found& found, WorkWatch& watch) {
    const auto book = store::Book::open(std::filesystem::path{path}, store::OpenMode::ReadOnly);
    if (!book) {
        return;
    }
    const auto station = book->station();
    if (!station) {
        return;
    }
    const auto keepGoing = [&watch] { return !watch.stop.load(); };
    const auto model = desk::stationModel(*book, *station, keepGoing);
    for (const date::year_month month : months) {
        if (!model || watch.stop) {
            return;
        }
        auto years = desk::ownYears(*book, *station, month, now, &*model, keepGoing);
        if (years && !watch.stop) {
            found.emplace(month, std::move(*years));
        }
    }
}

} // namespace

OtherYears::OtherYears(Session& session, QObject* parent) : QObject(parent), session_(session) {}

const report::OwnYears* OtherYears::of(date::year_month month) {
    if (const auto place = known_.find(month); place != known_.end()) {
        return &place->second;
    }
    wanted_.insert(month);
    begin();
    return nullptr;
}

void OtherYears::forget() {
    known_.clear();
    wanted_.clear();
    ++generation_;
    work_.stop();
}

void OtherYears::begin() {
    if (work_.isRunning() || wanted_.empty()) {
        return;
    }
    const auto months = wanted_;
    const auto result = std::make_shared<Found>();
    const int generation = generation_;
    work_.start([path = session_.path().toStdString(), months, now = session_.now(),
                 result](WorkWatch& watch) { lookUp(path, months, now, *result, watch); },
                [this, months, result, generation] {
                    if (generation == generation_) {
                        for (const date::year_month month : months) {
                            wanted_.erase(month);
                            known_[month] = (*result)[month]; // nothing found is an answer too
                        }
                        emit found();
                    }
                    begin();
                });
}

ChartAverage OtherYears::band(Quantity quantity, record::StationDate from, record::StationDate to) {
    ChartAverage result;
    if (to - from > kLongestSpan) {
        return result;
    }
    for (date::year_month month = monthOf(from); month <= monthOf(to); month += date::months{1}) {
        const report::OwnYears* years = of(month);
        if (years == nullptr || !years->readings) {
            continue;
        }
        const AverageSpan span = averageSpan(session_.station(), month, *years->readings, quantity);
        result.years =
            result.years == 0 ? years->readings->years : std::min(result.years, years->readings->years);
        result.spans.push_back(span);
    }
    return result;
}

} // namespace wickbook::ui
