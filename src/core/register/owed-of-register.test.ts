import { describe, expect, it } from 'vitest'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { owedOfRegister } from './owed-of-register.ts'
import { registerStream } from './register.ts'
import { given, line, make, of, read, shelf, wasted } from './register-for-tests.ts'

const times = {
  count: { from: { count: 3, unit: 'weeks' }, until: { count: 1, unit: 'months' } },
  settle: { count: 1, unit: 'days' },
} as const
const owed = (...entries: Entry[]) => owedOfRegister(read(...entries), fold(entries), times, 'Europe/London')
const whats = (...entries: Entry[]) => owed(...entries).map(({ what }) => what)
const draw = () => line('drawn', '1', { ampoule: 'A-1' })

describe('what a controlled-drug register is owed', () => {
  it('is its opening stock from the moment the house marked it', () => {
    const [first, ...more] = owed()
    expect(first).toMatchObject({ what: 'open', dueFrom: shelf.happenedAt.at })
    expect(more).toEqual([])
    expect(whats(line('opening', '10'))).toEqual(['count'])
  })

  it('is an explanation of what was drawn and neither given nor wasted, from the draw on and within a day', () => {
    const opening = line('opening', '10')
    const drawn = draw()
    const open = [opening, drawn, given('5.5', 'A-1')]
    expect(owed(...open)[0]).toMatchObject({
      what: 'settle',
      dueFrom: drawn.happenedAt.at,
      dueBy: new Date(Date.parse(drawn.happenedAt.at) + 86_400_000).toISOString(),
      findings: [{ code: 'draw-differs' }],
    })
    expect(whats(...open, wasted('4.5', 'A-1'))).toEqual(['count'])
  })

  it('is a difference of a count until what is missing is written', () => {
    const counted = [line('opening', '10'), line('counted', '9.5')]
    expect(whats(...counted)).toEqual(['settle', 'count'])
    expect(whats(...counted, line('lost', '0.5'))).toEqual(['count'])
  })

  it('is a second name where nobody witnessed, until somebody else amends the line', () => {
    const alone = line('opening', '10', { witness: null })
    const seen = make({
      kind: 'register-line',
      stream: registerStream(of),
      author: { kind: 'person', person: 'person-nurse' },
      body: alone.body as never,
      supersedes: [alone.id],
      reason: 'Counted again; it agrees.',
    })
    expect(whats(alone)).toEqual(['second-name', 'count'])
    expect(whats(alone, seen)).toEqual(['count'])
  })

  it('is a count, a while after the last one', () => {
    const [opening, counted] = [line('opening', '10'), line('counted', '10')]
    expect(owed(opening, counted)).toMatchObject([
      { what: 'count', dueFrom: expect.stringMatching(/^2026-03-22/), dueBy: expect.stringMatching(/^2026-04-01/) },
    ])
    expect(owed(opening, counted)[0]?.counted).toEqual(counted.happenedAt)
  })

  it('is nothing more for a page that no product is marked for and that holds nothing', () => {
    const entries = [line('opening', '10'), line('sent-back', '10')]
    const register = { ...read(...entries), markedAt: null }
    expect(owedOfRegister(register, fold(entries), times, 'Europe/London')).toEqual([])
  })
})
