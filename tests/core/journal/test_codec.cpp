#include <catch2/catch.hpp>

#include "journal/codec.h"
#include "samples.h"

using namespace samples;

TEST_CASE("every kind of operation is read back as it was written") {
    for (const Body& body : everyKind()) {
        const BodyText text = writeBody(body);
        CAPTURE(text.kind, text.text);

        CHECK(readBody(text.kind, kBodyVersion, text.text) == body);
    }
}

TEST_CASE("what cannot be understood is kept word for word") {
    const auto [kind, version, text] = GENERATE(table<std::string, int, std::string>({
        {"of-a-later-year", 1, "{\"a\":1}"},
        {"turned", 2, "{\"task\":\"a\",\"turn\":1,\"at\":5}"},
        {"turned", 1, "{\"task\":\"a\",\"turn\":\"one\",\"at\":5}"},
        {"turned", 1, "{\"task\":\"a\",\"turn\":-1,\"at\":5}"},
        {"turned", 1, "{\"task\":\"a\""},
        {"turned", 1, "[]"},
        {"undone", 1, "{\"device\":\"a\",\"sequence\":0}"},
        {"started", 1, ""},
        {"pulled", 1, "{\"task\":\"a\",\"pieces\":[0],\"pan\":1,\"at\":5}"},
        {"pulled", 1, "{\"task\":\"a\",\"pieces\":3,\"pan\":1,\"at\":5}"},
        {"judged", 1, "{\"task\":\"a\",\"piece\":1,\"done\":1,\"at\":5}"},
        {"laid", 1, "{\"task\":\"a\",\"startMilliCelsius\":1,\"kinds\":[1],\"at\":5}"},
        {"probe", 2, "{\"task\":\"a\"}"},
        {"kept", 1, "{\"dish\":\"a\",\"at\":5}"},
        {"fire-ready", 1, "{\"item\":\"hose\",\"at\":5}"},
        {"acted", 1, "{\"entry\":{\"device\":\"a\"},\"action\":\"chill\",\"at\":5}"},
        {"ice-point", 1, "{\"thermometer\":\"a\",\"milliCelsius\":1,\"scale\":\"K\",\"at\":5}"},
    }));
    CAPTURE(kind, version, text);

    const Body body = readBody(kind, version, text);

    CHECK(body == Body{Unknown{kind, text}});
    CHECK(writeBody(body) == BodyText{kind, text});
}

TEST_CASE("text with broken UTF-8 is written as valid JSON") {
    const BodyText text = writeBody(AlarmAcknowledged{"turn:\xff:1", at(0)});

    CHECK(std::holds_alternative<AlarmAcknowledged>(readBody(text.kind, 1, text.text)));
}
