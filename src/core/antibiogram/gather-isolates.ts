import type { GrownIsolate, Isolated } from './isolate.ts'
import type { AntibiogramMethod } from './method.ts'

/** One line of a table: one drug of one isolate. */
export type IsolateRow<Tested> = Isolated & { readonly tested: Tested | null }

type Growing<Tested> = Isolated & { tested: Tested[] }

/**
 * Puts rows together to isolates as they come, in whatever order, so that a table of any length is read once. Rows of one
 * animal, organism, day, place and key are one isolate. Where the first of a calendar year counts, a later one is let go
 * at once: it can never become the first, and memory grows with what is counted, not with what is read.
 *
 * @example const gathering = gatherIsolates(method); gathering.add(row); gathering.isolates()
 */
export function gatherIsolates<Tested>(method: Pick<AntibiogramMethod, 'first' | 'sites' | 'from' | 'until'>): {
  readonly add: (row: IsolateRow<Tested>) => 'kept' | 'repeat' | 'outside-period'
  readonly isolates: () => GrownIsolate<Tested>[]
} {
  const yearly = method.first.kind === 'calendar-year'
  const found = new Map<string, Growing<Tested>[]>()

  const add = (row: IsolateRow<Tested>) => {
    if (yearly && !within(method, row.day)) return 'outside-period'
    const of = groupOf(row, method)
    const key = yearly ? `${of}\u0000${row.day.slice(0, 4)}` : of
    const group = found.get(key)
    if (!group) {
      found.set(key, [begun(row)])
      return 'kept'
    }
    const same = group.find((one) => one.day === row.day && one.site === row.site && one.key === row.key)
    if (same) {
      if (row.tested) same.tested.push(row.tested)
      return 'kept'
    }
    if (!yearly) {
      group.push(begun(row))
      return 'kept'
    }
    // Of one day the one that came first stays.
    const [first] = group
    if (first && first.day <= row.day) return 'repeat'
    group[0] = begun(row)
    return 'kept'
  }
  return { add, isolates: () => [...found.values()].flat() }
}

function begun<Tested>(row: IsolateRow<Tested>): Growing<Tested> {
  const { animal, host, organism, day, site, key, tested } = row
  return { animal, host, organism, day, site, key, tested: tested ? [tested] : [] }
}

/** The isolates among which a first one is chosen: of one animal and organism, and of one place where each place has its own. */
export function groupOf(
  { animal, host, organism, site }: Pick<Isolated, 'animal' | 'host' | 'organism' | 'site'>,
  { sites }: Pick<AntibiogramMethod, 'sites'>,
): string {
  return `${host}\u0000${animal}\u0000${organism}${sites === 'each' ? `\u0000${site ?? ''}` : ''}`
}

export function within({ from, until }: Pick<AntibiogramMethod, 'from' | 'until'>, day: string): boolean {
  return (from === null || day >= from) && (until === null || day <= until)
}
