import { findingNames, exchangeInEnglish as say } from '#content/wording/exchange.ts'
import { painScaleTops } from '#core/journal/kinds/ward-score.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Mapping } from './around.ts'
import { derivedUuid } from './naming.ts'
import { coded, component, counted, finding, observation } from './observations.ts'

/** One round: the animal, each eye, and the pain score with its scale and range. */
export const wardScore: Mapping<'ward-score'> = (line, around) => {
  const { body } = line
  const { pain } = body
  const round = observation(line, around, {
    code: finding('ward-round'),
    note: [body.notScoredBecause, body.action, body.text],
    component: [
      component('breathing', coded(body.airway)),
      component('throat', coded(body.throat)),
      component('bandage', coded(body.bandage)),
      component('eats', coded(body.eats)),
      component('urine', coded(body.urine)),
    ],
  })
  const eyes = (['LEFT', 'RIGHT'] as const).map((side) =>
    observation(line, around, {
      code: finding('face-and-eye'),
      id: derivedUuid(line.header.id, 'eye', side),
      side,
      component: [component('blink', coded(body[side].blink)), component('eye-wet', coded(body[side].lubricated))],
    }),
  )
  if (pain === null) return [round, ...eyes]
  const about = {
    scale: pain.scale.replaceAll('-', ' '),
    outOf: String(painScaleTops[pain.scale]),
    name: findingNames.pain,
  }
  const score = observation(line, around, {
    id: derivedUuid(line.header.id, 'pain'),
    code: { text: fill(say.painScale, about) },
    value: counted(pain.score),
    category: 'survey',
  })
  return [round, ...eyes, score]
}
