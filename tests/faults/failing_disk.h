// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/app/program.h"
#include "tests/faults/failing_calls/switchboard.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <unistd.h>

#include <cerrno>
#include <stdexcept>
#include <string>

/// A disk whose calls fail when a test says so, for the real program: every change below one folder passes
/// the preloaded library of failing_calls.

namespace wickbook::store::testing {

class FailingDisk {
public:
    /// boardFile: a small file outside the folder.
    FailingDisk(std::string folder, const std::string& boardFile)
        : folder_(std::move(folder)), boardFile_(boardFile) {
        const int descriptor = ::open(boardFile.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
        if (descriptor < 0 || ::ftruncate(descriptor, sizeof(Switchboard)) != 0)
            throw std::runtime_error("no file for the switchboard");
        void* memory =
            ::mmap(nullptr, sizeof(Switchboard), PROT_READ | PROT_WRITE, MAP_SHARED, descriptor, 0);
        ::close(descriptor);
        if (memory == MAP_FAILED)
            throw std::runtime_error("the switchboard can't be mapped");
        board_ = static_cast<Switchboard*>(memory);
        repair();
    }
    FailingDisk(const FailingDisk&) = delete;
    FailingDisk& operator=(const FailingDisk&) = delete;
    ~FailingDisk() { ::munmap(board_, sizeof(Switchboard)); }

    /// Calls of these kinds fail from the first-th on, up to the last-th (0: for good), counted from now.
    void breakFrom(std::uint32_t calls, int first, int error, int last = 0, bool halfWrites = false) {
        repair();
        board_->calls = calls;
        board_->error = error;
        board_->halfWrite = halfWrites ? 1 : 0;
        board_->failTo = last;
        board_->failFrom = first;
    }
    /// Nothing fails; calls of these kinds are counted.
    void count(std::uint32_t calls) {
        repair();
        board_->calls = calls;
    }
    void repair() {
        board_->failFrom = 0;
        board_->failTo = 0;
        board_->calls = 0;
        board_->seen = 0;
        board_->failed = 0;
        board_->halfWrite = 0;
    }
    [[nodiscard]] int seen() const { return board_->seen; }
    [[nodiscard]] int failed() const { return board_->failed; }
    /// What a program's environment must hold.
    [[nodiscard]] std::vector<std::string> environment() const {
        return {std::string{"LD_PRELOAD="} + WICKBOOK_FAILING_LIBRARY, "WICKBOOK_FAILING_CALLS=" + boardFile_,
                "WICKBOOK_FAILING_UNDER=" + folder_};
    }
    [[nodiscard]] apptest::Strain strain() const {
        apptest::Strain made;
        made.environment = environment();
        return made;
    }

private:
    std::string folder_;
    std::string boardFile_;
    Switchboard* board_ = nullptr;
};

} // namespace wickbook::store::testing
