import { fill } from '#core/outcome/finding.ts'
import type { Draft } from './draft.ts'
import { isLifted, type ScopedEmergency } from './emergency-scope.ts'
import { type DoseCode, type DoseFinding, found } from './findings.ts'
import type { DosingRules } from './rules.ts'

/**
 * A block after an emergency was declared: still said, and signed for by a second name within a day. An emergency that
 * names drugs or checks lifts only those.
 *
 * @example liftIn({ by: 'A. Person', reason: 'bleeding' }, 'lidocaine')(found('block', 'over-single-maximum')).level // 'confirm'
 */
export function liftIn(
  emergency: ScopedEmergency | undefined,
  drug: string | undefined,
): (finding: DoseFinding) => DoseFinding {
  return (finding) => {
    if (!emergency || finding.level !== 'block' || !isLifted(emergency, finding.code, drug)) return finding
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

export function liftDraft(draft: Draft, emergency: ScopedEmergency | undefined): Draft {
  return emergency ? { ...draft, findings: draft.findings.map(liftIn(emergency, draft.drug?.id)) } : draft
}

const saysEmergency: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'emergency-declared',
  'emergency-declared-for',
  'emergency-lifts-nothing',
])

/** Whether a finding of a plan is the emergency itself: it is said apart from the others, and once. */
export function isOfEmergency({ code }: Pick<DoseFinding, 'code'>): boolean {
  return saysEmergency.has(code)
}

/** That an emergency was declared, by whom and why, what it lifts, and until when the second name is owed. */
export function sayEmergency(
  emergency: ScopedEmergency | undefined,
  { secondNameWithin, withoutNumber }: Pick<DosingRules, 'secondNameWithin' | 'withoutNumber'>,
): DoseFinding[] {
  if (!emergency) return []
  const { by, lifts = '', named } = emergency
  // The sentence ends itself.
  const reason = emergency.reason.replace(/[.\s]+$/u, '')
  const within = secondNameWithin.value.toString()
  if (!named) return [found('confirm', 'emergency-declared', { by, reason, within }, [secondNameWithin])]
  if (named.drugs.size === 0 && named.checks.size === 0) {
    return [found('confirm', 'emergency-lifts-nothing', { by, reason, lifts }, [withoutNumber])]
  }
  const only = [...named.drugs, ...named.checks].join(', ')
  return [found('confirm', 'emergency-declared-for', { by, reason, within, only }, [secondNameWithin])]
}
