// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The lines of a recovery sheet open everything: once the sheet is in somebody's hands they are
// nowhere in this program's memory. The third is typed, so it passes through the window system.
#include <QAbstractButton>
#include <QFile>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QtTest/QTest>

#include "gui/signin/shownparts.h"
#include "look.h"
#include "print/printing.h"
#include "signin/recoverysheetpage.h"
#include "support/ownmemory.h"

namespace {

using support::Masked;

constexpr std::size_t lineLetters = 11;  // with the dash

/// Four lines that nothing else in memory can hold by chance.
seal::Secret someLines() {
    seal::Secret lines = seal::Secret::random(4 * (lineLetters + 1) - 1);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const std::size_t column = i % (lineLetters + 1);
        unsigned char& letter = lines.data()[i];
        letter = column == lineLetters ? '\n' : column == 5 ? '-' : 'A' + letter % 26;
    }
    return lines;
}

class SheetInMemory : public testing::Test {
  protected:
    void SetUp() override {
        ui::Look::instance();
        seal::Secret lines = someLines();
        for (const std::size_t line : {0, 1, 3})
            m_lines.emplace_back(lines, line * (lineLetters + 1), lineLetters);
        m_page.showLines(std::move(lines), {QStringLiteral("ABCD-EFGH"), 1'764'000'000'000, 60});
        m_page.resize(900, 760);
        m_page.show();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&m_page));
        EXPECT_FALSE(m_page.grab().isNull());
    }
    void expectShownByLettersAlone() {
        for (const Masked& line : m_lines) {
            EXPECT_GE(m_memory.placesOf(line), 1) << "it can be found";
            EXPECT_EQ(m_memory.placesOf(line.wide()), 0) << "no text of it is made";
        }
    }
    void keepIt() {
        const auto* shown = m_page.findChild<ui::LettersLabel*>();
        gui::typeInto(m_page, "recoverySheet.line",
                      QString::fromStdString(
                          std::string(shown->letters().part(2 * (lineLetters + 1), lineLetters))));
        QSignalSpy kept(&m_page, &ui::RecoverySheetPage::kept);
        press("recoverySheet.primary");
        EXPECT_EQ(kept.count(), 1);
    }
    void press(const char* name) {
        gui::shownPart<QAbstractButton>(m_page, QString::fromLatin1(name))->click();
        QCoreApplication::processEvents();
    }
    void expectNowhere() {
        for (const Masked& line : m_lines) {
            EXPECT_EQ(m_memory.placesOf(line), 0);
            EXPECT_EQ(m_memory.placesOf(line.wide()), 0);
        }
    }

    std::vector<Masked> m_lines;  ///< but the third
    ui::RecoverySheetPage m_page;
    support::OwnMemory m_memory;
    QTemporaryDir m_folder;
};

TEST_F(SheetInMemory, IsNowhereOnceItIsInSomebodysHands) {
    expectShownByLettersAlone();
    keepIt();
    expectNowhere();
}

TEST_F(SheetInMemory, IsNowhereAfterItWasPrintedToo) {
    const QString file = m_folder.filePath(QStringLiteral("sheet.pdf"));
    ui::print::answerNext(file);
    press("recoverySheet.print");
    EXPECT_TRUE(QFile::exists(file));
    keepIt();
    expectNowhere();
}

}  // namespace
