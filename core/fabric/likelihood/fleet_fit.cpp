// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/fleet_fit.h"

#include "fabric/likelihood/censored_regression.h"
#include "fabric/likelihood/effective_age.h"
#include "fabric/likelihood/fleet_columns.h"
#include "fabric/numeric/quasi_newton.h"
#include "problem/faults/fabric_fault.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>
#include <limits>

namespace crownring {

namespace {

constexpr double firstSpread = 0.05;

tl::unexpected<Problem> leftOpen() { return problem(FabricFault::FleetOpen, {}, atKey("readings")); }

std::size_t fabricOf(const FabricFleet& fleet, std::size_t set) { return fleet.fabricOfLot.at(fleet.lotOfSet.at(set)); }

/// All readings of a fabric on one line: nearly right, and found for certain.
Result<CensoredFit> pooledFit(const FabricFleet& fleet, const AgeingShape& shape) {
    const auto rows = static_cast<Eigen::Index>(fleet.readings.size() + fleet.coupons.size());
    const auto fabrics = static_cast<Eigen::Index>(fleet.fabrics);
    CensoredSample sample{Eigen::MatrixXd::Zero(rows, 2 * fabrics), {}, {}};
    const auto add = [&](std::size_t fabric, double age, const Observation& observed) {
        const auto row = static_cast<Eigen::Index>(sample.observed.size());
        const auto column = 2 * static_cast<Eigen::Index>(fabric);
        sample.design(row, column) = 1;
        sample.design(row, column + 1) = -age;
        sample.observed.push_back(observed);
    };
    for (const auto& reading : fleet.readings)
        add(fabricOf(fleet, reading.set), effectiveAge(shape, reading.hours, reading.row, reading.dose),
            reading.observed);
    for (const auto& coupon : fleet.coupons)
        add(fleet.fabricOfLot.at(coupon.lot), 0, coupon.observed);
    return fitCensored(sample);
}

struct Start {
    Eigen::VectorXd parameters;
    Eigen::VectorXd row;
};

Start startFrom(const FleetLikelihood& likelihood, const CensoredFit& pooled, const FleetFitChoice& choice) {
    const auto& tree = likelihood.tree();
    Start start{Eigen::VectorXd(likelihood.parameters()), Eigen::VectorXd(tree.size)};
    start.parameters.head(fleetParameters) << Eigen::Vector4d::Constant(std::log(firstSpread)), pooled.logSigma,
        choice.shape.gamma, std::log(choice.shape.phi);
    if (choice.lotSlope)
        start.parameters[indexOf(FleetParameter::LogLotSlope)] = std::log(*choice.lotSlope);
    start.parameters.tail(likelihood.parameters() - fleetParameters) =
        pooled.coefficients.head(likelihood.parameters() - fleetParameters);
    start.row.tail(pooled.coefficients.size()) = pooled.coefficients;
    // Links go from the leaves up, so that from their end each parent is set before its children.
    for (auto edge = tree.edges.rbegin(); edge != tree.edges.rend(); ++edge)
        start.row[edge->child] = start.row[edge->parent];
    return start;
}

/// Which parameters the readings are asked for.
std::vector<Eigen::Index> freeParameters(const FabricFleet& fleet, const FleetLikelihood& likelihood,
                                         const FleetFitChoice& choice) {
    const bool onlyCrown = std::all_of(fleet.readings.begin(), fleet.readings.end(),
                                       [](const SetReading& reading) { return reading.row == 1; });
    std::vector<Eigen::Index> free;
    for (Eigen::Index parameter = 0; parameter < likelihood.parameters(); ++parameter)
        if (!(parameter == indexOf(FleetParameter::LogLotSlope) && choice.lotSlope) &&
            !(parameter == indexOf(FleetParameter::Gamma) && onlyCrown) &&
            !(parameter == indexOf(FleetParameter::LogPhi) && !choice.freePhi))
            free.push_back(parameter);
    return free;
}

/// The inverse of the curvature of what is free and not on its floor; zeros elsewhere. Nothing where it has none.
std::optional<Eigen::MatrixXd> covarianceOf(const FleetLikelihood& likelihood, const FleetLikelihoodAt& there,
                                            const Eigen::VectorXd& parameters, std::vector<Eigen::Index> free) {
    std::erase_if(free,
                  [&](auto parameter) { return parameter < levels && parameters[parameter] <= std::log(leastSpread); });
    const Smooth function = [&](const Eigen::VectorXd& some) {
        Eigen::VectorXd all = parameters;
        all(free) = some;
        const auto at = likelihood.at(all, there.figures);
        return ValueAndSlope{at.negative, at.gradient(free)};
    };
    const Eigen::LLT<Eigen::MatrixXd> factor(curvature(function, parameters(free)));
    const auto size = static_cast<Eigen::Index>(free.size());
    if (factor.info() != Eigen::Success)
        return {};
    Eigen::MatrixXd covariance = Eigen::MatrixXd::Zero(parameters.size(), parameters.size());
    covariance(free, free) = factor.solve(Eigen::MatrixXd::Identity(size, size)).eval();
    return covariance;
}

std::vector<AgeingLine> linesAt(const std::vector<LinePlace>& places, const FleetLikelihoodAt& there,
                                const Eigen::MatrixXd& covariance) {
    std::vector<AgeingLine> lines;
    for (const auto& [intercept, slope] : places) {
        const auto both = [&](Eigen::Index one, Eigen::Index other) {
            return there.covariance(one, other) +
                   there.slope.row(one).dot(covariance * there.slope.row(other).transpose());
        };
        lines.push_back({there.figures[intercept], there.figures[slope], both(intercept, intercept), both(slope, slope),
                         both(intercept, slope)});
    }
    return lines;
}

std::vector<Line> bareLines(const std::vector<LinePlace>& places, const Eigen::VectorXd& row) {
    std::vector<Line> lines;
    for (const auto& [intercept, slope] : places)
        lines.push_back({row[intercept], row[slope]});
    return lines;
}

AgeingState stateOf(const LatentTree& tree, const Eigen::VectorXd& row, const Eigen::VectorXd& parameters) {
    const auto spread = [&](FleetParameter parameter) { return std::exp(parameters[indexOf(parameter)]); };
    AgeingState state;
    state.fabrics = bareLines(tree.fabrics, row);
    state.lots = bareLines(tree.lots, row);
    state.sets = bareLines(tree.sets, row);
    for (const auto bolt : tree.bolts)
        state.bolts.push_back(row[bolt]);
    state.spreads = {spread(FleetParameter::LogLotIntercept), spread(FleetParameter::LogLotSlope),
                     spread(FleetParameter::LogSetIntercept), spread(FleetParameter::LogSetSlope),
                     spread(FleetParameter::LogSigma)};
    state.shape = {parameters[indexOf(FleetParameter::Gamma)], spread(FleetParameter::LogPhi)};
    return state;
}

}

Result<FleetFit> fitFleet(const FabricFleet& fleet, const FleetFitChoice& choice) {
    if (const auto sound = fleetColumns(fleet); !sound)
        return tl::unexpected(sound.error());
    const auto pooled = pooledFit(fleet, choice.shape);
    if (!pooled)
        return tl::unexpected(pooled.error());
    const FleetLikelihood likelihood(fleet, choice.restricted);
    auto start = startFrom(likelihood, *pooled, choice);
    auto& parameters = start.parameters;
    auto& row = start.row;
    const auto free = freeParameters(fleet, likelihood, choice);
    const Smooth function = [&, all = parameters](const Eigen::VectorXd& some) mutable {
        all(free) = some;
        const auto at = likelihood.at(all, row);
        if (!std::isfinite(at.negative))
            return ValueAndSlope{at.negative, {}};
        row = at.figures;
        return ValueAndSlope{at.negative, at.gradient(free)};
    };
    Eigen::VectorXd floors = Eigen::VectorXd::Constant(parameters.size(), -std::numeric_limits<double>::infinity());
    floors.head(levels).setConstant(std::log(leastSpread));
    const auto found = lowest(function, parameters(free), floors(free));
    if (!found.isFound)
        return leftOpen();
    parameters(free) = found.at;
    const auto there = likelihood.at(parameters, row);
    const auto covariance = covarianceOf(likelihood, there, parameters, free);
    if (!covariance)
        return leftOpen();
    return FleetFit{stateOf(likelihood.tree(), there.figures, parameters),
                    -there.negative,
                    parameters,
                    *covariance,
                    linesAt(likelihood.tree().sets, there, *covariance),
                    linesAt(likelihood.tree().lots, there, *covariance)};
}

}
