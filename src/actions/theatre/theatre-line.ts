import { z } from 'zod'
import { sidesInEnglish } from '#content/wording/app-sides.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { sayDisagreement } from '#core/chapters/sides.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { sayWhys } from '#core/owed/owed-wording.ts'
import type { TheatreLine } from '#core/theatre/theatre-list.ts'
import { theatreMissingCodes } from '#core/theatre/theatre-missing.ts'

const text = z.string()
const span = z.object({ from: text, by: text, why: text, sources: z.array(text) })

/** One line of the theatre list as it is sent: reasons in words, instants for the clock of the clinic. */
export const theatreLineSchema = z.object({
  stream: text,
  name: text.nullable(),
  species: text.nullable(),
  operation: text,
  side: z.enum(['LEFT', 'RIGHT']),
  procedure: text,
  surgeon: text,
  anaesthetist: text.nullable(),
  at: text,
  precision: z.enum(['year', 'month', 'day', 'minute', 'second']),
  state: z.enum(['agreed', 'not-agreed', 'done']),
  /** Null before the cut. */
  signOut: z.enum(['open', 'signed-out', 'in-doubt']).nullable(),
  weight: z.object({ value: text, at: text, how: z.enum(['scale', 'estimated', 'reported']) }).nullable(),
  missing: z.array(
    z.object({
      code: z.enum(theatreMissingCodes),
      level: z.enum(['block', 'confirm', 'note']),
      settledBy: text.nullable(),
      about: z.record(text, text),
      why: text,
      sources: z.array(text),
    }),
  ),
  /** Where the sources of the side disagree: who says which, and what to do. */
  sides: z.array(z.object({ parts: z.array(z.object({ said: text, sources: z.array(text) })), settle: text })),
  fasting: z.union([
    span.extend({ kind: z.literal('times') }),
    z.object({ kind: z.literal('unknown'), missing: z.array(z.enum(['age', 'weight'])) }),
  ]),
  admission: span.extend({ precision: z.enum(['day', 'minute']) }).nullable(),
})
export type ListedOperation = z.infer<typeof theatreLineSchema>

/** The line with names in place of ids and sentences in place of codes. */
export function listedOperation(line: TheatreLine, file: CaseFile): ListedOperation {
  const { fasting, admission, weight, anaesthetist } = line
  const sourcesOf = (facts: readonly { readonly sources: readonly string[] }[]) => [
    ...new Set(facts.flatMap(({ sources }) => sources)),
  ]
  return {
    stream: line.stream,
    name: line.name,
    species: line.species,
    operation: line.operation,
    side: line.side,
    procedure: line.procedure,
    surgeon: personNamed(file, line.surgeon),
    anaesthetist: anaesthetist === null ? null : personNamed(file, anaesthetist),
    at: line.moment.at,
    precision: line.moment.precision,
    state: line.state,
    signOut: line.signOut,
    weight: weight && { value: weight.body.weight.value, at: weight.at, how: weight.body.how },
    missing: line.missing.map(({ why, about, sources, ...missing }) => ({
      ...missing,
      about: { ...about },
      why: sayWhys(why, owedInEnglish),
      sources: [...sources],
    })),
    sides: line.sides.map((one) => {
      const { parts, settle } = sayDisagreement(one, file, sidesInEnglish)
      return { parts: parts.map(({ said, sources }) => ({ said, sources: [...sources] })), settle }
    }),
    fasting:
      fasting.kind === 'unknown'
        ? { kind: 'unknown', missing: [...fasting.missing] }
        : {
            kind: 'times',
            from: fasting.lastMealFrom,
            by: fasting.lastMealBy,
            why: sayWhys(fasting.why, owedInEnglish),
            sources: sourcesOf(fasting.facts),
          },
    admission: admission && {
      from: admission.dueFrom,
      by: admission.dueBy,
      precision: admission.precision,
      why: sayWhys(admission.why, owedInEnglish),
      sources: sourcesOf(admission.facts),
    },
  }
}
