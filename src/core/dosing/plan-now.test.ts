import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { liftedWords } from '#content/wording/dosing-findings.ts'
import { caseFileOf } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { quantity } from '#core/units/quantity.ts'
import { demoClinic, practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { sayLifted } from './emergency-declared.ts'
import { plansOf, policiesOf } from './from-journal.ts'
import { judgeAmong, type PlanNow, planNow } from './plan-now.ts'

const { entries: all, stream } = tansy()
const check = all.find(({ kind }) => kind === 'second-check')
/** The invented dog of 18.4 kg as she stood when her plan had been checked, before anything was given. */
const checked = all.filter(({ happenedAt }) => happenedAt.at <= (check?.happenedAt.at ?? ''))
const make = entryMaker({ stream, clinic: check?.clinic ?? '' }, 9)
const later = new Date(Date.parse(check?.happenedAt.at ?? '') + 60_000).toISOString()

function fileOf(entries: readonly Entry[]): CaseFile {
  const whole = { clinic: demoClinic, rows: registerRows(), entries: [...practiceChart().entries, ...entries] }
  const file = caseFileOf(whole, stream)
  if (!file) throw new Error('The practice has no clinic line.')
  return file
}

function now(entries: readonly Entry[]): PlanNow {
  const file = fileOf(entries)
  const [operation] = operationsOf(file)
  if (!operation) throw new Error('The invented case has no operation.')
  const { house } = file
  const knowledge = { drugs: formulary, rules: dosingRules, plans: plansOf(house), policies: policiesOf(house) }
  return planNow(file, operation, later, knowledge)
}

function weigh(value: string): Entry {
  const weight = { value, unit: 'kg' } as const
  return make({ kind: 'weight', at: later, body: { weight, typed: null, how: 'scale', bodyCondition: null } })
}

const line = (plan: PlanNow, name: string) => plan.lines.find(({ entry }) => entry.body.line === name)

describe('a plan as it stands now', () => {
  it('is drawn as it was written while nothing changed, with the shared limit running up line by line', () => {
    const plan = now(checked)
    expect(plan.lines.length).toBeGreaterThan(5)
    expect(plan.lines.filter(({ isOld }) => isOld).map(({ entry }) => entry.body.line)).toEqual([])
    expect(new Set(plan.lines.map((one) => one.check.kind))).toEqual(new Set(['agrees']))
    // 18.4 mg of bupivacaine twice, against 2 mg/kg × 18.4 kg, by hand.
    expect(line(plan, 'block')?.ceilingAfter?.toString()).toBe('0.5')
    expect(line(plan, 'splash')?.ceilingAfter?.toString()).toBe('1')
    expect(line(plan, 'premedication')?.ceilingAfter ?? null).toBeNull()
  })

  it('is old in every line that counts by weight once the animal weighs something else, and no check stands', () => {
    const plan = now([...checked, weigh('2.8')])
    const asWritten = plan.lines.filter(({ isOld, given }) => !isOld && given.length === 0)
    // The vaporiser is set by volume, whatever the animal weighs.
    expect(asWritten.map(({ entry }) => entry.body.drug)).toEqual(['isoflurane'])
    expect(new Set(plan.lines.map((one) => one.check.kind))).toEqual(new Set(['void']))
  })

  it('counts what was given as given, once', () => {
    const block = line(now(checked), 'block')?.entry
    if (!block) throw new Error('The plan has a block.')
    const body: BodyOf<'drug-given'> = {
      drug: block.body.drug,
      written: null,
      amount: { value: '18.4', unit: 'mg' },
      volume: null,
      route: 'perineural',
      site: null,
      use: 'local_block',
      line: 'block',
      batch: null,
      ampoule: null,
    }
    const at = check?.happenedAt.at ?? ''
    const given = make({ kind: 'drug-given', at, subject: block.header.subject, body })
    const plan = now([...checked, given])
    expect(line(plan, 'block')).toMatchObject({ now: null, isOld: false })
    expect(line(plan, 'block')?.given.length).toBe(1)
    expect(plan.ceilings[0]?.granted.toString()).toBe('1')
    expect(line(plan, 'splash')?.ceilingAfter?.toString()).toBe('1')
  })

  it('draws nothing for a cat from a dog’s lines: each is judged again as a cat’s', () => {
    const who = checked.find(({ kind }) => kind === 'identity')
    const body = { ...(who?.body as BodyOf<'identity'>), species: 'cat' as const }
    const cat = make({ kind: 'identity', at: later, body, supersedes: [who?.id ?? ''], reason: 'A cat.' })
    const plan = now([...checked, cat])
    expect(plan.animal?.species).toBe('cat')
    expect(new Set(plan.lines.map((one) => one.check.kind))).toEqual(new Set(['void']))
    // 1 mg/kg twice against the cat's limit of 1 mg/kg: the second block is refused.
    expect(line(plan, 'splash')?.now?.verdict).toBe('refused')
  })

  it('grants both ears of one day the one limit once, from whichever page it is looked at', () => {
    const other = { kind: 'operation', animal: 'animal-1', operation: 'operation-tansy-right' } as const
    const booking = checked.find(({ kind }) => kind === 'booking')
    const block = checked.find(
      (entry) => entry.kind === 'planned-line' && (entry.body as { line?: string }).line === 'block',
    )
    const booked = booking?.body as unknown as BodyOf<'booking'>
    const plannedFor = {
      ...booked.plannedFor,
      at: new Date(Date.parse(booked.plannedFor.at) + 3 * 3_600_000).toISOString(),
    }
    const file = fileOf([
      ...checked,
      make({ kind: 'booking', at: later, subject: other, body: { ...booked, side: 'RIGHT', plannedFor } }),
      make({ kind: 'planned-line', at: later, subject: other, body: block?.body as unknown as BodyOf<'planned-line'> }),
    ])
    const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
    const [first, second] = operationsOf(file).map((operation) => planNow(file, operation, later, knowledge))
    if (!first || !second) throw new Error('Two operations are booked for the day.')
    const verdict = (plan: PlanNow, name: string) => line(plan, name)?.now?.verdict
    expect([verdict(first, 'block'), verdict(first, 'splash'), verdict(second, 'block')]).toEqual([
      expect.not.stringMatching('refused'),
      expect.not.stringMatching('refused'),
      'refused',
    ])
    const added = judgeAmong(
      file,
      other.operation,
      {
        id: 'new',
        drug: 'bupivacaine',
        use: 'local_block',
        route: 'splash',
        dose: quantity('1', 'mg/kg'),
        stock: quantity('5', 'mg/mL'),
      },
      later,
      knowledge,
    )
    expect(added?.line.verdict).toBe('refused')
  })
})

describe('a declared emergency on file', () => {
  // A cat has room for one block only: the splash is refused, and no doubt is left about what was meant.
  const who = checked.find(({ kind }) => kind === 'identity')
  const cat = make({
    kind: 'identity',
    at: later,
    body: { ...(who?.body as BodyOf<'identity'>), species: 'cat' as const },
    supersedes: [who?.id ?? ''],
    reason: 'A cat.',
  })
  const subject = checked.find(({ kind }) => kind === 'planned-line')?.subject
  const hoursBefore = (hours: number) => new Date(Date.parse(later) - hours * 3_600_000).toISOString()
  const declared = (hours: number, wanted = subject) =>
    make({
      kind: 'emergency-declared',
      at: hoursBefore(hours),
      ...(wanted && { subject: wanted }),
      author: { kind: 'person', person: 'person-anna' },
      body: { because: 'The artery is open.', lifts: null },
    })

  it('lifts the block, and the finding says by whose emergency and when', () => {
    const plan = now([...checked, cat, weigh('4'), declared(1)])
    expect(plan.emergency).toMatchObject({ reason: 'The artery is open.', at: expect.stringMatching(/\d{2}:\d{2}/) })
    const splash = line(plan, 'splash')?.now
    expect(splash?.verdict).toBe('caution')
    const finding = splash?.findings.find(({ lifted }) => lifted)
    expect(finding && sayLifted(finding, liftedWords)).toBe(
      `Lifted by the emergency declared by ${plan.emergency?.by} on ${plan.emergency?.at}.`,
    )
    expect(plan.findings.map(({ code }) => code)).toContain('emergency-declared')
  })

  it('lifts nothing once it is old, taken back, of another operation, or not declared yet', () => {
    const other = { ...subject, operation: 'another' } as NonNullable<typeof subject>
    const recent = declared(1)
    const back = make({
      kind: 'withdrawal',
      at: later,
      withdraws: recent.id,
      reason: 'It was none.',
    })
    for (const entries of [[declared(4)], [declared(1, other)], [declared(-1)], [recent, back]]) {
      const plan = now([...checked, cat, weigh('4'), ...entries])
      expect(plan.emergency).toBeNull()
      expect(line(plan, 'splash')?.now?.verdict).toBe('refused')
    }
  })
})
