// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QUuid>

#include "ui/render/papers/sample.h"

namespace render {
namespace {

QString asSearched(const QString& text) {
    return text.normalized(QString::NormalizationForm_KC).simplified();
}

}  // namespace

Sample::Sample(Stage stage, const std::string& pack) : m_ward(pack) {
    guidedVisit();
    visitWithLapse();
    if (stage == Stage::NotYet) return;
    m_ward.clock().advanceMs(86'400'000);
    const auto& asked = m_ward.taught().pack.readiness;
    const int times = asked ? std::max(asked->unpromptedInARow, asked->observedAtLeast) : 1;
    for (int i = 0; i < times; ++i) {
        changeOnPatient();
        m_ward.clock().advanceMs(86'400'000);
    }
    m_ward.answerAllPrompts();
    if (stage != Stage::Signed) return;
    record::SignOff act = m_ward.signOff();
    act.statement = "I saw each of these competencies done as they are taught.";
    act.acknowledgement.how = record::AcknowledgedBy::Voice;
    m_ward.must(act);
}

void Sample::guidedVisit() {
    m_ward.openVisit(practice::Way::Guided, practice::On::PracticeArm);
    m_ward.must(practice::WriteNote{.text = "Rests her elbow on a pillow; that helps."});
    int done = 0;
    while (practice::inHand(m_ward.visit().state) && !testing::Test::HasFailure()) {
        const auto* hand = practice::recordInHand(m_ward.visit().state);
        if (++done % 7 == 3) m_ward.must(practice::GiveCue{{.step = hand->step}});
        if (done == 11) m_ward.must(practice::HandsOn{{.step = hand->step}});
        m_ward.doStepInHand();
    }
    m_ward.must(practice::CloseVisit{});
    m_ward.clock().advanceMs(3'600'000);
}

void Sample::visitWithLapse() {
    m_ward.openVisit(practice::Way::ReturnDemonstration, practice::On::PracticeArm);
    int done = 0;
    bool hasLapsed = false;
    while (practice::inHand(m_ward.visit().state) && !testing::Test::HasFailure()) {
        m_ward.doStepInHand();
        const auto offered = practice::lapsesToOffer(m_ward.taught(), m_ward.visit().state);
        if (++done < 3 || hasLapsed || offered.empty()) continue;
        const auto& lapse = m_ward.taught().model.lapses[size_t(offered.front())];
        const bool isTouch = !lapse.breaks.within(m_ward.taught().model.clean).isEmpty();
        if (lapse.action != packs::Action::Recover || !isTouch || done < 20) continue;
        m_ward.must(practice::SeeLapse{.lapses = {lapse.id}});
        hasLapsed = true;
        if (m_ward.visit().state.wayBack) m_ward.must(practice::CatchAlone{});
    }
    m_ward.must(practice::CloseVisit{});
}

void Sample::changeOnPatient() {
    m_ward.openVisit(practice::Way::ReturnDemonstration, practice::On::Patient);
    m_ward.doAllSteps();
    const packs::Pack& pack = m_ward.taught().pack;
    for (const packs::Measure& measure : pack.measures) {
        if (measure.unit != "mm" || measure.way == packs::Way::More) continue;
        m_ward.must(practice::TakeMeasure{
            .measure = measure.id, .moment = practice::Moment::Found, .mm = 42, .marks = 4});
        m_ward.must(practice::TakeMeasure{
            .measure = measure.id, .moment = practice::Moment::Left, .mm = 40, .marks = 4});
    }
    if (pack.schedule)
        m_ward.must(practice::RecordChange{.dressing = pack.schedule->dressings.front().id,
                                           .initials = "AO",
                                           .site = "Clean, no redness, no swelling",
                                           .tolerance = "Well, no pain"});
    m_ward.must(practice::CloseVisit{});
}

PaperData Sample::gathered(record::PaperKind kind, const record::Record& record,
                           const std::string& language) const {
    const desk::RecordView& view = m_ward.desk().view();
    PaperContext context{
        .ward = view.ward,
        .isSimulatedClock = m_ward.clock().isSimulated(),
        .head = view.head,
        .now = m_ward.clock().now(),
        .language = language,
        .version = "0.1.0",
        .drawing = [this](const std::string& digest) { return m_ward.desk().drawing(digest); }};
    auto data = gather(kind, record, m_ward.learner(), m_ward.taught(),
                       *m_ward.desk().readinessOf(m_ward.learner()), view.house, context);
    EXPECT_TRUE(data.has_value());
    if (data) data->issuedAs = view.head;
    return data.value_or(PaperData{});
}

PaperData Sample::data(const std::string& language) const {
    return gathered(record::PaperKind::Chart, *m_ward.desk().view().record, language);
}

PaperData Sample::steps(const std::string& learnersLanguage) const {
    record::Record record = *m_ward.desk().view().record;
    record.learners.front().said.language = learnersLanguage;
    return gathered(record::PaperKind::Steps, record, "en");
}

const QLocale& english() {
    static const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    return locale;
}

std::vector<std::pair<std::string, Document>> everyPaper(const PaperData& data,
                                                         const QLocale& locale,
                                                         const std::string& language) {
    static const Sample hands(Stage::NotYet, "clean-hands");
    std::vector<std::pair<std::string, Document>> papers{
        {"chart", chartRecord(data, locale)},
        {"home", goingHomeWithHelp(data, locale)},
        {"steps", *stepsPaper(hands.steps(language), locale)}};
    if (auto document = certificate(data, locale)) papers.push_back({"certificate", *document});
    return papers;
}

PaperData overfull(PaperData data) {
    const std::string name(300, 'W');
    for (std::string* one : {&data.patient.name, &data.learner.name, &data.patient.number,
                             &data.visits.back().teachers.front()})
        *one = name;
    if (!data.signatures.empty()) data.signatures[0].signedBy.by = name;
    std::string words;
    while (words.size() < 300) words += "Wilhelmina ";
    data.learner.relationship = words;
    PaperVisit& visit = data.visits.back();
    visit.watchers = {words, words};
    std::string note;
    while (note.size() < 2000) note += "Rests her elbow on a pillow, and that helps her. ";
    visit.notes = {{visit.steps.front().text, note, name, visit.opened.atMs}, {"", note, "S", 0}};
    for (int i = 0; i < 15; ++i) {
        visit.lapses.push_back({.letter = std::string(1, char('A' + i)),
                                .what = {"The glove touched the skin outside the clean field."},
                                .touched = {"the sleeve", "the bed rail"},
                                .step = visit.steps[size_t(i)].text,
                                .happenedAfter = i % 3 ? "" : visit.steps.front().text,
                                .caught = i % 2 ? practice::Caught::Alone : practice::Caught::Shown,
                                .withdrawn = i % 5 == 4,
                                .solved = i % 4 != 0,
                                .wayBack = {"Throw the gloves away.", "Put on sterile gloves."},
                                .seenBy = i ? "Solveig Aranda" : name,
                                .atMs = visit.opened.atMs + i * 60'000});
        visit.steps[size_t(i)].lapses = {visit.lapses.back().letter};
    }
    return data;
}

PaperData withHelp(PaperData data) {
    data.help = record::DecideHelp{.why = "Two steps still need a cue",
                                   .decidedBy = "Solveig Aranda",
                                   .told = "Amara and Teodor Okonjo",
                                   .nextChangeBy = "the home nurse",
                                   .nextChangeOn = "2026-12-01",
                                   .call = "555 0100"};
    data.unit = record::SetUnit{.emergency = "112",
                                .teamNow = "555 0101",
                                .teamToday = "555 0102",
                                .policy = "Line care at home"};
    return data;
}

Pdf::Pdf(const Document& document, PageKind kind)
    : m_path(QDir::temp().filePath(QUuid::createUuid().toString(QUuid::WithoutBraces) +
                                   QStringLiteral(".pdf"))) {
    const Paper paper(document, kind);
    m_pages = paper.pageCount();
    EXPECT_TRUE(paper.writePdf(m_path).ok());
    m_text = asSearched(
        tool(QStringLiteral("pdftotext"), {QStringLiteral("-layout")}, {QStringLiteral("-")}));
}

QString Pdf::page(int number) const {
    const QString n = QString::number(number);
    return asSearched(tool(QStringLiteral("pdftotext"),
                           {QStringLiteral("-f"), n, QStringLiteral("-l"), n},
                           {QStringLiteral("-")}));
}

bool areOneOverTheOther(const QRectF& one, const QRectF& other, double share) {
    const QRectF shared = one.intersected(other);
    return shared.width() > 1 && shared.height() > std::min(one.height(), other.height()) * share;
}

std::vector<Word> Pdf::words() const {
    static const QRegularExpression line(
        QStringLiteral("<page |xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" "
                       "xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<"));
    std::vector<Word> words;
    int page = 0;
    const QString boxes =
        tool(QStringLiteral("pdftotext"), {QStringLiteral("-bbox")}, {QStringLiteral("-")});
    for (auto match = line.globalMatch(boxes); match.hasNext();) {
        const auto at = match.next();
        if (at.captured(1).isEmpty()) {
            ++page;
            continue;
        }
        const QPointF first(at.captured(1).toDouble(), at.captured(2).toDouble());
        const QPointF last(at.captured(3).toDouble(), at.captured(4).toDouble());
        const QString text = at.captured(5);
        // Vowel signs that poppler has torn off their letters have no box of their own.
        const bool isWord =
            std::any_of(text.begin(), text.end(), [](QChar c) { return !c.isMark(); });
        if (isWord) words.push_back({page, QRectF(first, last), text});
    }
    return words;
}

QString Pdf::codes(int page) const {
    const QString last = QString::number(page > 0 ? page : m_pages),
                  image = m_path + QStringLiteral("-page");
    tool(QStringLiteral("pdftoppm"),
         {QStringLiteral("-gray"), QStringLiteral("-r"), QStringLiteral("150"),
          QStringLiteral("-singlefile"), QStringLiteral("-f"), last},
         {image});
    QProcess process;
    process.start(QStringLiteral("zbarimg"),
                  {QStringLiteral("-q"), image + QStringLiteral(".pgm")});
    EXPECT_TRUE(process.waitForFinished(60'000));
    return QString::fromUtf8(process.readAllStandardOutput()).trimmed();
}

QString Pdf::tool(const QString& program, const QStringList& before,
                  const QStringList& after) const {
    QProcess process;
    process.start(program, before + QStringList{m_path} + after);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

}  // namespace render
