// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What leaves as paper or file is in the record as issued, and nothing else is.
#include "papers/paperspage.h"

#include <QAbstractButton>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QRegularExpression>
#include <QtTest/QTest>

#include "dialogs/ask.h"
#include "gui/main/shell_fixture.h"
#include "papers/makepaper.h"
#include "print/printing.h"
#include "seal/papercode.h"

class PapersPageTest : public Shell {
  protected:
    void beginAtPapers() {
        begin(Begin::DemoWard);
        ASSERT_TRUE(m_desk->lookFor("okonjo").ok());
        const auto card = m_desk->view().cards.front();
        ASSERT_TRUE(m_desk->openRecord(card.patient, card.learner).ok());
        m_window->go(ui::Place::Papers);
        QCoreApplication::processEvents();
    }
    QString file(const char* name) const { return m_folder.filePath(QString::fromLatin1(name)); }
    bool says(const QString& sentence) const {
        for (const QLabel* label : m_window->page()->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(sentence)) return true;
        return false;
    }
    qsizetype issued() const { return types().count(QStringLiteral("paper-issued")); }
};

TEST_F(PapersPageTest, APrintThatIsCancelledIsNotIssued) {
    beginAtPapers();
    const auto before = entries().size();
    ui::print::answerNext({});
    press("papers.print");
    EXPECT_EQ(entries().size(), before);
    EXPECT_FALSE(says(QStringLiteral("Printed")));
    ui::ask::answerNext({});
    press("papers.primary");
    EXPECT_EQ(entries().size(), before);
    EXPECT_FALSE(says(QStringLiteral("Saved")));
}

TEST_F(PapersPageTest, WhatIsPrintedOrSavedIsIssuedOnce) {
    beginAtPapers();
    const auto before = issued();
    ui::print::answerNext(file("printed.pdf"));
    press("papers.print");
    EXPECT_EQ(issued(), before + 1);
    EXPECT_GT(QFileInfo(file("printed.pdf")).size(), 1000);
    EXPECT_TRUE(says(QStringLiteral("Printed and noted")));
    ui::ask::answerNext(file("saved.pdf"));
    press("papers.primary");
    EXPECT_EQ(issued(), before + 2);
    EXPECT_GT(QFileInfo(file("saved.pdf")).size(), 1000);
    EXPECT_TRUE(says(QStringLiteral("Saved as saved.pdf")));
    EXPECT_EQ(entries().back().body.data["kind"], "chart");
}

// Who cuts the paper's own entry off has another ledger than the paper says.
TEST_F(PapersPageTest, ThePaperSaysTheLedgerWithItsOwnEntry) {
    beginAtPapers();
    for (const auto kind : {record::PaperKind::Chart, record::PaperKind::ChartNote}) {
        const auto before = m_desk->view().head;
        auto paper = ui::makePaper(*m_desk, kind, render::PageKind::A4);
        ASSERT_TRUE(paper.has_value());
        EXPECT_FALSE(paper->data.issuedAs.has_value());
        const auto data = paper->data;
        ASSERT_TRUE(ui::issue(*m_desk, *paper).ok());
        EXPECT_EQ(types().last(), QStringLiteral("paper-issued"));
        EXPECT_EQ(paper->data.issuedAs, m_desk->view().head);
        EXPECT_EQ(paper->data.issuedAs->size, before.size + 1);
        EXPECT_EQ(entries().back().body.data["digest"], render::digestOf(data));
        EXPECT_EQ(render::digestOf(paper->data), render::digestOf(data)) << "its code is no part";
        const auto letters = seal::paperLetters(m_desk->view().head);
        const QString lastLine = QString::fromStdString(*letters).section(QLatin1Char('\n'), -1);
        if (kind == record::PaperKind::ChartNote) {
            EXPECT_TRUE(paper->note.contains(lastLine));
        }
    }
}

// It was issued before it was known that nothing comes out: the page says both.
TEST_F(PapersPageTest, WhatDoesNotComeOutIsSaidBesideWhatWasRecorded) {
    beginAtPapers();
    const auto before = issued();
    ui::print::answerNext(file("no-such-folder/printed.pdf"));
    press("papers.print");
    EXPECT_EQ(issued(), before + 1);
    EXPECT_TRUE(says(QStringLiteral("Recorded as issued, but not printed")));
    EXPECT_FALSE(says(QStringLiteral("Printed and noted")));
    ui::ask::answerNext(file("no-such-folder/saved.pdf"));
    press("papers.primary");
    EXPECT_EQ(issued(), before + 2);
    EXPECT_TRUE(says(QStringLiteral("Recorded as issued, but not saved")));
    EXPECT_FALSE(says(QStringLiteral("Saved as")));
    picture("30-issued-not-saved");
}

// US Letter is 8.5 by 11 inches (ANSI/ASME Y14.1, size A), A4 210 by 297 mm (ISO 216), in points.
TEST_F(PapersPageTest, TheSizeThatIsChosenIsTheSizeOfThePages) {
    beginAtPapers();
    const std::tuple<const char*, double, double> sizes[] = {{"paperSize.Letter", 612, 792},
                                                             {"paperSize.A4", 595.3, 841.9}};
    for (const auto& [button, width, height] : sizes) {
        press(button);
        ui::ask::answerNext(file(button));
        press("papers.primary");
        QFile pdf(file(button));
        ASSERT_TRUE(pdf.open(QIODevice::ReadOnly)) << button;
        static const QRegularExpression box(
            QStringLiteral("/MediaBox \\[\\s*0 0 ([0-9.]+) ([0-9.]+)"));
        const auto found = box.match(QString::fromLatin1(pdf.readAll()));
        ASSERT_TRUE(found.hasMatch()) << button;
        EXPECT_NEAR(found.captured(1).toDouble(), width, 1) << button;
        EXPECT_NEAR(found.captured(2).toDouble(), height, 1) << button;
    }
    press("paperSize.Letter");
    m_window->go(ui::Place::Learners);
    m_window->go(ui::Place::Papers);
    EXPECT_TRUE(qobject_cast<QAbstractButton*>(find("paperSize.Letter"))->isChecked());
}
