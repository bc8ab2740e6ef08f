// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/backupfile.h"

#include <cerrno>
#include <charconv>
#include <cstring>

#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/merkle.h"
#include "seal/accessrows.h"
#include "store/values.h"

namespace store {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr std::string_view magic = "ninebark backup ";
constexpr int form = 1;
constexpr std::size_t rootLetters = 64;
constexpr std::size_t longestForm = 6;                       // digits and the line end
constexpr std::size_t longestHead = std::size_t{16} << 20U;  // bytes
constexpr std::size_t longestPiece = std::size_t{1} << 20U;  // bytes

json boxesJson(const std::vector<seal::KeyBox>& boxes) {
    json list = json::array();
    for (const seal::KeyBox& one : boxes)
        list.push_back({{"box", ledger::toBase64Url(one.box)}, {"to", one.to}});
    return list;
}

json accessJson(const std::vector<ledger::AccessRow>& rows) {
    json list = json::array();
    for (const ledger::AccessRow& one : rows)
        list.push_back({{"id", one.id}, {"kind", one.kind}, {"text", one.text}});
    return list;
}

/// Throws what nlohmann's at() and get() throw for what is not there.
BackupHead headFrom(const json& in) {
    BackupHead head;
    const json& ledger = in.at("ledger");
    const auto id = base::LedgerId::parse(ledger.at("id").get<std::string>());
    if (!id) return head;
    head.ledger = {*id, {ledger.at("size").get<std::uint64_t>(), ledger.at("root")}};
    const std::string kind = in.at("kind");
    head.kind = kind == wordOf(OpenMode::Real) ? OpenMode::Real : OpenMode::Demonstration;
    head.schema = in.at("schema");
    for (const json& row : in.at("access"))
        head.access.push_back({row.at("kind"), row.at("id"), row.at("text")});
    for (const json& row : in.at("boxes"))
        head.boxes.push_back(
            {row.at("to"),
             ledger::fromBase64Url(row.at("box").get<std::string>()).value_or(std::string())});
    head.stream = ledger::fromBase64Url(in.at("stream").get<std::string>()).value_or("");
    return head;
}

base::Result<BackupHead> parseHead(const std::string& text) {
    try {
        BackupHead head = headFrom(json::parse(text));
        // Every member has its one spelling: what differs was written by nobody of us.
        if (head.text() == text && head.stream.size() == seal::streamHeaderSize &&
            ledger::isHex(head.ledger.head.root, rootLetters))
            return head;
    } catch (const json::exception&) {
        return Error{Code::BackupChanged};
    }
    return Error{Code::BackupChanged};
}

}  // namespace

std::string BackupHead::text() const {
    const auto text = ledger::jcs(
        {{"access", accessJson(access)},
         {"boxes", boxesJson(boxes)},
         {"kind", wordOf(kind)},
         {"ledger",
          {{"id", ledger.ledger.text()}, {"root", ledger.head.root}, {"size", ledger.head.size}}},
         {"schema", schema},
         {"stream", ledger::toBase64Url(stream)}});
    return text ? *text : std::string();
}

std::string backupBeginning() { return std::string(magic) + std::to_string(form) + '\n'; }

base::Result<BackupHead> readBackupHead(const std::string& path) {
    const auto reader = BackupReader::open(path);
    if (!reader) return reader.error();
    return reader->head();
}

base::Result<BackupReader> BackupReader::open(const std::string& path) {
    std::FILE* const file = std::fopen(path.c_str(), "rbe");
    if (file == nullptr) return Error{Code::FileUnreadable, {path, std::strerror(errno)}};
    BackupReader reader(file);
    if (const auto read = reader.readHead(path); !read) return read.error();
    return reader;
}

base::Outcome BackupReader::readHead(const std::string& path) {
    std::string begin(magic.size() + longestForm, '\0');
    begin.resize(std::fread(begin.data(), 1, begin.size(), m_file.get()));
    const std::size_t end = begin.find('\n');
    if (!begin.starts_with(magic)) return Error{Code::BackupNotOurs, {path}};
    if (end == std::string::npos)
        return Error{
            begin.size() < magic.size() + longestForm ? Code::BackupCutShort : Code::BackupNotOurs,
            {path}};
    int found = 0;
    const auto read = std::from_chars(begin.data() + magic.size(), begin.data() + end, found);
    if (read.ec != std::errc() || read.ptr != begin.data() + end || found < 1)
        return Error{Code::BackupNotOurs, {path}};
    if (found > form)
        return Error{Code::BackupNewer, {std::to_string(found), std::to_string(form)}};
    std::fseek(m_file.get(), static_cast<long>(end + 1), SEEK_SET);
    const auto size = takeLength();
    if (!size) return size.error();
    if (*size > longestHead) return Error{Code::BackupChanged};
    const auto text = take(*size);
    if (!text) return text.error();
    auto head = parseHead(*text);
    if (!head) return head.error();
    m_head = std::move(*head);
    m_with = begin.substr(0, end + 1) + lengthText(*size) + *text;
    return base::Done{};
}

base::Result<std::string> BackupReader::take(std::size_t size) {
    std::string bytes(size, '\0');
    if (std::fread(bytes.data(), 1, size, m_file.get()) == size) return bytes;
    if (std::ferror(m_file.get()) != 0)
        return Error{Code::FileUnreadable, {"backup", std::strerror(errno)}};
    return Error{Code::BackupCutShort};
}

base::Result<std::size_t> BackupReader::takeLength() {
    const auto bytes = take(lengthBytes);
    if (!bytes) return bytes.error();
    return lengthIn(*bytes);
}

void BackupReader::unlock(const seal::Secret& key) {
    m_opener = std::make_unique<seal::StreamOpener>(key, m_head.stream);
}

base::Result<std::string> BackupReader::next() {
    if (m_isAtEnd) return std::string();
    const auto size = takeLength();
    if (!size) return size.error();
    if (*size > longestPiece) return Error{Code::BackupChanged};
    const auto box = take(*size);
    if (!box) return box.error();
    auto opened = m_opener->open(*box, m_with);
    m_with.clear();
    if (!opened) return Error{Code::BackupChanged};
    m_isAtEnd = opened->piece == seal::Piece::Last;
    if (m_isAtEnd && std::fgetc(m_file.get()) != EOF) return Error{Code::BackupChanged};
    if (!m_isAtEnd && opened->plain.empty()) return Error{Code::BackupChanged};
    return std::move(opened->plain);
}

}  // namespace store
