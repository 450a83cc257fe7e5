# SPDX-License-Identifier: GPL-3.0-or-later
# Rscript survreg.R READINGS.csv gaussian|extreme ...: fits by R's package survival, of each file in turn: a figure a line,
# behind the number of the file (from 0) and its name.
# Columns: low and high (equal when exact, NA where open), weight, hours, row.
suppressPackageStartupMessages(library(survival))
names <- c("intercept", "hours", "row", "logsigma")
fitted <- function(number, file, law) {
    fit <- survreg(Surv(low, high, type = "interval2") ~ hours + row, data = read.csv(file), weights = weight, dist = law,
                   control = survreg.control(maxiter = 200, rel.tolerance = 1e-13))
    figures <- c(coef(fit), log(fit$scale), sqrt(diag(vcov(fit))), fit$loglik[2])
    cat(sprintf("%d %s %.17g\n", number, c(names, paste0("se_", names), "loglik"), figures), sep = "")
}
arguments <- matrix(commandArgs(trailingOnly = TRUE), nrow = 2)
for (at in seq_len(ncol(arguments)))
    fitted(at - 1L, arguments[1, at], arguments[2, at])
