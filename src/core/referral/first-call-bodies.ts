import { chipDigits } from '#core/identity/chips.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { ContactRow } from '#core/journal/registers.ts'
import { answersOf, bornOf, daysOfSigns, type FirstCall } from './first-call.ts'
import type { Urgency } from './triage.ts'

/** The ids of the people of the call: those on file, or those made for new ones. */
export type PeopleIds = { readonly owner: string; readonly household: string; readonly vet: string | null }

/** Who the animal is, as told at the first call; throws where a species was not asked, which `missingIn` says before. */
export function identityOf(call: FirstCall, ids: PeopleIds, zone: string): BodyOf<'identity'> {
  const born = bornOf(call, zone)
  if (call.species === null) throw new Error('The species was not asked.')
  return {
    name: call.name.trim(),
    species: call.species,
    breed: given(call.breed),
    sex: call.sex ?? 'unknown',
    neutered: call.neutered ?? 'unknown',
    born: born === null || 'because' in born ? null : born,
    chip: given(chipDigits(call.chip)),
    household: ids.household,
    referringVet: ids.vet,
    flatFace: call.flatFace ?? 'unknown',
    abcb1: 'unknown',
  }
}

/** The household: its owner decides until somebody says otherwise. */
export function householdOf(call: FirstCall, ids: PeopleIds): BodyOf<'household'> {
  return {
    contacts: [{ contact: ids.owner, roles: ['owner'], mayConsent: true }],
    language: call.language,
    otherAnimals: null,
  }
}

/**
 * The call itself. `because` is what the rules say of its urgency and what the person adds.
 *
 * @example referralOf(call, ids, { urgency: 'today', because: 'Head tilt: …' }).reportedSide // 'LEFT'
 */
export function referralOf(
  call: FirstCall,
  ids: Pick<PeopleIds, 'vet'> & { readonly owner: string | null },
  decided: { readonly urgency: Urgency; readonly because: string },
): BodyOf<'referral'> {
  const { caller, side } = call
  if (caller === null || side === null) throw new Error('The caller or the side was not asked.')
  const answers = answersOf(call)
  return {
    caller,
    contact: caller === 'owner' ? ids.owner : caller === 'referring-vet' ? ids.vet : null,
    reportedSide: side,
    complaint: call.complaint.trim(),
    daysOfSigns: daysOfSigns(call),
    signs: [...answers.signs],
    drugAllergy: { answer: answers.drugAllergy, what: answers.drugAllergy === 'yes' ? given(call.allergyTo) : null },
    urgency: decided.urgency,
    because: [decided.because, call.because.trim()].filter((text) => text !== '').join(' '),
    mayFetchRecords: answers.mayFetchRecords,
  }
}

/** A new owner as a row of the contacts; their address comes later. */
export function ownerRow(call: FirstCall): ContactRow {
  const who = { name: call.ownerName.trim(), practice: null, phone: given(call.ownerPhone) }
  return { kind: 'owner', ...who, email: null, address: [] }
}

export function vetRow(call: FirstCall): ContactRow {
  const who = { name: call.vetName.trim(), practice: given(call.vetPractice), phone: given(call.vetPhone) }
  return { kind: 'vet', ...who, email: null, address: [] }
}

function given(text: string): string | null {
  return text.trim() === '' ? null : text.trim()
}
