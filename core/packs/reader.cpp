// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "packs/reader.h"

#include "ledger/jcs.h"
#include "ledger/merkle.h"
#include "packs/opening.h"
#include "packs/readparts.h"
#include "packs/references.h"

namespace packs {
namespace {

bool isVersion(std::string_view version) {
    int parts = 1;
    std::size_t digits = 0;
    bool leadsWithZero = false;
    for (const char letter : version) {
        if (letter == '.' && digits > 0 && parts < 3) {
            ++parts;
            digits = 0;
        } else if (letter >= '0' && letter <= '9' && !(digits > 0 && leadsWithZero) && digits < 9) {
            leadsWithZero = digits == 0 ? letter == '0' : leadsWithZero;
            ++digits;
        } else {
            return false;
        }
    }
    return parts == 3 && digits > 0;
}

bool isPackId(std::string_view id) {
    if (!isItemId(id)) return false;
    for (const char letter : id)
        if (letter != '-' && !(letter >= 'a' && letter <= 'z') && !(letter >= '0' && letter <= '9'))
            return false;
    return true;
}

void readHead(Fields& fields, Pack& pack) {
    int format = 0;
    fields.whole("pack", format, {.least = 1, .most = 1});
    fields.words("id", pack.id);
    if (!pack.id.empty() && !isPackId(pack.id))
        fields.fault("id", "The id of a pack is 1 to 64 small letters, digits or hyphens.",
                     "Write another one, such as \"weekly-dressing\".");
    fields.words("version", pack.version);
    if (!pack.version.empty() && !isVersion(pack.version))
        fields.fault("version", "A version is three numbers with points between them.",
                     "Write it as 1.0.0, without zeros in front.");
    fields.list("languages", pack.languages);
    if (pack.languages.empty())
        fields.fault("languages", "A pack has at least one language.",
                     "Write its tag, such as [\"en\"].");
    for (const std::string& language : pack.languages)
        if (!isLanguageTag(language))
            fields.fault("languages", "A language here has no valid tag.",
                         "Write it as in BCP 47, such as \"en\" or \"pt-BR\".");
    fields.state().languages = pack.languages;
    fields.text("title", pack.title);
}

void readTranslations(Fields& fields, Pack& pack) {
    fields.object("translations", pack.translations,
                  [](Fields& inner, std::map<std::string, Translation>& translations) {
                      for (const Node::Key& key : inner.node().keys)
                          inner.object(key.name.c_str(), translations[key.name], readTranslation);
                  });
}

void readProcedure(Fields& fields, Pack& pack) {
    fields.items("conditions", pack.conditions, readCondition);
    fields.list("start", pack.start);
    fields.list("goal", pack.goal);
    fields.items("guards", pack.guards, readGuard);
    fields.items("lanes", pack.lanes, readLaneRule);
    fields.items("competencies", pack.competencies, readCompetency);
    fields.items("recoveries", pack.recoveries, readStep);
    fields.items("lapses", pack.lapses, readLapse);
    fields.object("away", pack.away, readAway);
}

void readRest(Fields& fields, Pack& pack) {
    fields.items("sources", pack.sources, readSource);
    fields.object("applies", pack.applies, readApplies);
    fields.items("words", pack.words, readWord);
    fields.items("prompts", pack.prompts, readPrompt);
    fields.items("drills", pack.drills, readDrill);
    fields.items("supplies", pack.supplies, readSupply);
    fields.object("schedule", pack.schedule, readSchedule);
    fields.items("measures", pack.measures, readMeasure);
    fields.items("cautions", pack.cautions, readCaution);
    fields.object("readiness", pack.readiness, readReadiness);
}

}  // namespace

Reading read(std::string_view bytes) {
    const Opened opened = open(bytes);
    if (opened.outcome != ReadOutcome::Refused) return opened.refusal();
    ReadingState state{.faults = opened.tree.faults};
    Pack pack;
    {
        Fields fields(opened.tree.root, "", state);
        if (fields.isObject()) {
            readHead(fields, pack);
            readTranslations(fields, pack);
            readProcedure(fields, pack);
            readRest(fields, pack);
        }
    }
    checkReferences(pack, opened.tree.root, state.faults);
    return close(std::move(pack), state.faults);
}

base::Error errorOf(const Reading& reading) {
    const Fault fault = reading.faults.empty() ? Fault{} : reading.faults.front();
    const std::vector<std::string> args{fault.pointer, std::to_string(fault.byte), fault.sentence,
                                        fault.remedy};
    switch (reading.outcome) {
        case ReadOutcome::Read:
            return {base::Code::Internal, {"a pack that was read has no error"}};
        case ReadOutcome::Refused:
            return {base::Code::PackRefused, args};
        case ReadOutcome::NotJson:
            return {base::Code::PackNotJson, args};
        case ReadOutcome::TooLarge:
            return {base::Code::PackTooLarge, args};
        case ReadOutcome::FromFuture:
            return {base::Code::PackFromFuture, args};
    }
    return {base::Code::Internal, {"an unknown outcome"}};
}

base::Result<Pack> readPack(std::string_view bytes) {
    Reading reading = read(bytes);
    if (!reading.pack) return errorOf(reading);
    return std::move(*reading.pack);
}

base::Result<std::string> digest(std::string_view bytes) {
    const Reading reading = read(bytes);
    if (!reading.pack) return errorOf(reading);
    const auto canonical = ledger::jcs(nlohmann::json::parse(bytes));
    if (!canonical) return canonical.error();
    return ledger::toHex(ledger::sha256(*canonical));
}

}  // namespace packs
