import { missingReasons } from '#content/follow-up/missing-reasons.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { faceAndEyeLooks, wholeYear } from '#content/follow-up/visits.ts'
import { formulary } from '#content/formulary/index.ts'
import { earDimensions } from '#content/plate/dimensions.ts'
import { procedures } from '#content/procedures/index.ts'
import { bandageAndAirway } from '#content/protocols/bandage-and-airway.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { bloodMarks } from '#content/protocols/blood-marks.ts'
import { bloodPerKg } from '#content/protocols/blood-per-kg.ts'
import { bodySurface } from '#content/protocols/body-surface.ts'
import { calcFormulas } from '#content/protocols/calc-formulas.ts'
import { defibrillation } from '#content/protocols/defibrillation.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { drugPairs } from '#content/protocols/drug-pairs.ts'
import { emergencyFacts } from '#content/protocols/emergency-facts.ts'
import { labelBands } from '#content/protocols/label-bands.ts'
import { lowPressure } from '#content/protocols/low-pressure.ts'
import { patchSizes } from '#content/protocols/patch-sizes.ts'
import { registerRules } from '#content/protocols/register-rules.ts'
import { specimensWanted, testsProposed } from '#content/protocols/specimens-wanted.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import { otis3CutOffs } from '#content/scores/otis-3.ts'
import { sources } from '#content/sources/index.ts'
import { studies } from '#content/studies/index.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { type RuleName, rulesInEnglish } from '#content/wording/app-sources-rules.ts'
import { emergencyTitles } from '#content/wording/emergency.ts'
import type { Edition } from '#core/culture/breakpoint.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { citedIn } from '#core/evidence/facts-in.ts'
import type { Source } from '#core/evidence/sourced.ts'
import type { Study } from '#core/evidence/study.ts'
import type { Drug } from '#core/formulary/drug.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { byStandard } from './edition-order.ts'

const { bodySurface: _, patches: __, interactions: ___, loss, ...rest } = dosingRules
/** Swabs, volume and marks of blood have pages of their own. */
const checks = { ...rest, bloodLoss: loss.from }

const snomed = Object.fromEntries(
  susceptibility.organisms.flatMap(({ name, snomed }) => (snomed ? [[name, snomed]] : [])),
)
const loinc = Object.fromEntries(susceptibility.agents.flatMap(({ name, loinc }) => (loinc ? [[name, loinc]] : [])))

/** The rules by the name of their page: whatever is cited and belongs to no single drug, study, operation or shout. */
export const rules = {
  'bandage-and-airway': bandageAndAirway,
  'blood-in-swabs': bloodInSwabs,
  'blood-marks': bloodMarks,
  'blood-per-kg': bloodPerKg,
  'body-surface': bodySurface,
  'calc-formulas': calcFormulas,
  defibrillation,
  'dosing-checks': checks,
  'drug-pairs': drugPairs,
  'face-and-eye': faceAndEyeLooks,
  'label-bands': labelBands,
  'laboratory-numbers': { organisms: snomed, drugs: loinc },
  'low-pressure': lowPressure,
  'missing-reasons': missingReasons,
  'otis-3': otis3CutOffs,
  owed: owedRules,
  'patch-sizes': patchSizes,
  plate: earDimensions,
  'register-rules': registerRules,
  specimens: { specimensWanted, testsProposed },
  'spoken-pauses': spokenPauses,
  stewardship: { tiers: susceptibility.tiers, preferences: susceptibility.preferences },
  'theatre-clocks': theatreTimers,
  year: wholeYear,
} as const satisfies Record<RuleName, unknown>

export const drugs: readonly Drug[] = [...formulary].sort(byName)
export const allStudies: readonly Study[] = studies
export const allProcedures: readonly Procedure[] = procedures
export const allEditions: readonly Edition[] = [...susceptibility.editions].sort(byStandard)
export const { agents: allAgents, organisms: allOrganisms } = susceptibility
export const emergency = emergencyFacts.groups
export const allSources: readonly Source[] = [...sources].sort((a, b) => (a.citation < b.citation ? -1 : 1))
export const ruleNames = Object.keys(rules) as RuleName[]

function byName(a: Drug, b: Drug): number {
  return a.name < b.name ? -1 : 1
}

/** One page of the sources: its part, address, title, and the content its facts stand in. */
export type Entry = {
  readonly part: 'formulary' | 'breakpoints' | 'studies' | 'procedures' | 'protocols'
  readonly href: string
  readonly title: string
  readonly value: unknown
}

/** Every page that cites something. */
export const pages: readonly Entry[] = [
  ...drugs.map((one) => entry('formulary', one.id, one.name, one)),
  ...allEditions.map((one) => entry('breakpoints', one.id, editionName(one), one)),
  ...allStudies.map((one) => entry('studies', one.id, one.id, one)),
  ...allProcedures.map((one) => entry('procedures', one.id, one.name, one)),
  ...emergency.map((one) => entry('protocols', one.call, emergencyTitles[one.call], one)),
  ...ruleNames.map((name) => entry('protocols', name, rulesInEnglish[name].title, rules[name])),
]

function entry(part: Entry['part'], id: string, title: string, value: unknown): Entry {
  return { part, href: hrefOf(part, id), title, value }
}

export function hrefOf(part: Entry['part'] | 'reference', id: string): string {
  return `/sources/${part}/${encodeURIComponent(id)}`
}

/** The pages that cite a source. */
export function citing(source: string): Entry[] {
  return pages.filter((page) => citedBy(page).has(source))
}

/** Found once for each page: the editions hold thousands of rows. */
const found = new Map<Entry, ReadonlySet<string>>()
function citedBy(page: Entry): ReadonlySet<string> {
  const before = found.get(page)
  if (before) return before
  const cited = new Set(citedIn(page.value))
  found.set(page, cited)
  return cited
}

export function sourceNamed(id: string): Source | undefined {
  return allSources.find((one) => one.id === id)
}
