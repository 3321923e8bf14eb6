import type { Species } from '#core/animal/species.ts'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { Author } from '#core/journal/entry.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'

type Check = Line<BodyOf<'second-check'>>
type Planned = Line<BodyOf<'planned-line'>>
export type BoundPlan = NonNullable<BodyOf<'second-check'>['plan']>

/** What makes a given name worthless: the thing that is different now, as it was and as it is. */
export type Voided =
  | { readonly what: 'species'; readonly from: Species; readonly to: Species }
  | { readonly what: 'weight'; readonly from: string; readonly to: string }
  | { readonly what: 'drug' | 'route' | 'dose' | 'strength'; readonly from: string; readonly to: string }
  /** Bag, loading dose, tablet, course or blood are others; or the line was written anew as it was; or the fingerprint does not fit its lines. */
  | { readonly what: 'how' | 'line' | 'fingerprint' }

/** How a planned line stands with the second person. */
export type CheckState =
  | { readonly kind: 'none' }
  | { readonly kind: 'agrees' | 'disagrees' | 'nobody-available' | 'same-person'; readonly check: Check }
  | { readonly kind: 'void'; readonly check: Check; readonly because: readonly Voided[] }

/** Why a name is void, in sentences. Example: `sayVoided(state.because, words)` → 'The weight was 8.2 kg and is 2.8 kg now.' */
export function sayVoided(because: readonly Voided[], words: Readonly<Record<Voided['what'], string>>): string {
  return because.map((one) => fill(words[one.what], 'from' in one ? { from: one.from, to: one.to } : {})).join(' ')
}

/** The animal as a check binds it: species and the last weight of the case, up to an instant where one is given. */
function animalNow(theCase: Case, asOf: string | null): Pick<BoundPlan, 'species' | 'weight'> | null {
  const identity = theCase.latest('identity')?.body
  if (!identity) return null
  const weight = theCase.live('weight').findLast((line) => asOf === null || line.at <= asOf)
  return { species: identity.species, weight: weight?.body.weight ?? null }
}

function fingerprint(animal: Pick<BoundPlan, 'species' | 'weight'>, lines: readonly Planned[]): string {
  const bodies = [...lines]
    .sort((a, b) => compareText(a.header.id, b.header.id))
    .map(({ header, body }) => ({ id: header.id, body: saidOf(body) }))
  return hashText(canonical({ ...animal, lines: bodies } as unknown as Json))
}

/** Fields that lines of version 1 did not have: unsaid they leave no trace, so that a name given then still counts. */
const sinceVersion2 = ['shelfItem', 'how', 'deficit', 'blood', 'worked'] as const

function saidOf(body: Planned['body']): Partial<Planned['body']> {
  const unsaid = sinceVersion2.filter((field) => body[field] === null)
  return Object.fromEntries(Object.entries(body).filter(([field]) => !unsaid.some((one) => one === field)))
}

/**
 * What a second person binds their name to: the species, the weight, and the fingerprint over both and every line.
 * Null without an identity: a species is never guessed.
 *
 * @example boundPlanOf(theCase, lines)?.weight // { value: '8.2', unit: 'kg' }
 */
export function boundPlanOf(theCase: Case, lines: readonly Planned[]): BoundPlan | null {
  const animal = animalNow(theCase, null)
  return animal && { ...animal, fingerprint: fingerprint(animal, lines) }
}

/**
 * How each live line stands with the second person. A name given for another weight, species, dose or strength is void
 * and says why; the person who planned a line is no second person for it. `asOf` ends the looking at new weights: an
 * operation that is over keeps the names it had.
 *
 * @example checkStates(theCase, lines, null).get(line.header.id) // { kind: 'void', because: [{ what: 'weight', from: '8.2 kg', to: '2.8 kg' }], check }
 */
export function checkStates(
  theCase: Case,
  lines: readonly Planned[],
  asOf: string | null,
): ReadonlyMap<string, CheckState> {
  const checks = theCase.live('second-check')
  const animal = animalNow(theCase, asOf)
  return new Map(lines.map((line) => [line.header.id, stateOf(line, checks, theCase, animal)]))
}

function stateOf(
  line: Planned,
  checks: readonly Check[],
  theCase: Case,
  animal: Pick<BoundPlan, 'species' | 'weight'> | null,
): CheckState {
  const check = checks.findLast(({ body }) => body.of.includes(line.header.id))
  if (!check) return stateOfOlder(line, checks, theCase)
  if (check.body.verdict !== 'nobody-available' && isSame(check.header.author, line.header.author))
    return { kind: 'same-person', check }
  const because = animal ? changed(check, line, theCase, animal) : []
  return because.length > 0 ? { kind: 'void', check, because } : { kind: check.body.verdict, check }
}

/** A line that replaced a checked one: the name stood under the older. */
function stateOfOlder(line: Planned, checks: readonly Check[], theCase: Case): CheckState {
  const seen = new Set([line.header.id])
  const open = [...line.header.supersedes]
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (seen.has(id)) continue
    seen.add(id)
    const older = theCase.line(id)
    if (older?.header.kind !== 'planned-line' || older.body === null) continue
    const check = checks.findLast(({ body }) => body.of.includes(older.header.id))
    if (check) return { kind: 'void', check, because: differences(older as unknown as Planned, line) }
    open.push(...older.header.supersedes)
  }
  return { kind: 'none' }
}

function changed(
  { body }: Check,
  line: Planned,
  theCase: Case,
  animal: Pick<BoundPlan, 'species' | 'weight'>,
): Voided[] {
  const { plan, of } = body
  const weighed = plan ? plan.weight : line.body.weight
  const voided: Voided[] = []
  if (plan && plan.species !== animal.species) voided.push({ what: 'species', from: plan.species, to: animal.species })
  if (animal.weight && !isEqual(weighed, animal.weight))
    voided.push({ what: 'weight', from: say(weighed), to: say(animal.weight) })
  if (plan && voided.length === 0 && !fits(plan, of, theCase)) voided.push({ what: 'fingerprint' })
  return voided
}

/** Whether the fingerprint is that of the lines it names: entries never change, so only a fault or a forgery differs. */
function fits(plan: BoundPlan, of: readonly string[], theCase: Case): boolean {
  const lines = of.map((id) => theCase.line(id))
  if (lines.some((line) => line === undefined || line.body === null)) return false
  const { species, weight } = plan
  return fingerprint({ species, weight }, lines as unknown as Planned[]) === plan.fingerprint
}

function differences({ body: older }: Planned, { body: newer }: Planned): Voided[] {
  const pairs = [
    ['drug', older.drug, newer.drug],
    ['route', older.route ?? '', newer.route ?? ''],
    ['dose', say(older.dose), say(newer.dose)],
    ['strength', say(older.stock), say(newer.stock)],
    ['weight', say(older.weight), say(newer.weight)],
  ] as const
  const voided = pairs.filter(([, from, to]) => from !== to).map(([what, from, to]) => ({ what, from, to }))
  if (voided.length > 0) return voided
  const how = ({ how, deficit, blood }: Planned['body']) => canonical({ how, deficit, blood } as unknown as Json)
  return [{ what: how(older) === how(newer) ? 'line' : 'how' }]
}

function isEqual(a: StoredQuantity<'kg'> | null, b: StoredQuantity<'kg'>): boolean {
  return a !== null && fromStored(a).value.eq(fromStored(b).value)
}

function say(quantity: Parameters<typeof fromStored>[0] | null): string {
  return quantity === null ? '–' : fromStored(quantity).toString()
}

function isSame(a: Author, b: Author): boolean {
  return a.kind === 'person' && b.kind === 'person' && a.person === b.person
}
