// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/lapsewords.h"

#include <QCoreApplication>

#include "pieces/visitwords.h"

namespace ui {

namespace {

QString lapseTalk(const char* text) { return QCoreApplication::translate("LapseWords", text); }

QString inWords(const Moment& moment, const packs::Text& texts, Reader reader) {
    return utf(reader == Reader::Teacher ? moment.text(texts) : moment.learners(texts));
}

}  // namespace

QString lapseTitle(const Moment& moment, const practice::LapseRecord& lapse) {
    QStringList titles;
    for (const std::string& id : lapse.lapses)
        if (const packs::Lapse* one = packs::findLapse(moment.pack(), id))
            titles << utf(moment.text(one->label));
    if (!lapse.other.empty()) titles << utf(lapse.other);
    if (!lapse.leftOut.empty()) {
        const packs::Step* step = packs::findStep(moment.pack(), lapse.leftOut).step;
        titles << lapseTalk("left out: %1")
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
        return number.empty() ? who : who + QStringLiteral("  ") + utf(number);
    };
    switch (call) {
        case packs::Call::Emergency:
            return with(lapseTalk("Emergency"), unit ? unit->emergency : "");
        case packs::Call::TeamNow:
            return with(lapseTalk("The team, day and night"), unit ? unit->teamNow : "");
        case packs::Call::TeamToday:
            return with(lapseTalk("The team, today"), unit ? unit->teamToday : "");
    }
    return {};
}

const packs::Drill* drillOf(const Moment& moment, const practice::LapseRecord& lapse) {
    const packs::Drill* found = nullptr;
    auto gravest = packs::Action::Recover;
    for (const std::string& id : lapse.lapses) {
        const packs::Lapse* one = packs::findLapse(moment.pack(), id);
        if (one == nullptr || !one->card) continue;
        if (found != nullptr && one->action < gravest) continue;
        if (const packs::Drill* drill = packs::find(moment.pack().drills, *one->card)) {
            found = drill;
            gravest = one->action;
        }
    }
    return found;
}

}  // namespace ui
