import { afterEach, describe, expect, it } from 'vitest'
import type { Paper } from '#documents/render/model.ts'
import { pdfPress } from '#documents/render/pdf.ts'
import { samplePaper } from '#documents/render/sample-for-tests.ts'
import { loadFonts } from './fonts.ts'
import { practiceWithLongLetter } from './long-letter-for-tests.ts'
import { Press, type PressOptions } from './press.ts'

/** The sample again and again, as one paper. */
const long = (times: number): Paper => ({
  ...samplePaper,
  blocks: Array.from({ length: times }, () => samplePaper.blocks).flat(),
})

describe('a press in a process of its own', () => {
  let press: Press | undefined
  const opened = (options: Partial<PressOptions> = {}) => {
    press = new Press({ fonts: loadFonts, ...options })
    return press
  }
  afterEach(() => press?.close())

  it('sets a paper to the very bytes that are set in this one, also the second time', async () => {
    const wanted = pdfPress(loadFonts())(samplePaper)
    const one = opened()
    expect(Buffer.from(await one.set(samplePaper)).equals(wanted)).toBe(true)
    expect(Buffer.from(await one.set(samplePaper)).equals(wanted)).toBe(true)
  })

  it('leaves this process to everybody else meanwhile', async () => {
    const one = opened()
    await one.set(samplePaper)
    let turns = 0
    const timer = setInterval(() => {
      turns += 1
    }, 1)
    await one.set(long(40))
    clearInterval(timer)
    expect(turns).toBeGreaterThan(10)
  })

  it('lets a bounded number wait, refuses the next with a sentence, and takes more when it is through', async () => {
    const one = opened({ waiting: 2 })
    const papers = [1, 2, 3].map(() => one.set(samplePaper))
    await expect(one.set(samplePaper)).rejects.toMatchObject({
      status: 503,
      code: 'press-busy',
      message: '2 papers wait to be printed already: try again in a moment.',
    })
    expect((await Promise.all(papers)).map((bytes) => bytes.length > 10_000)).toEqual([true, true, true])
    expect((await one.set(samplePaper)).length).toBeGreaterThan(10_000)
  })

  it('gives up a paper that takes too long, with a sentence, and sets the next one', async () => {
    const one = opened({ milliseconds: 5_000 })
    const endless = one.set({ ...long(2_000), id: 'endless' })
    const next = one.set(samplePaper)
    await expect(endless).rejects.toMatchObject({
      status: 503,
      code: 'press-too-long',
      message: expect.stringMatching(/^It was not printed within 5 seconds and given up: .+ try again\.$/),
    })
    expect((await next).length).toBeGreaterThan(10_000)
  })

  it('says which paper cannot be set, as a fault of the program, and sets the next one', async () => {
    const one = opened()
    const broken = {
      ...samplePaper,
      id: 'broken',
      blocks: [{ kind: 'picture', svg: 'no picture', alt: '', caption: '' }],
    }
    await expect(one.set(broken as unknown as Paper)).rejects.toThrow(/^The paper broken cannot be set: /)
    expect((await one.set(samplePaper)).length).toBeGreaterThan(10_000)
  })

  it('refuses whoever waits when the server stops', async () => {
    const one = opened()
    const papers = [one.set(samplePaper), one.set(samplePaper)]
    const refused = papers.map((paper) => expect(paper).rejects.toMatchObject({ code: 'press-closed' }))
    one.close()
    await Promise.all(refused)
  })
})

it('A real server answers everybody else while it prints a letter of more than twenty pages', async () => {
  const { house, get, letter } = await practiceWithLongLetter()
  try {
    await (await get('owner-leaflet.pdf')).arrayBuffer()
    let printing = true
    const printed = get(letter).then(async (answer) => {
      const text = Buffer.from(await answer.arrayBuffer()).toString('latin1')
      printing = false
      return { status: answer.status, pages: text.match(/\/Type\s*\/Page\b/g)?.length ?? 0 }
    })
    let answers = 0
    while (printing) {
      const { status } = await fetch(`${house.serving.url}/api/health`)
      expect(status).toBe(200)
      answers += 1
    }
    const { status, pages } = await printed
    expect(status).toBe(200)
    expect(pages).toBeGreaterThan(20)
    // In one thread with the setting it was one at most.
    expect(answers).toBeGreaterThan(5)
  } finally {
    await house.close()
  }
})
