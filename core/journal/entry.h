#pragma once

/// An operation as it is kept: word for word, with its seal. What devices hand each other, so that
/// nothing is written anew on the way and the record of each device stays the one it sealed.

#include "journal/codec.h"
#include "journal/operation.h"
#include "journal/seal.h"

namespace cinder::journal {

struct Entry {
    Operation operation;  ///< its body as far as this version understands `body`
    BodyText body;
    Seal seal{};
    friend bool operator==(const Entry&, const Entry&) = default;
};

/// Where the chain of one device in one event ends.
struct ChainHead {
    EventId event;
    OperationId last;
    Seal seal{};
    friend bool operator==(const ChainHead&, const ChainHead&) = default;
};

}  // namespace cinder::journal
