// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/auditwords.h"

#include <algorithm>

#include "audit/auditpage.h"

namespace ui {
namespace {

QString auditEntries(const AuditFinding& finding) {
    if (finding.from == finding.to) return AuditPage::tr("Entry %1").arg(finding.from);
    return AuditPage::tr("Entries %1 to %2").arg(finding.from).arg(finding.to);
}

QString auditKindWords(AuditKind kind) {
    switch (kind) {
        case AuditKind::Gap:
            return AuditPage::tr("missing.");
        case AuditKind::Unreadable:
            return AuditPage::tr("not readable as an entry.");
        case AuditKind::OtherPlace:
            return AuditPage::tr("written for another place or another record.");
        case AuditKind::Doubled:
            return AuditPage::tr("there a second time.");
        case AuditKind::Changed:
            return AuditPage::tr("changed since it was sealed.");
        case AuditKind::BadSignature:
            return AuditPage::tr("a signature does not hold.");
        case AuditKind::UnknownKey:
            return AuditPage::tr("signed by a key that nobody here was given.");
        case AuditKind::Derived:
            return AuditPage::tr("what is shown was not made from it.");
        case AuditKind::Blob:
            return AuditPage::tr("a drawing or pack it names is not the one of then.");
        case AuditKind::Rewritten:
            return AuditPage::tr("not those that a paper, backup or colleague knew.");
        case AuditKind::CutOff:
            return AuditPage::tr("were known once and are gone.");
        case AuditKind::OtherPaper:
            return AuditPage::tr("not what the paper was made from.");
        case AuditKind::Erased:
            return AuditPage::tr("erased on purpose, by two people; not counted as wrong.");
    }
    return {};
}

}  // namespace

bool AuditResult::isWrong() const {
    return std::any_of(findings.begin(), findings.end(),
                       [](const AuditFinding& one) { return one.kind != AuditKind::Erased; });
}

QString auditSentence(const AuditFinding& finding) {
    return AuditPage::tr("%1: %2", "entry 7: what is wrong with it")
        .arg(auditEntries(finding), auditKindWords(finding.kind));
}

QString auditVerdict(const AuditResult& result) {
    const auto wrong =
        std::count_if(result.findings.begin(), result.findings.end(),
                      [](const AuditFinding& one) { return one.kind != AuditKind::Erased; });
    if (wrong > 0) return AuditPage::tr("%n things are wrong", nullptr, static_cast<int>(wrong));
    if (!result.isComplete())
        return AuditPage::tr("Nothing is wrong, as far as can be seen without every key");
    return AuditPage::tr("Nothing is wrong");
}

QStringList auditLines(const AuditResult& result) {
    const auto count = [](std::uint64_t number) { return static_cast<int>(number); };
    QStringList lines{
        AuditPage::tr("%n entries, each hash and each place", nullptr, count(result.entries)),
        AuditPage::tr("%n signatures", nullptr, count(result.signatures)),
        AuditPage::tr("%n sealed bodies opened", nullptr, count(result.bodiesOpened)),
        AuditPage::tr("%n drawings and packs", nullptr, count(result.blobs)),
        AuditPage::tr("%n heads known from papers, backups and colleagues", nullptr,
                      count(result.knownHeads))};
    if (result.bodiesClosed > 0)
        lines << AuditPage::tr("%n sealed bodies stayed closed: no key for them is here", nullptr,
                               count(result.bodiesClosed));
    return lines;
}

QString lookingWords(Looking what) {
    switch (what) {
        case Looking::SignedIn:
            return AuditPage::tr("signed in");
        case Looking::SignedOut:
            return AuditPage::tr("signed out");
        case Looking::Searched:
            return AuditPage::tr("searched");
        case Looking::Opened:
            return AuditPage::tr("opened the record");
        case Looking::BreakGlass:
            return AuditPage::tr("opened it as an emergency");
        case Looking::Printed:
            return AuditPage::tr("printed a paper");
        case Looking::Saved:
            return AuditPage::tr("saved a paper");
        case Looking::Exported:
            return AuditPage::tr("took it along");
        case Looking::Verified:
            return AuditPage::tr("verified");
    }
    return {};
}

}  // namespace ui
