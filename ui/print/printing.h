// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <memory>

#include "base/result.h"
#include "render/papers/paper.h"

class QPrinter;
class QWidget;

/// The only place that knows printers.
namespace ui::print {

/// Asks for a printer that takes pages of this size. Null: the person changed their mind.
std::shared_ptr<QPrinter> ask(render::PageKind pages, QWidget* parent);

/// Prints all pages. Errors: FileUnwritable when the printer takes nothing, or stops on the way.
base::Outcome on(QPrinter& printer, const render::Paper& paper);

/// For tests: the next question gets a printer that writes into this file. "" stands for changing
/// one's mind, as does every question that comes after ask::stayOffScreen() and has no answer.
void answerNext(const QString& file);

}  // namespace ui::print
