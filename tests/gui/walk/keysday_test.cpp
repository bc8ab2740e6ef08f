// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// A day as it is met without a mouse: Tab, arrows, Space, Enter and what is typed, each sent to
// what has the focus. Nothing is put in focus but by a key.
#include <QAbstractButton>
#include <QLineEdit>
#include <QtTest/QTest>

#include "gui/main/settled.h"
#include "gui/main/shell_fixture.h"

class KeysDay : public Shell {
  protected:
    QString now() const {
        const QWidget* widget = m_window->focusWidget();
        return widget ? widget->objectName() : QString();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        m_clock.advanceMs(400);
        ASSERT_TRUE(m_window->focusWidget()) << "nothing has the focus";
        QTest::keyClick(m_window->focusWidget(), key, with);
        gui::settle(*m_window);
    }
    /// By Tab alone, in at most `most` presses.
    void tabTo(const QString& beginning, int most) {
        for (int i = 0; i <= most; ++i) {
            if (now().startsWith(beginning)) return;
            key(Qt::Key_Tab);
        }
        FAIL() << beginning.toStdString() << " is not reached; at " << now().toStdString();
    }
    void write(const char* words) {
        ASSERT_TRUE(qobject_cast<QLineEdit*>(m_window->focusWidget()))
            << words << " typed at " << now().toStdString();
        QTest::keyClicks(m_window->focusWidget(), QString::fromLatin1(words));
    }
    void fill(const char* name, const char* words, int most = 12) {
        tabTo(QString::fromLatin1(name), most);
        write(words);
    }
    /// One of a choice: Tab to it, then arrows, then Space.
    void choose(const char* choice, const char* word, int most = 12) {
        const QString wanted = QString::fromLatin1(choice) + u'.' + QString::fromLatin1(word);
        tabTo(QString::fromLatin1(choice) + u'.', most);
        // Tab comes to the chosen one, which may stand on either side.
        for (int i = 0; i < 40 && now() != wanted; ++i) key(i < 20 ? Qt::Key_Right : Qt::Key_Left);
        ASSERT_EQ(now(), wanted);
        auto* button = qobject_cast<QAbstractButton*>(m_window->focusWidget());
        if (!button->isChecked()) key(Qt::Key_Space);
        EXPECT_TRUE(button->isChecked());
    }
    /// One of several: Tab to each, Space.
    void tick(const char* name, int most = 40) {
        tabTo(QString::fromLatin1(name), most);
        ASSERT_EQ(now(), QLatin1String(name));
        key(Qt::Key_Space);
    }
    void done() { key(Qt::Key_Return, Qt::ControlModifier); }

    void comeToWork() {
        fill("staffName", "Ilse Marchetti");
        fill("initials", "IM");
        done();
    }
    void addPeople() {
        key(Qt::Key_1, Qt::AltModifier);
        tabTo(QStringLiteral("addFirstPatient"), 20);
        key(Qt::Key_Return);
        fill("patientName", "Teodor Okonjo");
        fill("born", "3 May 1961");
        fill("number", "N-1042");
        tick("allergies.none-known");
        done();
        choose("lineKind", "picc", 0);
        choose("arm", "right");
        fill("inserted", "22 February 2026");
        fill("outside", "40");
        done();
        fill("learnerName", "Amara Okonjo");
        choose("relationship", "wife");
        tick("consent.teach");
        fill("givenBy", "The patient");
        tick("barriers.none-found");
        choose("interpreterNeeded", "no");
        done();
    }
    void begin(const char* from, const char* way) {
        tabTo(QString::fromLatin1(from), 12);
        key(Qt::Key_Return);
        tick("identifiers.name", 0);
        tick("identifiers.born");
        tick("checked.yes");
        choose("way", way);
        choose("on", "practice-arm");
        choose("kitDressing", "transparent");
        choose("kitSecurement", "adhesive-device");
        choose("kitAntiseptic", "chlorhexidine-alcohol");
        choose("homeKit", "yes");
        for (const procedure::TaughtPtr& taught : m_shelf->current())
            if (taught->pack.id == "clean-hands") choose("pack", taught->digest.c_str());
        done();
    }
    void doVisit() {
        for (int i = 0; i < 60 && m_desk->view().openVisit; ++i) {
            const record::Visit* visit = m_desk->view().visit();
            if (const auto* phase = practice::phaseToDo(visit->taught->pack, visit->state)) {
                key(Qt::Key_Space);
                m_clock.advanceMs(phase->targetSeconds * 1000);
            }
            key(Qt::Key_Space);
        }
    }
    void answer() {
        for (int i = 0; i < 60 && !now().startsWith(QStringLiteral("drill-")) &&
                        now() != QLatin1String("how.signed");
             ++i) {
            if (now().startsWith(QStringLiteral("points.")))
                key(Qt::Key_Space), key(Qt::Key_Tab);
            else if (now() == QLatin1String("nextQuestion"))
                key(Qt::Key_Return);
            else
                done();
            if (HasFatalFailure()) return;
        }
    }
};

TEST_F(KeysDay, FromAnEmptyWardToASignedPaper) {
    Shell::begin(Begin::Empty);
    comeToWork();
    addPeople();
    ASSERT_EQ(types().last(), QStringLiteral("needs-asked"));
    for (const char* from : {"person.next", "person.start"}) {
        begin(from, "return-demonstration");
        ASSERT_TRUE(m_desk->view().openVisit) << now().toStdString();
        doVisit();
        ASSERT_FALSE(m_desk->view().openVisit) << now().toStdString();
        key(Qt::Key_1, Qt::AltModifier);
        key(Qt::Key_Return);
    }
    key(Qt::Key_3, Qt::AltModifier);
    answer();
    key(Qt::Key_4, Qt::AltModifier);
    picture("40-keys-sign");
    EXPECT_EQ(now(), QStringLiteral("how.signed"));
    choose("how", "voice", 12);
    done();
    ASSERT_EQ(types().last(), QStringLiteral("signed-off"));
    key(Qt::Key_5, Qt::AltModifier);
    picture("41-keys-papers");
    EXPECT_TRUE(now().startsWith(QStringLiteral("paperKind."))) << now().toStdString();
    choose("paperKind", "certificate", 12);
    key(Qt::Key_F7);
    EXPECT_EQ(types().last(), QStringLiteral("paper-issued"));
}
