import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { delayOfAccount, delayOfAddress, networkOf } from '#actions/people/tries.ts'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

describe('tries to sign in', () => {
  const clock = new ClockForTests()
  let house: House
  beforeAll(async () => {
    house = await House.open({ clock })
  })
  afterAll(() => house?.close())

  it('are slowed down more and more for a stranger, with the time of the next, and never locked', async () => {
    await house.hire('target', 'nurse')
    const stranger = house.browser('stranger')
    const codes = []
    for (const _ of [1, 2, 3, 4]) codes.push((await stranger.signIn('target', 'a guess')).error.code)
    expect(codes).toEqual(['wrong-login', 'wrong-login', 'wrong-login', 'too-many-tries'])
    // Another name for the device, or no session, makes nobody less of a stranger.
    const renamed = await house.browser('stranger under another name').signIn('target')
    expect(renamed.status).toBe(429)
    const again = new Date(Date.parse(clock.now()) + 1_000).toISOString()
    expect(renamed.error).toEqual({
      code: 'too-many-tries',
      path: '',
      message: 'Too many wrong tries: try again in 1 second.',
      again,
    })
    expect(Date.parse(renamed.headers.get('retry-after') ?? '')).toBeGreaterThanOrEqual(Date.parse(again) - 999)
    clock.pass({ seconds: 1 })
    expect((await stranger.signIn('target', 'a guess')).status).toBe(401)
    clock.pass({ seconds: 1 })
    expect((await stranger.signIn('target', 'a guess')).error.message).toContain('in 1 second.')
    clock.pass({ seconds: 1 })
    // The right password ends it, and the slate is clean.
    expect((await stranger.signIn('target')).status).toBe(200)
  })

  it('count each of many at once', async () => {
    await house.hire('crowd', 'nurse')
    const at = [...'abcdefgh'].map((name) => house.browser(name).signIn('crowd', 'a guess'))
    const statuses = (await Promise.all(at)).map(({ status }) => status)
    expect(statuses.filter((status) => status === 401)).toHaveLength(3)
    expect(statuses.filter((status) => status === 429)).toHaveLength(5)
    clock.pass({ days: 2 })
  })

  it('by strangers never slow down a device where that person has signed in before, even long ago', async () => {
    const { browser } = await house.join('besieged', 'surgeon')
    await browser.act('sign-out', { everyone: true })
    const signedOut = house.browser('besieged again')
    await signedOut.signIn('besieged')
    const cookie = signedOut.cookie
    await signedOut.act('sign-out', { everyone: true })
    signedOut.cookie = cookie
    const stranger = house.browser('stranger')
    for (const _ of [1, 2, 3]) await stranger.signIn('besieged', 'a guess')
    expect((await stranger.signIn('besieged')).status).toBe(429)
    expect((await signedOut.signIn('besieged')).status).toBe(200)
    // It has its own count: whoever guesses at that device is slowed down there.
    for (const _ of [1, 2, 3]) await signedOut.signIn('besieged', 'a guess')
    expect((await signedOut.signIn('besieged')).status).toBe(429)
    clock.pass({ days: 2 })
  })

  it("of a device where only somebody else signed in are a stranger's", async () => {
    const { browser } = await house.join('insider', 'nurse')
    await house.hire('boss', 'surgeon')
    for (const _ of [1, 2, 3]) await house.browser('stranger').signIn('boss', 'a guess')
    expect((await browser.signIn('boss')).status).toBe(429)
    clock.pass({ days: 2 })
  })

  it('over many logins from one address are slowed down too, so that nobody keeps the machine busy with hashing', async () => {
    const statuses = []
    for (let n = 0; n < 21; n += 1) statuses.push((await house.browser('s').signIn(`login-${n}`, 'a guess')).status)
    expect(statuses.filter((status) => status === 401)).toHaveLength(20)
    expect(statuses.at(-1)).toBe(429)
    expect((await house.manager.signIn('mara')).status).toBe(200)
    clock.pass({ days: 2 })
  })

  it('wait five minutes at most for an account and one for an address', () => {
    expect([0, 1, 2, 3, 4, 5, 6].map(delayOfAccount)).toEqual([0, 0, 0, 1_000, 2_000, 4_000, 8_000])
    expect([50, 5_000].map(delayOfAccount)).toEqual([300_000, 300_000])
    expect([19, 20, 21, 5_000].map(delayOfAddress)).toEqual([0, 1_000, 2_000, 60_000])
  })

  it('are counted by network: an IPv6 address by the 64 bits that its owner cannot choose', () => {
    expect(networkOf('::ffff:192.168.1.20')).toBe('192.168.1.20')
    expect(networkOf('192.168.1.20')).toBe('192.168.1.20')
    expect(networkOf('2001:db8:1:2:aaaa:bbbb:cccc:dddd')).toBe('2001:db8:1:2')
    expect(networkOf('2001:DB8:1:2::1')).toBe('2001:db8:1:2')
    expect(networkOf('fe80::1%eth0')).toBe('fe80:0:0:0')
    expect(networkOf('::1')).toBe('0:0:0:0')
  })
})
