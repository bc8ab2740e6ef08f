// SPDX-FileCopyrightText: The Ninebark authors
// SPDX-License-Identifier: GPL-3.0-or-later
#include <QBuffer>
#include <QFileInfo>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "render/papers/paper.h"

namespace render {

QByteArray Paper::pdf() const {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(m_document.title);
    writer.setCreator(QStringLiteral("Ninebark " NINEBARK_VERSION));
    const auto size = m_kind == PageKind::A4 ? QPageSize::A4 : QPageSize::Letter;
    writer.setPageLayout(
        QPageLayout(QPageSize(size), QPageLayout::Portrait, QMarginsF(), QPageLayout::Point));
    QPainter painter(&writer);
    for (int page = 0; page < pageCount(); ++page) {
        if (page > 0) writer.newPage();
        paintPage(painter, page);
    }
    painter.end();
    return bytes;
}

base::Outcome Paper::writePdf(const QString& path) const { return writeWhole(path, pdf()); }

base::Outcome writeWhole(const QString& path, const QByteArray& bytes) {
    const auto refused = [&path](const QSaveFile& file) {
        return base::Error{base::Code::FileUnwritable,
                           {path.toStdString(), file.errorString().toStdString()}};
    };
    // Renaming over a device or a pipe would take it away from the whole machine.
    if (QFileInfo::exists(path) && !QFileInfo(path).isFile())
        return base::Error{base::Code::FileUnwritable, {path.toStdString(), "it is no plain file"}};
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return refused(file);
    file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    // A full disk shows in write() or only in flush(), before the old file is replaced.
    if (file.write(bytes) != bytes.size() || !file.flush() || !file.commit()) return refused(file);
    return base::Done{};
}

}  // namespace render
