import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { dayAfter, dayOf, instantAfter, type Period, type Span } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { surgeonOfEar, writerStillHere } from './answerable.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem, Why, WhyCode } from './owed-item.ts'
import { earlierOf, laterOf, type Setting, wholeDays } from './setting.ts'
import {
  type Acted,
  groupsOf,
  type Outside,
  type ReportInLoop,
  reportOf,
  type SpecimenLine,
  type SpecimenLoop,
  sideOf,
  specimenLoopsOf,
  specimenOf,
  type TestGroup,
} from './specimen-loop.ts'

/**
 * The loop of a specimen: expected, come, read, decided, owner told, referring vet told; each step with a name, and open
 * until the last. A report that the laboratory corrected goes through all of it again. Silence keeps it open.
 */
export function owedResults(setting: Setting): Draft[] {
  const { theCase } = setting.file
  return [
    ...specimenLoopsOf(theCase).flatMap((loop) => expected(loop, setting)),
    ...theCase.live('specimen-result').flatMap((result) => reportLoop(reportOf(result, theCase), setting)),
  ]
}

/** One item per kind of test, until a final report answers it. */
function expected({ specimen, reports, answered }: SpecimenLoop, setting: Setting): Draft[] {
  return groupsOf(specimen).map((group) => {
    const settled = answered[group] ?? null
    const item = expectedItem(specimen, group, reports.length > 0 && !settled, setting)
    const late = settled !== null && settled.at > item.dueBy
    return { item, ended: settled ? { because: late ? 'settled-late' : 'settled', by: settled.header.id } : null }
  })
}

function expectedItem(specimen: SpecimenLine, group: TestGroup, preliminary: boolean, setting: Setting): OwedItem {
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
    person: writerStillHere(specimen, setting),
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

function reportLoop(report: ReportInLoop, setting: Setting): Draft[] {
  const { rules } = setting
  const { result, reads, decided } = report
  const [first] = reads
  const read = draft(report, setting, {
    what: 'result-to-read',
    from: result.at,
    within: rules.results.readWithin,
    way: 'task',
    why: [
      { code: 'result-waits', about: { status: result.body.status } },
      ...report.before.map((acted) => whyOf(acted, setting)),
    ],
    by: first,
  })
  if (!first || result.body.status === 'preliminary') return [read]
  const decide = draft(report, setting, {
    what: 'result-to-decide',
    from: first.at,
    within: rules.results.readWithin,
    way: 'task',
    why: [{ code: 'read-not-decided', about: { by: authorNamed(setting.file, first.header.author) } }],
    by: decided ?? undefined,
  })
  // Where the first reading decided, nothing waited for a decision.
  if (!decided) return [read, decide]
  const vet = setting.file.theCase.latest('identity')?.body.referringVet ?? null
  const outside: readonly Outside[] = vet === null ? ['owner'] : ['owner', 'referring-vet']
  return [
    read,
    ...(decided === first ? [] : [decide]),
    ...outside.map((who) =>
      draft(report, setting, {
        what: toldOf[who],
        from: decided.at,
        within: who === 'owner' ? rules.results.ownerToldWithin : rules.results.vetToldWithin,
        way: who === 'owner' ? 'call' : 'task',
        why: [
          { code: 'told-after-reading', about: { decision: decided.body.decision } },
          ...toldOtherwise(who, report, setting),
        ],
        by: report.told[who] ?? undefined,
      }),
    ),
  ]
}

const toldOf = { owner: 'owner-to-tell', 'referring-vet': 'referring-vet-to-tell' } as const

/** Whoever was told what the older version said hears that it was corrected. */
function toldOtherwise(who: Outside, { before }: ReportInLoop, setting: Setting): Why[] {
  const what = who === 'owner' ? 'told-owner' : 'told-referring-vet'
  return before.filter((acted) => acted.what === what).map((acted) => whyOf(acted, setting))
}

const actedCodes = {
  read: 'acted-read',
  'told-owner': 'acted-told-owner',
  'told-referring-vet': 'acted-told-vet',
  changed: 'acted-changed',
} as const satisfies Record<Acted['what'], WhyCode>

/** What somebody did because of a report that no longer stands, with the name and the day. */
export function whyOf({ what, line }: Acted, { file }: Setting): Why {
  const about = { by: authorNamed(file, line.header.author), on: sayMoment(line.header.happenedAt) }
  return { code: actedCodes[what], about }
}

type Wanted = {
  readonly what: 'result-to-read' | 'result-to-decide' | 'owner-to-tell' | 'referring-vet-to-tell'
  readonly from: string
  readonly within: Sourced<Period>
  readonly way: OwedItem['way']
  readonly why: readonly Why[]
  readonly by: { readonly header: { readonly id: string } } | undefined
}

function draft({ result }: ReportInLoop, setting: Setting, { what, from, within, way, why, by }: Wanted): Draft {
  const { id } = result.header
  const label = labelOf(result.body.specimen, setting)
  const side = sideOf(result)
  const item: OwedItem = {
    ...dueWithin(from, within, setting.zone),
    id: `${what}:${id}`,
    what,
    about: { label: label.said },
    who: 'surgeon',
    person: surgeonOfEar(side, label.operation, setting),
    way,
    side,
    operation: null,
    why,
    facts: [within as Provenance],
    withOwner: what === 'owner-to-tell',
    revision: setting.revision,
  }
  return { item, ended: by ? { because: 'settled', by: by.header.id } : null }
}

/** How a specimen is called, and the operation it was taken at. */
export function labelOf(id: string, { file: { theCase } }: Setting): { said: string; operation: string | null } {
  const specimen = specimenOf(theCase, id)
  return { said: specimen?.body.label ?? id, operation: specimen?.body.operation ?? null }
}

/** From a moment until so long after it. */
export function dueWithin(
  from: string,
  within: Sourced<Period>,
  zone: string,
): Pick<OwedItem, 'dueFrom' | 'dueBy' | 'zone' | 'precision'> {
  return { dueFrom: from, dueBy: instantAfter({ at: from, zone }, within.value), zone, precision: 'minute' }
}
