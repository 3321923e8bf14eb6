import type { Case } from '#core/journal/fold.ts'
import { instantAfter, type Period, type Span } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import type { Register } from './register.ts'
import type { RegisterFinding } from './register-findings.ts'

/** How long a register may wait for each of these. */
export type RegisterTimes = { readonly count: Span; readonly settle: Period }

/**
 * What a register is owed: that it is opened, that what does not agree is settled, that a second person looks at what
 * nobody witnessed, and that it is counted again.
 */
export type RegisterOwed = {
  readonly what: 'open' | 'settle' | 'second-name' | 'count'
  readonly dueFrom: string
  readonly dueBy: string
  readonly findings: readonly RegisterFinding[]
  /** Of a count: when it was counted last. */
  readonly counted: Moment | null
}

/** Where a note asks nothing of anybody. */
const asksNothing: ReadonlySet<string> = new Set(['order-uncertain', 'not-marked', 'no-opening', 'witness-missing'])

/**
 * What is owed of one register, until it is settled; pure, so late is the reader's to work out.
 *
 * @example owedOfRegister(register, theFold, { count, settle }, 'Europe/London')[0]?.what // 'settle'
 */
export function owedOfRegister(register: Register, theFold: Case, times: RegisterTimes, zone: string): RegisterOwed[] {
  const { findings } = register
  const about = (is: (finding: RegisterFinding) => boolean, what: RegisterOwed['what']): RegisterOwed[] => {
    const some = findings.filter(is)
    const since = some.map((finding) => sinceWhen(finding, register, theFold)).sort()[0]
    if (since === undefined) return []
    return [
      { what, dueFrom: since, dueBy: instantAfter({ at: since, zone }, times.settle), findings: some, counted: null },
    ]
  }
  return [
    ...about(({ code }) => code === 'no-opening', 'open'),
    ...about(({ code }) => !asksNothing.has(code), 'settle'),
    ...about(({ code }) => code === 'witness-missing', 'second-name'),
    ...countOwed(register, times, zone),
  ]
}

/** The moment of what a finding is about; of the register as a whole, when the house marked it or first wrote in it. */
function sinceWhen({ entry }: RegisterFinding, { lines, markedAt }: Register, theFold: Case): string {
  const line = entry === null ? undefined : theFold.line(entry)
  return line?.at ?? markedAt ?? lines[0]?.entry.at ?? ''
}

/** From the last count on; a page that no product is marked for and that holds nothing is closed. */
function countOwed({ lines, balance, markedAt }: Register, times: RegisterTimes, zone: string): RegisterOwed[] {
  if (markedAt === null && balance.isZero()) return []
  const last = lines.findLast(
    ({ entry, balance: after }) => after !== null && (entry.body.what === 'counted' || entry.body.what === 'opening'),
  )
  if (!last) return []
  const { at, header } = last.entry
  const { from, until } = times.count
  return [
    {
      what: 'count',
      dueFrom: instantAfter({ at, zone }, from),
      dueBy: instantAfter({ at, zone }, until),
      findings: [],
      counted: header.happenedAt,
    },
  ]
}
