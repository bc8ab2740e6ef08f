// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What an auditor is told, in words, of plain values.
#include "audit/auditpage.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableWidget>
#include <QtTest/QTest>
#include <set>

#include "audit/auditwords.h"
#include "audit/knownfields.h"
#include "look.h"
#include "parts/field.h"
#include "seal/papercode.h"

class Auditing : public testing::Test {
  protected:
    Auditing() {
        ui::Look::instance();
        m_page.resize(1000, 760);
        m_page.show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_page));
    }
    QString seen() const {
        QCoreApplication::processEvents();
        QStringList words;
        for (const auto* label : m_page.findChildren<QLabel*>())
            if (label->isVisible()) words << label->text();
        return words.join(u'\n');
    }
    QString verdict() const {
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        const auto* label = m_page.findChild<QLabel*>(QStringLiteral("audit.verdict"));
        return label ? label->text() : QString();
    }
    /// What was done, and below it its code.
    static QString didIn(const QTableWidget& table, int row) {
        return table.item(row, 2)->text().section(u'\n', 0, 0);
    }
    static QString codeIn(const QTableWidget& table, int row) {
        return table.item(row, 2)->text().section(u'\n', 1);
    }
    static proof::Report whole() {
        proof::Report result;
        result.head.size = 412;
        result.signatures = 20;
        result.opened = 412;
        return result;
    }

    ui::AuditPage m_page;
};

TEST_F(Auditing, SaysNothingBeforeItWasVerified) {
    EXPECT_TRUE(verdict().isEmpty());
    EXPECT_TRUE(seen().contains(QLatin1String("Not verified since")));
}

TEST_F(Auditing, VerifiesWithAndWithoutAPaperFromTheKeyboard) {
    QSignalSpy wanted(&m_page, &ui::AuditPage::verifyWanted);
    auto* paper = m_page.findChild<QLineEdit*>(QStringLiteral("audit.paper"));
    QTest::keyClick(paper, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(m_page.known().papers().empty());
    QTest::keyClicks(paper, QStringLiteral("abcde-fghjk"));
    QTest::keyClick(paper, Qt::Key_Return, Qt::ControlModifier);
    ASSERT_EQ(wanted.count(), 2);
    ASSERT_EQ(m_page.known().papers().size(), 1U);
    EXPECT_EQ(m_page.known().papers().front()->words(), "abcde-fghjk");
    m_page.setRunning(true);
    EXPECT_FALSE(m_page.primary()->isEnabled());
    QTest::keyClick(paper, Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(wanted.count(), 2) << "one at a time";
    m_page.showResult(whole());
    EXPECT_TRUE(m_page.primary()->isEnabled());
}

TEST_F(Auditing, NothingWrongIsToldApartFromAsFarAsCanBeSeen) {
    m_page.showResult(whole());
    EXPECT_EQ(verdict(), QString::fromUtf8("✓  Nothing is wrong"));
    EXPECT_TRUE(seen().contains(QLatin1String("412 entries, each hash and each place")));
    EXPECT_FALSE(seen().contains(QLatin1String("stayed closed")));
    proof::Report some = whole();
    some.closed = 3;
    m_page.showResult(some);
    EXPECT_EQ(verdict(),
              QString::fromUtf8("✓  Nothing is wrong, as far as can be seen without every key"));
    EXPECT_TRUE(seen().contains(QLatin1String("3 sealed bodies stayed closed")));
}

// Whoever keeps them elsewhere holds them against the record another time.
TEST_F(Auditing, LettersToBeKeptElsewhereAreOfAWholeRecordAlone) {
    proof::Report result = whole();
    result.head.root = std::string(64, 'c');
    m_page.showResult(result);
    const auto letters = [this] {
        const auto* kept = m_page.findChild<QLabel*>(QStringLiteral("audit.letters"));
        return kept ? kept->text().toStdString() : std::string();
    };
    const auto code = seal::readPaperLetters(letters());
    ASSERT_TRUE(code.ok());
    EXPECT_TRUE(code->fits(result.head));
    result.findings = {{proof::Kind::Gap, 9, 9}};
    m_page.showResult(result);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_EQ(letters(), "");
}

TEST_F(Auditing, WhatIsWrongIsNamedByItsEntriesAndAnErasureIsNotWrong) {
    proof::Report result = whole();
    result.findings = {{proof::Kind::Erased, 9, 9}};
    m_page.showResult(result);
    EXPECT_EQ(verdict(), QString::fromUtf8("✓  Nothing is wrong"));
    EXPECT_TRUE(seen().contains(QLatin1String("Entry 9: erased on purpose")));
    result.findings.push_back({proof::Kind::BadSignature, 17, 17});
    result.findings.push_back({proof::Kind::Rewritten, 20, 41});
    m_page.showResult(result);
    EXPECT_EQ(verdict(), QString::fromUtf8("▲  2 things are wrong"));
    EXPECT_TRUE(seen().contains(QLatin1String("Entry 17: a signature does not hold")));
    EXPECT_TRUE(seen().contains(QLatin1String("Entries 20 to 41: not those that a paper")));
    EXPECT_TRUE(
        seen().contains(QLatin1String("up to entry 19 agrees, and what was known up to "
                                      "entry 41 does not")));
    result.findings.back() = {proof::Kind::Rewritten, 0, 41};
    m_page.showResult(result);
    EXPECT_TRUE(
        seen().contains(QLatin1String("up to entry 41 does not agree, and nothing known "
                                      "before it does")));
}

TEST_F(Auditing, PapersAreCountedAndAWrongOneIsNamedByItsKind) {
    proof::Report result = whole();
    m_page.showResult(result);
    EXPECT_FALSE(seen().contains(QLatin1String("made again"))) << "none could be looked at";
    result.papers = proof::Papers{.checked = 41, .before = 1, .others = 3};
    m_page.showResult(result);
    EXPECT_EQ(verdict(), QString::fromUtf8("✓  Nothing is wrong"));
    EXPECT_TRUE(seen().contains(QLatin1String("41 papers, each made again from the record")));
    EXPECT_TRUE(seen().contains(QLatin1String("1 paper can't be checked: it was issued before")));
    EXPECT_TRUE(seen().contains(QLatin1String("3 papers can't be checked: another version")));
    result.papers = proof::Papers{.checked = 1};
    result.findings = {{proof::Kind::Paper, 17, 17, record::PaperKind::Certificate}};
    m_page.showResult(result);
    EXPECT_EQ(verdict(), QString::fromUtf8("▲  1 thing is wrong"));
    EXPECT_TRUE(
        seen().contains(QLatin1String("Entry 17: a paper was issued, and the record of "
                                      "then shows another one. Paper: Certificate.")));
    EXPECT_FALSE(seen().contains(QLatin1String("be checked")));
}

TEST_F(Auditing, ThousandsAreCountedAndTheFirstListed) {
    proof::Report result = whole();
    for (std::uint64_t i = 0; i < 5000; ++i)
        result.findings.push_back({proof::Kind::Changed, i, i});
    m_page.showResult(result);
    EXPECT_TRUE(verdict().contains(QLatin1String("5000"))) << verdict().toStdString();
    EXPECT_TRUE(seen().contains(QLatin1String("Entry 199: ")));
    EXPECT_FALSE(seen().contains(QLatin1String("Entry 200: ")));
    EXPECT_TRUE(seen().contains(QLatin1String("And 4800 more.")));
}

TEST_F(Auditing, EveryKindHasItsOwnWords) {
    std::set<QString> all;
    for (int kind = 0; kind <= static_cast<int>(proof::Kind::Erased); ++kind) {
        const QString words = ui::auditSentence({static_cast<proof::Kind>(kind), 1, 1});
        EXPECT_TRUE(words.endsWith(u'.')) << words.toStdString();
        all.insert(words);
    }
    EXPECT_EQ(all.size(), static_cast<std::size_t>(proof::Kind::Erased) + 1);
    std::set<QString> acts;
    for (int what = 0; what <= static_cast<int>(record::Use::ReadLog); ++what)
        acts.insert(
            ui::actWords({.said = record::NoteUse{.what = static_cast<record::Use>(what)}}));
    for (const auto& [change, name] : base::Names<record::AccessChange>::all)
        acts.insert(ui::actWords(
            {.said = record::ChangeAccess{.staff = base::StaffId::random(), .what = change}}));
    acts.erase(QString());
    EXPECT_EQ(acts.size(),
              base::Names<record::Use>::all.size() + base::Names<record::AccessChange>::all.size());
}

TEST_F(Auditing, WhoLookedAtAndPrintedWhatStandsInATable) {
    EXPECT_TRUE(seen().contains(QLatin1String("Nothing was looked at yet")));
    const auto line = [](std::int64_t atMs, const record::NoteUse& said, const char* who) {
        return record::UseLine{.said = said,
                               .atMs = atMs,
                               .offsetMinutes = 60,
                               .who = who,
                               .whose = "Rashid Lindqvist"};
    };
    m_page.showLooked(
        {line(1'772'445'600'000, {.what = record::Use::Opened}, "Ilse Marchetti"),
         line(1'772'442'000'000, {.what = record::Use::Printed}, "Kwame Brandt"),
         line(1'772'442'000'000, {.what = record::Use::Saved, .object = "certificate"}, "?")});
    const auto* table = m_page.findChild<QTableWidget*>(QStringLiteral("audit.looked"));
    ASSERT_EQ(table->rowCount(), 3);
    EXPECT_TRUE(table->isVisible());
    EXPECT_TRUE(table->item(0, 0)->text().contains(QLatin1String("2 March 2026")));
    EXPECT_TRUE(table->item(0, 0)->text().contains(QLatin1String("11:00")));
    EXPECT_TRUE(table->item(0, 0)->text().endsWith(QLatin1String("UTC+01:00")));
    EXPECT_EQ(table->item(0, 1)->text(), QLatin1String("Ilse Marchetti"));
    EXPECT_EQ(didIn(*table, 0), QLatin1String("opened the record"));
    EXPECT_EQ(table->item(0, 3)->text(), QLatin1String("Rashid Lindqvist"));
    EXPECT_EQ(codeIn(*table, 0), QLatin1String("110110 Patient Record"));
    EXPECT_EQ(didIn(*table, 1), QLatin1String("printed a paper"));
    EXPECT_EQ(codeIn(*table, 1), QLatin1String("110106 Export"));
    EXPECT_TRUE(didIn(*table, 2).startsWith(QLatin1String("saved a paper: ")));
    m_page.showLooked({line(1'772'445'600'000, {.what = record::Use::SignedIn}, "Ilse Marchetti"),
                       line(1'772'445'600'000, {.what = record::Use::SignedIn, .wrongBefore = 1},
                            "Ilse Marchetti"),
                       line(1'772'445'600'000, {.what = record::Use::SignedIn, .wrongBefore = 3},
                            "Ilse Marchetti")});
    EXPECT_EQ(didIn(*table, 0), QLatin1String("signed in"));
    EXPECT_EQ(
        didIn(*table, 1),
        QLatin1String("signed in; before that 1 wrong passphrase was typed, nobody knows by whom"));
    EXPECT_EQ(didIn(*table, 2),
              QLatin1String(
                  "signed in; before that 3 wrong passphrases were typed, nobody knows by whom"));
    EXPECT_EQ(table->editTriggers(), QAbstractItemView::NoEditTriggers);
}

TEST_F(Auditing, WhoOpenedWithoutAPartInItStandsApartWithTheReason) {
    EXPECT_TRUE(seen().contains(QLatin1String("So far nobody was asked")));
    EXPECT_TRUE(seen().contains(QLatin1String("While a visit of the patient is open nobody is")))
        << "what stands here is not everybody";
    const auto* apart = m_page.findChild<QTableWidget*>(QStringLiteral("audit.broken"));
    EXPECT_FALSE(apart->isVisible());
    const auto line = [](record::Use what, const char* reason) {
        return record::UseLine{.said = record::NoteUse{.what = what, .reason = reason},
                               .atMs = 1'772'445'600'000,
                               .offsetMinutes = 60,
                               .who = "Ilse Marchetti",
                               .whose = "Rashid Lindqvist"};
    };
    m_page.showLooked({line(record::Use::Opened, ""), line(record::Use::BreakGlass, "emergency"),
                       line(record::Use::BreakGlass, "asked by the ward sister"),
                       line(record::Use::BreakGlass, ""), line(record::Use::SignedIn, "")});
    ASSERT_EQ(apart->rowCount(), 3);
    EXPECT_TRUE(apart->isVisible());
    EXPECT_FALSE(seen().contains(QLatin1String("So far nobody was asked")));
    EXPECT_TRUE(apart->item(0, 0)->text().endsWith(QLatin1String("UTC+01:00")));
    EXPECT_EQ(apart->item(0, 1)->text(), QLatin1String("Ilse Marchetti"));
    EXPECT_EQ(apart->item(0, 2)->text(), QLatin1String("Rashid Lindqvist"));
    EXPECT_EQ(apart->item(0, 3)->text(), QLatin1String("It is an emergency"));
    EXPECT_EQ(apart->item(1, 3)->text(), QLatin1String("asked by the ward sister"));
    EXPECT_EQ(apart->item(2, 3)->text(), QLatin1String("Nobody gave a reason"));
    const auto* all = m_page.findChild<QTableWidget*>(QStringLiteral("audit.looked"));
    EXPECT_EQ(all->rowCount(), 5) << "it is in its place in the order of time too";
    for (int row = 0; row < all->rowCount(); ++row)
        for (int column = 0; column < all->columnCount(); ++column)
            EXPECT_FALSE(all->item(row, column)->text().contains(QLatin1String("gave a reason")))
                << "whoever opened what is theirs was asked for none";
    m_page.showLooked({line(record::Use::Opened, "")});
    EXPECT_FALSE(apart->isVisible());
}

// ui.md: a clock filling is of one shade, flat as all that is drawn here.
TEST_F(Auditing, TheBarIsFlatAndOfTheProgramsOwnShades) {
    for (const auto scheme : {ui::SchemeChoice::Light, ui::SchemeChoice::Dark}) {
        ui::Look::instance().apply(scheme, 1.0);
        m_page.setRunning(true);
        m_page.showProgress(50, 100);
        QCoreApplication::processEvents();
        auto* bar = m_page.findChild<QWidget*>(QStringLiteral("audit.bar"));
        const QImage image = bar->grab().toImage();
        const QRgb filled = ui::theme().color(render::Role::Water).rgb();
        const QRgb rest = ui::theme().color(render::Role::Surface).rgb();
        const int quarter = image.width() / 4, edge = 3;
        for (int y = edge; y < image.height() - edge; ++y) {
            EXPECT_EQ(image.pixel(quarter, y), filled) << y;
            EXPECT_EQ(image.pixel(3 * quarter, y), rest) << y;
        }
        EXPECT_GE(image.height(), 20);
    }
    ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
}
