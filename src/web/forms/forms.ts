import { forms as arrangements } from '#content/forms/index.ts'
import { formWords } from '#content/wording/app-forms/index.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import type { Chapter } from '#core/chapters/chapter.ts'
import type { FormArrangement } from '#core/forms/arrangement.ts'
import type { Form } from '#core/forms/form.ts'
import type { FormWords } from '#core/forms/words.ts'
import { type KindName, kindNamed } from '#core/journal/fold.ts'
import { formOfKind } from '#documents/case/form-of-kind.ts'

/** The form of a kind, made once. */
export function formFor<Name extends KindName>(kind: Name): Form<Name> {
  const form = formOfKind(kind)
  if (!form) throw new Error(`No form asks for a ${kind}.`)
  return form as Form<Name>
}

export function wordsFor(kind: KindName): FormWords {
  const words = formWords.find((one) => one.kind === kind)
  if (!words) throw new Error(`No words are written for the form of ${kind}.`)
  return words
}

function arrangementOf(kind: KindName): FormArrangement {
  const arrangement = arrangements.find((one) => one.kind === kind)
  if (!arrangement) throw new Error(`No form asks for a ${kind}.`)
  return arrangement
}

/** What a list of "write an entry" needs to know of one kind. */
export type EntryKind = {
  readonly kind: KindName
  readonly title: string
  readonly purpose: string
  readonly place: FormArrangement['place']
  readonly chapters: readonly Chapter[]
  readonly writtenBy: FormArrangement['writtenBy']
  readonly amendable: boolean
  readonly subjects: readonly string[]
}

export function entryKind(kind: KindName): EntryKind {
  const { place, chapters, writtenBy, amendable } = arrangementOf(kind)
  const subjects = kindNamed(kind)?.subjects ?? []
  return {
    kind,
    title: kindsInEnglish[kind],
    purpose: wordsFor(kind).purpose,
    place,
    chapters,
    writtenBy,
    amendable,
    subjects,
  }
}

/**
 * The kinds that are written in a chapter, or in the settings of the clinic, or to put something right.
 *
 * @example entryKindsOf('Choice').map(({ kind }) => kind) // ['choice', 'note', 'photograph', …]
 */
export function entryKindsOf(where: Chapter | 'clinic' | 'correction'): EntryKind[] {
  const all: readonly FormArrangement[] = arrangements
  return all
    .filter(({ place, chapters }) =>
      place === 'case' ? (chapters as readonly string[]).includes(where) : place === where,
    )
    .map(({ kind }) => entryKind(kind))
}
