// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/printing.h"

#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>

namespace ui {

base::Result<Printed> print(const render::Paper& paper, QWidget* parent) {
    QPrinter printer(QPrinter::HighResolution);
    printer.setPageSize(
        QPageSize(paper.pageKind() == render::PageKind::A4 ? QPageSize::A4 : QPageSize::Letter));
    printer.setFullPage(true);
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted) return Printed::ChangedMind;
    QPainter painter;
    if (!painter.begin(&printer))
        return base::Error{base::Code::FileUnwritable,
                           {printer.printerName().toStdString(), "the printer takes nothing"}};
    for (int page = 0; page < paper.pageCount(); ++page) {
        if (page > 0) printer.newPage();
        paper.paintPage(painter, page);
    }
    return Printed::Done;
}

}  // namespace ui
