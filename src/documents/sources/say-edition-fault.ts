import { editionFaults, editionFileWords as words } from '#content/wording/edition-file.ts'
import type { EditionFault } from '#core/culture/edition-column.ts'
import { fill } from '#core/outcome/finding.ts'

/**
 * What is wrong in the file of an edition: the place, what stands there, what would be right.
 *
 * @example sayEditionFault(fault) // 'line 14, drug: Nobody here knows the drug “cefalexine”. It may mean: cefalexin.'
 */
export function sayEditionFault({ code, line, column, found, near = [] }: EditionFault): string {
  const place = column
    ? fill(words.placeOfColumn, { line: String(line), column })
    : fill(words.place, { line: String(line) })
  const said = fill(editionFaults[code], { found, near: near.join(', ') })
  const offered = (code === 'organism-unknown' || code === 'drug-unknown') && near.length > 0
  return fill(words.fault, { place, said: offered ? fill(words.near, { said, near: near.join(', ') }) : said })
}
