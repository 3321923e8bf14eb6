import { describe, expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { editionName } from './edition-name.ts'
import { conventionCalled, editionById, editionCalled } from './editions.ts'

const { editions } = susceptibility

describe('the edition that a text means', () => {
  it.each([
    ['CLSI VET01S ed7', 'clsi-vet01s-7'],
    ['CLSI VET01S ed7 (2024)', 'clsi-vet01s-7'],
    ['VET01S 7th ed', 'clsi-vet01s-7'],
    ['CLSI VET01S 7th edition', 'clsi-vet01s-7'],
    ['clsi vet01s-6', 'clsi-vet01s-6'],
    ['EUCAST v15.0', 'eucast-15'],
    ['EUCAST 15', 'eucast-15'],
    ['EUCAST 2024', 'eucast-14'],
    ['M100 ed35', 'clsi-m100-35'],
    ['CLSI M100 2025', 'clsi-m100-35'],
  ])('%s', (text, id) => expect(editionCalled(text, editions)?.id).toBe(id))

  it('is none for a standard without its edition, or one that is not held', () => {
    for (const text of ['CLSI', 'EUCAST', 'CLSI VET01S', 'CLSI VET01S ed8', 'v15', '']) {
      expect(editionCalled(text, editions), text).toBeNull()
    }
  })

  it('is found by the long name of each', () => {
    for (const edition of editions) expect(editionCalled(editionName(edition), editions)).toBe(edition)
  })

  it('is at least of one system, where only that is named', () => {
    expect(['EUCAST', 'CLSI', 'VET01S', 'M100, newest'].map(conventionCalled)).toEqual([
      'EUCAST',
      'CLSI',
      'CLSI',
      'CLSI',
    ])
    for (const text of ['CLSI or EUCAST', 'in house', '']) expect(conventionCalled(text)).toBeNull()
  })

  it('that nobody holds is a bug, not a guess', () => {
    expect(() => editionById(editions, 'clsi-vet01s-8')).toThrow(/clsi-vet01s-8/)
  })
})
