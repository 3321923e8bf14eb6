import { Unreadable } from '../fault.ts'
import type { Doubt, ReportedDrug, ReportedTest } from '../report.ts'
import type { LaboratoryTerms } from '../terms.ts'
import { component, placeOf } from './fields.ts'
import type { Linked } from './link.ts'
import { drugIn, nameOf, organismIn } from './observation.ts'
import type { Observation } from './orders.ts'
import { lineState } from './statuses.ts'

/** An isolate while its lines are being put together. */
export type Building = {
  readonly key: string
  readonly at: Observation
  readonly organism: string
  readonly code: string | null
} & {
  amount: string | null
  drugs: ReportedDrug[]
  tests: ReportedTest[]
}

/** An isolate begins with the line that names its organism. */
export function addIsolate(isolates: Building[], at: Observation, linked: Linked, place: number): void {
  const { obx } = at
  const sub = component(obx, 4) ?? String(isolates.length + 1)
  const { organism, code } = organismIn(obx)
  if (organism === '') throw new Unreadable('isolate-unclear', '', placeOf(obx, 5))
  const twice = isolates.findIndex((one) => subOf(one) === component(obx, 4) && inOrder(one, linked))
  const key = isolates.some((one) => one.key === sub) ? `${place + 1}.${sub}` : sub
  const made: Building = { key: key.slice(0, 300), at, organism, code, amount: null, drugs: [], tests: [] }
  const before = isolates[twice]
  if (!before) {
    isolates.push(made)
    return
  }
  // A corrected line takes the place of the one it corrects; two that both stand are two isolates under one number.
  if (lineState(obx) === 'corrected') isolates[twice] = { ...made, key: before.key }
  else if (before.organism !== organism) throw new Unreadable('isolate-twice', organism, placeOf(obx, 4))
}

const subOf = ({ at }: Building) => component(at.obx, 4)
const inOrder = ({ at }: Building, { order }: Linked) => order.observations.includes(at)

/** The isolate a line belongs to: its order's parent, the same number within its order, or the only one there is. */
export function isolateOf(one: Observation, linked: Linked, isolates: Building[], must: boolean): Building | null {
  if (linked.organism) {
    const parent = isolates.find(({ at }) => at === linked.organism)
    if (parent) return parent
    // Its organism was corrected since: the one under the same number stands for it.
    const sub = component(linked.organism.obx, 4)
    const instead = isolates.filter((isolate) => sub !== null && subOf(isolate) === sub)
    if (instead.length === 1) return instead[0] ?? null
  }
  const sub = component(one.obx, 4)
  const near = isolates.filter((isolate) => inOrder(isolate, linked))
  const same = near.filter(
    (isolate) => sub !== null && (subOf(isolate) === sub || sub.startsWith(`${subOf(isolate)}.`)),
  )
  if (same.length === 1) return same[0] ?? null
  const only = near.length > 0 ? near : isolates
  if (only.length === 1 && (sub === null || near.length === 0 || linked.child)) return only[0] ?? null
  if (!must) return null
  throw new Unreadable('isolate-unclear', nameOf(one.obx), placeOf(one.obx, 4))
}

export function addTest(isolate: Building, test: ReportedTest | null): void {
  if (test && !isolate.tests.some((one) => one.test === test.test && one.result === test.result))
    isolate.tests.push(test)
}

export function addDrug(isolate: Building, one: Observation, terms: LaboratoryTerms): Doubt[] {
  const { drug, doubts } = drugIn(one, terms)
  if (!drug) return []
  const twice = isolate.drugs.findIndex((other) => other.drug === drug.drug && other.unit === drug.unit)
  const before = isolate.drugs[twice]
  if (!before) isolate.drugs.push(drug)
  else if (lineState(one.obx) === 'corrected') isolate.drugs[twice] = drug
  else if (before.value !== drug.value || before.category !== drug.category) {
    throw new Unreadable('drug-twice', drug.drug, placeOf(one.obx, 3))
  }
  return doubts
}
