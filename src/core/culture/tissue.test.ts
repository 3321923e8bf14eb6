import { describe, expect, it } from 'vitest'
import { tissueFacts } from '#content/follow-up/tissue-diagnoses.ts'
import { tissueSaid } from './tissue.ts'

const tissue = (tumour: string | null, margins: 'clear' | 'narrow' | 'involved' | 'not-stated' = 'clear') => {
  return { diagnosis: 'As printed.', tumour, margins, marginMillimetres: null }
}
const dog = { species: 'dog', operated: true } as const
const cat = { species: 'cat', operated: true } as const
const texts = (found: ReturnType<typeof tissueSaid>) => found.sentences.map(({ value }) => value).join(' ')
const chapters = (found: ReturnType<typeof tissueSaid>) => found.changes.map(({ chapter }) => chapter)

describe('what is said of a tissue report', () => {
  it('is of its species: 48 of 81 dogs, 56 of 64 cats (London 1996, abstract); 50.3 months in cats (Bacon 2003, abstract)', () => {
    const ofDog = texts(tissueSaid(tissue('ceruminous-adenocarcinoma'), dog, tissueFacts))
    const ofCat = texts(tissueSaid(tissue('ceruminous-adenocarcinoma'), cat, tissueFacts))
    expect(ofDog).toContain('81 dogs')
    expect(ofDog).not.toContain('cats')
    expect(ofCat).toContain('50.3 months')
    expect(ofCat).not.toContain('dogs')
  })

  it('keeps both sides where sources disagree on spread in cats', () => {
    expect(texts(tissueSaid(tissue('ceruminous-adenocarcinoma'), cat, tissueFacts))).toContain('5 of 56')
  })

  it('changes the choice before an operation and the year after it, when it is malignant', () => {
    const scc = tissue('squamous-cell-carcinoma')
    expect(chapters(tissueSaid(scc, { ...cat, operated: false }, tissueFacts))).toEqual(['Choice'])
    expect(chapters(tissueSaid(scc, cat, tissueFacts))).toEqual(['Year'])
    expect(chapters(tissueSaid(tissue('benign-tumour'), cat, tissueFacts))).toEqual([])
  })

  it('takes an edge that is not free to the choice again, also of a benign tumour, and asks where it is not stated', () => {
    expect(chapters(tissueSaid(tissue('benign-tumour', 'involved'), dog, tissueFacts))).toEqual(['Choice'])
    expect(texts(tissueSaid(tissue('benign-tumour', 'not-stated'), dog, tissueFacts))).toContain('ask the laboratory')
    expect(texts(tissueSaid(tissue('chronic-inflammation', 'not-stated'), dog, tissueFacts))).toBe('')
  })

  it('never takes a diagnosis that nobody read for harmless', () => {
    const unread = tissueSaid(tissue(null), dog, tissueFacts)
    expect(unread.diagnosis).toBeNull()
    expect(texts(unread)).toContain('no figure stands here')
    expect(chapters(unread)).toEqual(['Year'])
    expect(chapters(tissueSaid(tissue('a word of its own'), dog, tissueFacts))).toEqual(['Year'])
  })

  it('names each diagnosis once', () => {
    const ids = tissueFacts.diagnoses.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
  })
})
