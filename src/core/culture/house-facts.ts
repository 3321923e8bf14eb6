import type { Provenance } from '#core/evidence/sourced.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Breakpoint, Edition } from './breakpoint.ts'
import { rowId } from './edition.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { readEnds } from './written-ends.ts'

type House = Pick<CaseFile, 'house' | 'people'>
type OwnLine = Line<BodyOf<'breakpoint-edition'>>

/** The name under which a clinic says in its house policy by which edition animals are read. */
export const editionPolicy = 'culture.edition'

/**
 * What this clinic reads cultures by: the facts of content with its own copies beside them, the edition it chose, and
 * its own values of people before ours. A copy that was replaced stays, for the cases that were judged by it.
 *
 * @example readIsolates({ …, edition: factsOfHouse(file, susceptibility).usual }, factsOfHouse(file, susceptibility))
 */
export function factsOfHouse(file: House, facts: SusceptibilityFacts): SusceptibilityFacts {
  const before = kept.get(file.house)
  if (before && before.people === file.people && before.facts === facts) return before.made
  const made = madeOf(file, facts)
  kept.set(file.house, { people: file.people, facts, made })
  return made
}

/** Made once for each state of the house: a screen reads many reports, and an edition is looked up by its own object. */
const kept = new WeakMap<House['house'], Pick<House, 'people'> & Record<'facts' | 'made', SusceptibilityFacts>>()

function madeOf(file: House, facts: SusceptibilityFacts): SusceptibilityFacts {
  const own = ownEditions(file)
  const editions = [...facts.editions, ...own]
  const ownPeople = own.filter(({ audience, current }) => audience === 'people' && current).map(({ id }) => id)
  const chosen = chosenEdition(file, editions)
  return { ...facts, editions, usual: chosen?.id ?? facts.usual, people: [...ownPeople, ...facts.people] }
}

/** Every copy that was ever loaded, the newest first; only those in force are `current`. */
export function ownEditions(file: House): Edition[] {
  const { lines } = file.house
  return lines
    .filter((line): line is OwnLine => line.header.kind === 'breakpoint-edition' && line.known && line.body !== null)
    .map((line) => ownEdition(line, file))
    .reverse()
}

/** The edition that the house policy names: one that is held, made for animals, and can give a category. */
export function chosenEdition({ house }: Pick<House, 'house'>, editions: readonly Edition[]): Edition | null {
  const policies = house.live('house-policy').filter(({ body }) => body.policy === editionPolicy)
  const [only, another] = policies
  if (!only || another) return null
  return editionsToChoose(editions).find(({ id }) => id === only.body.value) ?? null
}

/** What animals may be read by: made for them, and not only information. An own copy that was replaced is none. */
export function editionsToChoose(editions: readonly Edition[]): Edition[] {
  return editions.filter(
    ({ audience, rows, own, current }) =>
      audience === 'animals' && rows.some(({ kind }) => kind === 'clinical') && (own !== true || current),
  )
}

/** Its name carries that of the entry, so that a corrected file is another edition. */
function ownEdition(line: OwnLine, { people }: House): Edition {
  const { header, body, state } = line
  const { rows, from, ...about } = body
  const by = header.author.kind === 'person' ? (people.get(header.author.person)?.name ?? header.author.person) : ''
  const on = sayMoment({ ...header.happenedAt, precision: 'day' })
  const known: Provenance = {
    sources: ['own-breakpoints'],
    where: [from.replace(/[.\s]+$/u, ''), by, on].filter((text) => text !== '').join(', '),
    known: 'house',
    strength: 'guideline',
    confidence: 'high',
    checked: dayOf(header.happenedAt) as Provenance['checked'],
  }
  return {
    id: `own:${header.id}`,
    ...about,
    current: state === 'live',
    own: true,
    rows: rows.flatMap((row) => ownRow(row, about.convention, known)),
  }
}

/** Ends were read when the file was loaded; one that this program cannot read any more is left out, never guessed. */
function ownRow(
  row: BodyOf<'breakpoint-edition'>['rows'][number],
  convention: Edition['convention'],
  known: Provenance,
): Breakpoint[] {
  const { susceptible, between, resistant, dose, remark, route, ...of } = row
  const ends = readEnds({ susceptible, between, resistant }, row.method, convention)
  if (ends.kind === 'refusal') return []
  const group = { ...of, ...(route ? { route } : {}) }
  return [
    {
      id: rowId(group, group),
      ...group,
      ends: { value: ends.answer, ...known },
      ...(dose ? { dose: { value: dose, ...known } } : {}),
      ...(remark ? { remark } : {}),
    },
  ]
}
