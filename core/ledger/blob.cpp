// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ledger/blob.h"

#include <sodium.h>

#include "ledger/base64url.h"
#include "ledger/jcs.h"
#include "ledger/merkle.h"

namespace ledger {
namespace {

using base::Code;
using base::Error;
using nlohmann::json;

constexpr std::size_t saltBytes = 32;

/// What a sealed one begins with; no pack and no drawing begins so.
struct Form {
    std::string_view mark;
    std::size_t saltBytes;
    bool isBound;  ///< the mark is part of what the seal is over: it opens under no other one
};
constexpr Form presentForm{"\x01sealed-blob-3\n", saltBytes, true};
constexpr Form formerForms[]{{"\x01sealed-blob-2\n", saltBytes, false},
                             {"\x01sealed-blob-1\n", 0, false}};

const Form* formOf(std::string_view stored) {
    if (stored.starts_with(presentForm.mark)) return &presentForm;
    for (const Form& form : formerForms)
        if (stored.starts_with(form.mark)) return &form;
    return nullptr;
}

/// Whose it is, as an open row says; nothing when it says so of nobody.
std::optional<base::PatientId> subjectOf(const json& row) {
    const auto subject = row.find("subject");
    if (subject == row.end() || !subject->is_string()) return std::nullopt;
    const auto read = base::PatientId::parse(subject->get<std::string>());
    return read ? std::optional(*read) : std::nullopt;
}

/// `digest` and `subject` have to outlive it.
Binding bindingOf(const Form& form, const std::string& digest, const base::PatientId& subject) {
    const auto text = [&](const Closed& closed) {
        json bound{{"alg", closed.alg},
                   {"blob", digest},
                   {"key", closed.key},
                   {"subject", subject.text()}};
        if (form.isBound) bound["mark"] = form.mark;
        return *jcs(bound);
    };
    return {subject, text};
}

std::string newSalt() {
    std::string salt(saltBytes, '\0');
    randombytes_buf(salt.data(), salt.size());
    return salt;
}

base::Result<std::optional<std::string>> checked(const std::string& digest, std::string bytes) {
    if (toHex(sha256(bytes)) != digest) return Error{Code::StoreBlobWrong, {digest}};
    return std::optional<std::string>(std::move(bytes));
}

std::optional<Closed> readClosed(const json& row) {
    Closed closed;
    for (const auto& [name, member] : {std::pair("alg", &closed.alg),
                                       {"key", &closed.key},
                                       {"nonce", &closed.nonce},
                                       {"body", &closed.body}}) {
        const auto found = row.find(name);
        if (found == row.end() || !found->is_string()) return std::nullopt;
        *member = found->get<std::string>();
    }
    const auto nonce = fromBase64Url(closed.nonce), body = fromBase64Url(closed.body);
    if (!nonce || !body) return std::nullopt;
    closed.nonce = *nonce;
    closed.body = *body;
    return closed;
}

}  // namespace

base::Result<KeptBlob> keptBlob(Codec& codec, const std::string& bytes,
                                const std::optional<base::PatientId>& subject) {
    if (!subject || !codec.seals()) return KeptBlob{toHex(sha256(bytes)), bytes};
    const std::string salted = newSalt() + bytes;
    const std::string digest = toHex(sha256(salted));
    const auto closed = codec.close(bindingOf(presentForm, digest, *subject), salted);
    if (!closed) return closed.error();
    const auto row = jcs({{"alg", closed->alg},
                          {"body", toBase64Url(closed->body)},
                          {"key", closed->key},
                          {"nonce", toBase64Url(closed->nonce)},
                          {"subject", subject->text()}});
    if (!row) return row.error();
    return KeptBlob{digest, std::string(presentForm.mark) + *row};
}

base::Result<std::optional<std::string>> openedBlob(Codec& codec, const std::string& digest,
                                                    const std::string& stored) {
    const Form* const form = formOf(stored);
    if (!form) return checked(digest, stored);
    const json row = json::parse(stored.substr(form->mark.size()), nullptr, false);
    const auto closed = row.is_object() ? readClosed(row) : std::nullopt;
    const auto subject = row.is_object() ? subjectOf(row) : std::nullopt;
    if (!closed || !subject) return Error{Code::StoreBlobWrong, {digest}};
    auto bytes = codec.open(bindingOf(*form, digest, *subject), *closed);
    if (!bytes || !*bytes) return bytes;
    auto salted = checked(digest, std::move(**bytes));
    if (!salted) return salted;
    if ((*salted)->size() < form->saltBytes) return Error{Code::StoreBlobWrong, {digest}};
    return std::optional<std::string>((*salted)->substr(form->saltBytes));
}

}  // namespace ledger
