// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QRegularExpression>

#include "look.h"

namespace ui {
namespace {

using render::Gap;
using render::Role;
using render::TextSize;

// @names stand for roles, ~names for sizes of type. Kept short: a sheet is matched for every
// widget. A thick edge is the focus and nothing else; a filled button has a ring (LookStyle).
const char* const sheetText = R"(
QMainWindow, QDialog, QScrollArea, QStackedWidget, QWidget[part="page"] { background: @paper; }
QScrollArea { border: 0; }
QScrollArea[part="clear"], QScrollArea[part="clear"] > QWidget > QWidget { background: transparent; }
QScrollArea > QWidget > QWidget[part="column"], QWidget[part="column"] { background: @paper; }
QLabel { background: transparent; color: @ink; }
QLabel[tone="quiet"] { color: @quiet; }
QLabel[tone="pine"] { color: @pine; }
QLabel[tone="amber"] { color: @amber; }
QLabel[tone="brick"] { color: @brick; }
QLabel[tone="leaf"] { color: @leaf; }
*[even="true"] { font-family: "Noto Sans Mono", monospace; }
*[textSize="note"] { font-size: ~note; }
*[textSize="body"] { font-size: ~body; }
*[textSize="lead"] { font-size: ~lead; }
*[textSize="title"] { font-size: ~title; }
*[textSize="learner"] { font-size: ~learner; }
*[weight="strong"] { font-weight: 600; }

QPushButton, QToolButton { min-height: 42px; padding: 0 16px; border: 1px solid @quiet;
  border-radius: 6px; background: @surface; color: @ink; }
QToolButton { padding: 0 12px; }
QPushButton:hover, QToolButton:hover { border-color: @pine; background: @paper; }
QPushButton:pressed, QToolButton:pressed { background: @rule; }
QPushButton:checked, QToolButton:checked { border-color: @pine; color: @pine;
  background: @leafground; }
QPushButton:disabled, QToolButton:disabled { color: @quiet; border: 1px dashed @quiet;
  background: @paper; }
QPushButton:focus, QToolButton:focus { border: 3px solid @pine; padding: 0 14px; min-height: 38px; }
QPushButton[part="primary"] { background: @pine; border-color: @pine; color: @onpine;
  font-weight: 600; padding: 0 24px; }
QPushButton[part="primary"]:hover { background: @ink; color: @paper; }
QPushButton[part="primary"]:focus { border: 1px solid @pine; padding: 0 24px; min-height: 42px; }
QPushButton[part="primary"]:disabled { background: @paper; color: @quiet;
  border: 1px dashed @quiet; }
QPushButton[part="quiet"] { border: 1px solid transparent; background: transparent; color: @pine;
  text-decoration: underline; }
QPushButton[part="quiet"]:hover { border-color: @pine; }
QPushButton[part="quiet"]:focus { border: 3px solid @pine; }
QPushButton[part="tab"] { border: 0; border-bottom: 4px solid transparent; border-radius: 0;
  background: transparent; min-height: 48px; padding: 0 16px; font-size: ~lead; color: @quiet; }
QPushButton[scarce="true"] { padding: 0 8px; font-size: ~body; }
QPushButton[part="tab"]:hover { color: @ink; background: @paper; }
QPushButton[part="tab"]:checked { border-bottom: 4px solid @pine; color: @pine; font-weight: normal; }
QPushButton[part="tab"]:focus { border: 3px solid @pine; border-radius: 6px; padding: 0 13px;
  min-height: 46px; }
QPushButton[part="tab"]:disabled { color: @quiet; border: 0; }
QPushButton::menu-indicator, QToolButton::menu-indicator { image: none; width: 0; }

QPushButton[part="card"] { border: 1px solid @rule; background: @surface; text-align: left;
  padding: 0; border-radius: 6px; }
QPushButton[part="card"]:hover { border: 1px solid @pine; }
QPushButton[part="card"]:focus { border: 3px solid @pine; }
QFrame[part="card"] { border: 1px solid @rule; border-radius: 6px; background: @surface; }
QFrame[part="bar"] { border: 0; border-bottom: 1px solid @rule; background: @surface; }
QFrame[part="foot"] { border: 0; border-top: 1px solid @rule; background: @surface; }
QFrame[part="rule"] { border: 0; background: @rule; max-height: 1px; min-height: 1px; }
QFrame[part="amber"], QLabel[part="amber"] { background: @amberground; border: 0;
  border-radius: 6px; }
QFrame[part="brick"] { background: @brickground; border: 2px solid @brick; border-radius: 6px; }
QFrame[part="leaf"] { background: @leafground; border: 0; border-radius: 6px; }
QFrame[part="ward"] { background: @amberground; border: 0; border-bottom: 1px solid @rule; }

QLineEdit, QPlainTextEdit { border: 1px solid @quiet; border-radius: 6px; background: @surface;
  color: @ink; padding: 0 12px; selection-background-color: @pine; selection-color: @onpine; }
QLineEdit { min-height: 42px; }
QPlainTextEdit { padding: 6px 8px; }
QLineEdit[wrong="true"], QPlainTextEdit[wrong="true"] { border: 1px solid @brick;
  background: @brickground; }
QLineEdit:focus, QPlainTextEdit:focus { border: 3px solid @pine; }
QLineEdit[wrong="true"]:focus, QPlainTextEdit[wrong="true"]:focus { border: 3px solid @brick; }
QLineEdit:focus { min-height: 38px; padding: 0 10px; }
QPlainTextEdit:focus { padding: 4px 6px; }
QCheckBox, QRadioButton { min-height: 40px; padding: 0 4px; border: 2px solid transparent;
  border-radius: 6px; color: @ink; background: transparent; }
QCheckBox:focus, QRadioButton:focus { border: 2px solid @pine; }
QRadioButton[part="choice"], QCheckBox[part="choice"] { border: 1px solid @quiet;
  background: @surface; padding: 1px 17px 1px 13px; }
QRadioButton[part="choice"]:hover, QCheckBox[part="choice"]:hover { border-color: @pine; }
QRadioButton[part="choice"]:checked, QCheckBox[part="choice"]:checked { border-color: @pine;
  background: @leafground; }
QRadioButton[part="choice"]:focus, QCheckBox[part="choice"]:focus { border: 3px solid @pine;
  padding: -1px 15px -1px 11px; }
QRadioButton[part="choice"]:disabled, QCheckBox[part="choice"]:disabled { color: @quiet;
  border: 1px dashed @quiet; }

QTableView { border: 1px solid @rule; border-radius: 6px; background: @surface; color: @ink;
  gridline-color: @rule; selection-background-color: @leafground; selection-color: @ink; }
QTableView:focus { border: 3px solid @pine; }
QTableView::item { padding: 4px 8px; }
QHeaderView, QHeaderView::section { border: 0; background: @paper; color: @quiet; }
QHeaderView::section { padding: 8px; }
QProgressBar { border: 1px solid @quiet; border-radius: 6px; background: @surface;
  min-height: 22px; }
QProgressBar::chunk { background: @water; border-radius: 5px; }
QMenu { background: @surface; border: 1px solid @quiet; padding: 4px; }
QMenu::item { min-height: 40px; padding: 4px 24px; border-radius: 6px; color: @ink; }
QMenu::item:selected { background: @pine; color: @onpine; }
QMenu::separator { height: 1px; background: @rule; margin: 4px; }
QScrollBar:vertical { background: @paper; width: 18px; margin: 0; }
QScrollBar:horizontal { background: @paper; height: 18px; margin: 0; }
QScrollBar::handle { background: @quiet; border-radius: 5px; margin: 4px; min-height: 44px;
  min-width: 44px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QToolTip { background: @surface; color: @ink; border: 1px solid @quiet; padding: 4px; }
)";

QString colorName(const render::Theme& look, const QString& name) {
    static const std::pair<const char*, Role> roles[] = {{"paper", Role::Paper},
                                                         {"surface", Role::Surface},
                                                         {"ink", Role::Ink},
                                                         {"quiet", Role::QuietInk},
                                                         {"rule", Role::Rule},
                                                         {"pine", Role::Pine},
                                                         {"water", Role::Water},
                                                         {"amber", Role::Amber},
                                                         {"amberground", Role::AmberGround},
                                                         {"brick", Role::Brick},
                                                         {"brickground", Role::BrickGround},
                                                         {"leaf", Role::Leaf},
                                                         {"leafground", Role::LeafGround}};
    if (name == QLatin1String("onpine")) return look.on(Role::Pine).name();
    for (const auto& [known, role] : roles)
        if (name == QLatin1String(known)) return look.color(role).name();
    return {};
}

QString sizeName(const render::Theme& look, const QString& name) {
    static const std::pair<const char*, TextSize> sizes[] = {{"note", TextSize::Note},
                                                             {"body", TextSize::Body},
                                                             {"lead", TextSize::Lead},
                                                             {"title", TextSize::Title},
                                                             {"learner", TextSize::Learner}};
    for (const auto& [known, size] : sizes)
        if (name == QLatin1String(known))
            return QString::number(look.points(size)) + QStringLiteral("pt");
    return {};
}

}  // namespace

QString styleSheet(const render::Theme& look) {
    static const QRegularExpression word(QStringLiteral("[@~]([a-z]+)"));
    const QString text = QString::fromLatin1(sheetText);
    QString sheet;
    qsizetype at = 0;
    for (auto found = word.globalMatch(text); found.hasNext();) {
        const QRegularExpressionMatch match = found.next();
        const QString name = match.captured(1);
        sheet += QStringView(text).mid(at, match.capturedStart() - at);
        sheet +=
            match.capturedView().startsWith(u'@') ? colorName(look, name) : sizeName(look, name);
        at = match.capturedEnd();
    }
    sheet += QStringView(text).mid(at);
    return sheet;
}

}  // namespace ui
