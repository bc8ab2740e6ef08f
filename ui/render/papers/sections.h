// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/papers.h"

/// Parts that several papers share, and the parts of the chart record.
namespace render {

using Blocks = std::vector<Block>;

/// Header, bands and footer; `numbered` papers show the record number, others the date of birth.
enum class Identified { ByNumber, ByBirth };
Document framed(const PaperData& data, const QString& title, Identified by, const QLocale& locale);

void addKeyValue(Table& table, const QString& key, const QString& value);
Table keyValues();
/// The same rows, two beside each other where two short ones follow each other.
Table paired(const Table& table);
void addText(Blocks& blocks, const QString& text, TextStyle style = TextStyle::Body);
QString joinedWords(const std::vector<std::string>& words, const QString& between);
QString joinedWords(const std::vector<std::string>& words);
QString stampWords(const Stamp& stamp, const QLocale& locale);
QString kitWords(const practice::Kit& kit);
/// "Farida Noor, on the telephone, qualified".
QString interpretedWords(const practice::Interpreter& by);
/// " Interpreter: ..." for each of them: they signed nothing, but without them the learner would
/// not have.
QString interpretedWords(const PaperSignature& signature);
/// How the learner acknowledged what was signed, and why so.
QString acknowledgedWords(const PaperSignature& signature);
QStringList findingNames(const PaperFinding& finding);
readiness::Finding asFinding(const PaperFinding& finding);

/// At most `most` boxes, the gravest first; those of one level share a box.
void addCautions(Blocks& blocks, const PaperData& data, size_t most,
                 CautionLook look = CautionLook::Framed);
/// The caution that every paper carries.
QString policyFirst(const PaperData& data);
void addNotYet(Blocks& blocks, const PaperData& data);
/// As large as people read at home who are not used to such papers.
void makeLarge(Table& table);
QString roleOf(const Stamp& stamp);
/// "Name, role".
QString whoAndRole(const Stamp& stamp);
/// Whom to call, with the unit's numbers; a line to write on where there is none.
void addCalls(Table& table, const PaperData& data);
/// A teacher, the last of their acts, and the competencies of the pack that they signed last.
struct Signer {
    const PaperSignature* last = nullptr;
    std::vector<std::string> parts;
};
/// In the order of the competencies.
std::vector<Signer> signersOf(const PaperData& data);
const PaperVisit* lastChange(const PaperData& data);

void addPeople(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addReadiness(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addVisits(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addLanes(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addSteps(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addTimes(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addLapses(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addTeachBack(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addChange(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addSignatures(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addRemarks(Blocks& blocks, const PaperData& data, const QLocale& locale);
/// What was written in the wrong chart by mistake: struck through, and named.
void addMarked(Blocks& blocks, const PaperData& data, const QLocale& locale);
void addGrounds(Blocks& blocks, const PaperData& data, const QLocale& locale);

/// How many entries there were with the paper's own, their root and the letters a person can type.
void addLedger(Table& table, const PaperData& data);
/// The same as a square code, beside other words.
CodeBlock codeBlock(const PaperData& data, Table beside);
/// Beside the paper's title and what it says first.
CodeBlock titledCode(const PaperData& data, const QString& title, const QString& lead);
/// The letters in one line; "" of a paper that was not issued.
QString codeLetters(const PaperData& data);

}  // namespace render
