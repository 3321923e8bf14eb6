import { type ClusterCount, clusteredInterval } from './clustered-proportion.ts'
import type { Interval } from './proportion-interval.ts'

/**
 * Wilson's interval for a share of ears that knows that two ears of one animal are not two animals. Null where nobody is
 * known, and where no animal has two of the ears: then it says no more than the plain one.
 *
 * @param ears those of which it is known, each with its animal
 * @example acrossAnimals([{ animal: 'a', had: true }, { animal: 'a', had: true }, { animal: 'b', had: false }])
 */
export function acrossAnimals(ears: readonly { readonly animal: string; readonly had: boolean }[]): Interval | null {
  const animals = new Map<string, ClusterCount>()
  for (const { animal, had } of ears) {
    const before = animals.get(animal) ?? { events: 0, total: 0 }
    animals.set(animal, { events: before.events + (had ? 1 : 0), total: before.total + 1 })
  }
  if (animals.size === ears.length) return null
  const found = clusteredInterval([...animals.values()])
  return found.kind === 'answer' ? found.answer.interval : null
}
