// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/naming.h"

#include <algorithm>

#include "record/card.h"

namespace record {
namespace {

constexpr std::size_t fewestLetters = 3;  // shorter words of a name are words of any language too

/// The words by which somebody of this record could be found.
std::vector<std::string> namesIn(const Record& record) {
    std::vector<std::string> words;
    const auto add = [&](const std::string& text) {
        for (std::string& word : searchKeys(text))
            if (word.size() >= fewestLetters) words.push_back(std::move(word));
    };
    add(record.patient.name);
    add(record.patient.number);
    for (const Learner& learner : record.learners) add(learner.said.name);
    return words;
}

}  // namespace

bool namesSomebody(const std::string& words, const Record& record) {
    const auto said = searchKeys(words);
    const auto names = namesIn(record);
    return std::any_of(said.begin(), said.end(), [&](const std::string& word) {
        return std::find(names.begin(), names.end(), word) != names.end();
    });
}

}  // namespace record
