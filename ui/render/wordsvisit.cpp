// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/words.h"

namespace render {

QString wayWords(practice::Way way) {
    switch (way) {
        case practice::Way::Show:
            return Papers::tr("Shown");
        case practice::Way::Guided:
            return Papers::tr("Guided");
        case practice::Way::ReturnDemonstration:
            return Papers::tr("Return demonstration");
    }
    return {};
}

QString onWords(practice::On on) {
    switch (on) {
        case practice::On::Patient:
            return Papers::tr("on the patient");
        case practice::On::PracticeArm:
            return Papers::tr("on a practice arm");
        case practice::On::TalkedThrough:
            return Papers::tr("talked through");
    }
    return {};
}

QString helpWords(practice::Help help, int cues) {
    switch (help) {
        case practice::Help::NothingRecorded:
            return Papers::tr("nothing recorded");
        case practice::Help::Unprompted:
            return Papers::tr("unprompted");
        case practice::Help::Cued:
            // Cued without a cue: a lapse that the learner did not catch alone, or a time cut
            // short.
            if (cues == 0) return Papers::tr("a lapse, or cut short");
            return Papers::tr("%n cues", nullptr, cues);
        case practice::Help::HandsOn:
            return Papers::tr("hands-on help");
        case practice::Help::NotDone:
            return Papers::tr("not done");
        case practice::Help::NotSeen:
            return Papers::tr("not seen");
        case practice::Help::DoesNotApply:
            return Papers::tr("does not apply");
        case practice::Help::ByTeacher:
            return Papers::tr("done by the teacher");
    }
    return {};
}

QString caughtWords(practice::Caught caught) {
    switch (caught) {
        case practice::Caught::No:
            return Papers::tr("not caught by the learner");
        case practice::Caught::Alone:
            return Papers::tr("caught and put right alone");
        case practice::Caught::Shown:
            return Papers::tr("the way back was shown");
    }
    return {};
}

QString actionWords(packs::Action action) {
    switch (action) {
        case packs::Action::Recover:
            return Papers::tr("put right and went on");
        case packs::Action::FinishAndCall:
            return Papers::tr("finish the change, then call today");
        case packs::Action::StopAndCall:
            return Papers::tr("stop and call now");
    }
    return {};
}

QString callWords(packs::Call call) {
    switch (call) {
        case packs::Call::Emergency:
            return Papers::tr("the emergency number, at once");
        case packs::Call::TeamNow:
            return Papers::tr("the team, at once");
        case packs::Call::TeamToday:
            return Papers::tr("the team, the same day");
    }
    return {};
}

QString stopWords(practice::StopReason reason) {
    switch (reason) {
        case practice::StopReason::PatientUnwell:
            return Papers::tr("the patient was unwell");
        case practice::StopReason::CalledAway:
            return Papers::tr("the teacher was called away");
        case practice::StopReason::Refused:
            return Papers::tr("it was refused");
        case practice::StopReason::Other:
            return Papers::tr("another reason");
    }
    return {};
}

QString interpreterWords(practice::InterpreterMode mode) {
    switch (mode) {
        case practice::InterpreterMode::Present:
            return Papers::tr("in the room");
        case practice::InterpreterMode::Phone:
            return Papers::tr("by phone");
        case practice::InterpreterMode::Video:
            return Papers::tr("by video");
    }
    return {};
}

QString armWords(record::Arm arm) {
    switch (arm) {
        case record::Arm::Left:
            return Papers::tr("left arm");
        case record::Arm::Right:
            return Papers::tr("right arm");
    }
    return {};
}

QString roleWords(record::Role role) {
    switch (role) {
        case record::Role::Teacher:
            return Papers::tr("teacher");
        case record::Role::Educator:
            return Papers::tr("educator");
        case record::Role::Auditor:
            return Papers::tr("auditor");
    }
    return {};
}

QString drillWords(record::DrillResult result) {
    switch (result) {
        case record::DrillResult::Unprompted:
            return Papers::tr("unprompted");
        case record::DrillResult::Cued:
            return Papers::tr("with a cue");
        case record::DrillResult::NotYet:
            return Papers::tr("not yet");
    }
    return {};
}

QString acknowledgedWords(record::AcknowledgedBy how) {
    switch (how) {
        case record::AcknowledgedBy::Signed:
            return Papers::tr("signed");
        case record::AcknowledgedBy::Voice:
            return Papers::tr("acknowledged aloud");
        case record::AcknowledgedBy::Declined:
            return Papers::tr("declined to sign");
        case record::AcknowledgedBy::NotPermitted:
            return Papers::tr("was not permitted to sign");
        case record::AcknowledgedBy::NotAble:
            return Papers::tr("was not able to sign");
    }
    return {};
}

QString standingWords(packs::Standing standing) {
    switch (standing) {
        case packs::Standing::Published:
            return Papers::tr("published");
        case packs::Standing::CommonPractice:
            return Papers::tr("common practice");
        case packs::Standing::LocalPolicy:
            return Papers::tr("local policy");
        case packs::Standing::FromMemory:
            return Papers::tr("from memory");
    }
    return {};
}

QString signalWords(packs::Level level) {
    switch (level) {
        case packs::Level::Danger:
            return Papers::tr("DANGER");
        case packs::Level::Warning:
            return Papers::tr("WARNING");
        case packs::Level::Caution:
            return Papers::tr("CAUTION");
        case packs::Level::Notice:
            return Papers::tr("NOTICE");
    }
    return {};
}

QString laneWords(packs::Lane lane) {
    switch (lane) {
        case packs::Lane::Hands:
            return Papers::tr("hands");
        case packs::Lane::Face:
            return Papers::tr("face");
        case packs::Lane::Field:
            return Papers::tr("field");
        case packs::Lane::Site:
            return Papers::tr("site");
        case packs::Lane::Skin:
            return Papers::tr("skin");
        case packs::Lane::Line:
            return Papers::tr("line");
        case packs::Lane::Cover:
            return Papers::tr("cover");
        case packs::Lane::Record:
            return Papers::tr("record");
    }
    return {};
}

}  // namespace render
