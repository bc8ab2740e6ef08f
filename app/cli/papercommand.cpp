// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/papercommand.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QLocale>
#include <map>
#include <memory>
#include <optional>
#include <ostream>

#include "cli/clockfile.h"
#include "cli/packfile.h"
#include "desk/desk.h"
#include "desk/packinview.h"
#include "procedure/taught.h"
#include "render/language.h"
#include "render/papers/issued.h"
#include "render/papers/paper.h"
#include "render/papers/papers.h"
#include "store/recordfile.h"
#include "store/sqlledger.h"

namespace app {
namespace {

struct PaperArguments {
    record::PaperKind kind = record::PaperKind::Chart;
    base::LearnerId learner;
    std::string data, out;
    std::string pack;   ///< id; "": the one in view
    std::string clock;  ///< a file of one; "": the machine's
    render::PageKind page = render::PageKind::A4;
    bool asJson = false;
};

std::optional<record::PaperKind> kindOf(const std::string& word) {
    using record::PaperKind;
    static const std::map<std::string, PaperKind> kinds{
        {"chart", PaperKind::Chart},
        {"certificate", PaperKind::Certificate},
        {"going-home", PaperKind::GoingHomeWithHelp},
        {"steps", PaperKind::Steps},
        {"note", PaperKind::ChartNote}};
    const auto found = kinds.find(word);
    return found == kinds.end() ? std::nullopt : std::optional(found->second);
}

std::optional<PaperArguments> parse(const std::vector<std::string>& words) {
    PaperArguments asked;
    std::map<std::string, std::string> options;
    if (words.empty() || !kindOf(words[0])) return std::nullopt;
    asked.kind = *kindOf(words[0]);
    for (std::size_t i = 1; i < words.size(); ++i) {
        if (words[i] == "--letter") {
            asked.page = render::PageKind::Letter;
            continue;
        }
        if (words[i] == "--json") {
            asked.asJson = true;
            continue;
        }
        const bool isKnown = words[i] == "--data" || words[i] == "--learner" ||
                             words[i] == "--out" || words[i] == "--pack" || words[i] == "--clock";
        if (!isKnown || i + 1 == words.size()) return std::nullopt;
        options[words[i]] = words[i + 1];
        ++i;
    }
    const auto learner = base::LearnerId::parse(options["--learner"]);
    if (!learner || options["--data"].empty() || options["--out"].empty()) return std::nullopt;
    asked.learner = *learner;
    asked.data = options["--data"];
    asked.out = options["--out"];
    asked.pack = options["--pack"];
    asked.clock = options["--clock"];
    return asked;
}

procedure::Shelf builtInPacks() {
    procedure::Shelf shelf;
    QDir folder(QStringLiteral(":/packs"));
    for (const QString& name : folder.entryList(QDir::Files, QDir::Name)) {
        QFile file(folder.filePath(name));
        if (!file.open(QIODevice::ReadOnly)) continue;
        if (auto taught = procedure::readTaught(file.readAll().toStdString())) shelf.put(*taught);
    }
    return shelf;
}

base::Result<std::unique_ptr<base::Clock>> clockFrom(const std::string& file) {
    if (file.empty()) return std::unique_ptr<base::Clock>(new base::SystemClock);
    auto now = readClockFile(file);
    if (!now) return now.error();
    return std::unique_ptr<base::Clock>(new base::ManualClock(std::move(*now)));
}

// The cards say whose record a learner belongs to.
std::optional<base::PatientId> patientOf(desk::Desk& desk, const base::LearnerId& learner) {
    for (std::uint64_t offset = 0; offset <= desk.view().cardTotal;) {
        if (!desk.lookFor("", offset).ok() || desk.view().cards.empty()) return std::nullopt;
        for (const record::Card& card : desk.view().cards)
            if (card.learner == learner) return card.patient;
        offset += desk.view().cards.size();
    }
    return std::nullopt;
}

/// Whether the learner is taught by the pack that was asked for; then it is the one in view.
bool chosen(desk::Desk& desk, const PaperArguments& asked) {
    for (const auto& one : desk::packsTaught(*desk.view().record, asked.learner)) {
        if (one->pack.id != asked.pack) continue;
        desk.lookAtPack(one->digest);
        return true;
    }
    return false;
}

const QLocale& paperLocale() {
    static const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    return locale;
}

std::optional<render::PaperData> dataFor(desk::Desk& desk, const PaperArguments& asked) {
    const auto patient = patientOf(desk, asked.learner);
    if (!patient || !desk.openRecord(*patient, asked.learner).ok()) return std::nullopt;
    if (!asked.pack.empty() && !chosen(desk, asked)) return std::nullopt;
    const auto taught = desk.packFor(asked.learner);
    const auto readiness = desk.readinessOf(asked.learner);
    if (!taught || !readiness) return std::nullopt;
    // While a visit is open its pack is the one in view.
    if (!asked.pack.empty() && taught->pack.id != asked.pack) return std::nullopt;
    const desk::RecordView& view = desk.view();
    return render::gather(
        asked.kind, *view.record, asked.learner, *taught, *readiness, view.house,
        {.ward = view.ward,
         .isSimulatedClock = view.simulatedClock,
         .head = view.head,
         .now = desk.now(),
         .sentences = paperLocale().bcp47Name().toStdString(),
         .version = NINEBARK_VERSION,
         .drawing = [&desk](const std::string& digest) { return desk.drawing(digest); }});
}

ExitCode refuse(const std::string& why, ExitCode code, bool asJson, std::ostream& out,
                std::ostream& err) {
    err << why << '\n';
    if (asJson) writeJson({{"ok", false}, {"errors", Json::array({{{"text", why}}})}}, out);
    return code;
}

/// The digest; as JSON the Command that says that this paper is handed out, without who says so.
void tellMade(const record::IssuePaper& said, bool asJson, std::ostream& out) {
    if (asJson)
        writeJson({{"ok", true}, {"do", record::IssuePaper::type}, {"data", base::toJson(said)}},
                  out);
    else
        out << said.digest << '\n';
}

ExitCode write(const PaperArguments& asked, const render::PaperData& data, std::ostream& out,
               std::ostream& err) {
    const QLocale& locale = paperLocale();
    const QString path = QString::fromStdString(asked.out);
    base::Outcome written = base::Done{};
    if (asked.kind == record::PaperKind::ChartNote) {
        written = render::writeWhole(path, render::chartNote(data, locale).toUtf8() + '\n');
    } else {
        const auto document = render::documentOf(asked.kind, data, locale);
        if (!document)
            return refuse(
                asked.kind == record::PaperKind::Certificate
                    ? "no certificate while the rules say not yet; make going-home instead"
                    : "nobody has decided who helps at home; write that down first",
                ExitCode::Wrong, asked.asJson, out, err);
        written = render::Paper(*document, asked.page).writePdf(path);
    }
    if (!written.ok())
        return refuse(base::english(written.error()), ExitCode::Unreadable, asked.asJson, out, err);
    tellMade(render::issued(data), asked.asJson, out);
    return ExitCode::Done;
}

}  // namespace

ExitCode PaperCommand::run(const std::vector<std::string>& arguments, std::ostream& out,
                           std::ostream& err) const {
    const auto asked = parse(arguments);
    if (!asked) return ExitCode::Usage;
    std::optional<QGuiApplication> application;  // fonts need one
    int count = 1;
    char word[] = "ninebark";
    char* words[] = {word, nullptr};
    if (!QCoreApplication::instance()) {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
        application.emplace(count, words);
        render::speak(QLocale());
    }
    const auto unreadable = [&](const base::Error& error) {
        return refuse(base::english(error), ExitCode::Unreadable, asked->asJson, out, err);
    };
    const auto ledger = store::SqlLedger::openToRead(store::recordFileIn(asked->data),
                                                     store::OpenMode::Demonstration);
    if (!ledger) return unreadable(ledger.error());
    const auto clock = clockFrom(asked->clock);
    if (!clock) return unreadable(clock.error());
    procedure::Shelf shelf = builtInPacks();
    const auto desk = desk::Desk::open(**ledger, shelf, **clock, desk::Ward::Demonstration);
    if (!desk) return unreadable(desk.error());
    const auto data = dataFor(**desk, *asked);
    if (!data)
        return refuse(
            "there is no such learner, no such pack to be taught by, or a visit by another is "
            "open",
            ExitCode::Wrong, asked->asJson, out, err);
    return write(*asked, *data, out, err);
}

}  // namespace app
