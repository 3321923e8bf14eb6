import type { KindName } from '#core/journal/fold.ts'

/** What a person reads at one field. */
export type FieldWords = {
  readonly label: string
  readonly help?: string
  /** One word or phrase per option of the schema. */
  readonly options?: Readonly<Record<string, string>>
  /** What choosing "nothing" says: "not done", "none", "nobody available". */
  readonly none?: string
  /** What would be right, when the schema refuses what was typed. */
  readonly wrong?: string
  /** Of a list: the button for one more, and what one of them is called, with the place {number}. */
  readonly add?: string
  readonly item?: string
  /** Of an optional group: the button that opens it. */
  readonly open?: string
}

/** The words of one form. Fields stand under their dotted path; `side.` stands for LEFT and RIGHT alike. */
export type FormWords = {
  readonly kind: KindName
  /** One line: what this entry is for. */
  readonly purpose: string
  readonly sections: Readonly<Record<string, string>>
  /** Of a section that was looked at and is normal: one touch, which says everything that it answers. */
  readonly normal?: Readonly<Record<string, string>>
  readonly fields: Readonly<Record<string, FieldWords>>
  /** A group that stands in several forms: where it stands here, and its words, under the path inside it ('' itself). */
  readonly groups?: Readonly<Record<string, Readonly<Record<string, FieldWords>>>>
}

/**
 * The words of a field; undefined when nobody wrote them, which the content test does not let pass.
 *
 * @example wordsAt(baselineWords, 'LEFT.blink')?.label // 'Blink'
 */
export function wordsAt(words: Pick<FormWords, 'fields' | 'groups'>, at: string): FieldWords | undefined {
  const own = words.fields[at] ?? words.fields[at.replace(/^(LEFT|RIGHT)\b/, 'side')]
  if (own) return own
  const group = Object.entries(words.groups ?? {}).find(([place]) => at === place || at.startsWith(`${place}.`))
  return group?.[1][at.slice(group[0].length + 1)]
}

/**
 * The word of an option: the field's own, otherwise the one that is the same on every form.
 *
 * @example optionWord(undefined, { 'not-assessed': 'not assessed' }, 'not-assessed') // 'not assessed'
 */
export function optionWord(
  words: Pick<FieldWords, 'options'> | undefined,
  shared: Readonly<Record<string, string>>,
  option: string,
): string | undefined {
  return words?.options?.[option] ?? shared[option]
}
