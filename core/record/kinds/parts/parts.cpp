// SPDX-License-Identifier: GPL-3.0-or-later
#include "record/kinds/parts/parts.h"

#include "record/json/object_reader.h"
#include "record/json/words.h"
#include "record/json/written.h"

namespace crownring {

namespace {

using nlohmann::json;

constexpr Words<releaseFormCount> formWords = {"easa-form-1", "faa-8130-3", "owner-accepted", "declaration",
                                               "inspection"};
constexpr Words<vesselMaterialCount> materialWords = {"aluminium", "steel", "stainless", "titanium", "composite"};
constexpr double leastOfVessel = 0.1;
constexpr double mostOfVessel = 1000;

}

std::string_view releaseFormName(ReleaseForm form) { return formWords[static_cast<std::size_t>(form)]; }
std::optional<ReleaseForm> releaseFormFrom(std::string_view name) { return among<ReleaseForm>(formWords, name); }

std::string_view vesselMaterialName(VesselMaterial material) {
    return materialWords[static_cast<std::size_t>(material)];
}
std::optional<VesselMaterial> vesselMaterialFrom(std::string_view name) {
    return among<VesselMaterial>(materialWords, name);
}

std::optional<PartRelease> readRelease(ObjectReader& reader) {
    if (!reader.has("release"))
        return std::nullopt;
    PartRelease release;
    reader.object("release", [&](ObjectReader& inner) {
        release.form =
            inner.word("form", releaseFormFrom, "easa-form-1, faa-8130-3, owner-accepted, declaration, inspection");
        release.number = inner.saying("number");
    });
    return release;
}

void writeRelease(json& into, const std::optional<PartRelease>& release) {
    if (release)
        into["release"] = {{"form", releaseFormName(release->form)}, {"number", release->number}};
}

std::optional<VesselStamped> readVessel(ObjectReader& reader) {
    if (!reader.has("vessel"))
        return std::nullopt;
    VesselStamped vessel;
    reader.object("vessel", [&](ObjectReader& inner) {
        if (inner.has("material"))
            vessel.material =
                inner.word("material", vesselMaterialFrom, "aluminium, steel, stainless, titanium, composite");
        vessel.specification = inner.optionalText("specification");
        vessel.litres = inner.optionalNumber("water_litres", leastOfVessel, mostOfVessel);
        vessel.kilograms = inner.optionalNumber("tare_kg", leastOfVessel, mostOfVessel);
    });
    return vessel;
}

void writeVessel(json& into, const std::optional<VesselStamped>& vessel) {
    if (!vessel)
        return;
    auto& object = into["vessel"] = json::object();
    if (vessel->material)
        object["material"] = vesselMaterialName(*vessel->material);
    writeText(object, "specification", vessel->specification);
    writeValue(object, "water_litres", vessel->litres);
    writeValue(object, "tare_kg", vessel->kilograms);
}

CylinderFilled Kind<CylinderFilled>::read(ObjectReader& reader) {
    CylinderFilled body;
    body.item = reader.name<ItemId>("item");
    if (const auto percent = reader.optionalNumber("level_percent", 1, 100))
        body.percent = *percent;
    else if (!reader.has("level_percent"))
        reader.refuse("level_percent", EntryFault::KeyMissing);
    return body;
}

void Kind<CylinderFilled>::write(json& into, const CylinderFilled& body) {
    into["item"] = body.item.text();
    into["level_percent"] = body.percent;
}

}
