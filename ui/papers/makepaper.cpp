// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/makepaper.h"

#include <QCoreApplication>
#include <QLocale>

#include "render/papers/issued.h"
#include "render/papers/papers.h"

namespace ui {
namespace {

struct PaperTitle {
    Q_DECLARE_TR_FUNCTIONS(PaperTitle)
};

std::optional<render::PaperData> dataFor(const desk::Desk& desk, record::PaperKind kind) {
    const desk::RecordView& view = desk.view();
    const record::Learner* learner = view.learnerInView();
    if (!view.record || !learner) return std::nullopt;
    const auto taught = desk.packFor(learner->said.learner);
    const auto found = desk.readinessOf(learner->said.learner);
    if (!taught || !found) return std::nullopt;
    const render::PaperContext context{
        .ward = view.ward,
        .isSimulatedClock = view.simulatedClock,
        .head = view.head,
        .now = desk.now(),
        .language = "en",
        .sentences = QLocale().bcp47Name().toStdString(),
        .version = NINEBARK_VERSION,
        .drawing = [&desk](const std::string& digest) { return desk.drawing(digest); }};
    return render::gather(kind, *view.record, learner->said.learner, *taught, *found, view.house,
                          context);
}

/// Whether there is such a paper of this data.
bool layOut(MadePaper& made) {
    if (made.kind == record::PaperKind::ChartNote) {
        made.note = render::chartNote(made.data, QLocale());
        return true;
    }
    auto document = render::documentOf(made.kind, made.data, QLocale());
    made.pages.reset();
    if (document) made.pages.emplace(std::move(*document), made.page);
    return document.has_value();
}

}  // namespace

std::optional<MadePaper> makePaper(const desk::Desk& desk, record::PaperKind kind,
                                   render::PageKind page) {
    const auto data = dataFor(desk, kind);
    if (!data) return std::nullopt;
    MadePaper made{.data = *data, .kind = kind, .page = page};
    if (!layOut(made)) return std::nullopt;
    return made;
}

base::Outcome issue(desk::Desk& desk, MadePaper& paper) {
    const auto said = desk.say(render::issued(paper.data));
    if (!said) return said.error();
    paper.data.issuedAs = desk.view().head;
    layOut(paper);
    return base::Done{};
}

QString paperTitle(record::PaperKind kind) {
    switch (kind) {
        case record::PaperKind::Chart:
            return PaperTitle::tr("Chart record");
        case record::PaperKind::Certificate:
            return PaperTitle::tr("Certificate");
        case record::PaperKind::GoingHomeWithHelp:
            return PaperTitle::tr("Going home with help");
        case record::PaperKind::ChartNote:
            return PaperTitle::tr("Chart note");
        case record::PaperKind::Steps:
            return PaperTitle::tr("Steps for home");
    }
    return {};
}

}  // namespace ui
