/**
 * The closed list of units, in UCUM spelling. `per` is the exact number of base units in one of this unit;
 * two units convert into each other exactly when their `dimension` is the same word.
 */
const mass = 'mass'
const volume = 'volume'
const time = 'time'

export const units = {
  kg: { dimension: mass, per: '1000000' },
  g: { dimension: mass, per: '1000' },
  mg: { dimension: mass, per: '1' },
  ug: { dimension: mass, per: '0.001' },
  /** The international pound is exactly 0.45359237 kg (definition of 1959). */
  '[lb_av]': { dimension: mass, per: '453592.37' },
  L: { dimension: volume, per: '1000' },
  mL: { dimension: volume, per: '1' },
  mmol: { dimension: 'substance', per: '1' },
  '[iU]': { dimension: 'activity', per: '1' },
  J: { dimension: 'energy', per: '1' },
  m2: { dimension: 'area', per: '1' },
  min: { dimension: time, per: '1' },
  h: { dimension: time, per: '60' },
  d: { dimension: time, per: '1440' },
  'g/kg': { dimension: 'mass/body', per: '1000' },
  'mg/kg': { dimension: 'mass/body', per: '1' },
  'ug/kg': { dimension: 'mass/body', per: '0.001' },
  'mg/m2': { dimension: 'mass/area', per: '1' },
  'ug/m2': { dimension: 'mass/area', per: '0.001' },
  'mL/kg': { dimension: 'volume/body', per: '1' },
  'mmol/kg': { dimension: 'substance/body', per: '1' },
  '[iU]/kg': { dimension: 'activity/body', per: '1' },
  'J/kg': { dimension: 'energy/body', per: '1' },
  'mg/kg/min': { dimension: 'mass/body/time', per: '60' },
  'mg/kg/h': { dimension: 'mass/body/time', per: '1' },
  'ug/kg/min': { dimension: 'mass/body/time', per: '0.06' },
  'ug/kg/h': { dimension: 'mass/body/time', per: '0.001' },
  'mg/h': { dimension: 'mass/time', per: '1' },
  'ug/h': { dimension: 'mass/time', per: '0.001' },
  'mmol/h': { dimension: 'substance/time', per: '1' },
  'mL/min': { dimension: 'volume/time', per: '60' },
  'mL/h': { dimension: 'volume/time', per: '1' },
  'mL/kg/min': { dimension: 'volume/body/time', per: '60' },
  'mL/kg/h': { dimension: 'volume/body/time', per: '1' },
  'mmol/kg/h': { dimension: 'substance/body/time', per: '1' },
  'mg/mL': { dimension: 'mass/volume', per: '1' },
  'ug/mL': { dimension: 'mass/volume', per: '0.001' },
  'g/L': { dimension: 'mass/volume', per: '1' },
  '[iU]/mL': { dimension: 'activity/volume', per: '1' },
  'mmol/mL': { dimension: 'substance/volume', per: '1' },
  /** Percent is a bare ratio here; a strength written in percent is asked for again as mg/mL. */
  '%': { dimension: 'ratio', per: '1' },
  '%{vol}': { dimension: 'vapour', per: '1' },
  'mg/{animal}': { dimension: 'mass/animal', per: '1' },
  'cm/{eye}': { dimension: 'ribbon/eye', per: '1' },
  '[drp]/mL': { dimension: 'drops/volume', per: '1' },
  '[drp]/{eye}': { dimension: 'drops/eye', per: '1' },
  '{tablet}': { dimension: 'tablets', per: '1' },
  'mg/{tablet}': { dimension: 'mass/tablet', per: '1' },
  'mm[Hg]': { dimension: 'pressure', per: '1' },
  mm: { dimension: 'length', per: '1' },
  'mm/min': { dimension: 'length/time', per: '1' },
  Cel: { dimension: 'temperature', per: '1' },
  '/min': { dimension: 'rate', per: '1' },
} as const satisfies Record<string, { dimension: string; per: string }>

export type Unit = keyof typeof units

export const unitList = Object.keys(units) as Unit[]

export function isUnit(text: string): text is Unit {
  return Object.hasOwn(units, text)
}

/**
 * A rate per pound: never taken for one per kilogram, of which it is more than twice as much.
 *
 * @example isPerPound('mg/lb') // true
 */
export function isPerPound(text: string): boolean {
  return /\/ ?(?:lbs?|\[lb_av\]|pounds?)(?:\/|$)/i.test(text.trim())
}

/** What people write, and the unit they probably mean. Offered in an error sentence, never applied silently. */
const nearMisses: Record<string, Unit> = {
  lb: '[lb_av]',
  lbs: '[lb_av]',
  pound: '[lb_av]',
  pounds: '[lb_av]',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  Kg: 'kg',
  KG: 'kg',
  gm: 'g',
  gram: 'g',
  grams: 'g',
  mcg: 'ug',
  µg: 'ug',
  μg: 'ug',
  ml: 'mL',
  ML: 'mL',
  cc: 'mL',
  l: 'L',
  iu: '[iU]',
  IU: '[iU]',
  U: '[iU]',
  'mg/ml': 'mg/mL',
  'mcg/kg': 'ug/kg',
  'µg/kg': 'ug/kg',
  'μg/kg': 'ug/kg',
  'mcg/mL': 'ug/mL',
  'ug/ml': 'ug/mL',
  'IU/kg': '[iU]/kg',
  'IU/mL': '[iU]/mL',
  'mL/hr': 'mL/h',
  'ml/h': 'mL/h',
  'mg/kg/hr': 'mg/kg/h',
  'ug/kg/hr': 'ug/kg/h',
  'mcg/kg/min': 'ug/kg/min',
  'mcg/kg/h': 'ug/kg/h',
  tablet: '{tablet}',
  tablets: '{tablet}',
  mmHg: 'mm[Hg]',
  C: 'Cel',
  '°C': 'Cel',
  hour: 'h',
  hours: 'h',
  hr: 'h',
  day: 'd',
  days: 'd',
}

/** The unit a misspelling probably stands for, or undefined. Example: `likelyUnit('lb')` is `'[lb_av]'`. */
export function likelyUnit(text: string): Unit | undefined {
  return Object.hasOwn(nearMisses, text) ? nearMisses[text] : undefined
}
