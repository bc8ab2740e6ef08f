// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

#include "base/result.h"
#include "record/payload.h"

/// How much a person may say at once: more is an accident, or no person.
namespace desk {

/// Bytes of a name, a number, a word: 300 letters of any script fit, with marks upon them.
constexpr std::size_t mostOfName = 4096;
/// Bytes of what is told in sentences.
constexpr std::size_t mostOfNote = 65536;
/// Of all that one command says, and items of one list.
constexpr std::size_t mostOfCommand = 262144;
constexpr std::size_t mostItems = 1000;
/// Bytes of a drawn signature; the pad stops at 20 000 points.
constexpr std::size_t mostOfDrawing = 262144;

/// The payload as it will be kept, its texts cleaned; names stand on one line.
/// Errors: TextBad for what is too long or is not UTF-8.
base::Result<record::Payload> cleaned(const record::Payload& payload);

/// Whether this is a signature as the program itself writes it, and nothing else: one path of
/// whole numbers, or one typed name.
bool isDrawing(const std::string& svg);

}  // namespace desk
