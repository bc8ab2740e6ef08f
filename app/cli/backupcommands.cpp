// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/backupcommands.h"

#include <map>
#include <ostream>

#include "cli/packfile.h"
#include "cli/qtcore.h"
#include "store/backup.h"
#include "store/recordfile.h"
#include "store/restoreas.h"

namespace app {
namespace {

using base::Code;
using gate::Opening;

/// Words that stand alone, and options with and without a value.
struct BackupWords {
    std::vector<std::string> plain;
    std::map<std::string, std::string> options;

    static std::optional<BackupWords> parse(const std::vector<std::string>& words,
                                            const std::string& withValue) {
        BackupWords read;
        for (std::size_t i = 0; i < words.size(); ++i) {
            const bool isOption = words[i].starts_with("--");
            const bool takesValue = words[i] == withValue;
            if (words[i].empty()) return std::nullopt;
            if (takesValue && (i + 1 == words.size() || words[i + 1].empty())) return std::nullopt;
            if (!isOption)
                read.plain.push_back(words[i]);
            else if (!read.options.emplace(words[i], takesValue ? words[i + 1] : "").second)
                return std::nullopt;
            if (takesValue) ++i;
        }
        return read;
    }
    bool has(const std::string& option) const { return options.contains(option); }
    /// Whether there is nothing but these options.
    bool hasOnly(const std::vector<std::string>& known) const {
        std::size_t found = 0;
        for (const std::string& option : known) found += options.count(option);
        return found == options.size();
    }
};

ExitCode exitFor(Code code) {
    const bool isAnswer = code == Code::BackupNoKeys || code == Code::BackupOverNewer ||
                          code == Code::BackupOverOther || code == Code::BackupOverDamaged ||
                          code == Code::StoreEdgeWrong;
    return isAnswer ? ExitCode::Wrong : ExitCode::Unreadable;
}

Json jsonOf(const base::LedgerId& id, const ledger::Head& head) {
    return {{"ok", true}, {"ledger", id.text()}, {"size", head.size}, {"root", head.root}};
}

void tellHead(const std::string& what, const ledger::Head& head, std::ostream& out) {
    out << what << ": " << head.size << " entries, root " << head.root << '\n';
}

/// What came back with the entries has to be known before it is used.
void tellRestored(const store::Restored& made, std::ostream& out) {
    tellHead("restored", made.head, out);
    out << "people who can sign in to it: " << made.people
        << "\nAll is as on the day of the backup: the passphrases and the recovery sheet of then "
           "open it, who was retired since signs in again, and who was erased since is back. "
           "Before it is used retire and erase anew, reset whoever's passphrase somebody else "
           "knew, and print a new recovery sheet.\n";
}

}  // namespace

ExitCode BackupCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                            std::ostream& err) const {
    const auto words = BackupWords::parse(arguments, "--data");
    if (!words || words->plain.size() != 1 || !words->has("--data") ||
        !words->hasOnly({"--data", "--json"}))
        return ExitCode::Usage;
    const QtCore qt;
    const bool asJson = words->has("--json");
    const std::string record = store::recordFileIn(words->options.at("--data"));
    const auto copied = store::backUp(record, words->plain[0]);
    if (!copied) return sayError(copied.error(), exitFor(copied.error().code), asJson, out, err);
    if (asJson)
        writeJson(jsonOf(copied->ledger, copied->head), out);
    else
        tellHead("backup", copied->head, out);
    return ExitCode::Done;
}

ExitCode RestoreCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                             std::ostream& err) const {
    const auto words = BackupWords::parse(arguments, "--as");
    if (!words || words->plain.size() != 2 || words->has("--as") == words->has("--recovery") ||
        !words->hasOnly({"--as", "--recovery", "--json"}))
        return ExitCode::Usage;
    const QtCore qt;
    const bool asJson = words->has("--json");
    const auto refuse = [&](const base::Error& error) {
        return sayError(error, exitFor(error.code), asJson, out, err);
    };
    // Nobody types a passphrase for a file that is no backup. What lies in the folder is looked at
    // afterwards, as nobody else may change it from then on.
    if (const auto head = store::readBackupHead(words->plain[0]); !head)
        return refuse(head.error());
    Opening opening;
    if (words->has("--as")) opening.name = words->options.at("--as");
    auto secret = askSecret(
        opening.name.empty() ? "Letters of the recovery sheet, on one line" : "Passphrase", m_input,
        err);
    if (!secret) return refuse(secret.error());
    opening.secret = std::move(*secret);
    const auto made = store::restoreAs(words->plain[0], store::recordFileIn(words->plain[1]),
                                       opening, base::SystemClock().now());
    if (!made) return refuse(made.error());
    if (!asJson) return tellRestored(*made, out), ExitCode::Done;
    Json json = jsonOf(made->ledger, made->head);
    json["people"] = made->people;
    writeJson(json, out);
    return ExitCode::Done;
}

}  // namespace app
