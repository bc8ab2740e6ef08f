// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <memory>

#include "ledger/codec.h"

namespace app {

/// Whether somebody who reads a record is to go on. Once it is stopped it stays so.
class Stopping {
  public:
    explicit Stopping(std::function<bool(std::uint64_t looked)> goOn) : m_goOn(std::move(goOn)) {}

    bool goOn(std::uint64_t looked) {
        m_looked = looked;
        return m_mayGoOn = m_mayGoOn && m_goOn(looked);
    }
    /// Of something that does not get further by entries.
    bool goOnAsBefore() { return goOn(m_looked); }
    /// Asks only now and then, while something is read of which nothing else is told.
    bool goOnOpening() { return ++m_opened % askEach == 0 ? goOnAsBefore() : m_mayGoOn; }
    bool isStopped() const { return !m_mayGoOn; }

  private:
    static constexpr std::uint64_t askEach = 256;
    std::function<bool(std::uint64_t looked)> m_goOn;
    std::uint64_t m_looked = 0, m_opened = 0;
    bool m_mayGoOn = true;
};

/// Opens as another codec does until it is stopped; then whoever reads a record by it comes to an
/// end at the next entry.
class StoppableCodec : public ledger::Codec {
  public:
    StoppableCodec(std::shared_ptr<ledger::Codec> codec, std::shared_ptr<Stopping> stopping)
        : m_codec(std::move(codec)), m_stopping(std::move(stopping)) {}

    std::unique_ptr<Codec> reader(ledger::KeyShelf& shelf) const override {
        return m_codec->reader(shelf);
    }
    bool seals() const override { return m_codec->seals(); }
    base::Result<ledger::Closed> close(const ledger::Binding& to,
                                       const std::string& body) override {
        return m_codec->close(to, body);
    }
    base::Result<std::optional<std::string>> open(const ledger::Binding& to,
                                                  const ledger::Closed& closed) override {
        if (!m_stopping->goOnOpening()) return base::Error{base::Code::VerifyStopped};
        return m_codec->open(to, closed);
    }
    base::Result<std::string> closeRow(std::string_view place, const std::string& row) override {
        return m_codec->closeRow(place, row);
    }
    base::Result<std::optional<std::string>> openRow(std::string_view place,
                                                     std::string_view stored) override {
        if (!m_stopping->goOnOpening()) return base::Error{base::Code::VerifyStopped};
        return m_codec->openRow(place, stored);
    }

  private:
    std::shared_ptr<ledger::Codec> m_codec;
    std::shared_ptr<Stopping> m_stopping;
};

}  // namespace app
