import { execFileSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { PapersAnswer } from '#actions/papers/list-papers.ts'
import { caution } from '#content/wording/caution.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { type Browser, House } from './house-for-tests.ts'

/** Line breaks are the page's, not the sentence's. */
function unspaced(text: string): string {
  return text.replaceAll(/[\s\u200b\u00ad]/g, '')
}

describe('the papers of a case', () => {
  let house: House
  let office: Browser
  beforeAll(async () => {
    ensureDebian(['poppler-utils'])
    house = await House.closed()
    office = house.browser('office')
    await office.act('open-clinic', { ...house.opening(), choice: 'invented-practice', clinic: null })
  })
  afterAll(() => house?.close())

  const listed = async (stream: string): Promise<PapersAnswer> => (await office.act('list-papers', { stream })).body
  const get = (path: string, cookie = office.cookie) =>
    fetch(`${house.serving.url}/api/papers/${path}`, { headers: cookie === null ? {} : { cookie } })

  it('are listed with LEFT or RIGHT, and those not reached with what they wait for', async () => {
    const { papers, data } = await listed('case:tansy')
    const sheet = papers.find(({ name }) => name === 'dose-sheet-operation-tansy-left')
    expect(sheet).toMatchObject({ side: 'LEFT', notYet: null })
    expect(papers.find(({ name }) => name === 'owner-leaflet')).toMatchObject({ side: null, notYet: null })
    expect(data.map(({ file }) => file)).toEqual([
      'calendar.ics',
      'fhir.json',
      'owed.json',
      'timeline.csv',
      'timeline-columns.csv',
    ])
    const teasel = await listed('case:teasel')
    const home = teasel.papers.find(({ name }) => name === 'home-page')
    expect(home).toMatchObject({ side: null, operation: null, notYet: 'the animal has not gone home yet' })
  })

  it('are made as PDF, page and text, shown and never run, and never kept by the browser', async () => {
    const { papers } = await listed('case:tansy')
    const sheet = papers.find(({ name }) => name.startsWith('dose-sheet'))?.name ?? ''
    const pdf = await get(`case:tansy/${sheet}.pdf`)
    expect(Object.fromEntries(pdf.headers)).toMatchObject({
      'content-type': 'application/pdf',
      'content-disposition': `inline; filename="${sheet}.pdf"`,
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    })
    expect(pdf.headers.get('content-security-policy')).toMatch(/^default-src 'none'/)
    const file = join(house.folder, 'sheet.pdf')
    writeFileSync(file, new Uint8Array(await pdf.arrayBuffer()))
    const text = unspaced(execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }))
    expect(text).toContain(unspaced(caution))
    expect(text).toContain('Tansy')
    const page = await get(`case:tansy/${sheet}.html`)
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
    expect(await page.text()).not.toContain('<script')
    expect(await (await get(`case:tansy/${sheet}.txt`)).text()).toContain('Tansy')
    const calendar = await get('case:tansy/calendar.ics')
    expect(calendar.headers.get('content-disposition')).toBe('attachment; filename="calendar.ics"')
    expect(await calendar.text()).toMatch(/^BEGIN:VCALENDAR/)
  })

  it('are refused with a sentence while the case has not reached them, and where there is none', async () => {
    const said = async (path: string) => {
      const answer = await get(path)
      const { error } = (await answer.json()) as { error: { code: string; message: string } }
      return [answer.status, error.code, error.message]
    }
    expect(await said('case:teasel/home-page.pdf')).toEqual([
      404,
      'not-yet',
      expect.stringContaining('the animal has not gone home yet.'),
    ])
    expect((await said('case:teasel/home-page.docx')).slice(0, 2)).toEqual([404, 'no-such-paper'])
    expect((await said('case:teasel/..%2f..%2fjournal.jsonl')).slice(0, 2)).toEqual([404, 'no-such-paper'])
    expect((await said('case:nobody/home-page.pdf')).slice(0, 2)).toEqual([404, 'no-such-case'])
    expect((await said('clinic/home-page.pdf'))[0]).toBe(400)
  })

  it('are for people who are signed in, and who read is written down', async () => {
    expect((await get('case:tansy/owner-leaflet.pdf', null)).status).toBe(401)
    const lines = async () => {
      const { body } = await office.act('read-log', { stream: 'case:rowan' })
      return JSON.stringify(body).split('case:rowan').length
    }
    const before = await lines()
    expect((await get('case:rowan/owner-leaflet.txt')).status).toBe(200)
    expect(await lines()).toBeGreaterThan(before)
  })
})
