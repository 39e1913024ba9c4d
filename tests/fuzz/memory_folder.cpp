// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/memory_folder.h"

#include <stdlib.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace wickbook::fuzz {

MemoryFolder::MemoryFolder() {
    // run.sh names a folder of its own, which it can clear away after a run that was stopped.
    const char* given = std::getenv("WICKBOOK_FUZZ_FOLDER");
    std::error_code absent;
    const std::filesystem::path where = given != nullptr ? std::filesystem::path{given}
                                        : std::filesystem::is_directory("/dev/shm", absent)
                                            ? std::filesystem::path{"/dev/shm"}
                                            : std::filesystem::temp_directory_path();
    std::string name = (where / "wickbook-fuzz-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr) {
        throw std::runtime_error("no folder could be made for the books that are tried");
    }
    path_ = name;
}

MemoryFolder::~MemoryFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

void MemoryFolder::clear() const {
    for (const auto& entry : std::filesystem::directory_iterator(path_)) {
        std::filesystem::remove_all(entry.path());
    }
}

std::map<std::string, std::string> MemoryFolder::contents() const {
    std::map<std::string, std::string> all;
    for (const auto& entry : std::filesystem::directory_iterator(path_)) {
        all[entry.path().filename().string()] = readWhole(entry.path());
    }
    return all;
}

std::string readWhole(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void writeWhole(const std::filesystem::path& path, std::string_view bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc)
        .write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
}

} // namespace wickbook::fuzz
