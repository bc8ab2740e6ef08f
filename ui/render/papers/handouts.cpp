// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDateTime>
#include <algorithm>
#include <functional>

#include "base/date.h"
#include "render/papers/sections.h"
#include "render/words.h"

namespace render {
namespace {

const PaperVisit* lastSigned(const PaperData& data) {
    const auto found =
        std::find_if(data.visits.rbegin(), data.visits.rend(), std::mem_fn(&PaperVisit::isSigned));
    return found == data.visits.rend() ? nullptr : &*found;
}

QString shownOn(const PaperData& data, const QLocale& locale) {
    QStringList lines;
    for (const PaperVisit& visit : data.visits)
        if (visit.isSigned)
            lines += QStringLiteral("%1: %2").arg(
                dateWords(visit.opened.atMs, visit.opened.offsetMinutes, locale),
                onWords(visit.said.on));
    return lines.join(QLatin1Char('\n'));
}

QString validUntil(const PaperData& data, const PaperVisit& last, const QLocale& locale) {
    if (data.pack.validDays <= 0) return Papers::tr("as local policy says");
    constexpr std::int64_t dayMs = 86'400'000;
    return dateWords(last.opened.atMs + data.pack.validDays * dayMs, last.opened.offsetMinutes,
                     locale);
}

/// Each teacher with what they signed for, and the learner once.
Signatures signaturesOf(const PaperData& data, const std::vector<Signer>& signers,
                        const QLocale& locale) {
    Signatures block;
    const Signer* newest = &signers.front();
    for (const Signer& one : signers) {
        const Stamp& by = one.last->signedBy;
        if (by.atMs > newest->last->signedBy.atMs) newest = &one;
        QString caption = Papers::tr("%1, signed as what was seen. %2 (%3)")
                              .arg(roleOf(by), momentWords(by.atMs, by.offsetMinutes, locale),
                                   offsetWords(by.offsetMinutes));
        if (signers.size() > 1)
            caption += QLatin1Char('\n') + Papers::tr("for: %1").arg(joinedWords(one.parts));
        block.lines.push_back({isolated(plain(by.by)), caption});
    }
    const PaperSignature& last = *newest->last;
    block.lines.push_back(
        {isolated(plain(data.learner.name)),
         Papers::tr("Learner: %1").arg(acknowledgedWords(last.learner.how)) + QLatin1Char('\n') +
             Papers::tr("The learner's acknowledgement, %1 (%2)")
                 .arg(momentWords(last.signedBy.atMs, last.signedBy.offsetMinutes, locale),
                      offsetWords(last.signedBy.offsetMinutes)),
         QByteArray::fromStdString(last.drawing)});
    return block;
}

void addBlankSignatures(Blocks& blocks) {
    blocks.push_back(Space{14});
    blocks.push_back(Signatures{{{{}, Papers::tr("Teacher: name, role, date and time")},
                                 {{}, Papers::tr("Learner: name, date and time")}}});
}

void addVoids(Blocks& blocks) {
    blocks.push_back(Heading{Papers::tr("What ends it early")});
    for (const QString& sentence :
         {Papers::tr("An infection of the line, or a fever that nobody has explained."),
          Papers::tr("The line has moved, was changed, or another kind of line is in."),
          Papers::tr("A new kit: another dressing, securement or antiseptic than named here."),
          Papers::tr("A long gap without a dressing change, or a change in sight or hands."),
          Papers::tr("The care team says so.")})
        addText(blocks, QStringLiteral("\u2022  ") + sentence, TextStyle::Large);
}

}  // namespace

bool isCertified(const PaperData& data) {
    return data.readiness.isReady && data.readiness.isAllSigned && !signersOf(data).empty() &&
           lastSigned(data);
}

std::optional<Document> certificate(const PaperData& data, const QLocale& locale) {
    if (!isCertified(data)) return std::nullopt;
    const PaperVisit* last = lastSigned(data);
    const std::vector<Signer> signers = signersOf(data);
    Document document = framed(data, Papers::tr("Certificate"), Identified::ByBirth, locale);
    Blocks& blocks = document.blocks;
    blocks.push_back(
        titledCode(data, Papers::tr("Certificate"),
                   Papers::tr("%1 has shown what is asked for: %2.")
                       .arg(isolated(plain(data.learner.name)), plain(data.pack.title))));
    blocks.push_back(Heading{Papers::tr("What was shown")});
    Table table = keyValues();
    std::vector<std::string> parts;
    for (const PaperPart& part : data.pack.parts) parts.push_back(part.title);
    addKeyValue(table, Papers::tr("Competencies"), joinedWords(parts));
    addKeyValue(table, Papers::tr("On whom"), shownOn(data, locale));
    addKeyValue(table, Papers::tr("With which kit"), kitWords(last->said.kit));
    addKeyValue(table, Papers::tr("Valid until"), validUntil(data, *last, locale));
    makeLarge(table);
    blocks.push_back(table);
    addVoids(blocks);
    blocks.push_back(Heading{Papers::tr("Signed")});
    blocks.push_back(signaturesOf(data, signers, locale));
    blocks.push_back(Space{12});
    addCautions(blocks, data, 1);
    return document;
}

namespace {

/// How far the learner is now; what was decided stands either way.
QString whereTheLearnerIs(const PaperReadiness& found) {
    if (!found.isAllSigned)
        return Papers::tr(
            "%1 is still learning: %2. Until this is signed off, a trained person does the "
            "change.");
    if (!found.isReady)
        return Papers::tr(
            "%1 was signed off: %2. Not everything that is asked for holds now: until it does, a "
            "trained person does the change.");
    return Papers::tr(
        "%1 is signed off: %2. What was decided here stands until the team decides otherwise.");
}

QString dueWords(const PaperData& data, const QLocale& locale) {
    if (!data.dressingDue) return {};
    const QString due = dateWords(*data.dressingDue, locale);
    if (*data.dressingDue < base::dateAt(data.printedMs, data.offsetMinutes))
        return Papers::tr("%1, which has passed").arg(due);
    const bool isLate = data.help && data.help->nextChangeOn > *data.dressingDue;
    return isLate
               ? Papers::tr("%1. The next change is planned for later: ask the care team").arg(due)
               : due;
}

}  // namespace

Document goingHomeWithHelp(const PaperData& data, const QLocale& locale) {
    Document document =
        framed(data, Papers::tr("Going home with help"), Identified::ByBirth, locale);
    Blocks& blocks = document.blocks;
    blocks.push_back(
        titledCode(data, Papers::tr("Going home with help"),
                   whereTheLearnerIs(data.readiness)
                       .arg(isolated(plain(data.learner.name)), plain(data.pack.title))));
    blocks.push_back(Heading{Papers::tr("Who does what")});
    Table table = keyValues();
    const auto decided = [&data](std::string record::DecideHelp::*field) {
        return data.help ? isolated(plainLines((*data.help).*field)) : QString();
    };
    const QString on = data.help ? dateWords(data.help->nextChangeOn, locale) : QString();
    addKeyValue(table, Papers::tr("Dressing due"), dueWords(data, locale));
    addKeyValue(table, Papers::tr("Next change, when"), on);
    addKeyValue(table, Papers::tr("Next change, by whom"),
                decided(&record::DecideHelp::nextChangeBy));
    addKeyValue(table, Papers::tr("Whom to call"), decided(&record::DecideHelp::call));
    addCalls(table, data);
    addKeyValue(table, Papers::tr("Why"), decided(&record::DecideHelp::why));
    addKeyValue(table, Papers::tr("Who decided"), decided(&record::DecideHelp::decidedBy));
    addKeyValue(table, Papers::tr("Who was told"), decided(&record::DecideHelp::told));
    if (data.helpDecided)
        addKeyValue(table, Papers::tr("Written down by"), stampWords(*data.helpDecided, locale));
    makeLarge(table);
    blocks.push_back(table);
    blocks.push_back(Heading{Papers::tr("What is still to be learned")});
    if (data.readiness.isReady)
        addText(blocks, Papers::tr("Every rule is met; the sign-off is still missing."));
    addNotYet(blocks, data);
    addBlankSignatures(blocks);
    blocks.push_back(Space{12});
    addCautions(blocks, data, 1);
    return document;
}

}  // namespace render
