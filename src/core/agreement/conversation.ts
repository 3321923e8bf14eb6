import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side } from '#core/animal/species.ts'
import { readDay, readMoment, readMoney } from '#core/forms/read-leaf.ts'
import type { Place } from '#core/forms/refusal.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { secondSideAhead } from '#core/second-side/second-side.ts'
import type { Moment } from '#core/time/moment.ts'
import { type AuthorityRefusal, authorityRefusalsOf, type GivingRefusal, givingRefusalsOf } from './authority.ts'
import { newestEstimate, totalsOf } from './estimate.ts'
import { fingerprintOf } from './fingerprint.ts'
import type { Money } from './money.ts'
import type { ToldToday } from './plan-changes.ts'

type Body = BodyOf<'agreement'>
type Taught = Body['teachBack'][number]

/** What every owner is asked to say back. */
export const askedBack = ['which-ear', 'two-risks', 'eye-care', 'collar', 'when-to-phone'] as const
export type AskedBack = (typeof askedBack)[number]

type Answers = {
  readonly answer: Taught['answer'] | null
  readonly said: string
  readonly again: Taught['again']
}

/** The talk as far as it has come: whatever was answered stays when somebody is called away. */
export type Conversation = {
  readonly ears: readonly Side[]
  readonly surgeon: string | null
  readonly explainedBy: string | null
  readonly consentBy: string | null
  readonly authority: Body['authority'] | null
  readonly authorised: {
    readonly by: string | null
    readonly how: NonNullable<Body['authorised']>['how'] | null
    readonly when: string
    readonly until: string
    readonly upTo: string
    readonly witness: string | null
  }
  readonly soundMind: 'yes' | 'no' | null
  readonly resuscitate: Body['resuscitate'] | null
  readonly mayExtend: Body['plan']['mayExtend'] | null
  readonly extension: string
  readonly photographs: Body['photographs'] | null
  readonly taught: Readonly<Partial<Record<AskedBack, Answers>>>
  readonly given: Exclude<Body['given'], 'not-recorded'> | null
  readonly witness: string | null
  readonly strokes: readonly (readonly number[])[]
  readonly name: string
  readonly copy: Exclude<Body['copy'], 'not-recorded'> | null
}

export const conversationParts = ['estimate', 'plan', 'who', 'limits', 'taught', 'signature'] as const
export type ConversationPart = (typeof conversationParts)[number]

export type ConversationFault =
  | 'no-estimate'
  | 'estimate-not-accepted'
  | 'estimate-of-first-side'
  | 'estimate-at-odds'
  | 'no-ear'
  | 'no-surgeon'
  | 'no-explainer'
  | 'nobody-named'
  | 'no-authority'
  | 'authorised-when'
  | 'authorised-until'
  | 'authorised-up-to'
  | 'no-resuscitation-wish'
  | 'no-extension-wish'
  | 'no-photograph-wish'
  | 'not-asked-back'
  | 'said-what'
  | 'no-way-given'
  | 'no-copy'
  | AuthorityRefusal
  | GivingRefusal

export type Fault = { readonly part: ConversationPart; readonly code: ConversationFault }

export type Setting = {
  readonly file: CaseFile
  readonly place: Place
  /** Which operation is planned for which ear. */
  readonly planned: Readonly<Partial<Record<Side, ProcedureId>>>
  readonly told: ToldToday
  readonly today: string
}

/** What only the signature itself settles: until then everything can be read through. */
export const settledBySigning: ReadonlySet<ConversationFault> = new Set<ConversationFault>([
  'not-signed',
  'typed-without-witness',
])

/**
 * What still keeps the talk from being an agreement, part by part, each with what would settle it; and the agreement it
 * makes, to be read through once only the signature is missing.
 *
 * @example agreementIn(draft, setting).faults // [{ part: 'who', code: 'sitter' }]
 */
export function agreementIn(
  talk: Conversation,
  setting: Setting,
): { readonly faults: readonly Fault[]; readonly body: Body | null } {
  const faults: Fault[] = [
    ...estimateFaultsIn(setting).map(inPart('estimate')),
    ...planFaults(talk, setting).map(inPart('plan')),
    ...whoFaults(talk, setting).map(inPart('who')),
    ...wishFaults(talk).map(inPart('limits')),
    ...taughtFaults(talk).map(inPart('taught')),
    ...givingFaults(talk).map(inPart('signature')),
  ]
  return { faults, body: faults.every(({ code }) => settledBySigning.has(code)) ? bodyIn(talk, setting) : null }
}

function inPart(part: ConversationPart) {
  return (code: ConversationFault): Fault => ({ part, code })
}

function estimateFaultsIn({ file }: Setting): ConversationFault[] {
  const newest = newestEstimate(file.theCase)
  if (!newest) return ['no-estimate']
  const since = secondSideAhead(file.theCase)?.second.since
  if (since !== undefined && newest.at < since) return ['estimate-of-first-side']
  if (totalsOf(newest.body).kind === 'refusal') return ['estimate-at-odds']
  return newest.body.answer?.said === 'accepted' ? [] : ['estimate-not-accepted']
}

function planFaults({ ears, surgeon, explainedBy }: Conversation, { planned }: Setting): ConversationFault[] {
  return [
    ...(ears.some((side) => planned[side] !== undefined) ? [] : ['no-ear' as const]),
    ...(surgeon === null ? ['no-surgeon' as const] : []),
    ...(explainedBy === null ? ['no-explainer' as const] : []),
  ]
}

function whoFaults(talk: Conversation, setting: Setting): ConversationFault[] {
  const { consentBy, authority, soundMind } = talk
  const read = readAuthority(talk, setting.place)
  const claimed =
    consentBy !== null && authority !== null && read.faults.length === 0
      ? authorityRefusalsOf(
          { consentBy, authority, authorised: read.authorised, ceiling: ceilingIn(setting) },
          setting.file,
          setting.today,
        )
      : []
  return [
    ...(consentBy === null ? ['nobody-named' as const] : []),
    ...(authority === null ? ['no-authority' as const] : []),
    ...read.faults,
    ...claimed,
    ...(soundMind === null ? ['sound-mind-not-asked' as const] : []),
    ...(soundMind === 'no' ? ['not-of-sound-mind' as const] : []),
  ]
}

function ceilingIn({ file, place }: Setting): Money {
  return newestEstimate(file.theCase)?.body.ceiling ?? { amount: '0', currency: place.currency ?? '' }
}

type ReadAuthority = { readonly authorised: Body['authorised']; readonly faults: readonly ConversationFault[] }

function readAuthority({ authority, authorised }: Conversation, place: Place): ReadAuthority {
  if (authority !== 'authorised') return { authorised: null, faults: [] }
  const { by, how, witness } = authorised
  const when = readMoment(authorised.when, place.zone)
  const until = authorised.until.trim() === '' ? null : readDay(authorised.until)
  const upTo = authorised.upTo.trim() === '' ? null : readMoney(authorised.upTo, place)
  const faults: ConversationFault[] = [
    ...(by === null || how === null ? ['authority-not-described' as const] : []),
    ...(when.kind === 'refusal' ? ['authorised-when' as const] : []),
    ...(until?.kind === 'refusal' ? ['authorised-until' as const] : []),
    ...(upTo?.kind === 'refusal' ? ['authorised-up-to' as const] : []),
  ]
  if (by === null || how === null || when.kind === 'refusal') return { authorised: null, faults }
  if (until?.kind === 'refusal' || upTo?.kind === 'refusal') return { authorised: null, faults }
  return {
    authorised: {
      by,
      how,
      when: when.answer as unknown as Moment,
      until: until === null ? null : String(until.answer),
      upTo: upTo === null ? null : (upTo.answer as unknown as Money),
      witness,
    },
    faults,
  }
}

function wishFaults({ resuscitate, mayExtend, photographs }: Conversation): ConversationFault[] {
  return [
    ...(resuscitate === null ? ['no-resuscitation-wish' as const] : []),
    ...(mayExtend === null ? ['no-extension-wish' as const] : []),
    ...(photographs === null ? ['no-photograph-wish' as const] : []),
  ]
}

/** "Not yet" is an answer, and says what was said; silence is none. */
function taughtFaults({ taught }: Conversation): ConversationFault[] {
  const all = askedBack.map((item) => taught[item])
  return [
    ...(all.every((one) => one?.answer) ? [] : ['not-asked-back' as const]),
    ...(all.some((one) => one?.answer === 'not-yet' && one.said.trim() === '') ? ['said-what' as const] : []),
  ]
}

function givingFaults(talk: Conversation): ConversationFault[] {
  const { given, copy, explainedBy } = talk
  const how =
    given === null
      ? (['no-way-given'] as const)
      : givingRefusalsOf({ ...givingIn(talk), soundMind: 'yes', given, explainedBy: explainedBy ?? '' })
  return [...how, ...(copy === null ? ['no-copy' as const] : [])]
}

function givingIn({ given, witness, strokes, name }: Conversation): Pick<Body, 'witness' | 'signature'> {
  if (given !== 'signed-here') return { witness, signature: null }
  const typed = name.trim()
  const signed = strokes.length > 0 || typed !== ''
  const signature = { strokes: strokes.map((points) => ({ points: [...points] })), name: typed === '' ? null : typed }
  return { witness, signature: signed ? signature : null }
}

function bodyIn(talk: Conversation, setting: Setting): Body | null {
  const { file, planned, told, place } = setting
  const newest = newestEstimate(file.theCase)
  const totals = newest && totalsOf(newest.body)
  const { surgeon, explainedBy, consentBy, authority, soundMind, resuscitate, mayExtend, photographs, given, copy } =
    talk
  if (!newest || totals?.kind !== 'answer' || !surgeon || !explainedBy || !consentBy || !authority) return null
  if (!soundMind || !resuscitate || !mayExtend || !photographs || !given || !copy) return null
  const ears = talk.ears.flatMap((side) => {
    const procedure = planned[side]
    return procedure === undefined ? [] : [{ side, procedure }]
  })
  const language = languageIn(file)
  const plan: Body['plan'] = {
    ears,
    mayExtend,
    extension: mayExtend === 'no' || talk.extension.trim() === '' ? null : talk.extension.trim(),
    surgeon,
    ceiling: newest.body.ceiling,
    leaflet: told.leafletOf(language),
    language,
    numbers: [...new Set(ears.map(({ procedure }) => procedure))].flatMap((one) => [
      ...told.numbersOf(file, one, language),
    ]),
  }
  return {
    plan,
    fingerprint: fingerprintOf(plan),
    estimate: { ...totals.answer, entry: newest.header.id },
    consentBy,
    authority,
    authorised: readAuthority(talk, place).authorised,
    soundMind,
    given,
    ...givingIn(talk),
    copy,
    resuscitate,
    photographs,
    teachBack: askedBack.flatMap((item) => taughtIn(item, talk)),
    explainedBy,
  }
}

/** The language in which we speak with the household. */
export function languageIn(file: CaseFile): string {
  return file.theCase.latest('household')?.body.language ?? file.clinic.language
}

function taughtIn(item: AskedBack, { taught }: Conversation): Taught[] {
  const one = taught[item]
  if (!one?.answer) return []
  const said = one.said.trim()
  return [{ item, answer: one.answer, said: said === '' ? null : said, again: one.again }]
}
