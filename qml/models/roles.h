#pragma once

/// How the rows of the view models tell QML of their fields.

#include <memory>

#include "row_list.h"

// A role is a name and how to read it; one line each.
#define CINDER_ROLE(Row, field)                                \
    Role<Row> {                                                \
#field, [](const Row& r) { return QVariant(r.field); } \
    }

namespace cinder::face {

/// A list inside a row.
template <class Row>
QVariant asList(const std::shared_ptr<ListOf<Row>>& inner) {
    return QVariant::fromValue(static_cast<RowList*>(inner.get()));
}

}  // namespace cinder::face
