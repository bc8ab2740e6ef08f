// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace seal {

/// Bytes that must not be left lying about: in memory of their own that is kept from the swap file
/// as far as the system allows, between guard pages, and wiped when the object goes. Can be moved,
/// never copied by accident. Each costs some pages: not for thousands at a time.
class Secret {
  public:
    Secret() = default;
    /// So many zero bytes.
    static Secret ofSize(std::size_t size);
    /// So many random bytes of the system.
    static Secret random(std::size_t size);
    /// A copy on purpose; what it was copied from is the caller's to wipe.
    static Secret copyOf(std::string_view bytes);

    Secret(Secret&& other) noexcept;
    Secret& operator=(Secret&& other) noexcept;
    Secret(const Secret&) = delete;
    Secret& operator=(const Secret&) = delete;
    ~Secret();

    std::size_t size() const { return m_size; }
    unsigned char* data() { return m_bytes; }
    const unsigned char* data() const { return m_bytes; }
    std::string_view view() const { return {reinterpret_cast<const char*>(m_bytes), m_size}; }
    std::string_view part(std::size_t from, std::size_t count) const;

    /// Takes the same time whatever the bytes are; different sizes are told at once.
    bool equals(std::string_view bytes) const;

  private:
    unsigned char* m_bytes = nullptr;
    std::size_t m_size = 0;
};

/// So many random bytes that are no secret: salts and nonces.
std::string randomBytes(std::size_t size);

inline const unsigned char* bytePointer(std::string_view bytes) {
    return reinterpret_cast<const unsigned char*>(bytes.data());
}
inline unsigned char* bytePointer(std::string& bytes) {
    return reinterpret_cast<unsigned char*>(bytes.data());
}

}  // namespace seal
