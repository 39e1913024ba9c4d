// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/store/book.h"

/// A long work of appending, such as bringing in a register of any length: part by part, in one transaction,
/// in little memory. Nothing of it stands in the book before commit(), and nothing ever does where it goes
/// without.

namespace wickbook::store {

class BulkAppend {
public:
    BulkAppend(BulkAppend&&) noexcept;
    BulkAppend& operator=(BulkAppend&&) noexcept;
    ~BulkAppend();

    /// Appends a part. Readings may change places within a part, not across two. Errors as Book::appendAll;
    /// after one the whole work is lost and only going is left.
    Result<void> append(std::span<const ObservationChange> changes);
    /// All of it is durable when this returns; how many changes that were.
    Result<std::int64_t> commit();

private:
    friend class Book;
    struct State;
    explicit BulkAppend(std::unique_ptr<State> state);
    std::unique_ptr<State> state_;
};

} // namespace wickbook::store
