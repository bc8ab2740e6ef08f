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

Spread::Looked Spread::lookAt(Looker looker, const Stretch& stretch) {
    Looked looked{{}, std::move(looker)};
    looked.seen.reserve(stretch.size());
    for (const auto& [seq, bytes] : stretch) looked.seen.push_back(looked.looker.look(seq, bytes));
    return looked;
}

Looker Spread::takeLooker() {
    Looker looker = std::move(m_free.back());
    m_free.pop_back();
    return looker;
}

void Spread::hand(Looked looked) {
    for (Seen& seen : looked.seen) m_take(std::move(seen));
    m_free.push_back(std::move(looked.looker));
}

void Spread::handFirst() {
    Looked looked = m_running.front().get();
    m_running.pop_front();
    hand(std::move(looked));
}

void Spread::put(Stretch stretch) {
    if (m_isAlone) return hand(lookAt(takeLooker(), stretch));
    if (m_free.empty()) handFirst();
    // Where the system has no thread to give it is looked at when it is asked for.
    m_running.push_back(std::async(std::launch::async | std::launch::deferred, &Spread::lookAt,
                                   takeLooker(), std::move(stretch)));
}

void Spread::finish(Stretch rest) {
    while (!m_running.empty()) handFirst();
    hand(lookAt(takeLooker(), rest));
}

}  // namespace proof
