import type { ConsentWithdrawn } from '#core/agreement/agreed-for.ts'
import type { AuthorityRefusal } from '#core/agreement/authority.ts'
import { type PlanChangeWords, sayPlanChange, type ToldToday } from '#core/agreement/plan-changes.ts'
import { consentOf } from '#core/agreement/state.ts'
import type { SideDisagreement } from '#core/chapters/sides.ts'
import { type CaseFile, contactNamed } from '#core/journal/clinic.ts'
import type { Conflict, KindName } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { Level } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { OwedCode, OwedItem, Why } from '#core/owed/owed-item.ts'
import { type TheatreTests, theatreTests } from '#core/procedures/follow-up.ts'
import { sayMoment } from '#core/time/moment.ts'
import { testsMissing } from './tests-missing.ts'

export const theatreMissingCodes = [
  'side-disagreement',
  'consent',
  'consent-fingerprint',
  'consent-withdrawn',
  'consent-authority',
  'conflicts',
  'baseline',
  'weight',
  ...theatreTests,
  'planned-lines',
  'second-check',
  'fasting',
  'anaesthetist',
  'medicine-active',
  'teach-back',
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

/** What the owner is told today, and the words in which a change of what was agreed is said. */
export type ConsentRules = {
  readonly told: ToldToday
  readonly words: PlanChangeWords & {
    readonly withdrawnHow: Readonly<Record<string, string>>
    readonly refusals: Readonly<Record<AuthorityRefusal, string>>
    readonly taughtItems: Readonly<Record<string, string>>
  }
}

const consentCodes: readonly TheatreMissingCode[] = [
  'consent',
  'consent-fingerprint',
  'consent-withdrawn',
  'consent-authority',
]

/** Whether consent is among what is missing. Example: `lacksConsent(line.missing) // true`. */
export function lacksConsent(missing: readonly Pick<TheatreMissing, 'code'>[]): boolean {
  return missing.some(({ code }) => consentCodes.includes(code))
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
  rules: { readonly tests: TheatreTests; readonly consent: ConsentRules },
): TheatreMissing[] {
  const { theCase } = file
  const planned = linesAbout(theCase, 'planned-line', operation.id).length > 0
  const open = theCase.live('medicine-before').filter(({ body }) => body.substance === null)
  const found = [
    ...sides.map(({ level }) => item('side-disagreement', level, null)),
    ...consentGaps(operation, file, owed.flatMap(ofOwed), rules.consent),
    ...conflictsOf(theCase.conflicts),
    ...testsMissing(operation, file, rules.tests).map((test) => ({ ...test, why: [] })),
    ...(planned ? [] : [item('planned-lines', 'note', 'planned-line')]),
    ...(operation.anaesthetist === null ? [item('anaesthetist', 'note', 'booking')] : []),
    ...open.map(({ body }) => item('medicine-active', 'confirm', 'medicine-before', { written: body.written })),
  ]
  const levels: readonly Level[] = ['block', 'confirm', 'note']
  return found.sort((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level))
}

/** What is wrong with the consent, in words; without any words to say it is only asked for. */
function consentGaps(
  operation: OperationOnFile,
  file: CaseFile,
  owed: readonly TheatreMissing[],
  { told, words }: ConsentRules,
): TheatreMissing[] {
  const state = consentOf(operation, file, told)
  if (state.kind === 'none') return [...owed]
  const { changes, withdrawn, refusals, notYet } = state
  const said = changes.map((change) => sayPlanChange(change, file, words))
  const gaps = [
    ...(withdrawn === null
      ? []
      : [item('consent-withdrawn', 'block', 'agreement', sayWithdrawn(withdrawn, file, words))]),
    ...(said.length === 0 ? [] : [item('consent-fingerprint', 'block', 'agreement', { changes: said.join('; ') })]),
    ...refusals.map((code) => item('consent-authority', 'block', 'agreement', { because: words.refusals[code] })),
  ]
  const rest = gaps.length > 0 ? owed.filter(({ code }) => code !== 'consent') : owed
  const items = notYet.map((one) => words.taughtItems[one] ?? one).join(', ')
  return [...gaps, ...rest, ...(notYet.length === 0 ? [] : [item('teach-back', 'note', 'agreement', { items })])]
}

function sayWithdrawn({ header, body }: ConsentWithdrawn, file: CaseFile, words: ConsentRules['words']) {
  const when = sayMoment({ ...header.happenedAt, zone: file.clinic.zone })
  return { who: contactNamed(file, body.by), how: words.withdrawnHow[body.how] ?? body.how, when }
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
