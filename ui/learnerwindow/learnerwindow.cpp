// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "learnerwindow/learnerwindow.h"

#include <QBoxLayout>
#include <QGuiApplication>
#include <QKeyEvent>
#include <QPainter>
#include <QScreen>
#include <QWindow>

#include "learnerwindow/voice.h"
#include "pieces/inuse.h"
#include "pieces/pictureview.h"
#include "pieces/pressbutton.h"
#include "pieces/words.h"

namespace ui {

using render::Gap;
using render::Role;
using render::TextSize;
using render::Theme;

LearnerWindow::LearnerWindow(LearnerSource& source, QWidget* parent)
    : QWidget(parent, Qt::Window), m_source(source), m_voice(new Voice(this)) {
    setObjectName(QStringLiteral("learnerWindow"));
    setWindowTitle(tr("For the learner"));
    setAccessibleName(windowTitle());
    build();
    m_timer.setInterval(50);
    connect(&m_timer, &QTimer::timeout, this, &LearnerWindow::tick);
    connect(&m_source, &LearnerSource::changed, this, &LearnerWindow::refresh);
    connect(m_voice, &Voice::failed, this, &LearnerWindow::readingFailed);
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
    m_quiet = new Words(TextSize::Body, Role::QuietInk, this);
    m_quiet->setObjectName(QStringLiteral("cannotRead"));
    m_quiet->say({});
    m_listen = new PressButton(QStringLiteral("◂))"), Dress::Quiet, this);
    m_listen->setObjectName(QStringLiteral("readAloud"));
    m_listen->setAccessibleName(tr("Read aloud"));
    connect(m_listen, &PressButton::clicked, this, &LearnerWindow::readAloud);
    m_resting = new Words(TextSize::Body, Role::QuietInk, this);
    m_resting->setObjectName(QStringLiteral("keysRest"));
    m_resting->setAlignment(Qt::AlignTrailing | Qt::AlignVCenter);
    m_back =
        new PressButton(tr("Back to the visit"), Dress::Quiet, this, PressButton::Space::PassesOn);
    m_back->setObjectName(QStringLiteral("backToVisit"));
    m_back->setKeyHint(tr("Esc, F11"));
    m_back->setFocusPolicy(Qt::NoFocus);
    connect(m_back, &PressButton::clicked, this, &LearnerWindow::turnBack);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(0);
    auto* notice = new Words(TextSize::Note, Role::Amber, this, QFont::DemiBold);
    notice->setObjectName(QStringLiteral("wardBand"));
    notice->setProperty("part", QStringLiteral("ward"));
    notice->setAlignment(Qt::AlignCenter);
    notice->setMargin(Theme::gap(Gap::Hair));
    notice->say(m_source.sees().notice);
    whole->addWidget(notice);
    auto* column = new QVBoxLayout;
    whole->addLayout(column, 1);
    const int side = Theme::gap(Gap::Vast);
    column->setContentsMargins(side, side, side, side);
    column->setSpacing(Theme::gap(Gap::Broad));
    column->addWidget(m_picture, 4);
    column->addWidget(m_sentence, 1);
    column->addWidget(m_band);
    auto* foot = new QHBoxLayout;
    foot->addWidget(m_quiet, 1);
    foot->addWidget(m_resting, 1);
    foot->addStretch(0);
    foot->addWidget(m_back, 0, Qt::AlignTrailing);
    foot->addWidget(m_listen, 0, Qt::AlignTrailing);
    column->addLayout(foot);
}

void LearnerWindow::refresh() {
    const LearnerSees sees = m_source.sees();
    setLayoutDirection(sees.direction);
    if (sees.sentence != m_sentence->text()) {
        m_voice->stop();
        m_quiet->say({});
    }
    m_sentence->say(sees.sentence);
    m_band->setVisible(sees.clock.has_value());
    m_listen->setVisible(!sees.sentence.isEmpty());
    fitSentence();
    tick();
    place();
    update();
}

void LearnerWindow::tick() {
    const LearnerSees sees = m_source.sees();
    if (sees.clock) m_band->show(*sees.clock);
    if (sees.scene.focus.empty() || !PictureView::has(sees.scene.focus))
        return m_picture->showNothing();
    m_picture->show(sees.scene, sees.movedMs);
    m_picture->setVisible(true);
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
    layout()->activate();  // at once: the picture gets what smaller words leave
}

QList<QScreen*> LearnerWindow::screens() const { return QGuiApplication::screens(); }

QScreen* LearnerWindow::secondScreen() const {
    const QList<QScreen*> all = screens();
    if (all.size() < 2) return nullptr;
    const QScreen* teachers = parentWidget() != nullptr ? parentWidget()->window()->screen()
                                                        : QGuiApplication::primaryScreen();
    for (QScreen* screen : all)
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

void LearnerWindow::place() {
    const bool isOpen = m_source.sees().isVisitOpen;
    if (!isOpen) m_isTurned = false;
    QScreen* second = secondScreen();
    const Stand where = standOf({.isVisitOpen = isOpen,
                                 .hasSecondScreen = second != nullptr,
                                 .isTurned = m_isTurned,
                                 .isHiddenByHand = m_isHiddenByHand});
    // Over the only screen the visit is out of sight: nothing is marked there unseen.
    const bool isOver = where == Stand::OverTeacher;
    m_resting->say(isOver ? tr("The keys of the visit rest meanwhile.") : QString());
    m_back->setVisible(isOver);
    if (where == Stand::Hidden) return setVisible(false);
    // The teacher's window keeps the keys: only over the one screen does this one take them.
    setAttribute(Qt::WA_ShowWithoutActivating, where == Stand::SecondScreen);
    fillScreen(second != nullptr ? second : QGuiApplication::primaryScreen());
}

void LearnerWindow::fillScreen(QScreen* screen) {
    if (isVisible() && windowHandle()->screen() == screen) return;
    // A window that fills one screen does not move to another while it is seen.
    setVisible(false);
    // The native window has to be on that screen before it fills it.
    winId();
    windowHandle()->setScreen(screen);
    setGeometry(screen->geometry());
    showFullScreen();
    // Some platforms fill the first screen whatever was asked.
    if (geometry() != screen->geometry()) setGeometry(screen->geometry());
}

/// A screen came or went, in the middle of a visit perhaps: the record is not touched, and the
/// teacher's window is never covered by surprise. Where the windows of the lost screen end up is
/// known only once the platform has moved them, so it is placed anew after that.
void LearnerWindow::screensChanged() {
    m_isTurned = false;
    if (screens().size() < 2) setVisible(false);
    QMetaObject::invokeMethod(this, &LearnerWindow::place, Qt::QueuedConnection);
}

void LearnerWindow::keyPressEvent(QKeyEvent* event) {
    if (event->isAutoRepeat()) return;
    if (event->key() == Qt::Key_F11 || event->key() == Qt::Key_Escape) return turnBack();
    QWidget::keyPressEvent(event);
}

void LearnerWindow::turnBack() {
    turn();
    Q_EMIT turnedBack();
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

bool LearnerWindow::isReading() const { return m_voice->isReading(); }

void LearnerWindow::readAloud() {
    if (m_voice->isReading()) return m_voice->stop();
    const LearnerSees sees = m_source.sees();
    if (sees.sentence.isEmpty()) return;
    m_quiet->say({});
    m_voice->read(sees.sentence, sees.language);
}

void LearnerWindow::readingFailed() {
    const QString sentence = tr("This computer can't read it aloud. The words stay in view.");
    m_quiet->say(sentence);
    Q_EMIT couldNotRead(sentence);
}

}  // namespace ui
