// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "seal/secret.h"

#include <sodium.h>

#include <algorithm>
#include <utility>

#include "base/check.h"

namespace seal {

Secret Secret::ofSize(std::size_t size) {
    REQUIRE(sodium_init() >= 0);
    Secret made;
    made.m_bytes = static_cast<unsigned char*>(sodium_malloc(size));
    REQUIRE(made.m_bytes != nullptr);
    made.m_size = size;
    sodium_memzero(made.m_bytes, size);
    return made;
}

Secret Secret::random(std::size_t size) {
    Secret made = ofSize(size);
    randombytes_buf(made.m_bytes, size);
    return made;
}

Secret Secret::copyOf(std::string_view bytes) {
    Secret made = ofSize(bytes.size());
    std::copy(bytes.begin(), bytes.end(), made.m_bytes);
    return made;
}

Secret::Secret(Secret&& other) noexcept
    : m_bytes(std::exchange(other.m_bytes, nullptr)), m_size(std::exchange(other.m_size, 0)) {}

Secret& Secret::operator=(Secret&& other) noexcept {
    std::swap(m_bytes, other.m_bytes);
    std::swap(m_size, other.m_size);
    return *this;
}

Secret::~Secret() {
    if (m_bytes != nullptr) sodium_free(m_bytes);  // wipes first
}

std::string_view Secret::part(std::size_t from, std::size_t count) const {
    return view().substr(from, count);
}

bool Secret::equals(std::string_view bytes) const {
    return bytes.size() == m_size && sodium_memcmp(m_bytes, bytes.data(), m_size) == 0;
}

std::string randomBytes(std::size_t size) {
    REQUIRE(sodium_init() >= 0);
    std::string bytes(size, '\0');
    randombytes_buf(bytes.data(), size);
    return bytes;
}

}  // namespace seal
