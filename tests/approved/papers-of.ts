import { judgeForPaper } from '#actions/dosing/judge-for-paper.ts'
import { caseFile } from '#actions/journal/case-file.ts'
import { caseStreams } from '#core/journal/case-file.ts'
import { readJournal } from '#actions/journal/read-journal.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { owedOf } from '#core/owed/owed.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { type DemoName, demoFile } from '#demo/index.ts'
import { toldToday } from '#documents/agreement/consent-today.ts'
import { calendarOf } from '#documents/calendar/calendar.ts'
import { isPaper } from '#documents/case/paper-input.ts'
import { papers } from '#documents/index.ts'
import type { Paper } from '#documents/render/model.ts'

/** One invented case: whole, as it stood when its animal went home, or once its dose plan had a second name. */
export const approvedCases = ['spaniel', 'spaniel-before', 'spaniel-going-home', 'cat', 'cat-going-home'] as const
export type ApprovedCase = (typeof approvedCases)[number]

/** Every paper that the case has reached, and the reasons for those it has not. */
export function papersOf(name: ApprovedCase, language: string | null = null): { readonly made: readonly Paper[]; readonly notYet: readonly string[] } {
  const file = fileOf(name, language)
  const last = file.theCase.lines.at(-1)
  if (!last) throw new Error('An invented case has entries.')
  const owed = owedOf(file, procedures, { rules: owedRules }).owed.map((item) => {
    const { what, who, why } = sayOwed(item, owedInEnglish)
    return { id: item.id, what, who, why, dueFrom: item.dueFrom, dueBy: item.dueBy }
  })
  const operation = operationsOf(file).at(-1)?.id ?? null
  const doses = operation === null ? null : judgeForPaper(file, operation, last.header.happenedAt.at)
  const made: Paper[] = []
  const notYet: string[] = []
  for (const paper of papers) {
    const one = paper.of({ file, on: last.header.happenedAt, operation, owed, doses })
    if (isPaper(one)) made.push(one)
    else notYet.push(`${paper.id}: ${one.because}`)
  }
  return { made, notYet }
}

/** The calendar of the household, stamped with the last entry. */
export function calendarFor(name: ApprovedCase, language: string): string {
  const file = fileOf(name, language)
  const at = file.theCase.lines.at(-1)?.header.happenedAt.at ?? ''
  return calendarOf(file, owedOf(file, procedures, { rules: owedRules }), at)
}

/** The household speaks English in all invented cases; told in a language it is the same household otherwise. */
function fileOf(name: ApprovedCase, language: string | null) {
  const demo: DemoName = name.startsWith('cat') ? 'cat' : 'spaniel'
  const read = readJournal(demoFile([demo]))
  const journal = language === null ? read : toldIn(language, read)
  const [stream] = caseStreams(journal.entries)
  if (stream === undefined) throw new Error('An invented case has a stream.')
  const until = name.endsWith('-before') ? 'second-check' : name.endsWith('-going-home') ? 'discharge' : null
  if (until === null) return caseFile(journal, stream)
  const last = journal.entries.find((entry) => entry.header.kind === until)
  if (!last) throw new Error('Both animals are planned for, checked and go home.')
  const reached = journal.entries.filter(({ envelope }) => envelope.position <= last.envelope.position)
  return caseFile({ ...journal, entries: reached }, stream)
}

type Read = ReturnType<typeof readJournal>

/** The language of the household, and the agreement of a talk in it: with the numbers as this language says them. */
function toldIn(language: string, read: Read): Read {
  const [stream] = caseStreams(read.entries)
  if (stream === undefined) throw new Error('An invented case has a stream.')
  const file = caseFile(read, stream)
  const changed = (entry: Read['entries'][number]): object => {
    if (entry.header.kind === 'household') return { ...(entry.body as object), language }
    if (entry.header.kind !== 'agreement') return entry.body as object
    const body = agreement.body.parse(entry.body)
    const procedures = [...new Set(body.plan.ears.map(({ procedure }) => procedure))]
    const numbers = procedures.flatMap((procedure) => [...toldToday.numbersOf(file, procedure, language)])
    const plan = { ...body.plan, language, numbers }
    return { ...body, plan, fingerprint: fingerprintOf(plan) }
  }
  return { ...read, entries: read.entries.map((entry) => ({ ...entry, body: changed(entry) }) as typeof entry) }
}
