import { describe, expect, it } from 'vitest'
import { caseFileOf } from '#core/journal/case-file.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { demoClinic, practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { localRoomOf } from './local-room.ts'

const { entries: all, stream } = tansy()
const check = all.find(({ kind }) => kind === 'second-check')
const instant = (minutes: number) => new Date(Date.parse(check?.happenedAt.at ?? '') + minutes * 60_000).toISOString()
/** The invented dog of 18.4 kg as she stood when her plan had been checked, before anything was given. */
const checked = all.filter(({ happenedAt }) => happenedAt.at <= (check?.happenedAt.at ?? ''))
const unplanned = checked.filter(({ kind }) => kind !== 'planned-line' && kind !== 'second-check')
const make = entryMaker({ stream, clinic: check?.clinic ?? '' }, 9)

function room(entries: readonly Entry[], minutes = 1) {
  const whole = { clinic: demoClinic, rows: registerRows(), entries: [...practiceChart().entries, ...entries] }
  const file = caseFileOf(whole, stream)
  if (!file) throw new Error('The practice has no clinic line.')
  return localRoomOf(file, instant(minutes), knowledgeOf(file))
}

const given = (amount: BodyOf<'drug-given'>['amount']) =>
  make({
    kind: 'drug-given',
    at: instant(0),
    body: {
      drug: 'bupivacaine',
      written: null,
      amount,
      volume: null,
      route: 'beside-nerve',
      site: null,
      use: 'local_block',
      line: null,
      batch: null,
      ampoule: null,
    },
  })

describe('the room that blocks leave of the animal’s one limit', () => {
  it('is all of it while nothing is planned or given: 5 mg/kg lidocaine, 2 mg/kg bupivacaine in a dog', () => {
    const whole = room(unplanned)
    expect(whole?.taken.toFixed()).toBe('0')
    // 5 × 18.4 and 2 × 18.4, the limits of the formulary.
    expect(whole?.left.get('lidocaine')?.value.toFixed()).toBe('92')
    expect(whole?.left.get('bupivacaine')?.value.toFixed()).toBe('36.8')
  })

  it('is nothing once block and splash of the plan take all of it', () => {
    expect(room(checked)?.taken.toFixed()).toBe('1')
    expect(room(checked)?.left.get('lidocaine')?.value.toFixed()).toBe('0')
  })

  it('is half after half was given, and whole again once it has worn off', () => {
    const half = [...unplanned, given({ value: '18.4', unit: 'mg' })]
    expect(room(half)?.left.get('lidocaine')?.value.toFixed()).toBe('46')
    // The washout of bupivacaine is 8 hours.
    expect(
      room(half, 8 * 60 + 1)
        ?.left.get('lidocaine')
        ?.value.toFixed(),
    ).toBe('92')
  })

  it('says when the milligrams of one that was given are not known', () => {
    const unknown = room([...unplanned, given({ value: '2', unit: 'mL' })])
    expect(unknown).toMatchObject({ uncounted: true })
  })
})
