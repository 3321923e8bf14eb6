import { cultureInEnglish } from '#content/wording/app-culture.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'

/** What a report says of growth, in a few words. */
export function sayGrowth({ growth, isolates }: BodyOf<'specimen-result'>): string {
  const organisms = isolates.map(({ organism }) => organism).join(', ')
  return fill(cultureInEnglish.list.growth[growth], { organisms })
}
