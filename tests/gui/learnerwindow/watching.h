// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDir>
#include <QLabel>
#include <memory>

#include "learnerwindow/learnerwindow.h"
#include "look.h"
#include "support/paths.h"
#include "support/ward.h"
#include "visit/learnerfeed.h"

namespace gui {

using practice::On;
using practice::Way;

/// An open visit of clean hands and the window that its learner sees, turned to on the one screen.
struct Watching {
    explicit Watching(Way way, const char* language = "en", bool hasClock = false)
        : ward("clean-hands") {
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
        const auto learner = base::LearnerId::random();
        ward.must(record::AddLearner{.learner = learner,
                                     .name = "Amara Okonjo",
                                     .relationship = "sibling",
                                     .language = language});
        ward.must(record::AskConsent{
            .learner = learner, .toTeach = true, .toTell = true, .givenBy = "patient"});
        auto opened = ward.opening(way, On::PracticeArm);
        opened.learner = learner;
        opened.clockForLearner = hasClock;
        ward.must(opened);
        feed = std::make_unique<ui::LearnerFeed>(ward.desk(), nullptr);
        window = std::make_unique<ui::LearnerWindow>(*feed);
        window->turn();
        window->resize(1280, 800);
    }
    QString sentence() {
        auto* label = window->findChild<QLabel*>(QStringLiteral("learnerSentence"));
        return label->isVisible() ? label->text() : QString();
    }
    bool hasBand() {
        return window->findChild<QWidget*>(QStringLiteral("learnerBand"))->isVisible();
    }
    void picture(const char* name) {
        const QString folder =
            QString::fromStdString(support::buildDir()) + QStringLiteral("/pictures");
        QDir().mkpath(folder);
        QCoreApplication::processEvents();
        window->tick();
        EXPECT_TRUE(
            window->grab().save(folder + QStringLiteral("/%1.png").arg(QLatin1String(name))));
    }
    support::Ward ward;
    std::unique_ptr<ui::LearnerFeed> feed;
    std::unique_ptr<ui::LearnerWindow> window;
};

}  // namespace gui
