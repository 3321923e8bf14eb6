import { expect, test } from 'vitest'
import { homeInEnglish } from '#content/wording/home.ts'
import { homeInSpanish } from '#content/wording/spanish/home.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import type { HomeMedicine } from '#core/home/medicine-times.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { Decimal } from '#core/units/quantity.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { ownerLeaflet } from '../leaflet/owner-leaflet.ts'
import { renderText } from '../render/text.ts'
import { homePage } from './home-page.ts'
import { courseOf, sayAmount } from './medicines.ts'

const tablets: HomeMedicine = {
  drug: 'amoxicillin-clavulanate',
  label: 'Tablet',
  purpose: 'infection',
  form: 'tablet',
  strength: { value: '250', unit: 'mg/{tablet}' },
  each: '0.5',
  side: null,
  times: ['08:00', '20:00'],
  firstDay: '2026-02-12',
  firstTime: '20:00',
  days: 7,
  withFood: 'yes',
  onDays: 'every-day',
  steps: [],
}

function pageOf(entries = exampleEntries()): string {
  const made = homePage.of(inputFor(entries))
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made)
}

test('Tablets are counted dose by dose: the morning of the first day was given in the ward', () => {
  const course = courseOf(tablets, 'Europe/London')
  expect(course.doses).toHaveLength(13)
  expect(course.total.toString()).toBe('6.5')
  expect(course.doses.at(-1)).toMatchObject({ day: '2026-02-18', time: '20:00' })
})

test('Halves and quarters are said as an owner reads them', () => {
  expect(sayAmount(new Decimal('0.5'), 'tablet', homeInEnglish)).toBe('½ tablet')
  expect(sayAmount(new Decimal('1'), 'tablet', homeInEnglish)).toBe('1 tablet')
  expect(sayAmount(new Decimal('1.75'), 'tablet', homeInEnglish)).toBe('1¾ tablets')
  expect(sayAmount(new Decimal('0.4'), 'tablet', homeInEnglish)).toBe('0.4 tablet')
  expect(sayAmount(new Decimal('0.5'), 'liquid', homeInEnglish)).toBe('0.5 mL')
})

test('A course across the change of clocks keeps its clock times and says so', () => {
  const made = homePage.of(
    inputFor(
      exampleEntries().map((entry) =>
        entry.kind === 'discharge'
          ? {
              ...entry,
              body: {
                ...(entry.body as object),
                medicines: [{ ...tablets, times: ['01:30'], firstTime: '01:30', firstDay: '2026-03-28' }],
              } as typeof entry.body,
            }
          : entry,
      ),
    ),
  )
  if (!isPaper(made)) throw new Error(made.because)
  expect(renderText(made).replaceAll(/\s+/g, ' ')).toContain('will not show 01:30. Give that dose at 02:30.')
})

test('The page says the side in capitals, what replaces discharge as the warning sign, and both phone numbers', () => {
  const page = pageOf()
  expect(page).toContain('Operated ear: LEFT, on 10 February 2026')
  expect(page).toContain('pain or swelling is the warning sign')
  expect(page).toContain('By day: 01632 960001. At night and on weekends: 01632 960002.')
})

test('A weak blink keeps the eye care going; what nobody wrote down is said to be missing', () => {
  expect(pageOf()).toContain('until we have seen a normal blink')
  const withoutCheck = pageOf(exampleEntries().filter(({ kind }) => kind !== 'check'))
  expect(withoutCheck).toContain('Nobody has written down whether the LEFT eye blinks.')
})

test('A result whose owner was not told is still announced, one that was told is not', () => {
  const make = entryMaker({}, 7)
  const entries = exampleEntries()
  const specimen = entries.find(({ kind }) => kind === 'specimen')
  if (!specimen) throw new Error('The course has a specimen.')
  const result = make({
    kind: 'specimen-result',
    body: { ...emptyReport, specimen: specimen.id, status: 'final', growth: 'none' },
  })
  const told = make({
    kind: 'told',
    body: { about: result.id, who: 'owner', contact: 'contact-1', by: 'phone', text: null },
  })
  expect(pageOf([...entries, result])).toContain('We will phone you, whatever the result is.')
  expect(pageOf([...entries, result, told])).not.toContain('We will phone you')
})

test('After a death the owner gets no page and no leaflet any more', () => {
  const dead = [...exampleEntries(), entryMaker({}, 8)({ kind: 'death', at: '2026-02-12T09:30:00.000Z' })]
  const because = 'the animal has died; nothing is asked of the owner any more'
  expect(homePage.of(inputFor(dead))).toEqual({ kind: 'not-yet', because })
  expect(ownerLeaflet.of(inputFor(dead))).toEqual({ kind: 'not-yet', because })
})

test('Before the animal goes home there is no page, and the reason is said', () => {
  const made = homePage.of(inputFor(exampleEntries().filter(({ kind }) => kind !== 'discharge')))
  expect(made).toEqual({ kind: 'not-yet', because: 'the animal has not gone home yet' })
})

test.each([
  ['en', homeInEnglish],
  ['es', homeInSpanish],
] as const)(
  'Our own sentences on the page are easy to read by the formula of their language: %s',
  (language, words) => {
    const sentences = [
      ...words.phoneNowItems.value,
      words.newSign,
      words.newSignKept,
      ...words.tonightItems.value,
      words.forgotten,
      words.noHumanMedicine,
      words.eyeUntil,
      words.eyeCareMissing,
      words.eyeRisk,
      words.eyeEnded,
      words.collarWhy,
      words.collarWas,
      words.nextWas,
      ...Object.values(words.sutures),
    ]
    expect(readingLevel(sentences.join('\n'), language)).toMatchObject({ meetsAim: true })
  },
)

test('A page with a dose over the label says to the clinic that it is not handed out yet, and is written all the same', () => {
  const tooMuch = exampleEntries().map((entry) =>
    entry.kind === 'discharge'
      ? {
          ...entry,
          body: { ...(entry.body as object), medicines: [{ ...tablets, drug: 'meloxicam', each: '1' }] },
        }
      : entry,
  )
  const page = pageOf(tooMuch).replaceAll(/\s+/g, ' ')
  expect(page).toContain('do not hand this page out yet')
  expect(pageOf()).not.toContain('do not hand this page out yet')
})

test('A dose that is brought down stands row by row with its own last dose and count, and all rows are added up', () => {
  const steps = [
    { fromDay: '2026-02-15', each: '0.5', times: ['08:00'] },
    { fromDay: '2026-02-17', each: '0.25', times: ['08:00'] },
  ]
  const tapered = exampleEntries().map((entry) =>
    entry.kind === 'discharge'
      ? {
          ...entry,
          body: { ...(entry.body as object), medicines: [{ ...tablets, label: 'Exampline', each: '1', steps }] },
        }
      : entry,
  )
  const page = pageOf(tapered).replaceAll(/\s+/g, ' ')
  expect(page).toContain('Exampline: then, from 15 February, 08:00')
  expect(page).toContain('Exampline: then, from 17 February, 08:00')
  // 5 doses of 1, 2 of ½, 2 of ¼.
  expect(page).toContain('All rows together: 6½ tablets.')
})

test('Who cares for the animal is printed, and whether this person has the page', () => {
  const cared = (page: 'handed-over' | 'not-yet') =>
    pageOf(
      exampleEntries().map((entry) =>
        entry.kind === 'discharge'
          ? { ...entry, body: { ...(entry.body as object), carer: { contact: 'contact-1', page } } }
          : entry,
      ),
    )
  expect(cared('handed-over')).toContain('We gave this page to this person.')
  expect(cared('not-yet').replaceAll(/\s+/g, ' ')).toContain('does not have this page yet')
  expect(pageOf()).not.toContain('Who cares for the animal')
})
