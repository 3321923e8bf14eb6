import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import type { Agent } from './agent.ts'
import type { CultureFinding } from './findings.ts'
import type { Organism } from './organism.ts'
import type { DrugFlag, DrugRead, Row } from './read-drug.ts'
import type { Category, ChangedBy } from './reading.ts'

/** One drug of an isolate: what was printed (null where another drug stands for it) and what it reads as. */
export type Line = { readonly row: Row | null; readonly agent: Agent | null; readonly read: DrugRead }
/** An isolate on its way through the rules. */
export type Isolate = {
  readonly organism: Organism
  readonly tests: StoredIsolate['tests']
  readonly lines: readonly Line[]
  readonly findings: readonly CultureFinding[]
}

/** The line read otherwise, with what its number alone gave kept beside it. */
export function changed(line: Line, category: Category, changedBy: ChangedBy): Line {
  const { read } = line
  const before = read.before ?? (read.category === category ? null : read.category)
  return { ...line, read: { ...read, category, before, changedBy, possible: [] } }
}

export function flagged(line: Line, flag: DrugFlag): Line {
  return line.read.flags.includes(flag) ? line : { ...line, read: { ...line.read, flags: [...line.read.flags, flag] } }
}

export function lineOf(lines: readonly Line[], agent: string): Line | undefined {
  return lines.find((line) => line.agent?.id === agent)
}

/** What a line says, also where only a human or another host's value says it: enough to be warned by, never to use. */
export function warnsOf(line: Line | undefined): Category | null {
  if (!line) return null
  const { category, fallback } = line.read
  return category === 'no_breakpoint' ? (fallback?.category ?? null) : category
}

/** A drug that was not tested, read from one that was. */
export function inferredLine(agent: Agent, category: Category): Line {
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
