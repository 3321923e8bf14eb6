import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

describe('the questions behind the link', () => {
  const clock = new ClockForTests()
  let house: House
  let desk: Awaited<ReturnType<House['join']>>
  let path = ''
  const stream = 'case:bramble'
  beforeAll(async () => {
    house = await House.open({ clock })
    desk = await house.join('dora', 'surgeon')
    const row = { kind: 'owner', name: 'Olive Owner', practice: null, phone: null, email: null, address: [] }
    await desk.browser.act('put-row', { register: 'contact', id: 'contact-1', body: row })
    const incisionAt = { at: clock.now(), zone: 'Europe/London', precision: 'minute', by: 'person' } as const
    const body = {
      ...operationSummary.example,
      side: 'LEFT',
      procedure: 'teca-lbo',
      incisionAt,
      closedAt: incisionAt,
    } as const
    await desk.browser.send(
      [
        desk.make({ stream, kind: 'identity' }),
        desk.make({ stream, kind: 'household' }),
        desk.make({ stream, kind: 'operation-summary', at: clock.now(), body }),
      ],
      house.clinic,
    )
    path = (await desk.browser.act('make-owner-link', { stream, contact: 'contact-1', use: 'private' })).body.path
  })
  afterAll(() => house?.close())

  const get = (address: string, init: RequestInit = {}) =>
    fetch(`${house.serving.url}${path}/${address}`, { redirect: 'manual', ...init })
  const send = (fields: Record<string, string>) =>
    get('questions', { method: 'POST', body: new URLSearchParams(fields), headers: { origin: 'null' } })
  const textOf = async (answer: Response | Promise<Response>) => (await answer).text()
  const answers = async (): Promise<{ header: { supersedes: string[] }; body: Record<string, unknown> }[]> =>
    (await desk.browser.act('read-case', { stream, after: null })).body.entries.filter(
      ({ header }: { header: { kind: string } }) => header.kind === 'owner-answer',
    )
  const hidden = async () => {
    const page = await textOf(get('questions?change=1'))
    const field = (name: string) => new RegExp(`name="${name}" value="([^"]+)"`).exec(page)?.[1] ?? ''
    return { entry: field('entry'), of: field('of') }
  }

  it('are not there before the animal is at home, and say then from which day on they are asked', async () => {
    expect((await get('questions')).status).toBe(404)
    await desk.browser.send([desk.make({ stream, kind: 'discharge', at: clock.now() })], house.clinic)
    const page = await textOf(get('questions'))
    expect(page).toContain('There is nothing for you to answer now.')
    expect(page).toMatch(/The next questions come from .* on\./)
    expect(page).not.toContain('<form')
  })

  it('stand on one page once they are due, each with its reason, and hold no token; nothing of them needs a script', async () => {
    clock.pass({ seconds: 10 * 86_400 })
    const page = await textOf(get('questions'))
    expect(page).toContain('the first weeks at home')
    expect(page).toContain('Is the LEFT eye sore?')
    expect(page).toContain('A sore eye cannot wait.')
    expect(page).not.toContain('RIGHT eye')
    expect(page).not.toMatch(/<script>|<script(?! type="module" src="\/o\/)|\sstyle=/)
    expect(page).not.toContain(path.slice(3))
    expect(await textOf(get('questions?language=es'))).toContain('el ojo IZQUIERDO')
  })

  it('keep what is saved to go on with, and show it again', async () => {
    const answer = await send({ ...(await hidden()), 'swelling.LEFT': 'no', do: 'save' })
    expect([answer.status, answer.headers.get('location')]).toEqual([
      303,
      expect.stringMatching(/^\?of=early-home\..*&done=saved$/),
    ])
    expect(await textOf(get('questions'))).toMatch(/name="swelling.LEFT" value="no" checked/)
    expect((await answers()).map(({ body }) => body.finished)).toEqual([false])
  })

  it('lose nothing that was typed when it cannot be kept', async () => {
    const before = (await answers()).length
    const long = 'x'.repeat(4_001)
    const answer = await send({ ...(await hidden()), eating: 'less', 'anything-else': long, do: 'send' })
    const page = await answer.text()
    expect(answer.status).toBe(422)
    expect(page).toContain('Please write less than 4000 letters')
    expect(page).toContain(long)
    expect(page).toMatch(/name="eating" value="less" checked/)
    expect((await send({ ...(await hidden()), do: 'send' })).status).toBe(422)
    expect((await send({ ...(await hidden()), entry: 'mine', eating: 'less', do: 'send' })).status).toBe(422)
    // What is none of the answers is none.
    expect((await send({ ...(await hidden()), eating: 'everything', do: 'send' })).status).toBe(422)
    expect(await answers()).toHaveLength(before)
  })

  it('keep what is sent once, in place of what was saved, with the words that were shown', async () => {
    const fields = { ...(await hidden()), 'swelling.LEFT': 'yes', eating: 'yes', do: 'send' }
    await send(fields)
    await send(fields)
    const all = await answers()
    expect(all).toHaveLength(2)
    expect(all[1]?.header.supersedes).toHaveLength(1)
    expect(all[1]?.body).toMatchObject({
      finished: true,
      by: 'owner-link',
      contact: 'contact-1',
      occasion: 'early-home',
    })
    expect(all[1]?.body.answers).toContainEqual({
      question: 'swelling',
      side: 'LEFT',
      answer: 'yes',
      asked: 'Is there a lump or a swelling at the LEFT ear, or below it?',
      said: 'Yes, there is one now',
    })
    const page = await textOf(get('questions?done=sent'))
    expect(page).toContain('Do not wait for us: phone us now')
    expect(page).not.toContain('<form')
  })

  it('let the owner change what was sent; both stay on record, and the same sent again is not written again', async () => {
    const change = async () => ({ ...(await hidden()), 'swelling.LEFT': 'no', eating: 'yes', do: 'send' })
    await send(await change())
    await send(await change())
    const all = await answers()
    expect([all.length, all[2]?.header.supersedes.length]).toEqual([3, 1])
  })

  it('are taken from a phone as JSON, once however late the same is sent again, and another answer is a new one', async () => {
    const before = (await answers()).length
    const { of } = await hidden()
    const asScript = async (fields: Record<string, string>) => {
      const headers = { origin: 'null', accept: 'application/json' }
      const answer = await get('questions?language=es', { method: 'POST', body: new URLSearchParams(fields), headers })
      return [answer.status, await answer.json()]
    }
    const kept = [200, { kept: true, time: expect.stringMatching(/^\d\d:\d\d$/) }]
    const first = { of, entry: '0190a7c2-0009-7000-8000-000000000011', eating: 'less', do: 'send' }
    expect(await asScript(first)).toEqual(kept)
    const other = { ...first, entry: '0190a7c2-0009-7000-8000-000000000012', eating: 'yes' }
    expect(await asScript(other)).toEqual(kept)
    clock.pass({ seconds: 3_600 })
    // Its answer was lost on the way: what was said since stands.
    expect(await asScript(first)).toEqual(kept)
    const all = (await answers()).slice(before)
    expect(all.map(({ body }) => [body.language, (body.answers as { answer: string }[])[0]?.answer])).toEqual([
      ['es', 'less'],
      ['es', 'yes'],
    ])
    expect(await asScript({ ...first, eating: 'no' })).toEqual([422, { refused: 'not-kept' }])
    expect(await asScript({ of, entry: first.entry, do: 'send' })).toEqual([422, { refused: 'nothing' }])
    expect(await asScript({ ...first, of: 'early-home.1999-01-01' })).toEqual([409, { refused: 'over' }])
    expect(await answers()).toHaveLength(before + 2)
  })

  it('show another person of the household nothing of what was answered', async () => {
    const row = { kind: 'owner', name: 'Otto Other', practice: null, phone: null, email: null, address: [] }
    await desk.browser.act('put-row', { register: 'contact', id: 'contact-2', body: row })
    const contact = (id: string) => ({ contact: id, roles: ['owner' as const], mayConsent: true })
    const household = { contacts: [contact('contact-1'), contact('contact-2')], language: 'en', otherAnimals: null }
    await desk.browser.send([desk.make({ stream, kind: 'household', body: household })], house.clinic)
    const made = await desk.browser.act('make-owner-link', { stream, contact: 'contact-2', use: 'private' })
    const page = await textOf(fetch(`${house.serving.url}${made.body.path}/questions?change=1`))
    expect(page).toContain('Somebody of your household has answered these questions.')
    expect(page).not.toMatch(/<form|swelling/)
  })

  it('give a calendar that is replaced, names nobody but the animal, and is cancelled after a death', async () => {
    const answer = await get('calendar.ics')
    expect(answer.headers.get('content-type')).toBe('text/calendar; charset=utf-8')
    const calendar = await answer.text()
    const uids = (text: string) => [...text.matchAll(/^UID:(.*)$/gm)].map(([, uid]) => uid).sort()
    expect(calendar).toContain('SUMMARY:Bramble: book a visit')
    const said = calendar.match(/^(SUMMARY|DESCRIPTION):.*$/gm) ?? []
    expect(said.filter((line) => /\bear\b|wound|TECA|face/i.test(line))).toEqual([])
    await desk.browser.send([desk.make({ stream, kind: 'death', at: clock.now() })], house.clinic)
    const after = await textOf(get('calendar.ics'))
    expect(uids(after)).toEqual(uids(calendar))
    expect(after).not.toContain('STATUS:CONFIRMED')
    expect(after.length).toBeGreaterThan(0)
  })

  it('ask the bereaved nothing, and keep nothing that is still on its way', async () => {
    const before = (await answers()).length
    for (const answer of [
      await get('questions'),
      await send({ entry: 'x', of: 'early-home', eating: 'no', do: 'send' }),
    ]) {
      const page = await answer.text()
      expect([answer.status, page.includes('We are sorry that Bramble has died.')]).toEqual([410, true])
      expect(page).not.toMatch(/<form|<input/)
    }
    expect(await answers()).toHaveLength(before)
  })
})
