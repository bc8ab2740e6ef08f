// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "base/id.h"
#include "base/result.h"

namespace ledger {

/// What an entry holds in the place of its body.
struct Closed {
    std::string alg = "none";  ///< "none" or "xchacha20poly1305"
    std::string key = {};      ///< id of the key, null in JSON when empty
    std::string nonce = {};    ///< bytes
    std::string body = {};     ///< bytes: the body's canonical JSON, or what it is sealed into

    bool operator==(const Closed&) const = default;
};

/// What a body is bound to: it opens nowhere else.
struct Binding {
    std::optional<base::PatientId> subject = {};  ///< whose key closes it; none: the ledger's own
    /// Canonical JSON of all that stands beside it, alg and key among that.
    std::function<std::string(const Closed&)> text;
};

class KeyShelf;

/// How the bodies of a ledger are closed and opened.
class Codec {
  public:
    virtual ~Codec() = default;

    /// One with the same keys, to open by on another thread while this one is left as it is; the
    /// subjects' are on `shelf`, which outlives it. Null: there is no such one.
    virtual std::unique_ptr<Codec> reader(KeyShelf& shelf) const;

    /// Whether nobody reads a body without a key. A ledger whose last entry is sealed takes
    /// nothing from a codec that does not.
    virtual bool seals() const = 0;
    virtual base::Result<Closed> close(const Binding& to, const std::string& body) = 0;
    /// The body's bytes; nothing when its key is not at hand. Errors: LedgerUnknownAlg, and
    /// SealRefused when something was changed.
    virtual base::Result<std::optional<std::string>> open(const Binding& to,
                                                          const Closed& closed) = 0;

    /// The bytes that are stored for a row derived from the entries. `place` names the row: what is
    /// closed for one place opens at no other.
    virtual base::Result<std::string> closeRow(std::string_view place, const std::string& row) = 0;
    /// Nothing when its key is not at hand. Errors: SealRefused when something was changed or the
    /// row was not closed by a codec that seals.
    virtual base::Result<std::optional<std::string>> openRow(std::string_view place,
                                                             std::string_view stored) = 0;
};

/// What the bytes of every sealed row begin with; no row that is left as it is begins so.
inline constexpr std::string_view sealedRowMark = "\x01sealed-row-1\n";

/// Leaves bodies and rows as they are; what is sealed stays closed to it.
std::shared_ptr<Codec> plainCodec();

/// The key of one subject as a ledger keeps it, beside the entries and never in them.
struct KeyRow {
    std::string id = {};
    base::PatientId subject;
    std::string text = {};  ///< the codec's own; empty once the key was destroyed

    bool operator==(const KeyRow&) const = default;
};

/// Where a ledger keeps those rows. What is put while entries are appended is stored with them or
/// not at all.
class KeyShelf {
  public:
    virtual ~KeyShelf() = default;

    virtual base::Result<std::optional<KeyRow>> byId(const std::string& id) const = 0;
    /// The last one that was put for this subject.
    virtual base::Result<std::optional<KeyRow>> ofSubject(const base::PatientId& subject) const = 0;
    virtual base::Outcome put(const KeyRow& row) = 0;
    /// Destroys the text of every row of this subject; the ids stay, so that it can be told why
    /// nothing opens.
    virtual base::Outcome erase(const base::PatientId& subject) = 0;
};

}  // namespace ledger
