import type { Side } from '#core/animal/species.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { dayAfter, dayOf, instantAfter, type Period, type Span } from '#core/time/calendar-day.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { earlierOf, laterOf, type Setting, wholeDays } from './setting.ts'

type Specimen = Line<BodyOf<'specimen'>>
type Result = Line<BodyOf<'specimen-result'>>
type Group = 'culture' | 'histology' | 'cytology'

/** The loop of a specimen: result → read → owner told → referring vet told. Silence keeps it open. */
export function owedResults(setting: Setting): Draft[] {
  const { theCase } = setting.file
  return [
    ...theCase.live('specimen').flatMap((specimen) => expected(specimen, setting)),
    ...theCase.live('specimen-result').flatMap((result) => closedLoop(result, setting)),
  ]
}

function sideOf(line: { readonly header: Line['header'] }): Side | null {
  return line.header.subject.kind === 'ear' ? line.header.subject.side : null
}

function groupsOf({ body }: Specimen): Group[] {
  const groups = body.tests.map((test): Group => (test === 'histology' || test === 'cytology' ? test : 'culture'))
  return [...new Set(groups)].sort()
}

/** One item per kind of test; cultures end with a final culture, the others with as many final other results. */
function expected(specimen: Specimen, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const results = theCase.live('specimen-result').filter(({ body }) => isFor(body.specimen, specimen, setting))
  const final = results.filter(({ body }) => body.status !== 'preliminary')
  const others = final.filter(({ body }) => body.growth === 'not-a-culture')
  const notCultures = groupsOf(specimen).filter((group) => group !== 'culture')
  return groupsOf(specimen).map((group) => {
    const settled =
      group === 'culture'
        ? final.find(({ body }) => body.growth !== 'not-a-culture')
        : others[notCultures.indexOf(group)]
    const item = expectedItem(specimen, group, results.length > 0 && !settled, setting)
    const late = settled !== undefined && settled.at > item.dueBy
    return { item, ended: settled ? { because: late ? 'settled-late' : 'settled', by: settled.header.id } : null }
  })
}

/** A result names the specimen it was asked with, also when that entry was corrected since. */
function isFor(id: string, specimen: Specimen, setting: Setting): boolean {
  return rootOf(setting.file.theCase, id) === rootOf(setting.file.theCase, specimen.header.id)
}

function expectedItem(specimen: Specimen, group: Group, preliminary: boolean, setting: Setting): OwedItem {
  const { theCase } = setting.file
  const policy = group === 'cytology' ? undefined : setting.policies.set.get(`owed.${group}`)
  const rule: Sourced<Span> = setting.rules.results[group]
  const span = policy?.span ?? rule.value
  const taken = { at: specimen.at, zone: setting.zone }
  const day = dayOf(taken)
  const promised = specimen.body.expectedBy
  const window = daysOf(day, span, taken)
  const until = promised ? dayOf({ at: promised.at, zone: setting.zone }) : window.until
  const dates = wholeDays({ from: earlierOf(window.from, until), until }, setting.zone)
  const why: Why[] = [
    promised
      ? { code: 'laboratory-said', about: { day: until } }
      : (policy?.why ?? { code: 'usual-laboratory-time', about: { from: window.from, until } }),
    ...(preliminary ? [{ code: 'only-preliminary' as const, about: {} }] : []),
  ]
  return {
    id: `result:${rootOf(theCase, specimen.header.id)}:${group}`,
    what: 'result-expected',
    about: { test: group, label: specimen.body.label },
    who: 'nurse',
    person: null,
    way: 'task',
    side: sideOf(specimen),
    operation: specimen.body.operation,
    dueFrom: laterOf(dates.dueFrom, specimen.at),
    dueBy: dates.dueBy,
    zone: dates.zone,
    precision: 'day',
    why,
    facts: promised ? [] : [policy?.fact ?? rule],
    withOwner: false,
    revision: timesWritten(theCase, 'specimen', ({ header }) => header.supersedes.length > 0) + setting.revision,
  }
}

function daysOf(day: string, span: Span, taken: { at: string; zone: string }): { from: string; until: string } {
  const on = (period: Period) =>
    period.unit === 'hours' ? dayOf({ at: instantAfter(taken, period), zone: taken.zone }) : dayAfter(day, period)
  return { from: on(span.from), until: on(span.until) }
}

function closedLoop(result: Result, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const { rules } = setting
  const { id } = result.header
  const read = theCase.live('result-read').find(({ body }) => body.result === id)
  const item = (
    what: 'result-to-read' | 'owner-to-tell' | 'referring-vet-to-tell',
    from: string,
    within: Sourced<Period>,
    rest: Pick<OwedItem, 'who' | 'way' | 'why' | 'withOwner'>,
  ): OwedItem => ({
    ...rest,
    ...dueWithin(from, within, setting.zone),
    id: `${what}:${id}`,
    what,
    about: { label: labelOf(result, setting) },
    person: null,
    side: sideOf(result),
    operation: null,
    facts: [within as Provenance],
    revision: setting.revision,
  })
  const toRead: Draft = {
    item: item('result-to-read', result.at, rules.results.readWithin, {
      who: 'surgeon',
      way: 'task',
      why: [{ code: 'result-waits', about: { status: result.body.status } }],
      withOwner: false,
    }),
    ended: read ? { because: 'settled', by: read.header.id } : null,
  }
  if (!read || result.body.status === 'preliminary') return [toRead]
  // Whoever was told of the change that the reading asked for was told of the result.
  const changes = theCase.live('medicine-change').filter(({ body }) => body.read === read.header.id)
  const told = (who: 'owner' | 'referring-vet') => {
    const abouts = [id, read.header.id, ...changes.map(({ header }) => header.id)]
    return theCase.live('told').find(({ body }) => body.who === who && abouts.includes(body.about))
  }
  const telling = (who: 'owner' | 'referring-vet'): Draft => {
    const by = told(who)
    const what = who === 'owner' ? 'owner-to-tell' : 'referring-vet-to-tell'
    const within = who === 'owner' ? rules.results.ownerToldWithin : rules.results.vetToldWithin
    const why: Why[] = [{ code: 'told-after-reading', about: { decision: read.body.decision } }]
    const rest = { who: 'surgeon', way: who === 'owner' ? 'call' : 'task', why, withOwner: who === 'owner' } as const
    return { item: item(what, read.at, within, rest), ended: by ? { because: 'settled', by: by.header.id } : null }
  }
  const vet = theCase.latest('identity')?.body.referringVet ?? null
  return [toRead, telling('owner'), ...(vet === null ? [] : [telling('referring-vet')])]
}

function labelOf(result: Result, setting: Setting): string {
  const specimen = setting.file.theCase.live('specimen').find((one) => isFor(result.body.specimen, one, setting))
  return specimen?.body.label ?? result.body.specimen
}

/** From a moment until so long after it. */
export function dueWithin(
  from: string,
  within: Sourced<Period>,
  zone: string,
): Pick<OwedItem, 'dueFrom' | 'dueBy' | 'zone' | 'precision'> {
  return { dueFrom: from, dueBy: instantAfter({ at: from, zone }, within.value), zone, precision: 'minute' }
}
