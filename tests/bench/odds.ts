import { procedures } from '#content/procedures/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { toldPerUnit } from '#core/evidence/told.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'

/** Invented counts of our own, so that every outcome is joined with some. */
const own = { events: 1, total: 14, lost: 1, from: null, until: null, asOf: '2026-06-30' }

/**
 * All odds of a dog before the removal of its canal, as the case page works them out and says them: every risk in every
 * unit, with own counts. Called once in a fresh page it has nothing worked out before.
 *
 * @returns how many outcomes in how many units, and milliseconds.
 */
export function benchOdds(): { readonly size: number; readonly took: number } {
  const began = performance.now()
  const told = procedureNamed('teca-lbo', procedures).risks.flatMap(({ outcome }) =>
    toldPerUnit({ species: 'dog', procedure: 'teca-lbo', outcome }, { ...publishedEvidence, ownOf: () => own }),
  )
  const said = told.map((one) => sayTold(one, { odds: oddsInEnglish, told: toldInEnglish }))
  return { size: said.length, took: performance.now() - began }
}
