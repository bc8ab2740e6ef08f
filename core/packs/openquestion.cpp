// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/openquestion.h"

#include <algorithm>
#include <cctype>
#include <string_view>
#include <vector>

namespace packs {
namespace {

using Tokens = std::vector<std::string>;
using Vocabulary = std::vector<std::string_view>;

bool isOneOf(const std::string& token, const Vocabulary& vocabulary) {
    return std::ranges::find(vocabulary, token) != vocabulary.end();
}

bool hasOneOf(const Tokens& tokens, const Vocabulary& vocabulary) {
    return std::ranges::any_of(
        tokens, [&](const std::string& token) { return isOneOf(token, vocabulary); });
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
    return text;
}

/// ASCII signs for all that ends or parts sentences in the three scripts.
std::string plainSigns(std::string text) {
    text = replaced(std::move(text), "؟", "?");
    text = replaced(std::move(text), "،", ",");
    text = replaced(std::move(text), "؛", ",");
    text = replaced(std::move(text), "¿", ".");
    text = replaced(std::move(text), "¡", ".");
    return replaced(std::move(text), "’", "'");
}

/// What stands between a full stop (or the beginning) and each question mark.
std::vector<std::string> questionsIn(const std::string& text) {
    std::vector<std::string> questions;
    std::string sentence;
    for (const char sign : plainSigns(text)) {
        if (sign == '?') questions.push_back(sentence);
        if (sign == '?' || sign == '.' || sign == '!')
            sentence.clear();
        else
            sentence += sign;
    }
    return questions;
}

Tokens tokensOf(const std::string& clause) {
    Tokens tokens(1);
    for (const char sign : clause) {
        const bool isLetter = (static_cast<unsigned char>(sign) & 0x80U) != 0 || sign == '\'' ||
                              std::isalnum(static_cast<unsigned char>(sign)) != 0;
        if (isLetter)
            tokens.back() += static_cast<char>(std::tolower(static_cast<unsigned char>(sign)));
        else if (!tokens.back().empty())
            tokens.emplace_back();
    }
    if (tokens.back().empty()) tokens.pop_back();
    return tokens;
}

std::vector<Tokens> clausesOf(const std::string& sentence) {
    std::vector<Tokens> clauses;
    std::string clause;
    for (const char sign : sentence + ",") {
        if (sign != ',' && sign != ';' && sign != ':') {
            clause += sign;
            continue;
        }
        if (Tokens tokens = tokensOf(clause); !tokens.empty()) clauses.push_back(std::move(tokens));
        clause.clear();
    }
    return clauses;
}

bool isClosedEnglishClause(const Tokens& clause) {
    static const Vocabulary lead{"and", "but", "so", "then", "now", "please"};
    static const Vocabulary verbs{"do",    "does",   "did",   "is",    "are",     "was",    "were",
                                  "am",    "can",    "could", "will",  "would",   "should", "shall",
                                  "has",   "have",   "had",   "may",   "might",   "must",   "don't",
                                  "isn't", "aren't", "can't", "won't", "doesn't", "didn't"};
    static const Vocabulary subjects{"you",      "he",    "she",   "it",    "they",   "we",
                                     "i",        "the",   "your",  "there", "this",   "that",
                                     "all",      "these", "those", "any",   "anyone", "anything",
                                     "everyone", "my",    "a"};
    static const Vocabulary askers{"can", "could", "will", "would"};
    static const Vocabulary tellers{"tell", "show", "explain", "describe", "say",
                                    "walk", "name", "list",    "talk",     "teach"};
    const auto from = std::ranges::find_if(
        clause, [](const std::string& token) { return !isOneOf(token, lead); });
    const Tokens words(from, clause.end());
    if (words.size() < 2 || !isOneOf(words[0], verbs) || !isOneOf(words[1], subjects)) return false;
    const std::size_t next = words.size() > 2 && words[2] == "please" ? 3 : 2;
    const bool isRequest = isOneOf(words[0], askers) && words[1] == "you" && words.size() > next &&
                           isOneOf(words[next], tellers);
    return !isRequest;
}

bool isClosedEnglish(const std::string& sentence) {
    static const Vocabulary tags{"right", "ok", "okay", "yes", "no", "correct", "true"};
    const std::vector<Tokens> clauses = clausesOf(sentence);
    if (clauses.empty()) return false;
    const Tokens& last = clauses.back();
    return std::ranges::any_of(clauses, isClosedEnglishClause) ||
           (last.size() == 1 && isOneOf(last.front(), tags));
}

bool isClosedSpanish(const std::string& sentence) {
    static const Vocabulary open{"qué",     "cómo",    "cuándo", "cuánto", "cuánta",
                                 "cuántos", "cuántas", "dónde",  "adónde", "quién",
                                 "quiénes", "cuál",    "cuáles"};
    static const Vocabulary knowing{"sabe",     "sabes",     "entiende",  "entiendes", "entendió",
                                    "recuerda", "recuerdas", "comprende", "conoce"};
    static const Vocabulary tellers{
        "decir",     "decirme",    "mostrar", "mostrarme", "explicar",    "contar", "contarme",
        "describir", "explicarme", "enseñar", "enseñarme", "describirme", "repetir"};
    const Tokens tokens = tokensOf(sentence);
    if (tokens.empty() || hasOneOf(tokens, tellers)) return false;
    return !hasOneOf(tokens, open) || isOneOf(tokens.front(), knowing);
}

bool isClosedArabic(const std::string& sentence) {
    static const Vocabulary closing{"هل", "وهل", "فهل", "أليس", "ألا"};
    static const Vocabulary tellers{"تشرح", "تشرحي", "تخبرني", "تخبريني", "تريني",
                                    "تصف",  "تصفي",  "تقول",   "تقولي",   "تذكر"};
    const Tokens tokens = tokensOf(sentence);
    return hasOneOf(tokens, closing) && !hasOneOf(tokens, tellers);
}

}  // namespace

bool isClosedQuestion(const std::string& question, const std::string& language) {
    const std::string tongue = language.substr(0, language.find('-'));
    return std::ranges::any_of(questionsIn(question), [&](const std::string& sentence) {
        if (tongue == "en") return isClosedEnglish(sentence);
        if (tongue == "es") return isClosedSpanish(sentence);
        return tongue == "ar" && isClosedArabic(sentence);
    });
}

}  // namespace packs
