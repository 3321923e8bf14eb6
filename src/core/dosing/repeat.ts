import type { DoseRow, Drug } from '#core/formulary/drug.ts'
import type { Use } from '#core/formulary/words.ts'
import { type Decimal, plain } from '#core/units/quantity.ts'
import { hoursBetween } from './elapsed.ts'
import { saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { isGivenDrug } from './given-drug.ts'
import type { DoseRequest, DosingKnowledge, Given } from './request.ts'
import type { DosingRules } from './rules.ts'

/** Uses that are repeated by effect, by the clock of the operation, or on the surface of an eye. */
const repeatedFreely: ReadonlySet<Use> = new Set(['antibiotic_periop', 'emergency', 'eye', 'vasopressor', 'cri'])

/**
 * The same drug again before its shortest gap is over. An NSAID is refused, because its label gives one dose in that
 * time; another drug asks for a person while not half of the gap has passed, and is noted until then.
 *
 * @example judgeRepeat(robenacoxib, row, request, knowledge)[0]?.level // 'block' eight hours after the last
 */
export function judgeRepeat(
  drug: Drug,
  row: DoseRow,
  request: DoseRequest,
  { drugs, rules }: Pick<DosingKnowledge, 'drugs' | 'rules'>,
): DoseFinding[] {
  const [shortest] = row.interval.value.hours ?? []
  const { at } = request
  const isNsaid = drug.groups.includes('nsaid')
  if (shortest === undefined || repeatedFreely.has(row.use)) return []
  return request.given.flatMap((given) => {
    if (given.use === 'cri' || !isGivenDrug(drugs, given.drug, drug.id)) return []
    if (!given.at || !at) {
      // Nobody can say how long ago: that is said once for the whole request. An NSAID counts as just given.
      if (!isNsaid) return []
      const about = {
        drug: drug.name,
        given: saidOf(given),
        ago: 'an unknown time',
        interval: row.interval.value.words,
      }
      return [found('block', 'repeat-too-soon', about, [row.interval, rules.repeat])]
    }
    const ago = hoursBetween(given.at, at).value
    const share = ago.div(shortest)
    if (ago.lt(0)) return isNsaid || given.isCoarse ? [laterThanThis(drug, row, given, rules)] : []
    if (share.gte(rules.repeat.value.early)) return []
    const about = { drug: drug.name, given: saidOf(given), ago: said(ago), interval: row.interval.value.words }
    const level = isNsaid ? 'block' : share.lt(rules.repeat.value.confirm) ? 'confirm' : 'note'
    return [found(level, 'repeat-too-soon', about, [row.interval, rules.repeat])]
  })
}

/**
 * "Given today" may have been just now, and a clock may be wrong: an NSAID dated after this moment is refused all the
 * same, and another drug of which only the day is known asks for a person. Of what has a clock it is said once for the
 * whole request.
 */
function laterThanThis(drug: Drug, row: DoseRow, given: Given, rules: DosingRules): DoseFinding {
  const about = { drug: drug.name, given: saidOf(given), interval: row.interval.value.words }
  const level = drug.groups.includes('nsaid') ? 'block' : 'confirm'
  return found(level, 'repeat-from-later', about, [row.interval, rules.repeat])
}

function said(hours: Decimal): string {
  return hours.lt(1) ? `${plain(hours.times(60).toDecimalPlaces(0))} min` : `${plain(hours.toDecimalPlaces(1))} h`
}
