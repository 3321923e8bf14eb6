import { expect, it } from 'vitest'
import { problem, quietEar } from './run-for-tests.ts'

const audit = (input: unknown, ...options: string[]) => quietEar(['audit', '-', ...options], JSON.stringify(input))

it('answers one calculation as JSON, with its method', () => {
  const answer = audit({ op: 'observed-expected', observed: 13, expected: 6.42 }, '--json').json()
  expect(answer).toMatchObject({
    op: 'observed-expected',
    method: expect.stringContaining('Garwood'),
    answer: { ratio: expect.closeTo(2.02492211838006, 12) },
  })
})

it('prints a table and the method for people, and the list of what there is', () => {
  const said = audit({ op: 'proportion', of: { events: 2, total: 31 } }).out
  expect(said).toMatch(/wilson +0\.0178\d+ – 0\.207\d+/)
  expect(said).toContain('Clopper & Pearson')
  expect(quietEar(['audit', '--list']).out).toContain('event-free')
})

it('names the field that is wrong', () => {
  const ran = audit({ op: 'event-free', rate: 0 }, '--json')
  expect(ran.status).toBe(2)
  expect(problem(ran)).toMatchObject({ path: 'rate', message: expect.stringContaining('more than 0') })
})
