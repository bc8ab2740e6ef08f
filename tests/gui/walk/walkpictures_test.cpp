// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the windows that a played visit does not come through, in each look, to be looked at.
#include <QApplication>
#include <algorithm>
#include <set>

#include "gui/walk/walk_fixture.h"
#include "look.h"
#include "support/paths.h"

class WalkPictures : public Walk {
  protected:
    struct View {
        const char* name;
        ui::SchemeChoice scheme;
        double factor;
        Qt::LayoutDirection direction;
    };
    void TearDown() override {
        QApplication::setLayoutDirection(Qt::LeftToRight);
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
    }
    static int shadesOf(const QImage& image);
    /// What signing in adds to a visit.
    static bool isBesideAVisit(const Place& place) {
        const std::string name = place.name;
        return name == "question, colleague" || name == "visit, another's";
    }
    void take(const Place& place, const View& view);
};

int WalkPictures::shadesOf(const QImage& image) {
    std::set<QRgb> shades;
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width(); x += 3) shades.insert(image.pixel(x, y));
    return static_cast<int>(shades.size());
}

void WalkPictures::take(const Place& place, const View& view) {
    goTo(place);
    ui::Look::instance().apply(view.scheme, view.factor);  // a main window brings its own
    QCoreApplication::processEvents();
    const QImage image = shown()->grab().toImage();
    EXPECT_GT(shadesOf(image), 8) << place.name << ", " << view.name << ": nothing is on it";
    EXPECT_EQ(image.size(), QSize(1280, 800)) << place.name << ", " << view.name;
    std::string file = std::string(place.name) + "_" + view.name + ".png";
    std::replace(file.begin(), file.end(), ' ', '-');
    image.save(QString::fromStdString(support::forLooking("guard-" + file)));
}

TEST_F(WalkPictures, OfWhatGuardsTheRecordForLookingAt) {
    const View views[] = {{"light", ui::SchemeChoice::Light, 1.0, Qt::LeftToRight},
                          {"dark", ui::SchemeChoice::Dark, 1.0, Qt::LeftToRight},
                          {"high", ui::SchemeChoice::HighContrast, 1.0, Qt::LeftToRight},
                          {"twice", ui::SchemeChoice::Light, 2.0, Qt::LeftToRight},
                          {"mirrored", ui::SchemeChoice::Light, 1.0, Qt::RightToLeft}};
    for (const View& view : views) {
        ui::Look::instance().apply(view.scheme, view.factor);
        QApplication::setLayoutDirection(view.direction);
        for (const Place& place : places())
            if (place.needs == Needs::Door || isBesideAVisit(place)) take(place, view);
        if (HasFatalFailure()) return;
    }
}
