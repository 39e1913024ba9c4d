// SPDX-License-Identifier: GPL-3.0-or-later
// Appending changes to observations, all of them inside one transaction.
#include "core/store/appending.h"
#include "core/store/connection.h"

namespace wickbook::store {

Result<Receipt> Book::append(const ObservationChange& change) {
    auto receipts = appendAll(std::span{&change, 1});
    if (!receipts)
        return tl::unexpected(receipts.error());
    return receipts->front();
}

Result<std::vector<Receipt>> Book::appendAll(std::span<const ObservationChange> changes,
                                             const Progress& progress) {
    if (changes.empty())
        return std::vector<Receipt>{};
    if (state_->readOnlyBecause)
        return tl::unexpected(*state_->readOnlyBecause);
    return guarded(*state_, [&]() -> Result<std::vector<Receipt>> {
        std::vector<Receipt> receipts;
        receipts.reserve(changes.size());
        WriteGuard guard(state_->db());
        Appending appending(*state_);
        for (const ObservationChange& change : changes) {
            if (progress && !progress(static_cast<std::int64_t>(receipts.size()),
                                      static_cast<std::int64_t>(changes.size())))
                return std::vector<Receipt>{};
            receipts.push_back(appending.append(change));
        }
        appending.finish();
        guard.commit();
        return receipts;
    });
}

} // namespace wickbook::store
