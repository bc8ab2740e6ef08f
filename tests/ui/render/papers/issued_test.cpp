// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is written down of a paper is enough to make its data again. Rules of our own, no source.
#include "render/papers/issued.h"

#include <filesystem>
#include <fstream>

#include "support/filled.h"
#include "support/paths.h"
#include "ui/render/papers/sample.h"

namespace render {
namespace {

using nlohmann::json;

RecordOfThen thenOf(support::Ward& ward, const std::string& root) {
    const desk::RecordView& view = ward.desk().view();
    return {*view.record, view.house, ward.shelf(), root};
}

/// With the kind of each value in its place.
json kindsOf(const json& value) {
    if (!value.is_structured()) return value.type_name();
    json kinds = value;
    for (auto& inner : kinds) inner = kindsOf(inner);
    return kinds;
}

// See tests/fixtures/papers/README.md.
TEST(PaperForm, OtherFieldsAreAnotherForm) {
    PaperData data;
    support::Filler filler;
    data.fields(filler);
    const json now = kindsOf(base::toJson(data));
    const auto path = std::filesystem::path(support::sourceDir()) / "tests/fixtures/papers" /
                      ("form." + std::to_string(paperForm) + ".json");
    if (!std::filesystem::exists(path)) {
        std::ofstream(path) << now.dump(2) << '\n';
        FAIL() << path << " was missing: look at it";
    }
    std::ifstream kept(path);
    EXPECT_EQ(json::parse(kept, nullptr, false), now)
        << "papers that were issued can't be held against other data: raise paperForm";
}

TEST(Issued, ARecordWithEverythingIsMadeAgain) {
    for (const Stage stage : {Stage::NotYet, Stage::Ready, Stage::Signed}) {
        Sample sample(stage);
        const PaperData data = sample.data();
        const record::IssuePaper said = issued(data);
        EXPECT_EQ(said.digest, digestOf(data));
        EXPECT_EQ(holdAgainst(said, thenOf(sample.ward(), data.ledgerRoot)), PaperHolds::Yes);
        EXPECT_EQ(holdAgainst(said, thenOf(sample.ward(), "0")), PaperHolds::No);
        sample.ward().must(record::AskAllergies{});
        EXPECT_EQ(holdAgainst(said, thenOf(sample.ward(), data.ledgerRoot)), PaperHolds::No)
            << "the record of later";
    }
}

// The page, the sentences' language and the figures are layout: they decide nothing of the data.
TEST(Issued, TheDigestIsOfNothingThatOnlyThisMachineHas) {
    Sample sample(Stage::Signed);
    const std::string digest = digestOf(sample.data());
    for (const QLocale::Language language : {QLocale::C, QLocale::Spanish, QLocale::Arabic}) {
        const QLocale before;
        QLocale::setDefault(QLocale(language));
        const PaperData data = sample.data();
        for (const PageKind page : {PageKind::A4, PageKind::Letter})
            EXPECT_GT(Paper(chartRecord(data, QLocale()), page).pageCount(), 1);
        EXPECT_EQ(digestOf(data), digest);
        QLocale::setDefault(before);
    }
}

TEST(Issued, OtherFormsAndOlderEntriesAreToldApartFromWrongOnes) {
    Sample sample(Stage::NotYet);
    const PaperData data = sample.data();
    const record::IssuePaper said = issued(data);
    const auto holds = [&](const record::IssuePaper& one) {
        return holdAgainst(one, thenOf(sample.ward(), data.ledgerRoot));
    };
    record::IssuePaper other = said;
    other.ground.reset();
    EXPECT_EQ(holds(other), PaperHolds::Before);
    other = said;
    other.ground->form = paperForm + 1;
    EXPECT_EQ(holds(other), PaperHolds::OtherForm);
    other = said;
    other.ground->unknown = 1;
    EXPECT_EQ(holds(other), PaperHolds::OtherForm);
    other = said;
    other.ground->pack.digest = "0";
    EXPECT_EQ(holds(other), PaperHolds::OtherForm) << "that pack is not at hand";
    other = said;
    other.learner = base::LearnerId::random();
    EXPECT_EQ(holds(other), PaperHolds::No);
}

}  // namespace
}  // namespace render
