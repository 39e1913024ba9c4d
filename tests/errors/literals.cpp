// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/errors/literals.h"

#include <array>
#include <cctype>
#include <fstream>
#include <iterator>

namespace wickbook::errors {

namespace {

constexpr std::array<std::string_view, 6> kRefusing{"refuse", "Refusal", "failed",
                                                    "tell",   "wrong",   "unexpected"};

bool isWordCharacter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

/// One pass over the text: knows literals, comments, and whether an open bracket was opened by a call that
/// refuses.
class LiteralScan {
public:
    explicit LiteralScan(std::string text) : text_(std::move(text)) {}

    std::vector<Literal> all() {
        while (at_ < text_.size()) {
            step();
        }
        finish();
        return std::move(literals_);
    }

private:
    [[nodiscard]] bool starts(std::string_view what) const {
        return text_.compare(at_, what.size(), what) == 0;
    }
    void skipTo(std::string_view what) {
        const auto found = text_.find(what, at_);
        at_ = found == std::string::npos ? text_.size() : found + what.size();
    }

    void step() {
        const char c = text_[at_];
        if (starts("//")) {
            skipTo("\n");
        } else if (starts("/*")) {
            skipTo("*/");
        } else if (std::isspace(static_cast<unsigned char>(c)) != 0) {
            word_.clear();
            ++at_;
        } else if (starts("R\"") && (at_ == 0 || !isWordCharacter(text_[at_ - 1]))) {
            raw();
        } else if (c == '"') {
            quoted();
        } else {
            finish();
            other(c);
        }
    }

    void raw() {
        const auto open = text_.find('(', at_);
        const std::string end = ")" + text_.substr(at_ + 2, open - at_ - 2) + "\"";
        const auto close = text_.find(end, open);
        current_ += text_.substr(open + 1, close - open - 1);
        within_ = true;
        at_ = close + end.size();
    }

    void quoted() {
        within_ = true;
        for (++at_; at_ < text_.size() && text_[at_] != '"'; ++at_) {
            if (text_[at_] == '\\') {
                ++at_;
                current_ += text_[at_] == 'n' ? '\n' : text_[at_];
            } else {
                current_ += text_[at_];
            }
        }
        ++at_;
    }

    void other(char c) {
        if (c == '\'' && (at_ == 0 || !isWordCharacter(text_[at_ - 1]))) {
            for (++at_; at_ < text_.size() && text_[at_] != '\''; ++at_) {
                at_ += text_[at_] == '\\' ? 1U : 0U;
            }
        } else if (c == '(' || c == '{' || c == '[') {
            const bool outer = !brackets_.empty() && brackets_.back();
            // A body is not within the call whose name stands before it.
            brackets_.push_back(c == '{' && word_.empty() ? false : outer || refuses());
        } else if ((c == ')' || c == '}' || c == ']') && !brackets_.empty()) {
            brackets_.pop_back();
        }
        if (isWordCharacter(c)) {
            word_ += c;
        } else {
            word_.clear();
        }
        ++at_;
    }

    [[nodiscard]] bool refuses() const {
        for (const std::string_view name : kRefusing) {
            if (word_ == name) {
                return true;
            }
        }
        return false;
    }

    void finish() {
        if (within_) {
            literals_.push_back({std::move(current_), !brackets_.empty() && brackets_.back()});
            current_.clear();
            within_ = false;
        }
    }

    std::string text_;
    std::size_t at_ = 0;
    std::string word_;
    std::string current_;
    bool within_ = false;
    std::vector<bool> brackets_;
    std::vector<Literal> literals_;
};

} // namespace

std::vector<Literal> literalsOf(const std::filesystem::path& file) {
    std::ifstream stream{file};
    return LiteralScan{{std::istreambuf_iterator<char>(stream), {}}}.all();
}

} // namespace wickbook::errors
