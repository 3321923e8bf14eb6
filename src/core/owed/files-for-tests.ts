import type { CaseFile } from '#core/journal/clinic.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'

/** A file around entries for tests: an invented clinic in London, open every day unless said otherwise. */
export function fileOf(
  entries: readonly Entry[],
  closed: { readonly weekdays?: readonly number[]; readonly days?: readonly string[]; readonly zone?: string } = {},
): CaseFile {
  return {
    clinicId: 'clinic-1',
    clinic: {
      name: 'The Invented Ear Practice',
      address: ['1 Nowhere Road'],
      phone: '0000 000',
      outOfHoursPhone: null,
      email: null,
      zone: closed.zone ?? 'Europe/London',
      language: 'en',
      decimalMark: '.',
      currency: 'GBP',
      closedWeekdays: [...(closed.weekdays ?? [])],
    },
    people: new Map(),
    contacts: new Map(),
    closedDays: closed.days ?? [],
    stream: 'case:0001',
    theCase: fold(entries.filter(({ stream }) => stream !== 'clinic')),
    house: fold(entries.filter(({ stream }) => stream === 'clinic')),
  }
}
