// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QIntValidator>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <cstdlib>

#include "packs/baseline.h"
#include "pieces/lapsewords.h"
#include "pieces/picklist.h"
#include "pieces/pressbutton.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"
#include "visit/question.h"

namespace ui {

using render::Role;

namespace {

/// What it was when the line was put in, in the measure's unit.
std::optional<int> whenPutIn(const Moment& moment, const packs::Measure& measure) {
    const record::Line* line = moment.record().line(moment.opened().line);
    if (line == nullptr) return std::nullopt;
    switch (packs::baselineOf(measure)) {
        case packs::Baseline::OutsideLength:
            return line->said.outsideMm;
        case packs::Baseline::ArmGirth:
            return line->said.girthMm;
        case packs::Baseline::None:
            break;
    }
    return std::nullopt;
}

bool isBeyond(const packs::Measure& measure, int change, int limit) {
    switch (measure.way) {
        case packs::Way::Out:
        case packs::Way::More:
            return change >= limit;
        case packs::Way::In:
            return -change >= limit;
        case packs::Way::Either:
            return std::abs(change) >= limit;
    }
    return false;
}

struct Rule {
    packs::Measure measure;
    std::optional<int> baseline;
    QString call;
};

/// What the rule says to this reading; empty when it says nothing.
QString ruleWords(const Rule& rule, int reading) {
    if (!rule.baseline) return {};
    const int change = reading - *rule.baseline;
    const QString moved = Question::tr("%1 mm, %2 mm when the line was put in: changed by %3 mm.")
                              .arg(reading)
                              .arg(*rule.baseline)
                              .arg(std::abs(change));
    const auto& measure = rule.measure;
    if (measure.callAt && isBeyond(measure, change, *measure.callAt)) {
        const bool isOfLine = packs::baselineOf(measure) == packs::Baseline::OutsideLength;
        const QString line = isOfLine ? Question::tr(
                                            " Finish the change. Never push the line in. Do not "
                                            "use it until you are told.")
                                      : QString();
        return moved + line + QLatin1Char(' ') + Question::tr("Call: %1").arg(rule.call);
    }
    if (measure.tellAt && isBeyond(measure, change, *measure.tellAt))
        return moved + QLatin1Char(' ') + Question::tr("Tell the team.");
    return moved;
}

bool isOverLimit(const Rule& rule, int reading) {
    return rule.baseline && rule.measure.callAt &&
           isBeyond(rule.measure, reading - *rule.baseline, *rule.measure.callAt);
}

/// A field with the words above it.
void showLine(QLineEdit* line, bool isShown) {
    for (QLabel* label : line->parentWidget()->findChildren<QLabel*>())
        if (label->buddy() == line) label->setVisible(isShown);
    line->setVisible(isShown);
    if (!isShown) line->clear();
}

QLineEdit* numberLine(Question* question, const QString& name, const QString& objectName) {
    QLineEdit* line = question->addLine(name, objectName);
    line->setValidator(new QIntValidator(0, 999, line));
    line->setInputMethodHints(Qt::ImhDigitsOnly);
    return line;
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
        rules.push_back(
            {measure, whenPutIn(moment, measure), whomToCall(moment, packs::Call::TeamToday)});
    }
    which->setEntries(entries);
    auto* when = new PickList(PickList::Many::One, QStringLiteral("measureWhen"), question);
    when->setEntries({{QStringLiteral("found"), Question::tr("As found")},
                      {QStringLiteral("left"), Question::tr("As left")}});
    when->choose(QStringLiteral("found"));
    question->room()->addWidget(which);
    question->room()->addWidget(when);
    QLineEdit* mm = numberLine(question, Question::tr("Millimetres"), QStringLiteral("measureMm"));
    Words* said = question->addWords({}, Role::Ink);
    said->setObjectName(QStringLiteral("measureRule"));
    QLineEdit* marks = numberLine(question, Question::tr("Marks in view, where the line has marks"),
                                  QStringLiteral("measureMarks"));
    const auto ruleNow = [=]() -> const Rule* {
        for (const Rule& rule : rules)
            if (utf(rule.measure.id) == which->one()) return &rule;
        return nullptr;
    };
    const auto retell = [=] {
        const Rule* rule = ruleNow();
        showLine(marks, rule != nullptr && rule->measure.markMm.has_value());
        if (rule == nullptr || mm->text().isEmpty()) return said->say({});
        said->setRole(isOverLimit(*rule, mm->text().toInt()) ? Role::Brick : Role::QuietInk);
        said->say(ruleWords(*rule, mm->text().toInt()));
        // What the rule says must not be below the edge; once the words have their place.
        QMetaObject::invokeMethod(
            said, [said] { bringIntoView(said); }, Qt::QueuedConnection);
    };
    QObject::connect(mm, &QLineEdit::textChanged, question, retell);
    QObject::connect(which, &PickList::changed, question, retell);
    if (!entries.empty()) which->choose(entries.front().id);
    question->onAccept = [=] {
        if (mm->text().isEmpty() && marks->text().isEmpty()) {
            said->setRole(Role::Brick);
            return said->say(Question::tr("Write the millimetres, or count the marks."));
        }
        practice::TakeMeasure taken{.measure = which->one().toStdString()};
        taken.moment =
            when->one() == QLatin1String("left") ? practice::Moment::Left : practice::Moment::Found;
        if (!mm->text().isEmpty()) taken.mm = mm->text().toInt();
        if (!marks->text().isEmpty()) taken.marks = marks->text().toInt();
        question->say(taken);
    };
    mm->setFocus();
    return question;
}

}  // namespace ui
