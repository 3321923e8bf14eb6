import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { caseFileOf } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { demoClinic, practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { plansOf, policiesOf } from './from-journal.ts'
import { type JudgedPlan, planForOperation } from './plan-for-operation.ts'
import { plannedBody } from './planned-body.ts'
import type { DosingKnowledge } from './request.ts'

const at = '2025-03-11T08:00:00.000Z'
const dog = 'our usual plan, dog'
const { entries: all, stream } = tansy()
/** The case as it stood in the morning, before anything was planned or given. */
const morning = all.filter(({ kind, happenedAt }) => kind !== 'planned-line' && happenedAt.at < at)
const operation = subjectOf(all.find(({ kind }) => kind === 'booking'))

function subjectOf(entry: Entry | undefined): string {
  if (entry?.subject.kind !== 'operation') throw new Error('The invented case has no booking.')
  return entry.subject.operation
}

function fileOf(entries: readonly Entry[]): CaseFile {
  const whole = { clinic: demoClinic, rows: registerRows(), entries: [...practiceChart().entries, ...entries] }
  const file = caseFileOf(whole, stream)
  if (!file) throw new Error('The practice has no clinic line.')
  return file
}

function knowledgeOf({ house }: CaseFile): DosingKnowledge {
  return { drugs: formulary, rules: dosingRules, plans: plansOf(house), policies: policiesOf(house) }
}

function judge(file: CaseFile, plan = dog, of = operation) {
  return planForOperation(file, { operation: of, plan, at }, knowledgeOf(file))
}

function judged(file: CaseFile, of = operation): JudgedPlan {
  const outcome = judge(file, dog, of)
  if (outcome.kind === 'refusal') throw new Error(outcome.refusal.because)
  return outcome.answer
}

describe('a usual plan for one operation', () => {
  it('is worked out line by line to the entries that the invented case holds', () => {
    const plan = judged(fileOf(morning))
    const bodies = plan.lines.map(({ line, asked, chosen }) => {
      if (line.verdict === 'refused' || !plan.weight) throw new Error(`${line.id} is refused`)
      const { reason: because, shelfItem = null } = chosen
      return plannedBody(line, { asked, because, plan: dog, shelfItem, weight: plan.weight })
    })
    const held = all.filter(({ kind }) => kind === 'planned-line').map(({ body }) => body as unknown)
    expect(bodies).toEqual(held)
    expect(bodies.length).toBeGreaterThan(5)
    // 18.4 kg × 22 mg/kg, by hand.
    expect(bodies.find(({ line }) => line === 'antibiotic')?.amount).toEqual({ value: '404.8', unit: 'mg' })
  })

  it('keeps the dose, the person and the reason of the plan, and chooses none itself', () => {
    for (const { chosen, line } of judged(fileOf(morning)).lines) {
      expect(line.dose?.toString()).toBe(chosen.dose.toString())
      expect(line.chosenBy).toMatchObject({ kind: 'plan', plan: dog, reason: chosen.reason, person: chosen.person })
    }
  })

  it('is refused for the other species, for a plan nobody wrote, and for two versions nobody settled', () => {
    const file = fileOf(morning)
    expect(judge(file, 'our usual plan, cat')).toEqual({
      kind: 'refusal',
      refusal: { because: 'plan-for-other-species', species: 'dog', other: 'cat' },
    })
    expect(judge(file, 'no such plan')).toEqual({ kind: 'refusal', refusal: { because: 'plan-unknown' } })
    const [own] = practiceChart().entries.filter(
      ({ kind, body }) => kind === 'usual-plan' && (body as unknown as BodyOf<'usual-plan'>).plan === dog,
    )
    const twice = own && { ...own, id: '0190a7c2-0000-7000-8000-0000000000ff' }
    expect(judge(fileOf([...morning, ...(twice ? [twice] : [])]))).toEqual({
      kind: 'refusal',
      refusal: { because: 'plan-stands-twice' },
    })
  })

  it('refuses every line that counts per kilogram while nobody weighed, and says what would make it possible', () => {
    const plan = judged(fileOf(morning.filter(({ kind }) => kind !== 'weight')))
    expect(plan.weight).toBeNull()
    const block = plan.lines.find(({ line }) => line.id === 'block')?.line
    expect(block?.verdict).toBe('refused')
    expect(block?.findings.map(({ code }) => code)).toContain('weight-unknown')
  })

  it('names what is planned already instead of planning it twice', () => {
    const plan = judged(fileOf(all.filter(({ happenedAt }) => happenedAt.at <= at)))
    expect(plan.lines.every(({ already, chosen }) => already?.body.line === chosen.id)).toBe(true)
  })

  it('counts the other ear of the same day against the ceiling of the animal', () => {
    const booking = all.find(({ kind }) => kind === 'booking')
    if (!booking) throw new Error('The invented case has no booking.')
    const other = {
      ...booking,
      id: '0190a7c2-0000-7000-8000-0000000000aa',
      subject: { ...booking.subject, operation: 'operation-right' },
      body: { ...(booking.body as object), side: 'RIGHT' },
    } as Entry
    const planned = all.filter(({ kind, happenedAt }) => kind === 'planned-line' && happenedAt.at <= at)
    const alone = judged(fileOf([...morning, other]), 'operation-right')
    const both = judged(fileOf([...morning, other, ...planned]), 'operation-right')
    const overCeiling = ({ lines }: JudgedPlan) =>
      lines.flatMap(({ line }) =>
        line.findings.some(({ code }) => code === 'local-anaesthetic-ceiling') ? [line] : [],
      )
    // Block and splash of 1 mg/kg each are the whole ceiling of 2 mg/kg: a second ear is over it.
    expect(String(alone.ceilings[0]?.used)).toBe('1')
    expect(overCeiling(alone)).toEqual([])
    expect(overCeiling(both).map(({ id, verdict }) => `${id}: ${verdict}`)).toEqual([
      'block: refused',
      'splash: refused',
    ])
    // Once given, a line counts as given and not a second time as planned: block 18 of 36.8 mg given, splash planned.
    const given = all.filter(({ kind, happenedAt }) => kind === 'drug-given' && happenedAt.at > at)
    const after = planForOperation(
      fileOf([...morning, other, ...planned, ...given]),
      { operation: 'operation-right', plan: dog, at: '2025-03-11T09:30:00.000Z' },
      knowledgeOf(fileOf(morning)),
    )
    expect(after.kind === 'answer' && after.answer.ceilings[0]?.granted.toFixed(4)).toBe('0.9891')
  })
})
