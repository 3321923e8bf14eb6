import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { sidesOf } from '#core/chapters/sides.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { pauseItem } from '#core/journal/kinds/pause-item.ts'
import { theatreStamp } from '#core/journal/kinds/theatre-stamp.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { owedOf } from '#core/owed/owed.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'
import { gatesIn, gatesOf, inSpiteOf, sayGates } from './stamp-gates.ts'
import { theatreLine } from './theatre-list.ts'

const now = '2026-03-10T10:00:00.000Z'
const make = entryMaker()
const right = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
const planned = (at: string) => ({ ...booking.example.plannedFor, at: `2026-03-10T${at}:00.000Z` })

function booked(at: string, more: Partial<Entry> & { side?: 'LEFT' | 'RIGHT'; agreement?: string | null } = {}): Entry {
  const { side = 'LEFT', agreement = null, ...rest } = more
  const body = { ...booking.example, side, agreement, plannedFor: planned(at) }
  return make({ kind: 'booking', body, ...rest } as Parameters<typeof make>[0])
}

function stamped(checkpoint: string, at: string, more: Partial<Entry> = {}): Entry {
  const body = { ...theatreStamp.example, checkpoint, detail: {} }
  return make({
    kind: 'theatre-stamp',
    body,
    at: `2026-03-10T${at}:00.000Z`,
    ...more,
  } as Parameters<typeof make>[0])
}

function looked(body: Partial<typeof baseline.example> = {}, at = '2026-03-10T07:30:00.000Z'): Entry {
  return make({ kind: 'baseline', body: { ...baseline.example, ...body }, at } as Parameters<typeof make>[0])
}

/** Every item of a pause answered YES, save those named. */
function spoken(pause: 'before-incision' | 'before-second-ear', no: readonly string[] = [], more: Partial<Entry> = {}) {
  const items = spokenPauses.find((one) => one.pause === pause)?.items ?? []
  return items.map(({ id }) => {
    const isNo = no.includes(id)
    const body = {
      ...pauseItem.example,
      pause,
      item: id,
      answer: isNo ? 'no' : 'yes',
      because: isNo ? 'Not yet.' : null,
    }
    return make({ kind: 'pause-item', body, ...more } as Parameters<typeof make>[0])
  })
}

function gates(mark: string, entries: readonly Entry[], operation = 'operation-1') {
  const file = fileOf(entries)
  const operations = operationsOf(file)
  const found = operations.find(({ id }) => id === operation)
  if (!found) throw new Error(`There is no ${operation}.`)
  const { owed } = owedOf(file, procedures, { rules: owedRules })
  const { missing } = theatreLine(found, { file, owed }, theatreRules)
  const { disagreements } = sidesOf(file.theCase)
  const setting = { theCase: file.theCase, operations, sides: disagreements, missing, pauses: spokenPauses, now }
  return gatesOf(mark, found, setting)
}

describe('a mark of the clock', () => {
  it('is not premedication before face and eyes were looked at, unless somebody says why', () => {
    expect(gates('premedication', [booked('09:00')])).toContain('baseline')
    expect(gates('premedication', [booked('09:00'), looked()])).not.toContain('baseline')
  })

  it('does not take a look after sedation, without the blink of the ear, or of the operation before, for a baseline', () => {
    const blind = { LEFT: { ...baseline.example.LEFT, blink: 'not-assessed' } } as const
    expect(gates('premedication', [booked('09:00'), looked({ beforeSedation: false })])).toContain('baseline')
    expect(gates('premedication', [booked('09:00'), looked(blind)])).toContain('baseline')
    const before = [
      booked('09:00', { subject: right, side: 'RIGHT' }),
      stamped('incision', '08:00', { subject: right }),
    ]
    const old = before.map((entry) => ({
      ...entry,
      happenedAt: { ...entry.happenedAt, at: '2026-01-10T09:00:00.000Z' },
    }))
    expect(gates('premedication', [...old, booked('09:00'), looked({}, '2026-01-10T07:00:00.000Z')])).toContain(
      'baseline',
    )
  })

  it('asks for the baseline at the beginning of anaesthesia only where no premedication was stamped', () => {
    expect(gates('anaesthesia-start', [booked('09:00')])).toContain('baseline')
    expect(gates('anaesthesia-start', [booked('09:00'), stamped('premedication', '08:00')])).not.toContain('baseline')
  })

  it('waits for a consent that covers it, and for a side that is settled', () => {
    expect(gates('incision', [booked('09:00')])).toContain('consent')
    const other = make({ kind: 'referral' })
    expect(gates('incision', [other, booked('09:00', { side: 'RIGHT' })])).toContain('side')
    expect(gates('incision', [other, booked('09:00')])).not.toContain('side')
  })

  it('of the cut waits for the whole pause before it', () => {
    expect(gates('incision', [booked('09:00')])).toContain('time-out')
    expect(gates('incision', [booked('09:00'), ...spoken('before-incision')])).not.toContain('time-out')
    expect(gates('incision', [booked('09:00'), ...spoken('before-incision', ['concerns'])])).toContain('time-out')
  })

  it('of the cut of a second ear waits for the pause between the ears, with GO', () => {
    const both = [booked('09:00'), stamped('incision', '09:10'), booked('10:30', { subject: right, side: 'RIGHT' })]
    const more = { subject: right }
    expect(gates('incision', both, 'operation-2')).toContain('second-ear')
    expect(gates('incision', [...both, ...spoken('before-second-ear', [], more)], 'operation-2')).not.toContain(
      'second-ear',
    )
    expect(gates('incision', [...both, ...spoken('before-second-ear', ['go'], more)], 'operation-2')).toContain(
      'second-ear',
    )
    expect(gates('incision', both, 'operation-1')).not.toContain('second-ear')
  })

  it('that waits for nothing has no gate, nor has a checkpoint', () => {
    expect(gates('closed', [booked('09:00')])).toEqual([])
    expect(gates('k1-skin', [booked('09:00')])).toEqual([])
  })

  it('keeps and says what it went on without', () => {
    const kept = gatesIn({ detail: { [inSpiteOf]: 'side baseline unheard-of' } })
    expect(kept).toEqual(['baseline', 'side'])
    expect(sayGates(kept, reportInEnglish)).toBe(
      'Went on without: face and eyes looked at before sedation; the side settled.',
    )
    expect(sayGates([], reportInEnglish)).toBeNull()
  })
})
