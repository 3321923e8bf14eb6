import type { CaseFile } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { derivedUuid } from './naming.ts'

export function patientUuid(file: CaseFile, animal: string): string {
  return derivedUuid(file.clinicId, file.stream, 'animal', animal)
}

export function animalOfLine({ header: { subject } }: Pick<Line<unknown>, 'header'>): string | null {
  return 'animal' in subject ? subject.animal : null
}

/** Every animal that an entry of the case is about; one, unless something was filed wrongly. */
export function animalsOf({ theCase }: CaseFile): string[] {
  const found = theCase.lines.flatMap((line) => animalOfLine(line) ?? [])
  return [...new Set(found)]
}
