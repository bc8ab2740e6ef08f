// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
// The words in every window: none is cut at twice the size or in a longer language, and all but
// names, packs and dates went through tr.
#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QRegularExpression>

#include "gui/walk/walk_fixture.h"
#include "look.h"
#include "parts/parts.h"
#include "settings/settings.h"
#include "support/paths.h"
#include "support/pseudolanguage.h"
#include "text/labels.h"

class WalkWords : public Walk {
  protected:
    void TearDown() override {
        QApplication::setLayoutDirection(Qt::LeftToRight);
        ui::Look::instance().apply(ui::SchemeChoice::Light, 1.0);
    }
    void expectWhole(const char* where) const;
    /// The screen of tests is smaller than a window shown on it may become afterwards.
    void settleAtSize() const;
    static bool isInside(const QWidget* widget);
    static QString wordsOf(const QWidget* widget);
    static QString outsideBrackets(const QString& words);
    /// What people and packs say: the words of the record and of the packs, in one string.
    QString data() const;
};

QString WalkWords::wordsOf(const QWidget* widget) {
    if (const auto* label = qobject_cast<const QLabel*>(widget)) return label->text();
    if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) return button->text();
    if (const auto* edit = qobject_cast<const QLineEdit*>(widget)) return edit->placeholderText();
    return {};
}

/// No box around it cuts it off, except one that scrolls.
bool WalkWords::isInside(const QWidget* widget) {
    QRect place(QPoint(0, 0), widget->size());
    for (const QWidget* at = widget; at->parentWidget() && !at->isWindow();) {
        const QWidget* up = at->parentWidget();
        place.translate(at->pos());
        const auto* area = qobject_cast<const QAbstractScrollArea*>(up->parentWidget());
        const bool isScrolled = area && area->viewport() == up;
        if (place.left() < -1 || place.right() > up->width() + 1) return false;
        if (isScrolled) return true;
        if (place.top() < -1 || place.bottom() > up->height() + 1) return false;
        at = up;
    }
    return true;
}

void WalkWords::settleAtSize() const {
    shown()->resize(1280, 800);
    settle();
}

void WalkWords::expectWhole(const char* where) const {
    EXPECT_EQ(shown()->size(), QSize(1280, 800)) << where << ": the window had to grow";
    for (QWidget* widget : shown()->findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != shown() || wordsOf(widget).isEmpty())
            continue;
        if (qobject_cast<QLineEdit*>(widget)) continue;
        const QString said = wordsOf(widget).left(60);
        const auto* label = qobject_cast<QLabel*>(widget);
        const bool wraps = widget->hasHeightForWidth();
        const int high =
            wraps ? widget->heightForWidth(widget->width()) : widget->minimumSizeHint().height();
        EXPECT_GE(widget->height() + 1, high) << where << ": " << said.toStdString();
        const int wide = label && label->wordWrap() ? 0 : widget->minimumSizeHint().width();
        EXPECT_GE(widget->width() + 1, wide) << where << ": " << said.toStdString();
        EXPECT_TRUE(isInside(widget)) << where << ": " << said.toStdString();
    }
}

QString WalkWords::outsideBrackets(const QString& words) {
    QString outside;
    int depth = 0;
    for (const QChar c : words) {
        if (c == support::PseudoLanguage::opens) ++depth;
        if (depth == 0) outside += c;
        if (c == support::PseudoLanguage::closes) {
            --depth;
            outside += u'\n';
        }
    }
    return outside;
}

QString WalkWords::data() const {
    std::string all;
    for (const ledger::Entry& entry : entries()) all += entry.body.data.dump() + '\n';
    QString words = QString::fromStdString(all);
    const QString packs =
        QString::fromStdString(support::sourceDir()) + QStringLiteral("/shared/packs");
    // Lists of codes carry their own languages, as packs do, and languages are named in themselves.
    for (const QString& folder : {packs, QStringLiteral(":/codes")})
        for (const QFileInfo& info : QDir(folder).entryInfoList({QStringLiteral("*.json")})) {
            QFile file(info.filePath());
            EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << info.filePath().toStdString();
            words += QString::fromUtf8(file.readAll());
        }
    for (const ui::Option& language : ui::languageOptions()) words += language.label + u'\n';
    for (int i = 1; i <= 12; ++i)
        words += QLocale::c().monthName(i) + u' ' + QLocale::c().dayName(1 + i % 7) + u'\n';
    return words;
}

TEST_F(WalkWords, NoneIsCutAtTwiceTheSize) {
    for (const Place& place : places()) {
        const QString file = m_folder.filePath(QStringLiteral("settings.ini"));
        ui::Settings(file).set(ui::Setting::TextFactor, 2.0);  // each main window reads it
        goTo(place);
        ASSERT_EQ(ui::theme().textFactor(), 2.0) << place.name;
        settleAtSize();
        expectWhole(place.name);
        if (HasFatalFailure()) return;
    }
}

TEST_F(WalkWords, NoneIsCutInALongerLanguageFromTheRight) {
    support::PseudoLanguage pseudo;
    QCoreApplication::installTranslator(&pseudo);
    QApplication::setLayoutDirection(Qt::RightToLeft);
    for (const Place& place : places()) {
        goTo(place);
        settleAtSize();
        expectWhole(place.name);
        if (HasFatalFailure()) return;
    }
}

TEST_F(WalkWords, AllButDataWentThroughTr) {
    support::PseudoLanguage pseudo;
    QCoreApplication::installTranslator(&pseudo);
    // Between pieces of data: commas, dots, numbers, dates.
    static const QRegularExpression between(QStringLiteral("[^\\p{L}\\p{M}'’ -]+| - |^ +| +$"));
    for (const Place& place : places()) {
        goTo(place);
        const QString known = data();
        for (QWidget* widget : shown()->findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->window() != shown()) continue;
            for (const QString& part : outsideBrackets(wordsOf(widget)).split(between)) {
                const QString bare = part.trimmed();
                if (bare.size() < 2) continue;
                EXPECT_TRUE(known.contains(bare, Qt::CaseInsensitive))
                    << place.name << ": " << nameOf(widget) << " says " << bare.toStdString();
            }
        }
        if (HasFatalFailure()) return;
    }
}

// A screenshot of any of them may lie about alone: each says itself that nobody in it is real.
TEST_F(WalkWords, EveryWindowOfTheDemonstrationSaysThatNobodyIsReal) {
    int seen = 0;
    for (const Place& place : places()) {
        if (place.needs == Needs::Door) continue;  // nobody signs in there
        goTo(place);
        const auto* band = shown()->findChild<QWidget*>(QStringLiteral("wardBand"));
        const auto* words = qobject_cast<const QLabel*>(band);  // the learner's is one itself
        ASSERT_NE(band, nullptr) << place.name;
        EXPECT_TRUE(band->isVisible()) << place.name;
        if (words == nullptr || words->text().isEmpty()) words = band->findChild<QLabel*>();
        ASSERT_NE(words, nullptr) << place.name;
        EXPECT_TRUE(words->text().contains(ui::inventedWords())) << place.name;
        EXPECT_EQ(band->visibleRegion().boundingRect().size(), band->size()) << place.name;
        ++seen;
    }
    EXPECT_GE(seen, 35);
}
