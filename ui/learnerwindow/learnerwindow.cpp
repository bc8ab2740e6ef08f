// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learnerwindow/learnerwindow.h"

#include <QBoxLayout>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QLocale>
#include <QPainter>
#include <QProcess>
#include <QScreen>
#include <QStandardPaths>
#include <QWindow>

#include "pieces/inuse.h"
#include "pieces/pictureview.h"
#include "pieces/pressbutton.h"
#include "pieces/stepview.h"
#include "pieces/visitwords.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

LearnerWindow::LearnerWindow(desk::Desk& desk, QWidget* parent)
    : QWidget(parent, Qt::Window), m_desk(desk) {
    setObjectName(QStringLiteral("learnerWindow"));
    setWindowTitle(tr("For the learner"));
    setAccessibleName(windowTitle());
    m_speaker = QStandardPaths::findExecutable(QStringLiteral("espeak-ng"));
    build();
    m_timer.setInterval(50);
    connect(&m_timer, &QTimer::timeout, this, &LearnerWindow::tick);
    connect(&m_desk, &desk::Desk::changed, this, &LearnerWindow::refresh);
    connect(qGuiApp, &QGuiApplication::screenAdded, this, &LearnerWindow::screensChanged);
    connect(qGuiApp, &QGuiApplication::screenRemoved, this, &LearnerWindow::screensChanged);
    refresh();
}

void LearnerWindow::build() {
    m_picture = new PictureView(this);
    m_sentence = new Words(TextSize::Clock, Role::Ink, this, QFont::DemiBold);
    m_sentence->setObjectName(QStringLiteral("learnerSentence"));
    m_sentence->setAlignment(Qt::AlignCenter);
    m_band = new Band(Band::Speech::Figures, this);
    m_band->setObjectName(QStringLiteral("learnerBand"));
    m_band->setTextSize(TextSize::Learner);
    m_listen = new PressButton(QStringLiteral("◂))"), Dress::Quiet, this);
    m_listen->setObjectName(QStringLiteral("readAloud"));
    m_listen->setAccessibleName(tr("Read aloud"));
    connect(m_listen, &PressButton::clicked, this, &LearnerWindow::readAloud);
    auto* column = new QVBoxLayout(this);
    const int side = Theme::gap(Gap::Vast);
    column->setContentsMargins(side, side, side, side);
    column->setSpacing(Theme::gap(Gap::Broad));
    column->addWidget(m_picture, 4);
    column->addWidget(m_sentence, 1);
    column->addWidget(m_band);
    column->addWidget(m_listen, 0, Qt::AlignTrailing);
}

LearnerWindow::Say LearnerWindow::sayNow(const Moment& moment) const {
    if (moment.inHand() == nullptr || moment.stopAndCall() != nullptr) return Say::Nothing;
    if (!moment.isReturnDemonstration() || moment.state().takenOver) return Say::Step;
    const practice::LapseRecord* lapse = moment.lapseInHand();
    if (lapse != nullptr && lapse->caught == practice::Caught::Shown) return Say::Step;
    return moment.opened().clockForLearner ? Say::ClockAlone : Say::Nothing;
}

void LearnerWindow::refresh() {
    const auto moment = Moment::of(m_desk);
    const Say say = moment ? sayNow(*moment) : Say::Nothing;
    const packs::Step* step = moment ? moment->inHand() : nullptr;
    if (moment) m_language = moment->learnersLanguage();
    const QLocale spoken(utf(m_language));
    setLayoutDirection(m_language.empty() ? Qt::LeftToRight : spoken.textDirection());
    m_sentence->say(say == Say::Step ? utf(moment->learners(step->doText)) : QString());
    if (say != Say::Step) m_picture->showNothing();
    m_band->setVisible(say != Say::Nothing && step != nullptr && !step->phases.empty());
    m_listen->setVisible(say == Say::Step && canReadAloud());
    fitSentence();
    tick();
    place();
    update();
}

void LearnerWindow::tick() {
    const auto moment = Moment::of(m_desk);
    if (!moment || sayNow(*moment) == Say::Nothing) return;
    const base::Instant now = m_desk.now();
    Band::Reading reading = moment->clock(now);
    reading.label.clear();
    reading.until.clear();
    m_band->show(reading);
    if (sayNow(*moment) != Say::Step) return;
    const render::SceneState scene = sceneOf(*moment, now);
    if (scene.focus.empty() || !PictureView::has(scene.focus)) return m_picture->showNothing();
    m_picture->show(scene, moment->state().isPaused() ? 0 : now.bootMs);
}

/// 56 points when the whole sentence fits half of the window, never below 32.
void LearnerWindow::fitSentence() {
    const int room = width() - 2 * Theme::gap(Gap::Vast);
    const QFontMetrics metrics(themeInUse().font(TextSize::Clock, QFont::DemiBold));
    const QRect box = metrics.boundingRect(0, 0, room, 10000, Qt::TextWordWrap, m_sentence->text());
    const bool isLarge = box.height() < height() * 2 / 5 && box.width() <= room;
    m_sentence->setSize(isLarge ? TextSize::Clock : TextSize::Learner);
}

void LearnerWindow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitSentence();
}

QScreen* LearnerWindow::secondScreen() const {
    const QScreen* teachers = parentWidget() != nullptr ? parentWidget()->window()->screen()
                                                        : QGuiApplication::primaryScreen();
    for (QScreen* screen : QGuiApplication::screens())
        if (screen != teachers) return screen;
    return nullptr;
}

void LearnerWindow::setOpensByItself(bool isWanted) {
    if (m_isHiddenByHand == !isWanted) return;
    m_isHiddenByHand = !isWanted;
    place();
}

void LearnerWindow::turn() {
    if (secondScreen() != nullptr)
        m_isHiddenByHand = isVisible();
    else
        m_isTurned = !m_isTurned;
    place();
}

/// On the second screen while a visit is open; without one only when turned.
void LearnerWindow::place() {
    const bool isOpen = Moment::of(m_desk).has_value();
    if (!isOpen) m_isTurned = false;
    QScreen* second = secondScreen();
    const bool isWanted = isOpen && (second != nullptr ? !m_isHiddenByHand : m_isTurned);
    if (!isWanted) return setVisible(false);
    QScreen* screen = second != nullptr ? second : QGuiApplication::primaryScreen();
    if (isVisible() && windowHandle()->screen() == screen) return;
    // The native window has to be on that screen before it fills it.
    winId();
    windowHandle()->setScreen(screen);
    setGeometry(screen->geometry());
    // The teacher's window keeps the keys: only over the one screen does this one take them.
    setAttribute(Qt::WA_ShowWithoutActivating, second != nullptr);
    showFullScreen();
    // Some platforms fill the first screen whatever was asked.
    if (geometry() != screen->geometry()) setGeometry(screen->geometry());
}

/// A screen came or went, in the middle of a visit perhaps: the record is not touched, and the
/// teacher's window is never covered by surprise.
void LearnerWindow::screensChanged() {
    m_isTurned = false;
    if (secondScreen() == nullptr) setVisible(false);
    place();
}

void LearnerWindow::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) return;
    if (event->key() == Qt::Key_F11 || event->key() == Qt::Key_Escape) {
        turn();
        Q_EMIT turnedBack();
        return;
    }
    QWidget::keyPressEvent(event);
}

void LearnerWindow::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_timer.start();
}

void LearnerWindow::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_timer.stop();
}

void LearnerWindow::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), themeInUse().color(Role::Paper));
}

/// A child process: speech libraries hang where there is no sound device. What is said is always
/// in view as well.
void LearnerWindow::readAloud() {
    if (!canReadAloud() || m_sentence->text().isEmpty()) return;
    if (m_voice != nullptr) m_voice->kill();
    m_voice = new QProcess(this);
    connect(m_voice, &QProcess::finished, m_voice, [this, voice = m_voice] {
        if (m_voice == voice) m_voice = nullptr;
        voice->deleteLater();
    });
    m_voice->start(m_speaker, {QStringLiteral("-v"), utf(m_language), QStringLiteral("-s"),
                               QStringLiteral("130"), QStringLiteral("--"), m_sentence->text()});
}

}  // namespace ui
