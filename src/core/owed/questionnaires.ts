import type { Case } from '#core/journal/fold.ts'
import type { AnswerLine } from '#core/questionnaire/answer-line.ts'
import type { ReportRule } from '#core/questionnaire/questionnaire.ts'
import { asksForAnswer, type Report, reportsIn } from '#core/questionnaire/reports.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { isOfEar, rootOf } from './operations.ts'
import { householdCalls } from './our-tries.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'

/**
 * What owners report in their answers is rung about, and looked at where a talk is not enough; what they write in words
 * is answered. A report stays owed when the owner changes the answer afterwards: nothing goes silently. Whoever took the
 * answers on the telephone has spoken with the owner already.
 */
export function owedAfterAnswers(setting: Setting): Draft[] {
  const { theCase } = setting.file
  return coursesOf(theCase).flatMap(({ root, versions }) => {
    const reported = versions.flatMap((line) =>
      reportsIn(line.body, setting.rules.questions).map((report) => ({ line, report })),
    )
    const firstOf = new Map(reported.map((one) => [keyOf(one.report), one] as const).reverse())
    const last = versions.at(-1)
    const owed = [...firstOf.values()].reverse().flatMap(({ line, report }) => {
      const isChanged = last !== undefined && last !== line && !reportsOf(last, setting).has(keyOf(report))
      return ofReport(report, line, root, isChanged ? last : null, setting)
    })
    return [...owed, ...(last ? toRead(last, root, setting) : [])]
  })
}

type Course = { readonly root: string; readonly versions: readonly AnswerLine[] }

/** Each set of answers with its corrections, oldest first. What was withdrawn or erased is not among them. */
function coursesOf(theCase: Case): Course[] {
  const live = theCase.live('owner-answer')
  const all = theCase.lines.filter(
    (line): line is AnswerLine =>
      line.header.kind === 'owner-answer' &&
      line.known &&
      !line.erased &&
      line.body !== null &&
      line.state !== 'withdrawn',
  )
  return [...new Set(live.map(({ header }) => rootOf(theCase, header.id)))].map((root) => ({
    root,
    versions: all.filter(({ header }) => rootOf(theCase, header.id) === root).sort((a, b) => (a.at < b.at ? -1 : 1)),
  }))
}

function keyOf({ report, side }: Report): string {
  return side === null ? report : `${report}:${side}`
}

function reportsOf(line: AnswerLine, setting: Setting): Set<string> {
  return new Set(reportsIn(line.body, setting.rules.questions).map(keyOf))
}

function ofReport(
  report: Report,
  line: AnswerLine,
  root: string,
  changed: AnswerLine | null,
  setting: Setting,
): Draft[] {
  const { theCase } = setting.file
  const rule: ReportRule = setting.rules.questions.reports[report.report]
  const { side } = report
  const operation = line.body.ears.find((ear) => ear.side === side)?.operation ?? null
  const zone = setting.zone
  const why: Why[] = [
    { code: 'owner-said-so', about: { day: dayOf({ at: line.at, zone }), by: `told-${line.body.by}` } },
    ...(changed ? [{ code: 'owner-said-otherwise' as const, about: { day: dayOf({ at: changed.at, zone }) } }] : []),
  ]
  const item = {
    about: { sign: report.report, where: side === null ? 'at-animal' : `at-${side}` },
    person: null,
    side,
    operation,
    why,
    withOwner: true,
    revision: setting.revision,
  } as const
  const call: OwedItem = {
    ...item,
    ...dueWithin(line.at, rule.call, zone),
    id: `owner-reported:${root}:${keyOf(report)}`,
    what: 'owner-reported',
    who: 'nurse',
    way: 'call',
    facts: [rule.call],
  }
  const seen = firstAfter(line, [
    ...theCase.live('check').filter((one) => isSeen(one.body.seenBy) && isOnSide(one, report)),
    ...theCase.live('ear-findings').filter((one) => isOnSide(one, report)),
  ])
  const spoken = firstAfter(line, [
    ...householdCalls(setting.file).filter(({ body }) => body.reached === 'yes'),
    ...theCase.live('late-event').filter((one) => isOnSide(one, report)),
  ])
  const told = line.header.author.kind === 'person' ? line : undefined
  const rung = told ?? [spoken, seen].filter((one) => one !== undefined).sort(byTime)[0]
  const drafts: Draft[] = [ended(call, rung)]
  if (rule.look === null) return drafts
  const look: OwedItem = {
    ...item,
    ...dueWithin(line.at, rule.look, zone),
    id: `owner-reported-look:${root}:${keyOf(report)}`,
    what: 'owner-reported-look',
    who: 'surgeon',
    way: 'visit',
    facts: [rule.look],
  }
  // A late event of this ear owes a look of its own.
  const event = firstAfter(
    line,
    theCase.live('late-event').filter((one) => isOnSide(one, report)),
  )
  return [...drafts, ended(look, [seen, event].filter((one) => one !== undefined).sort(byTime)[0])]
}

/** What was written in words, or asks for a call, until somebody wrote down a talk, a note or a look after it. */
function toRead(line: AnswerLine, root: string, setting: Setting): Draft[] {
  const { questions } = setting.rules
  if (line.header.author.kind !== 'owner-link' || !line.body.finished || !asksForAnswer(line.body, questions)) return []
  const { theCase } = setting.file
  const item: OwedItem = {
    ...dueWithin(line.at, questions.answeredWithin, setting.zone),
    id: `owner-answer-to-read:${root}`,
    what: 'owner-answer-to-read',
    about: {},
    who: 'nurse',
    person: null,
    way: 'call',
    side: null,
    operation: null,
    why: [{ code: 'owner-wrote-in-answers', about: { day: dayOf({ at: line.at, zone: setting.zone }) } }],
    facts: [questions.answeredWithin],
    withOwner: true,
    revision: setting.revision,
  }
  const answered = firstAfter(line, [
    ...householdCalls(setting.file).filter(({ body }) => body.reached === 'yes'),
    ...theCase.live('note'),
    ...theCase.live('check').filter(({ body }) => isSeen(body.seenBy)),
  ])
  return [ended(item, answered)]
}

type Written = Pick<AnswerLine, 'at' | 'header'>

/** A person of the house or a colleague looked; a photograph and words of the owner are no look. */
function isSeen(by: string): boolean {
  return by === 'us' || by === 'referring-vet'
}

/** Of the ear of the report; any ear where the report is about the animal. */
function isOnSide(line: Written, { side }: Report): boolean {
  return side === null || isOfEar(line, side)
}

function firstAfter(line: Written, others: readonly Written[]): Written | undefined {
  return others.filter(({ at, header }) => at > line.at && header.author.kind === 'person').sort(byTime)[0]
}

function byTime(a: Written, b: Written): number {
  return a.at < b.at ? -1 : a.at > b.at ? 1 : 0
}

function ended(item: OwedItem, by: Written | undefined): Draft {
  if (!by) return { item, ended: null }
  return { item, ended: { because: by.at > item.dueBy ? 'settled-late' : 'settled', by: by.header.id } }
}
