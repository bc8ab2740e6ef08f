// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/sealedstream.h"

#include <sodium.h>

#include "base/check.h"
#include "seal/aead.h"

namespace seal {
namespace {

using State = crypto_secretstream_xchacha20poly1305_state;
static_assert(streamHeaderSize == crypto_secretstream_xchacha20poly1305_HEADERBYTES);
static_assert(streamPieceMore == crypto_secretstream_xchacha20poly1305_ABYTES);
static_assert(keySize == crypto_secretstream_xchacha20poly1305_KEYBYTES);

State* stateIn(Secret& secret) { return reinterpret_cast<State*>(secret.data()); }

}  // namespace

StreamSealer::StreamSealer(const Secret& key)
    : m_state(Secret::ofSize(sizeof(State))), m_header(streamHeaderSize, '\0') {
    REQUIRE(key.size() == keySize);
    REQUIRE(crypto_secretstream_xchacha20poly1305_init_push(stateIn(m_state), bytePointer(m_header),
                                                            key.data()) == 0);
}

std::string StreamSealer::seal(std::string_view plain, std::string_view with, Piece piece) {
    const unsigned char tag = piece == Piece::Last
                                  ? crypto_secretstream_xchacha20poly1305_TAG_FINAL
                                  : crypto_secretstream_xchacha20poly1305_TAG_MESSAGE;
    std::string box(plain.size() + streamPieceMore, '\0');
    REQUIRE(crypto_secretstream_xchacha20poly1305_push(stateIn(m_state), bytePointer(box), nullptr,
                                                       bytePointer(plain), plain.size(),
                                                       bytePointer(with), with.size(), tag) == 0);
    return box;
}

StreamOpener::StreamOpener(const Secret& key, const std::string& header)
    : m_state(Secret::ofSize(sizeof(State))) {
    REQUIRE(key.size() == keySize && header.size() == streamHeaderSize);
    REQUIRE(crypto_secretstream_xchacha20poly1305_init_pull(stateIn(m_state), bytePointer(header),
                                                            key.data()) == 0);
}

std::optional<StreamOpener::Opened> StreamOpener::open(std::string_view box,
                                                       std::string_view with) {
    if (box.size() < streamPieceMore) return std::nullopt;
    Opened opened{std::string(box.size() - streamPieceMore, '\0')};
    unsigned char tag = 0;
    const int failed = crypto_secretstream_xchacha20poly1305_pull(
        stateIn(m_state), bytePointer(opened.plain), nullptr, &tag, bytePointer(box), box.size(),
        bytePointer(with), with.size());
    if (failed != 0) return std::nullopt;
    if (tag == crypto_secretstream_xchacha20poly1305_TAG_FINAL) opened.piece = Piece::Last;
    return opened;
}

}  // namespace seal
