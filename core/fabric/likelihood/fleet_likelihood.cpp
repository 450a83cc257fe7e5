// SPDX-License-Identifier: GPL-3.0-or-later
#include "fabric/likelihood/fleet_likelihood.h"

#include "fabric/likelihood/effective_age.h"
#include "fabric/likelihood/normal_term.h"

#include <Eigen/SparseCholesky>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace crownring {

namespace {

using Sparse = Eigen::SparseMatrix<double>;
using Factor = Eigen::SimplicialLLT<Sparse>;

/// How old the place of a test was, and how that changes with the shape.
struct Age {
    double t = 0;
    double byGamma = 0;
    double byLogPhi = 0;
};

/// The parameters in the form in which they are used.
struct Model {
    std::array<double, levels> precision{};
    double sigma = 1;
    std::vector<Age> ages;

    [[nodiscard]] double precisionOf(Level level) const { return precision.at(static_cast<std::size_t>(level)); }
};

Model modelOf(const LatentTree& tree, const Eigen::VectorXd& parameters) {
    Model model;
    for (Eigen::Index level = 0; level < levels; ++level)
        model.precision.at(static_cast<std::size_t>(level)) = std::exp(-2 * parameters[level]);
    model.sigma = std::exp(parameters[indexOf(FleetParameter::LogSigma)]);
    const AgeingShape shape{parameters[indexOf(FleetParameter::Gamma)],
                            std::exp(parameters[indexOf(FleetParameter::LogPhi)])};
    model.ages.reserve(tree.tests.size());
    for (const auto& test : tree.tests) {
        const double t = effectiveAge(shape, test.hours, test.row, test.dose);
        model.ages.push_back({t, -shape.phi * (1 - test.row) * t, t > 0 ? t * std::log(t / agePivot) : 0});
    }
    return model;
}

NormalTerm termOf(const PlacedTest& test, double age, double sigma, const Eigen::VectorXd& row) {
    return normalTerm(test.observed, row[test.line.intercept] - row[test.line.slope] * age, sigma);
}

double logDensity(const LatentTree& tree, const Model& model, const Eigen::VectorXd& row) {
    double sum = 0;
    for (std::size_t test = 0; test < tree.tests.size(); ++test)
        sum += termOf(tree.tests[test], model.ages[test].t, model.sigma, row).value;
    for (const auto& edge : tree.edges) {
        const double precision = model.precisionOf(edge.level);
        const double off = row[edge.child] - row[edge.parent];
        sum += (std::log(precision) - std::log(2 * std::numbers::pi) - precision * off * off) / 2;
    }
    return sum;
}

struct Hill {
    Eigen::VectorXd gradient;
    Sparse information;
};

/// Slope and curvature of the log density by the figures that are integrated out.
Hill hillAt(const LatentTree& tree, const Model& model, const Eigen::VectorXd& row, Eigen::Index integrated) {
    Eigen::VectorXd gradient = Eigen::VectorXd::Zero(tree.size);
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(4 * (tree.tests.size() + tree.edges.size()));
    const auto add = [&](Eigen::Index one, Eigen::Index other, double value) {
        if (one < integrated && other < integrated)
            entries.emplace_back(one, other, value);
    };
    for (std::size_t index = 0; index < tree.tests.size(); ++index) {
        const auto& [intercept, slope] = tree.tests[index].line;
        const double age = model.ages[index].t;
        const auto term = termOf(tree.tests[index], age, model.sigma, row);
        gradient[intercept] += term.location;
        gradient[slope] -= age * term.location;
        add(intercept, intercept, -term.location2);
        add(slope, slope, -age * age * term.location2);
        add(intercept, slope, age * term.location2);
        add(slope, intercept, age * term.location2);
    }
    for (const auto& edge : tree.edges) {
        const double precision = model.precisionOf(edge.level);
        const double pull = precision * (row[edge.child] - row[edge.parent]);
        gradient[edge.child] -= pull;
        gradient[edge.parent] += pull;
        add(edge.child, edge.child, precision);
        add(edge.parent, edge.parent, precision);
        add(edge.child, edge.parent, -precision);
        add(edge.parent, edge.child, -precision);
    }
    Hill hill{gradient.head(integrated), Sparse(integrated, integrated)};
    hill.information.setFromTriplets(entries.begin(), entries.end());
    return hill;
}

/// Newton's method on a log-concave density: halved steps always come to its top. False where it has none.
bool climb(const LatentTree& tree, const Model& model, Eigen::VectorXd& row, Eigen::Index integrated, Factor& factor) {
    constexpr int mostClimbs = 100;
    constexpr int mostShortenings = 50;
    double height = logDensity(tree, model, row);
    bool isTop = false;
    for (int steps = 0; steps < mostClimbs; ++steps) {
        const auto hill = hillAt(tree, model, row, integrated);
        if (steps == 0)
            factor.analyzePattern(hill.information);
        factor.factorize(hill.information);
        if (factor.info() != Eigen::Success || !std::isfinite(height))
            return false;
        if (isTop)
            return true;
        const Eigen::VectorXd step = factor.solve(hill.gradient);
        const double gain = hill.gradient.dot(step);
        isTop = gain < 1e-16;
        Eigen::VectorXd there = row;
        double share = 1;
        double next = 0;
        for (int halvings = 0; halvings < mostShortenings; ++halvings, share /= 2) {
            there.head(integrated) = row.head(integrated) + share * step;
            next = logDensity(tree, model, there);
            // So near to the top that the sum's own rounding hides a gain.
            if (gain < 1e-8 || next >= height + 1e-4 * share * gain)
                break;
        }
        row = there;
        height = next;
    }
    return false;
}

/// How log density and curvature change with each parameter, at the top of the hill.
struct Changes {
    Eigen::VectorXd density;     ///< of the log density, the row held
    Eigen::VectorXd determinant; ///< of ln det of the information, the row held
    Eigen::MatrixXd pulls;       ///< of the gradient by the row
    Eigen::VectorXd third;       ///< of ln det by each figure of the row
};

void addTest(Changes& changes, const PlacedTest& test, const Age& age, double sigma, const Eigen::VectorXd& row,
             const Eigen::MatrixXd& covariance) {
    const auto& [intercept, slope] = test.line;
    const auto term = termOf(test, age.t, sigma, row);
    const double across = covariance(intercept, slope) - age.t * covariance(slope, slope);
    const double variance = covariance(intercept, intercept) - age.t * covariance(intercept, slope) - age.t * across;
    changes.third[intercept] -= term.location3 * variance;
    changes.third[slope] += age.t * term.location3 * variance;

    const auto sigmaAt = indexOf(FleetParameter::LogSigma);
    changes.density[sigmaAt] += term.logSigma;
    changes.determinant[sigmaAt] -= term.location2LogSigma * variance;
    changes.pulls(intercept, sigmaAt) += term.locationLogSigma;
    changes.pulls(slope, sigmaAt) -= age.t * term.locationLogSigma;

    for (const auto& [parameter, byParameter] :
         {std::pair{FleetParameter::Gamma, age.byGamma}, {FleetParameter::LogPhi, age.byLogPhi}}) {
        const auto at = indexOf(parameter);
        const double moved = -row[slope] * byParameter;
        changes.density[at] += term.location * moved;
        changes.determinant[at] += 2 * term.location2 * byParameter * across - term.location3 * moved * variance;
        changes.pulls(intercept, at) += term.location2 * moved;
        changes.pulls(slope, at) -= age.t * term.location2 * moved + term.location * byParameter;
    }
}

void addEdge(Changes& changes, const Edge& edge, double precision, const Eigen::VectorXd& row,
             const Eigen::MatrixXd& covariance) {
    const auto level = static_cast<Eigen::Index>(edge.level);
    const auto integrated = covariance.rows();
    const double pull = precision * (row[edge.child] - row[edge.parent]);
    double variance = covariance(edge.child, edge.child);
    changes.density[level] += pull * pull / precision - 1;
    changes.pulls(edge.child, level) += 2 * pull;
    if (edge.parent < integrated) {
        variance += covariance(edge.parent, edge.parent) - 2 * covariance(edge.child, edge.parent);
        changes.pulls(edge.parent, level) -= 2 * pull;
    } else {
        const auto parameter = fleetParameters + edge.parent - integrated;
        changes.density[parameter] += pull;
        changes.pulls(edge.child, parameter) += precision;
    }
    changes.determinant[level] -= 2 * precision * variance;
}

}

FleetLikelihood::FleetLikelihood(const FabricFleet& fleet, bool restricted)
    : m_tree(latentTree(fleet)),
      m_integrated(restricted ? m_tree.size : m_tree.size - 2 * static_cast<Eigen::Index>(m_tree.fabrics.size())) {}

FleetLikelihoodAt FleetLikelihood::at(const Eigen::VectorXd& parameters, const Eigen::VectorXd& near) const {
    const auto model = modelOf(m_tree, parameters);
    FleetLikelihoodAt result;
    result.negative = std::numeric_limits<double>::infinity();
    result.figures = near;
    result.figures.tail(m_tree.size - m_integrated) = parameters.tail(parameters.size() - fleetParameters);
    Factor factor;
    if (!climb(m_tree, model, result.figures, m_integrated, factor))
        return result;
    const Eigen::MatrixXd identity = Eigen::MatrixXd::Identity(m_integrated, m_integrated);
    result.covariance = factor.solve(identity);

    Changes changes{Eigen::VectorXd::Zero(parameters.size()), Eigen::VectorXd::Zero(parameters.size()),
                    Eigen::MatrixXd::Zero(m_integrated, parameters.size()), Eigen::VectorXd::Zero(m_integrated)};
    for (std::size_t test = 0; test < m_tree.tests.size(); ++test)
        addTest(changes, m_tree.tests[test], model.ages[test], model.sigma, result.figures, result.covariance);
    for (const auto& edge : m_tree.edges)
        addEdge(changes, edge, model.precisionOf(edge.level), result.figures, result.covariance);

    const Sparse lower = factor.matrixL();
    const double halfDeterminant = lower.diagonal().array().log().sum();
    result.negative = halfDeterminant - logDensity(m_tree, model, result.figures) -
                      static_cast<double>(m_integrated) * std::log(2 * std::numbers::pi) / 2;
    result.slope = result.covariance * changes.pulls;
    result.gradient = (changes.determinant + result.slope.transpose() * changes.third) / 2 - changes.density;
    return result;
}

}
