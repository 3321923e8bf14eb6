import { isUnit, type Unit } from './unit.ts'

/** Units as people write them. UCUM stays in files and on the wire; `ug` becomes "microgram", never "µg". */
const unitWords: Partial<Record<Unit, string>> = {
  ug: 'microgram',
  'ug/kg': 'microgram/kg',
  'ug/mL': 'microgram/mL',
  'ug/kg/h': 'microgram/kg/h',
  'ug/kg/min': 'microgram/kg/min',
  'ug/h': 'microgram/h',
  'ug/m2': 'microgram/m²',
  'mg/m2': 'mg/m²',
  m2: 'm²',
  '[iU]': 'units',
  '[iU]/kg': 'units/kg',
  '[iU]/mL': 'units/mL',
  '[lb_av]': 'lb',
  '%{vol}': '% by volume',
  '{tablet}': 'tablet',
  'mg/{tablet}': 'mg in a tablet',
  'mg/{animal}': 'mg for the animal',
  'cm/{eye}': 'cm in the eye',
  '[drp]/mL': 'drops in a mL',
  '[drp]/{eye}': 'drop in the eye',
  'mm[Hg]': 'mmHg',
  Cel: '°C',
  '/min': 'a minute',
  'mm/min': 'mm in a minute',
}

export function unitWord(unit: Unit): string {
  return unitWords[unit] ?? unit
}

/**
 * The word of a unit beside its number: whole things are counted, "1 tablet" and "14 tablets".
 *
 * @example unitBeside('14', '{tablet}') // 'tablets'
 */
export function unitBeside(value: { toString(): string }, unit: Unit): string {
  const many = Number(value.toString()) > 1
  if (many && unit === '{tablet}') return 'tablets'
  if (many && unit === '[drp]/{eye}') return 'drops in the eye'
  return unitWord(unit)
}

/** The longest first, so that `ug/kg/h` is not read as `ug/kg`. */
const inText = Object.keys(unitWords)
  .filter(isUnit)
  .sort((a, b) => b.length - a.length)
  .map((unit) => {
    const escaped = unit.replaceAll(/[[\]{}/%]/g, '\\$&')
    return [unit, new RegExp(`(\\d+(?:\\.\\d+)?) ?${escaped}(?![\\w/{[])`, 'g')] as const
  })

/**
 * The units behind the numbers of a sentence as people write them: what is printed is never left in UCUM, where `ug`
 * is a pen stroke from `mg`.
 *
 * @example spellUnits('2 ug/kg is above 0.8 [iU]/kg') // '2 microgram/kg is above 0.8 units/kg'
 */
export function spellUnits(text: string): string {
  return inText.reduce(
    (said, [unit, behind]) => said.replaceAll(behind, (_, number: string) => `${number} ${unitBeside(number, unit)}`),
    text,
  )
}

/** What a hand writes beside the words above; each can mean one thing only. */
const alsoTyped: Readonly<Record<string, Unit>> = {
  mcg: 'ug',
  micrograms: 'ug',
  'mcg/kg/min': 'ug/kg/min',
  'mcg/kg/h': 'ug/kg/h',
  'mcg/h': 'ug/h',
  'mcg/mL': 'ug/mL',
  IU: '[iU]',
  'IU/mL': '[iU]/mL',
  lbs: '[lb_av]',
  '% vol': '%{vol}',
  'vol%': '%{vol}',
  tablets: '{tablet}',
  'mg/tablet': 'mg/{tablet}',
  drops: '[drp]/{eye}',
  C: 'Cel',
  mmhg: 'mm[Hg]',
  bpm: '/min',
  'per minute': '/min',
}

const byWord = new Map<string, Unit>([
  ...Object.entries(unitWords).map(([unit, word]) => [word, unit as Unit] as const),
  ...Object.entries(alsoTyped),
])

/**
 * The unit behind a word as people write it, or undefined. UCUM spelling is understood as well.
 *
 * @example typedUnit('mmHg') // 'mm[Hg]'
 */
export function typedUnit(word: string): Unit | undefined {
  return isUnit(word) ? word : byWord.get(word)
}
