import { z } from 'zod'
import { antibiogramRules } from '#content/susceptibility/antibiogram-rules.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'
import type { Edition } from '#core/culture/breakpoint.ts'
import { editionCalled } from '#core/culture/editions.ts'
import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import { daysBetween } from '#core/time/calendar-day.ts'
import { InputError, listed, readInput } from '../input.ts'

const day = z.iso.date({ error: 'must be a day such as 2026-03-01.' })

/** How a table is asked for; everything but the rows. */
export const antibiogramRequest = z.strictObject({
  method: listed(['calendar-year', 'episode', 'phenotype'], 'method').default('calendar-year'),
  episodeDays: z.int().min(1).optional(),
  points: z.number().min(0).optional(),
  when: listed(['exceeded', 'reached'], 'way to pass the threshold').optional(),
  from: day.optional(),
  until: day.optional(),
  minimum: z.int().min(1).default(1),
  /** Absent: that of the house. */
  edition: z.string().min(1).optional(),
  sites: listed(['together', 'apart', 'each'], 'way to tell places').default('together'),
})

/** The edition asked for, by its id or by its name. */
function editionAsked(named: string, { editions }: SusceptibilityFacts): Edition {
  const found = editionCalled(named, editions)
  if (found) return found
  const known = editions.map(({ id }) => id).join(', ')
  throw new InputError(
    'edition-unknown',
    'edition',
    `edition: ${JSON.stringify(named)} is not held; write one of ${known}.`,
  )
}

/** The method as asked for, with what is usual for the rest; `facts` are those of the house where its record is counted. */
export function methodAsked(
  input: unknown,
  facts: SusceptibilityFacts = susceptibility,
): { readonly method: AntibiogramMethod; readonly edition: Edition } {
  const asked = readInput(antibiogramRequest, input)
  const edition = editionAsked(asked.edition ?? facts.usual, facts)
  const { method, from = null, until = null, minimum, sites } = asked
  const unused = [
    ...(method === 'calendar-year' && asked.episodeDays !== undefined ? ['episodeDays'] : []),
    ...(method !== 'phenotype' && asked.points !== undefined ? ['points'] : []),
    ...(method !== 'phenotype' && asked.when !== undefined ? ['when'] : []),
  ]
  if (unused[0]) {
    throw new InputError('not-of-this-method', unused[0], `${unused[0]}: the method ${method} has none; leave it out.`)
  }
  if (from !== null && until !== null && daysBetween(from, until) < 0) {
    throw new InputError('period-backwards', 'until', `until: ${until} lies before ${from}; write a later day.`)
  }
  const flagBelow = antibiogramRules.flagBelow.value
  const first = firstOf(asked)
  return { method: { first, sites, from, until, minimum, flagBelow, edition: edition.id }, edition }
}

function firstOf({
  method,
  episodeDays,
  points,
  when,
}: z.infer<typeof antibiogramRequest>): AntibiogramMethod['first'] {
  const days = episodeDays ?? antibiogramRules.episodeDays.value
  const { threshold } = antibiogramRules
  switch (method) {
    case 'calendar-year':
      return { kind: 'calendar-year' }
    case 'episode':
      return { kind: 'episode', days }
    case 'phenotype':
      return { kind: 'phenotype', days, points: points ?? threshold.value.points, when: when ?? threshold.value.when }
  }
}
