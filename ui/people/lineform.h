// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "parts/choice.h"
#include "parts/field.h"
#include "parts/page.h"

namespace ui {

/// A line with its insertion baseline: what later readings are held against. Also the correction of
/// one that is in the record: what was written before stays there.
class LineForm : public Page {
    Q_OBJECT
  public:
    explicit LineForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin();
    void beginCorrection(const base::LineId& line);

  Q_SIGNALS:
    void saved(const QString& done);  ///< with what is said of it on the next page
    void left();

  private:
    void beginAs(std::optional<record::AddLine> corrected);
    void build();
    void sayMissing();
    void followKind();
    void addBaseline(QVBoxLayout* card);
    void addKit(QVBoxLayout* card);
    void fill(const record::AddLine& line);
    void watch();
    void sayAtOnce();
    void sayMarks();
    void save();
    record::AddLine said() const;

    desk::Desk& m_desk;
    std::optional<record::AddLine> m_corrected;  ///< as the record has it; none: a new line
    Choice *m_kind = nullptr, *m_arm = nullptr;
    Choice *m_dressing = nullptr, *m_securement = nullptr, *m_antiseptic = nullptr;
    DateField *m_inserted = nullptr, *m_lastChange = nullptr;
    NumberField *m_outside = nullptr, *m_marks = nullptr, *m_girth = nullptr, *m_lumens = nullptr;
    WordsField* m_why = nullptr;
    QLabel *m_alike = nullptr, *m_allergies = nullptr;
};

/// That a line was removed, and when.
class LineRemovedForm : public Page {
    Q_OBJECT
  public:
    explicit LineRemovedForm(desk::Desk& desk, QWidget* parent = nullptr);
    void begin(const base::LineId& line);

  Q_SIGNALS:
    void saved(const QString& done);  ///< with what is said of it on the next page
    void left();

  private:
    void save();

    desk::Desk& m_desk;
    base::LineId m_line;
    DateField* m_on = nullptr;
    WordsField* m_why = nullptr;
};

}  // namespace ui
