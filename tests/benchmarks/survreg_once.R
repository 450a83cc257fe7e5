# SPDX-License-Identifier: GPL-3.0-or-later
# Rscript survreg_once.R READINGS.csv: one fit by R's package survival as it comes, for the benchmark beside it.
suppressPackageStartupMessages(library(survival))
readings <- read.csv(commandArgs(trailingOnly = TRUE)[1])
fit <- survreg(Surv(low, high, type = "interval2") ~ hours + row, data = readings, weights = weight, dist = "gaussian")
cat(sprintf("%.10g", c(coef(fit), log(fit$scale), sqrt(diag(vcov(fit))), fit$loglik[2])))
