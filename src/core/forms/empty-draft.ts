import type { Json } from '#core/journal/canonical.ts'
import type { Draft } from './draft.ts'
import type { Field } from './field.ts'
import type { Form } from './form.ts'

/**
 * A draft in which nothing is answered: no option is chosen for anybody.
 *
 * @example emptyDraft(weightForm) // { weight: '', how: '', bodyCondition: '' }
 */
export function emptyDraft(form: Pick<Form, 'fields'>): Draft {
  return emptyGroup(form.fields)
}

/** A group, or one more group of a list, before anything is answered. */
export function emptyGroup(fields: readonly Field[]): Draft {
  const asked = fields.filter(({ control }) => control.kind !== 'answered-by')
  return Object.fromEntries(asked.map((field) => [field.name, emptyField(field)]))
}

function emptyField({ control, blank, nullable }: Field): Json {
  switch (control.kind) {
    case 'group':
      return nullable ? '' : emptyGroup(control.fields)
    case 'list':
      if (blank === 'none') return ''
      return Array.from({ length: control.least }, () => emptyGroup(control.fields))
    case 'many':
    case 'entries':
    case 'many-from-register':
      return blank === 'none' ? '' : []
    case 'rows':
      return { rows: Object.fromEntries(control.rows.map((row) => [row, ''])) }
    case 'details':
    case 'subject':
      return {}
    case 'tick':
      return false
    default:
      return ''
  }
}
