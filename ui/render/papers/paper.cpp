// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/paper.h"

#include <QPageSize>
#include <QPainter>

#include "render/words.h"

namespace render {
namespace {

constexpr double paperPt = unitsPerPoint;
constexpr double sideMargin = 42 * paperPt;
constexpr double topMargin = 26 * paperPt;
constexpr double bottomMargin = 26 * paperPt;
constexpr double headerGap = 9 * paperPt;
constexpr double footerGap = 8 * paperPt;
constexpr double leastOnLast = 0.36;  ///< of what a page has room for

QSizeF sizeOf(PageKind kind) {
    return QPageSize(kind == PageKind::A4 ? QPageSize::A4 : QPageSize::Letter)
        .size(QPageSize::Point);
}

// A band over the whole width in a thick broken frame: it survives a black-and-white printer.
Strip bandStrip(const QString& text, const LayoutContext& context) {
    LayoutContext within = context;
    const double pad = 4 * paperPt;
    within.width = context.width - 4 * pad;
    const Strip words =
        joined(textStrips({text, TextStyle::SmallStrong}, Align::Centre, 0, within));
    Strip band;
    band.height = words.height + pad;
    band.paint = [=, height = band.height](QPainter& painter) {
        QPen pen(context.theme.color(Role::Ink), 1.6 * paperPt);
        pen.setJoinStyle(Qt::MiterJoin);
        pen.setStyle(Qt::DashLine);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(0.8 * paperPt, 0, context.width - 1.6 * paperPt, height));
        painter.translate(2 * pad, pad / 2);
        words.paint(painter);
        painter.translate(-2 * pad, -pad / 2);
    };
    return band;
}

Strip thinRule(const LayoutContext& context, double before, Role role, double weight) {
    Strip rule;
    rule.before = before;
    rule.height = weight * paperPt;
    rule.paint = [=](QPainter& painter) {
        painter.fillRect(QRectF(0, 0, context.width, weight * paperPt), context.theme.color(role));
    };
    return rule;
}

// How far the strips from `first` on reach that must stand together.
double heightOfGroup(const Strips& strips, size_t first, size_t& end) {
    double height = 0;
    end = first;
    while (end < strips.size()) {
        height += strips[end].height + (end == first ? 0 : strips[end].before);
        if (!strips[end++].keepsNext) break;
    }
    return height;
}

// An empty box in place of a letter could be read past: what is missing is said in words.
CautionBox unprintableBox(const std::set<char32_t>& letters) {
    constexpr int mostNamed = 8;
    QStringList named;
    for (const char32_t letter : letters) {
        if (named.size() == mostNamed) break;
        named += QStringLiteral("U+%1").arg(uint(letter), 4, 16, QLatin1Char('0')).toUpper();
    }
    if (letters.size() > size_t(mostNamed)) named += QString(QChar(0x2026));
    return {packs::Level::Caution,
            signalWords(packs::Level::Caution),
            {Papers::tr("This computer has no font for some letters of this paper: %1. An empty "
                        "box stands for each of them. Write them in by hand, or print the paper "
                        "where the font is installed.")
                 .arg(named.join(QStringLiteral(", ")))}};
}

}  // namespace

Paper::Paper(Document document, PageKind kind) : m_document(std::move(document)), m_kind(kind) {
    layOut();
    if (m_unprintable->empty()) return;
    m_document.blocks.insert(m_document.blocks.begin(), unprintableBox(*m_unprintable));
    m_pages.clear();
    layOut();
}

QSizeF Paper::pagePoints() const { return sizeOf(m_kind); }

LayoutContext Paper::context() const {
    LayoutContext context;
    context.width = sizeOf(m_kind).width() * paperPt - 2 * sideMargin;
    context.direction = m_document.direction;
    context.unprintable = m_unprintable;
    return context;
}

// Identifiers and page stand together: a sheet that strays can be put back.
Strip Paper::header(int page) const {
    const LayoutContext within = context();
    const QString count = Papers::tr("Page %1 of %2").arg(page + 1).arg(pageCount());
    const bool isAgain = page > 0 && !m_document.identifiersAgain.isEmpty();
    const QString& who = isAgain ? m_document.identifiersAgain : m_document.identifiers;
    const Table line{{{{}, 0.7}, {{}, 0.3, 0, Align::End}, {{}, 0, 62, Align::End}},
                     {{{{who, TextStyle::SmallStrong},
                        {m_document.title, TextStyle::Fine},
                        {count, TextStyle::SmallStrong}}}},
                     Rules::None};
    Strips strips;
    if (!m_document.bands.isEmpty())
        strips.push_back(bandStrip(m_document.bands.join(QStringLiteral("  \u2013  ")), within));
    Strips words = tableStrips(line, within);
    if (!strips.empty() && !words.empty()) words.front().before = 2.5 * paperPt;
    strips.insert(strips.end(), words.begin(), words.end());
    strips.push_back(thinRule(within, 0, Role::Ink, 0.8));
    return joined(std::move(strips));
}

Strip Paper::footer() const {
    const LayoutContext within = context();
    Strips strips =
        textStrips({m_document.footer, TextStyle::Fine}, Align::Start, 1.5 * paperPt, within);
    strips.insert(strips.begin(), thinRule(within, 0, Role::Rule, 0.5));
    return joined(std::move(strips));
}

void Paper::layOut() {
    const LayoutContext within = context();
    Strips strips;
    for (const Block& block : m_document.blocks) {
        const Strips more = stripsOf(block, within);
        strips.insert(strips.end(), more.begin(), more.end());
    }
    const double bottom =
        sizeOf(m_kind).height() * paperPt - bottomMargin - footer().height - footerGap;
    const Tops tops{topMargin + header(0).height + headerGap,
                    topMargin + header(1).height + headerGap};
    m_pages = paged(strips, tops, bottom);
    // A sheet with a line or two on it is easily lost: the others give it some of theirs.
    const double room = bottom - tops.others;
    for (double less = 0.02; less < leastOnLast && isLastNearlyEmpty(tops, room); less += 0.02) {
        auto again = paged(strips, tops, bottom - less * room);
        if (again.size() != m_pages.size()) break;
        m_pages = std::move(again);
    }
}

bool Paper::isLastNearlyEmpty(const Tops& tops, double room) const {
    if (m_pages.size() < 2) return false;
    const Page& last = m_pages.back();
    return last.back().y + last.back().strip.height - tops.others < leastOnLast * room;
}

std::vector<Paper::Page> Paper::paged(const Strips& strips, const Tops& tops, double bottom) {
    std::vector<Page> pages;
    Page page;
    double y = tops.first;
    const auto turn = [&](const Strip& next) {
        pages.push_back(std::exchange(page, {}));
        y = tops.others;
        if (!next.repeats) return;
        page.push_back({y, *next.repeats});
        y += next.repeats->height;
    };
    for (size_t from = 0, end = 0; from < strips.size(); from = end) {
        const double height = heightOfGroup(strips, from, end);
        double before = page.empty() ? 0 : strips[from].before;
        if (!page.empty() && y + before + height > bottom) turn(strips[from]), before = 0;
        for (size_t i = from; i < end; ++i) {
            y += i == from ? before : strips[i].before;
            // A group taller than a page is parted after all.
            if (!page.empty() && y + strips[i].height > bottom) turn(strips[i]);
            page.push_back({y, strips[i]});
            y += strips[i].height;
        }
    }
    if (!page.empty() || pages.empty()) pages.push_back(std::move(page));
    return pages;
}

void Paper::paintPage(QPainter& painter, int page) const {
    if (page < 0 || page >= pageCount()) return;
    const double scale = painter.device()->logicalDpiX() / unitsPerInch;
    const auto paintAt = [&](const Strip& strip, double y) {
        if (!strip.paint) return;
        painter.save();
        painter.translate(sideMargin, y);
        strip.paint(painter);
        painter.restore();
    };
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setLayoutDirection(Qt::LeftToRight);
    painter.scale(scale, scale);
    paintAt(header(page), topMargin);
    for (const Placed& placed : m_pages[size_t(page)]) paintAt(placed.strip, placed.y);
    const Strip foot = footer();
    paintAt(foot, sizeOf(m_kind).height() * paperPt - bottomMargin - foot.height);
    painter.restore();
}

}  // namespace render
