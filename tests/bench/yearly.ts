/** Run as a program of its own, so that its memory is its own: so many invented cases, frozen, counted, set and written. */
import { readFileSync } from 'node:fs'
import { watchedQuestions } from '#actions/evidence/watched.ts'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { watching } from '#content/evidence/watching.ts'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import { type OwnOutcome, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { addDays } from '#core/time/calendar-day.ts'
import { freezeYear } from '#core/yearly/freeze-year.ts'
import { frozenText, readFrozen } from '#core/yearly/frozen-year.ts'
import { reportOf, reportText } from '#core/yearly/report-of.ts'
import { pdfPress } from '#documents/render/pdf.ts'
import { renderText } from '#documents/render/text.ts'
import { sheetOfYear } from '#documents/yearly-report/sheet-of-year.ts'
import { yearlyReport } from '#documents/yearly-report/yearly-report.ts'

const size = Number(process.argv[2])
const fonts = process.argv.slice(3).map((path) => new Uint8Array(readFileSync(path)))

/** Invented cases, the same every time: dogs and cats, some with both ears, some lost, some dead, some with a tract. */
function inventedEars(): OperatedEar[] {
  let seed = 11
  const draw = (below: number) => {
    seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0
    return Math.floor((seed / 2 ** 32) * below)
  }
  const days = Array.from({ length: 1_200 }, (_, i) => addDays('2025-01-01', i))
  const day = (count: number) => days[Math.min(count, days.length - 1)] ?? ''
  return Array.from({ length: size }, (_, i): OperatedEar => {
    const cat = draw(100) < 15
    const cut = draw(365)
    const followed = draw(10) === 0 ? null : 10 + draw(680)
    const tract = followed !== null && draw(100) < 6 ? Math.min(followed, 60 + draw(400)) : null
    const lost = draw(100) < 20
    const known = (share: number, from: number) => (followed === null || followed < from ? null : draw(100) < share)
    return {
      animal: `animal-${i - (i % 5 === 4 ? 1 : 0)}`,
      operation: `operation-${i}`,
      session: `operation-${i - (i % 25 === 4 ? 1 : 0)}`,
      stream: `case:${i}`,
      species: cat ? 'cat' : 'dog',
      procedure: cat && draw(2) === 0 ? 'traction' : 'teca-lbo',
      side: draw(2) === 0 ? 'LEFT' : 'RIGHT',
      reason: i % 9 === 0 ? 'tumour' : 'chronic-otitis',
      troubles: [],
      ofNoSide: [],
      on: day(cut),
      died: followed !== null && draw(100) < 5 ? day(cut + followed + 20) : null,
      followedUntil: followed === null ? null : day(cut + followed),
      tractOn: tract === null ? null : day(cut + tract),
      blink: lost
        ? { lostOn: day(cut + 1), backOn: draw(4) ? day(cut + 10 + draw(60)) : null, lastLookOn: day(cut + 90) }
        : null,
      known: Object.fromEntries(ownOutcomes.map((one, at) => [one, known(4 + at, at * 25)])) as Record<
        OwnOutcome,
        boolean | null
      >,
    }
  })
}

const ears = inventedEars()
const before = process.cpuUsage()
const began = performance.now()
const spent = () => (performance.now() - began) / 1000
const made = freezeYear(ears, {
  year: 2025,
  lookedAt: '2026-11-30',
  method: '1',
  rules: ownCounting,
  watching,
  watched: watchedQuestions,
  salt: 'the salt of the measurement',
})
if (made.kind === 'refusal') throw new Error(made.refusal.because)
const { text, hash } = frozenText(made.answer)
const frozen = spent()
const read = readFrozen(text, hash)
if (read.kind === 'refusal') throw new Error(read.refusal.because)
const report = reportOf(read.answer, hash)
const json = reportText(report)
const counted = spent()
const csv = sheetOfYear(report)
const paper = yearlyReport(report, {
  year: 2025,
  lookedAt: '2026-11-30',
  rows: size,
  dataHash: hash,
  reportHash: json.hash,
  method: '1',
  program: null,
  clinic: 'Invented clinic',
  by: 'Runa Falk',
  decided: [],
  at: '2026-11-30T09:00:00.000Z',
  zone: 'Europe/London',
})
const words = renderText(paper)
const whole = spent()
const { user, system } = process.cpuUsage(before)
const megabytes = process.resourceUsage().maxRSS / 1024
const press = pdfPress(fonts)
const startedPrinting = performance.now()
const pdf = press(paper)
process.stdout.write(
  JSON.stringify({
    cases: size,
    frozen,
    counted: counted - frozen,
    written: whole - counted,
    whole,
    processor: (user + system) / 1e6,
    megabytes,
    data: text.length,
    bytes: csv.length + json.text.length + words.length,
    print: (performance.now() - startedPrinting) / 1000,
    pdf: pdf.length,
    withPdf: process.resourceUsage().maxRSS / 1024,
  }),
)
