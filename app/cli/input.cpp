// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/input.h"

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <streambuf>
#include <system_error>

namespace wickbook::cli {

namespace {

/// Gives what one read brings and never waits for more. Owns the descriptor unless it is standard input.
class DescriptorBuffer final : public std::streambuf {
public:
    explicit DescriptorBuffer(int descriptor) : descriptor_(descriptor) {}
    DescriptorBuffer(const DescriptorBuffer&) = delete;
    DescriptorBuffer& operator=(const DescriptorBuffer&) = delete;
    ~DescriptorBuffer() override {
        if (descriptor_ != STDIN_FILENO) {
            ::close(descriptor_);
        }
    }

protected:
    int_type underflow() override {
        if (gptr() < egptr()) {
            return traits_type::to_int_type(*gptr());
        }
        ssize_t count = -1;
        do {
            count = ::read(descriptor_, bytes_.data(), bytes_.size());
        } while (count < 0 && errno == EINTR);
        if (count < 0) {
            // An exception from a buffer sets badbit in the stream: a failed read is not the end of a file.
            throw std::ios_base::failure("read", std::error_code(errno, std::generic_category()));
        }
        if (count == 0) {
            return traits_type::eof();
        }
        setg(bytes_.data(), bytes_.data(), bytes_.data() + count);
        return traits_type::to_int_type(*gptr());
    }

    // A file can be read again from where it stood; a pipe can't, and says so.
    pos_type seekoff(off_type offset, std::ios_base::seekdir from, std::ios_base::openmode) override {
        if (from == std::ios_base::cur && offset == 0) {
            const off_t at = ::lseek(descriptor_, 0, SEEK_CUR);
            return at < 0 ? pos_type(off_type(-1)) : pos_type(at - (egptr() - gptr()));
        }
        return pos_type(off_type(-1));
    }
    pos_type seekpos(pos_type at, std::ios_base::openmode) override {
        if (::lseek(descriptor_, static_cast<off_t>(off_type(at)), SEEK_SET) < 0) {
            return pos_type(off_type(-1));
        }
        setg(nullptr, nullptr, nullptr);
        return at;
    }

private:
    int descriptor_;
    std::array<char, 64U * 1024U> bytes_{};
};

} // namespace

Outcome<Input> Input::open(const std::string& path) {
    Input input;
    int descriptor = STDIN_FILENO;
    input.name_ = "standard input";
    if (path != "-") {
        input.name_ = std::filesystem::path(path).filename().string();
        descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
        struct stat found {};
        if (descriptor >= 0 && ::fstat(descriptor, &found) == 0 && S_ISDIR(found.st_mode)) {
            ::close(descriptor);
            return refuse(fmt::format("{} is a folder; name a file in it.", path));
        }
        if (descriptor < 0) {
            return refuse(fmt::format("{} can't be read: {}. Check the name, and that you may read it.", path,
                                      std::generic_category().message(errno)));
        }
        input.size_ = S_ISREG(found.st_mode) ? static_cast<std::int64_t>(found.st_size) : 0;
    }
    input.buffer_ = std::make_unique<DescriptorBuffer>(descriptor);
    input.stream_ = std::make_unique<std::istream>(input.buffer_.get());
    return input;
}

std::string Input::head() {
    if (stream_->peek() == std::istream::traits_type::eof()) {
        stream_->clear(stream_->rdstate() & ~std::ios_base::eofbit); // the reader finds the end itself
        return {};
    }
    std::string head(static_cast<std::size_t>(std::clamp<std::streamsize>(buffer_->in_avail(), 0, 4096)),
                     '\0');
    const auto count = buffer_->sgetn(head.data(), static_cast<std::streamsize>(head.size()));
    for (std::streamsize i = 0; i < count; ++i) {
        buffer_->sungetc(); // all of it is still in the buffer
    }
    return head;
}

} // namespace wickbook::cli
