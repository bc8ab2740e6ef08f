// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "seal/secret.h"

/// What is too long to be sealed at once: piece by piece with libsodium's secretstream, which is
/// XChaCha20-Poly1305 with each piece bound to those before. No piece can be changed, left out,
/// doubled or put to another place, and the last one says that it is.
namespace seal {

inline constexpr std::size_t streamHeaderSize = 24;
inline constexpr std::size_t streamPieceMore = 17;  ///< bytes a sealed piece is longer

enum class Piece { Middle, Last };

class StreamSealer {
  public:
    /// A key of keySize bytes that seals nothing else.
    explicit StreamSealer(const Secret& key);
    /// 24 bytes that whoever opens needs too.
    const std::string& header() const { return m_header; }
    /// `with` is not hidden, but has to be the same when it is opened.
    std::string seal(std::string_view plain, std::string_view with, Piece piece);

  private:
    Secret m_state;
    std::string m_header;
};

class StreamOpener {
  public:
    struct Opened {
        std::string plain = {};
        Piece piece = Piece::Middle;
    };
    StreamOpener(const Secret& key, const std::string& header);
    /// Nothing when any bit of it, of `with`, or of what came before is another one.
    std::optional<Opened> open(std::string_view box, std::string_view with);

  private:
    Secret m_state;
};

}  // namespace seal
