// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fabric/likelihood/observation.h"

namespace crownring {

/// The log-likelihood of one observation with a normal error of standard deviation sigma about `location`, and those of
/// its derivatives that Laplace's method needs: up to the third by the location, and once by ln sigma.
struct NormalTerm {
    double value = 0;
    double location = 0, location2 = 0, location3 = 0;
    double logSigma = 0, locationLogSigma = 0, location2LogSigma = 0;
};

[[nodiscard]] NormalTerm normalTerm(const Observation& observed, double location, double sigma);

}
