// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLocale>
#include <QRegularExpression>

#include "parts/field.h"

namespace ui {
namespace {

int monthFrom(const QString& word) {
    const QString folded = word.toCaseFolded().remove(u'.');
    if (folded.size() < 3) return 0;
    for (const QLocale& locale : {QLocale(), QLocale::c()})
        for (int month = 1; month <= 12; ++month)
            for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat})
                for (const QString& name :
                     {locale.monthName(month, format), locale.standaloneMonthName(month, format)})
                    if (name.toCaseFolded().remove(u'.') == folded) return month;
    return 0;
}

std::optional<QDate> dayOf(int year, int month, int day) {
    const QDate date(year, month, day);
    return date.isValid() && year >= 1880 ? std::optional(date) : std::nullopt;
}

}  // namespace

std::optional<QDate> dateFrom(const QString& typed) {
    const QString words = harmless(typed);
    static const QRegularExpression iso(QStringLiteral("^(\\d{4})[-./](\\d{1,2})[-./](\\d{1,2})$"));
    static const QRegularExpression dayFirst(
        QStringLiteral("^(\\d{1,2})[. ] ?(?:de )?(\\p{L}+)\\.?,? (?:de )?(\\d{4})$"));
    static const QRegularExpression monthFirst(
        QStringLiteral("^(\\p{L}+)\\.? (\\d{1,2}),? (\\d{4})$"));
    if (const auto found = iso.match(words); found.hasMatch())
        return dayOf(found.captured(1).toInt(), found.captured(2).toInt(),
                     found.captured(3).toInt());
    if (const auto found = dayFirst.match(words); found.hasMatch())
        return dayOf(found.captured(3).toInt(), monthFrom(found.captured(2)),
                     found.captured(1).toInt());
    if (const auto found = monthFirst.match(words); found.hasMatch())
        return dayOf(found.captured(3).toInt(), monthFrom(found.captured(1)),
                     found.captured(2).toInt());
    return std::nullopt;
}

DateField::DateField(const QString& name, const QString& objectName, Must must, QDate latest, Of of)
    : Field(name, new QLineEdit),
      m_edit(qobject_cast<QLineEdit*>(input())),
      m_must(must),
      m_latest(latest),
      m_of(of) {
    m_edit->setObjectName(objectName);
    m_edit->setProperty(mustFillMark, must == Must::Fill);
    m_edit->setMaximumWidth(360);
    connect(m_edit, &QLineEdit::textChanged, this, [this] { echo(); });
    echo();
}

void DateField::echo() {
    if (!problem().isEmpty()) check();
    const auto day = dateFrom(m_edit->text());
    const QString full = m_of == Of::Birth ? tr("d MMMM yyyy", "date of birth in full")
                                           : tr("dddd, d MMMM yyyy", "date in full");
    setHint(day ? QLocale().toString(*day, full) : tr("For instance 3 May 1961, or 1961-05-03"));
}

std::optional<QDate> DateField::date() const { return dateFrom(m_edit->text()); }

std::string DateField::isoDate() const {
    const auto day = date();
    return day ? day->toString(Qt::ISODate).toStdString() : std::string();
}

void DateField::setDate(QDate date) {
    m_edit->setText(QLocale().toString(date, tr("d MMMM yyyy", "date to type")));
}

bool DateField::check() {
    const bool isEmpty = harmless(m_edit->text()).isEmpty();
    const auto day = date();
    if (isEmpty && m_must == Must::MayStayEmpty)
        setProblem({});
    else if (!day)
        setProblem(
            tr("This is not one clear day. Nothing was saved. Write the month as a word, "
               "for instance 3 May 1961."));
    else if (*day > m_latest)
        setProblem(tr("%1 lies in the future. Nothing was saved. Check the day, the month and "
                      "the year.")
                       .arg(QLocale().toString(*day, tr("d MMMM yyyy", "date to type"))));
    else
        setProblem({});
    return problem().isEmpty();
}

}  // namespace ui
