// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "record/payload.h"
#include "render/papers/papernames.h"
#include "render/papers/papervisit.h"
#include "render/words.h"

/// The parts of a paper's data beside its visits.
namespace render {

struct PaperAllergies {
    std::vector<record::Allergy> known;  ///< empty: asked, none known
    Stamp asked;
    template <class V>
    void fields(V& v) {
        v("known", known), v("asked", asked);
    }
};

/// The change that the next one is reckoned from, in whosever visit it was.
struct PaperChanged {
    std::string on;        ///< YYYY-MM-DD
    std::string by;        ///< "": it was told with the line
    bool isOther = false;  ///< it is in none of the visits of this paper
    template <class V>
    void fields(V& v) {
        v("on", on), v("by", by), v("other", isOther);
    }
};

/// How the line read until it was corrected.
struct PaperLineWas {
    record::AddLine before;
    std::string why;
    Stamp corrected;
    template <class V>
    void fields(V& v) {
        v("before", before), v("why", why), v("corrected", corrected);
    }
};

struct PaperSource {
    std::string cite;
    packs::Standing standing = packs::Standing::FromMemory;
    template <class V>
    void fields(V& v) {
        v("cite", cite), v("standing", standing);
    }
};

struct PaperCaution {
    packs::Level level = packs::Level::Caution;
    std::string text;
    template <class V>
    void fields(V& v) {
        v("level", level), v("text", text);
    }
};

struct PaperPart {
    std::string title;
    int firstStep = 0, lastStep = 0;
    bool isMet = false, isSigned = false, isNewSinceSigning = false;
    std::int64_t signedMs = 0;
    template <class V>
    void fields(V& v) {
        v("title", title), v("first", firstStep), v("last", lastStep), v("met", isMet);
        v("signed", isSigned), v("new", isNewSinceSigning), v("signed_ms", signedMs);
    }
};

struct PaperPack {
    std::string id, version, digest, title, language;
    bool isDraftTranslation = false;
    int validDays = 0;
    std::vector<PaperPart> parts;  ///< the competencies, in order
    std::vector<PaperSource> sources;
    std::vector<PaperCaution> cautions;
    template <class V>
    void fields(V& v) {
        v("id", id), v("version", version), v("digest", digest), v("title", title);
        v("language", language), v("draft", isDraftTranslation), v("valid_days", validDays);
        v("parts", parts), v("sources", sources), v("cautions", cautions);
    }
};

struct PaperRound {
    Stamp asked;
    std::vector<std::string> heard;
    std::string words, saidDifferently;
    template <class V>
    void fields(V& v) {
        v("asked", asked), v("heard", heard), v("words", words);
        v("said_differently", saidDifferently);
    }
};

struct PaperQuestion {
    std::string ask;
    std::vector<PaperRound> rounds;
    std::vector<std::string> missing;  ///< essential points not heard in the newest round
    std::string plan;
    template <class V>
    void fields(V& v) {
        v("ask", ask), v("rounds", rounds), v("missing", missing), v("plan", plan);
    }
};

struct PaperDrill {
    std::string title;
    record::DrillResult result = record::DrillResult::NotYet;
    Stamp done;
    template <class V>
    void fields(V& v) {
        v("title", title), v("result", result), v("done", done);
    }
};

struct PaperFinding {
    readiness::Rule rule = readiness::Rule::Consent;
    bool isMet = false;
    std::vector<std::string> args, names;  ///< names: the texts of the ids among args
    readiness::Ground ground = readiness::Ground::Seen;
    template <class V>
    void fields(V& v) {
        v("rule", rule), v("met", isMet), v("args", args), v("names", names);
        v("ground", ground);
    }
};

struct PaperReadiness {
    bool isReady = false, isAllSigned = false;
    std::vector<PaperFinding> findings;
    int unprompted = 0, observed = 0;
    Percents share;  ///< where the true one may lie
    template <class V>
    void fields(V& v) {
        v("ready", isReady), v("all_signed", isAllSigned), v("findings", findings);
        v("unprompted", unprompted), v("observed", observed);
        v("low_percent", share.low), v("high_percent", share.high);
    }
};

}  // namespace render
