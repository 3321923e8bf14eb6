import { Unreadable } from '../fault.ts'
import { component, placeOf, repetitions, subComponents } from './fields.ts'
import type { Observation, Order } from './orders.ts'

/** Which isolate a battery of drugs belongs to: the observation of its organism. */
export type Linked = { readonly order: Order; readonly organism: Observation | null; readonly child: boolean }
/** The orders that one report is made of, its culture first. */
export type Family = { readonly accession: string | null; readonly orders: readonly Linked[] }

/** The laboratory's number of an order, and ours. */
export function fillerOf({ obr, orc }: Order): string | null {
  return component(obr, 3) ?? (orc ? component(orc, 3) : null)
}

export function placerOf({ obr, orc }: Order): string | null {
  return component(obr, 2) ?? (orc ? component(orc, 2) : null)
}

/**
 * Puts each battery of drugs to the culture it names as its parent (OBR-26, OBR-29), and cultures under one number of
 * one animal to one report.
 *
 * Reference: HL7 version 2.5.1, section 4.5.3 (OBR-26, OBR-29) and chapter 7, the example of a culture.
 */
export function familiesOf(orders: readonly Order[]): Family[] {
  const families: { accession: string | null; patient: unknown; orders: Linked[] }[] = []
  const home = new Map<Order, (typeof families)[number]>()
  const children = orders.filter((order) => isChild(order))
  for (const order of orders.filter((one) => !isChild(one))) {
    const accession = fillerOf(order)
    const known = families.find(
      (one) => accession !== null && one.accession === accession && one.patient === order.patient,
    )
    const family = known ?? { accession, patient: order.patient, orders: [] }
    if (!known) families.push(family)
    family.orders.push({ order, organism: null, child: false })
    home.set(order, family)
  }
  // A parent may stand anywhere in the message, also behind its child, and may itself be a child.
  let waiting = children
  while (waiting.length > 0) {
    const left: Order[] = []
    for (const order of waiting) {
      const found = parentOf(order, [...home.keys()])
      if (found === 'not-yet') {
        left.push(order)
        continue
      }
      const family = home.get(found.parent)
      family?.orders.push({ order, organism: found.organism, child: true })
      if (family) home.set(order, family)
    }
    const stuck = left[0]
    if (stuck && left.length === waiting.length) {
      const found = repetitions(stuck.obr, 29)[0] ?? repetitions(stuck.obr, 26)[0] ?? ''
      throw new Unreadable('parent-missing', found, placeOf(stuck.obr, repetitions(stuck.obr, 29).length > 0 ? 29 : 26))
    }
    waiting = left
  }
  return families
}

function isChild({ obr }: Order): boolean {
  return repetitions(obr, 26).length > 0 || repetitions(obr, 29).length > 0
}

type Found = { readonly parent: Order; readonly organism: Observation | null }

function parentOf(order: Order, known: readonly Order[]): Found | 'not-yet' {
  const { obr } = order
  const { delimiters } = obr
  const [number] = repetitions(obr, 29)
  const [placer = null] = number === undefined ? [] : subComponents(number, 1, delimiters)
  const [filler = null] = number === undefined ? [] : subComponents(number, 2, delimiters)
  const same = known.filter((one) => one.patient === order.patient)
  const named = same.filter(
    (one) =>
      number === undefined ||
      (filler !== null ? fillerOf(one) === filler : placer !== null && placerOf(one) === placer),
  )
  const [result] = repetitions(obr, 26)
  if (result === undefined) {
    const [parent, another] = named
    if (!parent) return 'not-yet'
    if (another) throw new Unreadable('isolate-unclear', number ?? '', placeOf(obr, 29))
    return { parent, organism: null }
  }
  const [code = null] = subComponents(result, 1, delimiters)
  const [sub = null] = subComponents(result, 2, delimiters)
  const said = subComponents(result, 3, delimiters).filter((part) => part !== null)
  const found = named.flatMap((parent) => {
    const fits = parent.observations.filter(
      ({ obx }) => (code === null || component(obx, 3) === code) && (sub === null || component(obx, 4) === sub),
    )
    // Under one number the last line stands: it corrects those before it, or the message is refused for it later.
    const last = fits.at(-1)
    const numbers = new Set(fits.map(({ obx }) => component(obx, 4)))
    return (numbers.size === 1 && last ? [last] : fits).map((organism) => ({ parent, organism }))
  })
  const [first, another] = found
  if (!first) return 'not-yet'
  if (another) throw new Unreadable('isolate-unclear', result, placeOf(obr, 26))
  checkSaid(said, first.organism, order)
  return first
}

/** A child that repeats the name of its organism must repeat the right one. */
function checkSaid(said: readonly (string | null)[], { obx }: Observation, { obr }: Order): void {
  if (said.length === 0) return
  const value = repetitions(obx, 5)[0] ?? ''
  const printed = [1, 2, 4, 5, 9].flatMap((place) => subComponents(value, place, obx.delimiters))
  const all = printed.flatMap((part) => part?.toLowerCase() ?? [])
  const names = said.flatMap((part) => part?.toLowerCase() ?? [])
  // Only the beginning of a long name may be repeated.
  if (names.some((name) => all.some((part) => part.startsWith(name) || name.startsWith(part)))) return
  throw new Unreadable('parent-disagrees', names.join(' '), placeOf(obr, 26))
}
