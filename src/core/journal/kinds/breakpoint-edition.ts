import { z } from 'zod'
import { audiences, bodySites, breakpointRoutes, conventions } from '#core/culture/breakpoint.ts'
import { ownRowKinds, rowHosts } from '#core/culture/own-row.ts'
import { id, shortText } from '../answers.ts'
import { defineKind, keyOf } from '../kind.ts'
import { testMethods } from './specimen-result.ts'

/** An end as the standard prints it, `<=2`; empty where it prints none. */
const end = z.string().max(300)

/**
 * The clinic's own copy of an edition of breakpoints, as it was loaded from its file. Never edited: a corrected file is
 * another entry, and a case keeps the one that its result was judged by.
 */
export const breakpointEdition = defineKind({
  name: 'breakpoint-edition',
  version: 1,
  subjects: ['clinic'],
  body: z.strictObject({
    standard: z.string().min(1).max(80),
    edition: z.string().min(1).max(80),
    year: z.int().min(2000).max(2099),
    convention: z.enum(conventions),
    audience: z.enum(audiences),
    /** Whose copy it was compared with or written from. */
    from: shortText,
    rows: z
      .array(
        z.strictObject({
          kind: z.enum(ownRowKinds),
          host: z.enum(rowHosts),
          organisms: id,
          agent: id,
          sites: z.array(z.enum(bodySites)).min(1),
          route: z.enum(breakpointRoutes).nullable(),
          method: z.enum(testMethods),
          disk: shortText.nullable(),
          susceptible: end,
          between: end,
          resistant: end,
          dose: shortText.nullable(),
          remark: shortText.nullable(),
        }),
      )
      .min(1)
      .max(5000),
  }),
  naturalKey: ({ standard, edition, year }) => keyOf(standard, edition, String(year)),
  example: {
    standard: 'Example standard',
    edition: 'ed1',
    year: 2026,
    convention: 'CLSI',
    audience: 'animals',
    from: 'An invented copy, for the example.',
    rows: [
      {
        kind: 'clinical',
        host: 'dog',
        organisms: 'staphylococcus',
        agent: 'cefalexin',
        sites: ['soft-tissue'],
        route: null,
        method: 'MIC',
        disk: null,
        susceptible: '<=16',
        between: '32',
        resistant: '>=64',
        dose: null,
        remark: null,
      },
    ],
  },
})
