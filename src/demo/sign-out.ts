import type { Subject } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { potsOf } from '#core/theatre/specimens.ts'
import type { Chart } from './chart.ts'
import { staff } from './practice.ts'
import { stamp } from './writers.ts'

/** Swabs and needles as they were there, and where the throat pack was. */
export function countAll(
  chart: Chart,
  operation: Subject,
  at: string,
  when: BodyOf<'count'>['when'],
  throatPack: BodyOf<'count'>['throatPack'],
): void {
  chart.write(
    'count',
    { at, by: staff.castellane, subject: operation },
    {
      when,
      items: [
        { what: 'swabs', expected: 20, found: 20 },
        { what: 'needles', expected: 4, found: 4 },
      ],
      throatPack,
    },
  )
}

/** The side that was done said aloud, before anybody leaves. */
export function confirmSide(chart: Chart, operation: Subject, at: string): void {
  chart.write(
    'pause-item',
    { at, by: staff.castellane, subject: operation },
    {
      pause: 'before-leaving',
      item: 'procedure-and-side-done',
      answer: 'yes',
      because: null,
      spokenBy: staff.holm,
      ledBy: staff.castellane,
    },
  )
}

/** Every pot of an operation has its label, and the operation is signed out. */
export function labelAndSignOut(chart: Chart, operation: Subject, at: { labelled: string; signed: string }): void {
  if (operation.kind !== 'operation') throw new Error('Only an operation is signed out.')
  for (const { checkpoint, says } of potsOf(fold(chart.entries), operation.operation)) {
    stamp(chart, operation, at.labelled, checkpoint, { ...says })
  }
  stamp(chart, operation, at.signed, 'signed-out')
}
