// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/auditwords.h"

#include <algorithm>

#include "audit/auditpage.h"
#include "papers/makepaper.h"

namespace ui {
namespace {

QString auditEntries(const proof::Finding& finding) {
    if (finding.from == finding.to) return AuditPage::tr("Entry %1").arg(finding.from);
    return AuditPage::tr("Entries %1 to %2").arg(finding.from).arg(finding.to);
}

QString auditKindWords(proof::Kind kind) {
    switch (kind) {
        case proof::Kind::Gap:
            return AuditPage::tr("missing.");
        case proof::Kind::Unreadable:
            return AuditPage::tr("not readable as an entry.");
        case proof::Kind::OtherPlace:
            return AuditPage::tr("written for another place or another record.");
        case proof::Kind::TickBack:
            return AuditPage::tr("counted lower than the one before it.");
        case proof::Kind::NotSealed:
            return AuditPage::tr("open to everybody, in a sealed record.");
        case proof::Kind::NoSignature:
            return AuditPage::tr("not signed, though what it says always is.");
        case proof::Kind::KeysChanged:
            return AuditPage::tr("changes who can open the record, by nobody who may.");
        case proof::Kind::KeyGone:
            return AuditPage::tr("its key is gone, and nothing says that two people erased it.");
        case proof::Kind::NotErased:
            return AuditPage::tr("erased by two people, and its key is there again.");
        case proof::Kind::Basis:
            return AuditPage::tr(
                "its signature names other entries as its ground than those before it.");
        case proof::Kind::Index:
            return AuditPage::tr("not found where it is looked for.");
        case proof::Kind::Fences:
            return AuditPage::tr(
                "kept in tables, or guarded by rules, that this program did not make.");
        case proof::Kind::RightEdge:
            return AuditPage::tr("not the end of the record that was written down.");
        case proof::Kind::Forked:
            return AuditPage::tr("told in two ways by what papers, backups and colleagues knew.");
        case proof::Kind::Doubled:
            return AuditPage::tr("there a second time.");
        case proof::Kind::Changed:
            return AuditPage::tr("changed since it was sealed, or its key was.");
        case proof::Kind::BadSignature:
            return AuditPage::tr("a signature does not hold.");
        case proof::Kind::UnknownKey:
            return AuditPage::tr(
                "signed by a key its author did not have, or for another purpose.");
        case proof::Kind::NoSpeaker:
            return AuditPage::tr("its author could not sign in then.");
        case proof::Kind::OtherRole:
            return AuditPage::tr("its author had another role then than it says.");
        case proof::Kind::Derived:
            return AuditPage::tr("what is shown was not made from it.");
        case proof::Kind::Blob:
            return AuditPage::tr("a drawing or pack it names is not the one of then.");
        case proof::Kind::Paper:
            return AuditPage::tr("a paper was issued, and the record of then shows another one.");
        case proof::Kind::Rewritten:
            return AuditPage::tr("not those that a paper, backup or colleague knew.");
        case proof::Kind::CutOff:
            return AuditPage::tr("were known once and are gone.");
        case proof::Kind::OtherRecord:
            return AuditPage::tr("known from a paper or backup of another record.");
        case proof::Kind::Emptied:
            return AuditPage::tr("its key was destroyed; with a key it is seen by whom.");
        case proof::Kind::Erased:
            return AuditPage::tr("erased on purpose, by two people; not counted as wrong.");
    }
    return {};
}

/// Without saying of which paper.
QString useWords(record::Use what) {
    switch (what) {
        case record::Use::SignedIn:
            return AuditPage::tr("signed in");
        case record::Use::SignedOut:
            return AuditPage::tr("signed out");
        case record::Use::Searched:
            return AuditPage::tr("searched");
        case record::Use::Opened:
            return AuditPage::tr("opened the record");
        case record::Use::BreakGlass:
            return AuditPage::tr("opened the record, having no part in it");
        case record::Use::Printed:
            return AuditPage::tr("printed a paper");
        case record::Use::Saved:
            return AuditPage::tr("saved a paper");
        case record::Use::Exported:
            return AuditPage::tr("took it along");
        case record::Use::Verified:
            return AuditPage::tr("verified");
        case record::Use::ReadLog:
            return AuditPage::tr("read who looked at and printed what");
    }
    return {};
}

QString changeWords(record::AccessChange what) {
    switch (what) {
        case record::AccessChange::Founded:
            return AuditPage::tr("began the record");
        case record::AccessChange::Admitted:
            return AuditPage::tr("let in somebody new");
        case record::AccessChange::NewPassphrase:
            return AuditPage::tr("changed the passphrase");
        case record::AccessChange::RaisedCost:
            return AuditPage::tr("made the passphrase dearer to guess");
        case record::AccessChange::Reset:
            return AuditPage::tr("gave new keys");
        case record::AccessChange::Retired:
            return AuditPage::tr("retired somebody");
        case record::AccessChange::Recovered:
            return AuditPage::tr("came in by the recovery sheet");
        case record::AccessChange::NewRecovery:
            return AuditPage::tr("made a new recovery sheet");
    }
    return {};
}

QString noteWords(const record::NoteUse& said) {
    if (said.wrongBefore > 0)
        return AuditPage::tr(
                   "%1; before that %n wrong passphrases were typed, nobody knows by whom",
                   "signed in, and how many", int(said.wrongBefore))
            .arg(useWords(said.what));
    const auto paper = base::valueOf<record::PaperKind>(said.object);
    if (!paper) return useWords(said.what);
    return AuditPage::tr("%1: %2", "printed a paper: its kind")
        .arg(useWords(said.what), paperTitle(*paper));
}

int auditCount(std::uint64_t number) { return static_cast<int>(number); }

QStringList paperLines(const proof::Papers& papers) {
    QStringList lines{AuditPage::tr("%n papers, each made again from the record of then", nullptr,
                                    auditCount(papers.checked))};
    if (papers.before > 0)
        lines << AuditPage::tr(
            "%n papers can't be checked: they were issued before the record said what they were "
            "made of",
            nullptr, auditCount(papers.before));
    if (papers.others > 0)
        lines << AuditPage::tr(
            "%n papers can't be checked: another version made them in another "
            "form",
            nullptr, auditCount(papers.others));
    return lines;
}

/// By the two nearest known heads.
QString rewrittenWords(const proof::Finding& finding) {
    const QString sentence = AuditPage::tr("%1: %2", "entry 7: what is wrong with it")
                                 .arg(auditEntries(finding), auditKindWords(finding.kind));
    const QString heads =
        finding.from == 0 ? AuditPage::tr(
                                "What was known of the record up to entry %1 does not agree, and "
                                "nothing known before it does.")
                                .arg(finding.to)
                          : AuditPage::tr(
                                "What was known of the record up to entry %1 agrees, and what was "
                                "known up to entry %2 does not.")
                                .arg(finding.from - 1)
                                .arg(finding.to);
    return sentence + QLatin1Char(' ') + heads;
}

}  // namespace

QString auditSentence(const proof::Finding& finding) {
    if (finding.kind == proof::Kind::Rewritten) return rewrittenWords(finding);
    const QString sentence = AuditPage::tr("%1: %2", "entry 7: what is wrong with it")
                                 .arg(auditEntries(finding), auditKindWords(finding.kind));
    if (!finding.paper) return sentence;
    return AuditPage::tr("%1 Paper: %2.", "entry 7: what is wrong with it. Paper: its kind.")
        .arg(sentence, paperTitle(*finding.paper));
}

QString auditVerdict(const proof::Report& result) {
    const auto wrong =
        std::count_if(result.findings.begin(), result.findings.end(),
                      [](const proof::Finding& one) { return proof::isWrong(one.kind); });
    if (wrong > 0) return AuditPage::tr("%n things are wrong", nullptr, static_cast<int>(wrong));
    if (!result.isComplete())
        return AuditPage::tr("Nothing is wrong, as far as can be seen without every key");
    return AuditPage::tr("Nothing is wrong");
}

QStringList auditLines(const proof::Report& result) {
    QStringList lines{AuditPage::tr("%n entries, each hash and each place", nullptr,
                                    auditCount(result.head.size)),
                      AuditPage::tr("%n signatures", nullptr, auditCount(result.signatures)),
                      AuditPage::tr("%n sealed bodies opened", nullptr, auditCount(result.opened)),
                      AuditPage::tr("%n drawings and packs", nullptr, auditCount(result.blobs)),
                      AuditPage::tr("%n heads known from papers, backups and colleagues", nullptr,
                                    auditCount(result.knownHeads))};
    if (result.papers) lines << paperLines(*result.papers);
    if (result.erased > 0)
        lines << AuditPage::tr("%n sealed bodies are erased", nullptr, auditCount(result.erased));
    if (result.closed > 0)
        lines << AuditPage::tr("%n sealed bodies stayed closed: no key for them is here", nullptr,
                               auditCount(result.closed));
    return lines;
}

QString actWords(const record::UseLine& line) {
    const record::ChangeAccess* change = line.change();
    return change ? changeWords(change->what) : noteWords(*line.use());
}

QString codeWords(const record::EventCode& code) {
    QStringList words;
    for (const record::Coded& one : {code.event, code.type})
        if (*one.code)
            words << QStringLiteral("%1 %2").arg(QLatin1String(one.code),
                                                 QLatin1String(one.meaning));
    return words.join(QStringLiteral(", "));
}

QString breakable(const QString& letters) {
    constexpr qsizetype group = 8;
    QString whole = letters;
    for (qsizetype at = whole.size() / group * group; at > 0; at -= group)
        if (at < whole.size()) whole.insert(at, QChar(0x200b));
    return whole;
}

}  // namespace ui
