// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "keys/keys.h"

#include <QCoreApplication>
#include <QKeyEvent>
#include <map>

namespace ui {

namespace {

struct KeyRow {
    Act act;
    const char* name;
    const char* key;
    const char* words;
};

constexpr std::array<KeyRow, actCount> keyRows{{
    {Act::Next, "next", "Space", QT_TRANSLATE_NOOP("Keys", "the next thing seen")},
    {Act::Cue, "cue", "C", QT_TRANSLATE_NOOP("Keys", "cue given")},
    {Act::CueBack, "cue-back", "Shift+C", QT_TRANSLATE_NOOP("Keys", "take one cue back")},
    {Act::HandsOn, "hands-on", "H", QT_TRANSLATE_NOOP("Keys", "hands-on help")},
    {Act::NotDone, "not-done", "D", QT_TRANSLATE_NOOP("Keys", "not done")},
    {Act::NotSeen, "not-seen", "O", QT_TRANSLATE_NOOP("Keys", "done, not seen")},
    {Act::DoesNotApply, "does-not-apply", "A", QT_TRANSLATE_NOOP("Keys", "does not apply")},
    {Act::Lapse, "lapse", "L", QT_TRANSLATE_NOOP("Keys", "lapse")},
    {Act::SeveralLapses, "several-lapses", "Shift+L",
     QT_TRANSLATE_NOOP("Keys", "several lapses at one moment")},
    {Act::OtherLapse, "other-lapse", "U", QT_TRANSLATE_NOOP("Keys", "something else went wrong")},
    {Act::EarlierLapse, "earlier-lapse", "E",
     QT_TRANSLATE_NOOP("Keys", "it happened earlier, or was left out")},
    {Act::NoHelper, "no-helper", "Shift+H",
     QT_TRANSLATE_NOOP("Keys", "no helper at hand, or one again")},
    {Act::CaughtAlone, "caught-alone", "K", QT_TRANSLATE_NOOP("Keys", "caught it alone")},
    {Act::ShowWayBack, "show-way-back", "S", QT_TRANSLATE_NOOP("Keys", "show the way back")},
    {Act::RestSeen, "rest-seen", "G", QT_TRANSLATE_NOOP("Keys", "rest of this part seen clean")},
    {Act::Back, "back", "B", QT_TRANSLATE_NOOP("Keys", "take the last mark back")},
    {Act::TakeOver, "take-over", "T", QT_TRANSLATE_NOOP("Keys", "take over")},
    {Act::HandOver, "hand-over", "Shift+T", QT_TRANSLATE_NOOP("Keys", "hand over to a colleague")},
    {Act::Stop, "stop", "X", QT_TRANSLATE_NOOP("Keys", "stop the visit")},
    {Act::Pause, "pause", "P", QT_TRANSLATE_NOOP("Keys", "pause, go on")},
    {Act::Note, "note", "N", QT_TRANSLATE_NOOP("Keys", "write a note")},
    {Act::Measures, "measures", "M", QT_TRANSLATE_NOOP("Keys", "write down a measure")},
    {Act::TurnScreen, "turn-screen", "F11", QT_TRANSLATE_NOOP("Keys", "turn the screen")},
    {Act::ReadAloud, "read-aloud", "R", QT_TRANSLATE_NOOP("Keys", "read aloud to the learner")},
    {Act::Tone, "tone", "F8", QT_TRANSLATE_NOOP("Keys", "tone on or off")},
    {Act::More, "more", "F1", QT_TRANSLATE_NOOP("Keys", "everything that has a key")},
    {Act::Wipe, "wipe", "F9", QT_TRANSLATE_NOOP("Keys", "lock the keys for wiping")},
}};

const KeyRow& keyRow(Act act) { return keyRows[static_cast<std::size_t>(act)]; }

/// Keys that every window needs, and digits, which choose from the list of lapses.
bool isReserved(int key) {
    switch (key) {
        case Qt::Key_Tab:
        case Qt::Key_Backtab:
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Escape:
        case Qt::Key_Up:
        case Qt::Key_Down:
        case Qt::Key_Left:
        case Qt::Key_Right:
        case Qt::Key_Home:
        case Qt::Key_End:
            return true;
        default:  // keys are Qt's open list, not ours
            return key >= Qt::Key_0 && key <= Qt::Key_9;
    }
}

QKeySequence defaultKey(Act act) {
    return QKeySequence(QLatin1String(keyRow(act).key), QKeySequence::PortableText);
}

}  // namespace

std::vector<Act> allActs() {
    std::vector<Act> acts;
    for (const KeyRow& row : keyRows) acts.push_back(row.act);
    return acts;
}

QString storedName(Act act) { return QLatin1String(keyRow(act).name); }

QString actWords(Act act) { return QCoreApplication::translate("Keys", keyRow(act).words); }

Keys::Keys() { reset(); }

void Keys::reset() {
    for (const Act act : allActs()) m_keys[static_cast<std::size_t>(act)] = defaultKey(act);
}

QKeySequence Keys::of(Act act) const { return m_keys[static_cast<std::size_t>(act)]; }

QString Keys::words(Act act) const { return of(act).toString(QKeySequence::NativeText); }

std::optional<Act> Keys::actFor(const QKeyEvent& event) const {
    const auto modifiers = event.modifiers() & ~(Qt::KeypadModifier | Qt::GroupSwitchModifier);
    return holder(QKeySequence(event.key() | static_cast<int>(modifiers)));
}

std::optional<Act> Keys::holder(const QKeySequence& key) const {
    for (const Act act : allActs())
        if (of(act) == key) return act;
    return std::nullopt;
}

Keys::Outcome Keys::set(Act act, const QKeySequence& key) {
    if (key.isEmpty()) return Outcome::Empty;
    if (key.count() != 1 || isReserved(key[0].key())) return Outcome::Refused;
    const auto other = holder(key);
    if (other && *other != act) return Outcome::Taken;
    m_keys[static_cast<std::size_t>(act)] = key;
    return Outcome::Set;
}

void Keys::read(const QString& stored) {
    reset();
    std::map<QString, QKeySequence> wanted;
    for (const QString& pair : stored.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QKeySequence key(pair.section(QLatin1Char('='), 1), QKeySequence::PortableText);
        wanted[pair.section(QLatin1Char('='), 0, 0)] = key;
    }
    // All that move are lifted first, so that two keys can be exchanged.
    const Keys before = *this;
    for (const Act act : allActs())
        if (wanted.contains(storedName(act))) m_keys[static_cast<std::size_t>(act)] = {};
    for (const Act act : allActs())
        if (const auto found = wanted.find(storedName(act)); found != wanted.end())
            set(act, found->second);
    for (const Act act : allActs())
        if (of(act).isEmpty() && set(act, before.of(act)) != Outcome::Set) return reset();
}

QString Keys::stored() const {
    QStringList pairs;
    for (const Act act : allActs())
        if (of(act) != defaultKey(act))
            pairs << storedName(act) + QLatin1Char('=') +
                         of(act).toString(QKeySequence::PortableText);
    return pairs.join(QLatin1Char(' '));
}

}  // namespace ui
