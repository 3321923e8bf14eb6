import type { BodyOf, Case, Line } from '#core/journal/fold.ts'

export type FrozenReport = {
  readonly line: Line<BodyOf<'report-frozen'>>
  /** Oldest first. */
  readonly errata: readonly Line<BodyOf<'report-erratum'>>[]
  /** Another report on the same year stands beside it: a person settles which one holds. */
  readonly inConflict: boolean
  /** The newest position of the journal that the report or one of its errata has read. */
  readonly readUntil: number
}

/** Every frozen report of the house, newest year first; of two on one year the one that was frozen first. */
export function frozenReports(house: Case): FrozenReport[] {
  const lines = house.live('report-frozen')
  const errata = house.live('report-erratum')
  const firsts = lines.filter((line) => lines.find(({ body }) => body.year === line.body.year) === line)
  return firsts
    .map((line) => {
      const own = errata.filter(({ body }) => body.report === line.header.id)
      return {
        line,
        errata: own,
        inConflict: lines.filter(({ body }) => body.year === line.body.year).length > 1,
        readUntil: Math.max(line.body.readUntil, ...own.map(({ body }) => body.readUntil)),
      }
    })
    .sort((a, b) => b.line.body.year - a.line.body.year)
}
