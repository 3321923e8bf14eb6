import type { CaseFile } from '#core/journal/clinic.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { ToldOf } from './index-ears.ts'
import type { ToldSign } from './told-signs.ts'

/**
 * What a file tells of its animal, for looking among the operated ears of all files.
 *
 * @example toldOfFile(file, sign).chip
 */
export function toldOfFile(file: CaseFile, { line, side }: Pick<ToldSign, 'line' | 'side'>): Omit<ToldOf, 'streams'> {
  const { theCase, contacts, clinic } = file
  const identity = theCase.latest('identity')?.body
  const owner = theCase
    .live('household')
    .flatMap(({ body }) => body.contacts)
    .find(({ roles }) => roles.includes('owner'))
  const known = owner && contacts.get(owner.contact)
  return {
    name: identity?.name ?? null,
    species: identity?.species ?? null,
    chip: identity?.chip ?? null,
    householdId: identity?.household ?? null,
    ownerName: known?.name ?? null,
    ownerPhone: known?.phone ?? null,
    born: identity?.born ?? null,
    breed: identity?.breed ?? null,
    side,
    day: dayOf({ at: line.at, zone: clinic.zone }),
  }
}
