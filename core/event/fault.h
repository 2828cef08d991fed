#pragma once

/// What is wrong with an event, field by field.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace cinder::event {

struct Fault {
    enum class What {
        TooLarge,       ///< more bytes than a document may have
        NotUtf8,        ///< RFC 8259 section 8.1 asks for UTF-8
        NotJson,        ///< breaks the grammar of RFC 8259, or ends too early
        TooDeep,        ///< nested deeper than a document may be
        DuplicateKey,   ///< the same member twice in one object
        Missing,        ///< a required member is not there
        WrongType,      ///< text where a number belongs, and so on
        OutOfRange,     ///< a number, a length of text or of a list outside its limits
        NotOneOf,       ///< a word that is not in the list
        BadTime,        ///< not an RFC 3339 date-time, or not a time zone's name
        BadId,          ///< empty, too long, or with letters an id may not have
        DuplicateId,    ///< two things with one id
        Dangling,       ///< a reference to something that is not there
        Cycle,          ///< steps that wait for each other
        Contradiction,  ///< two values that cannot both be true
        Nobody,         ///< a step asks for hands the crew does not have
    };
    What what = What::Missing;
    /// Where: JSON Pointer (RFC 6901); "" is the whole document.
    std::string path;
    /// The value found, as JSON text cut to a readable length; empty when there is none.
    std::string found;
    /// What would be right, in a form without language: "1..8", "setUp|fire", "number", or the path
    /// of the field it contradicts.
    std::string allowed;
    /// Line and column, both from 1, for faults of the text itself.
    struct Place {
        std::size_t line = 1;
        std::size_t column = 1;
        friend bool operator==(const Place&, const Place&) = default;
    };
    std::optional<Place> place;
    friend bool operator==(const Fault&, const Fault&) = default;
};

/// In the order of the document. Never empty when returned as an error.
using Faults = std::vector<Fault>;

/// One English sentence that names the field, the value found and the remedy; for the command line
/// and logs. Screens make their own words from the same fields.
[[nodiscard]] std::string describe(const Fault& fault);

}  // namespace cinder::event
