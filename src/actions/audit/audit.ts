import { z } from 'zod'
import { auditWords } from '#content/wording/audit.ts'
import type { Json } from '#core/journal/canonical.ts'
import { InputError, readInput } from '../input.ts'
import { agreement, readers } from './agreement.ts'
import { funnel } from './groups.ts'
import { cusum, falseAlarms, running } from './in-order.ts'
import type { AuditOperation } from './operation.ts'
import { observedExpected, rate, rates } from './rates.ts'
import { difference, eventFree, proportion } from './shares.ts'

const operations = [
  proportion,
  eventFree,
  difference,
  rate,
  rates,
  observedExpected,
  funnel,
  cusum,
  falseAlarms,
  running,
  agreement,
  readers,
] as const
type Op = (typeof operations)[number]['op']

export type AuditAnswer = {
  readonly op: string
  readonly sentence: string
  /** How it is worked out, by whom published, and how well we know it. */
  readonly method: string
  readonly answer: Readonly<Record<string, Json>>
}

/**
 * One calculation of the audit of results, with bare counts; every share on 0–1.
 *
 * @example audit({ op: 'proportion', of: { events: 0, total: 12 } }).answer.exact // [0, 0.2646…]
 */
export function audit(input: unknown): AuditAnswer {
  const { op, ...given } = readInput(z.looseObject({ op: z.string({ error: nameIt }) }), input)
  const found = operations.find((one) => one.op === op)
  if (!found) throw new InputError('unknown-op', 'op', `op: "${op}" is not in the list; write one of ${names}.`)
  const { fields, run }: AuditOperation = found
  const words: Said = auditWords[found.op]
  const answer = run(readInput(fields, given) as never)
  return { op, sentence: words.sentence, method: words.method, answer }
}

const names = operations.map(({ op }) => op).join(', ')
const nameIt = `name the calculation: one of ${names}.`

type Said = { readonly sentence: string; readonly method: string; readonly fields: Readonly<Record<string, string>> }

/** Every calculation with what it takes, for `audit --list`. */
export function auditList() {
  return operations.map(({ op, fields }) => {
    const words: Said = auditWords[op satisfies Op]
    return {
      op,
      sentence: words.sentence,
      method: words.method,
      fields: Object.entries(fields.shape).map(([name, schema]) => ({
        name,
        optional: (schema as z.ZodType).safeParse(undefined).success,
        says: words.fields[name] ?? '',
      })),
    }
  })
}
