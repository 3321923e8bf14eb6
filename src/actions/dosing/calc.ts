import { z } from 'zod'
import { bodySurface } from '#content/protocols/body-surface.ts'
import { calcFormulas } from '#content/protocols/calc-formulas.ts'
import { labelBands } from '#content/protocols/label-bands.ts'
import { patchSizes } from '#content/protocols/patch-sizes.ts'
import { sources } from '#content/sources/index.ts'
import { calcRefusals, calcSentences } from '#content/wording/calc.ts'
import type { CalcFacts, CalcRefusal } from '#core/dosing/calc/operation.ts'
import { isOperationName, nearestNames, operationNames, operations } from '#core/dosing/calc/registry.ts'
import { type Cited, cite } from '#core/evidence/cite.ts'
import { fill } from '#core/outcome/finding.ts'
import { InputError, readInput } from '../input.ts'

const facts: CalcFacts = { bodySurface, labelBands, patchSizes }

export type CalcAnswer = {
  readonly op: string
  /** Full precision; null when the formula gives no number, and then `refusal` says why. */
  readonly value: number | null
  readonly unit: string
  readonly formula: string
  readonly detail?: string
  readonly refusal?: { readonly code: CalcRefusal['because']; readonly field: string; readonly text: string }
  readonly sources: readonly Cited[]
}

/**
 * One formula with bare numbers whose unit is in the field's name.
 *
 * @example calc({ op: 'volume_from_mass', mass_mg: 24, stock_mg_mL: 10 }) // { value: 2.4, unit: 'mL', … }
 */
export function calc(input: unknown): CalcAnswer {
  const { op, ...given } = readInput(z.looseObject({ op: z.string({ error: 'name the formula' }) }), input)
  if (!isOperationName(op)) {
    const near = nearestNames(op).join(', ')
    throw new InputError('unknown-op', 'op', `op: "${op}" is not a formula of the list; the nearest are ${near}.`)
  }
  const operation = operations[op]
  const outcome = operation.run(readFields(op, given), facts)
  const cited = cite(calcFormulas[op], sources)
  if (outcome.kind === 'refusal') {
    const { because: code, field, about } = outcome.refusal
    const refusal = { code, field, text: fill(calcRefusals[code], about) }
    return { op, value: null, unit: operation.units[0] ?? '', formula: operation.formula, refusal, sources: cited }
  }
  const { value, unit, formula, detail } = outcome.answer
  return {
    op,
    value: Number(value.toString()),
    unit,
    formula: formula ?? operation.formula,
    ...(detail !== undefined && { detail }),
    sources: cited,
  }
}

/** Reads the fields of one formula; an unknown or a missing one is named. */
function readFields(op: keyof typeof operations, given: Record<string, unknown>): Record<string, unknown> {
  const { fields } = operations[op]
  const names = Object.keys(fields)
  const unknown = Object.keys(given).find((name) => !Object.hasOwn(fields, name))
  if (unknown !== undefined) {
    const message = `${unknown}: "${unknown}" is not a field of ${op}; its fields are ${names.join(', ')}.`
    throw new InputError('unknown-field', unknown, message)
  }
  for (const [name, field] of Object.entries(fields)) {
    if (field.optional || given[name] !== undefined) continue
    throw new InputError('missing-field', name, `${name}: ${op} needs ${name} (${field.unit}).`)
  }
  const shape = Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, field.schema]))
  return readInput(z.object(shape), given)
}

/** Every formula with its fields and units, for `calc --list`. */
export function calcList() {
  return operationNames.map((op) => {
    const { fields, formula, units } = operations[op]
    return {
      op,
      sentence: calcSentences[op],
      formula,
      units,
      fields: Object.entries(fields).map(([name, { unit, optional, choices }]) => ({
        name,
        unit,
        optional,
        ...(choices && { choices }),
      })),
      sources: cite(calcFormulas[op], sources),
    }
  })
}
