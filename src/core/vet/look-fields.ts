import type { Field } from '#core/forms/field.ts'
import type { Form } from '#core/forms/form.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { nothingAssessed } from '#core/journal/nothing-assessed.ts'

/** What the short form does not ask: who looked is known, the block is long over, and words are asked once for all. */
const unasked: ReadonlySet<string> = new Set(['seenBy', 'possibleBlockEffect', 'text'])

/** One coded question of a look: chosen from words, a number in one unit, or one touch for several that were normal. */
export type LookField =
  | { readonly kind: 'words'; readonly name: string; readonly options: readonly string[] }
  | { readonly kind: 'number'; readonly name: string; readonly unit: string }
  | { readonly kind: 'normal'; readonly name: string; readonly answers: Readonly<Record<string, string>> }

/**
 * The coded questions of a look at an ear that somebody elsewhere can answer, in the order of our own form: the same
 * questions and the same answers.
 *
 * @example lookFields(formOf(checkForm)).map(({ name }) => name) // ['wound', 'woundNeeded', …]
 */
export function lookFields(form: Form<'check'>): LookField[] {
  return form.sections.flatMap(({ id, fields, normal }): LookField[] => [
    ...(normal ? [{ kind: 'normal' as const, name: `normal-${id}`, answers: normal }] : []),
    ...fields.flatMap((field) => (unasked.has(field.name) ? [] : lookField(field))),
  ])
}

function lookField({ name, control, nullable }: Field): LookField[] {
  if ((control.kind === 'choice' || control.kind === 'select') && control.options.includes(notAssessed))
    return [{ kind: 'words', name, options: control.options }]
  const [unit] = control.kind === 'quantity' ? control.units : []
  return unit !== undefined && nullable ? [{ kind: 'number', name, unit }] : []
}

export const notAssessed = 'not-assessed'

/** A look at which nothing was assessed, by the referring vet. */
export const nothingSeen: BodyOf<'check'> = { seenBy: 'referring-vet', ...nothingAssessed }
