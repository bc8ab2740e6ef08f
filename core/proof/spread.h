// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <deque>
#include <functional>
#include <future>
#include <utility>

#include "proof/looker.h"

namespace proof {

/// How a record is gone through.
struct Pace {
    std::size_t threads = 0;    ///< that look at entries; 0: as many as the machine has cores
    std::size_t atOnce = 1000;  ///< entries that one of them is given
    /// Told how many entries were looked at, now and then; false stops it.
    std::function<bool(std::uint64_t looked)> goOn = {};
};
std::size_t threadsOf(const Pace& pace);

/// The stored bytes of some entries, by their places.
class Stretch {
  public:
    void add(std::uint64_t seq, std::string_view bytes) {
        m_bytes.append(bytes);
        m_ends.emplace_back(seq, m_bytes.size());
    }
    std::size_t size() const { return m_ends.size(); }
    /// Keeps its memory for the next ones.
    void clear();
    void each(const std::function<void(std::uint64_t seq, std::string_view bytes)>& visit) const;

  private:
    std::string m_bytes;  ///< one behind the other
    std::vector<std::pair<std::uint64_t, std::size_t>> m_ends;
};

/// Has stretches of entries looked at on several threads and hands on what was seen, in their
/// order, on the thread that it is used from.
class Spread {
  public:
    using Take = std::function<void(const Seen& seen)>;

    /// As many stretches are under way at once as there are lookers, at least one. One alone looks
    /// on the thread that this is used from.
    Spread(std::vector<Looker> lookers, Take take)
        : m_free(placesOf(std::move(lookers))),
          m_isAlone(m_free.size() == 1),
          m_take(std::move(take)) {}

    /// Takes what is done first when nobody is free, and leaves an empty stretch.
    void put(Stretch& stretch);
    /// Waits for all that is under way.
    void finish();

  private:
    /// One that looks, with the memory it works in.
    struct Place {
        Looker looker;
        Stretch stretch = {};
        std::vector<Seen> seen = {};
    };
    static std::vector<Place> placesOf(std::vector<Looker> lookers);
    static Place lookedAt(Place place);
    Place takePlace(Stretch& stretch);
    void hand(Place place);
    void handFirst();

    std::vector<Place> m_free;
    bool m_isAlone;
    std::deque<std::future<Place>> m_running;  ///< waits for them when it goes
    Take m_take;
};

}  // namespace proof
