import type { Species } from '#core/animal/species.ts'
import { chipDigits } from '#core/identity/chips.ts'
import type { Described, Match } from '#core/identity/match.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { redFlags } from '#core/journal/kinds/referral.ts'
import type { ToldOf } from '#core/late/index-ears.ts'
import { type LateAnswer, nothingSaidOfEars, standingAnswer } from '#core/late/late-answer.ts'
import { type Moment, type MomentRefusal, readMoment } from '#core/time/moment.ts'
import type { RedFlag, TriageAnswers, Urgency, UrgencyStanding } from './triage.ts'

type Referral = BodyOf<'referral'>
type Identity = BodyOf<'identity'>
type Answer = 'yes' | 'no' | 'not-asked'

/** Whether a file that looks like this animal is this animal, as the person at the telephone says. */
export type MatchAnswer = { readonly answer: 'same' | 'another'; readonly because: string }

/** What is written down while somebody is on the telephone. Null and empty: nobody has said yet. */
export type FirstCall = {
  readonly caller: Referral['caller'] | null
  readonly name: string
  readonly species: Species | null
  readonly breed: string
  readonly sex: Identity['sex'] | null
  readonly neutered: Identity['neutered'] | null
  readonly born: string
  readonly chip: string
  readonly flatFace: Identity['flatFace'] | null
  readonly ownerName: string
  readonly ownerPhone: string
  /** An owner who is on file already: their contact and household. */
  readonly knownOwner: { readonly contact: string; readonly household: string } | null
  readonly language: string
  /** The id of a vet on file, `new`, or empty for none. */
  readonly vet: string
  readonly vetName: string
  readonly vetPractice: string
  readonly vetPhone: string
  readonly side: Referral['reportedSide'] | null
  readonly complaint: string
  readonly signsFor: string
  readonly signsForUnit: DurationUnit
  readonly signs: Readonly<Partial<Record<RedFlag, Answer>>>
  readonly allergy: Answer | null
  readonly allergyTo: string
  readonly mayFetchRecords: Answer | null
  readonly urgency: Urgency | null
  readonly because: string
  /** By the stream of the file that looks like this animal. */
  readonly matches: Readonly<Record<string, MatchAnswer>>
  /** To which operated ear a late sign belongs; a call begun before anybody asked has none. */
  readonly late?: LateAnswer
}

/** A call at which nobody has said anything yet. Example: `emptyCall('en').species // null`. */
export function emptyCall(language: string): FirstCall {
  const animal = { name: '', species: null, breed: '', sex: null, neutered: null, born: '', chip: '', flatFace: null }
  const people = { ownerName: '', ownerPhone: '', knownOwner: null, language }
  const vet = { vet: '', vetName: '', vetPractice: '', vetPhone: '' }
  const said = { side: null, complaint: '', signsFor: '', signsForUnit: 'years', signs: {} } as const
  const safety = { allergy: null, allergyTo: '', mayFetchRecords: null }
  return { caller: null, ...animal, ...people, ...vet, ...said, ...safety, urgency: null, because: '', matches: {} }
}

export const durationUnits = ['days', 'weeks', 'months', 'years'] as const
export type DurationUnit = (typeof durationUnits)[number]
const daysIn: Readonly<Record<DurationUnit, number>> = { days: 1, weeks: 7, months: 30, years: 365 }

/** Whole days of signs, as coarse as it was said; null when nothing or no whole number was said. */
export function daysOfSigns({ signsFor, signsForUnit }: Pick<FirstCall, 'signsFor' | 'signsForUnit'>): number | null {
  return /^\d{1,5}$/.test(signsFor.trim()) ? Number(signsFor.trim()) * daysIn[signsForUnit] : null
}

/** The birth date as given, null when there is none, or why it cannot be read. */
export function bornOf({ born }: Pick<FirstCall, 'born'>, zone: string): Moment | MomentRefusal | null {
  return born.trim() === '' ? null : readMoment(born, zone)
}

export type CallFault =
  | 'chip-not-15-digits'
  | 'born-unreadable'
  | 'born-day-or-month-first'
  | 'signs-for-no-number'
  | 'no-language'

/** What was written so that it cannot be kept: each is said at its field. */
export function faultsIn(call: FirstCall, zone: string): CallFault[] {
  const chip = chipDigits(call.chip)
  const born = bornOf(call, zone)
  const wrongBirth = born !== null && 'because' in born ? born.because : null
  return [
    ...(chip !== '' && !/^\d{15}$/.test(chip) ? (['chip-not-15-digits'] as const) : []),
    ...(wrongBirth === 'day-or-month-first' ? (['born-day-or-month-first'] as const) : []),
    ...(wrongBirth !== null && wrongBirth !== 'day-or-month-first' ? (['born-unreadable'] as const) : []),
    ...(call.signsFor.trim() !== '' && daysOfSigns(call) === null ? (['signs-for-no-number'] as const) : []),
    ...(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(call.language) ? [] : (['no-language'] as const)),
  ]
}

/** What is known of the animal so far, to look for it among the files. */
export function describedBy(call: FirstCall, zone: string): Described {
  const born = bornOf(call, zone)
  const given = (text: string) => (text.trim() === '' ? null : text.trim())
  return {
    name: given(call.name),
    species: call.species,
    chip: given(chipDigits(call.chip)),
    householdId: call.knownOwner?.household ?? null,
    ownerName: given(call.ownerName),
    ownerPhone: given(call.ownerPhone),
    born: born === null || 'because' in born ? null : born,
  }
}

/** The answers that make it urgent or not; what nobody asked is `not-asked`. */
export function answersOf(call: FirstCall): TriageAnswers {
  return {
    signs: redFlags.map((sign) => ({ sign, answer: call.signs[sign] ?? 'not-asked' })),
    drugAllergy: call.allergy ?? 'not-asked',
    flatFace: call.flatFace ?? 'unknown',
    mayFetchRecords: call.mayFetchRecords ?? 'not-asked',
  }
}

/** The file the person says is the same animal; null for a new file. */
export function sameAs<Found extends Match>(call: FirstCall, matches: readonly Found[]): Found | null {
  return matches.find(({ row }) => call.matches[row.stream]?.answer === 'same') ?? null
}

/** An operated ear that is offered during the call, and the file it stands in. */
export type OfferedHere = { readonly operation: string; readonly stream: string }

/** What was said of the ears that are offered; an ear that is not offered any more was not chosen. */
export function lateAnswerOf(call: FirstCall, offered: readonly OfferedHere[]): LateAnswer {
  return standingAnswer(call.late ?? nothingSaidOfEars, offered)
}

/**
 * Files of which it need not be said whether they are this animal: a late sign was put to an ear of theirs, or somebody
 * is owed to say to which. The call then stands in a file of its own, and only two people join the two.
 */
function settledByEars(call: FirstCall, offered: readonly OfferedHere[]): ReadonlySet<string> {
  const { belongs, operation } = lateAnswerOf(call, offered)
  const chosen = offered.filter((ear) => belongs === 'unsure' || ear.operation === operation)
  return new Set(chosen.map(({ stream }) => stream))
}

/** What is heard of a late sign in the call so far. Example: `saidInCall(call).flags // ['swelling-under-ear']`. */
export function saidInCall({ complaint, signs }: FirstCall) {
  return {
    text: complaint,
    flags: redFlags.filter((sign): sign is RedFlag => signs[sign] === 'yes'),
    isComplaint: true,
  }
}

/** Who the animal of the call is, for looking among the operated ears of all files; null while nothing tells it apart. */
export function toldInCall(call: FirstCall, zone: string, today: string): Omit<ToldOf, 'streams'> | null {
  const described = describedBy(call, zone)
  const { name, chip, ownerName, ownerPhone, householdId, born } = described
  if ([name, chip, ownerName, ownerPhone, householdId, born].every((one) => one === null)) return null
  const breed = call.breed.trim() === '' ? null : call.breed.trim()
  return { ...described, breed, side: call.side ?? 'unknown', day: today }
}

export const callMissingCodes = [
  'caller',
  'name',
  'species',
  'owner-name',
  'vet-name',
  'match-answer',
  'match-because',
  'index-ear',
  'side',
  'complaint',
  'allergy-to',
  'urgency',
  'urgency-because',
] as const
export type CallMissing = (typeof callMissingCodes)[number]

/**
 * What must still be said before the call can be kept. A file that is likely the same animal wants an answer, and "another
 * animal" its reason: two files of one animal are the harm. Red flags may stay unasked; then they are kept as not asked.
 *
 * @example missingIn(emptyCall('en'), [], standing)[0] // 'caller'
 */
export function missingIn(
  call: FirstCall,
  matches: readonly Match[],
  standing: UrgencyStanding,
  offered: readonly OfferedHere[] = [],
): CallMissing[] {
  const empty = (text: string) => text.trim() === ''
  const isNew = sameAs(call, matches) === null
  const settled = settledByEars(call, offered)
  const likely = matches
    .filter(({ strength, row }) => strength === 'likely' && !settled.has(row.stream))
    .map(({ row }) => call.matches[row.stream])
  const missing: readonly (readonly [boolean, CallMissing])[] = [
    [call.caller === null, 'caller'],
    [isNew && empty(call.name), 'name'],
    [isNew && call.species === null, 'species'],
    [isNew && call.knownOwner === null && empty(call.ownerName), 'owner-name'],
    [call.vet === 'new' && empty(call.vetName), 'vet-name'],
    [isNew && likely.some((answer) => answer === undefined), 'match-answer'],
    [isNew && likely.some((answer) => answer?.answer === 'another' && empty(answer.because)), 'match-because'],
    [offered.length > 0 && lateAnswerOf(call, offered).belongs === null, 'index-ear'],
    [call.side === null, 'side'],
    [empty(call.complaint), 'complaint'],
    [call.allergy === 'yes' && empty(call.allergyTo), 'allergy-to'],
    [standing.urgency === null, 'urgency'],
    [standing.reason === 'asked' && empty(call.because), 'urgency-because'],
  ]
  return missing.filter(([is]) => is).map(([, code]) => code)
}
