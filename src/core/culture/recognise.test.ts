import { describe, expect, it } from 'vitest'
import type { Agent } from './agent.ts'
import type { Organism } from './organism.ts'
import { recogniseAgent, recogniseOrganism } from './recognise.ts'

const agent = (id: string, name: string, ...aliases: string[]): Agent => ({
  id,
  name,
  aliases,
  family: 'penicillin',
  formulary: null,
})
const agents = [
  agent('cefalexin', 'cefalexin', 'CN'),
  agent('gentamicin', 'gentamicin', 'CN'),
  agent('enrofloxacin', 'enrofloxacin', 'ENR'),
  agent('amoxicillin', 'amoxicillin'),
  agent('amoxicillin-clavulanate', 'amoxicillin with clavulanic acid', 'amoxicillin clavulanate'),
]

const organism = (id: string, name: string, ...aliases: string[]): Organism => ({
  id,
  name,
  aliases,
  rank: 'species',
  groups: [],
  kind: 'bacterium',
  gram: null,
})
const organisms = [
  organism('escherichia-coli', 'Escherichia coli', 'E. coli'),
  organism('pseudomonas-aeruginosa', 'Pseudomonas aeruginosa'),
  organism('staphylococcus-pseudintermedius', 'Staphylococcus pseudintermedius', 'S. pseudintermedius', 'MRSP'),
  organism('coagulase-negative-staphylococcus', 'coagulase-negative Staphylococcus'),
  organism('beta-haemolytic-streptococcus', 'beta-haemolytic Streptococcus'),
  organism('streptococcus-canis', 'Streptococcus canis'),
]

describe('a printed drug', () => {
  it.each([
    ['Cephalexin', 'cefalexin'],
    ['ENROFLOXACIN', 'enrofloxacin'],
    ['Enrofloxacin 5 µg', 'enrofloxacin'],
    ['enrofloxacin 5ug disc', 'enrofloxacin'],
    ['ENR', 'enrofloxacin'],
    ['Amoxicillin/Clavulanic acid', 'amoxicillin-clavulanate'],
    ['clavulanic acid + amoxicillin', 'amoxicillin-clavulanate'],
    ['amoxicillin and clavulanate 20/10', 'amoxicillin-clavulanate'],
  ])('%s is %s', (printed, id) => {
    expect(recogniseAgent(printed, agents)).toEqual({ id, near: [] })
  })

  it('is asked about, with what it may be, when it is misspelled', () => {
    const { id, near } = recogniseAgent('enrofloxacn', agents)
    expect(id).toBeNull()
    expect(near[0]).toBe('enrofloxacin')
  })

  it('is asked about when two drugs have the code', () => {
    expect(recogniseAgent('CN', agents)).toEqual({ id: null, near: ['cefalexin', 'gentamicin'] })
    expect(recogniseAgent('CN 10', agents).id).toBeNull()
  })

  it('is never taken for a part of a combination, nor a combination for its part', () => {
    expect(recogniseAgent('amoxicillin/ampicillin', agents).id).toBeNull()
    expect(recogniseAgent('amoxicillin', agents).id).toBe('amoxicillin')
  })

  it('is nothing at all when nothing is like it', () => {
    expect(recogniseAgent('xyz', agents)).toEqual({ id: null, near: [] })
    expect(recogniseAgent('', agents)).toEqual({ id: null, near: [] })
    expect(recogniseAgent('30 µg', agents)).toEqual({ id: null, near: [] })
  })
})

describe('a printed organism', () => {
  it.each([
    ['E.coli', 'escherichia-coli'],
    ['Escherichia coli (haemolytic)', 'escherichia-coli'],
    ['E. coli, ESBL positive', 'escherichia-coli'],
    ['Pseudomonas aeruginosa (mucoid)', 'pseudomonas-aeruginosa'],
    ['MRSP', 'staphylococcus-pseudintermedius'],
    ['Meticillin-resistant S. pseudintermedius', 'staphylococcus-pseudintermedius'],
    ['Staphylococcus, coagulase negative', 'coagulase-negative-staphylococcus'],
    ['β-hemolytic Streptococcus', 'beta-haemolytic-streptococcus'],
  ])('%s is %s', (printed, id) => {
    expect(recogniseOrganism(printed, organisms)).toEqual({ id, near: [] })
  })

  it('is asked about when its letter may stand for two genera', () => {
    const { id, near } = recogniseOrganism('S. canis', organisms)
    expect(id).toBeNull()
    expect(near).toContain('streptococcus-canis')
  })

  it('never loses the word that says its contrary', () => {
    expect(recogniseOrganism('Pseudomonas non aeruginosa', organisms).id).toBeNull()
    expect(recogniseOrganism('MRSP negative', organisms).id).toBeNull()
  })
})
