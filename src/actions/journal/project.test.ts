import { describe, expect, it } from 'vitest'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { demoClinic, practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import type { RegisterRow } from '../store.ts'
import { project, unreadByLists } from './project.ts'

const rows = registerRows() as readonly RegisterRow[]
/** Without the practice's own shelf and plans: an entry of the same key would stand beside them. */
const house = practiceChart().entries.filter(({ kind }) => !unreadByLists.some((one) => one === kind))
const home = tansy().entries
const goingHome = home.slice(0, home.findIndex(({ kind }) => kind === 'discharge') + 1)
const make = entryMaker({ clinic: demoClinic, stream: 'clinic', subject: { kind: 'clinic' } })
const sealed = (entries: readonly Entry[]) => sealAll(entries, (entry) => entry.writtenAt)

/** The lists of the spaniel on the day she goes home, with further entries in the practice's own stream. */
const listsWith = (...further: readonly Entry[]) => {
  const clinicEntries = sealed([...house, ...further])
  const about = {
    clinic: demoClinic,
    stream: 'case:tansy',
    entries: sealed(goingHome),
    linked: [],
    everywhere: [],
    keptAside: [],
    rows,
  }
  return { lists: project({ ...about, clinicEntries }), read: project.readOfClinic?.(clinicEntries) }
}

describe('what the lists read of the clinic’s own stream', () => {
  const before = listsWith()

  it.each(unreadByLists)('is nothing of the kind %s', (kind) => {
    const after = listsWith(make({ kind }))
    expect(after.read).toBe(before.read)
    expect(after.lists).toEqual(before.lists)
    expect(before.lists.owed.length).toBeGreaterThan(5)
  })

  it('is a policy of the house, and whatever takes it back', () => {
    const body = { policy: 'owed.suture-check', value: '8..9 days', because: 'Ours heal quickly.' }
    const policy = make({ kind: 'house-policy', body })
    const after = listsWith(policy)
    expect(after.read).not.toBe(before.read)
    expect(after.lists).not.toEqual(before.lists)
    const back = make({ kind: 'withdrawal', withdraws: policy.id, reason: 'Not so.' })
    expect(listsWith(policy, back).read).not.toBe(after.read)
  })

  it('is also that two entries of the shelf now stand side by side, or one waits for another', () => {
    const first = make({ kind: 'shelf-item' })
    const reason = 'Another strength came.'
    const one = make({ kind: 'shelf-item', supersedes: [first.id], reason })
    const two = make({ kind: 'shelf-item', supersedes: [first.id], reason })
    expect(listsWith(first, one).read).toBe(before.read)
    const aside = listsWith(first, one, two)
    expect(aside.read).not.toBe(before.read)
    expect(aside.lists.owed.map(({ id }) => id)).toContainEqual(expect.stringMatching(/^conflict-to-settle:/))
    expect(listsWith(one).read).not.toBe(before.read)
  })
})
