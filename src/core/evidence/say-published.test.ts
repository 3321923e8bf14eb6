import { describe, expect, it } from 'vitest'
import { studies } from '#content/studies/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { type PublishedQuestion, publishedFor } from './published.ts'
import { sayPublished } from './say-published.ts'
import { type Series, study } from './study.ts'

function said(question: PublishedQuestion) {
  return sayPublished(publishedFor(question, studies), oddsInEnglish)
}

const seen = { where: 'an invented page', known: 'read', strength: 'study', checked: '2026-11-25' } as const
const dogs = { species: 'dog', procedure: 'teca-lbo', unit: 'animal' } as const

/** One invented study with one count. */
function saidOf(events: number, total: number, series: Partial<Series> = {}) {
  const outcomes = [{ outcome: 'horner_any', events, total, basis: 'stated', confidence: 'high' }] as const
  const one = study({ id: 'i', year: 2020, design: 'unknown', seen, series: [{ ...dogs, ...series, outcomes }] })
  const { species: _, ...asked } = { ...dogs, ...series }
  return sayPublished(publishedFor({ ...asked, species: 'dog', outcome: 'horner_any' }, [one]), oddsInEnglish)
}

describe('one study', () => {
  it('is told as one study of so many dogs, out of 100, with its range (Fox 2008)', () => {
    expect(said({ ...dogs, outcome: 'facial_nerve_deficit_any' })).toMatchObject({
      per: 100,
      middle: 26,
      low: 21,
      high: 31,
      sentence:
        'In one study of 309 dogs, 81 had a weak face after surgery. That is about 26 of 100; the true figure probably lies between 21 and 31.',
    })
  })

  it('says that the time is not known when it is not', () => {
    expect(said({ ...dogs, outcome: 'facial_nerve_deficit_any' }).notes).toEqual([
      'What we read of the study does not say how long they were looked at.',
    ])
  })

  it('says operations where operations were counted (Wainberg 2019)', () => {
    const question = { species: 'cat', procedure: 'ventral-bulla-osteotomy', unit: 'procedure' } as const
    expect(said({ ...question, outcome: 'facial_nerve_deficit_any' }).sentence).toBe(
      'In one study of 289 operations on cats, 39 were followed by a weak face on that side. That is about 13 of 100; the true figure probably lies between 10 and 18.',
    )
  })

  it('says that two ears of one animal are alike (Bacon 2003, 52 ears of 44 cats)', () => {
    const question = { species: 'cat', procedure: 'teca-lbo', unit: 'ear', outcome: 'horner_any' } as const
    expect(said(question).notes.at(-1)).toContain('Some cats had both ears done')
  })

  it('says what happens during surgery as such', () => {
    expect(said({ ...dogs, unit: 'ear', outcome: 'haemorrhage_intraop_any' }).sentence).toContain(
      '13 met with bleeding during surgery',
    )
  })

  it('fits one event and one animal', () => {
    expect(saidOf(1, 10, { unit: 'ear' }).sentence).toContain('10 operated ears of dogs, 1 was followed by')
    expect(saidOf(1, 1).sentence).toContain('In one study of 1 dog, all 1 had')
  })
})

describe('the ends of the scale', () => {
  it('no event shows the bound, never "cannot happen" (Anders 2008, 0 of 15 cats)', () => {
    const question = { species: 'cat', procedure: 'ventral-bulla-osteotomy', unit: 'animal' } as const
    expect(said({ ...question, outcome: 'hearing_worsened_baer' })).toMatchObject({
      middle: 0,
      low: 0,
      high: 22,
      sentence:
        'In one study of 15 cats, none had a worse hearing test than before. That does not mean never: the true figure could still be as high as 22 of 100.',
    })
  })

  it('rounds the bound up, so that a large study without an event never says 0', () => {
    expect(saidOf(0, 100_000).high).toBe(1)
    expect(saidOf(1, 100_000).high).toBe(1)
  })

  it('everybody shows how low the true figure could be, rounded down', () => {
    // 12 of 12: the exact lower end is 0.025^(1/12) = 73.5 of 100.
    expect(saidOf(12, 12)).toMatchObject({ middle: 100, low: 73, high: 100 })
    expect(saidOf(12, 12).sentence).toContain('as low as 73 of 100')
  })

  it('a rare event is fewer than 1 of 100, not 0 (Fox 2008, Horner in 1 of 309)', () => {
    expect(said({ ...dogs, outcome: 'horner_any' }).sentence).toContain(
      'That is fewer than 1 of 100; the true figure probably lies between fewer than 1 and 2.',
    )
  })

  it('nearly everybody is more than 99, not 100', () => {
    expect(saidOf(999, 1000).sentence).toContain('more than 99 of 100')
  })

  it('57 of 200 is 28.5 and rounds to 29', () => {
    expect(saidOf(57, 200).middle).toBe(29)
  })
})

describe('several studies', () => {
  const { sentence, lines, middle, low, high, notes } = said({
    ...dogs,
    unit: 'ear',
    outcome: 'facial_nerve_deficit_any',
  })

  it('give a span and no single figure (Coleman 2016, Esposito 2026)', () => {
    expect([middle, low, high]).toEqual([null, 20, 37])
    expect(sentence).toBe(
      '2 studies of dogs counted this and found between about 20 and about 37 of 100. We show each by itself and do not merge them into one figure.',
    )
  })

  it('stand each in a line of its own with its range and time', () => {
    expect(lines).toEqual([
      '79 operated ears of dogs: 29 were followed by a weak face on that side. That is about 37 of 100, probably between 26 and 48. Time looked at: at least 2 weeks.',
      '156 operated ears of dogs: 31 were followed by a weak face on that side. That is about 20 of 100, probably between 14 and 27. What we read of the study does not say how long they were looked at.',
    ])
    expect(notes).toHaveLength(1)
  })
})

describe('what is not known', () => {
  it('is said, and is not never (lasting facial weakness in dogs)', () => {
    expect(said({ ...dogs, outcome: 'facial_nerve_deficit_permanent' })).toEqual({
      per: 100,
      middle: null,
      low: null,
      high: null,
      lines: [],
      notes: [],
      sentence:
        'Not known in dogs after removal of the ear canal with opening of the middle ear from the side: a weak face that stayed. We found no study that we can use. Not known does not mean never.',
    })
  })

  it('points to the other unit when that was counted', () => {
    expect(said({ ...dogs, outcome: 'ocular_surface_any' }).sentence).toContain(
      'Studies counted it per operated ear, and the two are never mixed.',
    )
  })

  it('gives the span of two readings of one sentence (Bacon 2003, lasting facial weakness in cats)', () => {
    const question = { species: 'cat', procedure: 'teca-lbo', unit: 'ear' } as const
    expect(said({ ...question, outcome: 'facial_nerve_deficit_permanent' })).toMatchObject({
      middle: null,
      low: 7,
      high: 42,
      sentence:
        'One study of cats printed this in a way that can be read as about 15 or as about 28 of 100. Until that is settled, the true figure probably lies somewhere between 7 and 42.',
    })
  })
})
