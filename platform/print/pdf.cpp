#include "print/pdf.h"

#include <QBuffer>
#include <QPageSize>

#include "print/blocks.h"

namespace cinder::platform {

namespace {

int setAll(Pages& pages, const report::Document& document) {
    setTitle(pages, document);
    for (const report::Block& block : document.blocks)
        setBlock(pages, block);
    return pages.count();
}

}  // namespace

QByteArray pdf(const report::Document& document, Paper paper, const Faces& faces) {
    const QPageSize size(paper == Paper::Letter ? QPageSize::Letter : QPageSize::A4);
    const QSizeF points = size.size(QPageSize::Point);
    const QString footer = QString::fromStdString(
        document.title + (document.subtitle.empty() ? "" : " · ") + document.subtitle);
    int all = 0;
    {
        Pages counted(points, faces, footer, nullptr, 0);
        all = setAll(counted, document);
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPageSize(size);
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    writer.setTitle(QString::fromStdString(document.title));
    writer.setCreator(QStringLiteral("Cinderbell"));
    {
        Pages pages(points, faces, footer, &writer, all);
        setAll(pages, document);
    }
    return bytes;
}

}  // namespace cinder::platform
