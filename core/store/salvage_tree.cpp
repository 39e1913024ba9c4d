// SPDX-License-Identifier: GPL-3.0-or-later
// Walking a table's tree from its root, to know which of its pages are no pages any more. "Database File
// Format", section 1.6; every page is visited once at most, so that a circle ends.
#include "core/store/salvage_reader.h"

#include <algorithm>
#include <array>
#include <functional>
#include <set>

namespace wickbook::store {

namespace {

constexpr std::size_t kFirstPageHeader = 100;

class TreeWalk {
public:
    using Leaf = std::function<void(std::string_view page, const TreePage& tree)>;

    TreeWalk(const ByteSource& source, const PageLayout& layout) : source_(source), layout_(layout) {}

    void walk(std::uint64_t root, const Leaf& leaf) {
        std::vector<std::uint64_t> waiting{root};
        std::set<std::uint64_t> seen{root};
        std::string page;
        const auto wait = [&](std::uint64_t number) {
            if (seen.insert(number).second)
                waiting.push_back(number);
        };
        while (!waiting.empty()) {
            const std::uint64_t number = waiting.back();
            waiting.pop_back();
            // Numbers that no page has are counted once: they are a sign of the page above being hurt.
            if (!readPage(source_, layout_, number, page)) {
                if (number != 0 && number <= 2 * pagesIn(source_, layout_))
                    broken.push_back(number);
                continue;
            }
            const auto tree = treePageIn(page, number == 1 ? kFirstPageHeader : 0);
            if (!tree || !tree->table) {
                broken.push_back(number);
                continue;
            }
            if (tree->leaf) {
                leaf(page, *tree);
                continue;
            }
            for (const std::size_t cell : tree->cells)
                wait(bigEndianAt(page, cell, 4));
            wait(tree->rightmost);
        }
    }

    std::vector<std::uint64_t> broken;

private:
    const ByteSource& source_;
    const PageLayout& layout_;
};

/// The root page in a row of the schema (type, name, tbl_name, rootpage, sql), 0 where it is another row.
/// What is asked for stands at the record's beginning, within the cell whatever its length.
std::uint64_t rootPageIn(std::string_view page, std::size_t cell, std::string_view table) {
    const Varint payload = varintAt(page, cell);
    const Varint number = varintAt(page, cell + payload.length);
    const std::size_t record = cell + payload.length + number.length;
    const Varint header = varintAt(page, record);
    if (payload.length == 0 || number.length == 0 || header.length == 0)
        return 0;
    std::array<std::uint64_t, 4> serials{};
    std::size_t at = record + header.length;
    for (std::uint64_t& serial : serials) {
        const Varint read = varintAt(page, at);
        if (read.length == 0 || !lengthOfSerial(read.value))
            return 0;
        serial = read.value;
        at += read.length;
    }
    std::size_t value = record + static_cast<std::size_t>(std::min<std::uint64_t>(header.value, page.size()));
    const auto text = [&](std::uint64_t serial) -> std::string_view {
        const std::uint64_t length = lengthOfSerial(serial).value_or(0);
        if (!isTextSerial(serial) || value > page.size() || length > page.size() - value)
            return {};
        const std::string_view read = page.substr(value, static_cast<std::size_t>(length));
        value += read.size();
        return read;
    };
    if (text(serials[0]) != "table" || text(serials[1]) != table || text(serials[2]) != table)
        return 0;
    if (!isIntegerSerial(serials[3]) || value + 8 > page.size())
        return 0;
    const std::int64_t root = integerAt(page, value, serials[3]);
    return root > 0 ? static_cast<std::uint64_t>(root) : 0;
}

} // namespace

std::vector<std::uint64_t> brokenTreePages(const ByteSource& source, const PageLayout& layout,
                                           std::string_view table) {
    std::uint64_t root = 0;
    TreeWalk schema(source, layout);
    schema.walk(1, [&](std::string_view page, const TreePage& tree) {
        for (const std::size_t cell : tree.cells) {
            if (const std::uint64_t found = rootPageIn(page, cell, table); found != 0)
                root = found;
        }
    });
    if (root == 0)
        return schema.broken.empty() ? std::vector<std::uint64_t>{1} : schema.broken;
    TreeWalk rows(source, layout);
    rows.walk(root, [](std::string_view, const TreePage&) {});
    return std::move(rows.broken);
}

} // namespace wickbook::store
