import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { procedureIds } from '#core/animal/procedure.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { dayOf, daysBetween } from '#core/time/calendar-day.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import type { Owed } from './owed-item.ts'
import { sayOwed } from './owed-wording.ts'

const zone = 'Europe/London'
const cut = '2026-03-04T09:00:00.000Z'

type Look = { readonly day: number; readonly minute: number; readonly body: Partial<BodyOf<'check'>> }

const look: fc.Arbitrary<Look> = fc.record({
  day: fc.integer({ min: 0, max: 200 }),
  minute: fc.integer({ min: 1, max: 900 }),
  body: fc.record({
    seenBy: fc.constantFrom('us', 'referring-vet', 'owner-photograph', 'owner-words'),
    blink: fc.constantFrom('normal', 'weak', 'absent', 'not-assessed'),
    lipOrEarDroop: fc.constantFrom('yes', 'no', 'not-assessed'),
    sutures: fc.constantFrom('in', 'out', 'none', 'not-assessed'),
    wound: fc.constantFrom('closed', 'gap', 'not-assessed'),
    tearTest: fc.option(
      fc.constantFrom('4', '9', '12', '18').map((value) => ({ value, unit: 'mm/min' as const })),
      { nil: null },
    ),
    fluorescein: fc.constantFrom('negative', 'positive', 'not-assessed'),
    possibleBlockEffect: fc.boolean(),
  }),
})

const closed = fc.record({
  weekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { maxLength: 7 }),
  days: fc.uniqueArray(
    fc
      .integer({ min: 0, max: 420 })
      .map((after) => new Date(Date.parse(cut) + after * 86_400_000).toISOString().slice(0, 10)),
    { maxLength: 60 },
  ),
})

function course(
  make: MakeEntry,
  looks: readonly Look[],
  procedure: (typeof procedureIds)[number] = 'teca-lbo',
): Entry[] {
  const plannedFor = { at: cut, zone, precision: 'minute', by: 'person' } as const
  return [
    make({
      kind: 'booking',
      at: '2026-02-20T10:00:00.000Z',
      body: { side: 'LEFT', procedure, agreement: null, plannedFor, surgeon: 'person-surgeon', anaesthetist: null },
    }),
    make({ kind: 'theatre-stamp', at: cut, body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null } }),
    make({ kind: 'drug-given', at: '2026-03-04T08:45:00.000Z' }),
    make({ kind: 'specimen', at: '2026-03-04T10:00:00.000Z' }),
    make({ kind: 'specimen-result', at: '2026-03-08T10:00:00.000Z' }),
    ...looks.map(({ day, minute, body }) =>
      make({
        kind: 'check',
        at: new Date(Date.parse(cut) + day * 86_400_000 + minute * 60_000).toISOString(),
        body: { ...checkKind.example, ...body },
      }),
    ),
  ]
}

function owed(entries: readonly Entry[], when: Parameters<typeof fileOf>[1] = {}): Owed {
  return owedOf(fileOf(entries, when), procedures, { rules: owedRules })
}

const everyId = ({ owed: items, closed: ended }: Owed) =>
  [...items.map(({ id }) => id), ...ended.map(({ item }) => item.id)].sort()

describe('whatever the findings and the closed days', () => {
  it('an eye that was last seen without a blink has a look due within 14 days of that look', () => {
    fc.assert(
      fc.property(fc.array(look, { maxLength: 4 }), fc.integer({ min: 1, max: 300 }), closed, (looks, day, when) => {
        const last: Look = {
          day: 200 + day,
          minute: 1,
          body: { seenBy: 'us', blink: 'absent', possibleBlockEffect: false },
        }
        const entries = course(entryMaker(), [...looks, last])
        const seen = dayOf({ at: entries.at(-1)?.happenedAt.at ?? '', zone })
        const eyes = owed(entries, when).owed.filter(
          ({ what }) => what === 'eye-at-risk-look' || what === 'face-and-eye-look',
        )
        const limits = eyes.map(({ dueBy }) => daysBetween(seen, dayOf({ at: dueBy, zone })))
        expect(Math.min(...limits)).toBeLessThanOrEqual(14)
        expect(Math.max(...limits)).toBeGreaterThan(0)
      }),
      { numRuns: 200 },
    )
  })

  it('two looks at an eye at risk never lie more than 14 days apart, on whichever day of its window each is made', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), closed, (day, when) => {
        const entries = course(entryMaker(), [
          { day, minute: 700, body: { seenBy: 'us', blink: 'absent', possibleBlockEffect: false } },
        ])
        const eyes = owed(entries, when).owed.filter(
          ({ what }) => what === 'eye-at-risk-look' || what === 'face-and-eye-look',
        )
        let before = dayOf({ at: entries.at(-1)?.happenedAt.at ?? '', zone })
        for (const { dueFrom, dueBy } of [...eyes].sort((a, b) => (a.dueBy < b.dueBy ? -1 : 1))) {
          expect(daysBetween(before, dayOf({ at: dueBy, zone }))).toBeLessThanOrEqual(14)
          // The look may be made on the first day of its window: the next one counts from there.
          before = [before, dayOf({ at: dueFrom, zone })].sort()[1] as string
        }
      }),
      { numRuns: 100 },
    )
  })

  it('nothing of the follow-up is due before its operation, and every window begins before it ends', () => {
    const before = new Set([
      'baseline-before-premedication',
      'weight-before-operation',
      'consent-before-operation',
      'second-check-of-lines',
      'last-meal',
      'fasting-to-settle',
      'admission',
    ])
    fc.assert(
      fc.property(
        fc.array(look, { maxLength: 6 }),
        closed,
        fc.constantFrom(...procedureIds),
        (looks, when, procedure) => {
          const { owed: items, closed: ended } = owed(course(entryMaker(), looks, procedure), when)
          for (const item of [...items, ...ended.map((one) => one.item)]) {
            expect(item.dueFrom <= item.dueBy).toBe(true)
            const said = sayOwed(item, owedInEnglish)
            expect(`${said.what} ${said.why}`).not.toMatch(/[{}]|undefined/)
            if (before.has(item.what)) expect(item.dueBy <= cut).toBe(true)
            else expect(item.dueFrom >= cut).toBe(true)
          }
        },
      ),
      { numRuns: 200 },
    )
  })

  it('no planned visit moves past the limit it has when every day is open', () => {
    fc.assert(
      fc.property(fc.array(look, { maxLength: 4 }), closed, (looks, when) => {
        const entries = course(entryMaker(), looks)
        const open = new Map(owed(entries).owed.map(({ id, dueBy }) => [id, dueBy]))
        for (const { id, dueBy, way, what } of owed(entries, when).owed) {
          const limit = open.get(id)
          // Looks at an eye at risk follow the look before them; their own law stands above.
          if (limit !== undefined && way === 'visit' && what !== 'eye-at-risk-look') expect(dueBy <= limit).toBe(true)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('a visit falls on an open day, or says that none is left', () => {
    fc.assert(
      fc.property(closed, (when) => {
        for (const item of owed(course(entryMaker(), []), when).owed.filter(({ way }) => way === 'visit')) {
          const isClosed = (at: string) => {
            const day = dayOf({ at, zone })
            return when.days.includes(day) || when.weekdays.includes(new Date(`${day}T12:00:00Z`).getUTCDay() || 7)
          }
          const nowhere = item.why.some(({ code }) => code === 'moved-nowhere')
          expect(isClosed(item.dueFrom) || isClosed(item.dueBy)).toBe(nowhere)
        }
      }),
      { numRuns: 200 },
    )
  })
})

describe('death', () => {
  it('drops nothing, leaves only what is not the owner’s, and its withdrawal brings everything back', () => {
    fc.assert(
      fc.property(fc.array(look, { maxLength: 5 }), closed, fc.integer({ min: 1, max: 400 }), (looks, when, day) => {
        const make = entryMaker()
        const entries = course(make, looks)
        const at = new Date(Date.parse(cut) + day * 86_400_000).toISOString()
        const death = make({ kind: 'death', at })
        const back = make({
          kind: 'withdrawal',
          subject: death.subject,
          withdraws: death.id,
          reason: 'Another animal.',
          at,
        })
        const alive = owed(entries, when)
        const dead = owed([...entries, death], when)
        const again = owed([...entries, death, back], when)
        expect(everyId(dead)).toEqual(everyId(alive))
        expect(dead.owed.every(({ withOwner }) => !withOwner)).toBe(true)
        const ids = ({ owed: items }: Owed) => items.map(({ id, dueBy }) => `${id} ${dueBy}`)
        expect(ids(again)).toEqual(ids(alive))
      }),
      { numRuns: 100 },
    )
  })
})

describe('the order of arrival', () => {
  it('changes nothing that is owed', () => {
    fc.assert(
      fc.property(fc.array(look, { maxLength: 5 }), fc.infiniteStream(fc.nat()), (looks, keys) => {
        const entries = course(entryMaker(), looks)
        const shuffled = entries
          .map((entry) => ({ entry, key: keys.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry)
        expect(owed(shuffled)).toEqual(owed(entries))
      }),
      { numRuns: 100 },
    )
  })
})
