// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What a desk refuses of a patient's lines. Rules of our own, no source.
#include "core/desk/refusing.h"

namespace desk {
namespace {

using base::Code;

TEST_F(Refusals, Lines) {
    const record::AddLine good = ward.desk().view().record->lines.front().said;
    auto line = good;
    line.outsideMm = -1;
    expect(Code::MeasureOdd, line);
    line.outsideMm = 1000;
    expect(Code::MeasureOdd, line);
    line.outsideMm.reset();
    expect(Code::MeasureOdd, line);
    line = good;
    line.kind = "port";
    expect(Code::MeasureOdd, line);
    line = good;
    line.inserted = "2026-11-25";
    expect(Code::DateInFuture, line);
    line.inserted = "last week";
    expect(Code::NoDate, line);
    line = good;
    line.lastChange = "2026-12-01";
    expect(Code::DateInFuture, line);
    Command command = ward.desk().command(good);
    command.patient = base::PatientId::random();
    expectFor(Code::PatientUnknown, command);
}

// The distance of two marks is that of the packs for such a line: the weekly one has 10 mm.
TEST(LineRefusals, MarksAndLengthThatContradictEachOther) {
    support::Ward ward("weekly-dressing-upper-arm");
    record::AddLine line = ward.desk().view().record->lines.front().said;
    line.line = base::LineId::random();
    line.outsideMm = 4;
    const auto refused = ward.desk().say(line);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().code, Code::MarksContradict);
    EXPECT_EQ(refused.error().args, (std::vector<std::string>{"4", "10", "4"}));
    line.marks.reset();
    EXPECT_TRUE(ward.desk().say(line).ok());
    line.marks = 4;
    EXPECT_EQ(ward.desk().say(record::CorrectLine{line, ""}).error().code, Code::MarksContradict);
    line.kind = "tunnelled";
    EXPECT_TRUE(ward.desk().say(record::CorrectLine{line, ""}).ok())
        << "no pack knows how far the marks of such a line stand";
}

TEST_F(Refusals, OfALineThatIsThereAlready) {
    const record::AddLine known = ward.desk().view().record->lines.front().said;
    record::AddLine line = known;
    expect(Code::LineAlike, line);
    line.line = base::LineId::random();
    expect(Code::LineAlike, line);
    line.lumens = 2;
    ward.must(line);
    expect(Code::LineAlike, record::CorrectLine{[&] {
                                                    record::AddLine same = known;
                                                    same.line = line.line;
                                                    return same;
                                                }(),
                                                ""});
    expect(Code::LineUnchanged, record::CorrectLine{line, "no reason"});
    record::AddLine nobody = known;
    nobody.line = base::LineId::random();
    expect(Code::LineUnknown, record::CorrectLine{nobody, ""});
    line.inserted = "2026-11-25";
    expect(Code::DateInFuture, record::CorrectLine{line, ""});
}

TEST_F(Refusals, OfRemovingALine) {
    const base::LineId known = line();
    const auto nobody = base::LineId::random();
    expect(Code::LineUnknown, record::RemoveLine{nobody, "2026-11-20", ""});
    expect(Code::LineUnknown, record::KeepLine{nobody, ""});
    expect(Code::LineInUse, record::KeepLine{known, ""});
    expect(Code::NoDate, record::RemoveLine{known, "", ""});
    expect(Code::DateInFuture, record::RemoveLine{known, "2026-11-25", ""});
    expect(Code::RemovedTooEarly, record::RemoveLine{known, "2026-11-09", ""});
    record::AddLine same = ward.desk().view().record->lines.front().said;
    ward.must(record::RemoveLine{known, "2026-11-20", ""});
    expect(Code::LineRemoved, record::RemoveLine{known, "2026-11-20", ""});
    record::AddLine later = same;
    later.inserted = "2026-11-22";
    expect(Code::InsertedTooLate, record::CorrectLine{later, ""});
    ward.must(record::KeepLine{known, ""});
    ward.openVisit(practice::Way::Guided, practice::On::Patient);
    expect(Code::LineInVisit, record::RemoveLine{known, "2026-11-20", ""});
    ward.must(practice::StopVisit{});
    expect(Code::RemovedTooEarly, record::RemoveLine{known, "2026-11-20", ""});
    ward.must(record::RemoveLine{known, "2026-11-24", ""});
    for (const char* what : {"put in", "changed", "visit"})
        EXPECT_NE(base::english({Code::RemovedTooEarly}).find(what), std::string::npos);
    for (const char* what : {"visit", "removed"})
        EXPECT_NE(base::english({Code::InsertedTooLate}).find(what), std::string::npos);
    same.line = base::LineId::random();
    ward.must(same);  // as it is no longer in use, another may be like it
    expect(Code::LineAlike, record::KeepLine{known, ""});
}

// The ward's clock begins on 2026-11-24; the line was put in on 2026-11-10.
TEST_F(Refusals, OfALinePutInAfterAVisitOnIt) {
    record::AddLine later = ward.desk().view().record->lines.front().said;
    later.inserted = "2026-11-24";
    ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    ward.must(practice::StopVisit{});
    ward.must(record::CorrectLine{later, "on the practice arm no line is used"});
    later.inserted = "2026-11-12";
    ward.must(record::CorrectLine{later, ""});
    ward.openVisit(practice::Way::Guided, practice::On::Patient);
    later.inserted = "2026-11-24";
    ward.must(record::CorrectLine{later, "put in on the day of the visit"});
    ward.must(practice::StopVisit{});
    ward.clock().advanceMs(std::int64_t{48} * 3600 * 1000);
    later.inserted = "2026-11-25";
    expect(Code::InsertedTooLate, record::CorrectLine{later, ""});
    later.inserted = "2026-11-23";
    later.lumens = 2;
    ward.must(record::CorrectLine{later, ""});
    const base::CommandId visit = ward.desk().view().record->visits.back().origin.entry;
    ward.must(record::MarkWrongChart{.to = visit, .why = "another patient's"});
    later.inserted = "2026-11-25";
    ward.must(record::CorrectLine{later, "that visit tells nothing of this line"});
}

// The workstation's zone was set wrong: by the record the visit was a day before the line. Whatever
// else is wrong at the line can still be put right, but that day gets no later.
TEST_F(Refusals, OfADayThatIsWrongAlready) {
    record::AddLine line = ward.desk().view().record->lines.front().said;
    base::Instant now = ward.clock().now();
    now.wallMs = *base::parseIsoUtc("2026-11-25T02:00:00.000Z");
    ward.clock().set(now);
    line.inserted = "2026-11-25";
    ward.must(record::CorrectLine{line, ""});
    now.offsetMinutes = -180;
    ward.clock().set(now);
    ward.openVisit(practice::Way::Guided, practice::On::Patient);
    ward.must(practice::StopVisit{});
    now.offsetMinutes = 0;
    now.wallMs += std::int64_t{48} * 3600 * 1000;
    ward.clock().set(now);
    line.lumens = 2;
    ward.must(record::CorrectLine{line, ""});
    line.inserted = "2026-11-26";
    expect(Code::InsertedTooLate, record::CorrectLine{line, ""});
    line.inserted = "2026-11-24";
    ward.must(record::CorrectLine{line, ""});
}

}  // namespace
}  // namespace desk
