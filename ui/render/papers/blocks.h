// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>
#include <variant>
#include <vector>

#include "packs/kit.h"
#include "render/lanes.h"

/// A paper before it is laid out: headings, tables and boxes as plain values, top to bottom.
namespace render {

/// Large is for what people read at home: 12 points at least (from memory: CDC, Simply Put, 3rd
/// edition, 2009, asks for 12 to 14).
enum class TextStyle {
    Title,
    Lead,
    Heading,
    Large,
    LargeQuiet,
    LargeStrong,
    Strong,
    Body,
    Quiet,
    Small,
    SmallStrong,
    Fine
};
enum class Struck { No, Yes };
/// Start and End follow the document's direction, Own the text's.
enum class Align { Start, End, Centre, Own };

/// One paragraph; a line feed starts a new line of it.
struct Text {
    QString text;
    TextStyle style = TextStyle::Body;
    Struck struck = Struck::No;
    QString mark = {};  ///< in a table: the name of an icon that stands before the text
};

struct Heading {
    QString text;
};

enum class Keep { Free, WithNext };

struct Paragraph {
    Text text;
    Align align = Align::Start;
    Keep keep = Keep::Free;
};

struct Column {
    QString title;
    double share = 1;   ///< of the width that columns in points leave
    double points = 0;  ///< a fixed width; 0: by share
    Align align = Align::Start;
};

enum class Rules { None, Rows };

struct Row {
    std::vector<Text> cells;
    bool isGroup = false;              ///< its first cell spans the table and names the rows below
    std::vector<Column> columns = {};  ///< its own, in place of the table's
};

/// Its header is said again on every page it reaches. Without titles there is none.
struct Table {
    std::vector<Column> columns;
    std::vector<Row> rows;
    Rules rules = Rules::Rows;
    TextStyle header = TextStyle::SmallStrong;
};

/// Framed: a box on its own, in large type. RunIn: one line after the other behind the signal word,
/// for a paper whose reader knows the cautions.
enum class CautionLook { Framed, List, RunIn };

/// Signal word, glyph and a thick border: legible without colour (ANSI Z535 words, own glyphs).
struct CautionBox {
    packs::Level level = packs::Level::Caution;
    QString word;
    QStringList sentences;
    CautionLook look = CautionLook::Framed;
};

enum class Verdict { Ready, NotYet };

/// The one thing the paper says, large, with its glyph.
struct VerdictBox {
    Verdict verdict = Verdict::NotYet;
    QString word;
    QString sentence;
};

struct LanesBlock {
    QString title;  ///< stays with the picture
    LanesData data;
};

/// A line to sign on, or what was signed: the caption stands below the line.
struct SignatureLine {
    QString written;
    QString caption;
    QByteArray drawing = {};  ///< SVG, above what is written
};
struct Signatures {
    std::vector<SignatureLine> lines;  ///< two beside each other
};

/// A square code for cameras, and beside it what it says, for people.
struct CodeBlock {
    QString content;
    Table beside;
    bool isEmpty = false;  ///< a frame of its size: there is nothing to say yet
};

struct Space {
    double points = 8;
};

using Block = std::variant<Heading, Paragraph, Table, CautionBox, VerdictBox, LanesBlock,
                           Signatures, CodeBlock, Space>;

struct Document {
    QString title;        ///< what kind of paper; also the file's title, so never a person's name
    QString identifiers;  ///< who it is about, two identifiers; on the first page
    QString identifiersAgain;  ///< on every other, with a very long name shortened; empty: the same
    QStringList bands;         ///< "invented people, not a chart"; on every page
    QString footer;            ///< on every page, before "page x of y"
    QString language;          ///< BCP 47
    Qt::LayoutDirection direction = Qt::LeftToRight;
    std::vector<Block> blocks;
};

}  // namespace render
