import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { check } from '#core/journal/kinds/check.ts'
import { medicineChange } from '#core/journal/kinds/medicine-change.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { homePage } from './home-page.ts'

/** The animal of the example went home on 12 February 2026; collar until the 24th, a visit on the 23rd, gel until the 25th. */
const entries = exampleEntries()
const make = entryMaker({}, 9)

function pageOn(at: string, all: readonly Entry[] = entries, language: 'en' | 'es' = 'en'): string {
  const on = { at, zone: 'Europe/London', precision: 'minute', by: 'clock' } as const
  const made = homePage.of({ ...inputFor(all), on, language })
  if (!isPaper(made)) throw new Error(made.because)
  return renderText(made).replaceAll(/\s+/g, ' ')
}

function looked(at: string, sutures: 'in' | 'out'): Entry {
  const subject = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
  return make({ kind: 'check', at, subject, body: { ...check.example, sutures } })
}

describe('the home page on a later day', () => {
  it('says what to do tonight on the first evening only, until midnight by the clock of the clinic', () => {
    expect(pageOn('2026-02-12T23:59:00.000Z')).toContain('Tonight')
    expect(pageOn('2026-02-13T00:00:00.000Z')).not.toContain('Tonight')
    expect(pageOn('2026-02-13T00:00:00.000Z', entries, 'es')).not.toContain('Esta noche')
  })

  it('names a medicine that ended as finished, and keeps in the table what is still given', () => {
    const page = pageOn('2026-02-21T09:00:00.000Z')
    expect(page).toContain('Meloxicam chewable tablet 1 mg: finished on 19 February 2026. Give no more.')
    expect(page).toContain('Amoxicillin and clavulanic acid tablet 250 mg: finished on 18 February 2026.')
    // Its eye blinks weakly: the gel goes on beyond the last planned dose.
    expect(page).toContain('we say when')
    expect(page).not.toContain('25 February, 20:00')
    expect(page).not.toContain('6½ tablets')
    expect(page).toContain('A dose forgotten?')
  })

  it('says of no medicine that a dose was forgotten once all of them are over', () => {
    const subject = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
    const blinks = make({
      kind: 'check',
      at: '2026-03-10T09:00:00.000Z',
      subject,
      body: { ...check.example, blink: 'normal' },
    })
    const page = pageOn('2026-06-01T09:00:00.000Z', [...entries, blinks])
    expect(page).toContain('There is no medicine left to give.')
    expect(page).toContain('Carbomer eye gel: finished on 25 February 2026.')
    expect(page).not.toMatch(/A dose forgotten|Each time|was written down\. Medicine/)
  })

  it('says of the visit and of the collar that their day is over, and not on that day itself', () => {
    expect(pageOn('2026-02-23T09:00:00.000Z')).toContain('23 February 2026. Bring the medicines and this page.')
    expect(pageOn('2026-02-24T09:00:00.000Z')).toContain('Day and night until 24 February 2026.')
    const after = pageOn('2026-02-25T09:00:00.000Z')
    expect(after).toContain('It was to be on 23 February 2026.')
    expect(after).toContain('It was planned until 24 February 2026.')
    expect(after).not.toMatch(/Bring the medicines|Day and night/)
  })

  it('speaks of stitches until somebody saw that they are out', () => {
    const [seenIn, seenOut] = [looked('2026-02-22T09:00:00.000Z', 'in'), looked('2026-02-23T09:00:00.000Z', 'out')]
    expect(pageOn('2026-06-01T09:00:00.000Z')).toContain('The stitches have to come out.')
    expect(pageOn('2026-06-01T09:00:00.000Z', [...entries, seenIn])).toContain('The stitches have to come out.')
    expect(pageOn('2026-06-01T09:00:00.000Z', [...entries, seenIn, seenOut])).not.toContain('stitches')
    // Out at the first ear, before this stay: that says nothing of these.
    const before = looked('2026-02-11T08:00:00.000Z', 'out')
    expect(pageOn('2026-06-01T09:00:00.000Z', [...entries, before])).toContain('The stitches have to come out.')
  })

  it('says when a person wrote what only a person can end', () => {
    expect(pageOn('2026-02-12T20:00:00.000Z')).toContain('Food: Soft food for two weeks.')
    expect(pageOn('2026-02-20T09:00:00.000Z')).toContain('Food: Written on 12 February 2026: Soft food for two weeks.')
    expect(pageOn('2026-02-20T09:00:00.000Z', entries, 'es')).toContain('Escrito el 12 de febrero de 2026: Soft food')
  })

  it('says a stop for as long as an older page would have it given, and the signs for ever', () => {
    const stops = [
      {
        ...medicineChange.example.stops[0],
        drug: 'carbomer',
        label: 'Carbomer eye gel',
        side: 'LEFT' as const,
        fromDay: '2026-02-14',
        fromTime: '12:00',
      },
    ]
    const change = make({
      kind: 'medicine-change',
      at: '2026-02-14T11:00:00.000Z',
      body: { ...medicineChange.example, stops, starts: [] } as typeof medicineChange.example,
    })
    const all = [...entries, change]
    expect(pageOn('2026-02-20T09:00:00.000Z', all)).toContain('Stop: Carbomer eye gel.')
    const late = pageOn('2026-06-01T09:00:00.000Z', all)
    expect(late).not.toMatch(/Stop: Carbomer|The medicines have changed|ask us for the new ones/)
    expect(late).toContain('pain or swelling is the warning sign')
    expect(late).toContain('Phone us now if you see any of these')
  })
})
