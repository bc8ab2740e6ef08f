// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is taught: which packs fit this patient, this line and this kit, and why others don't.
#include <QAbstractButton>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "base/date.h"
#include "desk/fit.h"
#include "desk/packinview.h"
#include "parts/parts.h"
#include "parts/sayaloud.h"
#include "people/linewords.h"
#include "start/startpage.h"
#include "text/errortext.h"
#include "text/findings.h"
#include "text/labels.h"

namespace ui {
namespace {

bool asksOfKit(const packs::Pack& pack) {
    const packs::Applies& applies = pack.applies;
    return !applies.dressing.empty() || !applies.securement.empty() || !applies.antiseptic.empty();
}

bool isRuledOutByKit(const std::vector<base::Error>& reasons) {
    using base::Code;
    constexpr std::array ofKit{Code::PackDressing, Code::PackSecurement, Code::PackAntiseptic};
    const auto isOfKit = [&ofKit](const base::Error& one) {
        return std::count(ofKit.begin(), ofKit.end(), one.code) > 0;
    };
    return !reasons.empty() && std::all_of(reasons.begin(), reasons.end(), isOfKit);
}

}  // namespace

void StartPage::addPack(QVBoxLayout* card) {
    std::vector<Option> packs;
    for (const procedure::TaughtPtr& taught : m_desk.shelf().current())
        packs.push_back({shown(taught->digest), packWords(taught->pack, taught->pack.title)});
    m_pack = new Choice(QStringLiteral("pack"), Pick::One, packs);
    m_isPackByHand = false;
    for (const Option& one : packs)
        connect(m_pack->button(one.word), &QAbstractButton::clicked, this,
                [this] { m_isPackByHand = true; });
    m_packField = new Field(tr("What is taught"), m_pack);
    m_misfits = new QVBoxLayout;
    m_misfits->setSpacing(4);
    card->addWidget(m_packField);
    card->addLayout(m_misfits);
}

procedure::TaughtPtr StartPage::chosenPack() const {
    return m_desk.shelf().byDigest(m_pack->word().toStdString());
}

/// What the learner was taught by before; at the first visit the pack that asks for most of those
/// that fit this kit. Where the kit rules out one that asks for more, nobody is taken to mean what
/// is left.
procedure::TaughtPtr StartPage::usualPack(const practice::OpenVisit& visit) const {
    const record::Record& record = *m_desk.view().record;
    const record::Learner* learner = m_desk.view().learnerInView();
    const record::Line* line = record.line(visit.line);
    const bool isFirst = desk::packsTaught(record, visit.learner).empty();
    if (!isFirst || !learner || !line) return m_desk.packFor(visit.learner);
    const desk::Setting setting{.record = record,
                                .learner = *learner,
                                .line = *line,
                                .kit = visit.kit,
                                .today = base::today(m_desk.now())};
    const procedure::TaughtPtr best = desk::bestFit(m_desk.shelf(), setting);
    if (!best || asksOfKit(best->pack)) return best;
    const auto& all = m_desk.shelf().current();
    const bool hangsOnKit = std::any_of(all.begin(), all.end(), [&setting](const auto& one) {
        return isRuledOutByKit(desk::whyNot(one->pack, setting));
    });
    return hangsOnKit ? nullptr : best;
}

void StartPage::weighPacks() {
    if (!m_interpreter) return;
    empty(m_misfits);
    const practice::OpenVisit visit = said();
    const procedure::TaughtPtr usual = usualPack(visit);
    for (const procedure::TaughtPtr& taught : m_desk.shelf().current()) {
        const auto reasons = m_desk.misfits(*taught, visit);
        QAbstractButton* button = m_pack->button(shown(taught->digest));
        if (button) button->setEnabled(reasons.empty());
        if (reasons.empty()) continue;
        m_misfits->addWidget(text(packWords(taught->pack, taught->pack.title) +
                                      QStringLiteral(": ") + ErrorText::of(reasons.front()),
                                  Size::Note, Tone::Quiet));
    }
    QAbstractButton* chosen = m_pack->button(m_pack->word());
    m_isPackByHand = m_isPackByHand && chosen && chosen->isEnabled();
    if (!m_isPackByHand) {
        m_pack->clearChoice();
        if (usual && m_desk.misfits(*usual, visit).empty()) m_pack->choose(shown(usual->digest));
    }
    sayNoneFits();
    sayMissing();
    sayAllergies(visit.kit);
}

void StartPage::sayAllergies(const practice::Kit& kit) {
    record::AddLine lying;
    lying.dressing = kit.dressing, lying.securement = kit.securement;
    lying.antiseptic = kit.antiseptic;
    const QStringList words = allergyWarnings(*m_desk.view().record, lying);
    if (sayAloud(m_allergies, words.join(u'\n'))) scrollTo(m_allergies);
}

/// Once the kit is known: before that it is only not answered yet.
void StartPage::sayNoneFits() {
    const bool isKitKnown = !m_dressing->word().isEmpty() && !m_securement->word().isEmpty() &&
                            !m_antiseptic->word().isEmpty();
    if (!isKitKnown || !m_pack->word().isEmpty()) return m_packField->setProblem({});
    const auto& all = m_desk.shelf().current();
    const bool doesAnyFit = std::any_of(all.begin(), all.end(), [this](const auto& one) {
        const QAbstractButton* button = m_pack->button(shown(one->digest));
        return button && button->isEnabled();
    });
    m_packField->setProblem(
        doesAnyFit ? tr("No pack is chosen, and nothing has begun. What does not fit says why "
                        "below. Correct the line or the kit above, or choose here what is to be "
                        "taught.")
                   : tr("No pack fits, and nothing has begun. Each says why below. Correct the "
                        "line or the kit above; if both are right, there is nothing here to teach "
                        "it by: ask who keeps the packs of your unit."));
}

}  // namespace ui
