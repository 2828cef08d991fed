// What is wrong with an event, in the words of a screen.

#include <QStringList>

#include "fields.h"

namespace cinder::face {

namespace {

bool endsWith(const std::string& path, std::string_view tail) {
    return path.size() >= tail.size() &&
           path.compare(path.size() - tail.size(), tail.size(), tail) == 0;
}

/// The parts of a JSON Pointer; ids of an event never need its escapes.
QStringList partsOf(const std::string& path) {
    return toText(path).split(u'/', Qt::SkipEmptyParts);
}

template <class List>
auto* entry(List& list, const QString& index) {
    bool isNumber = false;
    const auto at = static_cast<std::size_t>(index.toULongLong(&isNumber));
    return isNumber && at < list.size() ? &list[at] : nullptr;
}

}  // namespace

QString FaultWords::place(const std::string& path, const event::Event& draft, const Words& words) {
    const QStringList parts = partsOf(path);
    if (parts.size() < 2) return {};
    if (parts[0] == u"crew")
        if (const auto* person = entry(draft.crew, parts[1])) return toText(person->name);
    if (parts[0] == u"work")
        if (const auto* step = entry(draft.work, parts[1])) return words.name(step->name);
    if (parts[0] == u"kit" && parts.size() > 2) {
        if (parts[1] == u"grates")
            if (const auto* grate = entry(draft.kit.grates, parts[2]))
                return words.name(grate->name);
        if (parts[1] == u"equipment")
            if (const auto* one = entry(draft.kit.equipment, parts[2]))
                return words.name(one->name);
        if (parts[1] == u"tables")
            if (const auto* table = entry(draft.kit.tables, parts[2]))
                return words.name(table->name);
    }
    if (parts[0] != u"menu") return {};
    const auto* dish = entry(draft.menu, parts[1]);
    if (dish == nullptr) return {};
    QString name = words.name(dish->name);
    if (parts.size() > 3 && parts[2] == u"method")
        if (const auto* step = entry(dish->method, parts[3]))
            name += QStringLiteral(" · ") + words.name(step->name);
    if (parts.size() > 4 && parts[2] == u"serving" && parts[3] == u"ingredients" && dish->serving)
        if (const auto* one = entry(dish->serving->ingredients, parts[4]))
            name += QStringLiteral(" · ") + words.name(one->name);
    return name;
}

QString FaultWords::contradiction(const event::Fault& fault, const event::Event& draft,
                                  const Words& words) {
    if (endsWith(fault.path, "/narrowWidthMm"))
        return tr("The thin end is wider than the piece. Make it narrower, or the piece wider.");
    if (endsWith(fault.path, "/widthMm"))
        return tr("Wider than it is long. Swap the two, or make the length larger.");
    if (endsWith(fault.path, "/meat"))
        return tr("Only whole meat is of one animal. Take the animal away, or choose whole meat.");
    if (endsWith(fault.path, "/doneness"))
        return tr(
            "Either a doneness, of meat or fish only, or a temperature of your own. Keep one.");
    if (endsWith(fault.path, "/coolSideMm"))
        return tr("The cool side leaves no hot side. Make it smaller than the grate is long.");
    if (endsWith(fault.path, "/minutes/low"))
        return tr("At best takes longer than usual. Make it at most the usual time.");
    if (endsWith(fault.path, "/minutes/high"))
        return tr("At worst is shorter than usual. Make it at least the usual time.");
    if (fault.path == "/site/arrival")
        return tr("The crew arrives after the bell. Choose a time before it.");
    if (endsWith(fault.path, "/maxMinutes"))
        return tr("Less than it must wait at least. Make it longer.");
    if (endsWith(fault.path, "/hands/skill"))
        return tr("Still needed by: %1. Change that first.").arg(place(fault.path, draft, words));
    if (fault.path.find("/hands/") != std::string::npos)
        return tr("The hands need more time than there is. Make this shorter, or the step longer.");
    if (fault.path.find("/onGrates") != std::string::npos)
        return tr("A piece does not fit this grate. Make the piece smaller or the grate larger.");
    if (fault.path.find("/suits") != std::string::npos)
        return tr("Does not fit what the dish contains. Take the diet away, or correct the dish.");
    if (endsWith(fault.path, "/contains"))
        return tr(
            "Food of this kind holds an allergen that is not ticked. Tick it, or choose another "
            "food.");
    if (fault.path.starts_with("/guests/diets/"))
        return tr("Too few portions fit this diet. Add a main that does, or let more take it.");
    if (fault.path.starts_with("/guests/allergens/"))
        return tr("Too few portions are without it. Add a main that is, or let more take it.");
    if (fault.path.find("/yields/") != std::string::npos)
        return tr(
            "Counted pieces are weighed raw: cooking takes nothing from what is bought. Type how "
            "much is left of 100 bought before it is cooked.");
    const QString other = place(fault.path, draft, words);
    if (fault.allowed == "/kit" || endsWith(fault.path, "/step"))
        return other.isEmpty() ? tr("Something still uses it. Free that first.")
                               : tr("Still needed by: %1. Change that first.").arg(other);
    return tr("Contradicts another field. Change one of the two.");
}

QString FaultWords::say(const event::Fault& fault, const event::Event& draft, const Words& words) {
    using What = event::Fault::What;
    const QStringList limits = toText(fault.allowed).split(QStringLiteral(".."));
    switch (fault.what) {
        case What::OutOfRange:
            if (fault.path == "/menu") return tr("The menu is empty. Add a dish.");
            if (fault.path == "/crew") return tr("A crew is 1 to 8 people.");
            if (fault.path == "/guests/adults" && limits.size() == 2 && limits[0] == u"1")
                return tr("Nobody is invited. Say how many guests come.");
            if (endsWith(fault.path, "/units") && limits.size() == 2)
                return tr("The kit has only %1. Use fewer, or bring more.").arg(limits[1]);
            if (endsWith(fault.path, "/thickness"))
                return tr("The shares come to %1 %. Make them 100 %.").arg(toText(fault.found));
            if (endsWith(fault.path, "/name") || endsWith(fault.path, "/address") ||
                endsWith(fault.path, "/notes"))
                return tr("Empty or far too long. Type a few words.");
            if (limits.size() == 2)
                return tr("%1 is outside the limits. From %2 to %3.")
                    .arg(toText(fault.found), limits[0], limits[1]);
            return tr("%1 is outside the limits.").arg(toText(fault.found));
        case What::Missing:
            if (endsWith(fault.path, "/yields"))
                return tr("The yield is missing: type how much is ready to eat of 100 bought.");
            if (fault.path == "/site/arrival")
                return tr("No arrival is agreed, so there is no time to leave.");
            return tr("Missing: fill it in, or nothing can be reckoned from it.");
        case What::Nobody:
            return tr(
                "Nobody in the crew has this skill, or too few have. Give it to somebody, or "
                "choose another.");
        case What::Dangling:
            if (endsWith(fault.path, "/station"))
                return tr("Without a place: %1. Choose another place there first.")
                    .arg(place(fault.path, draft, words));
            return tr("That is no longer there. Choose another.");
        case What::Cycle:
            return tr("These steps wait for each other. Let one of them wait no longer.");
        case What::Contradiction:
            return contradiction(fault, draft, words);
        case What::BadTime:
            return tr("There is no such time. Choose another.");
        default:
            return tr("This cannot be kept. Take it back, or type it anew.");
    }
}

}  // namespace cinder::face
