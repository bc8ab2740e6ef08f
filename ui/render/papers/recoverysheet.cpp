// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "render/papers/recoverysheet.h"

#include "render/papers/sections.h"
#include "render/words.h"

namespace render {

QString recordName(const base::LedgerId& begunAs) {
    const QString letters = QString::fromStdString(begunAs.text()).toUpper();
    return letters.left(4) + QLatin1Char('-') + letters.mid(4, 4);
}

Document recoverySheet(const QStringList& lines, const SheetMark& mark) {
    const QLocale locale;
    Document document;
    document.title = Papers::tr("Recovery sheet");
    document.footer = Papers::tr("Keep it locked away from the computer it belongs to.");
    document.language = QStringLiteral("en");
    std::vector<Block>& blocks = document.blocks;
    const auto say = [&blocks](const QString& words, TextStyle style) {
        blocks.push_back(Paragraph{Text{words, style}});
    };
    say(Papers::tr("Recovery sheet"), TextStyle::Title);
    say(Papers::tr("These four lines open a sealed record when nobody's passphrase is left."),
        TextStyle::Lead);
    blocks.push_back(Space{12});
    Table which = keyValues();
    addKeyValue(which, Papers::tr("Made"),
                Papers::tr("%1 (%2)", "when, offset")
                    .arg(momentWords(mark.madeMs, mark.offsetMinutes, locale),
                         offsetWords(mark.offsetMinutes)));
    addKeyValue(which, Papers::tr("Opens the record"), mark.record);
    makeLarge(which);
    blocks.push_back(which);
    blocks.push_back(Space{16});
    Table code{{{{}, 0, 60}, {{}, 1}}, {}};
    int number = 0;
    for (const QString& line : lines)
        code.rows.push_back(Row{
            {{Papers::tr("Line %1").arg(++number), TextStyle::Quiet}, {line, TextStyle::Title}}});
    blocks.push_back(code);
    blocks.push_back(Space{24});
    blocks.push_back(Heading{Papers::tr("How it is used")});
    say(Papers::tr("Start the program, choose “Open with the recovery sheet”, and compare the "
                   "name of the record there with the one above. Then type the four lines. "
                   "Capital and small letters are the same, dashes may be left out. Where a line "
                   "is mistyped, the program says which."),
        TextStyle::Body);
    say(Papers::tr("There is no letter O, I, L or U in the four lines: what is round is a zero, "
                   "what is upright a one."),
        TextStyle::Body);
    blocks.push_back(Heading{Papers::tr("How it is kept")});
    for (const QString& sentence :
         {Papers::tr("In an envelope that is closed and signed across, in a safe or with the "
                     "pharmacy, as local policy says."),
          Papers::tr("Never beside the computer, never photographed, never in an e-mail."),
          Papers::tr("When the envelope was opened, have a new sheet made, and destroy this "
                     "one.")})
        say(QStringLiteral("•  ") + sentence, TextStyle::Body);
    blocks.push_back(Space{12});
    blocks.push_back(
        CautionBox{packs::Level::Warning,
                   signalWords(packs::Level::Warning),
                   {Papers::tr("Whoever has this sheet and the computer reads every record in it."),
                    Papers::tr("Without this sheet and without a passphrase nobody ever reads "
                               "them again.")}});
    return document;
}

}  // namespace render
