// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "signin/recoverysheetpage.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "parts/parts.h"
#include "print/printing.h"
#include "render/words.h"
#include "signin/passphrasefield.h"
#include "signin/sheetlines.h"

namespace ui {
namespace {

constexpr int askedLine = 2;  // counted from 0: not the first, which is typed without looking

}  // namespace

RecoverySheetPage::RecoverySheetPage(QWidget* parent)
    : Page(QStringLiteral("recoverySheet"), parent),
      m_shown(new LettersLabel(QStringLiteral("recoverySheet.lines"))),
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
    m_shown->setAccessibleName(tr("The four lines of the recovery sheet"));
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
    m_shown->setLetters(std::move(lines));
    m_mark = mark;
    m_which->setText(
        tr("Opens the record %1. Made %2.")
            .arg(mark.record, render::momentWords(mark.madeMs, mark.offsetMinutes, QLocale())));
}

void RecoverySheetPage::printIt() {
    QStringList printed = lines();
    {
        const render::Paper sheet(render::recoverySheet(printed, m_mark));
        if (const auto printer = print::ask(sheet.pageKind(), this))
            errors()->took(print::on(*printer, sheet));
    }
    wipe(printed);
}

QStringList RecoverySheetPage::lines() const {
    const std::string_view letters = m_shown->letters().view();
    QString all = QString::fromLatin1(letters.data(), static_cast<qsizetype>(letters.size()));
    QStringList each = all.split(u'\n');
    wipe(all);
    return each;
}

bool RecoverySheetPage::isTypedBack() const {
    QStringList printed = lines();
    QString asked = bareLetters(printed.value(askedLine));
    QString typed = bareLetters(m_back->typed());
    const bool isIt = !asked.isEmpty() && typed == asked;
    wipe(printed), wipe(asked), wipe(typed);
    return isIt;
}

void RecoverySheetPage::press() {
    if (!isTypedBack()) {
        m_back->setProblem(tr("This is not the third line. Compare it with the sheet."));
        return m_back->edit()->setFocus();
    }
    m_shown->forget();
    overwrite(m_back->edit());
    Q_EMIT kept();
}

}  // namespace ui
