// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// What a component comes with: its release document, and what is known of a cylinder; and that one was filled.

#include "measure/name.h"
#include "record/kinds/kind.h"

#include <optional>
#include <string>

namespace crownring {

/// What a component is released by (ML.A.501, ML.A.504; 14 CFR 43.9; from memory).
enum class ReleaseForm {
    EasaForm1,
    Faa81303,
    OwnerAccepted, ///< a new part that its owner takes without a form (21.A.307(c), from memory)
    Declaration,   ///< of the maker
    Inspection,    ///< a visit of this record that released it
};
inline constexpr int releaseFormCount = 5;
/// "easa-form-1", "faa-8130-3", "owner-accepted", "declaration", "inspection".
[[nodiscard]] std::string_view releaseFormName(ReleaseForm form);
[[nodiscard]] std::optional<ReleaseForm> releaseFormFrom(std::string_view name);

struct PartRelease {
    ReleaseForm form = ReleaseForm::EasaForm1;
    std::string number; ///< of the document; of `Inspection` its name
    bool operator==(const PartRelease&) const = default;
};

/// Key "release".
[[nodiscard]] std::optional<PartRelease> readRelease(ObjectReader& reader);
void writeRelease(nlohmann::json& into, const std::optional<PartRelease>& release);

/// What a pressure vessel is made of: what it bears when it was hot depends on it.
enum class VesselMaterial { Aluminium, Steel, Stainless, Titanium, Composite };
inline constexpr int vesselMaterialCount = 5;
[[nodiscard]] std::string_view vesselMaterialName(VesselMaterial material);
[[nodiscard]] std::optional<VesselMaterial> vesselMaterialFrom(std::string_view name);

/// What is stamped on a pressure vessel.
struct VesselStamped {
    std::optional<VesselMaterial> material;
    std::string specification;       ///< "DOT 4E 240", "EN 13110"
    std::optional<double> litres;    ///< water capacity
    std::optional<double> kilograms; ///< tare
    bool operator==(const VesselStamped&) const = default;
};

/// Key "vessel".
[[nodiscard]] std::optional<VesselStamped> readVessel(ObjectReader& reader);
void writeVessel(nlohmann::json& into, const std::optional<VesselStamped>& vessel);

/// A cylinder was filled, up to which part of its water capacity.
struct CylinderFilled {
    ItemId item;
    double percent = 0;
    bool operator==(const CylinderFilled&) const = default;
};

template <>
struct Kind<CylinderFilled> {
    static constexpr std::string_view name = "cylinder.filled";
    static constexpr std::string_view keys = "item level_percent";
    static constexpr TimeOfDay time{18, 0};
    static constexpr std::tuple mentions{Key{"item", &CylinderFilled::item}};
    static constexpr auto brings = nothing;
    static constexpr std::tuple toldUnder{&CylinderFilled::item};
    static constexpr bool hasRows = false;
    static constexpr auto inspection = nothing;
    static CylinderFilled read(ObjectReader& reader);
    static void write(nlohmann::json& into, const CylinderFilled& body);
};

}
