// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is known of the patient: allergies, each line with what lies on it, and the visits so far.
#include <QGridLayout>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "base/date.h"
#include "learners/learnercard.h"
#include "learners/personpage.h"
#include "learners/readsonly.h"
#include "parts/flowlayout.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "people/linewords.h"
#include "render/words.h"
#include "text/findings.h"
#include "text/labels.h"

namespace ui {
namespace {

QString factWords(const QString& name, const QString& words) {
    return QStringLiteral("%1: %2").arg(name, words);
}

QLabel* fact(const QString& name, const QString& words) {
    return text(factWords(name, words), Size::Body);
}

QString dayWords(const record::Origin& origin) {
    return render::dateWords(base::dateAt(origin.atMs, origin.offsetMinutes), QLocale());
}

QString nameWords(const record::House& house, const std::optional<base::StaffId>& by) {
    const record::Staff* who = by ? house.person(*by) : nullptr;
    return who ? render::isolated(render::plain(who->said.name)) : PersonPage::tr("somebody");
}

/// A reason as it was typed, after what it is the reason of.
QString whyWords(const std::string& why) {
    if (why.empty()) return {};
    return PersonPage::tr(". Why: %1").arg(render::isolated(render::plain(why)));
}

QString knownAllergies(const record::Record& record) {
    if (!record.allergies) return PersonPage::tr("not asked yet");
    QStringList known;
    for (const record::Allergy& one : record.allergies->said.allergies) known << allergyWords(one);
    return known.isEmpty() ? PersonPage::tr("asked, none known") : known.join(QStringLiteral("; "));
}

/// What lies on the line by what was written down last: of the line, or of a change in a visit.
struct OnIt {
    QString kit, changedOn;
    record::AddLine line;  ///< the line with what lies on it now
};

OnIt onIt(const record::Record& record, const record::Line& line) {
    const record::AddLine& said = line.said;
    std::string on = said.lastChange.value_or(std::string());
    OnIt found{{}, {}, said};
    for (const record::Visit& visit : record.visits) {
        if (visit.opened.line != said.line || !visit.change ||
            record.wrongChart(visit.origin.entry))
            continue;
        const auto& origin = visit.change->origin;
        const std::string day = base::dateAt(origin.atMs, origin.offsetMinutes);
        if (day < on) continue;
        on = day;
        found.line.dressing = visit.change->said.dressing;
        found.line.securement = visit.opened.kit.securement;
        found.line.antiseptic = visit.opened.kit.antiseptic;
    }
    found.kit = kitWords(found.line.dressing, found.line.securement, found.line.antiseptic);
    if (!on.empty()) found.changedOn = render::dateWords(on, QLocale());
    return found;
}

QString readingWords(const record::Visit& visit, const practice::Reading& reading) {
    const packs::Measure* measure =
        visit.taught ? packs::find(visit.taught->pack.measures, reading.measure) : nullptr;
    const QString label =
        measure ? packWords(visit.taught->pack, measure->label) : shown(reading.measure);
    QStringList read;
    if (reading.mm) read << PersonPage::tr("%1 mm").arg(*reading.mm);
    if (reading.marks) read << PersonPage::tr("%n marks in view", nullptr, *reading.marks);
    const std::string day = base::dateAt(reading.atMs, visit.origin.offsetMinutes);
    return PersonPage::tr("%1: %2, on %3", "a measure, what was read, date")
        .arg(label, read.join(QStringLiteral(", ")), render::dateWords(day, QLocale()));
}

/// The last reading of each measure on this line.
QStringList lastReadings(const record::Record& record, const record::Line& line) {
    QStringList words;
    std::vector<std::string> told;
    for (auto visit = record.visits.rbegin(); visit != record.visits.rend(); ++visit) {
        const bool isOfIt =
            visit->opened.line == line.said.line && visit->opened.on == practice::On::Patient;
        if (!isOfIt || record.wrongChart(visit->origin.entry)) continue;
        const auto& readings = visit->state.readings;
        for (auto one = readings.rbegin(); one != readings.rend(); ++one) {
            if (std::ranges::find(told, one->measure) != told.end()) continue;
            told.push_back(one->measure);
            words << readingWords(*visit, *one);
        }
    }
    return words;
}

QString removedWords(const record::Line& line) {
    const record::RemoveLine& removed = line.removals.back().said;
    const QString name =
        PersonPage::tr("Line, removed on %1").arg(render::dateWords(removed.on, QLocale()));
    return factWords(name, lineWords(line.said)) + whyWords(removed.why);
}

/// What of it was written down otherwise once, by whom and since when not.
QStringList historyOf(const record::House& house, const record::Line& line) {
    QStringList words;
    for (std::size_t i = 0; i < line.corrected.size(); ++i) {
        const record::Corrected& one = line.corrected[i];
        const bool isLast = i + 1 == line.corrected.size();
        const record::AddLine& after = isLast ? line.said : line.corrected[i + 1].before;
        words << PersonPage::tr("Corrected on %1 by %2. Before: %3")
                         .arg(dayWords(one.origin), nameWords(house, one.origin.by),
                              beforeWords(one.before, after)) +
                     whyWords(one.why);
    }
    for (const auto& one : line.kept)
        words << PersonPage::tr("On %1 %2 wrote that it was not removed")
                         .arg(dayWords(one.origin), nameWords(house, one.origin.by)) +
                     whyWords(one.said.why);
    return words;
}

QString endWords(const record::Visit& visit) {
    switch (visit.state.ending) {
        case practice::Ending::Open:
            return PersonPage::tr("open");
        case practice::Ending::Closed:
            return PersonPage::tr("finished");
        case practice::Ending::Stopped:
            return PersonPage::tr("stopped");
    }
    return {};
}

}  // namespace

void PersonPage::addKnown(const record::Record& record) {
    QVBoxLayout* card = cardIn(column(), tr("What is known"));
    card->addWidget(fact(tr("Allergies"), knownAllergies(record)));
    for (const record::Line& line : record.lines) addLine(card, record, line);
    const record::Learner* learner = m_desk.view().learnerInView();
    if (!learner) return;
    QStringList barriers;
    if (learner->needs)
        for (const record::Need& need : learner->needs->said.needs)
            barriers << labelOf(CodeList::Barrier, need.need);
    card->addWidget(fact(tr("Needs and barriers"), !learner->needs      ? tr("not asked yet")
                                                   : barriers.isEmpty() ? tr("asked, none found")
                                                                        : barriers.join(tr("; "))));
    if (learner->needs && !learner->needs->said.fears.empty())
        card->addWidget(fact(tr("Afraid of"), render::plain(learner->needs->said.fears)));
    if (learner->needs && !learner->needs->said.home.empty())
        card->addWidget(fact(tr("At home"), render::plain(learner->needs->said.home)));
}

void PersonPage::addLine(QVBoxLayout* card, const record::Record& record,
                         const record::Line& line) {
    QVBoxLayout* lines = linesIn(card);
    if (line.isInUse)
        addLineInUse(lines, record, line);
    else
        lines->addWidget(text(removedWords(line), Size::Body, Tone::Quiet));
    const QStringList history = historyOf(m_desk.view().house, line);
    for (const QString& one : history) lines->addWidget(text(one, Size::Note, Tone::Quiet));
    if (!readsOnly(m_desk.view())) addLineButtons(lines, line);
}

void PersonPage::addLineInUse(QVBoxLayout* lines, const record::Record& record,
                              const record::Line& line) {
    lines->addWidget(fact(tr("Line"), lineWords(line.said)));
    const OnIt now = onIt(record, line);
    if (!now.kit.isEmpty()) lines->addWidget(fact(tr("On it"), now.kit));
    if (!now.changedOn.isEmpty()) lines->addWidget(fact(tr("Last changed"), now.changedOn));
    for (const record::LineDue& due : record::duesOf(record, m_desk.shelf())) {
        if (due.line != line.said.line) continue;
        const DueWords words = dueWords(due.due, m_desk.now());
        lines->addWidget(text(QString::fromUtf8(words.glyph) + u' ' + words.words, Size::Body,
                              static_cast<Tone>(words.tone)));
    }
    const QStringList readings = lastReadings(record, line);
    for (const QString& one : readings) lines->addWidget(text(one, Size::Body));
    const QStringList warnings = allergyWarnings(record, now.line);
    for (const QString& one : warnings)
        lines->addWidget(text(QStringLiteral("▲ ") + one, Size::Body, Tone::Amber, Weight::Strong));
}

void PersonPage::addLineButtons(QVBoxLayout* lines, const record::Line& line) {
    const base::LineId id = line.said.line;
    auto* flow = new FlowLayout(nullptr, 12);
    const auto add = [&](const QString& words, const char* what) {
        QPushButton* made = quietButton(words, QLatin1String(what) + u'.' + shown(id.text()));
        made->setAccessibleName(factWords(words, lineWords(line.said)));
        flow->addWidget(made);
        return made;
    };
    connect(add(tr("Correct this line"), "line.correct"), &QPushButton::clicked, this,
            [this, id] { Q_EMIT wantsLineCorrected(id); });
    if (line.isInUse)
        connect(add(tr("It was removed"), "line.removed"), &QPushButton::clicked, this,
                [this, id] { Q_EMIT wantsLineRemoved(id); });
    else
        connect(add(tr("It was not removed"), "line.kept"), &QPushButton::clicked, this,
                [this, id] { keepLine(id); });
    lines->addLayout(flow);
}

/// What came of it is said where the button was.
void PersonPage::keepLine(const base::LineId& line) {
    if (!errors()->took(m_desk.say(record::KeepLine{line, {}}))) return;
    refresh();
    const auto toIt = [this, line] {
        QWidget* button = standing(this, QStringLiteral("line.removed.") + shown(line.text()));
        if (button) focusOn(button);
    };
    QMetaObject::invokeMethod(this, toIt, Qt::QueuedConnection);
}

/// The newest first; of many the last few, since the papers have all.
void PersonPage::addVisits(const record::Record& record) {
    if (record.visits.empty()) return;
    constexpr std::size_t most = 6;
    const std::size_t count = std::min(most, record.visits.size());
    const std::size_t before = record.visits.size() - count;
    QVBoxLayout* card = cardIn(column(), tr("Visits so far"));
    auto* table = new QGridLayout;
    table->setHorizontalSpacing(16);
    table->setVerticalSpacing(4);
    constexpr int how = 1;
    for (int at = 0; at < 4; ++at) table->setColumnStretch(at, at == how ? 3 : 2);
    int row = 0;
    const auto add = [&](const QStringList& cells, Tone tone) {
        for (int at = 0; at < cells.size(); ++at)
            table->addWidget(text(cells[at], Size::Body, tone), row, at, Qt::AlignTop);
        ++row;
    };
    add({tr("When"), tr("How"), tr("Taught"), tr("End")}, Tone::Quiet);
    for (std::size_t i = 0; i < count; ++i) {
        const record::Visit& visit = record.visits[record.visits.size() - 1 - i];
        const record::Learner* learner = record.learner(visit.opened.learner);
        add({dayWords(visit.origin),
             QStringLiteral("%1, %2").arg(render::wayWords(visit.opened.way),
                                          render::onWords(visit.opened.on)),
             learner ? render::plain(learner->said.name) : QString(),
             record.wrongChart(visit.origin.entry) ? tr("written in the wrong chart")
                                                   : endWords(visit)},
            Tone::Ink);
    }
    card->addLayout(table);
    if (before > 0)
        card->addWidget(text(tr("%n more before these", nullptr, static_cast<int>(before)),
                             Size::Note, Tone::Quiet));
}

}  // namespace ui
