import { sealAll } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { kinds } from '#core/journal/kinds/index.ts'

/** A case of `size` entries of every kind, one in ten a correction of an earlier one of its kind. */
export function largeCase(size: number): Entry[] {
  const make = entryMaker()
  const caseKinds = kinds.filter(({ subjects }) => !subjects.every((subject) => subject === 'clinic'))
  const last = new Map<string, string>()
  return Array.from({ length: size }, (_, place) => {
    const { name } = caseKinds[place % caseKinds.length] as (typeof kinds)[number]
    const target = place % 10 === 9 ? last.get(name) : undefined
    const entry = make({ kind: name, ...(target === undefined ? {} : { supersedes: [target], reason: 'Corrected.' }) })
    last.set(name, entry.id)
    return entry
  })
}

/** Median, smallest and largest milliseconds of `rounds` folds of one case, after a warm-up. */
export function benchFold(size = 2000, rounds = 100) {
  const entries = sealAll(largeCase(size), () => '2026-03-02T08:00:00.000Z')
  const times: number[] = []
  for (let round = -20; round < rounds; round += 1) {
    const began = performance.now()
    fold(entries)
    if (round >= 0) times.push(performance.now() - began)
  }
  times.sort((a, b) => a - b)
  return { size, median: times[Math.floor(rounds / 2)] ?? 0, least: times[0] ?? 0, most: times.at(-1) ?? 0 }
}
