// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/knownfields.h"

#include <QDir>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include "audit/auditwords.h"
#include "dialogs/ask.h"
#include "parts/field.h"
#include "parts/parts.h"

namespace ui {
namespace {

QVBoxLayout* linesOf(QVBoxLayout* column, int spacing) {
    auto* lines = new QVBoxLayout;
    lines->setSpacing(spacing);
    column->addLayout(lines);
    return lines;
}

}  // namespace

KnownFields::KnownFields(QWidget* parent)
    : QWidget(parent),
      m_another(quietButton(tr("Another paper"), QStringLiteral("audit.anotherPaper"))),
      m_choose(quietButton(tr("Add a backup…"), QStringLiteral("audit.addBackup"))),
      m_wrong(text({}, Size::Note, Tone::Brick)) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    m_papers = linesOf(column, 12);
    column->addWidget(m_another, 0, Qt::AlignLeading);
    column->addSpacing(8);
    column->addWidget(text(tr("Backups"), Size::Body, Tone::Ink, Weight::Strong));
    m_files = linesOf(column, 4);
    m_wrong->setObjectName(QStringLiteral("audit.backupProblem"));
    column->addWidget(m_wrong);
    column->addWidget(m_choose, 0, Qt::AlignLeading);
    column->addWidget(text(tr("Of two things that are known, what was rewritten lies behind the "
                              "one that agrees and before the one that does not: the more are "
                              "given, the closer it is named."),
                           Size::Note, Tone::Quiet));
    connect(m_another, &QPushButton::clicked, this, [this] {
        addPaper();
        m_fields.back()->edit()->setFocus();
    });
    connect(m_choose, &QPushButton::clicked, this, &KnownFields::addBackup);
    begin();
}

void KnownFields::begin() {
    empty(m_papers);
    m_fields.clear();
    addPaper();
    m_backups.clear();
    refuseBackups({});
    showBackups();
}

void KnownFields::addPaper() {
    const bool isFirst = m_fields.empty();
    const auto number = m_fields.size() + 1;
    auto* field =
        isFirst ? new WordsField(
                      tr("Letters from a paper, or kept by somebody elsewhere"),
                      QStringLiteral("audit.paper"), Must::MayStayEmpty,
                      tr("They are held against the record. On a paper they stand at the foot of "
                         "each page."))
                : new WordsField(tr("Letters from paper %1").arg(number),
                                 QStringLiteral("audit.paper.%1").arg(number), Must::MayStayEmpty);
    m_fields.push_back(field);
    m_papers->addWidget(field);
}

bool KnownFields::check() {
    bool isGood = true;
    for (WordsField* field : m_fields) isGood = field->check() && isGood;
    return isGood;
}

std::vector<WordsField*> KnownFields::papers() const {
    std::vector<WordsField*> typed;
    for (WordsField* field : m_fields)
        if (!field->typed().isEmpty()) typed.push_back(field);
    return typed;
}

void KnownFields::addBackup() {
    const auto file = ask::openFile(this, tr("Which backup?"));
    if (!file || m_backups.contains(*file)) return;
    m_backups << *file;
    refuseBackups({});
    showBackups();
}

void KnownFields::leaveOut(const QString& file) {
    m_backups.removeAll(file);
    refuseBackups({});
    showBackups();
    m_choose->setFocus();
}

void KnownFields::showBackups() {
    empty(m_files);
    int number = 0;
    for (const QString& file : m_backups) {
        auto* line = new QWidget;
        auto* row = new QHBoxLayout(line);
        row->setContentsMargins(0, 0, 0, 0);
        row->setSpacing(12);
        auto* name = text(breakable(QDir::toNativeSeparators(file)));
        name->setObjectName(QStringLiteral("audit.backup.%1").arg(++number));
        auto* out =
            quietButton(tr("Leave it out"), QStringLiteral("audit.leaveOut.%1").arg(number));
        out->setAccessibleName(tr("Leave out the backup %1").arg(QFileInfo(file).fileName()));
        row->addWidget(name, 1);
        row->addWidget(out, 0, Qt::AlignTop);
        m_files->addWidget(line);
        connect(out, &QPushButton::clicked, this, [this, file] { leaveOut(file); });
    }
    if (m_backups.isEmpty())
        m_files->addWidget(text(tr("None is held against the record."), Size::Body, Tone::Quiet));
}

void KnownFields::refuse(WordsField& paper, const QString& sentence) {
    paper.setProblem(sentence);
    if (!sentence.isEmpty()) paper.edit()->setFocus();
}

void KnownFields::refuseBackups(const QString& sentence) {
    m_wrong->setText(sentence.isEmpty() ? QString() : QStringLiteral("▲ ") + sentence);
    m_wrong->setVisible(!sentence.isEmpty());
    m_choose->setAccessibleDescription(sentence);
}

}  // namespace ui
