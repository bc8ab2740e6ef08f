// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/commandline.h"

#include <iostream>
#include <sstream>

#include "cli/backupcommands.h"
#include "cli/deskcommand.h"
#include "cli/packcommands.h"
#include "cli/papercommand.h"
#include "cli/recordcommands.h"
#include "cli/verifycommand.h"

namespace app {
namespace {

std::vector<std::string> wordsOf(const std::string& name) {
    std::istringstream stream(name);
    std::vector<std::string> words;
    for (std::string word; stream >> word;) words.push_back(word);
    return words;
}

bool beginsWith(const std::vector<std::string>& words, const std::vector<std::string>& name) {
    return words.size() >= name.size() && std::equal(name.begin(), name.end(), words.begin());
}

bool asksForHelp(const std::string& word) {
    return word == "--help" || word == "-h" || word == "help";
}

/// Of the commands that begin with this word; of all, and of the windows, when there is none.
void explain(const CommandList& commands, const std::string& firstWord, std::ostream& out) {
    out << "usage:\n";
    if (firstWord.empty()) out << "  ninebark " << windowsUsage << '\n';
    for (const auto& command : commands)
        if (firstWord.empty() || wordsOf(command->name()).front() == firstWord)
            out << "  ninebark " << command->name() << ' ' << command->usage() << '\n';
}

}  // namespace

CommandList allCommands() {
    CommandList commands;
    addPackCommands(commands);
    commands.push_back(std::make_unique<PaperCommand>());
    commands.push_back(std::make_unique<DeskCommand>(std::cin));
    commands.push_back(std::make_unique<RecordShowCommand>());
    commands.push_back(std::make_unique<RecordVerifyCommand>());
    commands.push_back(std::make_unique<RecordRebuildCommand>());
    commands.push_back(std::make_unique<BackupCommand>());
    commands.push_back(std::make_unique<RestoreCommand>(standardInput));
    return commands;
}

std::optional<ExitCode> runCommand(const std::vector<std::string>& words, std::ostream& out,
                                   std::ostream& err) {
    if (words.empty()) return std::nullopt;
    const CommandList commands = allCommands();
    if (asksForHelp(words.front())) {
        explain(commands, {}, out);
        return ExitCode::Done;
    }
    bool isFirstWordKnown = false;
    for (const auto& command : commands) {
        const std::vector<std::string> name = wordsOf(command->name());
        isFirstWordKnown = isFirstWordKnown || name.front() == words.front();
        if (!beginsWith(words, name)) continue;
        const auto first = words.begin() + static_cast<std::ptrdiff_t>(name.size());
        const ExitCode code = command->run({first, words.end()}, out, err);
        if (code == ExitCode::Usage)
            err << "usage: ninebark " << command->name() << ' ' << command->usage() << '\n';
        return code;
    }
    // What begins with a dash is for the windows.
    if (!isFirstWordKnown && words.front().starts_with('-')) return std::nullopt;
    explain(commands, isFirstWordKnown ? words.front() : std::string(), err);
    return ExitCode::Usage;
}

std::optional<int> runCommand(int argc, char** argv) {
    const std::vector<std::string> words(argv + (argc > 0 ? 1 : 0), argv + argc);
    const auto code = runCommand(words, std::cout, std::cerr);
    if (!code) return std::nullopt;
    std::cout.flush();
    return static_cast<int>(*code);
}

}  // namespace app
