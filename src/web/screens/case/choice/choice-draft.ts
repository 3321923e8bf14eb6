import type { OptionId } from '#core/choice/option.ts'
import type { Weighed } from '#core/choice/weigh.ts'
import type { BodyOf } from '#core/journal/fold.ts'

type Choice = BodyOf<'choice'>
export type Answer = Choice['options'][number]['answer']
export type Session = Choice['session']

/** A choice that is being written. Nothing is answered beforehand. */
export type ChoiceDraft = {
  readonly answers: Readonly<Partial<Record<OptionId, Answer>>>
  readonly because: Readonly<Partial<Record<OptionId, string>>>
  readonly session: Session | null
  /** One reason on each line. */
  readonly for: string
  readonly against: string
  readonly missing: string
}

export const emptyChoice: ChoiceDraft = { answers: {}, because: {}, session: null, for: '', against: '', missing: '' }

/** The lines of an option put under what is written already, each once. */
export function takenOver(
  draft: ChoiceDraft,
  { for: pro, against, asked, lacking }: Weighed,
  say: SayLacking,
): ChoiceDraft {
  const texts = (some: readonly { readonly text: string }[]) => some.map(({ text }) => text)
  return {
    ...draft,
    for: joined(draft.for, texts(pro)),
    against: joined(draft.against, texts(against)),
    missing: joined(draft.missing, [...texts(asked), ...lacking.map(({ fact }) => say[fact])]),
  }
}

export type SayLacking = Readonly<Record<Weighed['lacking'][number]['fact'], string>>

function joined(written: string, lines: readonly string[]): string {
  return [...new Set([...linesIn(written), ...lines])].join('\n')
}

export function linesIn(text: string): string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
}

/** The entry of a draft in which every answer has its reason; null while something is open. */
export function choiceOf(draft: ChoiceDraft, order: readonly OptionId[]): Choice | null {
  const options = order.flatMap((option) => {
    const answer = draft.answers[option]
    return answer ? [{ option, answer, because: draft.because[option]?.trim() ?? '' }] : []
  })
  if (options.length === 0 || draft.session === null || options.some(({ because }) => because === '')) return null
  return {
    options,
    session: draft.session,
    for: linesIn(draft.for),
    against: linesIn(draft.against),
    missing: linesIn(draft.missing),
  }
}
