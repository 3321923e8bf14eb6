import { describe, expect, it } from 'vitest'
import { allowances } from '#content/languages/allowances.ts'
import { english } from '#content/languages/english.ts'
import { languages } from '#content/languages/index.ts'
import { sources } from '#content/sources/index.ts'
import { studies } from '#content/studies/index.ts'
import { compareWords, sentenceTrouble } from '#core/agreement/compare-words.ts'

const others = Object.entries(languages).filter(([language]) => language !== 'en')

const followed = [
  ...new Set(
    studies.flatMap(({ rows }) => rows.flatMap((row) => (row.followed.kind === 'stated' ? [row.followed.text] : []))),
  ),
]

describe.each(others)('The words of %s', (language, words) => {
  it('are whole, and say the same numbers as the English', () => {
    expect(compareWords(english, words, allowances, language)).toEqual([])
  })

  it('say how long each study looked, with the numbers of the study', () => {
    const troubles = followed.flatMap((text) => {
      const said = words.odds.followed[text]
      return said === undefined ? [`${text}: missing`] : sentenceTrouble(text, said).map((one) => `${text}: ${one}`)
    })
    expect(followed.length).toBeGreaterThan(10)
    expect(troubles).toEqual([])
    expect(Object.keys(words.odds.followed).filter((text) => !followed.includes(text))).toEqual([])
  })

  it('name the sources that are no publication, each with a line of its own', () => {
    const ours = sources.filter(({ id }) => Object.hasOwn(words.unpublished, id))
    expect(ours.map(({ id }) => id).sort()).toEqual(Object.keys(words.unpublished).sort())
    expect(ours.length).toBeGreaterThan(0)
    for (const { id, citation } of ours) expect(sentenceTrouble(citation, words.unpublished[id] ?? '')).toEqual([])
  })

  it('say who translated them and that it is open to be read by another', () => {
    expect(words.aboutTranslation?.length).toBeGreaterThan(50)
  })

  it('would be caught with one number changed, one sentence left out or one only copied', () => {
    const { leaflet } = words
    const planted = {
      ...words,
      leaflet: {
        ...leaflet,
        ofFewer: leaflet.ofFewer.replace('1', '2'),
        own: undefined,
        undecided: english.leaflet.undecided,
      },
    }
    expect(compareWords(english, planted, allowances, language)).toEqual([
      { path: 'leaflet.ofFewer', trouble: 'other-numbers' },
      { path: 'leaflet.own', trouble: 'missing' },
      { path: 'leaflet.undecided', trouble: 'not-translated' },
    ])
  })
})
