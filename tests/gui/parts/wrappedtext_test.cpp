// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What is kept of a label's sizes is what a plain label of the same words and letters answers.
#include "parts/wrappedtext.h"

#include <gtest/gtest.h>

#include <QVBoxLayout>
#include <functional>

#include "look.h"
#include "parts/parts.h"

class Wrapping : public testing::Test {
  protected:
    Wrapping() : m_kept(ui::text(words(), ui::Size::Lead)), m_plain(new QLabel(words())) {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        m_plain->setTextFormat(Qt::PlainText);
        m_plain->setWordWrap(true);
        m_plain->setProperty("textSize", m_kept->property("textSize"));
        m_plain->setProperty("tone", m_kept->property("tone"));
        auto* column = new QVBoxLayout(&m_window);
        column->addWidget(m_kept);
        column->addWidget(m_plain);
        m_window.resize(400, 600);
        m_window.show();
    }
    void TearDown() override { ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0); }
    static QString words() { return QStringLiteral("Scrub across the site, back and forth."); }
    /// Asked twice: the second answer is the one that was kept.
    void expectAlike(const char* when) const {
        for (int time = 0; time < 2; ++time) {
            EXPECT_EQ(m_kept->sizeHint(), m_plain->sizeHint()) << when;
            EXPECT_EQ(m_kept->minimumSizeHint(), m_plain->minimumSizeHint()) << when;
            for (const int width : {60, 150, 400})
                EXPECT_EQ(m_kept->heightForWidth(width), m_plain->heightForWidth(width))
                    << when << ", " << width << " wide";
        }
    }
    void both(const std::function<void(QLabel*)>& change) {
        for (QLabel* one : {m_kept, m_plain}) change(one);
    }

    QWidget m_window;
    QLabel *m_kept, *m_plain;
};

TEST_F(Wrapping, AnswersAsAPlainLabelThroughEveryChange) {
    expectAlike("at first");
    both([](QLabel* one) { one->setText(words() + words() + words()); });
    expectAlike("with more words");
    ui::Look::instance().apply(ui::SchemeChoice::Light, 2.0);
    expectAlike("at twice the size");
    both([](QLabel* one) { ui::setPart(one, "textSize", QStringLiteral("note")); });
    expectAlike("with smaller letters");
    both([](QLabel* one) { ui::setPart(one, "weight", QStringLiteral("strong")); });
    expectAlike("in bold");
    both([](QLabel* one) { one->setContentsMargins(20, 12, 20, 12); });
    expectAlike("with room around");
    both([](QLabel* one) { one->setText({}); });
    expectAlike("without words");
}
