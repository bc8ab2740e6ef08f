# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by tests/long.sh: pictures of every window along a whole visit in each look, of every page
# of the papers in colour and in grey, and of the arm at every step, with sheets of them all, for
# someone to look at. It finds nothing wrong by itself but a page or picture that is missing or bare.
export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 TZ=UTC NINEBARK_SEED=${NINEBARK_SEED:-$RANDOM}
configure check
build_targets ninebark render_tests gui_tests
looked=$out/pictures
rm -rf -- "$looked"
mkdir -p -- "$looked/sheets"
bad=0
missing() { complain "$*" && bad=1; }

# sheet NAME COLUMNS FILES...: the files side by side, each with its name.
sheet() {
    local name=$1 columns=$2
    shift 2
    montage -label '%t' "$@" -tile "${columns}x" -geometry '640x>+6+6' -background '#d8d5cb' \
        "$looked/sheets/$name.png" || missing "no sheet $name"
}

# play NAME TEXT-FACTOR SCHEME [-reverse]: a whole visit through the windows in that look.
play() {
    local name=$1 factor=$2 scheme=$3
    shift 3
    printf '[look]\ntext-factor=%s\nscheme=%s\n' "$factor" "$scheme" >"$looked/$name.ini"
    "$tree/ninebark" visit --out "$looked/$name" --settings "$looked/$name.ini" "$@" >/dev/null ||
        missing "the visit could not be played: $name"
    sheet "windows-$name" 3 "$looked/$name"/*.png
}
play light 1 light
play dark 1 dark
play high-contrast 1 high-contrast
play twice-as-large 2 light
play right-to-left 1 light -reverse

# The windows that no played visit comes through.
mkdir -p -- "$looked/besides"
NINEBARK_PICTURES=$looked/besides "$tree/tests/gui_tests" --gtest_filter='*ForLookingAt' >"$looked/besides.log" 2>&1 ||
    missing "the windows beside the visit fail: $looked/besides.log"
for look in light dark high twice mirrored; do sheet "besides-$look" 3 "$looked/besides"/*_"$look".png; done

# Every page of every paper, as a colour and as a black-and-white printer would show it.
mkdir -p -- "$looked/papers"
(cd -- "$looked/papers" && NINEBARK_PICTURES=$looked/papers "$tree/tests/render_tests" --gtest_filter='*ForLookingAt' \
    >"$looked/render.log" 2>&1) || missing "the papers, lanes or scene fail: $looked/render.log"
for paper in chart certificate; do cp -- "$looked/light/$paper.pdf" "$looked/papers/visit_$paper.pdf"; done
for pdf in "$looked/papers"/*.pdf; do
    pdftoppm -r 70 -png "$pdf" "${pdf%.pdf}" && pdftoppm -r 70 -gray -png "$pdf" "${pdf%.pdf}_grey" ||
        missing "no pages of $pdf"
done
sheet papers 4 "$looked/papers"/*_grey-*.png
sheet papers-colour 4 $(ls -- "$looked/papers"/{paper,visit}_*-*.png | grep -v _grey-)

# A picture of one colour shows nothing.
while IFS= read -r -d '' picture; do
    [[ $(identify -format '%k' "$picture") -gt 2 ]] || missing "nothing on $picture"
done < <(find "$looked" -name '*.png' -print0)

count=$(find "$looked" -name '*.png' ! -path '*/sheets/*' | wc -l)
say "pictures: $count in $looked, sheets of them in $looked/sheets; seed: $NINEBARK_SEED"
exit "$bad"
