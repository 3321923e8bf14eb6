import type { Provenance } from '#core/evidence/sourced.ts'
import type { DoseRow } from '#core/formulary/drug.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { kindOf } from './amount.ts'
import { type Draft, nobody } from './draft.ts'
import { draw } from './draw.ts'
import type { Drawing, Drawn } from './drawing.ts'
import { liftIn } from './emergency-declared.ts'
import type { ScopedEmergency } from './emergency-scope.ts'
import { type DoseFinding, found, isBlock } from './findings.ts'
import type { DoseLine, DosingKnowledge } from './request.ts'

/** Every finding names who says so; where no number stands behind it, the house does. */
export function withSource(finding: DoseFinding, { rules }: DosingKnowledge): DoseFinding {
  if (finding.provenance.length > 0) return finding
  const { level, code, about, ...rest } = finding
  return { ...rest, ...found(level, code, about, [rules.withoutNumber]) }
}

/** Volume, tablets or rate of a line that nothing bars; undefined for one that is refused already. */
export function drawDraft(
  draft: Draft,
  how: Pick<Drawing, 'down' | 'loadingDown' | 'poured' | 'loaded'>,
  emergency: ScopedEmergency | undefined,
  { rules, syringes }: DosingKnowledge,
): Drawn | undefined {
  const { line, drug, row, dose, amount, body = nobody } = draft
  if (!drug || !row || !dose || !amount || draft.findings.some(isBlock)) return undefined
  const drawn = draw({ drug, row, dose, amount, line, body, rules, ...how, ...(syringes && { syringes }) })
  return { ...drawn, findings: drawn.findings.map(liftIn(emergency, drug.id)) }
}

/** The answer of one line. A refused line carries nothing that could be drawn up. */
export function finish(draft: Draft, drawn: Drawn | undefined, knowledge: DosingKnowledge): DoseLine {
  const { line, drug, row, dose, chosenBy, amount, rows } = draft
  const findings = bySeverity(
    [...draft.findings, ...(drawn?.findings ?? [])].map((finding) => withSource(finding, knowledge)),
  )
  const base = {
    id: line.id,
    drug: line.drug,
    use: line.use,
    ...(line.route && { route: line.route }),
    ...(dose && { dose }),
    ...(chosenBy && { chosenBy }),
    findings,
    rows,
    sources: sourcesOf(row),
    ...(row && { range: row.range.value, interval: row.interval.value.words }),
    cautions: row ? cautionsOf(row) : [],
    never: row?.neverByHand ?? [],
  }
  if (!drawn || !dose || !amount || findings.some(isBlock)) return { ...base, verdict: 'refused' }
  const { secondPersonGroups } = knowledge.rules
  const secondPerson = drug?.groups.some((group) => secondPersonGroups.value.includes(group)) ?? false
  const surface = kindOf(dose) === 'per-surface' && draft.body ? { bodySurface: draft.body.surface } : {}
  const weight = draft.body && kindOf(dose) !== 'flat' ? { dosingWeight: draft.body.weight } : {}
  const verdict = findings.length > 0 ? 'caution' : 'ok'
  return { ...base, verdict, dose, amount, secondPerson, ...weight, ...surface, ...drawn.measured }
}

/** What is always said with this row, the most that may be given in all included. */
function cautionsOf(row: DoseRow): string[] {
  const always = row.cautions.value.filter((caution) => !caution.when).map((caution) => caution.words)
  return row.maxCumulative ? [...always, `in all: ${row.maxCumulative.value.words}`] : always
}

function sourcesOf(row: DoseRow | undefined): Provenance[] {
  return row ? [row.range, ...(row.otherRanges ?? []), ...(row.maxSingle ? [row.maxSingle] : [])] : []
}
