import { expect, it } from 'vitest'
import { susceptibility } from '#content/susceptibility/index.ts'
import { compareEditions } from './compare-editions.ts'
import { isolateOf } from './isolates-for-tests.ts'
import { readIsolates } from './read-isolates.ts'

const isolates = [
  isolateOf('staphylococcus-pseudintermedius', { enrofloxacin: '0.5', clindamycin: '0.5', cefalexin: '1' }),
]
const request = { host: 'dog', site: 'soft-tissue', edition: 'clsi-vet01s-7', isolates } as const
const ours = readIsolates(request, susceptibility)
const parts = (laboratory: string) =>
  compareEditions({ ...request, laboratory }, ours, susceptibility).map(({ agent, ours, theirs }) => [
    agent,
    ours,
    theirs,
  ])

it('names where an older edition says otherwise, and nothing else', () => {
  expect(parts('clsi-vet01s-6')).toEqual([['enrofloxacin', 'R', 'S']])
})

it('compares what a human edition says, although it is no category here', () => {
  expect(parts('eucast-15')).toContainEqual(['clindamycin', 'S', 'R'])
})

it('says nothing where the laboratory reads as we do, or nobody knows how', () => {
  expect(parts('clsi-vet01s-7')).toEqual([])
  expect(compareEditions(request, ours, susceptibility)).toEqual([])
})
