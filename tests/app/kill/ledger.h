#pragma once

/// One acknowledged operation as a line of text, written by the day that will be killed and read
/// by whoever checks it afterwards.

#include <optional>
#include <sstream>
#include <string>

#include "journal/codec.h"

namespace cinder::ledger {

/// Everything but the body's text is free of tabs and line ends; the body is JSON on one line.
inline std::string writeLine(const journal::Operation& op) {
    const auto body = journal::writeBody(op.body);
    std::ostringstream line;
    line << op.event.text() << '\t' << op.id.device.text() << '\t' << op.id.sequence << '\t'
         << op.stamp.wall.time_since_epoch().count() << '\t' << op.stamp.counter << '\t'
         << op.version << '\t' << body.kind << '\t' << body.text << '\n';
    return line.str();
}

inline std::optional<journal::Operation> readLine(const std::string& text) {
    std::istringstream line(text);
    std::string event;
    std::string device;
    std::string number[4];
    std::string kind;
    std::string body;
    std::getline(line, event, '\t');
    std::getline(line, device, '\t');
    for (auto& one : number)
        std::getline(line, one, '\t');
    std::getline(line, kind, '\t');
    if (!std::getline(line, body)) return std::nullopt;
    journal::Operation op;
    op.event = EventId{event};
    op.id = {DeviceId{device}, std::stoull(number[0])};
    op.stamp = {Instant{Duration{std::stoll(number[1])}},
                static_cast<std::uint32_t>(std::stoul(number[2]))};
    op.version = std::stoi(number[3]);
    op.body = journal::readBody(kind, op.version, body);
    return op;
}

}  // namespace cinder::ledger
