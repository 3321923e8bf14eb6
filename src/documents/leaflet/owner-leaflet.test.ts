import { expect, test } from 'vitest'
import { options } from '#content/options/index.ts'
import { leafletInEnglish } from '#content/wording/leaflet.ts'
import { optionsInEnglish } from '#content/wording/options.ts'
import { countText, fleschKincaidGrade, smogGrade } from '#core/agreement/readability.ts'
import type { Species } from '#core/animal/species.ts'
import { speciesList } from '#core/animal/species.ts'
import { optionNamed } from '#core/choice/told.ts'
import type { Entry } from '#core/journal/entry.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { type Block, type Paper, runsOf, type Words } from '../render/model.ts'
import { renderText } from '../render/text.ts'
import { ownerLeaflet } from './owner-leaflet.ts'

function entriesFor(species: Species): Entry[] {
  return exampleEntries().map((entry) =>
    entry.kind === 'identity' ? { ...entry, body: { ...(entry.body as object), species } as typeof entry.body } : entry,
  )
}

function leafletFor(species: Species, entries = entriesFor(species)): Paper {
  const made = ownerLeaflet.of(inputFor(entries))
  if (!isPaper(made)) throw new Error(made.because)
  return made
}

function plain(words: Words): string {
  return runsOf(words)
    .map(({ text }) => text)
    .join('')
}

/** Every sentence an owner reads, save the list of publications. */
function read({ blocks }: Paper): string {
  const end = blocks.findIndex((block) => block.kind === 'heading' && block.text === leafletInEnglish.sources)
  return blocks.slice(0, end).flatMap(linesOf).join('\n')
}

function linesOf(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
      return [block.text]
    case 'paragraph':
      return [plain(block.words)]
    case 'list':
      return block.items.map(plain)
    case 'facts':
      return block.facts.map(({ value }) => plain(value))
    case 'table':
      return block.rows.flatMap((row) => row.map(plain))
    case 'callout':
      return block.lines.map(plain)
    default:
      return []
  }
}

test.each(speciesList)('The whole leaflet for a %s reads at grade 8 or below', (species) => {
  // Flesch–Kincaid (Kincaid et al. 1975); the target of grade 6 to 8 is that of the owner-information guidance.
  const counts = countText(read(leafletFor(species)))
  expect(counts.sentences).toBeGreaterThan(100)
  expect(fleschKincaidGrade(counts).toNumber()).toBeLessThanOrEqual(8)
  expect(smogGrade(counts).toNumber()).toBeLessThanOrEqual(10)
})

test.each(speciesList)(
  'Each choice for a %s is told under the same headings, no surgery and euthanasia among them',
  (species) => {
    const { blocks } = leafletFor(species)
    for (const option of optionIds) {
      const name = optionsInEnglish.options[option].name
      const at = blocks.findIndex((block) => block.kind === 'heading' && block.text === name)
      expect(at >= 0).toBe(optionNamed(option, options).species.includes(species))
      if (at < 0) continue
      const told = blocks.slice(at + 1, at + 4).flatMap((block) => (block.kind === 'facts' ? block.facts : []))
      expect(told.map(({ term }) => term)).toEqual(Object.values(optionsInEnglish.headings))
    }
  },
)

test('One day or two for both ears is told as the choices are, and only when both ears are ill', () => {
  const staged = optionsInEnglish.options.staged.name
  const bothIll = entriesFor('cat').map((entry) =>
    entry.kind === 'referral'
      ? { ...entry, body: { ...(entry.body as object), reportedSide: 'BOTH' } as typeof entry.body }
      : entry,
  )
  expect(read(leafletFor('cat'))).not.toContain(staged)
  expect(read(leafletFor('cat', bothIll))).toContain(staged)
  expect(read(leafletFor('cat', bothIll))).toContain('In cats, opening both middle ears from below on one day')
})

test('A published count stands with its study, its number, its range and where it was read', () => {
  // Fox et al., BSAVA Congress 2008: facial deficit in 81 of 309 dogs; exact interval 21 to 31 of 100.
  const text = read(leafletFor('dog'))
  expect(text).toContain('In one study of 309 dogs, 81 had a weak face after surgery. That is about 26 of 100')
  expect(renderText(leafletFor('dog'))).toMatch(/\[\d+\] Fox E.*309 dogs.*\(read\)/)
})

test('Dogs and cats never share a number', () => {
  expect(read(leafletFor('cat'))).not.toMatch(/\d+ (operated ears of )?dogs/)
  expect(read(leafletFor('dog'))).not.toMatch(/\d+ (operated ears of )?cats/)
})

test('What nobody counted is said to be unknown, not left out', () => {
  const text = read(leafletFor('dog'))
  expect(text).toMatch(/Not known for a dog: .*a weak face that stayed/)
  expect(text).toContain('Not known does not mean never.')
})

test('The allergy stays, whatever is done to the ear', () => {
  expect(read(leafletFor('dog'))).toContain('It does not cure an allergy.')
})

test('What was said about each choice stands beside it, with the side in words', () => {
  expect(read(leafletFor('dog'))).toContain('You chose this for the LEFT ear: Canal closed and mineral')
})

test('An ear that nobody looked at is said to be so', () => {
  expect(read(leafletFor('dog'))).toContain('The RIGHT ear has not been looked at yet.')
})

test('A household of another language is told that the paper exists in English only', () => {
  const entries = entriesFor('dog').map((entry) =>
    entry.kind === 'household'
      ? { ...entry, body: { ...(entry.body as object), language: 'pt-BR' } as typeof entry.body }
      : entry,
  )
  expect(read(leafletFor('dog', entries))).toContain('This paper exists in English only')
})

test('Before an ear was looked at or a choice talked over there is no leaflet', () => {
  const made = ownerLeaflet.of(inputFor(exampleEntries().filter(({ kind }) => kind === 'identity')))
  expect(made).toMatchObject({ kind: 'not-yet' })
})
