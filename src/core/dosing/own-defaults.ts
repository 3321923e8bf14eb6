import { speciesList } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { Decimal } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { OwnDefault, OwnDefaults } from './own-default.ts'
import type { DoseLine, DosingKnowledge } from './request.ts'
import type { DosingRules } from './rules.ts'
import type { Syringe } from './syringe.ts'

/** What a clinic may set for itself in its house policy, beside the spans of what is owed. */
export const doseDefaults = [
  ...speciesList.map((species) => `dose.surface-factor.${species}` as const),
  'dose.syringes',
] as const

type Policy = Line<BodyOf<'house-policy'>>
type People = ReadonlyMap<string, { readonly name: string }>

/**
 * The defaults of the dose engine that the clinic's own stream changes.
 *
 * @example ownDefaultsOf(house, rules, people).surface.dog?.value // 0.104
 */
export function ownDefaultsOf(
  house: Case,
  rules: Pick<DosingRules, 'ownSurfaceFactor'>,
  people: People = new Map(),
): OwnDefaults {
  const lines = house.live('house-policy').filter(({ body }) => body.policy.startsWith('dose.'))
  const only = (name: string) => {
    const named = lines.filter(({ body }) => body.policy === name)
    return named.length === 1 ? named[0] : undefined
  }
  const own = <Value>(name: string, read: (text: string) => Value | undefined): OwnDefault<Value> | undefined => {
    const line = only(name)
    const value = line && read(line.body.value)
    return line && value !== undefined ? { value, ...setBy(line, people) } : undefined
  }
  const dog = own('dose.surface-factor.dog', (text) => readSurfaceFactor(text, rules))
  const cat = own('dose.surface-factor.cat', (text) => readSurfaceFactor(text, rules))
  const syringes = own('dose.syringes', readSyringes)
  const read = new Set([
    ...(dog ? ['dose.surface-factor.dog'] : []),
    ...(cat ? ['dose.surface-factor.cat'] : []),
    ...(syringes ? ['dose.syringes'] : []),
  ])
  const unread = lines.filter(({ body }) => !read.has(body.policy))
  return {
    surface: { ...(dog && { dog }), ...(cat && { cat }) },
    ...(syringes && { syringes }),
    unreadable: unread.map(({ body: { policy, value } }) => ({ policy, value })),
  }
}

function setBy({ header, body }: Policy, people: People): Provenance & Omit<OwnDefault<unknown>, 'value'> {
  const { author, happenedAt } = header
  const by = author.kind === 'person' ? (people.get(author.person)?.name ?? author.person) : author.kind
  const on = dayOf(happenedAt)
  return {
    sources: ['house-policy'],
    where: `${body.policy}, ${by}, ${on}`,
    known: 'house',
    strength: 'practice',
    confidence: 'high',
    checked: on as Provenance['checked'],
    by,
    on,
    // The sentence that names it ends itself.
    because: body.because.replace(/[.\s]+$/u, ''),
  }
}

/**
 * The factor k of m² = k × kg^(2/3) as somebody wrote it; undefined for anything that is no such number.
 *
 * @example readSurfaceFactor('0.104', rules) // 0.104; '10.4' is the same factor in other units and is not taken
 */
export function readSurfaceFactor(
  text: string,
  { ownSurfaceFactor }: Pick<DosingRules, 'ownSurfaceFactor'>,
): Decimal | undefined {
  if (!/^\d+(?:\.\d+)?$/u.test(text.trim())) return undefined
  const k = new Decimal(text.trim())
  const { low, high } = ownSurfaceFactor.value
  return k.gte(low) && k.lte(high) ? k : undefined
}

/**
 * Syringes as somebody wrote them, smallest first: what each holds, and its marks, in millilitres.
 *
 * @example readSyringes('1 by 0.01; 3 by 0.1') // [{ holds: '1', mark: '0.01' }, { holds: '3', mark: '0.1' }]
 */
export function readSyringes(text: string): readonly Syringe[] | undefined {
  const read = text.split(/[;,]/u).map((part) => oneSyringe.exec(part.trim()))
  const syringes = read.flatMap((match) => {
    const [, holds, mark] = match ?? []
    return holds !== undefined && mark !== undefined ? [{ holds, mark }] : []
  })
  const isWhole = syringes.length === read.length && syringes.every(({ holds, mark }) => isMarked(holds, mark))
  if (!isWhole || new Set(syringes.map(({ holds }) => new Decimal(holds).toString())).size < read.length)
    return undefined
  return syringes.sort((a, b) => new Decimal(a.holds).comparedTo(b.holds))
}

const oneSyringe = /^(\d+(?:\.\d+)?)\s*(?:mL)?\s+by\s+(\d+(?:\.\d+)?)\s*(?:mL)?$/u

/** A syringe has more than one mark. */
function isMarked(holds: string, mark: string): boolean {
  const step = new Decimal(mark)
  return step.gt(0) && step.times(2).lte(holds)
}

/** Syringes as they are written and read: `1 by 0.01; 3 by 0.1`. */
export function saySyringes(syringes: readonly Syringe[]): string {
  return syringes.map(({ holds, mark }) => `${holds} by ${mark}`).join('; ')
}

/** What the engine is told, with the defaults of this clinic in the place of the tool's own. */
export function withOwn(knowledge: DosingKnowledge, own: OwnDefaults): DosingKnowledge {
  const { surface, syringes } = own
  const bodySurface = { ...knowledge.rules.bodySurface, ...surface }
  return {
    ...knowledge,
    rules: { ...knowledge.rules, bodySurface },
    toolSurface: knowledge.rules.bodySurface,
    own,
    ...(syringes && { syringes: syringes.value }),
  }
}

/** What the defaults of this clinic did to a plan, said once; and those that nothing could read. */
export function judgeOwn(
  lines: readonly DoseLine[],
  { own, rules }: Pick<DosingKnowledge, 'own' | 'rules'>,
): DoseFinding[] {
  const { syringes, unreadable = [] } = own ?? {}
  const drawn = lines.filter(
    (line) => line.verdict !== 'refused' && (line.drawn ?? line.dilution ?? line.loading?.drawn),
  )
  const acted = syringes && drawn.length > 0 ? [acting(syringes, drawn)] : []
  const unread = unreadable.map((policy) => found('note', 'house-policy-unreadable', policy, [rules.withoutNumber]))
  return [...acted, ...unread]
}

function acting(syringes: OwnDefault<readonly Syringe[]>, drawn: readonly DoseLine[]): DoseFinding {
  const { by, on, because, value } = syringes
  const about = { by, on, because, syringes: saySyringes(value), lines: drawn.map(({ id }) => id).join(', ') }
  return found('note', 'house-syringes', about, [syringes])
}
