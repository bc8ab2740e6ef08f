// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/entry.h"

#include "ledger/bodytext.h"

namespace ledger {
namespace {

Envelope envelopeOf(const Entry& entry) {
    return {entry.ledger, entry.seq,    entry.tick,    entry.wallMs,
            entry.bootId, entry.bootMs, entry.subject, {}};
}

}  // namespace

base::Result<std::string> entryBytes(Entry& entry, Codec& codec) {
    const auto body = bodyText(entry.body, Signatures::With);
    if (!body) return body.error();
    Envelope envelope = envelopeOf(entry);
    auto closed = codec.close(bindingOf(envelope), *body);
    if (!closed) return closed.error();
    envelope.closed = std::move(*closed);
    entry.key = envelope.closed.key;
    return envelopeBytes(envelope);
}

base::Result<std::optional<Body>> readBody(const Envelope& envelope, std::string_view bytes,
                                           Codec& codec) {
    const auto opened = codec.open(bindingIn(envelope, bytes), envelope.closed);
    if (!opened) return opened.error();
    if (!*opened) return std::optional<Body>();
    auto body = readBodyText(**opened);
    if (!body) return body.error();
    return std::optional<Body>(std::move(*body));
}

Entry entryOf(Envelope envelope, std::optional<Body> body) {
    return {.ledger = std::move(envelope.ledger),
            .seq = envelope.seq,
            .tick = envelope.tick,
            .wallMs = envelope.wallMs,
            .bootId = std::move(envelope.bootId),
            .bootMs = envelope.bootMs,
            .subject = std::move(envelope.subject),
            .key = std::move(envelope.closed.key),
            .isOpen = body.has_value(),
            .body = body ? std::move(*body) : Body{}};
}

base::Result<Entry> readEntry(std::string_view bytes, Codec& codec) {
    auto envelope = readEnvelope(bytes, codec.seals() ? Box::Read : Box::Checked);
    if (!envelope) return envelope.error();
    auto body = readBody(*envelope, bytes, codec);
    if (!body) return body.error();
    return entryOf(std::move(*envelope), std::move(*body));
}

base::Result<std::string> entryBytes(Entry entry) { return entryBytes(entry, *plainCodec()); }

base::Result<Entry> readEntry(std::string_view bytes) { return readEntry(bytes, *plainCodec()); }

}  // namespace ledger
