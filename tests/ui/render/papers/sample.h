// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "render/papers/paper.h"
#include "render/papers/papers.h"
#include "support/ward.h"

namespace render {

enum class Stage { NotYet, Ready, Signed };

/// A record made by the desk itself, with what papers have to show: guided practice with cues and
/// a phase stopped short, a lapse with its way back, a withdrawn lapse, a change on the patient.
class Sample {
  public:
    explicit Sample(Stage stage, const std::string& pack = "weekly-dressing-upper-arm");

    /// `language`: the hospital's, for the words of the pack.
    PaperData data(const std::string& language = "en") const;
    /// Of the steps to take home, the hospital's words English.
    PaperData steps(const std::string& learnersLanguage) const;
    support::Ward& ward() { return m_ward; }
    const packs::Pack& pack() const { return m_ward.taught().pack; }

  private:
    void guidedVisit();
    void visitWithLapse();
    void changeOnPatient();
    PaperData gathered(record::PaperKind kind, const record::Record& record,
                       const std::string& language) const;

    mutable support::Ward m_ward;
};

const QLocale& english();

/// "chart", "certificate" where the rules allow it, "home", and "steps" in two languages.
std::vector<std::pair<std::string, Document>> everyPaper(const PaperData& data,
                                                         const QLocale& locale,
                                                         const std::string& language = "ar");

/// The same with names of 300 letters, notes of 2000, and many lapses in the last visit.
PaperData overfull(PaperData data);
/// The same with a decision to go home with help, and the unit's own numbers to call.
PaperData withHelp(PaperData data);

/// In points, from the page's upper left corner.
struct Word {
    int page = 0;
    QRectF box;
    QString text;
};
/// Lines of one paragraph stand a little closer than their fonts' own boxes, never by more than
/// `share` of the lower one.
bool areOneOverTheOther(const QRectF& one, const QRectF& other, double share = 1.0 / 3);

/// The PDF through poppler's tools.
class Pdf {
  public:
    explicit Pdf(const Document& document, PageKind kind = PageKind::A4);
    /// As it is found by a search: NFKC, one space between words.
    QString text() const { return m_text; }
    QString page(int number) const;
    QString tool(const QString& program, const QStringList& before,
                 const QStringList& after = {}) const;
    int pages() const { return m_pages; }
    std::vector<Word> words() const;
    /// What zbarimg reads on a page, or the last one, made grey dots, 150 to the inch.
    QString codes(int page = 0) const;

  private:
    QString m_path, m_text;
    int m_pages = 0;
};

}  // namespace render
