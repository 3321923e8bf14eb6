import fc from 'fast-check'
import { expect, test } from 'vitest'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker, type WantedEntry } from '#core/journal/entries-for-tests.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { incidentNote } from '#core/journal/kinds/incident-note.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import type { Checkpoint } from '#core/procedures/procedure.ts'
import { roomCalls } from '#core/theatre/room-call.ts'
import { shoutCheckpoint } from '#core/theatre/shouts.ts'
import { clockMarks } from '#core/theatre/stamps.ts'
import { isPaper } from './case/paper-input.ts'
import { inputFor } from './case/sample-case-for-tests.ts'
import { papers } from './index.ts'
import { renderHtml } from './render/html.ts'
import { renderText } from './render/text.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
/** Around the night in which the clocks go back in London. */
const anyMinute = fc.integer({ min: 0, max: 6 * 60 })
const at = (minute: number) => new Date(Date.UTC(2026, 9, 24, 21, 30) + minute * 60_000).toISOString()

const checkpoints: readonly Checkpoint[] = procedures.flatMap<Checkpoint>((one) => [...one.checkpoints])
const anyStamp = fc
  .record({
    minute: anyMinute,
    id: fc.constantFrom(
      ...clockMarks,
      ...checkpoints.map(({ id }) => id),
      ...roomCalls.flatMap((call) => [shoutCheckpoint('on', call, 1), shoutCheckpoint('off', call, 1)]),
      'retraction-on-1',
      'retraction-off-1',
      'free-1',
      'heard-of-by-nobody',
    ),
    done: fc.boolean(),
    detail: fc.boolean(),
    text: fc.option(fc.constantFrom('It bled.', 'Nobody knew.')),
  })
  .map(({ minute, id, done, detail, text }): WantedEntry => {
    const details = checkpoints.find((one) => one.id === id)?.details ?? []
    const coded = details.flatMap((one) =>
      one.kind === 'coded' ? [[one.id, Object.keys(one.answers)[0] ?? ''] as const] : [[one.id, '3'] as const],
    )
    const answers = detail ? Object.fromEntries(coded) : {}
    const body = { checkpoint: id, answer: done ? ('done' as const) : ('not-done' as const), detail: answers, text }
    return { kind: 'theatre-stamp', subject, at: at(minute), body }
  })

const anyLook = fc
  .record({
    minute: anyMinute,
    rate: fc.integer({ min: 0, max: 300 }),
    artefact: fc.boolean(),
    measured: fc.boolean(),
    first: fc.option(fc.constantFrom('blink', 'sternal', 'normal-temperature')),
  })
  .map(({ minute, rate, artefact, measured, first }): WantedEntry => {
    const value = { value: String(rate), unit: '/min' } as const
    const values = measured ? [{ what: 'heart-rate' as const, value, method: null, artefact }] : []
    const body = { ...observation.example, values, first, unmeasured: measured ? null : 'The lead was off.' }
    return { kind: 'observation', subject, at: at(minute), body }
  })

const anyOther = fc
  .record({
    minute: anyMinute,
    kind: fc.constantFrom(
      'drug-given',
      'blood-loss',
      'count',
      'specimen',
      'pause-item',
      'planned-line',
      'operation-summary',
      'incident-note',
    ),
  })
  .map(({ minute, kind }): WantedEntry => ({ kind, at: at(minute) }) as WantedEntry)

/** Whatever was and was not recorded in theatre, in whatever order: a gap says so, no paper fails. */
test('No paper fails, whatever the theatre record holds', () => {
  const record = fc.array(fc.oneof({ weight: 4, arbitrary: anyStamp }, { weight: 3, arbitrary: anyLook }, anyOther), {
    maxLength: 24,
  })
  fc.assert(
    fc.property(record, fc.boolean(), (wanted, both) => {
      const make = entryMaker()
      const second = { ...subject, operation: 'operation-2' }
      const planned = { ...booking.example.plannedFor, at: at(60) }
      const entries = [
        make({ kind: 'identity' }),
        make({ kind: 'weight' }),
        make({ kind: 'booking', body: { ...booking.example, plannedFor: planned } }),
        ...(both
          ? [
              make({
                kind: 'booking',
                subject: second,
                body: { ...booking.example, side: 'RIGHT', plannedFor: planned },
              }),
            ]
          : []),
        make({ kind: 'incident-note', body: incidentNote.example }),
        ...wanted.map((one) => make(one)),
      ]
      for (const operation of both ? ['operation-1', 'operation-2'] : ['operation-1']) {
        for (const paper of papers) {
          const made = paper.of(inputFor(entries, { operation }))
          if (!isPaper(made)) continue
          expect(renderText(made)).not.toMatch(/undefined|NaN|\{\w+\}/)
          expect(renderHtml(made)).toContain('</html>')
        }
      }
    }),
    { numRuns: 60, seed: 2026 },
  )
})
