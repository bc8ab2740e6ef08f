// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "audit/lookedtables.h"

#include <QHeaderView>
#include <QLocale>
#include <QTableWidget>
#include <QVBoxLayout>

#include "audit/auditpage.h"
#include "audit/auditwords.h"
#include "look.h"
#include "parts/parts.h"
#include "render/words.h"
#include "text/reasontext.h"

namespace ui {
namespace {

QTableWidget* logTable(const QString& objectName, const QString& name, const QStringList& heads) {
    auto* table = new QTableWidget(0, static_cast<int>(heads.size()));
    table->setObjectName(objectName);
    table->setAccessibleName(name);
    table->setHorizontalHeaderLabels(heads);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeading | Qt::AlignVCenter);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setWordWrap(true);
    // Once the letters have their new size: else what wraps is cut off.
    QObject::connect(&Look::instance(), &Look::changed, table, &QTableView::resizeRowsToContents,
                     Qt::QueuedConnection);
    return table;
}

void fillLogRow(QTableWidget* table, int row, const QStringList& words) {
    for (int column = 0; column < words.size(); ++column)
        table->setItem(row, column, new QTableWidgetItem(words[column]));
}

QString whenUsed(const record::UseLine& used) {
    return render::momentWords(used.atMs, used.offsetMinutes, QLocale()) + QStringLiteral(" ") +
           render::offsetWords(used.offsetMinutes);
}

}  // namespace

LookedTables::LookedTables(QVBoxLayout* column) {
    QVBoxLayout* apart =
        cardIn(column, AuditPage::tr("Opened by somebody with no part in it"),
               AuditPage::tr("Who opens a record with no part in it is asked why. Whether "
                             "what they say holds is for people to say. While a visit of the "
                             "patient is open nobody is asked: who opened the record then "
                             "stands only in the list below."));
    m_noneBroken = text(AuditPage::tr("So far nobody was asked why they open a record."),
                        Size::Body, Tone::Quiet);
    m_broken = logTable(QStringLiteral("audit.broken"),
                        AuditPage::tr("Opened by somebody with no part in it"),
                        {AuditPage::tr("When"), AuditPage::tr("Who"), AuditPage::tr("Of whom"),
                         AuditPage::tr("Why")});
    m_broken->setMinimumHeight(160);
    apart->addWidget(m_noneBroken);
    apart->addWidget(m_broken);
    QVBoxLayout* card = cardIn(
        column, AuditPage::tr("Who looked at and printed what"),
        AuditPage::tr("Below what was done stands the code by which other systems know it, of the "
                      "audit messages of DICOM."));
    m_nobody = text(
        AuditPage::tr("Nothing was looked at yet. Every sign-in, every record that is opened and "
                      "every paper that is made will stand here."),
        Size::Body, Tone::Quiet);
    m_table =
        logTable(QStringLiteral("audit.looked"), AuditPage::tr("Who looked at and printed what"),
                 {AuditPage::tr("When"), AuditPage::tr("Who"), AuditPage::tr("Did what"),
                  AuditPage::tr("Of whom")});
    m_table->setMinimumHeight(280);
    card->addWidget(m_nobody);
    card->addWidget(m_table);
    show({});
}

void LookedTables::show(const std::vector<record::UseLine>& log) {
    m_nobody->setVisible(log.empty());
    m_table->setVisible(!log.empty());
    m_table->setRowCount(static_cast<int>(log.size()));
    int row = 0;
    for (const record::UseLine& one : log)
        fillLogRow(m_table, row++,
                   {whenUsed(one), render::plain(one.who),
                    actWords(one) + QLatin1Char('\n') + codeWords(record::eventCodeOf(one)),
                    render::plain(one.whose)});
    m_table->resizeRowsToContents();
    if (!log.empty()) m_table->setCurrentCell(0, 0);
    showBroken(log);
}

void LookedTables::showBroken(const std::vector<record::UseLine>& log) {
    m_broken->setRowCount(0);
    for (const record::UseLine& one : log) {
        const record::NoteUse* use = one.use();
        if (!use || use->what != record::Use::BreakGlass) continue;
        const QString why = ReasonText::of(use->reason);
        const int row = m_broken->rowCount();
        m_broken->insertRow(row);
        fillLogRow(m_broken, row,
                   {whenUsed(one), render::plain(one.who), render::plain(one.whose),
                    why.isEmpty() ? AuditPage::tr("Nobody gave a reason") : why});
    }
    m_broken->resizeRowsToContents();
    m_broken->setVisible(m_broken->rowCount() > 0);
    m_noneBroken->setVisible(m_broken->rowCount() == 0);
    if (m_broken->rowCount() > 0) m_broken->setCurrentCell(0, 0);
}

}  // namespace ui
