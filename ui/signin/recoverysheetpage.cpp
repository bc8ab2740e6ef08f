// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/recoverysheetpage.h"

#include <QFontDatabase>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "print/printing.h"
#include "render/words.h"
#include "signin/sheetlines.h"

namespace ui {
namespace {

constexpr int askedLine = 2;  // counted from 0: not the first, which is typed without looking

}  // namespace

RecoverySheetPage::RecoverySheetPage(QWidget* parent)
    : Page(QStringLiteral("recoverySheet"), parent),
      m_shown(text({}, Size::Title)),
      m_which(text({}, Size::Body, Tone::Quiet)),
      m_back(new WordsField(tr("Type its third line"), QStringLiteral("recoverySheet.line"),
                            Must::Fill,
                            tr("So that the sheet is sure to be in your hands before this "
                               "goes away."))) {
    column()->addWidget(pageHeader(
        tr("The recovery sheet"),
        tr("It opens the record when nobody's passphrase is left. It is shown this once and kept "
           "nowhere. Print it, or write it down, and lock it away from this computer.")));
    QFrame* sheet = frame("card");
    m_shown->setObjectName(QStringLiteral("recoverySheet.lines"));
    m_shown->setTextFormat(Qt::PlainText);
    m_shown->setTextInteractionFlags(Qt::TextSelectableByKeyboard);
    m_shown->setAccessibleName(tr("The four lines of the recovery sheet"));
    QFont even = QFontDatabase::systemFont(QFontDatabase::FixedFont);
    m_shown->setFont(even);
    m_shown->setProperty("even", true);
    QVBoxLayout* inSheet = columnIn(sheet);
    inSheet->addWidget(m_shown);
    m_which->setObjectName(QStringLiteral("recoverySheet.which"));
    inSheet->addWidget(m_which);
    column()->addWidget(sheet);
    column()->addWidget(m_back);
    column()->addWidget(
        text(tr("Whoever has this sheet and this computer reads everything. Without "
                "the sheet and without a passphrase nobody ever reads it again."),
             Size::Note, Tone::Quiet));
    QPushButton* printing =
        addSecondary(tr("Print the sheet"), QStringLiteral("recoverySheet.print"));
    connect(printing, &QPushButton::clicked, this, &RecoverySheetPage::printIt);
    setPrimary(tr("The sheet is in my hands"));
    connect(this, &Page::pressed, this, &RecoverySheetPage::press);
}

void RecoverySheetPage::showLines(seal::Secret lines, const render::SheetMark& mark) {
    m_lines = std::move(lines);
    m_mark = mark;
    m_which->setText(
        tr("Opens the record %1. Made %2.")
            .arg(mark.record, render::momentWords(mark.madeMs, mark.offsetMinutes, QLocale())));
    m_shown->setText(this->lines().join(u'\n'));
}

void RecoverySheetPage::printIt() {
    const render::Paper sheet(render::recoverySheet(lines(), m_mark));
    if (const auto printer = print::ask(sheet.pageKind(), this))
        errors()->took(print::on(*printer, sheet));
}

QStringList RecoverySheetPage::lines() const {
    return QString::fromLatin1(m_lines.view().data(), static_cast<qsizetype>(m_lines.size()))
        .split(u'\n');
}

void RecoverySheetPage::press() {
    const QStringList printed = lines();
    const QString asked = printed.value(askedLine);
    if (asked.isEmpty() || bareLetters(m_back->typed()) != bareLetters(asked)) {
        m_back->setProblem(tr("This is not the third line. Compare it with the sheet."));
        return m_back->edit()->setFocus();
    }
    m_shown->clear();
    m_back->setWords({});
    m_lines = seal::Secret();
    Q_EMIT kept();
}

}  // namespace ui
