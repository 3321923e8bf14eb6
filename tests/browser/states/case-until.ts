import type { Page } from '@playwright/test'
import { entriesOf, type Program, sendEntries } from '../clinic.ts'

/**
 * A case that stands where Barley once stood: his own entries up to the last of that kind, under another name. The
 * surgeon of the tests writes them, because Barley's people have no account here.
 */
export async function copyUntil(program: Program, page: Page, name: string, kind: string): Promise<void> {
  const entries = await entriesOf(program, page, 'case:barley')
  const last = entries.findLastIndex(({ header }) => header.kind === kind)
  const before = entries.slice(0, last + 1)
  // Another id for each entry, in the texts that name it too.
  const mark = name.charCodeAt(0).toString(16).padStart(4, '0')
  const text = before
    .reduce((said, { header }) => said.replaceAll(header.id, header.id.slice(0, -4) + mark), JSON.stringify(before))
    .replaceAll(/(case:|animal-|operation-)barley/g, `$1${name.toLowerCase()}`)
    .replaceAll('"Barley"', `"${name}"`)
    .replaceAll('000000000091246', `0000000000${String(name.charCodeAt(0)).padStart(5, '0')}`)
  await sendEntries(program, page, JSON.parse(text))
}
