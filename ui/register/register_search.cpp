// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/register/register_search.h"

#include "ui/register/paper_words.h"
#include "ui/register/typed_date.h"
#include "ui/text/error_words.h"
#include "ui/text/missing_reasons.h"
#include "ui/text/number_words.h"
#include "ui/text/term_words.h"
#include "ui/text/time_words.h"

#include <QElapsedTimer>
#include <QTimer>

#include <algorithm>
#include <ranges>

namespace wickbook::ui {

namespace {

constexpr std::chrono::hours kSearchStretch{24 * 60};
constexpr int kSliceMilliseconds = 25; ///< so long the window waits at most

/// Where a line is shown: its hour, or for an extra reading its date and clock time.
record::ObservingHour shownAt(const record::Observation& values) {
    if (values.hour) {
        return *values.hour;
    }
    const record::LocalTime local{values.instant.time_since_epoch() + values.offset};
    const record::StationDate date = date::floor<date::days>(local);
    return {date, std::chrono::floor<std::chrono::minutes>(local - date)};
}

} // namespace

SearchTerm::SearchTerm(const QLocale& locale, const QString& typed)
    : locale_(locale), text_(typed.simplified()) {
    const std::string plain = text_.toStdString();
    date_ = typedDate(locale, text_);
    if (const auto month = record::parseMonth(plain)) {
        month_ = *month;
    }
    if (const auto number = units::parseDecimal(plain); number && !date_) {
        number_ = *number;
    }
}

bool SearchTerm::isAmongNumbers(const record::Observation& values) const {
    const auto same = [&](const std::optional<units::Decimal>& value) {
        return value && value->toDouble() == number_->toDouble();
    };
    const auto read = [&](const std::optional<units::ReadTemperature>& value) {
        return value && same(value->value);
    };
    return read(values.dry.value) || read(values.wet.value) || same(values.pressure) ||
           read(values.maximum) || read(values.minimum) ||
           std::any_of(values.repeats.begin(), values.repeats.end(),
                       [&](const record::Repeat& whirl) { return read(whirl.dry) || read(whirl.wet); });
}

bool SearchTerm::isIn(const record::StoredObservation& line) const {
    const record::Observation& values = line.values;
    const record::StationDate filed = record::filedDate(values);
    if (date_) {
        return filed == *date_;
    }
    if (month_) {
        const date::year_month_day day{filed};
        return day.year() / day.month() == *month_;
    }
    if (number_ && isAmongNumbers(values)) {
        return true;
    }
    QStringList texts{QString::fromStdString(values.note), QString::fromStdString(values.observer),
                      QString::fromStdString(line.stamp.author.why), paperWords(values.paper)};
    if (!values.missingReason.empty()) {
        texts << missingReasonWords(QString::fromStdString(values.missingReason));
    }
    if (!number_) {
        texts << weatherSetWords(values.weather) << wickWords(values.wick) << originWords(values.origin)
              << qualityWords(values.quality) << hourAndDateWords(locale_, shownAt(values));
        if (values.dry.belowScale || values.wet.belowScale) {
            texts << bulbWords(locale_, {std::nullopt, true});
        }
    }
    return std::any_of(texts.begin(), texts.end(), [&](const QString& text) {
        return text.simplified().contains(text_, Qt::CaseInsensitive);
    });
}

RegisterSearch::RegisterSearch(Session& session, QObject* parent) : QObject(parent), session_(session) {}

void RegisterSearch::start(const SearchTerm& term, bool forward, const Place& from) {
    stop();
    term_ = term;
    forward_ = forward;
    from_ = from;
    wrapped_ = false;
    running_ = true;
    const auto span = session_.book().span();
    if (span && *span) {
        first_ = (*span)->first;
        end_ = (*span)->second + std::chrono::seconds{1};
    } else {
        first_ = end_ = {};
    }
    // The line itself may share its moment with another one.
    next_ =
        forward_ ? std::max(from_.instant, first_) : std::min(from_.instant + std::chrono::seconds{1}, end_);
    const QString trouble = span ? QString{} : storeErrorWords(span.error());
    QTimer::singleShot(0, this, [this, run = run_, trouble] {
        if (run != run_) {
            return;
        }
        if (!trouble.isEmpty()) {
            stop();
            emit failed(trouble);
            return;
        }
        step();
    });
}

void RegisterSearch::stop() {
    running_ = false;
    ++run_;
}

void RegisterSearch::step() {
    QElapsedTimer slice;
    slice.start();
    const int run = run_;
    while (slice.elapsed() < kSliceMilliseconds) {
        if (lookOn() || run != run_) {
            return;
        }
    }
    const auto all = std::max<std::int64_t>(1, (end_ - first_).count());
    const auto toEnd = forward_ ? (end_ - next_).count() : (next_ - first_).count();
    const auto toCaret = forward_ ? (from_.instant - next_).count() : (next_ - from_.instant).count();
    const auto round = forward_ ? (from_.instant - first_).count() : (end_ - from_.instant).count();
    const auto left = wrapped_ ? toCaret : toEnd + round;
    emit progressed(static_cast<int>(std::clamp<std::int64_t>(100 - 100 * left / all, 0, 100)));
    QTimer::singleShot(0, this, [this, run] {
        if (run == run_) {
            step();
        }
    });
}

bool RegisterSearch::lookOn() {
    const record::Instant from = forward_ ? next_ : std::max(first_, next_ - kSearchStretch);
    const record::Instant to = forward_ ? std::min(end_, next_ + kSearchStretch) : next_;
    if (from < to) {
        auto lines = session_.book().observationsBetween(from, to);
        if (!lines) {
            stop();
            emit failed(storeErrorWords(lines.error()));
            return true;
        }
        std::ranges::sort(*lines, [&](const auto& a, const auto& b) {
            const Place one{a.values.instant, a.id()};
            const Place other{b.values.instant, b.id()};
            return forward_ ? one < other : other < one;
        });
        for (const record::StoredObservation& line : *lines) {
            const Place place{line.values.instant, line.id()};
            const bool ahead = forward_ ? place > from_ : place < from_;
            if (ahead != wrapped_ && term_.isIn(line)) {
                const bool wrapped = wrapped_;
                stop();
                emit found(shownAt(line.values), wrapped);
                return true;
            }
        }
    }
    next_ = forward_ ? to : from;
    const bool atEnd = forward_ ? next_ >= end_ : next_ <= first_;
    const bool roundAgain = wrapped_ && (forward_ ? next_ > from_.instant : next_ <= from_.instant);
    if (roundAgain || (atEnd && wrapped_)) {
        stop();
        emit nothingFound();
        return true;
    }
    if (atEnd) {
        wrapped_ = true;
        next_ = forward_ ? first_ : end_;
    }
    return false;
}

} // namespace wickbook::ui
