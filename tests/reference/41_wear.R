#!/usr/bin/Rscript
# SPDX-License-Identifier: GPL-3.0-or-later
# Cases 41a to 41d: wear of runners, wicker and wires by R's lm. Made-up readings; run in this folder, it prints the rows
# of expected.csv. The time to the limit is found by walking along predict's confidence band (uniroot), not by a formula,
# so that it tests Fieller's one.
options(digits = 15)
cases <- list(
  `41a_wear_runner` = list(limit = 12, hours = c(0, 48.5, 103, 151.25, 204, 260.75), value = c(20, 19.6, 18.8, 18.4, 17.5, 17.1)),
  `41b_wear_three` = list(limit = 5, hours = c(10, 110, 205), value = c(12.1, 11.05, 10.1)),
  `41c_wear_wicker` = list(limit = 120, hours = c(312, 400.5, 402, 498, 607, 611.5, 700), value = c(10, 22, 18, 31, 45, 52, 60)),
  `41d_wear_scatter` = list(limit = 9, hours = c(5, 60, 120, 180), value = c(11.8, 12.3, 11.5, 11.9)))
said <- function(case, quantity, value, relative = 1e-8) cat(sprintf("%s,%s,%.15g,%g,0,\n", case, quantity, value, relative))
for (case in names(cases)) {
  of <- cases[[case]]
  readings <- data.frame(hours = of$hours, value = of$value)
  write.csv(readings, file.path("data", paste0(case, ".csv")), row.names = FALSE, quote = FALSE)
  fit <- lm(value ~ hours, data = readings)
  slope <- coef(fit)[["hours"]]
  ends <- confint(fit, "hours", level = 0.95)
  said(case, "intercept", coef(fit)[["(Intercept)"]])
  said(case, "slope", slope)
  said(case, "slope_low", ends[1])
  said(case, "slope_high", ends[2])
  said(case, "scatter", summary(fit)$sigma)
  if (ends[1] <= 0 && ends[2] >= 0) next
  band <- function(at, end) predict(fit, data.frame(hours = at), interval = "confidence", level = 0.95)[, end] - of$limit
  met <- (of$limit - coef(fit)[["(Intercept)"]]) / slope
  found <- sort(sapply(c("lwr", "upr"), function(end)
    uniroot(band, c(mean(of$hours), met + 100 * abs(met)), end = end, tol = 1e-13, maxiter = 10000)$root))
  said(case, "met_low", found[[1]])
  said(case, "met", met)
  said(case, "met_high", found[[2]])
}
