import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { LateSignRules } from '#core/late/late-signs.ts'
import type { Level } from '#core/outcome/finding.ts'
import type { QuestionRules } from '#core/questionnaire/questionnaire.ts'
import type { Urgency } from '#core/referral/triage.ts'
import type { Period, Span } from '#core/time/calendar-day.ts'
import type { Quantity } from '#core/units/quantity.ts'
import type { PainScales } from '#core/ward/pain-scale.ts'

/** A fact, or the plain statement that nothing is known. */
export type Perhaps<Fact> =
  | { readonly kind: 'known'; readonly fact: Fact }
  | { readonly kind: 'unknown'; readonly because: string }

export const followUpSteps = [
  'first-call',
  'suture-check',
  'wound-week-4',
  'recheck-4-to-6-weeks',
  'recheck-3-months',
  'recheck-6-months',
  'twelve-months',
] as const
export type FollowUpStepId = (typeof followUpSteps)[number]

/** One thing that falls due after the operation: a call, a visit, or the status after a year. */
export type FollowUpStep = {
  readonly id: FollowUpStepId
  readonly way: 'call' | 'visit' | 'status'
  readonly window: Sourced<Span>
}

export const faceLooks = ['day-1', 'day-3', 'day-10-14', 'day-28'] as const
export type FaceLookId = (typeof faceLooks)[number]

/** One look at face and eye of an operated ear. `here`: in the ward or wherever the animal is; such a look never moves. */
export type FaceLook = { readonly id: FaceLookId; readonly way: 'here' | 'visit'; readonly window: Sourced<Span> }

/** What falls due in the year after one procedure. */
export type FollowUp = {
  readonly steps: readonly FollowUpStep[]
  readonly faceLooks: Perhaps<readonly FaceLook[]>
  /** Plans to settle at the recheck of weeks 4 to 6. */
  readonly plans: readonly ('skin' | 'other-ear')[]
}

/** The rounds of an animal that lies in the ward, each with its own interval; a clinic may set every one of them. */
export const wardSpans = [
  'pain-early',
  'pain',
  'pain-again',
  'airway-early',
  'airway',
  'airway-watched',
  'temperature-early',
  'temperature',
  'first-blink',
  'blink-again',
  'eye-gel',
  'eye-ointment',
  'food-first',
  'food',
  'urine',
  'owner-first',
  'owner',
] as const
export type WardSpan = (typeof wardSpans)[number]

/** What is looked at in the ward and how often; what nobody published is said to be the house's. */
export type WardRules = {
  /** From so long after the last one until so long after it. */
  readonly every: Readonly<Record<WardSpan, Sourced<Span>>>
  /** For so long after the operation pain is scored at the early interval. */
  readonly painEarlyFor: Sourced<Period>
  /** After so long without a line it is asked whether the animal went home. */
  readonly silentAfter: Sourced<Period>
  /** Uses of a drug that answer a pain score. */
  readonly relieves: Sourced<readonly string[]>
  /** Drugs that keep an eye wet, by what they are. */
  readonly wetsEye: Readonly<Record<string, 'eye-gel' | 'eye-ointment'>>
}

/** The rules of asking again that belong to every procedure. */
export type OwedRules = {
  /** After a first call: until when an urgent animal is seen, and when a routine one that nothing follows is rung. */
  readonly referral: Readonly<Record<Urgency, Sourced<Span>>>
  readonly face: {
    /** After the last planned look, until the face and eye are normal. */
    readonly thenEvery: Sourced<Period>
    /** An eye at risk: looked at again after this long, never unseen for longer than the limit. */
    readonly atRiskAgain: Sourced<Period>
    readonly atRiskLimit: Sourced<Period>
    readonly lowTears: Sourced<Quantity<'mm/min'>>
    readonly normalTears: Sourced<Quantity<'mm/min'>>
    readonly lubricate: Sourced<string>
  }
  /** So long after the last block, or after the cut, no block acts any more, whatever the drug and whoever says so. */
  readonly blockOver: Sourced<Period>
  /** How long a missing blink may still be the block, by drug. A drug that is not listed is not known. */
  readonly blockLasts: Readonly<Record<string, Sourced<Period>>>
  readonly results: {
    readonly culture: Sourced<Span>
    readonly histology: Sourced<Span>
    readonly cytology: Sourced<Span>
    readonly readWithin: Sourced<Period>
    readonly changeWithin: Sourced<Period>
    readonly ownerToldWithin: Sourced<Period>
    readonly vetToldWithin: Sourced<Period>
  }
  readonly before: {
    readonly baseline: Sourced<string>
    readonly consent: Sourced<string>
    readonly secondCheck: Sourced<string>
    readonly weightNotOlderThan: Sourced<Period>
    readonly fasting: FastingRules
    readonly tests: TheatreTests
  }
  readonly painScales: PainScales
  readonly ward: WardRules
  /** Within this time a second person signs for a declared emergency. */
  readonly secondName: Sourced<Quantity<'h'>>
  /** Why an operation is signed out before the animal leaves, and an emergency told the same day. */
  readonly signOut: Sourced<string>
  readonly emergencyTold: Sourced<string>
  readonly settleWithin: Sourced<Period>
  readonly lateEventWithin: Sourced<Period>
  /** Which complaints are a late sign of an operated ear, and from when on. */
  readonly lateSigns: LateSignRules
  /** What an owner sent through the private link is read and answered. */
  readonly wishesReadWithin: Sourced<Period>
  /** What the referring practice sent through its link is read. */
  readonly vetAnswerReadWithin: Sourced<Period>
  /** A death that it told is confirmed with it. */
  readonly vetDeathConfirmedWithin: Sourced<Period>
  readonly ownerNoteAnsweredWithin: Sourced<Period>
  /** What owners are asked at home, when, and what is done about an answer. */
  readonly questions: QuestionRules
  readonly costs: {
    /** Of 100 parts of the ceiling: from here on the owner is rung. */
    readonly askFrom: Sourced<string>
    /** The owner is rung, at the latest when the ceiling is passed. */
    readonly callWithin: Sourced<Period>
    /** An edition that took the place of another is answered. */
    readonly answerWithin: Sourced<Period>
  }
  /** After so many tries over so many channels, "unknown" may be written down. */
  readonly politeTries: Sourced<{ readonly tries: number; readonly channels: number }>
}

export const theatreTests = ['blood-cells', 'blood-chemistry', 'clotting', 'blood-type', 'assessment', 'jaw'] as const
/** How much each thing weighs that is looked at before the cut, for each species. */
export type TheatreTests = Readonly<Record<(typeof theatreTests)[number], Sourced<Readonly<Record<Species, Level>>>>>

/** Hours without food before anaesthesia. Advice that disagrees is kept beside, never averaged. */
export type FastingRules = {
  readonly grown: Sourced<Span>
  readonly youngOrSmall: Sourced<{ readonly belowWeeks: number; readonly below: Quantity<'kg'>; readonly span: Span }>
  readonly disagrees: readonly Sourced<string>[]
  /** Animals for whom other hours hold and whom the record does not name: said beside every time. */
  readonly exceptions: readonly Sourced<string>[]
}
