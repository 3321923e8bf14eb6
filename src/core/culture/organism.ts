import type { Sourced } from '#core/evidence/sourced.ts'

/** A species a laboratory reports, or a group of them: a genus, a family, what a standard writes one row for. */
export type Organism = {
  readonly id: string
  /** As it is printed: `Staphylococcus pseudintermedius`, `Staphylococcus species`. */
  readonly name: string
  readonly rank: 'species' | 'group'
  /** Every group that it belongs to, the nearest first. */
  readonly groups: readonly string[]
  readonly kind: 'bacterium' | 'yeast' | 'mould'
  /** Null where the stain says nothing of it: yeasts, bacteria without a wall, mixed groups. */
  readonly gram: 'positive' | 'negative' | null
  /** As laboratories write it; one that two organisms share stands for neither of them. */
  readonly aliases: readonly string[]
  readonly snomed?: Sourced<readonly string[]>
}

/**
 * The organism of an id.
 *
 * @example organismById(organisms, 'escherichia-coli')?.name // 'Escherichia coli'
 */
export function organismById(organisms: readonly Organism[], id: string | null): Organism | undefined {
  return organisms.find((organism) => organism.id === id)
}
