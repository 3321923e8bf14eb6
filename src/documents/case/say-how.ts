import { howInEnglish } from '#content/wording/app-how.ts'
import type { HowGiven } from '#core/journal/how-given.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayUnit } from './say-quantity.ts'

const words = howInEnglish.said

/**
 * How a line is given, one phrase for each thing that is said; nothing where nothing is.
 *
 * @example sayHow(line.how) // ['from a syringe of 50 mL at 5 mL/h', 'loading dose 0.5 mg/kg']
 */
export function sayHow(how: HowGiven | null): string[] {
  if (how === null) return []
  const { formulation, over, set, mixed, container, loading, tablet, every, days, mark, xylitolFree } = how
  return [
    ...(formulation === null ? [] : [formulation]),
    ...(container ? [sayContainer(container)] : []),
    ...(loading ? [sayLoading(loading)] : []),
    ...(over ? [fill(words.over, { over: sayUnit(over) })] : []),
    ...(set ? [fill(words.set, { set: sayUnit(set) })] : []),
    ...(mixed
      ? [fill(words.mixed, { product: sayUnit(mixed.product), from: sayUnit(mixed.from), final: sayUnit(mixed.final) })]
      : []),
    ...(tablet ? [fill(words.tablet, { strength: sayUnit(tablet.strength) })] : []),
    ...(every ? [fill(words.every, { every: sayUnit(every) })] : []),
    ...(days === null ? [] : [fill(words.days, { days: String(days) })]),
    ...(mark ? [fill(words.mark, { mark: sayUnit(mark) })] : []),
    ...(xylitolFree === null ? [] : [xylitolFree ? words.xylitolFree : words.xylitolContained]),
  ]
}

function sayContainer({ kind, name, volume, rate, ownVolume, fluid }: NonNullable<HowGiven['container']>): string {
  const about = { kind: howInEnglish.runsFrom[kind], name, volume: sayUnit(volume), rate: sayUnit(rate) }
  return [
    fill(words.container, about),
    ...(fluid ? [howInEnglish.fluids[fluid]] : []),
    ...(ownVolume ? [howInEnglish.ownVolume[ownVolume]] : []),
  ].join(', ')
}

function sayLoading({ dose, over }: NonNullable<HowGiven['loading']>): string {
  const said = fill(words.loading, { dose: sayUnit(dose) })
  return over ? `${said} ${fill(words.over, { over: sayUnit(over) })}` : said
}
