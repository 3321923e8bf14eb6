import { describe, expect, it } from 'vitest'
import { missingReasons } from '#content/follow-up/missing-reasons.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { anaestheticAssessment } from '#core/journal/kinds/anaesthetic-assessment.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { moss } from '#demo/cat.ts'
import { practiceChart } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { type Chapter, chapters } from './chapter.ts'
import { chapterOfKind, kindsOf, reachedChapter } from './chapter-of-kind.ts'
import { chaptersOf } from './chapters-of.ts'
import { missingCodes } from './missing.ts'
import { placedLines } from './placed-lines.ts'
import { sayMissing } from './say-missing.ts'

const right = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const

function view(entries: readonly Entry[]) {
  const file = fileOf(entries)
  const { owed } = owedOf(file, procedures, { rules: owedRules })
  const { chapters: views, ...rest } = chaptersOf(file, { procedures, owed })
  const of = (chapter: Chapter) => {
    const found = views.find((one) => one.chapter === chapter)
    if (!found) throw new Error(chapter)
    return found
  }
  return { of, views, owed, ...rest }
}

/** One entry of every kind, as their worked examples tell them. */
function oneOfEach(): Entry[] {
  const make = entryMaker()
  return kinds.map(({ name }) => make({ kind: name }))
}

describe('the chapters of a case', () => {
  it('give every kind a place, in its chapter or in the clinic’s own stream', () => {
    expect(Object.keys(chapterOfKind).sort()).toEqual(kinds.map(({ name }) => name).sort())
    expect(chapters.flatMap(kindsOf).length + 13).toBe(kinds.length)
    expect(Object.keys(kindsInEnglish).sort()).toEqual(Object.keys(chapterOfKind).sort())
  })

  it('hold every line that counts exactly once, and nothing that takes another back', () => {
    const entries = oneOfEach().filter(({ kind, stream }) => stream !== 'clinic' && kind !== 'death')
    const { views } = view(entries)
    const shown = views.flatMap(({ there }) => there.map(({ header }) => header.id))
    expect(shown.length).toBe(new Set(shown).size)
    const expected = entries.filter(({ kind }) => kind !== 'withdrawal' && kind !== 'refile').map(({ id }) => id)
    expect([...shown].sort()).toEqual(expected.sort())
  })

  it('hold every owed thing exactly once, in a chapter or aside', () => {
    const { views, owed, aside } = view(oneOfEach().filter(({ kind }) => kind !== 'death'))
    const shown = [...views.flatMap(({ next }) => next), ...aside].map(({ id }) => id)
    expect(shown.sort()).toEqual(owed.map(({ id }) => id).sort())
    expect(owed.length).toBeGreaterThan(3)
  })

  it('of a fresh call lack the red flags nobody asked, and say them in words', () => {
    const make = entryMaker()
    const { of } = view([make({ kind: 'identity' }), make({ kind: 'referral' })])
    const flags = of('Referral').missing.find(({ code }) => code === 'red-flags-not-asked')
    expect(flags && sayMissing(flags, chaptersInEnglish)).toBe(
      'Not asked yet: falling, mouth will not open, swelling under the ear, not eating, bleeding mass, eye red or shut',
    )
    expect(flags).toMatchObject({ kind: 'referral', weight: 'needed', amends: expect.any(String) })
    expect(of('Referral').state).toBe('open')
    expect(of('Work-up').missing.map(({ code }) => code)).toContain('baseline-missing')
    expect(of('Theatre')).toMatchObject({ state: 'not-reached', missing: [], there: [] })
  })

  it('ask for the other ear too, and say "not assessed" as a gap', () => {
    const make = entryMaker()
    const { of } = view([make({ kind: 'identity' }), make({ kind: 'referral' }), make({ kind: 'ear-findings' })])
    const asked = of('Work-up').missing.filter(({ kind }) => kind === 'ear-findings')
    expect(asked.map((one) => sayMissing(one, chaptersInEnglish))).toEqual(['The RIGHT ear, examined'])
    expect(asked[0]?.subject).toEqual(right)
  })

  it('ask for a smear of the ear the case is about, until one was looked at', () => {
    const make = entryMaker()
    const called = [make({ kind: 'identity' }), make({ kind: 'referral' })]
    const asked = (entries: readonly Entry[]) =>
      view(entries)
        .of('Work-up')
        .missing.filter(({ code }) => code === 'cytology-missing')
    expect(asked(called)).toMatchObject([{ side: 'LEFT', weight: 'useful', subject: { kind: 'ear', side: 'LEFT' } }])
    expect(asked([...called, make({ kind: 'cytology', subject: right })])).toHaveLength(1)
    expect(asked([...called, make({ kind: 'cytology' })])).toEqual([])
  })

  it('ask for blood once an operation is chosen, and until it is done; a cat is typed always', () => {
    const make = entryMaker()
    const who = (species: 'dog' | 'cat') => make({ kind: 'identity', body: { ...identity.example, species } })
    const asked = (entries: readonly Entry[]) =>
      view(entries)
        .of('Work-up')
        .missing.filter(({ kind }) => kind === 'blood-test' || kind === 'blood-type')
        .map((one) => `${one.weight}: ${sayMissing(one, chaptersInEnglish)}`)
    const wanted = ['needed: Blood cells', 'needed: Blood chemistry', 'useful: Clotting']
    expect(asked([who('dog')])).toEqual([])
    const choice = make({ kind: 'choice' })
    expect(asked([who('dog'), choice])).toEqual([...wanted, 'useful: The blood group: nobody typed it'])
    expect(asked([who('cat'), choice])).toEqual([...wanted, 'needed: The blood group: nobody typed it'])
    // A card for dogs says nothing of a cat.
    expect(asked([who('cat'), choice, make({ kind: 'blood-type' })]).at(-1)).toBe(
      'needed: The blood group: typed as another species',
    )
    const tested = [make({ kind: 'blood-test' }), make({ kind: 'blood-type' })]
    expect(asked([who('dog'), choice, ...tested])).toEqual(wanted.slice(1))
    const done = make({ kind: 'operation-summary' })
    expect(asked([who('dog'), choice, make({ kind: 'booking' }), done])).toEqual([])
  })

  it('ask for class and airway plan before the anaesthetic, and whether the jaw opens', () => {
    const make = entryMaker()
    const booked = [make({ kind: 'identity' }), make({ kind: 'agreement' }), make({ kind: 'booking' })]
    const asked = (...more: readonly Entry[]) =>
      view([...booked, ...more])
        .of('Theatre')
        .missing.filter(({ kind }) => kind === 'anaesthetic-assessment')
        .map(({ code, weight, amends }) => ({ code, weight, amends }))
    expect(asked()).toEqual([{ code: 'assessment-missing', weight: 'needed', amends: null }])
    const early = { at: '2026-02-09T08:00:00.000Z' }
    const { example } = anaestheticAssessment
    const shut = make({ kind: 'anaesthetic-assessment', ...early, body: { ...example, jawOpens: 'not-assessed' } })
    expect(asked(shut)).toEqual([{ code: 'jaw-not-assessed', weight: 'needed', amends: shut.id }])
    expect(asked(make({ kind: 'anaesthetic-assessment', ...early }))).toEqual([])
  })

  it('ask for an estimate that is answered and fits together, the newest version of it', () => {
    const make = entryMaker()
    const { example } = estimate
    const asked = (...more: readonly Entry[]) =>
      view([make({ kind: 'choice' }), ...more])
        .of('Agreement')
        .missing.filter(({ kind }) => kind === 'estimate')
        .map((one) => sayMissing(one, chaptersInEnglish))
    expect(asked()).toEqual(['An estimate, from low to high'])
    expect(asked(make({ kind: 'agreement' }))).toEqual([])
    const on = { at: '2026-03-01T10:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' } as const
    const answer = { said: 'accepted', by: 'contact-1', on } as const
    const first = make({ kind: 'estimate', body: { ...example, answer } })
    expect(asked(first)).toEqual([])
    const ceiling = { amount: '2000.00', currency: 'GBP' }
    expect(asked(first, make({ kind: 'estimate', body: { ...example, edition: 2, ceiling } }))).toEqual([
      'The answer to the estimate',
      'The estimate does not fit together: the limit lies under what it costs at least',
    ])
  })

  it('call a blink that nobody assessed needed, and a hearing that nobody assessed nothing at all', () => {
    const make = entryMaker()
    const { example } = baseline
    const body = { ...example, RIGHT: { ...example.RIGHT, blink: 'not-assessed', tearTest: null } } as const
    const { of } = view([make({ kind: 'referral' }), make({ kind: 'baseline', body })])
    expect(of('Work-up').missing.filter(({ code }) => code === 'baseline-not-assessed')).toMatchObject([
      { side: 'RIGHT', weight: 'needed', about: { fields: 'blink, tearTest' } },
    ])
  })

  it('ask for "no surgery" among the options', () => {
    const make = entryMaker()
    const body = {
      options: [{ option: 'teca-lbo', answer: 'chosen', because: 'Closed.' }],
      session: 'one-ear',
      for: [],
      against: [],
      missing: ['A scan of the other ear'],
    } as const
    const { of } = view([
      make({
        kind: 'choice',
        body: { ...body, options: [...body.options], for: [], against: [], missing: [...body.missing] },
      }),
    ])
    expect(of('Choice').missing.map((one) => sayMissing(one, chaptersInEnglish))).toEqual([
      '“No surgery” among the options of the LEFT ear',
      'For the choice of the LEFT ear: A scan of the other ear',
      'A plan for the skin disease behind the ear',
      'What becomes of the RIGHT ear',
    ])
    expect(of('Agreement').missing.map(({ code }) => code)).toEqual(['agreement-missing', 'estimate-missing'])
  })

  it('show what was corrected or taken back, apart from what counts', () => {
    const make = entryMaker()
    const wrong = make({ kind: 'weight' })
    const better = make({ kind: 'weight', supersedes: [wrong.id], reason: 'Wrong line.' })
    const { of } = view([make({ kind: 'referral', at: '2026-02-01T08:00:00.000Z' }), wrong, better])
    expect(of('Referral').before.map(({ header }) => header.id)).toEqual([wrong.id])
    expect(of('Referral').there.map(({ header }) => header.id)).toContain(better.id)
  })

  it('hold a conflict where its entries stand, not where their kind is at home', () => {
    const make = entryMaker()
    const wrong = make({ kind: 'weight', at: '2026-03-10T08:00:00.000Z' })
    const again = () => make({ kind: 'weight', at: wrong.happenedAt.at, supersedes: [wrong.id], reason: 'Read again.' })
    const choice = make({ kind: 'choice', at: '2026-03-09T08:00:00.000Z' })
    const { of } = view([make({ kind: 'referral' }), choice, wrong, again(), again()])
    expect(of('Choice').next.map(({ what }) => what)).toEqual(['conflict-to-settle'])
  })

  it('after death ask only for what the record of an operation lacks', () => {
    const make = entryMaker()
    const { of, reached } = view([
      make({ kind: 'referral' }),
      make({ kind: 'booking' }),
      make({ kind: 'theatre-stamp', body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null } }),
      make({ kind: 'death' }),
    ])
    expect(reached).toBe('Closed')
    expect(of('Referral').missing.map(({ code }) => code)).toEqual(['identity-missing', 'household-missing'])
    expect(of('Theatre').missing.map(({ code }) => code)).toContain('summary-missing')
    expect(of('Year').missing).toEqual([])
  })

  it('name the furthest chapter by the entries that open it', () => {
    const make = entryMaker()
    const case_ = (...entries: readonly Entry[]) => reachedChapter(fold(entries))
    const findings = make({ kind: 'ear-findings' })
    const home = make({ kind: 'discharge' })
    expect(case_()).toBe('Referral')
    expect(case_(make({ kind: 'referral' }), findings)).toBe('Work-up')
    expect(case_(home, findings, make({ kind: 'choice' }))).toBe('Home')
    expect(case_(home, make({ kind: 'late-event' }))).toBe('Year')
    expect(case_(home, make({ kind: 'death' }))).toBe('Closed')
  })

  it('have a sentence and a sourced reason for everything that can be missing', () => {
    for (const code of missingCodes) {
      expect(chaptersInEnglish.missing[code].length, code).toBeGreaterThan(3)
      expect(missingReasons[code].sources.length, code).toBeGreaterThan(0)
    }
  })
})

describe('the invented cases', () => {
  it('have every chapter of Tansy’s year done, and Moss’s theatre open for the pauses nobody wrote down', () => {
    const states = (entries: readonly Entry[]) => view(entries).views.map(({ state }) => state)
    const house = practiceChart().entries
    expect(states([...house, ...tansy().entries])).toEqual(chapters.map(() => 'done'))
    const { of } = view([...house, ...moss().entries])
    expect(of('Theatre').missing.map((one) => sayMissing(one, chaptersInEnglish))).toEqual([
      'The spoken pause before anaesthesia',
      'The spoken pause before the incision',
    ])
    expect(of('Theatre').state).toBe('open')
  })
})

describe('a line without a chapter of its own', () => {
  it('stands where the case stood when it happened', () => {
    const make = entryMaker()
    const note = (at: string) => make({ kind: 'note', subject: { kind: 'animal', animal: 'animal-1' }, at })
    const entries = [
      make({ kind: 'referral', at: '2026-01-01T09:00:00.000Z' }),
      note('2026-01-02T09:00:00.000Z'),
      make({ kind: 'choice', at: '2026-01-10T09:00:00.000Z' }),
      note('2026-01-11T09:00:00.000Z'),
      make({ kind: 'discharge', at: '2026-02-12T09:00:00.000Z' }),
      note('2026-02-13T09:00:00.000Z'),
    ]
    const theCase = fold(entries)
    const placed = placedLines(theCase)
    const chaptersOfNotes = theCase.live('note').map(({ header }) => placed.get(header.id))
    expect(chaptersOfNotes).toEqual(['Referral', 'Choice', 'Home'])
  })

  it('a check before going home is the ward’s, after it the year’s', () => {
    const make = entryMaker()
    const theCase = fold([
      make({ kind: 'operation-summary', at: '2026-02-10T12:00:00.000Z' }),
      make({ kind: 'check', at: '2026-02-11T08:00:00.000Z' }),
      make({ kind: 'discharge', at: '2026-02-12T10:00:00.000Z' }),
      make({ kind: 'check', at: '2026-02-23T10:00:00.000Z' }),
    ])
    const placed = placedLines(theCase)
    expect(theCase.live('check').map(({ header }) => placed.get(header.id))).toEqual(['Ward', 'Year'])
  })
})
