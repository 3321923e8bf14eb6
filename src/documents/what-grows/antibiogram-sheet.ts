import type { NamedFallback, NamedRow } from '#core/antibiogram/named-rows.ts'
import { sheet } from '../render/sheet.ts'

const header = [
  'host',
  'site',
  'organism',
  'isolates',
  'first_day',
  'last_day',
  'drug',
  'read_by',
  'n',
  's',
  'percent_s',
  'interval_low',
  'interval_high',
  'sdd',
  'percent_sdd',
  'i',
  'r',
  'percent_r',
  'ns',
  'not_interpretable',
  'no_breakpoint',
  'not_tested',
  'category_only',
  'flag',
  'no_share_because',
  'standard',
  'method',
] as const

type Counted = {
  readonly organisms: readonly NamedRow[]
  readonly method: { readonly standard: string; readonly first: string }
}

/** The table for a spreadsheet: one row per organism and drug; what was read by a borrowed breakpoint says so in `read_by`. */
export function antibiogramSheet({ organisms, method }: Counted): string {
  const rows = organisms.flatMap((organism) => {
    const { host, site, n, firstDay, lastDay } = organism
    const about = [host, site ?? '', organism.organism, String(n), firstDay, lastDay]
    const end = [method.standard, method.first]
    return [
      ...organism.drugs.map((drug) => [
        ...about,
        drug.drug,
        'edition',
        ...numbers(drug),
        String(drug.categoryOnly),
        drug.flag ?? '',
        drug.untold ?? '',
        ...end,
      ]),
      ...organism.fallback.map((drug) => [
        ...about,
        drug.drug,
        'borrowed breakpoint',
        ...numbers(drug),
        '',
        drug.flag ?? '',
        '',
        ...end,
      ]),
    ]
  })
  return sheet(header, rows)
}

function numbers(drug: NamedFallback): string[] {
  const { n, s, percent, interval, sdd, percentSdd, i, r, percentR, ns, notInterpretable, noBreakpoint, notTested } =
    drug
  const cells = [n, s, percent, interval?.[0], interval?.[1], sdd, percentSdd, i, r, percentR, ns]
  return [...cells, notInterpretable, noBreakpoint, notTested].map((cell) => (cell === null ? '' : String(cell ?? '')))
}
