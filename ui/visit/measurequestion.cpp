// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QIntValidator>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <cstdlib>

#include "packs/names.h"
#include "pieces/lapsewords.h"
#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "record/insertion.h"
#include "visit/question.h"

namespace ui {

using render::Role;

namespace {

struct Rule {
    packs::Measure measure;
    packs::Counted insertion;  ///< what was written down when the line was put in
    QString call;
};

Rule ruleOf(const Moment& moment, const packs::Measure& measure) {
    // On a practice arm there is nothing of the patient's to hold it against.
    const record::Line* line = moment.opened().on == practice::On::Patient
                                   ? moment.record().line(moment.opened().line)
                                   : nullptr;
    return {measure, line == nullptr ? packs::Counted{} : record::atInsertion(line->said, measure),
            whomToCall(moment, packs::Call::TeamToday)};
}

QString changeWords(const Rule& rule, const packs::Counted& now, const packs::Comparison& found) {
    if (found.byMm)
        return Question::tr("%1 mm, %2 mm when the line was put in: changed by %3 mm.")
            .arg(*now.mm)
            .arg(*rule.insertion.mm)
            .arg(std::abs(*found.byMm));
    return Question::tr("%1 marks, %2 when the line was put in: changed by %3 mm.")
        .arg(*now.marks)
        .arg(*rule.insertion.marks)
        .arg(std::abs(*found.byMarks));
}

QString boundWords(const Rule& rule, packs::Bound bound) {
    switch (bound) {
        case packs::Bound::Within:
            return {};
        case packs::Bound::Tell:
            return Question::tr("Tell the team.");
        case packs::Bound::Call:
            break;
    }
    const QString call = Question::tr("Call: %1").arg(rule.call);
    if (packs::baselineOf(rule.measure) != packs::Baseline::OutsideLength) return call;
    return Question::tr(
               "Finish the change. Never push the line in. Do not use it until you are told.") +
           QLatin1Char(' ') + call;
}

bool doContradict(const Rule& rule, const packs::Counted& now) {
    return rule.measure.markMm && packs::contradict(*rule.measure.markMm, now);
}

/// What the rule says to this reading; empty when it says nothing.
QString ruleWords(const Rule& rule, const packs::Counted& now) {
    const auto found = packs::compare(rule.measure, rule.insertion, now);
    const bool isCountAlone = now.marks && !now.mm && rule.measure.baseline;
    if (!found && isCountAlone)
        return Question::tr(
            "No count of marks was written down when the line was put in. Measure the "
            "millimetres, to compare.");
    QStringList words;
    if (doContradict(rule, now) && (!found || found->doAgree))
        words << Question::tr(
                     "%1 marks, %2 mm apart, reach over more than %3 mm: one of the two "
                     "is wrong. Measure and count again.")
                     .arg(*now.marks)
                     .arg(*rule.measure.markMm)
                     .arg(*now.mm);
    if (!found) return words.join(QLatin1Char(' '));
    words << changeWords(rule, now, *found);
    if (!found->doAgree)
        words << Question::tr("The marks say %1 mm. Measure and count again.")
                     .arg(std::abs(*found->byMarks));
    words << boundWords(rule, found->bound);
    words.removeAll(QString());
    return words.join(QLatin1Char(' '));
}

bool needsHeed(const Rule& rule, const packs::Counted& now) {
    if (doContradict(rule, now)) return true;
    const auto found = packs::compare(rule.measure, rule.insertion, now);
    return found && found->bound == packs::Bound::Call;
}

/// A field with the words above it.
void showLine(QLineEdit* line, bool isShown) {
    for (QLabel* label : line->parentWidget()->findChildren<QLabel*>())
        if (label->buddy() == line) label->setVisible(isShown);
    line->setVisible(isShown);
    if (!isShown) line->clear();
}

std::optional<int> number(const QLineEdit* line) {
    if (line->text().isEmpty()) return std::nullopt;
    return line->text().toInt();
}

/// Whether the step in hand counts marks on a line that was counted by them from the first.
bool isReadByMarks(const std::optional<packs::StepMeasure>& step, const std::vector<Rule>& rules) {
    if (!step || step->by != packs::ReadBy::Marks) return false;
    for (const Rule& rule : rules)
        if (rule.measure.id == step->id) return rule.measure.markMm && rule.insertion.marks;
    return false;
}

QLineEdit* numberLine(Question* question, const QString& name, const QString& objectName) {
    QLineEdit* line = question->addLine(name, objectName);
    line->setValidator(new QIntValidator(0, 999, line));
    line->setInputMethodHints(Qt::ImhDigitsOnly);
    return line;
}

/// The two figures, and below them what the rule says to what is written now.
struct Figures {
    QLineEdit *mm, *marks;
    QLineEdit* first;  ///< of the two, what is asked for
    Words* said;

    packs::Counted counted() const { return {.mm = number(mm), .marks = number(marks)}; }
    bool isEmpty() const { return mm->text().isEmpty() && marks->text().isEmpty(); }
    void refuse(const QString& sentence) const {
        said->setRole(Role::Brick);
        said->say(sentence);
    }
    /// Whether the figure can be one; says so when it can't.
    bool canBe(const packs::Measure& measure) const {
        const record::Span span = record::spanOf(measure);
        const auto written = counted().mm;
        if (!written || span.holds(*written)) return true;
        refuse(Question::tr("%1 mm can't be right; %2 to %3 mm can. 3 centimetres are 30 "
                            "millimetres. Nothing was written down.")
                   .arg(*written)
                   .arg(span.least)
                   .arg(span.most));
        return false;
    }
    void retell(const Rule* rule) const {
        showLine(marks, rule != nullptr && rule->measure.markMm.has_value());
        if (rule == nullptr) return said->say({});
        said->setRole(needsHeed(*rule, counted()) ? Role::Brick : Role::QuietInk);
        said->say(ruleWords(*rule, counted()));
        // What the rule says must not be below the edge; once the words have their place.
        QMetaObject::invokeMethod(
            said, [said = said] { bringIntoView(said); }, Qt::QueuedConnection);
    }
};

Figures addFigures(Question* question, bool isByMarks) {
    Figures figures{};
    const auto marksLine = [question] {
        return numberLine(question, Question::tr("Marks in view, where the line has marks"),
                          QStringLiteral("measureMarks"));
    };
    if (isByMarks) figures.marks = marksLine();
    figures.mm = numberLine(question, Question::tr("Millimetres"), QStringLiteral("measureMm"));
    if (!isByMarks) figures.marks = marksLine();
    figures.first = isByMarks ? figures.marks : figures.mm;
    figures.said = question->addWords({}, Role::Ink);
    figures.said->setObjectName(QStringLiteral("measureRule"));
    return figures;
}

practice::Moment momentOf(packs::Taken when) {
    return when == packs::Taken::Left ? practice::Moment::Left : practice::Moment::Found;
}

/// What the step in hand has to be measured by, or the step before it that had: it may be written
/// down a moment later.
std::optional<packs::StepMeasure> measureNow(const Moment& moment) {
    std::optional<packs::StepMeasure> last;
    const packs::Step* hand = moment.inHand();
    if (hand != nullptr && hand->measure) return hand->measure;
    const int number = hand == nullptr ? moment.stepCount() : moment.numberInHand();
    for (const packs::StepPlace& place : packs::stepsInOrder(moment.pack()))
        if (place.number <= number && place.step->measure) last = place.step->measure;
    return last;
}

}  // namespace

Question* askMeasures(const Moment& moment, QWidget* parent) {
    auto* question =
        new Question(Question::tr("Write down a measure"), Question::tr("Write it down"), parent);
    auto* which = new PickList(PickList::Many::One, QStringLiteral("measureWhich"), question);
    std::vector<PickList::Entry> entries;
    std::vector<Rule> rules;
    for (const packs::Measure& measure : moment.pack().measures) {
        entries.push_back({utf(measure.id), utf(moment.text(measure.label))});
        rules.push_back(ruleOf(moment, measure));
    }
    which->setEntries(entries);
    auto* when = new PickList(PickList::Many::One, QStringLiteral("measureWhen"), question);
    when->setEntries({{QStringLiteral("found"), Question::tr("As found")},
                      {QStringLiteral("left"), Question::tr("As left")}});
    when->choose(QStringLiteral("found"));
    question->room()->addWidget(which);
    question->room()->addSpacing(render::Theme::gap(render::Gap::Tight));
    question->room()->addWidget(when);
    const auto stepMeasure = measureNow(moment);
    const Figures figures = addFigures(question, isReadByMarks(stepMeasure, rules));
    const auto retell = [=] {
        const Rule* now = nullptr;
        for (const Rule& rule : rules)
            if (utf(rule.measure.id) == which->one()) now = &rule;
        figures.retell(now);
    };
    for (QLineEdit* line : {figures.mm, figures.marks})
        QObject::connect(line, &QLineEdit::textChanged, question, retell);
    QObject::connect(which, &PickList::changed, question, retell);
    if (!entries.empty()) which->choose(entries.front().id);
    if (stepMeasure) {
        which->choose(utf(stepMeasure->id));
        when->choose(utf(packs::name(stepMeasure->when)));
    }
    question->onAccept = [=, measures = moment.pack().measures] {
        if (figures.isEmpty())
            return figures.refuse(Question::tr("Write the millimetres, or count the marks."));
        const auto* measure = packs::find(measures, which->one().toStdString());
        if (measure == nullptr || !figures.canBe(*measure)) return;
        const bool isLeft = when->one() == QLatin1String("left");
        question->say(practice::TakeMeasure{
            .measure = which->one().toStdString(),
            .moment = isLeft ? practice::Moment::Left : practice::Moment::Found,
            .mm = figures.counted().mm,
            .marks = figures.counted().marks});
    };
    figures.first->setFocus();
    return question;
}

Question* askStepMeasure(const Moment& moment, const packs::Step& step, record::Payload pass,
                         QWidget* parent) {
    const packs::Measure* measure = packs::find(moment.pack().measures, step.measure->id);
    if (measure == nullptr) return nullptr;
    const bool isLeft = step.measure->when == packs::Taken::Left;
    const QString label = utf(moment.text(measure->label));
    auto* question = new Question(
        isLeft ? Question::tr("%1, as left").arg(label) : Question::tr("%1, as found").arg(label),
        Question::tr("Write it down, go on"), parent);
    question->then = std::move(pass);
    const Rule rule = ruleOf(moment, *measure);
    const Figures figures = addFigures(question, isReadByMarks(step.measure, {rule}));
    QLineEdit* why = question->addLine(Question::tr("Or: why it could not be measured"),
                                       QStringLiteral("measureWhyNot"));
    const auto retell = [=] { figures.retell(&rule); };
    for (QLineEdit* line : {figures.mm, figures.marks})
        QObject::connect(line, &QLineEdit::textChanged, question, retell);
    retell();
    question->onAccept = [=, id = step.id, said = *step.measure, taken = *measure] {
        const QString reason = why->text().trimmed();
        if (figures.isEmpty() == reason.isEmpty())
            return figures.refuse(
                reason.isEmpty()
                    ? Question::tr("Write the figure, or why it could not be measured.")
                    : Question::tr("Either the figure, or why there is none: not both."));
        if (!figures.canBe(taken)) return;
        if (!reason.isEmpty())
            return question->say(practice::MissMeasure{.step = id, .why = reason.toStdString()});
        question->say(practice::TakeMeasure{.measure = said.id,
                                            .moment = momentOf(said.when),
                                            .mm = figures.counted().mm,
                                            .marks = figures.counted().marks,
                                            .step = id});
    };
    figures.first->setFocus();
    return question;
}

}  // namespace ui
