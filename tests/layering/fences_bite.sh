#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Ninebark authors
# SPDX-License-Identifier: GPL-3.0-or-later
# Each fence of includes.cmake is crossed once in a small tree of its own and has to say so by its
# rule's name; the same tree without the crossing has to pass. Started by CTest with the Qt headers' folder.
set -uo pipefail
here=$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd -P)
headers=$1
yard=$(mktemp -d)
trap 'rm -rf -- "$yard"' EXIT
failures=0
count=0

fences() { cmake -DROOT="$yard/tree" -DQT_HEADERS="$headers" -P "$here/includes.cmake" 2>&1; }

# A tree in which every layer does what it may.
sound_tree() {
    rm -rf -- "$yard/tree"
    mkdir -p "$yard/tree/core/"{base,packs,record,desk,store} "$yard/tree/ui/"{render,visit,learnerwindow,pieces} \
        "$yard/tree/app" "$yard/tree/tests/core"
    printf '#include <QDateTime>\nint f() { return clock_gettime(0, 0); }\n' >"$yard/tree/core/base/clock.cpp"
    printf '#include "base/clock.h"\n// currentDateTime is not asked here, tr() neither\n#include <QString>\n' \
        >"$yard/tree/core/packs/pack.cpp"
    printf '#include "packs/pack.h"\n' >"$yard/tree/core/record/record.cpp"
    printf '#include <QSqlQuery>\n#include "desk/desk.h"\n' >"$yard/tree/core/store/store.cpp"
    printf '#include <QPainter>\n#include "record/record.h"\n' >"$yard/tree/ui/render/page.cpp"
    printf '#include <QWidget>\n#include "render/page.h"\nauto s = tr("yes");\n' >"$yard/tree/ui/visit/visit.cpp"
    printf '#include <QWidget>\n#include "pieces/learnersees.h"\n#include "render/page.h"\n' \
        >"$yard/tree/ui/learnerwindow/window.cpp"
    printf '#include "store/store.h"\n#include "visit/visit.h"\n' >"$yard/tree/app/main.cpp"
    printf 'TEST(A, B) { EXPECT_TRUE(QTest::qWaitFor(ready)); }\n' >"$yard/tree/tests/core/a_test.cpp"
}

# crosses RULE FILE LINE: LINE added to FILE has to be refused by RULE.
crosses() {
    local said
    count=$((count + 1))
    sound_tree
    mkdir -p "$(dirname -- "$yard/tree/$2")"
    printf '%b\n' "$3" >>"$yard/tree/$2"
    if said=$(fences); then
        failures=$((failures + 1))
        printf 'NOT REFUSED: %s in %s\n' "$3" "$2"
    elif [[ $said != *"$2: [$1]"* ]]; then
        failures=$((failures + 1))
        printf 'REFUSED OTHERWISE: %s in %s\n%s\n' "$3" "$2" "$said"
    fi
}

sound_tree
fences || { echo 'THE SOUND TREE IS REFUSED'; exit 1; }

crosses qt-modules core/packs/pack.cpp '#include <QImage>'
crosses qt-modules core/packs/pack.cpp '#include <QtGui/QImage>'
crosses qt-modules core/packs/pack.cpp '  #  include <QtWidgets>'
crosses qt-modules core/packs/pack.h '#include <QSqlQuery>'
crosses qt-modules core/store/store.cpp '#include <QPixmap>'
crosses qt-modules core/store/store.cpp '#include <QPrinter>'
crosses qt-modules ui/render/page.cpp '#include <QLabel>'
crosses qt-modules ui/render/page.cpp '#include <QPrinter>'
crosses qt-modules ui/render/page.cpp '#include <QSqlDatabase>'
crosses qt-modules ui/visit/visit.cpp '#include <QSqlDatabase>'
crosses qt-modules app/main.cpp '#include <QTest>'
crosses layers core/packs/pack.cpp '#include "store/store.h"'
crosses layers core/packs/pack.cpp '#include "render/page.h"'
crosses layers core/packs/pack.cpp '#include <sqlite3.h>'
crosses layers core/store/store.cpp '#include "visit/visit.h"'
crosses layers ui/render/page.cpp '#include "visit/visit.h"'
crosses layers ui/render/page.cpp '#include "store/store.h"'
crosses layers ui/visit/visit.cpp '#include "store/store.h"'
crosses storeys core/packs/pack.cpp '#include "record/record.h"'
crosses storeys core/base/id.cpp '#include "packs/pack.h"'
crosses storeys core/shed/shed.cpp '#include "base/id.h"'
crosses learner-window ui/learnerwindow/window.cpp '#include "visit/visit.h"'
crosses learner-window ui/learnerwindow/window.cpp '#include "pieces/moment.h"'
crosses learner-window ui/learnerwindow/window.cpp '#include "pieces/stepview.h"'
crosses learner-window ui/learnerwindow/window.h '#include "desk/desk.h"'
crosses learner-window ui/learnerwindow/window.h '#include "record/payload.h"'
crosses learner-window ui/pieces/learnersees.h '#include "practice/state.h"'
crosses learner-window ui/pieces/band.h '#include "pieces/moment.h"'
crosses clock core/record/record.cpp 'auto t = QDateTime::currentDateTimeUtc();'
crosses clock ui/visit/visit.cpp 'auto t = QDateTime::currentMSecsSinceEpoch();'
crosses clock app/main.cpp 'clock_gettime(CLOCK_MONOTONIC, &at);'
crosses clock core/store/store.cpp 'auto t = std::chrono::system_clock::now();'
crosses clock core/packs/pack.cpp 'auto t = time(nullptr);'
crosses no-tr core/packs/pack.cpp 'auto s = tr("a word");'
crosses no-tr core/store/store.cpp 'auto s = QObject::tr("a word");'
crosses qtest-macros tests/core/a_test.cpp 'QVERIFY(1 == 2);'
crosses qtest-macros tests/core/a_test.cpp 'QCOMPARE(1, 2);'
crosses qtest-macros tests/core/a_test.cpp 'QTRY_VERIFY(false);'
crosses sleep tests/core/a_test.cpp 'std::this_thread::sleep_for(1s);'
crosses sleep tests/core/a_test.cpp 'QThread::msleep(5);'
crosses sleep tests/core/a_test.cpp 'QTest::qWait(50);'
crosses sleep tests/core/wait.sh 'true; sl\0145ep 1'

printf '%d crossings tried, %d not refused as they should be\n' "$count" "$failures"
((failures == 0))
