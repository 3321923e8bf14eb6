import { evidenceRules } from '#content/evidence/prior.ts'
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
 * unit, with own counts. Nothing is kept from one turn to the next: each asks with a spread of its own.
 *
 * @returns how many outcomes in how many units; milliseconds of the first turn, when no code is warm, and of each later one.
 */
export function benchOdds(turns = 5): { readonly size: number; readonly first: number; readonly later: number[] } {
  const [first = { size: 0, took: 0 }, ...later] = Array.from({ length: turns }, (_, turn) => oneTurn(turn))
  return { size: first.size, first: first.took, later: later.map(({ took }) => took) }
}

function oneTurn(turn: number): { readonly size: number; readonly took: number } {
  const { priors } = evidenceRules
  const value = { ...priors.value, tauScale: priors.value.tauScale + turn * 1e-9 }
  const rules = { ...evidenceRules, priors: { ...priors, value } }
  const began = performance.now()
  const told = procedureNamed('teca-lbo', procedures).risks.flatMap(({ outcome }) =>
    toldPerUnit({ species: 'dog', procedure: 'teca-lbo', outcome }, { ...publishedEvidence, rules, ownOf: () => own }),
  )
  const said = told.map((one) => sayTold(one, { odds: oddsInEnglish, told: toldInEnglish }))
  return { size: said.length, took: performance.now() - began }
}
