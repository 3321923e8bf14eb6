import type { Species } from '#core/animal/species.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { type Otis3CutOffs, otis3Signs, otis3Total, readOtis3 } from '#core/workup/otis3.ts'
import { input, said, type Why, type WhySaid, why } from './why.ts'

/**
 * Why an ear has this OTIS-3 total: the four signs added, and on which side of the published lines it falls. A sign
 * nobody assessed leaves the total unknown; a cat has no line.
 *
 * @example whyOtis3(findings, 'dog', otis3CutOffs).result // { code: 'otis3-total', about: { total: '11' } }
 * Reference: Nuttall and Bensignor 2014.
 */
export function whyOtis3(findings: Line<BodyOf<'ear-findings'>>, species: Species, cutOffs: Otis3CutOffs): Why {
  const { otis3 } = findings.body
  const total = otis3Total(otis3)
  const inputs = otis3Signs.map((sign) => {
    const value = otis3[sign]
    return input('sign', value === null ? 'not-assessed' : String(value), { of: sign, line: findings.header.id })
  })
  const title = said('title-otis3')
  const facts = [cutOffs.affected]
  if (total.kind === 'refusal') {
    const open = total.refusal.because === 'sign-not-assessed'
    return why({ title, inputs, facts, result: said(open ? 'otis3-unknown' : 'otis3-impossible') })
  }
  const sum = otis3Signs.map((sign) => String(otis3[sign])).join(' + ')
  return why({
    title,
    inputs,
    formula: [said('signs-added', { sum, total: String(total.answer) })],
    result: said('otis3-total', { total: String(total.answer) }),
    notes: lines(total.answer, species, cutOffs),
    facts: [cutOffs.affected, cutOffs.success],
  })
}

function lines(total: number, species: Species, cutOffs: Otis3CutOffs): WhySaid[] {
  const reading = readOtis3(total, species, cutOffs)
  if (reading.kind === 'refusal') return [said('otis3-no-cut-off', { species })]
  const { affected, success } = reading.answer
  return [
    said(affected ? 'otis3-affected' : 'otis3-not-affected', { line: String(cutOffs.affected.value.total) }),
    ...(success ? [said('otis3-success', { line: String(cutOffs.success.value.total) })] : []),
  ]
}
