import { susceptibility } from '#content/susceptibility/index.ts'
import type { EditionFault } from '#core/culture/edition-column.ts'
import { readEditionFile } from '#core/culture/edition-file.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { sayEditionFault } from '#documents/sources/say-edition-fault.ts'

export type CheckedEdition =
  | { readonly ok: true; readonly edition: string; readonly rows: number }
  | { readonly ok: false; readonly faults: readonly (EditionFault & { readonly text: string })[] }

/** Whether the file of a clinic's own edition can be loaded, with everything that is wrong in it. It loads nothing. */
export function checkEditionFile(text: string): CheckedEdition {
  const read = readEditionFile(text, susceptibility)
  if (read.kind === 'answer') return { ok: true, edition: editionName(read.answer), rows: read.answer.rows.length }
  return { ok: false, faults: read.refusal.map((fault) => ({ ...fault, text: sayEditionFault(fault) })) }
}
