import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { hashBytes } from '#core/journal/canonical.ts'
import { stripLocation } from '#core/journal/strip-location.ts'
import { ClockForTests } from './clock-for-tests.ts'
import { House } from './house-for-tests.ts'

/** A small JPEG with a place in it, as a telephone writes it. */
function jpegWithPlace(mark: number): Uint8Array<ArrayBuffer> {
  const place = [...new TextEncoder().encode('Exif\0\0GPS 51.5 N')]
  const segment = [0xff, 0xe1, 0, place.length + 2, ...place]
  const table = [0xff, 0xdb, 0, 4, 0, mark]
  return new Uint8Array([0xff, 0xd8, ...segment, ...table, 0xff, 0xda, 0, 2, 0x11, 0x22, 0xff, 0xd9])
}

describe('notes of an owner through the link', () => {
  const clock = new ClockForTests()
  const stream = 'case:bramble'
  let house: House
  let nurse: Awaited<ReturnType<House['join']>>
  let path = ''
  let other = ''
  beforeAll(async () => {
    house = await House.open({ clock })
    nurse = await house.join('nora', 'nurse')
    const row = { kind: 'owner', practice: null, phone: null, email: null, address: [] }
    for (const id of ['contact-1', 'contact-2'])
      await nurse.browser.act('put-row', { register: 'contact', id, body: { ...row, name: `Owner ${id}` } })
    const contacts = ['contact-1', 'contact-2'].map((contact) => ({
      contact,
      roles: ['owner' as const],
      mayConsent: true,
    }))
    const sent = [
      nurse.make({ stream, kind: 'identity' }),
      nurse.make({ stream, kind: 'household', body: { contacts, language: 'en', otherAnimals: null } }),
    ]
    await nurse.browser.send(sent, house.clinic)
    path = await make('contact-1')
    other = await make('contact-2')
  })
  afterAll(() => house?.close())

  const make = async (contact: string, use = 'private') =>
    (await nurse.browser.act('make-owner-link', { stream, contact, use })).body.path as string
  const get = (address: string) => fetch(`${house.serving.url}${address}`, { redirect: 'manual' })
  const post = (address: string, body: FormData | Uint8Array<ArrayBuffer>, headers: Record<string, string> = {}) =>
    fetch(`${house.serving.url}${address}`, {
      method: 'POST',
      redirect: 'manual',
      body,
      headers: { origin: 'null', ...headers },
    })
  const form = (fields: Record<string, string>, files: readonly Uint8Array<ArrayBuffer>[] = []) => {
    const data = new FormData()
    for (const [name, value] of Object.entries(fields)) data.append(name, value)
    for (const bytes of files) data.append('picture', new Blob([bytes], { type: 'image/jpeg' }), 'IMG_1.jpg')
    return data
  }
  const json = { accept: 'application/json' }
  const page = async (at = path) => (await get(`${at}/notes`)).text()
  const entryOn = async () => /name="entry" value="([^"]+)"/.exec(await page())?.[1] ?? ''
  const notes = async () =>
    (await nurse.browser.act('read-case', { stream, after: null })).body.entries.filter(
      ({ header }: { header: { kind: string } }) => header.kind === 'owner-note',
    )

  it('are taken from the day the animal is at home, and on no tablet of the house', async () => {
    expect((await get(`${path}/notes`)).status).toBe(404)
    expect((await post(`${path}/notes`, form({ text: 'Too early.' }))).status).toBe(404)
    await nurse.browser.send([nurse.make({ stream, kind: 'discharge', at: clock.now() })], house.clinic)
    expect((await get(`${path}/notes`)).status).toBe(200)
    const room = await make('contact-1', 'in-room')
    expect((await get(`${room}/notes`)).status).toBe(404)
    expect(await (await get(`${room}/home`)).text()).not.toMatch(/<script|href="notes"/)
  })

  it('say before the box when to phone instead, in the words of the page for home', async () => {
    const text = await page()
    expect(text.indexOf('hard or noisy breathing')).toBeGreaterThan(0)
    expect(text.indexOf('hard or noisy breathing')).toBeLessThan(text.indexOf('<textarea'))
    expect(text).toContain('Nobody sits at this page, day or night.')
    expect(text).not.toContain(path.slice(3))
  })

  it('are kept without a script with words, day, ear and photograph, the place taken out, once however often sent', async () => {
    const entry = await entryOn()
    const picture = jpegWithPlace(1)
    const fields = {
      entry,
      text: 'Line one.\r\nLine two.',
      'seen-day': clock.now().slice(0, 10),
      'seen-time': '07:30',
      ear: 'not-sure',
    }
    for (const _ of [1, 2]) {
      const answer = await post(`${path}/notes`, form(fields, [picture]))
      expect([answer.status, answer.headers.get('location')]).toEqual([303, '?note=kept#told'])
      clock.pass({ seconds: 60 })
    }
    const [kept, ...others] = await notes()
    expect(others).toEqual([])
    const clean = stripLocation(picture, 'image/jpeg')
    const hash = clean.kind === 'answer' ? hashBytes(clean.answer) : ''
    expect(kept.header).toMatchObject({
      author: { kind: 'owner-link', contact: 'contact-1' },
      attachments: [{ hash, mediaType: 'image/jpeg' }],
    })
    expect(kept.body).toEqual({
      language: 'en',
      text: 'Line one.\nLine two.',
      seen: { day: fields['seen-day'], time: '07:30' },
      ear: 'not-sure',
      keptSince: null,
    })
    const seen = await get(`${path}/picture/${hash}`)
    const bytes = new Uint8Array(await seen.arrayBuffer())
    expect([seen.status, seen.headers.get('content-type')]).toEqual([200, 'image/jpeg'])
    expect(Buffer.from(bytes).toString('latin1')).not.toContain('GPS')
    expect((await get(`${other}/picture/${hash}`)).status).toBe(404)
    expect(await page(other)).not.toContain('Line one.')
  })

  it('come from the script as pictures one by one and then the note, each again after a broken connection', async () => {
    const before = (await notes()).length
    const upload = () => post(`${path}/picture`, jpegWithPlace(2), { 'content-type': 'image/jpeg' })
    const taken = async () => ((await (await upload()).json()) as { hash: string }).hash
    const [hash, again] = [await taken(), await taken()]
    expect(again).toBe(hash)
    const since = new Date(Date.parse(clock.now()) - 3_600_000).toISOString()
    const fields = {
      entry: '0190a7c2-0009-7000-8000-000000000001',
      text: '',
      'picture-taken': hash,
      'kept-since': since,
    }
    const answers = await Promise.all([1, 2, 3].map(() => post(`${path}/notes`, form(fields), json)))
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200])
    expect(await answers[0]?.json()).toMatchObject({ kept: true, time: expect.stringMatching(/^\d\d:\d\d$/) })
    const all = await notes()
    expect(all).toHaveLength(before + 1)
    expect(all.at(-1).body).toMatchObject({ text: null, keptSince: { at: since, by: 'clock' } })
    const missing = { ...fields, entry: '0190a7c2-0009-7000-8000-000000000002', 'picture-taken': 'a'.repeat(64) }
    expect(await (await post(`${path}/notes`, form(missing), json)).json()).toEqual({ refused: 'picture-missing' })
  })

  it('that are not kept stand in the form again, with a sentence that says what to do', async () => {
    const before = (await notes()).length
    const entry = await entryOn()
    const tries = [
      [{ entry, text: ' ' }, 'Nothing was written'],
      [{ entry, text: 'x'.repeat(4_001) }, 'That is more than 4000 letters.'],
      [{ entry, text: 'Red.', 'seen-day': '2026-02-30' }, 'We could not read the day'],
      [{ entry, text: 'Red.', 'seen-time': '08:00' }, 'We could not read the day'],
      [{ entry, text: 'Red.', 'seen-day': '2999-01-01' }, 'That day is still to come.'],
      [{ entry: 'mine', text: 'Red & "raw".' }, 'could not be kept under its number'],
    ] as const
    for (const [fields, said] of tries) {
      const answer = await post(`${path}/notes`, form(fields))
      const text = await answer.text()
      expect([answer.status, text.includes(said)]).toEqual([422, true])
    }
    expect(await (await post(`${path}/notes`, form({ entry: 'mine', text: 'Red & "raw".' }))).text()).toContain(
      '>Red &#38; &#34;raw&#34;.</textarea>',
    )
    const five = [1, 2, 3, 4, 5].map(jpegWithPlace)
    expect(await (await post(`${path}/notes`, form({ entry, text: 'Five.' }, five))).text()).toContain(
      'more than 4 photographs',
    )
    const film = new TextEncoder().encode('not a picture')
    expect(await (await post(`${path}/notes`, form({ entry, text: 'A film.' }, [film]))).text()).toContain(
      'no photograph we can keep',
    )
    const large = await post(`${path}/picture`, new Uint8Array(8 * 1024 * 1024 + 1), { 'content-type': 'image/jpeg' })
    expect([large.status, await large.json()]).toEqual([413, { refused: 'picture-large' }])
    const all = await post(`${path}/notes?language=es`, form({ entry, text: 'x' }, [new Uint8Array(33 * 1024 * 1024)]))
    expect([all.status, (await all.text()).includes('Todo junto era demasiado')]).toEqual([413, true])
    expect(
      (await post(`${path}/notes`, form({ entry, text: 'x' }), { origin: 'https://elsewhere.example' })).status,
    ).toBe(403)
    expect((await post(`/o/${'C'.repeat(43)}/notes`, form({ entry, text: 'x' }))).status).toBe(404)
    expect(await notes()).toHaveLength(before)
  })

  it('under the id of something else change nothing', async () => {
    const before = await notes()
    const entry = before[0].header.id
    const foreign = await post(`${other}/notes`, form({ entry, text: 'Mine.' }), json)
    expect(await foreign.json()).toEqual({ refused: 'id' })
    expect(await (await post(`${path}/notes`, form({ entry, text: 'Other words.' }), json)).json()).toMatchObject({
      kept: true,
    })
    expect(await notes()).toEqual(before)
  })

  it('are answered by a person with a name, and the owner reads it there', async () => {
    const [note] = await notes()
    expect(await page()).toContain('No answer yet. If it cannot wait, phone us.')
    const body = { note: note.header.id, text: 'That is usual on day two.' }
    await nurse.browser.send([nurse.make({ stream, kind: 'owner-reply', body, at: clock.now() })], house.clinic)
    const text = await page()
    expect(text).toMatch(/Person nora answered on [^:]*, \d\d:\d\d:/)
    expect(text).toContain('That is usual on day two.')
    expect(await page(other)).not.toContain('That is usual')
  })

  it('are so many a day and no more, and another day again', async () => {
    const send = (n: number) =>
      post(
        `${path}/notes`,
        form({ entry: `0190a7c2-000a-7000-8000-${String(n).padStart(12, '0')}`, text: `Note ${n}.` }),
        json,
      )
    let last: unknown
    for (let n = 0; n < 21; n += 1) last = await (await send(n)).json()
    expect(last).toEqual({ refused: 'too-many' })
    expect(await (await send(0)).json()).toMatchObject({ kept: true })
    clock.pass({ seconds: 86_400 + 60 })
    expect(await (await send(50)).json()).toMatchObject({ kept: true })
  })

  it('leave nothing of the token in what the server writes down', () => {
    expect(house.log.filter((line) => line.includes('/o/')).every((line) => / \/o\/… /.test(line))).toBe(true)
  })
})
