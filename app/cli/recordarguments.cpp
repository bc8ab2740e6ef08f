// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/recordarguments.h"

#include <charconv>
#include <map>

#include "ledger/merkle.h"
#include "seal/papercode.h"
#include "store/backupfile.h"

namespace app {
namespace {

constexpr std::size_t rootLetters = 64;
constexpr std::size_t shortLetters = 8;
constexpr std::size_t noteLetters = 16;  ///< of chart notes by earlier programs

bool saysNumbers(const std::string& paper) { return paper.find(':') != std::string::npos; }

}  // namespace

std::optional<proof::KnownHead> headOfNumbers(const std::string& text) {
    if (const auto square = seal::readSquareText(text)) return proof::KnownHead::of(*square);
    proof::KnownHead head;
    const std::size_t colon = text.find(':');
    if (colon == std::string::npos) return std::nullopt;
    const char* const end = text.data() + colon;
    const auto read = std::from_chars(text.data(), end, head.size);
    if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
    head.begin = text.substr(colon + 1);
    if (ledger::isHex(head.begin, rootLetters) || ledger::isHex(head.begin, noteLetters))
        return head;
    for (const std::string gap : {"\u2026", "..."}) {
        const std::size_t at = head.begin.find(gap);
        if (at == std::string::npos) continue;
        head.end = head.begin.substr(at + gap.size());
        head.begin.resize(at);
        if (ledger::isHex(head.begin, shortLetters) && ledger::isHex(head.end, shortLetters))
            return head;
        return std::nullopt;
    }
    return std::nullopt;
}

base::Result<proof::KnownHead> headOfPaper(const std::string& typed) {
    if (const auto numbers = headOfNumbers(typed)) return proof::KnownHead(*numbers);
    const auto code = seal::readPaperLetters(typed);
    if (!code) return code.error();
    return proof::KnownHead::of(*code);
}

base::Result<proof::KnownHead> headOfBackup(const std::string& file) {
    const auto backup = store::readBackupHead(file);
    if (!backup) return backup.error();
    auto head = proof::KnownHead::of(backup->ledger.head);
    head.ledger = backup->ledger.ledger;
    return head;
}

base::Outcome proveBackup(const std::string& file, const seal::Identity& by) {
    auto reader = store::BackupReader::open(file);
    if (!reader) return reader.error();
    const auto key = seal::unboxKey(reader->head().boxes, by);
    if (!key) return key.error();
    reader->unlock(*key);
    // The head is bound to the first piece.
    if (const auto piece = reader->next(); !piece) return piece.error();
    return base::Done{};
}

base::Result<std::vector<proof::KnownHead>> RecordArguments::heads() const {
    std::vector<proof::KnownHead> heads;
    for (const auto& [given, headOf] :
         {std::pair(&papers, &headOfPaper), std::pair(&backups, &headOfBackup)})
        for (const std::string& one : *given) {
            auto head = headOf(one);
            if (!head) return head.error();
            heads.push_back(std::move(*head));
        }
    return heads;
}

base::Outcome RecordArguments::proveBackups(const seal::Identity& by) const {
    for (const std::string& file : backups)
        if (const auto proven = proveBackup(file, by); !proven) return proven;
    return base::Done{};
}

std::optional<RecordArguments> RecordArguments::parse(const std::vector<std::string>& words,
                                                      const std::set<std::string>& known) {
    RecordArguments asked;
    std::map<std::string, std::string> options;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (words[i] == "--json") {
            asked.asJson = true;
            continue;
        }
        if (words[i] == "--log" && known.count("--log") > 0) {
            asked.asLog = true;
            continue;
        }
        const bool isThere = known.count(words[i]) > 0 && i + 1 < words.size();
        if (!isThere) return std::nullopt;
        if (words[i] == "--paper")  // as many as there are
            asked.papers.push_back(words[i + 1]);
        else if (words[i] == "--backup")
            asked.backups.push_back(words[i + 1]);
        else if (!options.emplace(words[i], words[i + 1]).second)
            return std::nullopt;
        ++i;
    }
    asked.data = options["--data"];
    if (asked.data.empty()) return std::nullopt;
    if (const auto text = options.find("--patient"); text != options.end()) {
        const auto patient = base::PatientId::parse(text->second);
        if (!patient) return std::nullopt;
        asked.patient = *patient;
    }
    if (asked.asLog && asked.patient) return std::nullopt;
    for (const std::string& paper : asked.papers)
        if (saysNumbers(paper) && !headOfNumbers(paper)) return std::nullopt;
    if (const auto text = options.find("--as"); text != options.end()) {
        if (text->second.empty()) return std::nullopt;
        asked.as = text->second;
    }
    return asked;
}

}  // namespace app
