// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "main/mainwindow.h"

#include <QButtonGroup>
#include <QCloseEvent>
#include <QKeyEvent>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "askback/askbackpage.h"
#include "learners/learnerspage.h"
#include "look.h"
#include "main/guardedpages.h"
#include "papers/paperspage.h"
#include "parts/keptfocus.h"
#include "parts/parts.h"
#include "parts/taborder.h"
#include "people/learnerform.h"
#include "people/lineform.h"
#include "people/patientform.h"
#include "people/staffpage.h"
#include "pieces/scrolling.h"
#include "sign/correctionform.h"
#include "sign/helpform.h"
#include "sign/signpage.h"
#include "start/startpage.h"
#include "text/labels.h"
#include "visit/visitpage.h"

namespace ui {
namespace {

QString placeWord(Place place) {
    switch (place) {
        case Place::Learners:
            return QStringLiteral("learners");
        case Place::Visit:
            return QStringLiteral("visit");
        case Place::AskBack:
            return QStringLiteral("ask-back");
        case Place::Sign:
            return QStringLiteral("sign");
        case Place::Papers:
            return QStringLiteral("papers");
    }
    return {};
}

}  // namespace

MainWindow::MainWindow(desk::Desk& desk, Settings& settings, QWidget* parent)
    : QMainWindow(parent),
      m_desk(desk),
      m_settings(settings),
      m_stack(new QStackedWidget),
      m_places(new QButtonGroup(this)) {
    setObjectName(QStringLiteral("mainWindow"));
    setWindowTitle(tr("Ninebark"));
    restoreLook();
    auto* centre = new QWidget;
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    if (QWidget* band = wardBand(desk.view())) column->addWidget(band);
    m_bar = makeBar();
    column->addWidget(m_bar);
    column->addWidget(m_stack, 1);
    setCentralWidget(centre);
    restore();
    makeLearners();
    connect(&m_desk, &desk::Desk::changed, this, &MainWindow::refreshTeacher);
    refreshTeacher();
    go(placeBefore());
    if (!m_desk.view().teacher) showStaff();
}

bool MainWindow::focusNextPrevChild(bool isNext) {
    // Not Tab: what has the focus is going away, and the keys stay with its page.
    const QWidget* now = focusWidget();
    if (now && page() && page()->isAncestorOf(now) && isGone(now, page())) {
        focusIn(page());
        return true;
    }
    tabInReadingOrder(centralWidget());
    const bool isMoved = QMainWindow::focusNextPrevChild(isNext);
    // A scrolled page does so by itself only when Tab came from within.
    if (isMoved && focusWidget()) bringIntoView(focusWidget());
    return isMoved;
}

/// Enter presses what has the focus, as Space does: outside of dialogs a button leaves that open.
void MainWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && m_bar->isAncestorOf(focusWidget())) return leaveBar();
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    auto* button = qobject_cast<QAbstractButton*>(focusWidget());
    if (!isEnter || event->modifiers() & ~Qt::KeypadModifier || event->isAutoRepeat() || !button)
        return QMainWindow::keyPressEvent(event);
    button->click();
}

QWidget* MainWindow::page() const { return m_stack->currentWidget(); }

void MainWindow::goNext(Next next) {
    switch (next) {
        case Next::Line:
            lineForm().begin();
            return showPage(m_lineForm);
        case Next::Learner:
            learnerForm().beginNew();
            return showPage(m_learnerForm);
        case Next::Consent:
            learnerForm().beginAgain(*m_desk.view().learner);
            return showPage(m_learnerForm);
        case Next::Start:
            start().begin();
            return showPage(m_start);
        case Next::GoOn:
            return showVisit();
        case Next::AskBack:
            return go(Place::AskBack);
        case Next::Sign:
            return go(Place::Sign);
        case Next::Papers:
            return go(Place::Papers);
    }
}

void MainWindow::go(Place place) {
    if (place != Place::Visit && stayVeiled()) return;
    switch (place) {
        case Place::Learners:
            m_learners->refresh();
            showPage(m_learners);
            // What was looked for stays in view, and the next letter begins anew.
            m_learners->search()->setFocus();
            m_learners->search()->selectAll();
            break;
        case Place::Visit:
            showVisit();
            break;
        case Place::AskBack:
            showPage(&askBack());
            m_askBack->begin();
            break;
        case Place::Sign:
            sign().refresh();
            showPage(m_sign);
            break;
        case Place::Papers:
            papers().refresh();
            showPage(m_papers);
            break;
    }
}

void MainWindow::showVisit() {
    const auto& view = m_desk.view();
    // An open visit of another record is opened with its record; its learner is the doer.
    if (view.openVisit && view.visitPatient && !view.visit()) {
        const auto opened = m_desk.openRecord(*view.visitPatient, std::nullopt);
        if (!m_learners->errors()->took(opened)) return showPage(m_learners);
    }
    showPage(&visit());
}

void MainWindow::showStaff() {
    if (stayVeiled()) return;
    if (page() != m_staff && !(m_guarded && m_guarded->isOfAccount(page()))) m_beforeStaff = page();
    if (m_guarded) return m_guarded->showAccount();
    staff().begin();
    showPage(m_staff);
}

void MainWindow::showPage(QWidget* page) {
    // The stack itself would give the focus to what was made first, which is often the foot.
    const bool hasChosen = page->focusWidget() != nullptr;
    m_stack->setCurrentWidget(page);
    Place place = Place::Learners;
    if (page == m_visit || page == m_start) place = Place::Visit;
    if (page == m_askBack) place = Place::AskBack;
    if (page == m_sign || page == m_help || (m_guarded && m_guarded->isSigning(page)))
        place = Place::Sign;
    if (page == m_papers) place = Place::Papers;
    m_tabs[place]->setChecked(true);
    rememberPlace(place);
    // What had it when the page was left may have been made anew since.
    const QWidget* now = focusWidget();
    const bool isIn = hasChosen && page->isAncestorOf(now) && !isGone(now, page);
    if (page != m_learners && !isIn) focusIn(page);
}

/// The page itself where it takes keys, else the first thing in it that does, once what was just
/// laid out is shown.
void MainWindow::focusIn(QWidget* page) {
    page->setFocus();
    if (page->focusPolicy() != Qt::NoFocus) return;
    const auto goIn = [this, page] {
        if (focusWidget() != page) return;
        if (QWidget* first = tabInReadingOrder(page)) first->setFocus();
    };
    QMetaObject::invokeMethod(page, goIn, Qt::QueuedConnection);
}

/// Before any widget is made: dressing each anew takes longer than reading the record, and one that
/// was made before the first look keeps the platform's letters.
void MainWindow::restoreLook() {
    const SchemeChoice scheme = schemeFrom(m_settings.words(Setting::Scheme));
    const double factor = m_settings.number(Setting::TextFactor);
    if (scheme != Look::instance().choice() || factor != theme().textFactor())
        Look::instance().apply(scheme, factor);
}

void MainWindow::restore() {
    resize(fittingOn(screen(), {1280, 800}));
    const QByteArray geometry = m_settings.bytes(Setting::WindowGeometry);
    if (!geometry.isEmpty()) restoreGeometry(geometry);
    const auto last = base::StaffId::parse(m_settings.words(Setting::LastTeacher).toStdString());
    if (last && m_desk.view().house.person(*last)) m_desk.workAs(*last);
}

void MainWindow::rememberPlace(Place place) {
    m_settings.set(Setting::LastPlace, placeWord(place));
    const desk::RecordView& view = m_desk.view();
    // Whose chart was open last is nothing to be left in the settings of a real ward.
    if (view.ward != desk::Ward::Demonstration) return;
    const auto word = [](const auto& id) { return id ? shown(id->text()) : QString(); };
    m_settings.set(Setting::LastPatient,
                   view.record ? word(std::optional(view.record->id)) : QString());
    m_settings.set(Setting::LastLearner, word(view.learner));
}

/// Where one was when the window was closed, with the same learner; the learners where that is no
/// longer so. A real record is never opened by itself: opening one is noted.
Place MainWindow::placeBefore() {
    const QString word = m_settings.words(Setting::LastPlace);
    if (word == placeWord(Place::Visit))
        return m_desk.view().openVisit ? Place::Visit : Place::Learners;
    if (m_desk.view().ward != desk::Ward::Demonstration) return Place::Learners;
    for (const Place place : {Place::AskBack, Place::Sign, Place::Papers}) {
        if (word != placeWord(place)) continue;
        const auto patient =
            base::PatientId::parse(m_settings.words(Setting::LastPatient).toStdString());
        const auto learner =
            base::LearnerId::parse(m_settings.words(Setting::LastLearner).toStdString());
        const bool isThere = patient && learner && m_desk.openRecord(*patient, *learner).ok();
        return isThere ? place : Place::Learners;
    }
    return Place::Learners;
}

void MainWindow::closeEvent(QCloseEvent* event) {
    m_settings.set(Setting::WindowGeometry, saveGeometry());
    m_settings.sync();
    QMainWindow::closeEvent(event);
}

}  // namespace ui
