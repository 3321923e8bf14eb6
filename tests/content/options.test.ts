import { describe, expect, it } from 'vitest'
import { options } from '#content/options/index.ts'
import { optionsInEnglish } from '#content/wording/options.ts'
import { countText, fleschKincaidGrade } from '#core/agreement/readability.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import { type ChoiceOption, optionHeadings } from '#core/choice/option.ts'
import { type Told, toldFor } from '#core/choice/told.ts'
import { toldIds } from '#core/choice/told-ids.ts'

const all: readonly ChoiceOption[] = options
const told = all.flatMap((option) =>
  option.species.map((species) => [option.id, species, toldFor(option, species, optionsInEnglish)] as const),
)

/** What no owner can weigh without a count beside it, and what would be one count hidden in words. */
const bareWords =
  /\b(rare|rarely|common|commonly|safe|safely|risk-free|routine|likely|unlikely|1 in|one in|per cent)\b|%/i

function wordsOf(texts: readonly string[]): number {
  return countText(texts.join('\n')).words
}

function whereWordsDiffer(option: ChoiceOption, species: Species): [string[], string[]] {
  const words = optionsInEnglish.options[option.id]
  const own = (of: object | undefined) => Object.keys(of ?? {}).sort()
  return [own(option[species]), own(species in words ? (words[species as keyof typeof words] as object) : undefined)]
}

describe('the options told to an owner', () => {
  it('are all there once, with what is told of one session and two', () => {
    expect(all.map(({ id }) => id).sort()).toEqual([...toldIds].sort())
    expect(Object.keys(optionsInEnglish.options)).toEqual([...toldIds])
  })

  it.each(told)('%s for a %s: every heading is told, in whole sentences, with a source', (_, __, lines) => {
    expect(lines.map(({ heading }) => heading)).toEqual([...optionHeadings])
    for (const { text, known } of lines) {
      expect(text).toMatch(/^\p{Lu}.*\.$/u)
      expect(known.length).toBeGreaterThan(0)
    }
  })

  it.each(told)('%s for a %s is told at about the same length as the others', (_, __, lines: readonly Told[]) => {
    const whole = wordsOf(lines.map(({ text }) => text))
    expect(whole).toBeGreaterThanOrEqual(165)
    expect(whole).toBeLessThanOrEqual(235)
    for (const { heading, text } of lines) {
      expect(wordsOf([text]), heading).toBeGreaterThanOrEqual(11)
      expect(wordsOf([text]), heading).toBeLessThanOrEqual(37)
    }
  })

  it.each(told)('%s for a %s reads at grade 8 or below (Kincaid et al. 1975)', (_, __, lines) => {
    expect(fleschKincaidGrade(countText(lines.map(({ text }) => text).join('\n'))).toNumber()).toBeLessThanOrEqual(8)
  })

  it.each(told)('%s for a %s: no word stands where a count belongs', (_, __, lines) => {
    for (const { text } of lines) expect(text).not.toMatch(bareWords)
    expect('It is rare.').toMatch(bareWords)
  })

  it.each(all.map((option) => [option.id, option] as const))(
    '%s: words of one species have sources of their own',
    (_, option) => {
      for (const species of speciesList) {
        const [known, said] = whereWordsDiffer(option, species)
        expect(known).toEqual(said)
      }
    },
  )

  it('leave traction to cats', () => {
    expect(all.filter(({ species }) => !species.includes('dog')).map(({ id }) => id)).toEqual(['traction'])
  })
})
