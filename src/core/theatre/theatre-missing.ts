import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import type { SideDisagreement } from '#core/chapters/sides.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Conflict, KindName } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { Level } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { OwedCode, OwedItem, Why } from '#core/owed/owed-item.ts'
import { type TheatreTests, theatreTests } from '#core/procedures/follow-up.ts'
import { testsMissing } from './tests-missing.ts'

export const theatreMissingCodes = [
  'side-disagreement',
  'consent',
  'consent-fingerprint',
  'conflicts',
  'baseline',
  'weight',
  ...theatreTests,
  'planned-lines',
  'second-check',
  'fasting',
  'anaesthetist',
  'medicine-active',
] as const
export type TheatreMissingCode = (typeof theatreMissingCodes)[number]

/** What stands between the animal and the table, with what would settle it. */
export type TheatreMissing = {
  readonly code: TheatreMissingCode
  /** `block`: no cut before it. `confirm`: a reason and a second person. `note`: worth knowing. */
  readonly level: Level
  /** The kind of entry that settles it; null where it is settled on a page of its own. */
  readonly settledBy: KindName | null
  readonly about: Readonly<Record<string, string>>
  /** The reasons of what is owed, where it is owed. */
  readonly why: readonly Why[]
  readonly sources: readonly string[]
}

/** What is owed before the cut, as the theatre list names it. */
const owedBefore: Partial<Record<OwedCode, Pick<TheatreMissing, 'code' | 'level' | 'settledBy'>>> = {
  'consent-before-operation': { code: 'consent', level: 'block', settledBy: 'agreement' },
  'baseline-before-premedication': { code: 'baseline', level: 'confirm', settledBy: 'baseline' },
  'weight-before-operation': { code: 'weight', level: 'confirm', settledBy: 'weight' },
  'second-check-of-lines': { code: 'second-check', level: 'confirm', settledBy: 'second-check' },
  'fasting-to-settle': { code: 'fasting', level: 'note', settledBy: 'identity' },
}

/** Kinds whose unsettled conflict changes what happens at the table. */
const matters: ReadonlySet<string> = new Set<KindName>([
  'agreement',
  'baseline',
  'booking',
  'choice',
  'drug-given',
  'ear-findings',
  'identity',
  'imaging',
  'planned-line',
  'weight',
])

/** Everything that is missing for an operation that is booked and not done, worst first. */
export function missingBeforeOperation(
  operation: OperationOnFile,
  file: CaseFile,
  owed: readonly OwedItem[],
  sides: readonly SideDisagreement[],
  tests: TheatreTests,
): TheatreMissing[] {
  const { theCase } = file
  const named = theCase.live('agreement').find(({ header }) => header.id === operation.booking?.body.agreement)
  const planned = linesAbout(theCase, 'planned-line', operation.id).length > 0
  const open = theCase.live('medicine-before').filter(({ body }) => body.substance === null)
  const found = [
    ...sides.map(({ level }) => item('side-disagreement', level, null)),
    ...owed.flatMap(ofOwed),
    ...(named && fingerprintOf(named.body.plan) !== named.body.fingerprint
      ? [item('consent-fingerprint', 'block', 'agreement')]
      : []),
    ...conflictsOf(theCase.conflicts),
    ...testsMissing(operation, file, tests).map((test) => ({ ...test, why: [] })),
    ...(planned ? [] : [item('planned-lines', 'note', 'planned-line')]),
    ...(operation.anaesthetist === null ? [item('anaesthetist', 'note', 'booking')] : []),
    ...open.map(({ body }) => item('medicine-active', 'confirm', 'medicine-before', { written: body.written })),
  ]
  const levels: readonly Level[] = ['block', 'confirm', 'note']
  return found.sort((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level))
}

function ofOwed(owed: OwedItem): TheatreMissing[] {
  const known = owedBefore[owed.what]
  if (!known) return []
  return [{ ...known, about: owed.about, why: owed.why, sources: owed.facts.flatMap(({ sources }) => [...sources]) }]
}

function conflictsOf(conflicts: readonly Conflict[]): TheatreMissing[] {
  const some = conflicts.filter(({ kind }) => matters.has(kind))
  if (some.length === 0) return []
  const kinds = [...new Set(some.map(({ kind }) => kind))].join(', ')
  return [item('conflicts', 'block', null, { count: String(some.length), kinds })]
}

function item(
  code: TheatreMissingCode,
  level: Level,
  settledBy: KindName | null,
  about: Readonly<Record<string, string>> = {},
): TheatreMissing {
  return { code, level, settledBy, about, why: [], sources: [] }
}
