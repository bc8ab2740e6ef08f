// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "proof/spread.h"

#include <algorithm>
#include <thread>

namespace proof {

std::size_t threadsOf(const Pace& pace) {
    constexpr unsigned most = 16;  // what reads and puts in order keeps no more of them busy
    if (pace.threads > 0) return pace.threads;
    return std::clamp(std::thread::hardware_concurrency(), 1U, most);
}

void Stretch::clear() {
    m_bytes.clear();
    m_ends.clear();
}

void Stretch::each(
    const std::function<void(std::uint64_t seq, std::string_view bytes)>& visit) const {
    const std::string_view all = m_bytes;
    std::size_t from = 0;
    for (const auto& [seq, end] : m_ends) {
        visit(seq, all.substr(from, end - from));
        from = end;
    }
}

std::vector<Spread::Place> Spread::placesOf(std::vector<Looker> lookers) {
    std::vector<Place> places;
    for (Looker& looker : lookers) places.push_back({std::move(looker)});
    return places;
}

/// What was seen before is let go of here, where it was made.
Spread::Place Spread::lookedAt(Place place) {
    place.seen.clear();
    place.seen.reserve(place.stretch.size());
    place.stretch.each([&place](std::uint64_t seq, std::string_view bytes) {
        place.seen.push_back(place.looker.look(seq, bytes));
    });
    return place;
}

Spread::Place Spread::takePlace(Stretch& stretch) {
    Place place = std::move(m_free.back());
    m_free.pop_back();
    std::swap(place.stretch, stretch);
    stretch.clear();
    return place;
}

void Spread::hand(Place place) {
    for (const Seen& seen : place.seen) m_take(seen);
    m_free.push_back(std::move(place));
}

void Spread::handFirst() {
    Place looked = m_running.front().get();
    m_running.pop_front();
    hand(std::move(looked));
}

void Spread::put(Stretch& stretch) {
    if (m_isAlone) return hand(lookedAt(takePlace(stretch)));
    if (m_free.empty()) handFirst();
    // Where the system has no thread to give it is looked at when it is asked for.
    m_running.push_back(std::async(std::launch::async | std::launch::deferred, &Spread::lookedAt,
                                   takePlace(stretch)));
}

void Spread::finish() {
    while (!m_running.empty()) handFirst();
}

}  // namespace proof
