#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>

#include "documents.h"
#include "event/json.h"

using namespace cinder;
using What = event::Fault::What;
using Json = nlohmann::ordered_json;

namespace {

/// Walks the published schema and a document that has every member side by side, and asks the
/// parser at each field whether it thinks what the schema says.
class Agreement {
  public:
    Agreement()
        : schema_(Json::parse(test::sourceText("assets/schema/event.schema.json"))),
          document_(Json::parse(test::everyMember())) {}

    void check() {
        walk(schema_, "#", Json::json_pointer());
        CHECK(checked_ > 150);
        for (const auto& name : declared_) {
            INFO(name << " is in the schema but not in the document with every member");
            CHECK(seen_.contains(name));
        }
    }

  private:
    [[nodiscard]] event::Faults faultsWith(const Json::json_pointer& at, const Json& value) const {
        Json changed = document_;
        changed[at] = value;
        const auto read = event::parse(changed.dump());
        return read ? event::Faults{} : read.error();
    }

    void expect(const Json::json_pointer& at, const Json& value, What what,
                const std::string& allowed) {
        INFO(at.to_string() << " := " << value.dump());
        ++checked_;
        const auto faults = faultsWith(at, value);
        REQUIRE_FALSE(faults.empty());
        CHECK(faults.front().path == at.to_string());
        CHECK(faults.front().what == what);
        CHECK(faults.front().allowed == allowed);
    }

    static std::string range(const Json& schema, const char* low, const char* high) {
        return (schema.contains(low) ? schema[low].dump() : "0") + ".." + schema[high].dump();
    }

    void checkValue(const Json& schema, const Json::json_pointer& at) {
        if (schema.contains("enum")) {
            std::string words;
            for (const auto& word : schema["enum"])
                words += (words.empty() ? "" : "|") + word.get<std::string>();
            expect(at, "no such word", What::NotOneOf, words);
            for (const auto& word : schema["enum"])
                for (const auto& fault : faultsWith(at, word))
                    CHECK(fault.what != What::NotOneOf);
        }
        if (schema.contains("minimum")) {
            const std::string allowed = range(schema, "minimum", "maximum");
            expect(at, schema["minimum"].get<double>() - 1, What::OutOfRange, allowed);
            expect(at, schema["maximum"].get<double>() + 1, What::OutOfRange, allowed);
            for (const auto* edge : {"minimum", "maximum"})
                for (const auto& fault : faultsWith(at, schema[edge]))
                    CHECK((fault.path != at.to_string() || fault.allowed != allowed));
            expect(at, "text", What::WrongType, schema["type"].get<std::string>());
        }
        if (schema.value("type", "") == "array") {
            if (schema.contains("minItems"))
                expect(at, Json::array(), What::OutOfRange, range(schema, "minItems", "maxItems"));
            const Json many(schema["maxItems"].get<std::size_t>() + 1, Json());
            expect(at, many, What::OutOfRange, range(schema, "minItems", "maxItems"));
            expect(at, 5, What::WrongType, "array");
        }
        if (schema.value("type", "") == "boolean") expect(at, 5, What::WrongType, "boolean");
        if (schema.value("format", "") == "date-time")
            expect(at, "13:00", What::BadTime, "RFC 3339");
    }

    void walkObject(const Json& schema, const std::string& name, const Json::json_pointer& at) {
        const Json& value = document_[at];
        const Json requiredFields = schema.value("required", Json::array());
        for (const auto& required : requiredFields) {
            const auto field = required.get<std::string>();
            Json without = document_;
            without[at].erase(field);
            const auto read = event::parse(without.dump());
            INFO(at.to_string() << " without " << field);
            ++checked_;
            REQUIRE_FALSE(read.has_value());
            CHECK(read.error().front().what == What::Missing);
            CHECK(read.error().front().path == (at / field).to_string());
        }
        const Json properties = schema.value("properties", Json::object());
        for (const auto& [field, sub] : properties.items()) {
            declared_.insert(name + "." + field);
            if (!value.contains(field)) continue;
            seen_.insert(name + "." + field);
            walk(sub, name + "." + field, at / field);
        }
        const Json branches = schema.value("allOf", Json::array());
        for (const auto& branch : branches)
            if (branch["if"]["properties"]["mode"]["const"] == value["mode"])
                walkObject(branch["then"], name + "." + value["mode"].get<std::string>(), at);
    }

    void walk(const Json& schema, const std::string& name, const Json::json_pointer& at) {
        if (schema.contains("$ref")) {
            const auto target = schema["$ref"].get<std::string>();
            const auto definition = target.substr(target.rfind('/') + 1);
            return walk(schema_["$defs"][definition], definition, at);
        }
        checkValue(schema, at);
        if (schema.value("type", "") == "object") walkObject(schema, name, at);
        if (schema.value("type", "") == "array")
            for (std::size_t i = 0; i < document_[at].size(); ++i)
                walk(schema["items"], name + "[]", at / i);
    }

    Json schema_;
    Json document_;
    std::set<std::string> declared_;
    std::set<std::string> seen_;
    int checked_ = 0;
};

}  // namespace

TEST_CASE("The published schema and the parser agree on fields, words and limits") {
    Agreement().check();
}
