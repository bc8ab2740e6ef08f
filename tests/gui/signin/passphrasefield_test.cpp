// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is typed into a field for a passphrase goes nowhere but into the secret that is taken.
#include "signin/passphrasefield.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QCheckBox>
#include <QClipboard>
#include <QGuiApplication>
#include <QtTest/QTest>

#include "look.h"

class TypedPassphrase : public testing::Test {
  protected:
    TypedPassphrase() {
        ui::Look::instance();
        m_field = std::make_unique<ui::PassphraseField>(QStringLiteral("Passphrase"),
                                                        QStringLiteral("one"));
        m_field->show();
        EXPECT_TRUE(QTest::qWaitForWindowActive(m_field.get()));
        edit()->setFocus();
    }
    ~TypedPassphrase() override { qInstallMessageHandler(nullptr); }
    QLineEdit* edit() const { return m_field->edit(); }
    void showIt() { m_field->findChild<QCheckBox*>()->setChecked(true); }
    void typeIt() { QTest::keyClicks(edit(), QString::fromLatin1(typed)); }

    static constexpr const char* typed = "four tall words";
    std::unique_ptr<ui::PassphraseField> m_field;
};

namespace {

QStringList g_logged;  // handlers are plain functions

void hearLog(QtMsgType, const QMessageLogContext&, const QString& line) { g_logged << line; }

}  // namespace

TEST_F(TypedPassphrase, IsNotCopiedCutOrSelectedIntoAClipboard) {
    QClipboard* clipboard = QGuiApplication::clipboard();
    clipboard->setText(QStringLiteral("before"));
    showIt();
    typeIt();
    for (const auto keys : {QKeySequence::SelectAll, QKeySequence::Copy, QKeySequence::Cut})
        QTest::keySequence(edit(), QKeySequence(keys));
    QTest::mouseDClick(edit(), Qt::LeftButton);
    QTest::keySequence(edit(), QKeySequence(QKeySequence::Copy));
    EXPECT_EQ(clipboard->text(), QLatin1String("before"));
    EXPECT_EQ(edit()->text(), QLatin1String(typed)) << "nor was it cut";
    EXPECT_EQ(edit()->contextMenuPolicy(), Qt::NoContextMenu);
}

// NIST SP 800-63B-4 (2025), 3.1.1.2: paste is allowed, for those who keep passphrases in a safe.
TEST_F(TypedPassphrase, CanBePasted) {
    QGuiApplication::clipboard()->setText(QString::fromLatin1(typed));
    QTest::keySequence(edit(), QKeySequence(QKeySequence::Paste));
    EXPECT_TRUE(m_field->take().equals(typed));
}

TEST_F(TypedPassphrase, IsGoneOnceTakenAndNoUndoBringsItBack) {
    showIt();
    typeIt();
    ASSERT_TRUE(edit()->isUndoAvailable()) << "while it is shown a slip can be undone";
    EXPECT_TRUE(m_field->take().equals(typed));
    EXPECT_TRUE(m_field->isEmpty());
    EXPECT_FALSE(edit()->isUndoAvailable());
    QTest::keySequence(edit(), QKeySequence(QKeySequence::Undo));
    QTest::keySequence(edit(), QKeySequence(QKeySequence::Redo));
    EXPECT_TRUE(edit()->text().isEmpty());
}

TEST_F(TypedPassphrase, AScreenReaderIsToldHowManyLettersNotWhich) {
    for (const bool isShown : {false, true}) {
        if (isShown) showIt();
        edit()->clear();
        typeIt();
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(edit());
        ASSERT_NE(face, nullptr);
        EXPECT_EQ(face->text(QAccessible::Value), QString(15, u'●'));
        EXPECT_EQ(face->text(QAccessible::Name), QLatin1String("Passphrase"));
        EXPECT_TRUE(face->state().passwordEdit);
        EXPECT_EQ(face->textInterface(), nullptr);
    }
}

TEST_F(TypedPassphrase, LogsDoNotSpellIt) {
    qInstallMessageHandler(hearLog);
    qWarning("a log is heard");
    ASSERT_EQ(g_logged, QStringList{QStringLiteral("a log is heard")});
    for (const bool isShown : {false, true}) {
        if (isShown) showIt();
        typeIt();
        QTest::keyClick(edit(), Qt::Key_Backspace);
        m_field->setProblem(QStringLiteral("Wrong."));
        EXPECT_TRUE(m_field->take().equals("four tall word"));
    }
    for (const char* part : {"four", "tall", "word"})
        EXPECT_FALSE(g_logged.join(u' ').contains(QLatin1String(part))) << part;
}

TEST_F(TypedPassphrase, AWrongOneIsSaidAtTheLineItself) {
    typeIt();
    m_field->refuse({base::Code::SealWrongPassphrase});
    EXPECT_TRUE(m_field->isEmpty());
    EXPECT_TRUE(edit()->property("wrong").toBool());
    EXPECT_EQ(edit()->accessibleDescription(), m_field->problem());
    EXPECT_TRUE(m_field->problem().contains(QLatin1String("not your passphrase")));
    QTest::keyClick(edit(), Qt::Key_A);
    EXPECT_TRUE(m_field->problem().isEmpty()) << "typing takes the sentence away";
}
