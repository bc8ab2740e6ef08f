// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "visit/steplist.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>
#include <algorithm>

#include "pieces/inuse.h"
#include "pieces/visitwords.h"
#include "practice/tally.h"
#include "render/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

StepRow::StepRow(QWidget* parent) : QAbstractButton(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void StepRow::show(const Look& look) {
    if (look == m_look) return;
    m_look = look;
    const QString said =
        look.state.isEmpty() ? look.words : look.words + QStringLiteral(": ") + look.state;
    setText(look.words);
    setAccessibleName(look.isInHand ? tr("now: %1").arg(said) : said);
    updateGeometry();
    update();
}

QFont StepRow::wordsFont() const {
    const bool isStrong = m_look.isInHand;
    const TextSize textSize = m_look.kind == Kind::Step ? TextSize::Note : TextSize::Body;
    return themeInUse().font(textSize, isStrong ? QFont::DemiBold : QFont::Normal);
}

/// The step in hand whole, any other within two lines: the list tells where, not how.
QString StepRow::wordsFor(int room) const {
    if (m_look.isInHand || m_look.kind == Kind::Part) return m_look.words;
    return QFontMetrics(wordsFont()).elidedText(m_look.words, Qt::ElideRight, room * 9 / 5);
}

int StepRow::indent() const {
    const int sign = QFontMetrics(themeInUse().font(TextSize::Body)).horizontalAdvance(u'◐');
    const int own = Theme::gap(Gap::Snug) + sign + Theme::gap(Gap::Tight);
    return m_look.kind == Kind::Step ? own + Theme::gap(Gap::Snug) : own;
}

QRect StepRow::wordsRect(int width) const {
    const int room = std::max(40, width - indent() - Theme::gap(Gap::Tight));
    const QFontMetrics metrics(wordsFont());
    return {indent(), Theme::gap(Gap::Hair), room,
            metrics.boundingRect(0, 0, room, 10000, Qt::TextWordWrap, wordsFor(room)).height()};
}

int StepRow::heightForWidth(int width) const {
    int height = wordsRect(width).height() + 2 * Theme::gap(Gap::Hair);
    if (!m_look.state.isEmpty()) height += QFontMetrics(themeInUse().font(TextSize::Note)).height();
    return height;
}

void StepRow::paintEvent(QPaintEvent*) {
    const Theme& theme = themeInUse();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool isRtl = layoutDirection() == Qt::RightToLeft;
    const auto mirrored = [&](QRect box) {
        if (isRtl) box.moveLeft(width() - box.right() - 1);
        return box;
    };
    if (m_look.isInHand && m_look.kind == Kind::Step) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.color(Role::Paper));
        painter.drawRoundedRect(QRectF(rect()).adjusted(4, 0, -4, 0), 6, 6);
        painter.fillRect(mirrored(QRect(4, 4, 4, height() - 8)), theme.color(Role::Pine));
    }
    // AlignAbsolute: a painter in a program from right to left would turn the side once more.
    const auto side = (isRtl ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignAbsolute;
    const QRect words = wordsRect(width());
    painter.setFont(wordsFont());
    const Role ink = m_look.isQuiet ? Role::QuietInk : Role::Ink;
    painter.setPen(theme.color(m_look.isLapsed ? Role::Brick : ink));
    const int signAt =
        indent() - painter.fontMetrics().horizontalAdvance(u'◐') - Theme::gap(Gap::Tight);
    painter.drawText(mirrored(QRect(signAt, words.top(), indent() - signAt, words.height())),
                     static_cast<int>(side | Qt::AlignTop), m_look.glyph);
    painter.setPen(theme.color(ink));
    const QString said = wordsFor(words.width());
    painter.drawText(mirrored(words),
                     static_cast<int>(side) | Qt::TextWordWrap | render::ownDirection(said), said);
    if (!m_look.state.isEmpty()) {
        painter.setFont(theme.font(TextSize::Note));
        painter.setPen(theme.color(m_look.isLapsed ? Role::Brick : Role::QuietInk));
        painter.drawText(mirrored(words.translated(0, words.height())),
                         static_cast<int>(side | Qt::AlignTop), m_look.state);
    }
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.color(Role::Pine), Theme::strokeWidth));
        painter.drawRoundedRect(QRectF(rect()).adjusted(3, 1, -3, -1), 6, 6);
    }
}

void StepRow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        click();
        return;
    }
    event->ignore();  // Space and letters belong to the visit
}

StepList::StepList(QWidget* parent) : QScrollArea(parent) {
    setObjectName(QStringLiteral("stepList"));
    setAccessibleName(tr("Parts and steps"));
    setFocusPolicy(Qt::NoFocus);
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_column = new QWidget;
    m_column->setAutoFillBackground(true);
    m_column->setBackgroundRole(QPalette::Base);
    m_layout = new QVBoxLayout(m_column);
    m_layout->setContentsMargins(0, Theme::gap(Gap::Tight), 0, Theme::gap(Gap::Tight));
    m_layout->setSpacing(Theme::gap(Gap::Hair));
    m_layout->addStretch(1);
    setWidget(m_column);
}

StepRow* StepList::row(std::size_t index) {
    while (m_rows.size() <= index) {
        auto* one = new StepRow(m_column);
        connect(one, &StepRow::clicked, this, [this, one] {
            const QString step = one->property("step").toString();
            if (!step.isEmpty()) Q_EMIT stepPressed(step);
        });
        m_layout->insertWidget(static_cast<int>(m_rows.size()), one);
        m_rows.push_back(one);
    }
    return m_rows[index];
}

StepRow::Look StepList::partLook(const Moment& moment, const packs::Competency& part,
                                 bool isOpen) const {
    StepRow::Look look{.kind = StepRow::Kind::Part, .words = utf(moment.text(part.title))};
    std::size_t done = 0;
    bool isLapsed = false;
    for (const packs::Step& step : part.steps) {
        const int number = packs::findStep(moment.pack(), step.id).number;
        const auto& record = moment.state().steps.at(static_cast<std::size_t>(number - 1));
        if (record.mark != practice::Mark::None) ++done;
        isLapsed = isLapsed || practice::hasLapse(record, moment.state());
    }
    look.isInHand = isOpen;
    look.isQuiet = !isOpen && done == 0;
    look.glyph = isOpen ? QStringLiteral("▸")
                        : (done == part.steps.size() ? QStringLiteral("✓") : QStringLiteral("○"));
    if (isLapsed && !isOpen) look.state = tr("with a lapse");
    look.isLapsed = isLapsed && !isOpen;
    return look;
}

StepRow::Look StepList::stepLook(const Moment& moment, int op) const {
    const packs::Step& step = moment.stepOf(op);
    const auto& record = moment.state().steps.at(static_cast<std::size_t>(op));
    const practice::Help help = practice::helpOf(record, moment.state());
    StepRow::Look look{.kind = StepRow::Kind::Step, .words = utf(moment.text(step.doText))};
    look.isInHand = moment.inHand() == &step;
    look.glyph = look.isInHand ? QStringLiteral("●") : helpGlyph(help);
    if (record.mark != practice::Mark::None) look.state = wentWords(help, record.cues);
    look.isQuiet = !look.isInHand && record.mark == practice::Mark::None;
    if (practice::hasLapse(record, moment.state())) {
        look.state += look.state.isEmpty() ? tr("a lapse") : tr(", a lapse");
        look.isLapsed = true;
    }
    return look;
}

void StepList::show(const Moment& moment) {
    const packs::Step* hand = moment.inHand();
    int front = moment.state().remaining.empty() ? -1 : moment.state().remaining.front();
    if (hand != nullptr && moment.numberInHand() > 0) front = moment.numberInHand() - 1;
    const std::vector<int> markable = practice::markableNow(moment.taught(), moment.state());
    std::size_t at = 0;
    int op = 0;
    StepRow* now = nullptr;
    for (const packs::Competency& part : moment.pack().competencies) {
        const int first = op;
        op += static_cast<int>(part.steps.size());
        const bool isOpen = front >= first && front < op;
        StepRow* title = row(at++);
        title->show(partLook(moment, part, isOpen));
        title->setProperty("step", QString());
        title->setFocusPolicy(Qt::NoFocus);
        title->setVisible(true);
        for (int one = first; isOpen && one < op; ++one) {
            StepRow* step = row(at++);
            step->show(stepLook(moment, one));
            const bool isMarkable = std::ranges::find(markable, one) != markable.end();
            step->setProperty("step", isMarkable ? utf(moment.stepOf(one).id) : QString());
            step->setFocusPolicy(isMarkable ? Qt::StrongFocus : Qt::NoFocus);
            step->setCursor(isMarkable ? Qt::PointingHandCursor : Qt::ArrowCursor);
            step->setToolTip(isMarkable ? tr("Press when it was seen before its turn") : QString());
            step->setVisible(true);
            if (one == front) now = step;
        }
    }
    for (; at < m_rows.size(); ++at) m_rows[at]->setVisible(false);
    m_column->layout()->activate();
    if (now != nullptr) ensureWidgetVisible(now, 0, height() / 3);
}

}  // namespace ui
