import { describe, expect, it } from 'vitest'
import { cite } from './cite.ts'
import type { Provenance, Source } from './sourced.ts'

const library: Source[] = [
  { id: 'author-2020', citation: 'Author 2020', seenAt: 'abstract page', strength: 'study' },
  { id: 'label-a', citation: 'Label A', strength: 'label' },
]
const fact: Provenance = {
  sources: ['author-2020'],
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
}

describe('citing facts', () => {
  it('names a source once with where it was seen', () => {
    expect(cite([fact, fact], library)).toEqual([
      {
        id: 'author-2020',
        citation: 'Author 2020',
        where: 'abstract page',
        known: 'read',
        confidence: 'high',
        strength: 'study',
      },
    ])
  })

  it('keeps two readings of one source apart when they are known differently', () => {
    expect(cite([fact, { ...fact, known: 'remembered' }], library)).toHaveLength(2)
  })

  it('prefers the page of the fact, and says null when nothing is recorded', () => {
    expect(cite([{ ...fact, where: 'table 2' }], library)[0]?.where).toBe('table 2')
    expect(cite([{ ...fact, sources: ['label-a'] }], library)[0]?.where).toBeNull()
  })

  it('throws on a source that content does not hold', () => {
    expect(() => cite([{ ...fact, sources: ['nobody'] }], library)).toThrow('There is no source "nobody".')
  })
})
