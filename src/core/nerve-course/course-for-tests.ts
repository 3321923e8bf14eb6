import type { Side } from '#core/animal/species.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { baseline as baselineKind } from '#core/journal/kinds/baseline.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import type { NerveRules } from './looks.ts'
import { type NerveCourse, nerveCoursesOf } from './nerve-course.ts'
import type { NerveSign } from './nerve-sign.ts'
import type { SignCourse } from './sign-course.ts'

/** Wednesday 4 March 2026, 09:00 in London: when the invented left ear is cut. */
export const cut = '2026-03-04T09:00:00.000Z'
export const normal: BodyOf<'check'> = {
  ...checkKind.example,
  blink: 'normal',
  lipOrEarDroop: 'no',
  tearTest: { value: '18', unit: 'mm/min' },
}
export const weak: BodyOf<'check'> = { ...normal, blink: 'weak', lipOrEarDroop: 'yes' }
export const absent: BodyOf<'check'> = { ...weak, blink: 'absent' }

export const makeForTests = (): MakeEntry => entryMaker()

type Face = BodyOf<'baseline'>['LEFT']

/** A normal look before the operation but for what a test says of a side. */
export function baselineOf({ LEFT, RIGHT }: Partial<Record<Side, Partial<Face>>> = {}): BodyOf<'baseline'> {
  const { example } = baselineKind
  return { ...example, LEFT: { ...example.LEFT, ...LEFT }, RIGHT: { ...example.RIGHT, ...RIGHT } }
}

/** A dog whose ear is looked at, booked and cut. */
export function operated(
  make: MakeEntry,
  body: BodyOf<'baseline'> = baselineOf(),
  side: Side = 'LEFT',
  at: string = cut,
): Entry[] {
  return [
    make({ kind: 'identity' }),
    make({ kind: 'baseline', at: '2026-03-04T07:00:00.000Z', body }),
    ...cutOf(make, side, at, 'operation-1'),
  ]
}

/** A booking and the cut of one ear. */
export function cutOf(make: MakeEntry, side: Side, at: string, operation: string): Entry[] {
  const subject = { kind: 'operation', animal: 'animal-1', operation } as const
  return [
    make({
      kind: 'booking',
      at: '2026-02-20T10:00:00.000Z',
      subject,
      body: {
        side,
        procedure: 'teca-lbo',
        agreement: null,
        plannedFor: { at, zone: 'Europe/London', precision: 'minute', by: 'person' },
        surgeon: 'person-surgeon',
        anaesthetist: null,
      },
    }),
    make({
      kind: 'theatre-stamp',
      at,
      subject,
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
    }),
  ]
}

/** Both ears under one anaesthetic, the left one first. */
export function bothCut(make: MakeEntry): Entry[] {
  return [...operated(make), ...cutOf(make, 'RIGHT', '2026-03-04T11:00:00.000Z', 'operation-2')]
}

export function checkOn(make: MakeEntry, at: string, body: BodyOf<'check'>, side: Side = 'LEFT'): Entry {
  return make({ kind: 'check', at, body, subject: { kind: 'ear', animal: 'animal-1', side } })
}

/** The clinic says on 1 June 2026 itself from which day on a deficit is lasting. */
export function lasting(make: MakeEntry, value: string): Entry {
  return make({
    kind: 'house-policy',
    at: '2026-06-01T09:00:00.000Z',
    body: { policy: 'lasting-deficit-days', value, because: 'We see them at a year.' },
  })
}

/** Reads courses by rules: those of the content, which this layer does not know. */
export function readerFor(rules: NerveRules) {
  const courses = (entries: readonly Entry[]): NerveCourse[] => nerveCoursesOf(fileOf(entries), rules)
  const courseOf = (entries: readonly Entry[]): NerveCourse => {
    const [course] = courses(entries)
    if (!course) throw new Error('No ear was operated.')
    return course
  }
  const signOf = (entries: readonly Entry[], sign: NerveSign): SignCourse => {
    const found = courseOf(entries).signs.find((one) => one.sign === sign)
    if (!found) throw new Error(`There is no sign ${sign}.`)
    return found
  }
  return { courses, courseOf, signOf }
}
