import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { faceAndEyeLooks, wholeYear } from '#content/follow-up/visits.ts'
import { bodySurface } from '#content/protocols/body-surface.ts'
import { syringes } from '#content/protocols/syringes.ts'
import { saySyringes } from '#core/dosing/own-defaults.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import { wardSpans } from '#core/procedures/follow-up.ts'

/** The tool's own value behind a policy that a clinic may set; undefined where no source gives one. */
export function ownValue(policy: string): Sourced<unknown> | undefined {
  const look = faceAndEyeLooks.find(({ id }) => policy === `owed.face.${id}`)
  const step = wholeYear.find(({ id }) => policy === `owed.${id}`)
  const round = wardSpans.find((one) => policy === `owed.ward.${one}`)
  const others: Readonly<Record<string, Sourced<unknown>>> = {
    'owed.face.then-every': owedRules.face.thenEvery,
    'owed.culture': owedRules.results.culture,
    'owed.histology': owedRules.results.histology,
    'owed.referral.today': owedRules.referral.today,
    'owed.referral.this-week': owedRules.referral['this-week'],
    'owed.referral.routine': owedRules.referral.routine,
    'lasting-deficit-days': ownCounting.lastingFromDay,
    'own-figures-from': ownCounting.shownFrom,
    'dose.surface-factor.dog': bodySurface.dog,
    'dose.surface-factor.cat': bodySurface.cat,
    'dose.syringes': { ...syringes, value: saySyringes(syringes.value) },
  }
  return look?.window ?? step?.window ?? (round && owedRules.ward.every[round]) ?? others[policy]
}
