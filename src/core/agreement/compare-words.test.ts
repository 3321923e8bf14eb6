import { describe, expect, it } from 'vitest'
import { compareWords, sentenceTrouble, type WordsAllowances } from './compare-words.ts'

const none: WordsAllowances = { facts: [], own: [], forTheClinic: [], same: {} }
const english = {
  title: 'At home with {name}',
  list: ['one dog', '26 of 100'],
  told: { value: 'Bring water.', known: 'read', checked: '2026-11-25' },
  species: ['dog'],
}
const spanish = {
  title: 'En casa con {name}',
  list: ['un perro', '26 de cada 100'],
  told: { value: 'Traiga agua.', known: 'read', checked: '2026-11-25' },
  species: ['dog'],
}
const facts: WordsAllowances = { ...none, facts: ['species'] }

describe('the words of another language beside the English', () => {
  it('are whole when each sentence is there with its places and numbers', () => {
    expect(compareWords(english, spanish, facts, 'es')).toEqual([])
  })

  it.each([
    ['missing', { ...spanish, title: undefined }, 'title'],
    ['needless', { ...spanish, more: 'palabras' }, 'more'],
    ['empty', { ...spanish, title: '  ' }, 'title'],
    ['not-translated', { ...spanish, title: english.title }, 'title'],
    ['other-places', { ...spanish, title: 'En casa' }, 'title'],
    ['other-numbers', { ...spanish, list: ['un perro', '62 de cada 100'] }, 'list.1'],
    ['other-numbers', { ...spanish, list: ['1 perro', '26 de cada 100'] }, 'list.0'],
    ['other-length', { ...spanish, list: ['un perro'] }, 'list'],
    ['other-fact', { ...spanish, told: { ...spanish.told, known: 'house' } }, 'told.known'],
    ['other-fact', { ...spanish, species: ['cat'] }, 'species'],
    ['other-fact', { ...spanish, told: 'Traiga agua.' }, 'told'],
  ] as const)('are found %s', (trouble, planted, path) => {
    expect(compareWords(english, planted, facts, 'es')).toEqual([{ path, trouble }])
  })

  it('may be the same where that was allowed with a reason, and an allowance without use is found', () => {
    const planted = { ...spanish, title: english.title }
    const allowed = { ...facts, same: { es: [{ path: 'title', because: 'a name' }] } }
    expect(compareWords(english, planted, allowed, 'es')).toEqual([])
    expect(compareWords(english, spanish, allowed, 'es')).toEqual([{ path: 'title', trouble: 'allowed-in-vain' }])
  })

  it('may leave out what only the clinic reads', () => {
    const clinic = { ...facts, forTheClinic: [{ path: 'title', because: 'for the surgeon' }] }
    expect(compareWords(english, { ...spanish, title: undefined }, clinic, 'es')).toEqual([])
  })

  it('carry a number as often as the English does', () => {
    expect(sentenceTrouble('2 of 100, or 2 of 100', '2 de cada 100')).toEqual(['other-numbers'])
    expect(sentenceTrouble('3.4 years', '34 años')).toEqual(['other-numbers'])
  })
})
