// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/session/copy_work.h"

#include "ui/text/copy_words.h"
#include "ui/text/error_words.h"

#include <algorithm>

namespace wickbook::ui {

namespace {

/// Copies of this book among all in the folder; ones that can't be read only where they bear its name.
std::vector<ShownCopy> copiesToShow(const store::Book& book, const std::vector<store::KeptCopy>& all) {
    std::vector<ShownCopy> shown;
    const auto own = store::copiesOf(book, all);
    const auto chain = book.chainMark();
    const std::string name = book.path().stem().string();
    for (const store::KeptCopy& copy : all) {
        const bool isOwn = own && std::ranges::any_of(*own, [&](const store::KeptCopy& one) {
                               return one.path == copy.path;
                           });
        const bool ofThisBook =
            copy.trouble ? copy.name.book == name : chain && copy.chain.origin == chain->origin;
        if (isOwn || ofThisBook) {
            shown.push_back({copy, !isOwn && !copy.trouble, {}, {}});
        }
    }
    return shown;
}

QString problemOf(const std::filesystem::path& path, WorkWatch& watch, bool& stopped) {
    const auto copy = store::Book::open(path, store::OpenMode::ReadOnly);
    if (!copy) {
        return storeErrorWords(copy.error());
    }
    const auto report =
        copy->verify([&](std::int64_t done, std::int64_t total) { return watch.go(done, total); });
    if (!report) {
        return storeErrorWords(report.error());
    }
    stopped = watch.stop;
    return report->sound() ? QString{} : verifyProblemWords(report->problems.front());
}

std::filesystem::file_time_type writtenAt(const std::filesystem::path& path) {
    std::error_code ignored;
    return std::filesystem::last_write_time(path, ignored);
}

void verifyEach(const CopyRequest& request, WorkWatch& watch, CopyAnswer& answer) {
    for (const auto& path : request.toVerify) {
        bool stopped = watch.stop;
        if (stopped) {
            return;
        }
        const auto written = writtenAt(path);
        QString problem = problemOf(path, watch, stopped);
        if (!stopped) {
            answer.verified[path] = {written, std::move(problem)};
        }
    }
}

void keep(const store::Book& book, const CopyRequest& request, CopyAnswer& answer) {
    const auto kept = store::keepCopy(book, request.shelf, request.reason, request.now);
    if (!kept) {
        answer.trouble = copyTroubleWords(kept.error(), request.shelf.folder);
        return;
    }
    answer.kept = *kept;
    answer.verified[kept->path] = {writtenAt(kept->path), {}};
    const auto rotation = store::rotateCopies(book, request.shelf.folder, kept->path, request.now);
    if (rotation) {
        answer.dropped = std::ssize(rotation->dropped);
        if (!rotation->stuck.empty()) {
            answer.stuck = stuckCopyWords(rotation->stuck.front());
        }
    }
}

bool isDue(const store::Book& book, const CopyRequest& request) {
    // What can't be told is tried: keeping says what is wrong.
    const auto all = store::copiesIn(request.shelf.folder);
    const auto own = all ? store::copiesOf(book, *all) : all;
    const auto chain = book.chainMark();
    return !own || !chain || store::copyIsDue(*own, *chain, request.now);
}

} // namespace

CopyAnswer workOnCopies(const CopyRequest& request, WorkWatch& watch) {
    CopyAnswer answer;
    answer.verified = request.verified;
    const auto book = store::Book::open(request.book, store::OpenMode::ReadOnly);
    if (!book) {
        answer.trouble = copyTroubleWords(book.error(), request.shelf.folder);
        return answer;
    }
    using Task = CopyRequest::Task;
    if (request.task == Task::Verify) {
        verifyEach(request, watch, answer);
    }
    if (request.task == Task::Keep || (request.task == Task::KeepIfDue && isDue(*book, request))) {
        keep(*book, request, answer);
    }
    const auto all = store::copiesIn(request.shelf.folder);
    if (!all) {
        if (answer.trouble.isEmpty()) {
            answer.trouble = copyTroubleWords(all.error(), request.shelf.folder);
        }
        return answer;
    }
    answer.copies = copiesToShow(*book, *all);
    for (ShownCopy& shown : answer.copies) {
        const auto found = answer.verified.find(shown.copy.path);
        if (found != answer.verified.end() && found->second.written == writtenAt(shown.copy.path)) {
            shown.sound = found->second.problem.isEmpty();
            shown.problem = found->second.problem;
        }
    }
    return answer;
}

} // namespace wickbook::ui
