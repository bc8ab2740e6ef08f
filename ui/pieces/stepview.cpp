// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "pieces/stepview.h"

#include <QBoxLayout>
#include <QResizeEvent>
#include <algorithm>

#include "pieces/inuse.h"
#include "pieces/pictureview.h"
#include "pieces/scrolling.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

namespace {

std::optional<render::Motion> motionOf(std::optional<packs::Motion> motion) {
    if (!motion) return std::nullopt;
    switch (*motion) {
        case packs::Motion::Across:
            return render::Motion::Across;
        case packs::Motion::Along:
            return render::Motion::Along;
        case packs::Motion::Circles:
            return render::Motion::Circles;
        case packs::Motion::Peel:
            return render::Motion::Peel;
        case packs::Motion::Press:
            return render::Motion::Press;
    }
    return std::nullopt;
}

/// Where there is no dried blood, none has to be wiped off, and none is drawn: what a step would
/// give that does not apply is so already.
void settleWhatDoesNotApply(const Moment& moment, render::SceneState& scene) {
    const procedure::Model& model = moment.taught().model;
    for (const practice::StepRecord& record : moment.state().steps) {
        if (record.mark != practice::Mark::DoesNotApply) continue;
        const procedure::Operator& op = model.operators[static_cast<std::size_t>(record.op)];
        for (std::size_t i = 0; i < model.conditionIds.size(); ++i)
            if (op.gives.has(static_cast<int>(i))) scene.conditions.insert(model.conditionIds[i]);
    }
}

/// While something dries no hand moves: vapour rises, and the shine goes with the time asked.
void showDrying(const Moment& moment, const base::Instant& now, render::SceneState& scene) {
    const packs::Phase* phase = moment.phaseInHand();
    if (phase == nullptr || phase->kind != packs::PhaseKind::Wait) return;
    const Band::Reading clock = moment.clock(now);
    if (clock.run == Band::Run::Running) scene.motion = render::Motion::Rise;
    scene.dried = static_cast<double>(clock.runMs) /
                  static_cast<double>(std::max<std::int64_t>(clock.targetMs, 1));
}

}  // namespace

render::SceneState sceneOf(const Moment& moment, const base::Instant& now) {
    render::SceneState scene;
    const packs::Step* step = moment.inHand();
    if (step == nullptr || !step->picture) return scene;
    scene.focus = step->picture->focus;
    const packs::Phase* phase = moment.phaseInHand();
    scene.motion =
        motionOf(phase != nullptr && phase->motion ? phase->motion : step->picture->motion);
    for (int i = 0; i < static_cast<int>(moment.taught().model.conditionIds.size()); ++i)
        if (moment.state().holds.has(i))
            scene.conditions.insert(
                moment.taught().model.conditionIds[static_cast<std::size_t>(i)]);
    settleWhatDoesNotApply(moment, scene);
    showDrying(moment, now, scene);
    return scene;
}

StepView::StepView(QWidget* parent) : QWidget(parent) {
    m_calls = new Words(TextSize::Body, Role::Brick, this, QFont::DemiBold);
    m_calls->setObjectName(QStringLiteral("callsDue"));
    m_number = new Words(TextSize::Body, Role::QuietInk, this);
    m_sentence = new Words(TextSize::Learner, Role::Ink, this, QFont::DemiBold);
    m_sentence->setObjectName(QStringLiteral("sentence"));
    m_why = new Words(TextSize::Lead, Role::QuietInk, this);
    m_watchTitle = new Words(TextSize::Body, Role::QuietInk, this);
    m_watch = new Words(TextSize::Lead, Role::Ink, this);
    m_watch->setObjectName(QStringLiteral("watchFor"));
    m_lapse = new Words(TextSize::Lead, Role::Brick, this, QFont::DemiBold);
    m_lapse->setObjectName(QStringLiteral("lapseSays"));
    m_earlier = new Words(TextSize::Body, Role::Amber, this);
    m_earlier->setObjectName(QStringLiteral("phaseNote"));
    m_picture = new PictureView(this);
    m_band = new Band(Band::Speech::Words, this);
    m_band->setObjectName(QStringLiteral("band"));

    auto* words = new QVBoxLayout;
    words->setSpacing(Theme::gap(Gap::Tight));
    words->addWidget(m_why);
    words->addSpacing(Theme::gap(Gap::Tight));
    words->addWidget(m_watchTitle);
    words->addWidget(m_watch);
    words->addStretch(1);
    m_middle = new QHBoxLayout;
    m_middle->setSpacing(Theme::gap(Gap::Wide));
    m_middle->addLayout(words, 1);
    m_middle->addWidget(m_picture, 1);

    m_read = new Column(this);
    auto* column = new QVBoxLayout(m_read);
    column->setContentsMargins(Theme::gap(Gap::Wide), Theme::gap(Gap::Snug), Theme::gap(Gap::Wide),
                               Theme::gap(Gap::Tight));
    column->setSpacing(Theme::gap(Gap::Tight));
    column->addWidget(m_calls);
    column->addWidget(m_number);
    column->addWidget(m_sentence);
    column->addWidget(m_lapse);
    column->addSpacing(Theme::gap(Gap::Tight));
    column->addLayout(m_middle, 1);
    // What is read may be longer than the window; the clock stays in sight.
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(Theme::gap(Gap::Wide), 0, Theme::gap(Gap::Wide),
                             Theme::gap(Gap::Snug));
    foot->setSpacing(Theme::gap(Gap::Tight));
    foot->addWidget(m_earlier);
    foot->addWidget(m_band);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    m_area = scrolling(m_read, this);
    m_area->viewport()->installEventFilter(this);
    whole->addWidget(m_area, 1);
    whole->addLayout(foot);
}

void StepView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

/// The clock below comes and goes: what it leaves for reading changes without this view's size.
bool StepView::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize) fit();
    return QWidget::eventFilter(watched, event);
}

/// As large as two lines allow: the largest thing is what happens now. Beside a picture one large
/// line at most: two would push the picture out of view.
bool StepView::isLargeSentence() const {
    constexpr int scrollBar = 18;
    const int room = width() - 2 * Theme::gap(Gap::Wide) - scrollBar;
    const QFontMetrics metrics(themeInUse().font(TextSize::Learner, QFont::DemiBold));
    const QRect box = metrics.boundingRect(0, 0, room, 10000, Qt::TextWordWrap, m_sentence->text());
    const int lines = m_hasPicture ? 1 : 2;
    return box.height() <= lines * metrics.lineSpacing() + 2 && box.width() <= room;
}

/// What is needed at this width without the picture, where that stands below the words.
int StepView::heightOfWords(int width) const {
    m_read->layout()->activate();  // the layouts inside keep what they measured until then
    const int all = m_read->layout()->totalHeightForWidth(width);
    const bool isBelow = !m_picture->isHidden() && m_middle->direction() == QBoxLayout::TopToBottom;
    return isBelow ? all - m_picture->minimumHeight() - m_middle->spacing() : all;
}

/// What has to be in sight without scrolling: the sentence, and what is said of a lapse.
int StepView::heightOfFirst(int width) const {
    const QMargins margins = m_read->layout()->contentsMargins();
    int height = margins.top();
    for (const Words* words : {m_calls, m_number, m_sentence, m_lapse})
        if (!words->isHidden())
            height += words->heightForWidth(width - margins.left() - margins.right()) +
                      m_read->layout()->spacing();
    return height;
}

void StepView::setSizes(TextSize sentence, TextSize reasons) {
    m_sentence->setSize(sentence);
    for (Words* words : {m_why, m_watch, m_lapse}) words->setSize(reasons);
    m_number->setVisible(sentence != TextSize::Body);
}

/// Words become smaller before a line of them or the picture is cut: first the reason and what to
/// watch for, then the sentence. Where that is not enough the reason scrolls, and the sentence is
/// as large as it can be whole.
void StepView::fitWords(QSize room) {
    const TextSize usual = isLargeSentence() ? TextSize::Learner : TextSize::Title;
    for (const auto& [sentence, reasons] :
         {std::pair(usual, TextSize::Lead), std::pair(usual, TextSize::Body),
          std::pair(TextSize::Lead, TextSize::Body)}) {
        setSizes(sentence, reasons);
        if (heightOfWords(room.width()) <= room.height()) return;
    }
    for (const TextSize sentence : {usual, TextSize::Lead, TextSize::Body}) {
        setSizes(sentence, TextSize::Body);
        if (heightOfFirst(room.width()) <= room.height()) return;
    }
}

/// Where the picture stands below the words it goes before they do.
void StepView::fit() {
    if (m_isFitting) return;
    m_isFitting = true;
    const bool isNarrow = width() < 560 * themeInUse().textFactor();
    m_middle->setDirection(isNarrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    m_picture->setVisible(m_hasPicture);
    const QSize room = m_area->maximumViewportSize();
    fitWords(room);
    const auto isTight = [&] {
        m_read->layout()->activate();
        return m_read->layout()->totalHeightForWidth(room.width()) > room.height();
    };
    if (isNarrow && isTight()) m_picture->setVisible(false);
    // An area whose bar is shown counts with the width beside it, and so would keep it.
    m_area->setVerticalScrollBarPolicy(isTight() ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    m_isFitting = false;
}

void StepView::tick(const Moment& moment, const base::Instant& now) {
    if (moment.inHand() == nullptr) return;
    Band::Reading reading = moment.clock(now);
    if (moment.phaseInHand() == nullptr && !moment.inHand()->phases.empty()) {
        const practice::StepRecord* record = practice::recordInHand(moment.state());
        const practice::PhaseRun& last = record->phases.back();
        const packs::Phase& phase = moment.inHand()->phases.back();
        reading = {.runMs = last.measuredMs,
                   .minMs = last.minMs,
                   .targetMs = last.targetMs,
                   .run = Band::Run::Ended,
                   .label = utf(moment.text(phase.label))};
    }
    m_band->show(reading);
    showPicture(moment, now);
}

void StepView::showPicture(const Moment& moment, const base::Instant& now) {
    const render::SceneState scene = sceneOf(moment, now);
    const bool had = m_hasPicture;
    m_hasPicture = !scene.focus.empty() && PictureView::has(scene.focus);
    if (m_hasPicture)
        m_picture->show(scene, moment.state().isPaused() ? 0 : now.bootMs);
    else
        m_picture->showNothing();
    if (m_hasPicture != had) fit();
}

}  // namespace ui
