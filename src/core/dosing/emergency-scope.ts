import type { Drug } from '#core/formulary/drug.ts'
import type { DoseCode } from './findings.ts'
import { asWords, drugsGiven } from './given-drug.ts'
import type { DoseRequest, Emergency } from './request.ts'

/**
 * Blocks that a declared emergency lifts. What is not here stays: a doubt about unit, strength, animal or drug is no
 * less a doubt in a hurry, and where the drug itself is the harm there is no hurry to give more of it.
 */
const lifted: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'drying-drug-with-dry-eye',
  'excluded',
  'excluded-by-given',
  'interval-too-short',
  'kidney-drug-with-raised-creatinine',
  'local-anaesthetic-ceiling',
  'local-anaesthetic-uncounted',
  'nsaid-after-blood-loss',
  'nsaid-with-steroid',
  'over-daily-maximum',
  'over-single-maximum',
  'pair-forbidden',
  'repeat-from-later',
  'repeat-too-soon',
  'rounding-shifts-dose',
  'two-nsaids',
  'unsafe-in-pregnancy',
  'xylitol-in-liquid',
])

/** An emergency with what its own words name: drugs, checks, or neither. Without words it lifts every block that can be. */
export type ScopedEmergency = Emergency & {
  readonly named?: { readonly drugs: ReadonlySet<string>; readonly checks: ReadonlySet<DoseCode> }
}

/** A request whose emergency was read for what it names. */
export type ScopedRequest = DoseRequest & { readonly emergency?: ScopedEmergency }

/**
 * Reads the drugs, classes and checks that an emergency names; nothing is guessed from other words.
 *
 * @example scoped({ by, reason, lifts: 'lidocaine' }, formulary).named?.drugs // { 'lidocaine' }
 */
export function scoped(emergency: Emergency, drugs: readonly Drug[]): ScopedEmergency {
  const { lifts } = emergency
  if (lifts === undefined || lifts.trim() === '') return emergency
  const written = asWords(lifts)
  const checks = [...lifted].filter((code) => written.includes(asWords(code)))
  // "nsaid-with-steroid" names a check and no drug of either class.
  const rest = checks.reduce((text, code) => text.replaceAll(asWords(code), ' '), written)
  const named = [
    ...drugsGiven(drugs, rest),
    ...drugs.filter(({ groups }) => groups.some((group) => rest.includes(asWords(group)))),
  ]
  return { ...emergency, named: { drugs: new Set(named.map(({ id }) => id)), checks: new Set(checks) } }
}

/** Whether an emergency lifts this check of this drug. */
export function isLifted({ named }: Pick<ScopedEmergency, 'named'>, code: DoseCode, drug: string | undefined): boolean {
  if (!lifted.has(code)) return false
  if (!named) return true
  const { drugs, checks } = named
  if (drugs.size === 0 && checks.size === 0) return false
  const isOfDrug = drugs.size === 0 || (drug !== undefined && drugs.has(drug))
  return isOfDrug && (checks.size === 0 || checks.has(code))
}
