// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/lapsewords.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include "pieces/visitwords.h"
#include "practice/lapses.h"
#include "render/words.h"

namespace ui {

namespace {

struct LapseTalk {
    Q_DECLARE_TR_FUNCTIONS(LapseWords)
};

QString inWords(const Moment& moment, const packs::Text& texts, Reader reader) {
    return utf(reader == Reader::Teacher ? moment.text(texts) : moment.learners(texts));
}

}  // namespace

QString lapseTitle(const Moment& moment, const practice::LapseRecord& lapse) {
    QStringList titles;
    for (const std::string& id : lapse.lapses)
        if (const packs::Lapse* one = packs::findLapse(moment.pack(), id))
            titles << utf(moment.text(one->label));
    if (!lapse.other.empty())
        titles << (moment.isVeiled() ? LapseTalk::tr("something else") : utf(lapse.other));
    if (!lapse.leftOut.empty()) {
        const packs::Step* step = packs::findStep(moment.pack(), lapse.leftOut).step;
        titles << LapseTalk::tr("left out: %1")
                      .arg(step == nullptr ? utf(lapse.leftOut) : utf(moment.text(step->doText)));
    }
    return titles.join(QStringLiteral(", "));
}

QString lapseSays(const Moment& moment, const practice::LapseRecord& lapse, Reader reader) {
    QStringList says;
    for (const std::string& id : lapse.lapses)
        if (const packs::Lapse* one = packs::findLapse(moment.pack(), id))
            says << inWords(moment, one->say, reader);
    return says.join(QLatin1Char(' '));
}

QString whomToCall(const Moment& moment, packs::Call call) {
    const auto& unit = moment.view().house.unit;
    const auto with = [](const QString& who, const std::string& number) {
        // Never a blank: where no number was entered, the paper by the bed has to be looked at.
        // A number is dialled from one line; words around it may wrap.
        static const QRegularExpression within(QStringLiteral("(?<!\\p{L}) (?!\\p{L})"));
        const QString digits = render::plain(number).replace(within, QString(QChar(QChar::Nbsp)));
        const QString dialled =
            number.empty() ? LapseTalk::tr("number not entered") : render::isolated(digits);
        return who + QStringLiteral("  ") + dialled;
    };
    switch (call) {
        case packs::Call::Emergency:
            return with(LapseTalk::tr("Emergency"), unit ? unit->emergency : "");
        case packs::Call::TeamNow:
            return with(LapseTalk::tr("The team, day and night"), unit ? unit->teamNow : "");
        case packs::Call::TeamToday:
            return with(LapseTalk::tr("The team, today"), unit ? unit->teamToday : "");
    }
    return {};
}

QString callAfter(const Moment& moment, const practice::LapseRecord& lapse) {
    const auto call = practice::callAfter(moment.pack(), lapse);
    return call ? whomToCall(moment, *call) : QString();
}

QStringList callsDue(const Moment& moment) {
    QStringList due;
    if (moment.opened().on != practice::On::Patient) return due;
    for (const practice::LapseRecord& lapse : moment.state().lapses) {
        const QString whom = callAfter(moment, lapse);
        if (whom.isEmpty()) continue;
        const QString words = LapseTalk::tr("%1: %2", "whom to call, with the number: why")
                                  .arg(whom, lapseTitle(moment, lapse));
        if (!due.contains(words)) due << words;
    }
    return due;
}

const packs::Drill* drillOf(const Moment& moment, const practice::LapseRecord& lapse) {
    const packs::Drill* found = nullptr;
    auto gravest = packs::Action::Recover;
    for (const std::string& id : lapse.lapses) {
        const packs::Lapse* one = packs::findLapse(moment.pack(), id);
        if (one == nullptr || !one->card) continue;
        const packs::Drill* drill = packs::find(moment.pack().drills, *one->card);
        if (drill == nullptr || (found != nullptr && one->action < gravest)) continue;
        // Of equally grave ones the card of the call that comes first.
        if (found != nullptr && one->action == gravest && found->call <= drill->call) continue;
        found = drill;
        gravest = one->action;
    }
    return found;
}

}  // namespace ui
