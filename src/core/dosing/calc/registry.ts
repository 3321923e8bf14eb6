import { blood } from './blood.ts'
import { bodySurface } from './body-surface.ts'
import { conversion } from './conversion.ts'
import { fluids } from './fluids.ts'
import { infusion } from './infusion.ts'
import { massAndVolume } from './mass-and-volume.ts'
import { measures } from './measures.ts'
import type { Operation } from './operation.ts'
import { tablets } from './tablets.ts'

/** Every formula of the calculator by name. A new one is a line in its file; sentence and sources then do not compile without it. */
export const operations = {
  ...massAndVolume,
  ...conversion,
  ...infusion,
  ...fluids,
  ...blood,
  ...bodySurface,
  ...tablets,
  ...measures,
} as const satisfies Record<string, Operation>

export type OperationName = keyof typeof operations

export const operationNames = Object.keys(operations) as OperationName[]

export function isOperationName(text: string): text is OperationName {
  return Object.hasOwn(operations, text)
}

/**
 * The names nearest to a misspelt one, nearest first. Example: `nearestNames('bolus_volum')[0]` is `'bolus_volume'`.
 * Distance of Levenshtein (1966) over the letters, after names that contain the whole word.
 */
export function nearestNames(text: string, howMany = 3): OperationName[] {
  return operationNames
    .map((name) => ({ name, distance: name.includes(text) && text !== '' ? 0 : editDistance(text, name) }))
    .sort((a, b) => a.distance - b.distance || a.name.localeCompare(b.name, 'en'))
    .slice(0, howMany)
    .map(({ name }) => name)
}

function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1))
    }
    row = next
  }
  return row[b.length] ?? 0
}
