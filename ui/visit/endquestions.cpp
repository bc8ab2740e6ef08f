// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QVBoxLayout>

#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "visit/question.h"

namespace ui {

using render::Role;

namespace {

const auto isCovered = QStringLiteral("covered");
const auto isHeld = QStringLiteral("held");

std::optional<bool> saidIn(const PickList* list, const QString& isSo) {
    const QString chosen = list->one();
    return chosen.isEmpty() ? std::nullopt : std::optional(chosen == isSo);
}

QString whyStopped(practice::StopReason why) {
    switch (why) {
        case practice::StopReason::PatientUnwell:
            return Question::tr("The patient is unwell");
        case practice::StopReason::CalledAway:
            return Question::tr("Called away");
        case practice::StopReason::Refused:
            return Question::tr("Patient or learner does not want it now");
        case practice::StopReason::Other:
            return Question::tr("Another reason");
    }
    return {};
}

}  // namespace

Question* askStop(const Moment& moment, QWidget* parent) {
    auto* question =
        new Question(Question::tr("Stop the visit"), Question::tr("Stop, keep the record"), parent);
    auto* why = new PickList(PickList::Many::One, QStringLiteral("stopWhy"), question);
    std::vector<PickList::Entry> reasons;
    for (const auto& [reason, word] : base::Names<practice::StopReason>::all)
        reasons.push_back({QLatin1String(word), whyStopped(reason)});
    why->setEntries(reasons);
    question->room()->addWidget(why);
    auto* cover = new PickList(PickList::Many::One, QStringLiteral("stopCover"), question);
    auto* line = new PickList(PickList::Many::One, QStringLiteral("stopLine"), question);
    if (moment.opened().on == practice::On::Patient) {
        question->addWords(Question::tr("Before you leave the patient:"), Role::Ink);
        cover->setEntries({{isCovered, Question::tr("The site is covered")},
                           {QStringLiteral("bare"), Question::tr("The site is not covered")}});
        line->setEntries({{isHeld, Question::tr("The line is held")},
                          {QStringLiteral("loose"), Question::tr("The line is not held")}});
        for (PickList* list : {cover, line}) list->letNoneBe();
        question->room()->addWidget(cover);
        question->room()->addSpacing(render::Theme::gap(render::Gap::Tight));
        question->room()->addWidget(line);
        question->addWords(
            Question::tr(
                "What you don't answer here is recorded as not said, never as no. A second "
                "press takes an answer back."),
            Role::QuietInk);
    }
    QLineEdit* note = question->addLine(Question::tr("What happened"), QStringLiteral("stopNote"));
    auto* problem = question->addWords({}, Role::Brick);
    question->onAccept = [=] {
        const auto reason = base::valueOf<practice::StopReason>(why->one().toStdString());
        if (!reason) return problem->say(Question::tr("Choose why the visit stops."));
        question->say(practice::StopVisit{.why = *reason,
                                          .note = note->text().trimmed().toStdString(),
                                          .siteCovered = saidIn(cover, isCovered),
                                          .lineHeld = saidIn(line, isHeld)});
    };
    return question;
}

Question* askTakeOver(QWidget* parent) {
    auto* question = new Question(Question::tr("Take over"), Question::tr("Take over now"), parent);
    question->addWords(
        Question::tr("From now on every step counts as done by you, not by the learner."),
        Role::QuietInk);
    auto* why = new PickList(PickList::Many::One, QStringLiteral("takeOverWhy"), question);
    const QStringList reasons{Question::tr("To keep the patient safe"),
                              Question::tr("The learner asked for it"),
                              Question::tr("Not enough time")};
    std::vector<PickList::Entry> entries;
    for (int i = 0; i < reasons.size(); ++i) entries.push_back({QString::number(i), reasons[i]});
    why->setEntries(entries);
    question->room()->addWidget(why);
    question->needs(why, Question::tr("Choose why; then you can take over."));
    question->onAccept = [=] {
        question->say(practice::TakeOver{.why = reasons.value(why->one().toInt()).toStdString()});
    };
    return question;
}

Question* askHandOver(const Moment& moment, QWidget* parent) {
    auto* question =
        new Question(Question::tr("Hand over to a colleague"), Question::tr("Hand over"), parent);
    question->addWords(Question::tr("What was seen until now stays yours; what is seen from now on "
                                    "is theirs. Nobody signs what another saw."),
                       Role::QuietInk);
    auto* whom = new PickList(PickList::Many::One, QStringLiteral("handOverTo"), question);
    std::vector<PickList::Entry> entries;
    for (const record::Staff& staff : moment.view().house.staff)
        if (staff.said.role != record::Role::Auditor &&
            staff.said.staff != moment.state().teachers.back())
            entries.push_back({utf(staff.said.staff.text()), utf(staff.said.name)});
    whom->setEntries(entries);
    question->room()->addWidget(whom);
    auto* problem = question->addWords(
        entries.empty() ? Question::tr("There is no other teacher on the list of staff.")
                        : QString(),
        Role::Amber);
    question->onAccept = [=] {
        const auto to = base::StaffId::parse(whom->one().toStdString());
        if (!to.ok()) return problem->say(Question::tr("Choose who goes on teaching."));
        question->say(practice::HandOver{.to = *to});
    };
    return question;
}

Question* askChange(const Moment& moment, QWidget* parent) {
    auto* question =
        new Question(Question::tr("The dressing change"), Question::tr("Write it down"), parent);
    question->addWords(Question::tr("What lies on the site now?"), Role::QuietInk);
    auto* dressing = new PickList(PickList::Many::One, QStringLiteral("changeDressing"), question);
    std::vector<PickList::Entry> kinds;
    for (const packs::DressingKind& kind : moment.pack().schedule->dressings)
        kinds.push_back({utf(kind.id), Question::tr("%1, changed every %2 days")
                                           .arg(utf(moment.text(kind.label)))
                                           .arg(kind.days)});
    dressing->setEntries(kinds);
    // What the kit of this visit was said to be; another kind is chosen by hand.
    dressing->choose(utf(moment.opened().kit.dressing));
    question->room()->addWidget(dressing);
    if (!kinds.empty()) question->needs(dressing, Question::tr("Choose what lies on it now."));
    QLineEdit* site =
        question->addLine(Question::tr("How the site looked"), QStringLiteral("changeSite"));
    QLineEdit* bore = question->addLine(Question::tr("How the patient bore it"),
                                        QStringLiteral("changeTolerance"));
    QLineEdit* initials =
        question->addLine(Question::tr("Initials on the label"), QStringLiteral("changeInitials"));
    const record::Staff* teacher = moment.view().house.person(moment.state().teachers.back());
    if (teacher != nullptr && !moment.isVeiled()) initials->setText(utf(teacher->said.initials));
    auto* problem = question->addWords({}, Role::Brick);
    question->onAccept = [=] {
        if (site->text().trimmed().isEmpty()) {
            problem->say(Question::tr("Write how the site looked; “no redness, dry” is enough."));
            return site->setFocus();
        }
        question->say(practice::RecordChange{.dressing = dressing->one().toStdString(),
                                             .initials = initials->text().trimmed().toStdString(),
                                             .site = site->text().trimmed().toStdString(),
                                             .tolerance = bore->text().trimmed().toStdString()});
    };
    site->setFocus();
    return question;
}

}  // namespace ui
