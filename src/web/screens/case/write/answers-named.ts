import type { Draft } from '#core/forms/draft.ts'
import type { Form } from '#core/forms/form.ts'

/** What an address may already answer: `answer.event=wound-gap`. */
const prefix = 'answer.'

/**
 * A new draft with what the link that led to it already knows. Only what still stands empty is filled in, and a person
 * sees it before it is kept.
 *
 * @example withAnswersNamed(emptyDraft(form), form, new URLSearchParams('answer.event=seroma'))
 */
export function withAnswersNamed(draft: Draft, form: Pick<Form, 'fields'>, query: URLSearchParams): Draft {
  if (typeof draft !== 'object' || draft === null || Array.isArray(draft)) return draft
  const body = draft as Readonly<Record<string, Draft>>
  const named = form.fields.flatMap(({ name }) => {
    const value = query.get(`${prefix}${name}`)
    return value !== null && body[name] === '' ? [[name, value] as const] : []
  })
  return { ...body, ...Object.fromEntries(named) }
}
