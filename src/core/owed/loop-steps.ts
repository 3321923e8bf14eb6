import type { Author } from '#core/journal/entry.ts'
import type { Case, Line } from '#core/journal/fold.ts'
import { rootOf } from './operations.ts'
import type { OwedItem } from './owed-item.ts'
import { groupsOf, type ReportInLoop, type SpecimenLoop, type TestGroup } from './specimen-loop.ts'

export const loopSteps = ['taken', 'come', 'read', 'decided', 'changed', 'owner-told', 'vet-told'] as const
export type LoopStepName = (typeof loopSteps)[number]

/** One step of the strip: done by somebody at some time, owed by somebody until then, or still behind another. */
export type LoopStep = { readonly step: LoopStepName } & (
  | { readonly state: 'done'; readonly at: string; readonly by: Author; readonly entry: string }
  | { readonly state: 'owed'; readonly item: OwedItem }
  | { readonly state: 'behind' }
)

/** The way of one report, or of what is still expected, from the swab to "owner told". */
export type LoopWay = {
  readonly report: ReportInLoop | null
  /** Of what has not come: which test. */
  readonly expected: TestGroup | null
  readonly steps: readonly LoopStep[]
  readonly isOpen: boolean
}

/**
 * The strip of one specimen: a way for each report and for each test that has not answered yet. What is owed comes from
 * the list of what is owed, so that both say the same name and the same day.
 *
 * @example waysOf(loop, owed, theCase)[0].steps.map(({ step, state }) => [step, state])
 */
export function waysOf(loop: SpecimenLoop, owed: readonly OwedItem[], theCase: Case): LoopWay[] {
  const { specimen, reports, answered } = loop
  const root = rootOf(theCase, specimen.header.id)
  const taken = doneBy('taken', specimen)
  const expected = groupsOf(specimen).flatMap((group): LoopWay[] => {
    const item = owed.find(({ id }) => id === `result:${root}:${group}`)
    if (answered[group] || !item) return []
    const behind = (step: LoopStepName): LoopStep => ({ step, state: 'behind' })
    const steps = [taken, { step: 'come', state: 'owed', item } as const]
    return [
      {
        report: null,
        expected: group,
        steps: [...steps, ...(['read', 'owner-told'] as const).map(behind)],
        isOpen: true,
      },
    ]
  })
  const come = reports.map((report): LoopWay => {
    const steps = [taken, doneBy('come', report.result), ...stepsAfter(report, owed, theCase)]
    return { report, expected: null, steps, isOpen: steps.some(({ state }) => state !== 'done') }
  })
  return [...come, ...expected]
}

function stepsAfter(report: ReportInLoop, owed: readonly OwedItem[], theCase: Case): LoopStep[] {
  const { result, reads, decided, change, told } = report
  const { id } = result.header
  const [first] = reads
  const of = (step: LoopStepName, line: Line<unknown> | null | undefined, ...ids: readonly string[]): LoopStep[] => {
    const item = owed.find((one) => ids.includes(one.id))
    if (line && !item) return [doneBy(step, line)]
    if (item) return [{ step, state: 'owed', item }]
    return []
  }
  const read = of('read', first, `result-to-read:${id}`)
  // A report that is not final is read and goes no further; the final one does.
  if (result.body.status === 'preliminary') return read
  const behind = (step: LoopStepName): LoopStep[] => [{ step, state: 'behind' }]
  if (!first) return [...read, ...behind('owner-told')]
  const later = decided && decided.header.id === first.header.id ? null : decided
  const decide = of('decided', later, `result-to-decide:${id}`)
  if (!decided) return [...read, ...decide, ...behind('owner-told')]
  return [
    ...read,
    ...decide,
    ...of('changed', change, ...reads.map(({ header }) => `medicine-change-to-write:${rootOf(theCase, header.id)}`)),
    ...of(
      'owner-told',
      told.owner,
      `owner-to-tell:${id}`,
      ...(change ? [`owner-about-medicines:${rootOf(theCase, change.header.id)}`] : []),
    ),
    ...of('vet-told', told['referring-vet'], `referring-vet-to-tell:${id}`),
  ]
}

function doneBy(step: LoopStepName, { header, at }: Line<unknown>): LoopStep {
  return { step, state: 'done', at, by: header.author, entry: header.id }
}
