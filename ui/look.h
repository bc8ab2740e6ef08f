// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPalette>

#include "render/theme.h"

namespace ui {

enum class SchemeChoice { Platform, Light, Dark, HighContrast };

/// How the whole program looks now. Owns nothing but a value; every window follows it live.
class Look : public QObject {
    Q_OBJECT
  public:
    /// The one look of this program; lives as long as the QApplication does.
    static Look& instance();

    /// Puts style, palette, fonts and the style sheet on the QApplication. `textFactor` is held
    /// within 1.0 and 2.0.
    void apply(SchemeChoice choice, double textFactor);
    SchemeChoice choice() const { return m_choice; }
    const render::Theme& theme() const { return m_theme; }

  Q_SIGNALS:
    /// After the new theme is on; widgets that paint for themselves update().
    void changed();

  private:
    explicit Look(QObject* parent);
    render::Theme themeFor(SchemeChoice choice, double textFactor) const;

    QPalette m_platform;  ///< as the platform had it before we touched anything
    SchemeChoice m_choice = SchemeChoice::Platform;
    render::Theme m_theme;
};

/// The theme in use.
inline const render::Theme& theme() { return Look::instance().theme(); }
/// A choice as it is kept in the settings, and back; an unknown word is Platform.
QString schemeWord(SchemeChoice choice);
SchemeChoice schemeFrom(const QString& word);
/// The style sheet that a theme comes to; its roles are the only colours in it.
QString styleSheet(const render::Theme& theme);

}  // namespace ui
