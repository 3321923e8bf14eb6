import { fill } from '#core/outcome/finding.ts'
import type { Draft } from './draft.ts'
import { type DoseCode, type DoseFinding, found } from './findings.ts'
import type { Emergency } from './request.ts'
import type { DosingRules } from './rules.ts'

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

/**
 * A block after an emergency was declared: still said, and signed for by a second name within a day.
 *
 * @example liftIn({ by: 'A. Person', reason: 'bleeding' })(found('block', 'over-single-maximum')).level // 'confirm'
 */
export function liftIn(emergency: Emergency | undefined): (finding: DoseFinding) => DoseFinding {
  return (finding) => {
    const isLifted = emergency !== undefined && finding.level === 'block' && lifted.has(finding.code)
    if (!isLifted) return finding
    const { by, at } = emergency
    return { ...finding, level: 'confirm', lifted: true, liftedBy: { by, ...(at !== undefined && { at }) } }
  }
}

/** By whose emergency a block was lifted, as a sentence to stand behind the finding; empty for every other finding. */
export function sayLifted(
  { liftedBy }: Pick<DoseFinding, 'liftedBy'>,
  words: Readonly<Record<'by' | 'byAt', string>>,
): string {
  if (!liftedBy) return ''
  const { by, at } = liftedBy
  return at === undefined ? fill(words.by, { by }) : fill(words.byAt, { by, at })
}

export function liftDraft(draft: Draft, emergency: Emergency | undefined): Draft {
  return emergency ? { ...draft, findings: draft.findings.map(liftIn(emergency)) } : draft
}

/** That an emergency was declared, by whom and why, and until when the second name is owed. */
export function sayEmergency(
  emergency: Emergency | undefined,
  { secondNameWithin }: Pick<DosingRules, 'secondNameWithin'>,
): DoseFinding[] {
  if (!emergency) return []
  const about = { by: emergency.by, reason: emergency.reason, within: secondNameWithin.value.toString() }
  return [found('confirm', 'emergency-declared', about, [secondNameWithin])]
}
