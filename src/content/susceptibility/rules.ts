import type { ReadingRules } from '#core/culture/rules.ts'
import { inducible, printedSums, standsFor } from './inference.ts'
import { intrinsic } from './intrinsic.ts'
import { methicillin } from './methicillin.ts'
import { multidrug } from './multidrug.ts'
import { betaLactamases } from './screens.ts'

/** The expert rules: what a number alone does not tell. */
export const rules: ReadingRules = {
  methicillin,
  inducible,
  standsFor,
  intrinsic,
  betaLactamases,
  multidrug,
  printedSums,
}
