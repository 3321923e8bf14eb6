import { z } from 'zod'
import { sources } from '#content/sources/index.ts'
import { antibiogramRules } from '#content/susceptibility/antibiogram-rules.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { antibiogramInEnglish as words } from '#content/wording/antibiogram.ts'
import { speciesList } from '#core/animal/species.ts'
import type { AntibiogramRow } from '#core/antibiogram/antibiogram.ts'
import type { AntibiogramMethod } from '#core/antibiogram/method.ts'
import { namedRows } from '#core/antibiogram/named-rows.ts'
import type { Edition } from '#core/culture/breakpoint.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { cite } from '#core/evidence/cite.ts'
import { sayMethod } from './say-method.ts'

const count = z.int().min(0)
const figures = {
  drug: z.string(),
  name: z.string(),
  /** Whether anybody here knows the drug; one that nobody knows is not read. */
  known: z.boolean(),
  /** The denominator: isolates with a category. */
  n: count,
  s: count,
  /** Per cent, one decimal; null where no share is told. */
  percent: z.number().nullable(),
  interval: z.tuple([z.number(), z.number()]).readonly().nullable(),
  sdd: count,
  percentSdd: z.number().nullable(),
  i: count,
  r: count,
  percentR: z.number().nullable(),
  ns: count,
  notInterpretable: count,
  noBreakpoint: count,
  notTested: count,
  flag: z.string().nullable(),
}
const drug = z.object({
  ...figures,
  untold: z.enum(['intrinsic', 'tested-only-on-resistant', 'below-minimum', 'no-category']).nullable(),
  categoryOnly: count,
  doses: z.array(z.string()).readonly(),
})
const noteCodes = Object.keys(words.notes) as [NoteCode, ...NoteCode[]]
export type NoteCode = keyof typeof words.notes

export const antibiogramAnswer = z.object({
  method: z.object({
    first: z.enum(['calendar-year', 'episode', 'phenotype']),
    sites: z.enum(['together', 'apart', 'each']),
    edition: z.string(),
    standard: z.string(),
    from: z.string().nullable(),
    until: z.string().nullable(),
    minimum: count,
    flagBelow: count,
    text: z.array(z.string()),
  }),
  organisms: z.array(
    z.object({
      host: z.enum(speciesList),
      site: z.string().nullable(),
      organism: z.string(),
      /** Null where nobody knows the name. */
      id: z.string().nullable(),
      n: count,
      flag: z.string().nullable(),
      firstDay: z.string(),
      lastDay: z.string(),
      drugs: z.array(drug).readonly(),
      /** By a breakpoint of people or of another animal; never part of the table. */
      fallback: z.array(z.object(figures)).readonly(),
    }),
  ),
  notes: z.array(z.object({ code: z.enum(noteCodes), text: z.string() })),
  sources: z.array(
    z.object({
      id: z.string(),
      citation: z.string(),
      where: z.string().nullable(),
      known: z.enum(['read', 'remembered', 'common-practice', 'house']),
      confidence: z.enum(['high', 'medium', 'low']),
      strength: z.string(),
    }),
  ),
})
export type AntibiogramAnswer = z.infer<typeof antibiogramAnswer>

/** The table in words and numbers, as programs, screens and papers take it. */
export function answerOf(
  rows: readonly AntibiogramRow[],
  method: AntibiogramMethod,
  edition: Edition,
): Omit<AntibiogramAnswer, 'notes'> {
  const standard = editionName(edition)
  const { first, sites, from, until, minimum, flagBelow } = method
  const text = sayMethod(method, standard)
  return {
    method: { first: first.kind, sites, edition: edition.id, standard, from, until, minimum, flagBelow, text },
    organisms: namedRows(rows, susceptibility),
    sources: cite([...Object.values(antibiogramRules), ...edition.rows.map(({ ends }) => ends)], sources),
  }
}
