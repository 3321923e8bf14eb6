import type { OwnerWords } from '#content/languages/owner-words.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { type Carriage, carriagesOf, namesOfCarriages } from '#core/culture/carriage.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Block, heading, list, paragraph } from '../render/model.ts'

/** What an owner does while the animal carries a germ that many medicines do not kill. */
export function hygieneBlocks(file: CaseFile, { hygiene: words }: OwnerWords): Block[] {
  const carriages = carriagesOf(file, susceptibility)
  if (carriages.length === 0) return []
  const sure = carriages.filter((one) => one.sure)
  const open = carriages.filter((one) => !one.sure && !sure.some(({ name }) => name === one.name))
  const said = (template: string, found: readonly Carriage[]) =>
    found.length === 0 ? [] : [fill(template, { name: namesOfCarriages(found) })]
  return [
    heading(1, words.title),
    paragraph([...said(words.found, sure), ...said(words.maybe, open)].join(' ')),
    list(words.items.value),
    paragraph(`${words.keep} ${words.tellVets}`),
  ]
}
