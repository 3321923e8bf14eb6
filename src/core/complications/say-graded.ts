import { fill } from '#core/outcome/finding.ts'
import type { Graded } from './grade.ts'
import type { Scheme } from './scheme.ts'
import type { LastingFunction, TroubleClass, TroubleNeed } from './trouble-codes.ts'

/** The words of content for a grade and the reason for it. */
export type GradeWording = {
  readonly needs: Readonly<Record<TroubleNeed, string>>
  readonly lasting: Readonly<Record<LastingFunction, string>>
  readonly classes: Readonly<Record<TroubleClass | 'not-decided', string>>
  readonly between: string
  readonly unknown: string
  readonly notOne: string
  readonly why: Readonly<
    Record<
      | 'need'
      | 'lasting'
      | 'person'
      | 'lastingOpen'
      | 'between'
      | 'not-a-complication'
      | 'need-not-known'
      | 'before-not-known'
      | 'not-decided'
      | 'text-not-held',
      string
    >
  >
}

type Of = {
  readonly needed: TroubleNeed
  readonly lasting: LastingFunction
  readonly read: { readonly term: string } | null
}

/**
 * The grade in a word or two, as it stands beside the name of its scheme.
 *
 * @example sayGrade(gradeBy(scheme, trouble), troubleInEnglish) // 'between minor and major'
 */
export function sayGrade(graded: Graded, words: GradeWording): string {
  switch (graded.kind) {
    case 'graded':
      return graded.grade
    case 'between':
      return fill(words.between, { low: graded.grades[0] ?? '', high: graded.grades.at(-1) ?? '' })
    case 'unknown':
      return words.unknown
    case 'not-a-complication':
      return fill(words.notOne, { class: words.classes[graded.class] })
  }
}

/**
 * Why it is that grade, or why there is none and what would make one possible.
 *
 * @example sayWhyGraded(graded, scheme, trouble, troubleInEnglish)[0] // 'Needed: nothing.'
 */
export function sayWhyGraded(graded: Graded, scheme: Scheme, of: Of, words: GradeWording): string[] {
  const { why } = words
  const need = { need: words.needs[of.needed] }
  switch (graded.kind) {
    case 'graded': {
      const because =
        graded.by === 'need'
          ? fill(why.need, need)
          : graded.by === 'lasting'
            ? fill(why.lasting, { lasting: words.lasting[of.lasting] })
            : fill(why.person, { term: of.read?.term ?? '' })
      return [
        because,
        sentence(labelOf(scheme, graded.grade)),
        ...(graded.open === null ? [] : [fill(why.lastingOpen, { grade: graded.open })]),
      ]
    }
    case 'between':
      return [fill(why.between, need), ...graded.grades.map((one) => sentence(labelOf(scheme, one)))]
    case 'unknown':
      return [why[graded.because]]
    case 'not-a-complication':
      return [fill(why['not-a-complication'], { class: words.classes[graded.class] })]
  }
}

function labelOf({ grades }: Scheme, one: string): string {
  return grades.find(({ grade }) => grade === one)?.label ?? one
}

function sentence(label: string): string {
  return `${label.charAt(0).toUpperCase()}${label.slice(1)}.`
}
