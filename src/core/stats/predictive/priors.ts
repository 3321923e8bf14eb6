/** What is believed before any study: mu normal on the log odds scale, tau half-normal with this scale. */
export type Priors = {
  readonly mu: { readonly mean: number; readonly sd: number }
  readonly tauScale: number
}

/** As in the published worked example (eight placebo groups): mu ~ N(0, 2²), tau half-normal with scale 1. */
export const usualPriors: Priors = { mu: { mean: 0, sd: 2 }, tauScale: 1 }
