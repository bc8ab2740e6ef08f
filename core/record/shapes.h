// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ledger/upcast.h"
#include "record/payload.h"

namespace record {

/// The shapes of every type of entry this program knows, with the functions that lift older ones.
/// A payload has version 1 until it says `static constexpr int version = 2`; then the step from 1
/// is added in shapes.cpp, and the fixtures of both stay in tests/fixtures/entries.
const ledger::Shapes& shapes();
/// The version of the shape in which this payload is written now.
int versionOf(const Payload& payload);

/// What an entry's body turned out to be.
struct Lifted {
    ledger::Lift lift = ledger::Lift::Current;
    base::Result<Payload> payload;  ///< an error when this program can't read it
};
/// Lifts a copy of the body to the newest shape and reads it.
Lifted lifted(const ledger::Body& body, const ledger::Shapes& shapes = record::shapes());

}  // namespace record
