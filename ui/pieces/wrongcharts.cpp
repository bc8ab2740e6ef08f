// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/wrongcharts.h"

#include <QCoreApplication>
#include <QVBoxLayout>

#include "parts/page.h"
#include "parts/parts.h"
#include "render/words.h"

namespace ui {
namespace {

struct WrongCharts {
    Q_DECLARE_TR_FUNCTIONS(WrongCharts)
};

QString momentOf(const record::Origin& origin) {
    return render::momentWords(origin.atMs, origin.offsetMinutes, QLocale());
}

QString wholeOf(const record::Record& record, const record::Visit& visit) {
    const record::Learner* learner = record.learner(visit.opened.learner);
    const std::string name = !learner                  ? std::string()
                             : learner->said.isPatient ? record.patient.name
                                                       : learner->said.name;
    return WrongCharts::tr("%1: %2, %3, taught: %4", "a visit, its way, on whom, who was taught")
        .arg(visitName(visit.origin), render::wayWords(visit.opened.way),
             render::onWords(visit.opened.on), render::isolated(render::plain(name)));
}

QString named(const QString& name, const std::string& words) {
    return WrongCharts::tr("%1: %2", "an entry, and what it says")
        .arg(name, render::isolated(render::plain(words)));
}

/// The entry in words; empty: the record has none of this id that can be marked.
QString wholeOf(const record::Record& record, const base::CommandId& entry) {
    for (const record::Visit& visit : record.visits)
        if (visit.origin.entry == entry) return wholeOf(record, visit);
    for (const auto& late : record.lateEntries)
        if (late.origin.entry == entry) return named(lateName(late.origin), late.said.text);
    for (const record::Learner& learner : record.learners)
        for (const auto& act : learner.signOffs)
            if (act.origin.entry == entry)
                return named(signatureName(act.origin), act.said.statement);
    return {};
}

QLabel* struck(const QString& words) {
    QLabel* label = text(words, Size::Body, Tone::Quiet);
    QFont font;
    font.setStrikeOut(true);  // the rest is the style sheet's
    label->setFont(font);
    label->setAccessibleDescription(WrongCharts::tr("struck out"));
    return label;
}

}  // namespace

QString visitName(const record::Origin& opened) {
    return WrongCharts::tr("Visit of %1").arg(momentOf(opened));
}

QString signatureName(const record::Origin& signedThen) {
    return WrongCharts::tr("Signature of %1").arg(momentOf(signedThen));
}

QString lateName(const record::Origin& happened) {
    return WrongCharts::tr("Late entry about %1").arg(momentOf(happened));
}

QString markWords(const desk::RecordView& view,
                  const record::Stated<record::MarkWrongChart>& mark) {
    const record::Staff* who = mark.origin.by ? view.house.person(*mark.origin.by) : nullptr;
    return WrongCharts::tr("Written in the wrong chart by mistake, marked by %1 on %2 (%3): %4")
        .arg(who ? render::isolated(render::plain(who->said.name)) : WrongCharts::tr("unknown"),
             momentOf(mark.origin), render::offsetWords(mark.origin.offsetMinutes),
             render::isolated(render::plain(mark.said.why)));
}

void addWrongCharts(QVBoxLayout* column, const desk::RecordView& view) {
    if (!view.record || view.record->wrongCharts.empty()) return;
    QVBoxLayout* card =
        cardIn(column, WrongCharts::tr("Written in the wrong chart"),
               WrongCharts::tr("What is struck out stays readable and counts for nothing here."));
    for (const auto& mark : view.record->wrongCharts) {
        const QString whole = wholeOf(*view.record, mark.said.to);
        if (whole.isEmpty()) continue;
        QVBoxLayout* lines = linesIn(card);
        const QString entry = QString::fromStdString(mark.said.to.text());
        QLabel* what = struck(whole);
        what->setObjectName(QStringLiteral("struck.") + entry);
        QLabel* says = text(QStringLiteral("✕  ") + markWords(view, mark), Size::Body);
        says->setObjectName(QStringLiteral("mark.") + entry);
        lines->addWidget(what);
        lines->addWidget(says);
    }
}

}  // namespace ui
