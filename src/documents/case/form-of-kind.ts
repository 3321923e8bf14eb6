import { forms } from '#content/forms/index.ts'
import { type Form, formOf } from '#core/forms/form.ts'

const made = new Map<string, Form | null>()

/** The form of a kind of entry, made once; null for a kind that no form asks for, as one of a newer version. */
export function formOfKind(kind: string): Form | null {
  const known = made.get(kind)
  if (known !== undefined) return known
  const arrangement = forms.find((one) => one.kind === kind)
  const form = arrangement ? formOf(arrangement) : null
  made.set(kind, form)
  return form
}
