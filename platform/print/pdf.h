#pragma once

/// Sheets on paper: a report::Document set as PDF, in Letter or A4, black on white, with check
/// boxes to tick, drawings to scale and cards to fold.

#include <QByteArray>
#include <QString>

#include "report/document.h"

namespace cinder::platform {

enum class Paper { Letter, A4 };

/// Font families as Qt knows them; the app's own fonts when they are loaded.
struct Faces {
    QString text = QStringLiteral("Lato Medium");
    QString strong = QStringLiteral("Lato Heavy");
};

/// The whole document. Table heads are repeated on every page a table runs over, a row is never cut
/// in two, and every page carries the event and its number. Needs a QGuiApplication; never fails:
/// an empty document is one page with its title.
[[nodiscard]] QByteArray pdf(const report::Document& document, Paper paper,
                             const Faces& faces = {});

}  // namespace cinder::platform
