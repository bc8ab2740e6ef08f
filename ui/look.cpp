// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "look.h"

#include <QApplication>

#include "lookstyle.h"

namespace ui {

Look::Look(QObject* parent)
    : QObject(parent), m_platform(QApplication::palette()), m_theme(render::Theme::light()) {
    QApplication::setStyle(new LookStyle);
}

Look& Look::instance() {
    // Found by name instead of kept in a static: tests make more than one QApplication.
    auto* known = qApp->findChild<Look*>(QString(), Qt::FindDirectChildrenOnly);
    if (known) return *known;
    auto* look = new Look(qApp);
    look->apply(SchemeChoice::Platform, 1.0);
    return *look;
}

render::Theme Look::themeFor(SchemeChoice choice, double textFactor) const {
    switch (choice) {
        case SchemeChoice::Light:
            return render::Theme::light(textFactor);
        case SchemeChoice::Dark:
            return render::Theme::dark(textFactor);
        case SchemeChoice::HighContrast:
            return render::Theme::fromPalette(m_platform, textFactor);
        case SchemeChoice::Platform:
            break;
    }
    const bool isDark = m_platform.color(QPalette::Window).lightness() < 128;
    return isDark ? render::Theme::dark(textFactor) : render::Theme::light(textFactor);
}

QString schemeWord(SchemeChoice choice) {
    switch (choice) {
        case SchemeChoice::Light:
            return QStringLiteral("light");
        case SchemeChoice::Dark:
            return QStringLiteral("dark");
        case SchemeChoice::HighContrast:
            return QStringLiteral("high-contrast");
        case SchemeChoice::Platform:
            break;
    }
    return QStringLiteral("platform");
}

SchemeChoice schemeFrom(const QString& word) {
    for (const SchemeChoice choice :
         {SchemeChoice::Light, SchemeChoice::Dark, SchemeChoice::HighContrast})
        if (schemeWord(choice) == word) return choice;
    return SchemeChoice::Platform;
}

void Look::apply(SchemeChoice choice, double textFactor) {
    m_choice = choice;
    m_theme = themeFor(choice, textFactor);
    QApplication::setPalette(m_theme.palette());
    QApplication::setFont(m_theme.font(render::TextSize::Body));
    qApp->setStyleSheet(styleSheet(m_theme));
    Q_EMIT changed();
}

}  // namespace ui
