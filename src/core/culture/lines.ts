import type { Provenance } from '#core/evidence/sourced.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import type { Agent } from './agent.ts'
import type { CultureFinding } from './findings.ts'
import type { Organism } from './organism.ts'
import type { DrugFlag, DrugRead, Row } from './read-drug.ts'
import { resistanceOrder } from './read-value.ts'
import type { Category, ChangedBy } from './reading.ts'

/** One drug of an isolate: what was printed (null where another drug stands for it) and what it reads as. */
export type Line = { readonly row: Row | null; readonly agent: Agent | null; readonly read: DrugRead }
/** An isolate on its way through the rules. */
export type Isolate = {
  readonly organism: Organism
  /** As the laboratory writes it, with what it says of the strain. */
  readonly printed: string
  readonly tests: StoredIsolate['tests']
  readonly lines: readonly Line[]
  readonly findings: readonly CultureFinding[]
}

/** The line read otherwise, with what its number alone gave kept beside it. */
export function changed(line: Line, category: Category, changedBy: ChangedBy, because: Provenance): Line {
  const { read } = line
  const before = read.before ?? (read.category === category ? null : read.category)
  return { ...line, read: { ...read, category, before, changedBy, because, possible: [] } }
}

export function flagged(line: Line, flag: DrugFlag): Line {
  return line.read.flags.includes(flag) ? line : { ...line, read: { ...line.read, flags: [...line.read.flags, flag] } }
}

/** The line of a drug; of one tested twice that which says the worse. */
export function lineOf(lines: readonly Line[], agent: string): Line | undefined {
  return lines
    .filter((line) => line.agent?.id === agent)
    .reduce<Line | undefined>((worst, line) => (worst && badness(worst) >= badness(line) ? worst : line), undefined)
}

function badness(line: Line): number {
  const category = warnsOf(line)
  return category === null ? -1 : resistanceOrder.indexOf(category)
}

/** A drug tested twice, and once it could be used and once not. */
export function differing(lines: readonly Line[]): Line[] {
  const usable = ({ read }: Line) => read.category === 'S' || read.category === 'SDD'
  const decided = lines.filter(({ read }) => read.category !== 'NI' && read.category !== 'no_breakpoint')
  return decided.filter((line) =>
    decided.some((other) => line.agent && other.agent === line.agent && usable(other) !== usable(line)),
  )
}

/** What a line says, also where only a human or another host's value says it: enough to be warned by, never to use. */
export function warnsOf(line: Line | undefined): Category | null {
  if (!line) return null
  const { category, fallback } = line.read
  return category === 'no_breakpoint' ? (fallback?.category ?? null) : category
}

/** A drug that was not tested, read from one that was. */
export function inferredLine(agent: Agent, category: Category, because: Provenance): Line {
  return {
    row: null,
    agent,
    read: {
      agent: agent.id,
      printed: '',
      raw: '',
      method: null,
      category,
      before: null,
      changedBy: 'inferred',
      because,
      possible: [],
      breakpoint: null,
      fallback: null,
      laboratory: null,
      flags: ['not-printed'],
      doubt: null,
      none: null,
      proposal: null,
    },
  }
}

/** A list as it is said. */
export function named(lines: readonly Line[]): string {
  return lines.map(({ agent, read }) => agent?.name ?? read.printed).join(', ')
}

/** Lines with what was printed of each: `oxacillin >=4 mg/L`. */
export function asPrinted(lines: readonly Line[]): string {
  return lines.map((line) => `${named([line])} ${line.read.raw}`).join(', ')
}
