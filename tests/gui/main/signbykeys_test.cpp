// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Somebody signs in, opens a learner who has shown all, and signs with the passphrase, by keys
// alone, in a window of the size it has on a screen of 1366 by 768.
#include <QLabel>
#include <QLineEdit>
#include <QtTest/QTest>

#include "gui/main/sealedentrance.h"
#include "gui/main/settled.h"
#include "main/mainwindow.h"
#include "signin/signinwindow.h"
#include "store/recordfile.h"
#include "support/paths.h"
#include "support/ward.h"

class SignByKeys : public SealedEntrance {
  protected:
    void SetUp() override {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        fill();
        compose();
        begin();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&m_entrance->signIn()));
    }
    /// A learner who has shown and answered everything of the short procedure.
    void fill() {
        const std::string file = store::recordFileIn(m_folder.path().toStdString());
        auto ledger = store::SqlLedger::open(file, store::OpenMode::Real);
        ASSERT_TRUE(ledger.ok());
        support::Ward ward("clean-hands", support::Ward::Record::Sealed, ledger->get());
        ward.demonstrateAsAsked();
        ward.answerAllPrompts();
        m_clock.set(ward.clock().now());
        m_clock.advanceMs(1000);
    }
    QWidget& window() const {
        return m_entrance->window() ? static_cast<QWidget&>(*m_entrance->window())
                                    : m_entrance->signIn();
    }
    QString now() const {
        const QWidget* at = window().focusWidget();
        return at ? at->objectName() : QString();
    }
    QString page() const { return m_entrance->window()->page()->objectName(); }
    void key(Qt::Key key) {
        m_clock.advanceMs(400);
        ASSERT_TRUE(window().focusWidget()) << "nothing has the focus";
        QTest::keyClick(window().focusWidget(), key);
        gui::settle(window());
    }
    void write(const char* words) {
        ASSERT_TRUE(qobject_cast<QLineEdit*>(window().focusWidget())) << now().toStdString();
        QTest::keyClicks(window().focusWidget(), QString::fromLatin1(words));
    }
    void tabTo(const char* name) {
        for (int i = 0; i < 12 && !now().startsWith(QLatin1String(name)); ++i) key(Qt::Key_Tab);
        ASSERT_TRUE(now().startsWith(QLatin1String(name))) << now().toStdString();
    }
    void picture(const char* name) {
        window().grab().toImage().save(QString::fromStdString(support::forLooking(name)));
    }
    bool waited(const std::function<bool()>& isThere) { return QTest::qWaitFor(isThere, 60'000); }
    const QLabel* saying(const char* words) const {
        for (const auto* label : window().findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(QLatin1String(words))) return label;
        return nullptr;
    }
    void comeIn() {
        write("Solveig Aranda");
        key(Qt::Key_Tab);
        write("nine slow herons wade");
        key(Qt::Key_Return);
        ASSERT_TRUE(waited([this] { return m_entrance->window() != nullptr; }));
        window().resize(1280, 728);
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window()));
        gui::settle(window());
    }
};

TEST_F(SignByKeys, FromTheLearnerToTheSignature) {
    comeIn();
    tabTo("card.");
    key(Qt::Key_Return);
    ASSERT_EQ(page(), QStringLiteral("person"));
    EXPECT_EQ(now(), QStringLiteral("person.next"));
    key(Qt::Key_Return);
    ASSERT_EQ(page(), QStringLiteral("sign"));
    tabTo("typedName");
    write("Amara Okonjo");
    key(Qt::Key_Return);
    EXPECT_EQ(now(), QStringLiteral("sign.primary")) << "what can't be taken back waits";
    key(Qt::Key_Space);
    ASSERT_EQ(page(), QStringLiteral("signing"));
    write("nine slow herons wad");
    key(Qt::Key_Return);
    ASSERT_TRUE(waited([this] { return saying("This is not your passphrase") != nullptr; }));
    gui::settle(window());
    picture("sign-keys-wrong.png");
    const QLabel* wrong = saying("This is not your passphrase");
    EXPECT_EQ(wrong->visibleRegion().boundingRect().size(), wrong->size()) << "in sight, whole";
    EXPECT_TRUE(m_entrance->desk()->view().record->learners.front().signOffs.empty());
    m_clock.advanceMs(60'000);
    write("nine slow herons wade");
    key(Qt::Key_Return);
    ASSERT_TRUE(waited([this] { return page() == QLatin1String("papers"); }))
        << now().toStdString();
    const auto& signOffs = m_entrance->desk()->view().record->learners.front().signOffs;
    ASSERT_EQ(signOffs.size(), 1U);
    EXPECT_EQ(signOffs.front().said.acknowledgement.how, record::AcknowledgedBy::Signed);
    gui::settle(window());
    picture("sign-keys-signed.png");
}
