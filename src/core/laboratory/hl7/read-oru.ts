import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type Fault, Unreadable } from '../fault.ts'
import type { Doubt, LaboratoryReport, ReportedIsolate } from '../report.ts'
import { standardIn } from '../standard-in.ts'
import type { LaboratoryTerms } from '../terms.ts'
import { animalIn, siteIn } from './animal-in.ts'
import { codedText, component, placeOf, repetitions, subComponents, wholeText } from './fields.ts'
import { addDrug, addIsolate, addTest, type Building, isolateOf } from './isolates.ts'
import { type Family, familiesOf, placerOf } from './link.ts'
import { isCoded, nameOf, sortOf, testOf } from './observation.ts'
import { type Observation, ordersOf } from './orders.ts'
import { readTime } from './read-time.ts'
import { type Message, splitMessages } from './segments.ts'
import { checkNoneCut, type LineState, lineState, orderState, reportStatus } from './statuses.ts'

/** One message of a file: all its reports, or the first thing wrong with it and none of them. */
export type ReadMessage = { readonly line: number; readonly read: Outcome<readonly LaboratoryReport[], Fault> }

/**
 * Reads a file of result messages. A message with a fault gives nothing; the others of the file stand. It never throws.
 *
 * @example readOru(text, terms) // { kind: 'answer', answer: [{ line: 1, read: … }] }
 */
export function readOru(text: string, terms: LaboratoryTerms): Outcome<readonly ReadMessage[], Fault> {
  const messages = caught(() => splitMessages(text))
  if (messages.kind === 'refusal') return messages
  return answer(
    messages.answer.map((message) => ({ line: message.line, read: caught(() => reportsOf(message, terms)) })),
  )
}

function caught<Read>(read: () => Read): Outcome<Read, Fault> {
  try {
    return answer(read())
  } catch (error) {
    if (error instanceof Unreadable) return refuse(error.fault)
    throw error
  }
}

function reportsOf(message: Message, terms: LaboratoryTerms): LaboratoryReport[] {
  return familiesOf(ordersOf(message)).map((family) => reportOf(family, terms))
}

function reportOf({ accession, orders }: Family, terms: LaboratoryTerms): LaboratoryReport {
  const isolates: Building[] = []
  const text: string[] = []
  const doubts: Doubt[] = []
  const states: (LineState | null)[] = []
  let none = false
  for (const { order } of orders) text.push(...order.notes)
  const lines = orders.flatMap((linked) => linked.order.observations.map((one) => ({ one, linked })))
  checkNoneCut(lines.map(({ one }) => one.obx))
  // Isolates first: their drugs may stand before them.
  const sorted = lines.flatMap(({ one, linked }) => {
    const state = lineState(one.obx)
    states.push(state)
    if (state === 'deleted') return []
    const sort = state === 'not-obtained' || state === 'pending' ? 'text' : sortOf(one, linked.child, terms)
    return [{ one, linked, sort }]
  })
  for (const { one, linked, sort } of sorted) {
    if (sort === 'organism') addIsolate(isolates, one, linked, orders.indexOf(linked))
    if (sort === 'no-growth') none = true
  }
  for (const { one, linked, sort } of sorted) {
    text.push(...one.notes)
    if (sort === 'text' || sort === 'no-growth') text.push(...lineText(one))
    if (sort !== 'drug' && sort !== 'test' && sort !== 'amount') continue
    const isolate = isolateOf(one, linked, isolates, sort === 'drug')
    if (!isolate) text.push(...lineText(one))
    else if (sort === 'amount') isolate.amount = wholeText(one.obx, 5)?.slice(0, 300) ?? null
    else if (sort === 'test') addTest(isolate, testOf(one.obx, terms))
    else doubts.push(...addDrug(isolate, one, terms))
  }
  const members = orders.map(({ order }) => order)
  const [first] = members
  if (!first) throw new Error('A report without an order.')
  const { site, sides } = siteIn(members, terms)
  const status = reportStatus(
    members.map(({ obr }) => orderState(obr)),
    states,
  )
  const growth = isolates.length > 0 ? 'growth' : none ? 'none' : null
  const [tube] = members.flatMap(({ specimens }) => specimens)
  const tubeNumber = tube ? (repetitions(tube, 2)[0] ?? '') : ''
  const at = placeOf(first.obr, 25)
  const ask = (code: Doubt['code'], place = at): Doubt => ({ code, about: {}, place })
  return {
    laboratory: (component(first.header, 4) ?? component(first.header, 3))?.slice(0, 300) ?? null,
    accession:
      (accession ?? (tube ? (subComponents(tubeNumber, 2, tube.delimiters)[0] ?? null) : null))?.slice(0, 300) ?? null,
    label: ((tube ? subComponents(tubeNumber, 1, tube.delimiters)[0] : null) ?? placerOf(first))?.slice(0, 300) ?? null,
    animal: animalIn(first.patient, terms),
    collected: (tube ? readTime(tube, 17) : null) ?? readTime(first.obr, 7),
    reported: readTime(first.obr, 22) ?? readTime(first.header, 7),
    site,
    side: sides.length === 1 ? (sides[0] ?? null) : sides.length > 1 ? 'BOTH' : null,
    status: status === 'mixed' ? null : status,
    growth,
    standard: standardIn(text),
    isolates: isolates.map(({ key, organism, code, amount, drugs, tests }): ReportedIsolate => {
      return { key, organism, code, amount, drugs, tests }
    }),
    text,
    doubts: [
      ...(status === null ? [ask('status-not-said')] : []),
      ...(status === 'mixed' ? [ask('some-corrected-some-preliminary')] : []),
      ...(growth === null ? [ask('growth-not-said')] : []),
      ...(sides.length === 0 ? [ask('side-not-said')] : sides.length > 1 ? [ask('both-sides')] : []),
      ...doubts,
    ],
  }
}

function lineText({ obx }: Observation): string[] {
  // A document inside the message is kept with the original, not as text.
  const value = component(obx, 2) === 'ED' ? null : isCoded(obx) ? codedText(obx, 5) : wholeText(obx, 5)
  return value === null ? [] : [`${nameOf(obx)}: ${value}`.slice(0, 2_000)]
}
