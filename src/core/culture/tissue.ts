import type { Species } from '#core/animal/species.ts'
import type { Chapter } from '#core/chapters/chapter.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf } from '#core/journal/fold.ts'

type Tissue = NonNullable<BodyOf<'specimen-result'>['tissue']>

/** What a pathologist may find in an ear, and what publications say of it. */
export type TissueDiagnosis = {
  readonly id: string
  /** As it is printed: `ceruminous gland adenocarcinoma`. */
  readonly name: string
  /** `open`: the report itself could not say. */
  readonly behaviour: 'malignant' | 'benign' | 'not-a-tumour' | 'open'
  readonly said: readonly { readonly species: Species | 'both'; readonly text: Sourced<string> }[]
}

/** What another chapter has to take up again. */
export type ChapterChange = { readonly chapter: Chapter; readonly text: Sourced<string> }

export type TissueFacts = {
  readonly diagnoses: readonly TissueDiagnosis[]
  readonly margins: Readonly<Record<Tissue['margins'], Sourced<string> | null>>
  /** Before an operation, and after it, of what is malignant. */
  readonly malignant: { readonly before: readonly ChapterChange[]; readonly after: readonly ChapterChange[] }
  /** The edge is not free, whatever it is. */
  readonly edge: readonly ChapterChange[]
  readonly notRead: Sourced<string>
}

export type TissueSaid = {
  readonly diagnosis: TissueDiagnosis | null
  readonly sentences: readonly Sourced<string>[]
  readonly changes: readonly ChapterChange[]
}

/**
 * What publications say of a tissue report, for this species, and which chapters it changes. A diagnosis that nobody
 * has read into one of ours says so and changes what a tumour would: it is never taken for harmless.
 *
 * @example tissueSaid(tissue, { species: 'cat', operated: true }, tissueFacts).changes[0].chapter // 'Year'
 */
export function tissueSaid(
  tissue: Tissue,
  about: { readonly species: Species; readonly operated: boolean },
  facts: TissueFacts,
): TissueSaid {
  const diagnosis = facts.diagnoses.find(({ id }) => id === tissue.tumour) ?? null
  const said = (diagnosis?.said ?? []).filter(({ species }) => species === 'both' || species === about.species)
  const margin = facts.margins[tissue.margins]
  const harmless = diagnosis?.behaviour === 'benign' || diagnosis?.behaviour === 'not-a-tumour'
  // Of what is no tumour nobody asks whether the edge is free.
  const edge = diagnosis?.behaviour === 'not-a-tumour' ? null : margin
  return {
    diagnosis,
    sentences: [...(diagnosis ? [] : [facts.notRead]), ...said.map(({ text }) => text), ...(edge ? [edge] : [])],
    changes: [
      ...(harmless ? [] : facts.malignant[about.operated ? 'after' : 'before']),
      ...(tissue.margins === 'involved' && edge ? facts.edge : []),
    ],
  }
}
