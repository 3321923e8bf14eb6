import type { Json } from '#core/journal/canonical.ts'

/**
 * What stands in a form while it is being filled in: plain JSON, so that it can be kept through a crash.
 *
 * `''` (or a missing key) is "not answered yet"; `null` is an answer: "not done", "none", "not assessed" was chosen.
 * Groups are records, lists are arrays, every other field is the text as it was typed.
 */
export type Draft = Json

/**
 * A text that alone would not be read back as the value it stands for: a clock's time with its seconds, another zone,
 * digits as a machine wrote them. As long as nobody types over it, the value stays exactly as it stood.
 */
export type Kept = { readonly text: string; readonly stands: Json }

export function isKept(draft: Draft | undefined): draft is Kept {
  return isRecord(draft) && typeof draft.text === 'string' && 'stands' in draft && Object.keys(draft).length === 2
}

export function isRecord(draft: Draft | undefined): draft is { readonly [key: string]: Json } {
  return typeof draft === 'object' && draft !== null && !Array.isArray(draft)
}

/**
 * The text of a field as a person sees it.
 *
 * @example textIn({ text: '5 March 2026, 09:40', stands: moment }) // '5 March 2026, 09:40'
 */
export function textIn(draft: Draft | undefined): string {
  if (typeof draft === 'string') return draft
  return isKept(draft) ? draft.text : ''
}

/**
 * The part of a draft at a dotted path; undefined when nothing stands there yet.
 *
 * @example draftAt({ values: [{ what: 'mean' }] }, 'values.0.what') // 'mean'
 */
export function draftAt(draft: Draft | undefined, path: string): Draft | undefined {
  let part = draft
  for (const step of path === '' ? [] : path.split('.')) {
    if (Array.isArray(part)) part = part[Number(step)]
    else if (isRecord(part)) part = part[step]
    else return undefined
  }
  return part
}

/** The same draft with another part at the path. Example: `withDraftAt({}, 'pain.score', '6')` is `{ pain: { score: '6' } }`. */
export function withDraftAt(draft: Draft | undefined, path: string, part: Draft): Draft {
  if (path === '') return part
  const [step = '', ...rest] = path.split('.')
  if (Array.isArray(draft)) {
    const items = [...draft]
    items[Number(step)] = withDraftAt(items[Number(step)], rest.join('.'), part)
    return items
  }
  const record = isRecord(draft) ? draft : {}
  return { ...record, [step]: withDraftAt(record[step], rest.join('.'), part) }
}

/**
 * The same draft with another answer of a group, and without what belonged to the answer before.
 *
 * @example withAnswer({ checkpoint: 'k1', detail: { cut: 't-shaped' } }, 'checkpoint', 'k2', 'detail')
 */
export function withAnswer(draft: Draft, path: string, part: Draft, empties: string | null): Draft {
  const answered = withDraftAt(draft, path, part)
  if (empties === null || draftAt(draft, path) === part) return answered
  const other = [...path.split('.').slice(0, -1), empties].join('.')
  return withDraftAt(answered, other, isRecord(draftAt(draft, other)) ? {} : '')
}
