// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSizeF>

#include "base/result.h"
#include "render/papers/blocks.h"
#include "render/papers/strips.h"

class QPainter;

namespace render {

enum class PageKind { A4, Letter };

/// A document laid out on pages. Pages break at the same words whatever they are painted on: a
/// QPdfWriter, a QPrinter, a QImage. Needs a QGuiApplication, for the fonts.
class Paper {
  public:
    explicit Paper(Document document, PageKind kind = PageKind::A4);

    int pageCount() const { return int(m_pages.size()); }
    PageKind pageKind() const { return m_kind; }
    QSizeF pagePoints() const;  ///< width and height, 1/72 inch
    const Document& document() const { return m_document; }

    /// Paints page `page`, counted from 0, from the painter's origin, the upper left corner of the
    /// sheet (not of its margins), in the size that the painter's device calls an inch.
    void paintPage(QPainter& painter, int page) const;

    /// The pages as PDF. Text can be searched, fonts are embedded, pictures are lines.
    QByteArray pdf() const;
    /// Writes the PDF, for its owner's eyes only: afterwards there is the new file or what was
    /// there before, never half of one. Errors: FileUnwritable.
    base::Outcome writePdf(const QString& path) const;

  private:
    struct Placed {
        double y = 0;
        Strip strip;
    };
    using Page = std::vector<Placed>;

    /// Where what is on the first page begins, and on all others.
    struct Tops {
        double first = 0, others = 0;
    };

    void layOut();
    static std::vector<Page> paged(const Strips& strips, const Tops& tops, double bottom);
    bool isLastNearlyEmpty(const Tops& tops, double room) const;
    LayoutContext context() const;
    Strip header(int page) const;
    Strip footer() const;

    Document m_document;
    PageKind m_kind;
    std::shared_ptr<std::set<char32_t>> m_unprintable = std::make_shared<std::set<char32_t>>();
    std::vector<Page> m_pages;
};

/// Writes text the same way: the new file or what was there before. Errors: FileUnwritable.
base::Outcome writeWhole(const QString& path, const QByteArray& bytes);

}  // namespace render
