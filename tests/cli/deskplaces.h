// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <fstream>

#include "cli/demofolder.h"
#include "cli/deskclock.h"
#include "cli/deskcommand.h"
#include "cli/deskprocess.h"
#include "seal/accessrows.h"
#include "seal/sealingcodec.h"
#include "support/paths.h"
#include "support/ward.h"

namespace support {

/// A record that `ninebark desk` is run on as a process of its own.
class DeskPlace {
  public:
    virtual ~DeskPlace() = default;
    virtual std::string folder() const = 0;
    virtual base::Instant begin() const = 0;
    /// Opens a visit.
    virtual desk::Command opening() const = 0;
    /// What has to be said before any command.
    virtual std::string hello() const { return {}; }
    /// Runs in the process: the desk with its clock in this file; dies as DiskMarks::dieAt().
    virtual int serve(const std::string& clock, DiskMarks& marks, int deathAt) const = 0;
    /// Whether it can die by its own hand.
    virtual bool diesInside() const { return false; }
    /// With all keys.
    virtual std::unique_ptr<store::SqlLedger> read() const = 0;
    virtual std::shared_ptr<const seal::Keyring> ring() const { return nullptr; }
};

/// The ward of invented people and the program as it is built.
class PlainPlace : public DeskPlace {
  public:
    PlainPlace() {
        base::ManualClock start(demoStart());
        auto ward = app::composeWard(QString::fromStdString(folder()), start);
        EXPECT_TRUE(ward.ok());
        m_opening = openingFor(*ward->desk, practice::Way::Guided);
    }
    std::string folder() const override { return m_folder.path(); }
    base::Instant begin() const override { return demoStart(); }
    desk::Command opening() const override { return m_opening; }
    std::unique_ptr<store::SqlLedger> read() const override { return m_folder.open(); }
    int serve(const std::string& clock, DiskMarks&, int) const override {
        const std::string program = buildDir() + "/ninebark", data = folder();
        ::execl(program.c_str(), program.c_str(), "desk", "--data", data.c_str(), "--clock",
                clock.c_str(), nullptr);
        return 127;
    }

  private:
    DemoFolder m_folder{DemoFolder::Visit::None};
    desk::Command m_opening;
};

/// A sealed record of real people's kind, with keys at the least cost. The program itself refuses
/// such keys, so its command runs in a copy of this process.
class SealedPlace : public DeskPlace {
  public:
    /// Begins with the long procedure, or has shown and answered everything of the short one.
    enum class Learner { Begins, Signable };
    explicit SealedPlace(Learner learner = Learner::Begins) {
        auto ledger = store::SqlLedger::open(file(), store::OpenMode::Real);
        EXPECT_TRUE(ledger.ok());
        const bool isShort = learner == Learner::Signable;
        Ward ward(isShort ? "clean-hands" : "weekly-dressing-upper-arm", Ward::Record::Sealed,
                  ledger->get());
        if (isShort) {
            ward.demonstrateAsAsked();
            ward.answerAllPrompts();
            m_signOff = ward.desk().command(ward.signOff());
            m_paper = ward.desk().command(ward.paper(record::PaperKind::Chart));
        }
        m_opening =
            ward.desk().command(ward.opening(practice::Way::Guided, practice::On::PracticeArm));
        m_begin = ward.clock().now();
        const auto rows = **seal::readKeyRows(*(*ledger)->access());
        m_ring = std::make_shared<const seal::Keyring>(
            *seal::Keyring::signIn(rows, *seal::nameHandle(name, rows.names), Ward::passphrase()));
    }
    static constexpr const char* name = "Solveig Aranda";
    static gate::Terms cheap() { return {seal::Cost::least(), true}; }
    std::string folder() const override { return m_folder.path().toStdString(); }
    std::string file() const { return store::recordFileIn(folder()); }
    base::Instant begin() const override { return m_begin; }
    desk::Command opening() const override { return m_opening; }
    const desk::Command& signOff() const { return m_signOff; }
    /// Says that a paper was made.
    const desk::Command& paper() const { return m_paper; }
    std::string hello() const override { return std::string(Ward::passphrase().view()) + '\n'; }
    static std::string confirming() {
        nlohmann::json line;
        line["passphrase"] = std::string(Ward::passphrase().view());
        return line.dump() + '\n';
    }
    bool diesInside() const override { return true; }
    int serve(const std::string& clock, DiskMarks& marks, int deathAt) const override {
        marks.dieAt(deathAt);
        std::ifstream in("/dev/stdin");
        std::ofstream out("/dev/stdout");
        std::ostringstream err;
        return static_cast<int>(
            app::DeskCommand(in, STDIN_FILENO, cheap())
                .run({"--data", folder(), "--as", name, "--clock", clock}, out, err));
    }
    std::unique_ptr<store::SqlLedger> read() const override { return readIn(file()); }
    /// A copy of it elsewhere.
    std::unique_ptr<store::SqlLedger> readIn(const std::string& file) const {
        auto opened = store::SqlLedger::openToRead(file, store::OpenMode::Real);
        if (!opened) ADD_FAILURE() << base::english(opened.error());
        if (!opened) return nullptr;
        (*opened)->use(std::make_shared<seal::SealingCodec>(m_ring, (*opened)->keyShelf()));
        return std::move(*opened);
    }
    std::shared_ptr<const seal::Keyring> ring() const override { return m_ring; }

  private:
    QTemporaryDir m_folder;
    desk::Command m_opening, m_signOff, m_paper;
    base::Instant m_begin;
    std::shared_ptr<const seal::Keyring> m_ring;
};

}  // namespace support
