import { afterAll, beforeAll, expect, it } from 'vitest'
import { testId } from '#core/journal/entries-for-tests.ts'
import { House } from './house-for-tests.ts'

let house: House
beforeAll(async () => {
  house = await House.open()
})
afterAll(() => house?.close())

it('the filing of a paper is found from its copy, also after a correction and in another case, until it is taken back', async () => {
  const { browser, make } = await house.join('vera', 'surgeon')
  const clinic = { kind: 'clinic' } as const
  const subject = { kind: 'animal', animal: 'animal-1' } as const
  const send = async (...entries: readonly unknown[]) => {
    expect((await browser.send(entries, house.clinic)).status).toBe(200)
  }
  const filingOf = async (entry: string) => (await browser.act('read-filing', { entry })).body.refile

  const arrived = make({ kind: 'arrived-paper', stream: 'tray', subject: clinic })
  const copy = make({ kind: 'paper', subject, refiledFrom: arrived.id, reason: 'Filed.' })
  const body = { toStream: copy.stream, toSubject: subject, copy: copy.id }
  const refile = make({
    kind: 'refile',
    stream: 'tray',
    subject: clinic,
    body,
    withdraws: arrived.id,
    reason: 'Filed.',
  })
  await send(arrived, copy, refile)
  expect(await filingOf(copy.id)).toBe(refile.id)

  const corrected = make({ kind: 'paper', subject, supersedes: [copy.id], reason: 'Another title.' })
  const moved = make({ kind: 'paper', stream: 'case:0002', subject, refiledFrom: corrected.id, reason: 'Moved.' })
  await send(corrected, moved)
  expect(await filingOf(corrected.id)).toBe(refile.id)
  expect(await filingOf(moved.id)).toBe(refile.id)

  const own = make({ kind: 'paper', subject })
  await send(own)
  expect(await filingOf(own.id)).toBeNull()
  expect(await filingOf(testId(999, 9))).toBeNull()

  const back = make({ kind: 'withdrawal', stream: 'tray', subject: clinic, withdraws: refile.id, reason: 'Wrong.' })
  await send(back)
  expect(await filingOf(copy.id)).toBeNull()
  const stranger = house.browser('stranger')
  expect((await stranger.act('read-filing', { entry: copy.id })).status).toBe(401)
})
