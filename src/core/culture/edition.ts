import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { Breakpoint, Edition, TestMethod } from './breakpoint.ts'
import { readEnds, type WrittenEnds } from './written-ends.ts'

type About = {
  /** The first year in whose edition the same row stood; absent, that of this edition. */
  readonly since?: number
  readonly remark?: string
  readonly dose?: Sourced<string>
}
type WrittenRow = WrittenEnds &
  About & {
    readonly organisms: string
    readonly method: TestMethod
    readonly disk: string | null
    readonly known?: Provenance
  }
/** Rows that share animal, drug and site, as a standard groups them. What a row says itself goes before its group. */
type WrittenGroup = Pick<Breakpoint, 'kind' | 'host' | 'sites' | 'agent' | 'route'> &
  About & { readonly known: Provenance; readonly rows: readonly WrittenRow[] }
type WrittenEdition = Omit<Edition, 'rows'> & { readonly groups: readonly WrittenGroup[] }
type More = About & { readonly known?: Provenance }

/** A row in mg/L. Example: `mic('staphylococcus', '<=2', '', '>=4')`. */
export function mic(
  organisms: string,
  susceptible: string,
  between: string,
  resistant: string,
  more: More = {},
): WrittenRow {
  return { organisms, method: 'MIC', disk: null, susceptible, between, resistant, ...more }
}

/** A row in mm, for a disk of this load. Example: `zone('staphylococcus', '10 µg', '>=17', '14-16', '<=13')`. */
export function zone(
  organisms: string,
  disk: string,
  susceptible: string,
  between: string,
  resistant: string,
  more: More = {},
): WrittenRow {
  return { organisms, method: 'DISK', disk, susceptible, between, resistant, ...more }
}

/**
 * An edition written group by group. An end that cannot be read is a bug of the file, and is thrown.
 *
 * @example edition({ id: 'clsi-m45', …, groups: [{ kind: 'human', …, rows: [mic('corynebacterium', '<=1', '2', '>=4')] }] })
 */
export function edition({ groups, ...about }: WrittenEdition): Edition {
  return { ...about, rows: rowsOf(groups, about.convention) }
}

/**
 * An edition before another one: of that the rows which stood in it already, and those that were changed since. The
 * later one is never edited, so this is not either.
 */
export function editionBefore(later: Edition, { groups, ...about }: WrittenEdition): Edition {
  const same = later.rows.filter(({ since }) => since !== undefined && since <= about.year)
  return { ...about, rows: [...rowsOf(groups, about.convention), ...same] }
}

function rowsOf(groups: readonly WrittenGroup[], convention: Edition['convention']): Breakpoint[] {
  return groups.flatMap(({ rows, known, since, remark, dose, ...group }) =>
    rows.map(({ susceptible, between, resistant, known: own, ...row }): Breakpoint => {
      const ends = readEnds({ susceptible, between, resistant }, row.method, convention)
      const id = rowId(group, row)
      if (ends.kind === 'refusal') throw new Error(`${id}: "${ends.refusal.written}" is no end of ${ends.refusal.end}.`)
      const about = { ...(since ? { since } : {}), ...(remark ? { remark } : {}), ...(dose ? { dose } : {}) }
      return { id, ...group, ...about, ...row, ends: { value: ends.answer, ...(own ?? known) } }
    }),
  )
}

/** Made of what the row is of, so that the same row has the same id in every edition; a screen stands beside a value. */
export function rowId(
  { kind, host, agent, sites, route }: Pick<Breakpoint, 'kind' | 'host' | 'agent' | 'sites' | 'route'>,
  { organisms, method }: Pick<Breakpoint, 'organisms' | 'method'>,
): string {
  const apart = [...(route ? [route] : []), ...(kind === 'screen' ? [kind] : [])]
  return [host, organisms, agent, method.toLowerCase(), ...sites, ...apart].join('-')
}
