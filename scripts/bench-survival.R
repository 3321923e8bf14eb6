# Kaplan-Meier and log-rank of a table by R's survival package. Arguments: the table, rounds. Prints one line of JSON.
arguments <- commandArgs(trailingOnly = TRUE)
suppressPackageStartupMessages(library(survival))
began <- proc.time()
rows <- read.csv(arguments[1], stringsAsFactors = FALSE)
reading <- sum((proc.time() - began)[1:2])
rounds <- as.integer(arguments[2])
took <- function(run) {
  run()
  median(vapply(seq_len(rounds), function(i) {
    began <- proc.time()
    run()
    sum((proc.time() - began)[1:2])
  }, 0))
}
fit <- took(function() survfit(Surv(time, status) ~ 1, data = rows))
test <- took(function() survdiff(Surv(time, status) ~ group, data = rows))
curve <- survfit(Surv(time, status) ~ 1, data = rows)
compared <- survdiff(Surv(time, status) ~ group, data = rows)
cat(sprintf('{"fit":%.4f,"test":%.4f,"reading":%.4f,"survival":%.15g,"chiSquare":%.15g,"r":"%s","package":"%s"}\n',
  1000 * fit, 1000 * test, 1000 * reading, tail(curve$surv, 1), compared$chisq,
  as.character(getRversion()), as.character(packageVersion("survival"))))
