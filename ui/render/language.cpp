// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

namespace render {
namespace {

bool install(const QLocale& locale, const QString& name, const QString& folder) {
    auto* translator = new QTranslator(qApp);
    if (translator->load(locale, name, QStringLiteral("_"), folder))
        return QCoreApplication::installTranslator(translator);
    delete translator;
    return false;
}

}  // namespace

void speak(const QLocale& locale) {
    const QString own = QStringLiteral(":/translations"), name = QStringLiteral("ninebark");
    // English lies below: it has the forms of "1 cue" and "2 cues".
    install(QLocale(QLocale::English), name, own);
    if (locale.language() == QLocale::English || !install(locale, name, own)) return;
    // The buttons of the platform's own dialogs, in the language that the windows speak.
    install(locale, QStringLiteral("qtbase"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
}

}  // namespace render
