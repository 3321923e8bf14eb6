import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { correctedInstant, headerOf } from '#core/journal/entry.ts'
import { lineOfOne } from '#core/journal/fold.ts'

const kept = new Map<string, string>()
const storage = {
  getItem: (key: string) => kept.get(key) ?? null,
  setItem: (key: string, to: string) => kept.set(key, to),
}

/** The page opened anew: nothing is left of before but what stands on the device. */
async function opened() {
  vi.resetModules()
  const { momentAgain } = await import('./moment-again.ts')
  return { ...(await import('./device.ts')), momentAgain }
}

describe('the clock of a tablet that is seven minutes fast', () => {
  const minute = 60_000
  const before = globalThis.localStorage
  beforeEach(() => {
    kept.clear()
    Object.assign(globalThis, { localStorage: storage })
    vi.useFakeTimers({ now: Date.parse('2026-03-02T10:07:00.000Z'), toFake: ['Date', 'performance'] })
  })
  afterEach(() => {
    vi.useRealTimers()
    Object.assign(globalThis, { localStorage: before })
  })

  it('is corrected as it was measured, also after the page was lost and opened again without the server', async () => {
    const first = await opened()
    expect(first.deviceNow().offset).toBeNull()
    first.measureClock('2026-03-02T10:00:00.000Z', Date.now())
    vi.advanceTimersByTime(30 * minute)
    const again = await opened()
    expect(again.deviceNow().offset).toEqual({ ms: -7 * minute, ageMs: 30 * minute })
    expect(again.asServer('2026-03-02T10:37:00.000Z')).toBe('2026-03-02T10:30:00.000Z')
    expect(again.asHere('2026-03-02T10:30:00.000Z')).toBe('2026-03-02T10:37:00.000Z')
  })

  it('is not trusted after a day, nor when it was set back meanwhile', async () => {
    ;(await opened()).measureClock('2026-03-02T10:00:00.000Z', Date.now())
    vi.setSystemTime(Date.parse('2026-03-02T10:06:00.000Z'))
    expect((await opened()).deviceNow().offset).toBeNull()
    vi.setSystemTime(Date.parse('2026-03-03T10:08:00.000Z'))
    expect((await opened()).deviceNow().offset).toBeNull()
  })

  it('tells the moment of another device in its own time, so that it is corrected to the same moment', async () => {
    const { measureClock, momentAgain, deviceNow, deviceId } = await opened()
    measureClock('2026-03-02T10:00:00.000Z', Date.now())
    const theirs = { id: 'other', boot: 'b', wallClock: '2026-03-02T09:30:00.000Z', monotonicMs: 0 }
    const written = entryMaker()({
      happenedAt: { at: '2026-03-02T09:30:00.000Z', zone: 'Europe/London', precision: 'second', by: 'clock' },
      device: { ...theirs, offset: { ms: 1_000, ageMs: 0 } },
    })
    const again = (entry: typeof written) => momentAgain(lineOfOne(entry))
    const corrected = (happenedAt: typeof written.happenedAt) =>
      correctedInstant({ ...headerOf(written), happenedAt, device: deviceNow() }).at
    expect(corrected(again(written))).toBe('2026-03-02T09:30:01.000Z')
    // A moment that a person said, and one of this device, stand as they are.
    const said = { ...written, happenedAt: { ...written.happenedAt, by: 'person' as const } }
    expect(again(said)).toEqual(said.happenedAt)
    const unmeasured = { ...written, device: { ...theirs, id: deviceId, offset: null } }
    expect(again(unmeasured)).toEqual(written.happenedAt)
    const here = { ...written, device: { ...theirs, id: deviceId, offset: deviceNow().offset } }
    expect(again(here)).toEqual(written.happenedAt)
  })
})
