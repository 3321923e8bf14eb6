import { lateSignRules } from '#content/follow-up/late-signs.ts'
import { toldOfFile } from '#core/late/told-of-file.ts'
import { isOpen, type ToldSign, toldSignsOf } from '#core/late/told-signs.ts'
import type { Wanted } from '../../../late/use-index-ears.ts'
import { useCaseView } from '../case-view.ts'

/**
 * The late signs told in the file that still wait to be put to an ear. Where a late event of this file stands already,
 * what nobody answered is its course.
 */
export function useOpenSigns(): readonly ToldSign[] {
  const { file } = useCaseView()
  const known = file.theCase.live('late-event').length > 0
  return toldSignsOf(file.theCase, lateSignRules).filter((sign) => isOpen(sign) && !(known && sign.answer === null))
}

/** What the server is asked about a sign of this file. */
export function useWanted(sign: ToldSign | undefined): Wanted | null {
  const { file } = useCaseView()
  return sign ? { ...toldOfFile(file, sign), stream: file.stream } : null
}

/** What was said, as it was said. */
export function saidIn({ said }: ToldSign): string {
  return said
}

/** The signs of it, as they were answered or as they are heard now. */
export function signsIn({ answer, signs }: ToldSign): ToldSign['signs'] {
  return answer?.body.signs ?? signs
}
