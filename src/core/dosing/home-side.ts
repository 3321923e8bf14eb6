import { otherSide, type Side, sides } from '#core/animal/species.ts'
import { lastBlinkOf } from '#core/home/last-blink.ts'
import type { HomeMedicine } from '#core/home/medicine-times.ts'
import type { Case } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { isOfEar, operationsOf } from '#core/owed/operations.ts'
import { compare, type Quantity } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import { isForEye } from './home-known.ts'
import type { DosingRules } from './rules.ts'

/**
 * A medicine for an eye or an ear whose side is neither the side of an operation nor one of which an entry finds
 * something wrong, or whose side nobody wrote. A side is never guessed: a person changes or confirms it.
 */
export function judgeSide(
  medicine: HomeMedicine,
  theCase: Case,
  rules: Pick<DosingRules, 'lowTears' | 'withoutNumber'>,
): DoseFinding[] {
  const { side, label } = medicine
  const isEye = isForEye(medicine)
  const part = isEye ? 'eye' : 'ear'
  const said = (code: DoseFinding['code'], about: DoseFinding['about']) => [
    found('confirm', code, { drug: label, ...about }, [rules.withoutNumber]),
  ]
  if (side === null) return isEye ? said('home-side-missing', { part }) : []
  const operations = operationsOf({ theCase })
  const operated = sides.filter((one) => operations.some((done) => done.side === one && done.done))
  if (operated.includes(side)) return []
  const hasFinding = isEye ? eyeHasFinding(theCase, side, rules.lowTears.value) : earHasFinding(theCase, side)
  if (hasFinding) return []
  const other = otherSide(side)
  const blink = lastBlinkOf(theCase, other)
  if (isEye && (blink === 'weak' || blink === 'absent'))
    return said('home-eye-other', { side, other, blink: blink === 'weak' ? 'weakly' : 'not at all' })
  return operated.length === 0 ? [] : said('home-side-other', { side, part, operated: operated.join(', ') })
}

/** Few tears, a stained cornea, a weak or missing blink: at the baseline, at a check or in the ward. */
function eyeHasFinding(theCase: Case, side: Side, lowTears: Quantity<'mm/min'>): boolean {
  const rounds = theCase.live('ward-score').map(({ body }) => body[side].blink)
  const looks = [
    ...theCase.live('baseline').map(({ body }) => body[side]),
    ...theCase
      .live('check')
      .filter((line) => isOfEar(line, side))
      .map(({ body }) => body),
  ]
  return (
    rounds.some(isPoor) ||
    looks.some(
      ({ blink, fluorescein, tearTest }) =>
        isPoor(blink) ||
        fluorescein === 'positive' ||
        (tearTest !== null && compare(fromStored(tearTest), lowTears) < 0),
    )
  )
}

function isPoor(blink: 'normal' | 'weak' | 'absent' | 'not-assessed'): boolean {
  return blink === 'weak' || blink === 'absent'
}

const unremarkable: ReadonlySet<string> = new Set(['none', 'not-assessed', 'could-not-see'])

function earHasFinding(theCase: Case, side: Side): boolean {
  return theCase
    .live('ear-findings')
    .filter((line) => isOfEar(line, side))
    .some(
      ({ body: { painOnPressing, swelling, drainingTract, mass, discharge, stenosis, drum, otis3 } }) =>
        [painOnPressing, swelling, drainingTract, mass].includes('yes') ||
        !unremarkable.has(discharge) ||
        !unremarkable.has(stenosis) ||
        drum === 'ruptured' ||
        Object.values(otis3).some((sign) => (sign ?? 0) > 0),
    )
}
