import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { formsInEnglish } from '#content/wording/app-form-words.ts'
import type { FieldRefusal } from '#core/forms/refusal.ts'
import { type FormWords, wordsAt } from '#core/forms/words.ts'
import { fill } from '#core/outcome/finding.ts'

/** What would be right at one field, in words. */
export function sayRefusal({ because, at, about }: FieldRefusal, words: FormWords): string {
  const own = because === 'does-not-fit' ? wordsAt(words, at)?.wrong : undefined
  return own ?? fill(formRefusals[because], about)
}

/** The same with the name of the field, and of its ear or place in a list, for the summary above the form. */
export function lineOfRefusal(refusal: FieldRefusal, words: FormWords, side: string | null): string {
  const where = [...(side ? [side] : []), ...placesOf(refusal, words)]
  const { count } = refusal.about
  const { one, many } = formsInEnglish.errors.rowsOpen
  const rows = refusal.because === 'row-unanswered' && count !== undefined
  const sentence = rows ? (count === '1' ? one : fill(many, { count })) : sayRefusal(refusal, words)
  const about = { label: labelOf(refusal, words), sentence, where: where.join(', ') }
  return fill(where.length > 0 ? formsInEnglish.errors.lineAt : formsInEnglish.errors.line, about)
}

function labelOf({ at, path }: FieldRefusal, words: FormWords): string {
  return wordsAt(words, at)?.label ?? wordsAt(words, at.split('.').slice(0, -1).join('.'))?.label ?? path
}

/** Open rows of one table are one line of the summary; the line leads to the first of them. */
export function summed(refusals: readonly FieldRefusal[]): FieldRefusal[] {
  const isRow = ({ because }: FieldRefusal) => because === 'row-unanswered'
  return refusals.flatMap((refusal, index) => {
    if (!isRow(refusal)) return [refusal]
    const sameTable = (one: FieldRefusal) => isRow(one) && one.at === refusal.at
    if (refusals.findIndex(sameTable) !== index) return []
    return [{ ...refusal, about: { count: String(refusals.filter(sameTable).length) } }]
  })
}

function placesOf({ path }: FieldRefusal, words: FormWords): string[] {
  const steps = path.split('.')
  return steps.flatMap((step, index) => {
    if (step === 'LEFT' || step === 'RIGHT') return [step]
    if (!/^\d+$/.test(step)) return []
    const list = steps.slice(0, index).filter((one) => !/^\d+$/.test(one))
    const item = wordsAt(words, list.join('.'))?.item
    return item ? [fill(item, { number: String(Number(step) + 1) })] : []
  })
}
