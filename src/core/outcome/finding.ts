/**
 * What a check found. `block`: cannot go on. `confirm`: a reason and a second person. `note`: for the eye only.
 * The sentence a person reads comes from content/wording, filled from `about`.
 */
export type Level = 'block' | 'confirm' | 'note'

export type Finding<Code extends string = string> = {
  readonly code: Code
  readonly level: Level
  /** Values for the sentence: names, amounts, dates, already as text. */
  readonly about: Readonly<Record<string, string>>
  /** Source ids; content resolves them to citations. */
  readonly sources: readonly string[]
}

const rank: Record<Level, number> = { block: 0, confirm: 1, note: 2 }

/** Worst first, otherwise in the order found. */
export function bySeverity<F extends Finding>(findings: readonly F[]): F[] {
  return [...findings].sort((a, b) => rank[a.level] - rank[b.level])
}

/** Fills `{name}` places of a sentence; a place without a value is a bug. */
export function fill(template: string, about: Readonly<Record<string, string>>): string {
  return template.replaceAll(/\{(\w+)\}/g, (_, key: string) => {
    const value = about[key]
    if (value === undefined) throw new Error(`The sentence "${template}" wants "${key}".`)
    return value
  })
}
