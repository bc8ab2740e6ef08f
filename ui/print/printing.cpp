// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "print/printing.h"

#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QStringList>

#include "dialogs/ask.h"

namespace ui::print {
namespace {

QStringList& printersBeforehand() {
    static QStringList files;
    return files;
}

/// The file's place stands for the printer's name: what printed nothing has to be found.
base::Error refusedBy(const QPrinter& printer) {
    const QString name =
        printer.printerName().isEmpty() ? printer.outputFileName() : printer.printerName();
    return {base::Code::FileUnwritable, {name.toStdString(), "the printer takes nothing"}};
}

}  // namespace

std::shared_ptr<QPrinter> ask(render::PageKind pages, QWidget* parent) {
    auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
    printer->setPageSize(
        QPageSize(pages == render::PageKind::A4 ? QPageSize::A4 : QPageSize::Letter));
    printer->setFullPage(true);
    const QString file =
        printersBeforehand().isEmpty() ? QString() : printersBeforehand().takeFirst();
    if (!file.isEmpty()) {
        printer->setOutputFileName(file);
        return printer;
    }
    if (ui::ask::isOffScreen()) return nullptr;
    QPrintDialog dialog(printer.get(), parent);
    return dialog.exec() == QDialog::Accepted ? printer : nullptr;
}

base::Outcome on(QPrinter& printer, const render::Paper& paper) {
    QPainter painter;
    if (!painter.begin(&printer)) return refusedBy(printer);
    for (int page = 0; page < paper.pageCount(); ++page) {
        if (page > 0 && !printer.newPage()) return refusedBy(printer);
        paper.paintPage(painter, page);
    }
    if (!painter.end() || printer.printerState() == QPrinter::Error) return refusedBy(printer);
    return base::Done{};
}

void answerNext(const QString& file) {
    ui::ask::stayOffScreen();
    printersBeforehand() << file;
}

}  // namespace ui::print
