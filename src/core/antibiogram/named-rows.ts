import { type Agent, agentById } from '#core/culture/agent.ts'
import { type Organism, organismById } from '#core/culture/organism.ts'
import type { AntibiogramDrug, AntibiogramRow, FallbackDrug } from './antibiogram.ts'

/** What a drug is called; one that nobody knows stands as printed, and was not read. */
type Named = { readonly name: string; readonly known: boolean }
export type NamedDrug = AntibiogramDrug & Named
export type NamedFallback = FallbackDrug & Named
export type NamedRow = Omit<AntibiogramRow, 'drugs' | 'fallback'> & {
  /** Null where nobody knows the organism, which then stands as printed. */
  readonly id: string | null
  readonly drugs: readonly NamedDrug[]
  readonly fallback: readonly NamedFallback[]
}

/** The rows of a table with the names that people read. */
export function namedRows(
  rows: readonly AntibiogramRow[],
  { organisms, agents }: { readonly organisms: readonly Organism[]; readonly agents: readonly Agent[] },
): NamedRow[] {
  const named = (drug: string): Named => {
    const agent = agentById(agents, drug)
    return { name: agent?.name ?? drug, known: agent !== undefined }
  }
  return rows.map((row) => {
    const organism = organismById(organisms, row.organism)
    return {
      ...row,
      organism: organism?.name ?? row.organism,
      id: organism?.id ?? null,
      drugs: row.drugs.map((one) => ({ ...one, ...named(one.drug) })),
      fallback: row.fallback.map((one) => ({ ...one, ...named(one.drug) })),
    }
  })
}
