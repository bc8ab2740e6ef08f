// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "keys/keys.h"

#include <gtest/gtest.h>

#include <QKeyEvent>

namespace {

using ui::Act;
using ui::Keys;

QKeySequence sequence(const char* text) {
    return QKeySequence(QLatin1String(text), QKeySequence::PortableText);
}

TEST(Keys, NoTwoActsHaveOneKeyAtFirst) {
    const Keys keys;
    for (const Act act : ui::allActs()) EXPECT_EQ(keys.holder(keys.of(act)), act);
    EXPECT_EQ(ui::allActs().size(), static_cast<std::size_t>(ui::actCount));
}

TEST(Keys, FindsTheActOfAPressWithItsModifiers) {
    const Keys keys;
    EXPECT_EQ(keys.actFor({QEvent::KeyPress, Qt::Key_C, Qt::NoModifier}), Act::Cue);
    EXPECT_EQ(keys.actFor({QEvent::KeyPress, Qt::Key_C, Qt::ShiftModifier}), Act::CueBack);
    EXPECT_EQ(keys.actFor({QEvent::KeyPress, Qt::Key_C, Qt::ControlModifier}), std::nullopt);
    EXPECT_EQ(keys.actFor({QEvent::KeyPress, Qt::Key_Space, Qt::KeypadModifier}), Act::Next);
}

TEST(Keys, SetRefusesWithOneNameForEachReason) {
    Keys keys;
    EXPECT_EQ(keys.set(Act::Cue, sequence("F2")), Keys::Outcome::Set);
    EXPECT_EQ(keys.set(Act::HandsOn, sequence("F2")), Keys::Outcome::Taken);
    EXPECT_EQ(keys.set(Act::HandsOn, sequence("Tab")), Keys::Outcome::Refused);
    EXPECT_EQ(keys.set(Act::HandsOn, sequence("5")), Keys::Outcome::Refused);
    EXPECT_EQ(keys.set(Act::HandsOn, sequence("H, J")), Keys::Outcome::Refused);
    EXPECT_EQ(keys.set(Act::HandsOn, {}), Keys::Outcome::Empty);
    EXPECT_EQ(keys.of(Act::HandsOn), sequence("H"));
}

TEST(Keys, StoresWhatDiffersAndReadsItBack) {
    Keys keys;
    EXPECT_EQ(keys.stored(), QString());
    keys.set(Act::Cue, sequence("F2"));
    Keys again;
    again.read(keys.stored());
    EXPECT_EQ(again.of(Act::Cue), sequence("F2"));
    EXPECT_EQ(again.of(Act::Next), sequence("Space"));
}

TEST(Keys, TwoKeysCanBeExchangedInTheStore) {
    Keys keys;
    keys.read(QStringLiteral("cue=H hands-on=C"));
    EXPECT_EQ(keys.of(Act::Cue), sequence("H"));
    EXPECT_EQ(keys.of(Act::HandsOn), sequence("C"));
}

TEST(Keys, WhatTheStoreMayNotSayIsLeftAtItsDefault) {
    Keys keys;
    keys.read(QStringLiteral("cue=Tab back=L nonsense=Q lapse"));
    EXPECT_EQ(keys.of(Act::Cue), sequence("C"));
    EXPECT_EQ(keys.of(Act::Back), sequence("B"));
    EXPECT_EQ(keys.of(Act::Lapse), sequence("L"));
}

}  // namespace
