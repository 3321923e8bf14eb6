import { afterEach, describe, expect, it } from 'vitest'
import type { Projector } from '#actions/store.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { type Browser, House } from './house-for-tests.ts'

const cases = 300
/** As long as a real case takes in a busy year. */
const each = 5

/** The projection of the tests, made as slow as a real one once the test says so. */
function slowProjector() {
  const pace = { slow: false }
  const slowed: Projector = (about) => {
    for (const until = performance.now() + each; pace.slow && performance.now() < until; );
    return projectForTests(about)
  }
  const { readOfClinic } = projectForTests
  if (!readOfClinic) throw new Error('The projector of the tests says what it reads of the clinic.')
  return { pace, project: Object.assign(slowed, { readOfClinic }) }
}

describe('a change of the house in a large clinic', () => {
  let house: House | undefined
  afterEach(() => house?.close())

  async function largeClinic() {
    const { pace, project } = slowProjector()
    house = await House.open({ project })
    const { browser, make } = await house.join('nina', 'nurse')
    const entries = Array.from({ length: cases }, (_, at) => make({ stream: `case:${1_000 + at}` }))
    for (let at = 0; at < cases; at += 100) await browser.send(entries.slice(at, at + 100), house.clinic)
    await expect.poll(() => remakingOf(browser)).toBeNull()
    pace.slow = true
    const close = (day: string) =>
      house?.manager.act('put-row', { register: 'closed-day', id: day, body: { day, because: 'Holiday' } })
    return { house, browser, make, close, pace }
  }
  const remakingOf = async (browser: Browser) => (await browser.act('read-lists', {})).body.remaking
  const until = { timeout: 60_000, interval: 20 }

  it('is answered at once, lets everything else be answered meanwhile, and is in every list in the end', async () => {
    const { house, browser, make, close } = await largeClinic()
    const began = performance.now()
    expect((await close('2026-12-25'))?.status).toBe(200)
    expect(performance.now() - began).toBeLessThan(cases * each)
    expect(await remakingOf(browser)).toMatchObject({ of: cases })
    let longest = 0
    let answers = 0
    for (let remaking = await remakingOf(browser); remaking !== null; remaking = await remakingOf(browser)) {
      const asked = performance.now()
      if (answers % 10 === 5) await browser.send([make({ stream: 'case:1000' })], house.clinic)
      else await fetch(`${house.serving.url}/api/health`)
      longest = Math.max(longest, performance.now() - asked)
      answers += 1
    }
    expect(performance.now() - began).toBeGreaterThan(cases * each)
    expect(answers).toBeGreaterThan(10)
    // All of them in one go took a second and a half, on a machine that does nothing else.
    expect(longest).toBeLessThan(cases * each)
    const chapters = (await house.serving.store.cases(house.clinic)).map(({ chapter }) => chapter.split(', ')[3])
    expect(new Set(chapters)).toEqual(new Set(['1 closed days']))
    expect(
      (await browser.act('read-theatre-list', { from: '2026-01-01', until: '2026-12-31' })).body.remaking,
    ).toBeNull()
  })

  it('goes on at the next start where an ended server was, and with what changed in between', async () => {
    const { house, browser, close } = await largeClinic()
    await close('2026-12-25')
    await expect.poll(async () => (await remakingOf(browser))?.made, until).toBeGreaterThan(20)
    await close('2026-12-26')
    const began = performance.now()
    await house.serving.close()
    expect(performance.now() - began).toBeLessThan(cases * each)
    await house.start()
    const again = house.browser('device of nina')
    await again.signIn('nina')
    expect(await remakingOf(again)).toMatchObject({ of: cases })
    await expect.poll(() => remakingOf(again), until).toBeNull()
    const { store } = house.serving
    const lists = [await store.owed(house.clinic), await store.cases(house.clinic)]
    await store.rebuild(house.clinic)
    expect([await store.owed(house.clinic), await store.cases(house.clinic)]).toEqual(lists)
    expect(lists[1]?.length).toBe(cases)
  })

  it('is tried again when disk or database fail for a while', async () => {
    const { house, browser, close } = await largeClinic()
    const { store } = house.serving
    const really = store.remakeNext.bind(store)
    let failures = 0
    store.remakeNext = (clinic) => {
      failures += 1
      return failures === 1 ? Promise.reject(new Error('the disk was away')) : really(clinic)
    }
    await close('2026-12-25')
    await expect.poll(() => house.log.filter((line) => line.includes('the disk was away')).length).toBe(1)
    expect(await remakingOf(browser)).toMatchObject({ made: 0 })
    await expect.poll(() => remakingOf(browser), until).toBeNull()
  })
})
