// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learners/personpage.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/packinview.h"
#include "learners/learnercard.h"
#include "learners/readsonly.h"
#include "parts/choice.h"
#include "parts/flowlayout.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "pieces/visitwords.h"
#include "pieces/wrongcharts.h"
#include "render/words.h"
#include "text/findings.h"
#include "text/labels.h"

namespace ui {
namespace {

struct NextWords {
    QString press, why;
};

NextWords nextWordsFor(Next next) {
    switch (next) {
        case Next::Line:
            return {PersonPage::tr("Add the line"),
                    PersonPage::tr("What it measured at insertion is needed before a visit.")};
        case Next::Learner:
            return {PersonPage::tr("Add who is taught"),
                    PersonPage::tr("A caregiver, or the patient.")};
        case Next::Consent:
            return {PersonPage::tr("Ask for consent"),
                    PersonPage::tr("Without consent nobody is taught.")};
        case Next::Start:
            return {PersonPage::tr("Start a visit"),
                    PersonPage::tr("Show it, guide, or watch a return demonstration.")};
        case Next::GoOn:
            return {PersonPage::tr("Go on with the visit"),
                    PersonPage::tr("It is open and saved as it stands.")};
        case Next::AskBack:
            return {PersonPage::tr("Ask back"),
                    PersonPage::tr("Questions or drills are still open.")};
        case Next::Sign:
            return {PersonPage::tr("See and sign"),
                    PersonPage::tr("Competencies are met and wait for your signature.")};
        case Next::Papers:
            return {PersonPage::tr("Papers"), PersonPage::tr("All is signed.")};
    }
    return {};
}

}  // namespace

PersonPage::PersonPage(desk::Desk& desk, QWidget* parent)
    : Page(QStringLiteral("person"), parent), m_desk(desk) {}

void PersonPage::refresh() {
    const KeptFocus kept(this);
    clear();
    errors()->clear();
    const auto& record = m_desk.view().record;
    if (!record) return;
    addHead(*record);
    addDone();
    if (!readsOnly(m_desk.view())) addNext();
    addLearners(*record);
    if (const record::Learner* learner = m_desk.view().learnerInView()) addFindings(*learner);
    addKnown(*record);
    addVisits(*record);
    addWrongCharts(column(), m_desk.view());
    addOthers();
    if (m_offersErasing) addErasing();
}

void PersonPage::addErasing() {
    QPushButton* erase = quietButton(tr("Destroy this record"), QStringLiteral("person.erase"));
    connect(erase, &QPushButton::clicked, this, &PersonPage::wantsErasing);
    column()->addWidget(erase, 0, Qt::AlignLeading);
}

void PersonPage::addHead(const record::Record& record) {
    auto* row = new QHBoxLayout;
    QPushButton* back = plainButton(tr("All learners"), QStringLiteral("person.back"));
    connect(back, &QPushButton::clicked, this, &PersonPage::left);
    row->addWidget(pageHeader(render::plain(record.patient.name),
                              tr("born %1, number %2")
                                  .arg(bornWords(record.patient.born),
                                       render::isolated(render::plain(record.patient.number)))),
                   1);
    row->addWidget(back, 0, Qt::AlignTop);
    column()->addLayout(row);
}

void PersonPage::addDone() {
    if (m_done.isEmpty()) return;
    QFrame* done = frame("leaf");
    done->setObjectName(QStringLiteral("person.done"));
    done->setAccessibleName(m_done);
    columnIn(done)->addWidget(
        text(QStringLiteral("✓  ") + m_done, Size::Body, Tone::Leaf, Weight::Strong));
    column()->addWidget(done);
    m_done.clear();
    // Once it is shown: a screen reader asks for it then.
    const auto tell = [done] {
        QAccessibleEvent alert(done, QAccessible::Alert);
        QAccessible::updateAccessibility(&alert);
    };
    QMetaObject::invokeMethod(done, tell, Qt::QueuedConnection);
}

void PersonPage::addNext() {
    const Next next = nextFor(m_desk);
    const NextWords words = nextWordsFor(next);
    QFrame* card = frame("leaf");
    auto* row = new QHBoxLayout(card);
    row->setContentsMargins(16, 16, 16, 16);
    row->setSpacing(16);
    auto* says = new QVBoxLayout;
    says->setSpacing(4);
    says->addWidget(text(tr("Next"), Size::Note, Tone::Leaf, Weight::Strong));
    says->addWidget(text(words.why, Size::Lead));
    row->addLayout(says, 1);
    QPushButton* press = primaryButton(words.press, QStringLiteral("person.next"));
    row->addWidget(press);
    column()->addWidget(card);
    connect(press, &QPushButton::clicked, this, [this, next] { Q_EMIT wants(next); });
}

void PersonPage::addLearners(const record::Record& record) {
    QVBoxLayout* card = cardIn(column(), tr("Who is taught"));
    const auto inView = m_desk.view().learner;
    auto* flow = new FlowLayout(nullptr, 12);
    for (const record::Learner& learner : record.learners) {
        QPushButton* one =
            plainButton(render::plain(learner.said.name) + QStringLiteral(", ") +
                            labelOf(CodeList::Relationship, learner.said.relationship),
                        QStringLiteral("learner.") + shown(learner.said.learner.text()));
        one->setCheckable(true);
        one->setChecked(inView == learner.said.learner);
        const auto id = learner.said.learner;
        connect(one, &QPushButton::clicked, this, [this, id] {
            if (errors()->took(m_desk.openRecord(m_desk.view().record->id, id))) refresh();
        });
        flow->addWidget(one);
    }
    card->addLayout(flow);
    if (readsOnly(m_desk.view())) return;
    QPushButton* add = quietButton(tr("Add somebody"), QStringLiteral("person.addLearner"));
    connect(add, &QPushButton::clicked, this, [this] { Q_EMIT wants(Next::Learner); });
    flow->addWidget(add);
}

void PersonPage::addFindings(const record::Learner& learner) {
    const auto taught = m_desk.packFor(learner.said.learner);
    const auto found = m_desk.readinessOf(learner.said.learner);
    if (!taught || !found) {
        cardIn(column(), tr("So far"), tr("No pack fits yet. Starting a visit says why."));
        return;
    }
    addPacks(learner, *taught);
    QVBoxLayout* card = cardIn(column(), found->ready ? tr("Ready by the rules") : tr("Not yet"),
                               packWords(taught->pack, taught->pack.title));
    std::vector<readiness::Finding> findings = found->findings;
    std::stable_partition(findings.begin(), findings.end(),
                          [](const readiness::Finding& one) { return !one.met; });
    QVBoxLayout* lines = linesIn(card);
    for (const readiness::Finding& finding : findings) {
        const QString glyph = finding.met ? QStringLiteral("✓  ") : QStringLiteral("○  ");
        lines->addWidget(text(glyph + findingSentence(finding, taught->pack), Size::Body,
                              finding.met ? Tone::Leaf : Tone::Ink));
    }
    card->addWidget(text(evidenceSentence(found->evidence), Size::Note, Tone::Quiet));
    addCompetencies(taught->pack, *found);
}

/// Readiness, signatures and papers are of one pack at a time.
void PersonPage::addPacks(const record::Learner& learner, const procedure::Taught& inView) {
    const auto packs = desk::packsTaught(*m_desk.view().record, learner.said.learner);
    // While a visit is open its pack is the one in view.
    if (packs.size() < 2 || m_desk.view().visit()) return;
    QVBoxLayout* card = cardIn(column(), tr("Taught by %n packs", nullptr, int(packs.size())),
                               tr("What is shown here, signed and printed is of the one chosen."));
    std::vector<Option> options;
    for (const procedure::TaughtPtr& one : packs)
        options.push_back({shown(one->digest), tr("%1, version %2")
                                                   .arg(packWords(one->pack, one->pack.title),
                                                        shown(one->pack.version))});
    auto* choice = new Choice(QStringLiteral("packInView"), Pick::One, options);
    choice->choose(shown(inView.digest));
    card->addWidget(choice);
    connect(choice, &Choice::changed, this, [this, choice] {
        m_desk.lookAtPack(choice->word().toStdString());
        refresh();
    });
}

void PersonPage::addCompetencies(const packs::Pack& pack, const readiness::Readiness& readiness) {
    int signedOnes = 0;
    for (const auto& one : readiness.competencies) signedOnes += one.isSigned ? 1 : 0;
    QVBoxLayout* card = cardIn(
        column(),
        tr("Competencies: %1 of %2 signed").arg(signedOnes).arg(readiness.competencies.size()));
    card->addWidget(new ProgressBand(signedOnes, int(readiness.competencies.size())));
    QVBoxLayout* lines = linesIn(card);
    for (const auto& one : readiness.competencies) {
        const bool isMet = one.met == readiness::Met::Yes;
        const QString glyph = one.isSigned ? QStringLiteral("✓  ")
                              : isMet      ? QStringLiteral("◐  ")
                                           : QStringLiteral("○  ");
        const QString state = one.isSigned ? tr("signed") : isMet ? tr("met") : tr("not yet");
        lines->addWidget(
            text(glyph + competencyTitle(pack, one.competency) + QStringLiteral(" — ") + state,
                 Size::Body, one.isSigned ? Tone::Leaf : Tone::Ink));
    }
}

void PersonPage::addOthers() {
    auto* flow = new FlowLayout(nullptr, 12);
    const auto add = [this, flow](const QString& words, const QString& name, Next next) {
        QPushButton* made = plainButton(words, name);
        connect(made, &QPushButton::clicked, this, [this, next] { Q_EMIT wants(next); });
        flow->addWidget(made);
    };
    const bool isWhole = !m_desk.view().record->lines.empty() && m_desk.view().learnerInView();
    const bool hasLine = !m_desk.view().record->linesInUse().empty();
    const bool writes = !readsOnly(m_desk.view());
    if (isWhole && hasLine && writes)
        add(tr("Start a visit"), QStringLiteral("person.start"), Next::Start);
    if (isWhole) add(tr("Papers"), QStringLiteral("person.papers"), Next::Papers);
    if (isWhole && writes) {
        const record::Learner& person = *m_desk.view().learnerInView();
        QPushButton* again =
            plainButton(person.consent || person.needs ? tr("Ask consent and needs again")
                                                       : tr("Ask consent and needs"),
                        QStringLiteral("person.again"));
        const base::LearnerId learner = person.said.learner;
        connect(again, &QPushButton::clicked, this,
                [this, learner] { Q_EMIT wantsAgain(learner); });
        flow->addWidget(again);
    }
    if (writes) {
        add(tr("Add a line"), QStringLiteral("person.line"), Next::Line);
        QPushButton* allergies = plainButton(
            m_desk.view().record->allergies ? tr("Ask allergies again") : tr("Ask allergies"),
            QStringLiteral("person.allergies"));
        connect(allergies, &QPushButton::clicked, this, &PersonPage::wantsAllergies);
        flow->addWidget(allergies);
        QPushButton* correct =
            plainButton(tr("Addendum, late entry, wrong chart"), QStringLiteral("person.correct"));
        connect(correct, &QPushButton::clicked, this, &PersonPage::wantsCorrection);
        flow->addWidget(correct);
    }
    column()->addLayout(flow);
}

}  // namespace ui
