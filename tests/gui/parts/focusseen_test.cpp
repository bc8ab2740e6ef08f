// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// What has the focus is seen to have it, whatever else is shown of it: at least a line all round
// changes, by 3 : 1 (WCAG 2.2, 2.4.7 and 1.4.11; 2.4.13 measures by the edge, from memory).
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QtTest/QTest>
#include <functional>

#include "look.h"
#include "parts/choice.h"
#include "parts/parts.h"
#include "pieces/pressbutton.h"

namespace {

struct Kind {
    const char* name;
    std::function<QWidget*()> make;  ///< what has the focus may be a child, named "it"
};

QPushButton* checked(QPushButton* button) {
    button->setCheckable(true);
    button->setChecked(true);
    return button;
}

QPushButton* tab() {
    auto* made = new QPushButton(QStringLiteral("Learners"));
    made->setProperty("part", QStringLiteral("tab"));
    return made;
}

QLineEdit* line(bool isWrong) {
    auto* made = new QLineEdit;  // without words, which might move and count
    made->setProperty("wrong", isWrong);
    return made;
}

QWidget* choice(ui::Pick pick, bool isChosen) {
    const std::vector<ui::Option> one{{QStringLiteral("a"), QStringLiteral("Right arm")}};
    auto* made = new ui::Choice(QStringLiteral("of"), pick, one);
    made->choose(QStringLiteral("a"), isChosen);
    return made;
}

ui::PressButton* press(ui::Dress dress, bool isChosen) {
    auto* made = new ui::PressButton(QStringLiteral("Clamp open"), dress, nullptr);
    made->setCheckable(true);
    made->setChecked(isChosen);
    return made;
}

const std::vector<Kind>& kinds() {
    using ui::Dress, ui::Pick;
    static const QString word = QStringLiteral("Who works here"), name = QStringLiteral("it");
    static const std::vector<Kind> all{
        {"button", [] { return ui::plainButton(word, name); }},
        {"checked button", [] { return checked(ui::plainButton(word, name)); }},
        {"primary", [] { return ui::primaryButton(word, name); }},
        {"quiet", [] { return ui::quietButton(word, name); }},
        {"tab", [] { return tab(); }},
        {"checked tab", [] { return checked(tab()); }},
        {"line", [] { return line(false); }},
        {"wrong line", [] { return line(true); }},
        {"one of", [] { return choice(Pick::One, false); }},
        {"chosen one of", [] { return choice(Pick::One, true); }},
        {"any of", [] { return choice(Pick::Any, false); }},
        {"ticked any of", [] { return choice(Pick::Any, true); }},
        {"press", [] { return press(Dress::Plain, false); }},
        {"chosen press", [] { return press(Dress::Plain, true); }},
        {"main press", [] { return press(Dress::Main, false); }},
    };
    return all;
}

class FocusSeen : public testing::TestWithParam<ui::SchemeChoice> {
  protected:
    void TearDown() override { ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0); }
    static int changed(const QImage& before, const QImage& after) {
        int count = 0;
        for (int y = 0; y < before.height(); ++y)
            for (int x = 0; x < before.width(); ++x)
                count += render::contrast(before.pixelColor(x, y), after.pixelColor(x, y)) >= 3;
        return count;
    }
    /// The one in it that takes the focus.
    static QWidget* taker(QWidget* whole) {
        if (whole->focusPolicy() != Qt::NoFocus) return whole;
        for (QWidget* one : whole->findChildren<QWidget*>())
            if (one->focusPolicy() != Qt::NoFocus) return one;
        return nullptr;
    }
};

TEST_P(FocusSeen, WhateverElseIsShownOfIt) {
    ui::Look::instance().apply(GetParam(), 1.0);
    for (const Kind& kind : kinds()) {
        QWidget window;
        window.setProperty("part", QStringLiteral("page"));
        auto* column = new QVBoxLayout(&window);
        auto* other = ui::plainButton(QStringLiteral("Back"), QStringLiteral("other"));
        column->addWidget(other);
        QWidget* whole = kind.make();
        column->addWidget(whole);
        window.show();
        window.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window)) << kind.name;
        QWidget* it = taker(whole);
        ASSERT_NE(it, nullptr) << kind.name;
        const auto picture = [&] {
            QCoreApplication::processEvents();
            const QRect place(it->mapTo(&window, QPoint(0, 0)), it->size());
            return window.grab(place).toImage();
        };
        other->setFocus();
        const QImage before = picture();
        it->setFocus();
        const QImage after = picture();
        ASSERT_TRUE(it->hasFocus()) << kind.name;
        ASSERT_EQ(before.size(), after.size()) << kind.name << ": it moves";
        EXPECT_GE(changed(before, after), 2 * (before.width() + before.height())) << kind.name;
    }
}

INSTANTIATE_TEST_SUITE_P(InEachScheme, FocusSeen,
                         testing::Values(ui::SchemeChoice::Light, ui::SchemeChoice::Dark,
                                         ui::SchemeChoice::HighContrast));

}  // namespace
