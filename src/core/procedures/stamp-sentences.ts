import { fill } from '#core/outcome/finding.ts'
import type { Checkpoint } from './procedure.ts'

/** What a theatre stamp says: done with coded answers, or not done with the reason in words. */
export type StampAnswer = {
  readonly answer: 'done' | 'not-done'
  readonly detail: Readonly<Record<string, string>>
  readonly text: string | null
}

/**
 * The sentences an operation report drafts itself from, for one stamped checkpoint. An answer outside the list is
 * quoted as it stands, never dropped; words of the surgeon come last.
 *
 * @example stampSentences(k3, { answer: 'done', detail: { nerve: 'seen', state: 'free' }, text: null })
 * // ['The facial nerve was seen.', 'It lay free.']
 */
export function stampSentences(checkpoint: Checkpoint, stamp: StampAnswer): string[] {
  if (stamp.answer === 'not-done') {
    return [fill(checkpoint.notDone, { because: (stamp.text ?? 'no reason was written down').replace(/[.\s]+$/, '') })]
  }
  const known = new Set(checkpoint.details.map((detail) => detail.id))
  const said = checkpoint.details.flatMap((detail) => {
    const answer = stamp.detail[detail.id]
    if (answer === undefined) return []
    if (detail.kind !== 'coded') return [fill(detail.sentence, { answer })]
    return [detail.answers[answer] ?? `${detail.asks} “${answer}”.`]
  })
  const others = Object.keys(stamp.detail)
    .filter((id) => !known.has(id))
    .sort()
    .map((id) => `${id}: “${stamp.detail[id]}”.`)
  const all = [...said, ...others]
  const words = stamp.text === null ? [] : [stamp.text]
  return all.length === 0 ? [checkpoint.done, ...words] : [...all, ...words]
}
