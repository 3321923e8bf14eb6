import type { z } from 'zod'
import type { KindName } from '#core/journal/fold.ts'
import { kindNamed } from '#core/journal/fold.ts'
import type { FormArrangement, SectionArrangement } from './arrangement.ts'
import type { Field } from './field.ts'
import { fieldsOf } from './field-of.ts'

/** The sections of a form with the fields that stand in them, and every field of the body as a tree. */
export type Form<Name extends KindName = KindName> = {
  readonly kind: Name
  readonly arrangement: FormArrangement
  readonly fields: readonly Field[]
  readonly sections: readonly Section[]
}

export type Section = {
  readonly id: string
  readonly fields: readonly Field[]
  readonly pair: boolean
  readonly running: SectionArrangement['running']
  readonly normal: SectionArrangement['normal']
}

/**
 * The form of a kind: controls from its schema, order and what the schema cannot say from its arrangement. A field
 * that the arrangement forgets, or one that the schema does not know, is a bug and throws.
 *
 * @example formOf(noteForm).sections[0].fields[0].control.kind // 'long-text'
 */
export function formOf<const Arrangement extends FormArrangement>(arrangement: Arrangement): Form<Arrangement['kind']> {
  const kind = kindNamed(arrangement.kind)
  if (!kind) throw new Error(`No kind is named ${arrangement.kind}.`)
  const fields = fieldsOf('', kind.body as z.ZodType as z.ZodObject, arrangement.fields ?? {})
  const sections = arrangement.sections.map(({ id, fields: paths, pair, running, normal }) => ({
    id,
    fields: paths.map((path) => fieldAt(fields, path, arrangement.kind)),
    pair: pair === true,
    running,
    normal,
  }))
  for (const path of notArranged(fields, new Set(arrangement.sections.flatMap((section) => section.fields)))) {
    throw new Error(`The form of ${arrangement.kind} asks nowhere for "${path}".`)
  }
  return { kind: arrangement.kind, arrangement, fields, sections }
}

function fieldAt(fields: readonly Field[], path: string, kind: KindName): Field {
  for (const field of fields) {
    if (field.at === path) return field
    if (field.control.kind === 'group' && path.startsWith(`${field.at}.`)) {
      return fieldAt(field.control.fields, path, kind)
    }
  }
  throw new Error(`The form of ${kind} asks for "${path}", which its schema does not hold.`)
}

/** Fields that no section shows: neither they nor the group around them, nor every field inside them. */
function notArranged(fields: readonly Field[], shown: ReadonlySet<string>): string[] {
  return fields.flatMap((field) => {
    const { kind } = field.control
    if (shown.has(field.at) || kind === 'answered-by' || kind === 'plan-fingerprint') return []
    return field.control.kind === 'group' && !field.nullable ? notArranged(field.control.fields, shown) : [field.at]
  })
}
