// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/labels.h"

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLocale>
#include <map>

#include "record/record.h"
#include "render/words.h"

namespace ui {
namespace {

struct LabelWords {
    Q_DECLARE_TR_FUNCTIONS(LabelWords)
};

QString fileOf(CodeList list) {
    switch (list) {
        case CodeList::Relationship:
            return QStringLiteral(":/codes/relationship.json");
        case CodeList::Barrier:
            return QStringLiteral(":/codes/barrier.json");
        case CodeList::Allergen:
            return QStringLiteral(":/codes/allergen.json");
        case CodeList::Line:
            return QStringLiteral(":/codes/line.json");
        case CodeList::Dressing:
            return QStringLiteral(":/codes/dressing.json");
        case CodeList::Securement:
            return QStringLiteral(":/codes/securement.json");
        case CodeList::Antiseptic:
            return QStringLiteral(":/codes/antiseptic.json");
    }
    return {};
}

QJsonArray wordsIn(CodeList list) {
    QFile file(fileOf(list));
    if (!file.open(QIODevice::ReadOnly)) return {};
    return QJsonDocument::fromJson(file.readAll()).object()[QLatin1String("words")].toArray();
}

std::vector<Option> readList(CodeList list) {
    std::vector<Option> options;
    const QString language = QLocale().name().section(u'_', 0, 0);
    for (const auto& word : wordsIn(list)) {
        const QJsonObject label = word[QLatin1String("label")].toObject();
        const QString english = label[QLatin1String("en")].toString();
        options.push_back(
            {word[QLatin1String("id")].toString(), label[language].toString(english)});
    }
    return options;
}

}  // namespace

std::vector<Option> optionsOf(CodeList list) {
    static std::map<CodeList, std::vector<Option>> read;
    const auto known = read.find(list);
    if (known != read.end()) return known->second;
    return read[list] = readList(list);
}

QString labelOf(CodeList list, const std::string& word) {
    for (const Option& option : optionsOf(list))
        if (option.word.toStdString() == word) return option.label;
    return shown(word);
}

QString whoseWords(const record::Record& record, const record::Learner& learner) {
    const record::AddPatient& patient = record.patient;
    const QString name = render::isolated(render::plain(patient.name));
    const QString born = render::bornWords(patient.born, QLocale());
    const QString number = render::isolated(render::plain(patient.number));
    if (learner.said.isPatient)
        return LabelWords::tr("%1, born %2, number %3: the patient").arg(name, born, number);
    const QString relation = labelOf(CodeList::Relationship, learner.said.relationship);
    return LabelWords::tr("%1 (%2), for %3, born %4, number %5", "who is taught, for whom")
        .arg(render::isolated(render::plain(learner.said.name)), relation, name, born, number);
}

std::vector<Option> languageOptions() {
    return {{QStringLiteral("en"), QStringLiteral("English")},
            {QStringLiteral("es"), QStringLiteral("Español")},
            {QStringLiteral("ar"), QStringLiteral("العربية")}};
}

}  // namespace ui
