// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QVBoxLayout>

#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "practice/found.h"
#include "visit/question.h"

namespace ui {

using render::Role;

namespace {

/// The clean conditions that hold: those a touch can have spoiled.
std::vector<PickList::Entry> cleanNow(const Moment& moment) {
    std::vector<PickList::Entry> entries;
    const auto& conditions = moment.pack().conditions;
    for (std::size_t i = 0; i < conditions.size(); ++i)
        if (conditions[i].clean && moment.state().holds.has(static_cast<int>(i)))
            entries.push_back({utf(conditions[i].id), utf(moment.text(conditions[i].label))});
    return entries;
}

std::vector<PickList::Entry> stepsDone(const Moment& moment) {
    std::vector<PickList::Entry> entries;
    const auto& done = moment.state().done;
    for (auto one = done.rbegin(); one != done.rend() && entries.size() < 12; ++one) {
        const packs::Step& step = moment.stepOf(one->op);
        if (!one->changedNothing && !moment.taught().model.isRecovery(one->op))
            entries.push_back({utf(step.id), utf(moment.text(step.doText))});
    }
    return entries;
}

const char* const leftOutWord = "left-out";
/// Before the id of a lapse: it was found in the step, it did not happen after it.
const QLatin1String foundThenWord("found-then.");

std::vector<PickList::Entry> whatWentWrong(const packs::Pack& pack, const std::string& step) {
    std::vector<PickList::Entry> entries{
        {QLatin1String(leftOutWord), Question::tr("It was left out")}};
    const packs::Step* found = packs::findStep(pack, step).step;
    if (found == nullptr) return entries;
    for (const std::string& id : found->lapses) {
        const packs::Lapse* lapse = packs::findLapse(pack, id);
        if (!lapse) continue;
        const QString label = utf(packs::text(pack, lapse->label, teachersLanguage()));
        const bool mayBeFound = practice::isFoundAt(pack, id, step);
        if (mayBeFound)
            entries.push_back({foundThenWord + utf(id),
                               Question::tr("Found there, nobody's lapse: %1").arg(label)});
        entries.push_back(
            {utf(id), mayBeFound ? Question::tr("Happened after it: %1").arg(label) : label});
    }
    return entries;
}

practice::SeeLapse seenEarlier(const QString& what, const std::string& step, HelperAtHand helper) {
    practice::SeeLapse seen{.happened = step, .alone = helper == HelperAtHand::No};
    const bool wasFound = what.startsWith(foundThenWord);
    if (wasFound) seen.foundThen = true;
    seen.lapses = {(wasFound ? what.mid(foundThenWord.size()) : what).toStdString()};
    return seen;
}

/// What no list has: a line for what was seen, and what was touched by it.
struct OtherFields {
    QLineEdit* what;
    Words* asks;
    PickList* touched;
    PickList* found;  ///< whether it was there before

    /// None while the line is empty.
    std::optional<practice::OtherLapse> said() const {
        const QString words = what->text().trimmed();
        if (words.isEmpty()) return std::nullopt;
        practice::OtherLapse other{.what = words.toStdString()};
        for (const QString& id : touched->chosen()) other.touched.push_back(id.toStdString());
        other.found = !found->chosen().isEmpty();
        return other;
    }
};

OtherFields addOther(Question* question, const Moment& moment, const QString& name) {
    OtherFields fields{};
    fields.what = question->addLine(name, QStringLiteral("otherWhat"));
    const auto clean = cleanNow(moment);
    fields.asks =
        question->addWords(clean.empty() ? Question::tr("Nothing that is clean now can be touched.")
                                         : Question::tr("What was touched, or is no longer clean?"),
                           Role::QuietInk);
    fields.touched = new PickList(PickList::Many::Any, QStringLiteral("otherTouched"), question);
    fields.touched->setEntries(clean);
    question->room()->addWidget(fields.touched);
    fields.found = new PickList(PickList::Many::Any, QStringLiteral("otherFound"), question);
    fields.found->setEntries(
        {{QStringLiteral("before"),
          Question::tr("Found on the patient: it was there before, and is no lapse")}});
    question->room()->addSpacing(render::Theme::gap(render::Gap::Tight));
    question->room()->addWidget(fields.found);
    return fields;
}

/// What was touched is asked once something is written.
void askTouchedOnceWritten(Question* question, const OtherFields& fields) {
    const auto show = [=] {
        const bool isWritten = fields.said().has_value();
        fields.asks->setVisible(isWritten);
        fields.touched->setVisible(isWritten);
        fields.found->setVisible(isWritten);
        question->orderTabs();
    };
    QObject::connect(fields.what, &QLineEdit::textChanged, question, show);
    show();
}

}  // namespace

Question* askSeveral(const Moment& moment, HelperAtHand helper, QWidget* parent) {
    auto* question =
        new Question(Question::tr("Seen at one moment"), Question::tr("Show the way back"), parent);
    question->addWords(Question::tr("Choose all of them: one way back answers for all."),
                       Role::QuietInk);
    auto* which = new PickList(PickList::Many::Any, QStringLiteral("severalLapses"), question);
    std::vector<PickList::Entry> entries;
    for (const int index : practice::lapsesToOffer(moment.taught(), moment.state())) {
        const packs::Lapse& lapse = moment.pack().lapses.at(static_cast<std::size_t>(index));
        entries.push_back({utf(lapse.id), utf(moment.text(lapse.label))});
    }
    which->setEntries(entries);
    question->room()->addWidget(which);
    const OtherFields other =
        addOther(question, moment, Question::tr("And something else, in a few words"));
    askTouchedOnceWritten(question, other);
    auto* problem = question->addWords({}, Role::Brick);
    question->onAccept = [=] {
        practice::SeeLapse seen{.other = other.said(), .alone = helper == HelperAtHand::No};
        for (const QString& id : which->chosen()) seen.lapses.push_back(id.toStdString());
        if (seen.lapses.empty() && !seen.other)
            return problem->say(Question::tr("Choose what was seen."));
        question->say(seen);
    };
    return question;
}

Question* askOther(const Moment& moment, HelperAtHand helper, QWidget* parent) {
    auto* question =
        new Question(Question::tr("What went wrong?"), Question::tr("Show the way back"), parent);
    const OtherFields other = addOther(question, moment, Question::tr("What was seen"));
    auto* problem = question->addWords({}, Role::Brick);
    question->onAccept = [=] {
        const auto said = other.said();
        if (said)
            return question->say(
                practice::SeeLapse{.other = *said, .alone = helper == HelperAtHand::No});
        problem->say(Question::tr("Write in a few words what was seen."));
        other.what->setFocus();
    };
    other.what->setFocus();
    return question;
}

Question* askEarlier(const Moment& moment, HelperAtHand helper, QWidget* parent) {
    auto* question = new Question(Question::tr("It happened earlier"),
                                  Question::tr("Show the way back"), parent);
    question->addWords(Question::tr("At which step?"), Role::QuietInk);
    auto* step = new PickList(PickList::Many::One, QStringLiteral("earlierStep"), question);
    step->setEntries(stepsDone(moment));
    question->room()->addWidget(step);
    auto* problem = question->addWords({}, Role::Brick);
    auto* title = question->addWords({}, Role::QuietInk);
    auto* what = new PickList(PickList::Many::One, QStringLiteral("earlierLapse"), question);
    question->room()->addWidget(what);
    // The pack outlives the question: an open visit keeps its pack.
    const procedure::TaughtPtr taught = moment.visit().taught;
    QObject::connect(step, &PickList::changed, question, [=] {
        title->say(Question::tr("What went wrong there?"));
        what->setEntries(whatWentWrong(taught->pack, step->one().toStdString()));
        question->orderTabs();
    });
    question->onAccept = [=] {
        const std::string at = step->one().toStdString();
        if (at.empty() || what->one().isEmpty())
            return problem->say(Question::tr("Choose the step, then what went wrong."));
        if (what->one() == QLatin1String(leftOutWord))
            return question->say(
                practice::MissStep{.step = at, .alone = helper == HelperAtHand::No});
        question->say(seenEarlier(what->one(), at, helper));
    };
    return question;
}

}  // namespace ui
