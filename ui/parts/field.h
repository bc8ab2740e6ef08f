// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QDate>
#include <QLineEdit>
#include <QWidget>
#include <optional>
#include <string>

class QLabel;
class QVBoxLayout;

namespace ui {

enum class Must { Fill, MayStayEmpty };
/// The property of a line of words that has to be filled in.
constexpr const char* mustFillMark = "mustFill";

/// A form row: its name above, the thing to fill in, one quiet line below that explains or, when
/// something is wrong, says so in place.
class Field : public QWidget {
    Q_OBJECT
  public:
    Field(const QString& name, QWidget* input, const QString& hint = {}, QWidget* parent = nullptr);
    void setHint(const QString& hint);
    /// Says what is wrong and what to do; empty: nothing is.
    void setProblem(const QString& sentence);
    QString problem() const { return m_problem; }
    QWidget* input() const { return m_input; }

  protected:
    /// Where the input is more than what is typed in: what carries the name, what is said of it,
    /// and the mark of something wrong.
    void setTypedIn(QWidget* part);

  private:
    void showBelow();

    QWidget *m_input, *m_typedIn;
    QLabel* m_below;
    QString m_hint, m_problem;
};

/// One line of words. Control signs and marks that turn the writing direction are taken out; what
/// is too long is refused with a sentence.
class WordsField : public Field {
    Q_OBJECT
  public:
    WordsField(const QString& name, const QString& objectName, Must must, const QString& hint = {});
    QString typed() const;
    std::string words() const { return typed().toStdString(); }
    void setWords(const QString& words);
    QLineEdit* edit() const { return m_edit; }
    /// Says what is wrong, if anything is.
    bool check();

  Q_SIGNALS:
    void changed();

  private:
    QLineEdit* m_edit;
    Must m_must;
};

/// A whole number from `least` to `most`.
class NumberField : public Field {
    Q_OBJECT
  public:
    struct Range {
        int least, most;
    };
    NumberField(const QString& name, const QString& objectName, Must must, Range range,
                const QString& hint = {});
    std::optional<int> number() const;
    QLineEdit* edit() const { return m_edit; }
    bool check();

  private:
    QLineEdit* m_edit;
    Must m_must;
    Range m_range;
};

/// A day, typed. Understood: 1961-05-03 and a month as a word, "3 May 1961" or "May 3, 1961".
/// 03/05/1961 is refused: it is two days in two countries. What was understood is written below in
/// full, with its weekday; a birth without, since nobody says it.
class DateField : public Field {
    Q_OBJECT
  public:
    enum class Of { Day, Birth };
    DateField(const QString& name, const QString& objectName, Must must, QDate latest,
              Of of = Of::Day);
    std::optional<QDate> date() const;
    std::string isoDate() const;  ///< "" when there is none
    void setDate(QDate date);
    QLineEdit* edit() const { return m_edit; }
    bool check();

  private:
    void echo();

    QLineEdit* m_edit;
    Must m_must;
    QDate m_latest;
    Of m_of;
};

/// The day that was typed, if it can be only one.
std::optional<QDate> dateFrom(const QString& typed);
/// Text without control signs and marks that turn the writing direction, spaces made single.
QString harmless(const QString& typed);
/// Letters of a name or a line: of any script, they are within what a record takes of one.
constexpr int mostLetters = 1000;

}  // namespace ui
