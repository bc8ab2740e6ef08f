// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sign/signpage.h"

#include <QAbstractButton>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "parts/parts.h"
#include "pieces/wrongcharts.h"
#include "render/words.h"
#include "sign/signaturepad.h"
#include "sign/stepstrip.h"
#include "text/findings.h"
#include "text/labels.h"

namespace ui {

SignPage::SignPage(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("sign"), parent), m_desk(desk) {
    QPushButton* help = addSecondary(tr("Going home with help"), QStringLiteral("sign.help"));
    setPrimary(tr("Sign"));
    setEnter(Enter::GoesTo);
    connect(help, &QPushButton::clicked, this, &SignPage::wantsHelpForm);
    connect(this, &Page::pressed, this, &SignPage::sign);
}

void SignPage::refresh() {
    clear();
    errors()->clear();
    m_how = nullptr;
    m_signable = {};
    column()->addWidget(
        pageHeader(tr("Before signing"), tr("What was seen, what the rules find, then one "
                                            "signature for all that is met.")));
    const record::Learner* learner = m_desk.view().learnerInView();
    m_taught = learner ? m_desk.packFor(learner->said.learner) : nullptr;
    m_found = learner ? m_desk.readinessOf(learner->said.learner) : std::nullopt;
    setPrimary(tr("Sign"))->setEnabled(false);
    if (!learner || !m_taught || !m_found) {
        auto* nobody = new EmptyState(tr("Nothing to sign yet"),
                                      tr("Here will be every step and what was recorded for it, "
                                         "once a learner is chosen and has had a visit."),
                                      tr("To the learners"), QStringLiteral("sign.toLearners"));
        connect(nobody, &EmptyState::pressed, this, &SignPage::wantsPerson);
        column()->addWidget(nobody);
        return;
    }
    QLabel* whose =
        text(whoseWords(*m_desk.view().record, *learner), Size::Lead, Tone::Ink, Weight::Strong);
    whose->setObjectName(QStringLiteral("sign.whose"));
    column()->addWidget(whose);
    if (m_desk.view().teacher)
        m_signable = readiness::signableBy(*m_desk.view().teacher, *m_desk.view().record,
                                           learner->said.learner, *m_taught, *m_found);
    addFindings();
    addSeen(*learner);
    addWrongCharts(column(), m_desk.view());
    addToSign();
    addOthers();
    addShared();
    addAct(*learner);
    scrollToTop();
}

void SignPage::addSeen(const record::Learner& learner) {
    std::vector<const record::Visit*> seen;
    const record::Record& record = *m_desk.view().record;
    for (const record::Visit& visit : record.visits) {
        const bool isHers = visit.opened.learner == learner.said.learner &&
                            visit.opened.way == practice::Way::ReturnDemonstration;
        if (isHers && visit.taught && visit.taught->digest == m_taught->digest)
            seen.push_back(&visit);
    }
    QVBoxLayout* card = cardIn(column(), tr("Every step, every return demonstration"),
                               tr("◆ decides readiness. ▲ something was seen going wrong."));
    if (seen.empty())
        card->addWidget(text(tr("No return demonstration yet."), Size::Body, Tone::Quiet));
    else
        card->addWidget(new StepStrip(*m_taught, record, seen));
}

void SignPage::addFindings() {
    QVBoxLayout* card =
        cardIn(column(), m_found->ready ? tr("✓  Ready by the rules") : tr("○  Not yet"));
    std::vector<readiness::Finding> findings = m_found->findings;
    std::stable_partition(findings.begin(), findings.end(),
                          [](const readiness::Finding& one) { return !one.met; });
    QVBoxLayout* lines = linesIn(card);
    for (const readiness::Finding& finding : findings)
        lines->addWidget(text((finding.met ? QStringLiteral("✓  ") : QStringLiteral("○  ")) +
                                  findingSentence(finding, m_taught->pack),
                              Size::Body, finding.met ? Tone::Leaf : Tone::Ink));
    card->addWidget(text(evidenceSentence(m_found->evidence), Size::Note, Tone::Quiet));
}

void SignPage::addToSign() {
    QVBoxLayout* lines = linesIn(cardIn(column(), tr("Competencies")));
    for (const auto& one : m_found->competencies) {
        const bool isMet = one.met == readiness::Met::Yes;
        QString words = isMet ? tr("met, not signed") : tr("not yet");
        if (one.isSigned)
            words = one.newSinceSigning ? tr("signed; more was recorded since") : tr("signed");
        QString line = (one.isSigned ? QStringLiteral("✓  ")
                        : isMet      ? QStringLiteral("◐  ")
                                     : QStringLiteral("○  ")) +
                       competencyTitle(m_taught->pack, one.competency) + QStringLiteral(" — ") +
                       words;
        if (!isMet && !one.missing.empty())
            line += QStringLiteral(". ") + findingSentence(one.missing.front(), m_taught->pack);
        lines->addWidget(text(line, Size::Body, one.isSigned ? Tone::Leaf : Tone::Ink));
        if (!one.isSigned) continue;
        QLabel* by = text(signatureWords(one.signature), Size::Note, Tone::Quiet);
        by->setObjectName(QStringLiteral("signedBy.") + shown(one.competency));
        lines->addWidget(by);
    }
}

/// As on paper: name, role, meaning, local time and its offset.
QString SignPage::signatureWords(const record::Origin& signature) const {
    const record::Staff* who = signature.by ? m_desk.view().house.person(*signature.by) : nullptr;
    return tr("%1, %2, signed as what was seen. %3 (%4)", "name, role, local time, offset")
        .arg(who ? nameOf(*signature.by) : tr("unknown"),
             who ? render::roleWords(who->said.role) : tr("role not known"),
             render::momentWords(signature.atMs, signature.offsetMinutes, QLocale()),
             render::offsetWords(signature.offsetMinutes));
}

QString SignPage::nameOf(const base::StaffId& id) const {
    const record::Staff* who = m_desk.view().house.person(id);
    return who ? render::isolated(render::plain(who->said.name)) : tr("unknown");
}

void SignPage::addShared() {
    if (m_signable.shared.empty()) return;
    QVBoxLayout* card = cardIn(column(), tr("Handed over in the middle"),
                               tr("Nobody saw all of these, so nobody can sign them yet. Watch "
                                  "each once more from its beginning to its end."));
    for (const auto& shared : m_signable.shared) {
        QStringList names;
        for (const base::StaffId& one : shared.teachers) names << nameOf(one);
        card->addWidget(text(
            tr("%1: seen by %2", "a competency, and who")
                .arg(competencyTitle(m_taught->pack, shared.competency), names.join(tr("; ")))));
    }
}

void SignPage::addOthers() {
    if (m_signable.others.empty()) return;
    QVBoxLayout* card = cardIn(column(), tr("Seen by somebody else"),
                               tr("Nobody signs what another saw. These can sign:"));
    for (const auto& other : m_signable.others)
        card->addWidget(text(
            tr("%1: %2", "a competency, and who can sign it")
                .arg(competencyTitle(m_taught->pack, other.competency), nameOf(other.teacher))));
}

QString SignPage::statement(const record::Learner& learner) const {
    const record::Staff* who = m_desk.view().house.person(*m_desk.view().teacher);
    QStringList titles;
    for (const std::string& one : m_signable.competencies)
        titles << competencyTitle(m_taught->pack, one);
    return tr("I, %1 (%2), saw %3 do the following as the pack “%4”, version %5, asks, and I sign "
              "for it: %6. Local policy and the licensed clinician's judgement come first.")
        .arg(who ? render::plain(who->said.name) : QString(),
             who ? render::roleWords(who->said.role) : QString(), render::plain(learner.said.name),
             packWords(m_taught->pack, m_taught->pack.title), shown(m_taught->pack.version),
             titles.join(tr("; ")));
}

void SignPage::addAct(const record::Learner& learner) {
    if (!m_desk.view().teacher || m_signable.competencies.empty()) {
        cardIn(column(), tr("Nothing waits for your signature"),
               tr("Competencies that are met and that you saw yourself will stand here."));
        return;
    }
    const int count = int(m_signable.competencies.size());
    m_statement = statement(learner);
    QVBoxLayout* card = cardIn(column(), tr("You sign this"));
    QLabel* words = text(m_statement, Size::Lead);
    words->setObjectName(QStringLiteral("statement"));
    card->addWidget(words);
    QVBoxLayout* other = cardIn(column(), tr("The learner's side"));
    m_how = new Choice(QStringLiteral("how"), Pick::One,
                       {{QStringLiteral("signed"), tr("Signs here")},
                        {QStringLiteral("voice"), tr("Agrees by voice")},
                        {QStringLiteral("declined"), tr("Declines")},
                        {QStringLiteral("not-permitted"), tr("Is not permitted to")},
                        {QStringLiteral("not-able"), tr("Is not able to")}});
    other->addWidget(new Field(tr("Acknowledges"), m_how));
    m_drawing = new QWidget;
    auto* draw = new QVBoxLayout(m_drawing);
    draw->setContentsMargins(0, 0, 0, 0);
    m_pad = new SignaturePad;
    draw->addWidget(m_pad);
    QPushButton* again = quietButton(tr("Clear the drawing"), QStringLiteral("sign.clear"));
    connect(again, &QPushButton::clicked, m_pad, &SignaturePad::clear);
    draw->addWidget(again, 0, Qt::AlignLeading);
    m_typed = new WordsField(tr("Or the learner types the name"), QStringLiteral("typedName"),
                             Must::MayStayEmpty);
    draw->addWidget(m_typed);
    m_note = new WordsField(tr("Why"), QStringLiteral("ackNote"), Must::MayStayEmpty);
    other->addWidget(m_drawing);
    other->addWidget(m_note);
    connect(m_how, &Choice::changed, this, &SignPage::followHow);
    m_how->choose(QStringLiteral("signed"));
    followHow();
    primary()->setEnabled(true);
    primary()->setText(tr("Sign %n competencies", nullptr, int(count)));
}

void SignPage::followHow() {
    const QString how = m_how->word();
    m_drawing->setVisible(how == QLatin1String("signed"));
    m_note->setVisible(how != QLatin1String("signed") && how != QLatin1String("voice"));
}

base::Result<record::Acknowledgement> SignPage::acknowledgement() {
    record::Acknowledgement said;
    const auto how = base::valueOf<record::AcknowledgedBy>(m_how->word().toStdString());
    said.how = how.value_or(record::AcknowledgedBy::NotAble);
    said.note = m_note->isHidden() ? std::string() : m_note->words();
    if (said.how != record::AcknowledgedBy::Signed) return said;
    const std::string drawn = m_pad->isEmpty() ? typedSignature(m_typed->typed()) : m_pad->svg();
    auto digest = m_desk.keepDrawing(drawn);
    if (!digest) return digest.error();
    said.drawing = *digest;
    return said;
}

/// Whether the learner's side is answered; otherwise it is said.
bool SignPage::isAnswered() {
    const bool isDrawn = !m_pad->isEmpty() || !m_typed->typed().isEmpty();
    const bool wantsDrawing = m_how->word() == QLatin1String("signed");
    if (wantsDrawing && !isDrawn)
        errors()->sayWords(
            tr("The learner has not signed yet. Nothing was signed. Draw or "
               "type the name above, or choose another answer."));
    const bool wantsWhy = !m_note->isHidden();
    if (wantsWhy && m_note->typed().isEmpty())
        errors()->sayWords(
            tr("It is not said why. Nothing was signed. Write one line why "
               "the learner does not sign."));
    return (!wantsDrawing || isDrawn) && (!wantsWhy || !m_note->typed().isEmpty());
}

ToSign SignPage::toSign() const {
    ToSign made;
    for (const std::string& one : m_signable.competencies)
        made.lines << competencyTitle(m_taught->pack, one);
    made.lines << tr("The learner: %1").arg(m_how->button(m_how->word())->text());
    const practice::PackRef pack{m_taught->pack.id, m_taught->pack.version, m_taught->digest};
    const record::Learner* learner = m_desk.view().learnerInView();
    if (learner)
        for (const practice::Interpreter& one :
             m_desk.view().record->interpretersOf(learner->said.learner, pack))
            made.lines << tr("The interpreter: %1, %2")
                              .arg(render::interpreterWords(one.mode),
                                   one.who.empty() ? tr("no name written down")
                                                   : render::isolated(render::plain(one.who)));
    made.lines << tr("The ledger has %n entries up to now. It rests on all of them.", nullptr,
                     int(m_desk.view().head.size));
    made.meaning = m_statement;
    made.when = m_desk.now();
    return made;
}

void SignPage::sign() {
    if (!m_desk.view().learnerInView() || !m_how || !isAnswered()) return;
    if (m_asksFirst) return Q_EMIT confirmationWanted(toSign());
    signNow();
}

void SignPage::signNow() {
    const record::Learner* learner = m_desk.view().learnerInView();
    if (!learner || !m_how) return;
    auto side = acknowledgement();
    if (!side) return errors()->say(side.error());
    const auto signedOff = m_desk.say(
        record::SignOff{.learner = learner->said.learner,
                        .pack = {m_taught->pack.id, m_taught->pack.version, m_taught->digest},
                        .competencies = m_signable.competencies,
                        .statement = m_statement.toStdString(),
                        .acknowledgement = *side});
    if (errors()->took(signedOff)) Q_EMIT wentOn();
}

}  // namespace ui
