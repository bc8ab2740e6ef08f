// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "settings/settingspage.h"

#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "keys/keyquestion.h"
#include "look.h"
#include "parts/parts.h"
#include "text/labels.h"
#include "visit/question.h"

namespace ui {
namespace {

const auto switchedOn = QStringLiteral("on");
const auto switchedOff = QStringLiteral("off");

}  // namespace

SettingsPage::SettingsPage(desk::Desk& desk, Settings& settings, QWidget* parent)
    : Page(QStringLiteral("settings"), parent), m_desk(desk), m_settings(settings) {
    QPushButton* back = addSecondary(tr("Back"), QStringLiteral("settings.back"));
    setPrimary(tr("Save whom to call"));
    connect(back, &QPushButton::clicked, this, &SettingsPage::left);
    connect(this, &Page::pressed, this, &SettingsPage::saveUnit);
}

void SettingsPage::begin() {
    startOver();
    errors()->clear();
    column()->addWidget(pageHeader(
        tr("Settings"), tr("Whom to call is part of the record. The rest is kept on this computer "
                           "and holds as soon as it is chosen.")));
    addUnit();
    addLook();
    if (m_offersLock) addLock();
    addVisit();
    m_keys = cardIn(column(), tr("Keys of a visit"),
                    tr("Every act of a visit has a key, and a pedal is a key too."));
    addKeys();
    scrollToTop();
    m_name->edit()->setFocus();
}

void SettingsPage::addUnit() {
    QVBoxLayout* card = cardIn(column(), tr("Whom to call"),
                               tr("Stands on stop-and-call cards and on every paper that goes "
                                  "home. Try each number once before you save it."));
    m_name = new WordsField(tr("Name of the unit"), QStringLiteral("unitName"), Must::MayStayEmpty);
    m_emergency = new WordsField(tr("Ambulance"), QStringLiteral("unitEmergency"),
                                 Must::MayStayEmpty, tr("As it is dialled from a home."));
    m_teamNow = new WordsField(tr("The team, day and night"), QStringLiteral("unitTeamNow"),
                               Must::Fill, tr("Somebody answers at any hour."));
    m_teamToday = new WordsField(tr("The team, the same day"), QStringLiteral("unitTeamToday"),
                                 Must::MayStayEmpty, tr("For what can wait until it opens."));
    m_policy = new WordsField(tr("Local policy that comes first"), QStringLiteral("unitPolicy"),
                              Must::MayStayEmpty, tr("Its name, as it is printed on papers."));
    const record::SetUnit unit = m_desk.view().house.unit.value_or(record::SetUnit());
    const std::pair<WordsField*, const std::string*> fields[] = {{m_name, &unit.name},
                                                                 {m_emergency, &unit.emergency},
                                                                 {m_teamNow, &unit.teamNow},
                                                                 {m_teamToday, &unit.teamToday},
                                                                 {m_policy, &unit.policy}};
    for (const auto& [field, words] : fields) {
        field->setWords(shown(*words));
        card->addWidget(field);
        connect(field, &WordsField::changed, this, [this] { m_saved->hide(); });
    }
    m_saved = text({}, Size::Body, Tone::Leaf, Weight::Strong);
    m_saved->setObjectName(QStringLiteral("settings.saved"));
    m_saved->hide();
    card->addWidget(m_saved);
}

void SettingsPage::goOn(QWidget* from) {
    if (qobject_cast<QLineEdit*>(from)) Page::goOn(from);
}

void SettingsPage::saveUnit() {
    for (WordsField* field : {m_name, m_emergency, m_teamNow, m_teamToday, m_policy})
        if (!field->check()) {
            field->edit()->setFocus();
            return scrollTo(field);
        }
    desk::Command command = m_desk.command(record::SetUnit{.name = m_name->words(),
                                                           .emergency = m_emergency->words(),
                                                           .teamNow = m_teamNow->words(),
                                                           .teamToday = m_teamToday->words(),
                                                           .policy = m_policy->words()});
    command.visit.reset();
    if (!errors()->took(m_desk.handle(command))) return;
    m_saved->setText(tr("✓  Saved. Cards and papers say this from now on."));
    m_saved->show();
    scrollTo(m_saved);
}

void SettingsPage::addLook() {
    QVBoxLayout* card = cardIn(column(), tr("How it looks"));
    auto* scheme = new Choice(QStringLiteral("lookScheme"), Pick::One,
                              {{schemeWord(SchemeChoice::Platform), tr("As this computer")},
                               {schemeWord(SchemeChoice::Light), tr("Light")},
                               {schemeWord(SchemeChoice::Dark), tr("Dark")},
                               {schemeWord(SchemeChoice::HighContrast),
                                tr("High contrast, in this computer's colours")}});
    scheme->choose(schemeWord(Look::instance().choice()));
    std::vector<Option> sizes;
    for (const int percent : {100, 125, 150, 175, 200})
        sizes.push_back({QString::number(percent), tr("%1 %").arg(percent)});
    auto* size = new Choice(QStringLiteral("lookText"), Pick::One, sizes);
    for (const Option& one : sizes)
        size->button(one.word)->setAccessibleName(tr("Text at %1 %").arg(one.word));
    size->choose(QString::number(qRound(theme().textFactor() * 100)));
    card->addWidget(new Field(tr("Colours"), scheme));
    card->addWidget(new Field(tr("Size of the text"), size));
    connect(scheme, &Choice::changed, this, [this, scheme] {
        m_settings.set(Setting::Scheme, scheme->word());
        Look::instance().apply(schemeFrom(scheme->word()), theme().textFactor());
    });
    connect(size, &Choice::changed, this, [this, size] {
        const double factor = size->word().toDouble() / 100;
        m_settings.set(Setting::TextFactor, factor);
        Look::instance().apply(Look::instance().choice(), factor);
    });
}

Choice* SettingsPage::onOrOff(const QString& objectName, Setting setting) {
    auto* made =
        new Choice(objectName, Pick::One, {{switchedOn, tr("Yes")}, {switchedOff, tr("No")}});
    made->choose(m_settings.isOn(setting) ? switchedOn : switchedOff);
    connect(made, &Choice::changed, this, [this, made, setting] {
        m_settings.set(setting, made->word() == switchedOn);
        Q_EMIT visitSettingsChanged();
    });
    return made;
}

void SettingsPage::addVisit() {
    QVBoxLayout* card = cardIn(column(), tr("In a visit"));
    card->addWidget(new Field(tr("One soft tone when a timed phase is over"),
                              onOrOff(QStringLiteral("phaseTone"), Setting::PhaseTone),
                              tr("Never in a return demonstration, and never repeated.")));
    card->addWidget(
        new Field(tr("The learner's window opens by itself on a second screen"),
                  onOrOff(QStringLiteral("learnerOpens"), Setting::LearnerOpens),
                  tr("On one screen it is turned by its key, whatever is chosen here.")));
}

void SettingsPage::addLock() {
    std::vector<Option> minutes;
    for (const int one : {2, 5, 10, 15})
        minutes.push_back({QString::number(one), tr("%n minutes", nullptr, one)});
    auto* after = new Choice(QStringLiteral("lockAfter"), Pick::One, minutes);
    after->choose(m_settings.words(Setting::LockAfterMinutes));
    cardIn(column(), tr("When nobody is here"))
        ->addWidget(new Field(tr("Locks when nothing was touched for"), after,
                              tr("20 seconds before, it says so. In a visit the keys and clocks "
                                 "go on; names and notes are hidden.")));
    connect(after, &Choice::changed, this, [this, after] {
        m_settings.set(Setting::LockAfterMinutes, after->word().toInt());
        Q_EMIT lockAfterChanged(after->word().toInt());
    });
}

void SettingsPage::addKeys() {
    auto* set = plainButton(tr("Set the keys"), QStringLiteral("settings.keys"));
    m_keys->addWidget(set, 0, Qt::AlignLeading);
    connect(set, &QPushButton::clicked, this, [this, set] {
        set->hide();
        Keys keys;
        keys.read(m_settings.words(Setting::VisitKeys));
        Question* question = askKeys(
            keys,
            [this](const Keys& changed) {
                m_settings.set(Setting::VisitKeys, changed.stored());
                Q_EMIT visitSettingsChanged();
            },
            this);
        m_keys->addWidget(question);
        connect(question, &Question::left, this, [set, question] {
            question->hide();
            question->deleteLater();
            set->show();
            set->setFocus();
        });
        if (QWidget* first = question->findChild<QWidget*>(QStringLiteral("set-next")))
            first->setFocus();
    });
}

}  // namespace ui
