import { describe, expect, it } from 'vitest'
import type { Side } from '#core/animal/species.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { fingerprintOf } from './fingerprint.ts'
import { consentOf } from './state.ts'

const both: typeof agreement.example.plan = {
  ...agreement.example.plan,
  ears: [
    { side: 'LEFT', procedure: 'teca-lbo' },
    { side: 'RIGHT', procedure: 'teca-lbo' },
  ],
}
const body = { ...agreement.example, plan: both, fingerprint: fingerprintOf(both) }
const animal = 'animal-1'

/** Both ears agreed and booked; how consent for each stands after what came next. */
function standsAfter(after: (make: ReturnType<typeof entryMaker>) => Entry[]) {
  const make = entryMaker()
  const agreed = make({ kind: 'agreement', at: '2026-03-01T15:00:00.000Z', body })
  const booked = (side: Side) =>
    make({
      kind: 'booking',
      subject: { kind: 'operation', animal, operation: side },
      body: { ...booking.example, side, agreement: agreed.id },
    })
  const file = fileOf([agreed, booked('LEFT'), booked('RIGHT'), ...after(make)])
  return Object.fromEntries(
    operationsOf(file).map((operation) => {
      const state = consentOf(operation, file, null)
      return [operation.side, state.kind === 'none' ? 'none' : state.withdrawn ? 'withdrawn' : 'stands']
    }),
  )
}

const takenBack = (make: ReturnType<typeof entryMaker>, at = '2026-03-10T07:50:00.000Z') =>
  make({ kind: 'consent-withdrawn', at, subject: { kind: 'ear', animal, side: 'RIGHT' } })

describe('consent for two ears', () => {
  it('stands for both', () => {
    expect(standsAfter(() => [])).toEqual({ LEFT: 'stands', RIGHT: 'stands' })
  })

  it('taken back for one ear at ten to eight leaves the other standing', () => {
    expect(standsAfter((make) => [takenBack(make)])).toEqual({ LEFT: 'stands', RIGHT: 'withdrawn' })
  })

  it('stands again by a new agreement, without the booking being written anew', () => {
    const again = (make: ReturnType<typeof entryMaker>) =>
      make({ kind: 'agreement', at: '2026-03-10T08:20:00.000Z', body })
    expect(standsAfter((make) => [takenBack(make), again(make)])).toEqual({ LEFT: 'stands', RIGHT: 'stands' })
  })

  it('is not ended by what was taken back before it was given', () => {
    expect(standsAfter((make) => [takenBack(make, '2026-02-20T09:00:00.000Z')])).toEqual({
      LEFT: 'stands',
      RIGHT: 'stands',
    })
  })
})
