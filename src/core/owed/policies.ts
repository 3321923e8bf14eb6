import type { Provenance } from '#core/evidence/sourced.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { faceLooks, followUpSteps, wardSpans } from '#core/procedures/follow-up.ts'
import { dayOf, type Period, type Span } from '#core/time/calendar-day.ts'
import type { Why } from './owed-item.ts'

/** What a clinic may set for itself, under these names in its house policy: `owed.suture-check` = `12..14 days`. */
export const owedPolicies = [
  ...followUpSteps.map((step) => `owed.${step}` as const),
  ...faceLooks.map((look) => `owed.face.${look}` as const),
  'owed.face.then-every',
  'owed.culture',
  'owed.histology',
  'owed.admission-before',
  'owed.referral.today',
  'owed.referral.this-week',
  'owed.referral.routine',
  ...wardSpans.map((span) => `owed.ward.${span}` as const),
] as const

export type OwedPolicy = { readonly span: Span; readonly fact: Provenance; readonly why: Why }

export type Policies = {
  readonly set: ReadonlyMap<string, OwedPolicy>
  readonly unreadable: readonly Line<{ policy: string; value: string; because: string }>[]
  /** How many entries have ever touched what is owed. */
  readonly changes: number
}

const units = new Set(['minutes', 'hours', 'days', 'weeks', 'months'])

/**
 * Reads `12..14 days` or `90 minutes`-like periods of one unit: minutes, hours, days, weeks or months. Undefined otherwise.
 *
 * @example readSpan('12..14 days') // { from: { count: 12, unit: 'days' }, until: { count: 14, unit: 'days' } }
 */
export function readSpan(text: string): Span | undefined {
  const match = /^(\d{1,3})(?:\.\.(\d{1,3}))? (\w+)$/.exec(text.trim())
  const unit = match?.[3]
  if (!match || unit === undefined || !units.has(unit)) return undefined
  const from = { count: Number(match[1]), unit: unit as Period['unit'] }
  const until = match[2] === undefined ? from : { count: Number(match[2]), unit: from.unit }
  return until.count < from.count ? undefined : { from, until }
}

/** The clinic's own intervals, each with who set it, when and why; what cannot be read is owed to a person. */
export function policiesOf(file: Pick<CaseFile, 'house' | 'people'>): Policies {
  const set = new Map<string, OwedPolicy>()
  const unreadable: Line<{ policy: string; value: string; because: string }>[] = []
  for (const line of file.house.live('house-policy')) {
    const { policy, value, because } = line.body
    if (!policy.startsWith('owed.')) continue
    const span = readSpan(value)
    if (!span || !(owedPolicies as readonly string[]).includes(policy)) {
      unreadable.push(line)
      continue
    }
    const { author, happenedAt } = line.header
    const by = author.kind === 'person' ? (file.people.get(author.person)?.name ?? author.person) : author.kind
    const on = dayOf(happenedAt)
    set.set(policy, {
      span,
      fact: {
        sources: ['house-policy'],
        where: `${policy}, ${by}, ${on}`,
        known: 'house',
        strength: 'practice',
        confidence: 'high',
        checked: on as Provenance['checked'],
      },
      why: { code: 'house-policy', about: { policy, value, by, on, because } },
    })
  }
  const touched = file.house.lines.filter((line) => line.header.kind === 'house-policy')
  const ids = new Set(touched.map((line) => line.header.id))
  const withdrawn = file.house.lines.filter(({ header }) => header.withdraws !== null && ids.has(header.withdraws))
  return { set, unreadable, changes: touched.length + withdrawn.length }
}
