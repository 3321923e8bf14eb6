import { caseFileOf, type Journal } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { InputError } from '../input.ts'

/** One case with the clinic around it. Throws an InputError for a journal without its clinic line. */
export function caseFile(journal: Journal, stream: string): CaseFile {
  const file = caseFileOf(journal, stream)
  if (file) return file
  const message = 'The journal has no clinic line; a case needs the clinic it belongs to.'
  throw new InputError('clinic-missing', 'clinic', message)
}
