import { registerTimes } from '#content/follow-up/register-times.ts'
import { registerInEnglish } from '#content/wording/app-register.ts'
import { currentRows } from '#core/journal/case-file.ts'
import { fold } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { owedOfRegister, type RegisterOwed } from '#core/register/owed-of-register.ts'
import { type Register, registersOf } from '#core/register/register.ts'
import { sayMoment } from '#core/time/moment.ts'
import { sayRegister } from '#documents/case/say-register.ts'
import type { OwedRow, Projected } from '../store.ts'
import { markedDrugs, registerEntries } from './read-registers.ts'

const words = registerInEnglish.owed
const times = { count: registerTimes.count.value, settle: registerTimes.settle.value }

/** What the controlled-drug registers of the house are owed, in the rows of the clinic's own stream. */
export function registerOwed({ clinicEntries, everywhere, rows }: Projected): OwedRow[] {
  const clinic = currentRows(rows as readonly Row[])
    .clinic.values()
    .next().value
  if (!clinic) return []
  const house = fold(clinicEntries)
  const theFold = fold(registerEntries(everywhere, markedDrugs(house)))
  return registersOf(theFold, house).flatMap((register) =>
    owedOfRegister(register, theFold, times, clinic.zone).map((owed) => rowOf(owed, register)),
  )
}

/** A few reasons are enough in a list: the page of the register holds the rest. */
const saidAtOnce = 3

function rowOf({ what, dueFrom, dueBy, findings, counted }: RegisterOwed, register: Register): OwedRow {
  return {
    stream: 'clinic',
    id: `register-${what}:${register.stream}`,
    what: fill(words.what[what], { register: sayRegister(register) }),
    who: 'anaesthetist',
    dueFrom,
    dueBy,
    why: counted ? fill(words.lastCounted, { when: sayMoment(counted) }) : sayFindings(findings),
    sources: [...registerTimes[what === 'count' ? 'count' : 'settle'].sources],
  }
}

function sayFindings(findings: RegisterOwed['findings']): string {
  const said = findings.slice(0, saidAtOnce).map(({ code, about }) => fill(registerInEnglish.said[code], about))
  const more = findings.length - saidAtOnce
  return [...new Set(said), ...(more > 0 ? [sayCount(words.more, more)] : [])].join(' ')
}
