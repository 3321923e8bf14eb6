import { expect, test } from 'vitest'
import { agreementWords } from '#content/wording/papers-agreement.ts'
import { agreementInSpanish } from '#content/wording/spanish/papers-agreement.ts'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderHtml } from '../render/html.ts'
import { renderText } from '../render/text.ts'
import { agreementSheet } from './agreement-sheet.ts'
import { toldToday } from './consent-today.ts'

function agreed(change: (body: BodyOf<'agreement'>) => BodyOf<'agreement'>): Entry[] {
  return exampleEntries().map((entry) =>
    entry.kind === 'agreement'
      ? { ...entry, body: change(entry.body as unknown as BodyOf<'agreement'>) as unknown as Entry['body'] }
      : entry,
  )
}

function sheetOf(entries: readonly Entry[]): string {
  const made = agreementSheet.of(inputFor(entries))
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made)
}

const { file: example } = inputFor(exampleEntries())
const marked = agreed((body) => ({ ...body, fingerprint: fingerprintOf(body.plan) }))

test('The sheet shows ear, operation, surgeon, estimate and the ceiling', () => {
  const sheet = sheetOf(marked)
  expect(sheet).toContain('LEFT ear: Total ear canal ablation with lateral bulla osteotomy')
  expect(sheet).toContain('We expect: 2600.00 GBP to 3400.00 GBP')
  expect(sheet).toContain('Never more than this without your word: 3400.00 GBP')
})

test('A plan that was changed after consent no longer fits its mark, and the sheet says to ask again', () => {
  expect(sheetOf(marked)).not.toContain('Ask again')
  const moved = agreed((body) => ({
    ...body,
    fingerprint: fingerprintOf(body.plan),
    plan: { ...body.plan, ears: [{ side: 'RIGHT', procedure: 'teca-lbo' }] },
  }))
  expect(sheetOf(moved)).toContain('!! Ask again')
})

test('Somebody the household does not name as able to consent is pointed out', () => {
  expect(sheetOf(marked)).not.toContain('May this person agree?')
  expect(sheetOf(agreed((body) => ({ ...body, consentBy: 'contact-vet-1' })))).toContain('!! May this person agree?')
})

test('Ticks are left to the hand: the record does not claim that a risk was talked over', () => {
  expect(sheetOf(marked)).toContain('☐ the risks, with numbers')
})

test('Without an agreement there is no sheet', () => {
  const made = agreementSheet.of(inputFor(exampleEntries().filter(({ kind }) => kind !== 'agreement')))
  expect(made).toEqual({ kind: 'not-yet', because: 'nothing has been agreed yet' })
})

test.each([
  ['en', agreementWords],
  ['es', agreementInSpanish],
] as const)(
  'Our own sentences on the sheet are easy to read by the formula of their language: %s',
  (language, words) => {
    const { fingerprintWhy, changed, toldWhy, mayNot, toldItems } = words
    const text = [fingerprintWhy, changed, toldWhy, mayNot, ...Object.values(toldItems)].join('\n')
    expect(readingLevel(text, language)).toMatchObject({ meetsAim: true })
  },
)

test('In Spanish the side stands in the word of the record too, because the surgeon signs it', () => {
  const made = agreementSheet.of({ ...inputFor(marked), language: 'es' })
  if (!isPaper(made)) throw new Error(made.because)
  expect(renderText(made)).toContain('Oído IZQUIERDO (LEFT): Ablación total del canal del oído')
})

test('Numbers told in another language than that of the paper say which, to a browser and to a screen reader', () => {
  const told = agreed((body) => {
    const numbers = [...toldToday.numbersOf(example, 'teca-lbo', 'es-MX')]
    const plan = { ...body.plan, language: 'es-MX', numbers }
    return { ...body, plan, fingerprint: fingerprintOf(plan) }
  })
  const english = agreementSheet.of(inputFor(told))
  const spanish = agreementSheet.of({ ...inputFor(told), language: 'es' })
  if (!isPaper(english) || !isPaper(spanish)) throw new Error('It was agreed.')
  expect(renderHtml(english)).toContain('<ul lang="es"><li dir="auto">En un estudio de 309 perros')
  expect(renderHtml(spanish)).toContain('<ul><li dir="auto">En un estudio de 309 perros')
})
