import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Dose, DoseRow, Drug, When } from '#core/formulary/drug.ts'
import { convert, Decimal, plain } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import { goesIntoEar } from './into-ear.ts'
import type { DosedAnimal, PlannedLine } from './request.ts'
import type { AnimalRule, DosingRules } from './rules.ts'

/**
 * What this animal is or has that bars the whole group of a drug, or asks for a person, whatever its row says.
 *
 * @example judgeAnimal(carprofen, { use: 'nsaid' }, { species: 'dog', conditions: ['raised-creatinine'] }, rules)[0]?.level // 'block'
 */
export function judgeAnimal(
  drug: Drug,
  line: Pick<PlannedLine, 'use' | 'route' | 'stock'>,
  { conditions }: DosedAnimal,
  { animal }: Pick<DosingRules, 'animal'>,
): DoseFinding[] {
  return animal.flatMap((rule) => {
    const here = rule.words.filter((word) => conditions.includes(word))
    if (here.length === 0 || !isAbout(rule, drug, line)) return []
    const isSheet = line.use === 'emergency' && !rule.evenInEmergency
    const about = { drug: drug.name, because: rule.because, possible: rule.possible, why: here.join(', ') }
    return [found(isSheet ? 'note' : rule.level, rule.code, about, [rule])]
  })
}

/** Whether a rule speaks of this drug, of this strength, and of where it goes. */
export function isAbout(
  { groups, drugs, onlyInEar, fromStrength, belowStrength }: AnimalRule,
  drug: Drug,
  line: Pick<PlannedLine, 'use' | 'route' | 'stock'>,
): boolean {
  const isNamed = drugs?.includes(drug.id) === true || groups.some((group) => drug.groups.includes(group))
  if (!isNamed || (onlyInEar && !goesIntoEar(line))) return false
  const strength = line.stock && convert(line.stock, 'mg/mL')?.value
  if (fromStrength && strength?.lt(fromStrength.value)) return false
  return !belowStrength || strength?.lt(belowStrength.value) === true
}

/**
 * A dose above what is left of the range in this animal: two copies of a changed ABCB1, the kidneys of an old cat.
 *
 * @example judgeReduced(acepromazine, row, quantity('0.05', 'mg/kg'), { conditions: ['abcb1-carrier'], … }, rules)
 */
export function judgeReduced(
  drug: Drug,
  row: DoseRow,
  dose: Dose,
  { species, conditions }: DosedAnimal,
  { reductions }: Pick<DosingRules, 'reductions'>,
): DoseFinding[] {
  const { high } = row.range.value
  return reductions.flatMap((rule) => {
    const isHere = conditions.includes(rule.word) && (rule.species ?? species) === species
    if (!isHere || !rule.drugs.includes(drug.id)) return []
    const inUnit = convert(dose, high.unit)
    const most = high.value.times(rule.left)
    if (!inUnit || inUnit.value.lte(most)) return []
    const about = {
      drug: drug.name,
      dose: `${plain(dose.value.toSignificantDigits(6))} ${dose.unit}`,
      most: `${plain(most)} ${high.unit}`,
      high: high.toString(),
      why: rule.word,
    }
    return [found('confirm', 'dose-above-reduced-range', about, [rule, row.range])]
  })
}

/** What bears on whether a drug may be given at all; of the others a row that is silent says enough. */
const mustBeJudged: readonly AnimalWord[] = [
  'hepatic-disease',
  'lactating',
  'pregnant',
  'renal-disease',
  'cardiovascular-disease',
]

/**
 * Which conditions of this animal no row and no rule speaks of, drug by drug: silence is no permission, so it is said
 * once for the plan.
 */
export function judgeSilence(
  lines: readonly { readonly drug: Drug; readonly row: DoseRow }[],
  { conditions }: DosedAnimal,
  { animal, withoutNumber }: Pick<DosingRules, 'animal' | 'withoutNumber'>,
): DoseFinding[] {
  const silent = mustBeJudged.flatMap((word) => {
    if (!conditions.includes(word)) return []
    const drugs = lines.filter(({ drug, row }) => !speaksOf(word, drug, row, animal)).map(({ drug }) => drug.name)
    return drugs.length > 0 ? [`${word}: ${[...new Set(drugs)].join(', ')}`] : []
  })
  if (silent.length === 0) return []
  return [found('note', 'condition-unjudged', { unjudged: silent.join('; ') }, [withoutNumber])]
}

function speaksOf(word: AnimalWord, drug: Drug, row: DoseRow, rules: readonly AnimalRule[]): boolean {
  const names = (when: When | undefined) =>
    (when?.kind === 'any-of' || when?.kind === 'all-of') && when.words.includes(word)
  return (
    row.exclusions.value.some(({ when }) => names(when)) ||
    row.cautions.value.some(({ when }) => names(when)) ||
    rules.some(({ groups, words }) => words.includes(word) && groups.some((group) => drug.groups.includes(group)))
  )
}

/**
 * The weight against what its breed usually weighs when grown, with the body condition taken out: a fat spaniel is
 * held against the breed at what it would weigh lean.
 *
 * @example judgeBreed({ species: 'dog', breed: 'Cocker Spaniel', weight: quantity('28', 'kg'), conditions: [] }, rules)
 */
export function judgeBreed(
  animal: DosedAnimal,
  { breeds, weight, withoutNumber }: Pick<DosingRules, 'breeds' | 'weight' | 'withoutNumber'>,
): DoseFinding[] {
  const written = ` ${animal.breed?.toLowerCase() ?? ''} `
  const [rule] = breeds
    .filter(({ name, species }) => species === animal.species && written.includes(name))
    .sort((a, b) => b.name.length - a.name.length)
  // A kitten or a puppy has no grown weight yet; a cross has none of its own.
  const isGrown = animal.ageMonths === undefined || animal.ageMonths >= 12
  if (!animal.weight || !isGrown || /\b(cross|mix)/u.test(written)) return []
  if (!rule) {
    if (written.trim() === '') return []
    return [found('note', 'breed-not-known', { breed: animal.breed ?? '' }, [withoutNumber])]
  }
  const score = animal.bodyCondition ?? 5
  const atFive = animal.weight.value.div(weight.lean.value.sharePerPoint.times(score - 5).plus(1))
  const { low, high } = rule.kg.value
  const fits = (value: Decimal) => value.gte(low.value) && value.lte(high.value)
  if (fits(atFive)) return []
  const pounds = new Decimal('0.45359237')
  const slips = [
    { times: pounds, doubt: ': pounds taken for kilograms?' },
    { times: new Decimal(1).div(pounds), doubt: ': kilograms taken for pounds?' },
    { times: new Decimal('0.1'), doubt: ': a slipped decimal point?' },
    { times: new Decimal(10), doubt: ': a slipped decimal point?' },
  ]
  // A weight just outside is a large or a small one of its breed; far outside asks whether it was read right.
  const isFar = atFive.gt(high.value.times('1.5')) || atFive.lt(low.value.div('1.5'))
  const slip = isFar ? slips.find(({ times }) => fits(atFive.times(times))) : undefined
  const about = {
    weight: animal.weight.toString(),
    score: animal.bodyCondition === undefined ? 'unknown' : String(score),
    breed: rule.name,
    low: low.toString(),
    high: high.toString(),
    doubt: slip?.doubt ?? '',
  }
  return [found(slip ? 'confirm' : 'note', 'weight-unlike-breed', about, [rule.kg])]
}
