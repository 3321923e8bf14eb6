import { describe, expect, it } from 'vitest'
import { evidenceRules } from '#content/evidence/prior.ts'
import { quoted } from '#content/evidence/quoted.ts'
import { studies } from '#content/studies/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import type { PublishedQuestion } from './published.ts'
import { sayTold } from './say-told.ts'
import { type OwnApproved, toldOf, toldPerUnit } from './told.ts'

const wording = { odds: oddsInEnglish, told: toldInEnglish }
const ours = (events: number, total: number, lost = 0): OwnApproved => {
  return { events, total, lost, from: '2025-01-14', until: '2026-05-20', asOf: '2026-06-30' }
}
const about = (own: OwnApproved | null) => ({ studies, ownOf: () => own, rules: evidenceRules, shownFrom: 20 })
const dogs = { species: 'dog', procedure: 'teca-lbo', unit: 'animal', outcome: 'facial_nerve_deficit_any' } as const
const ears = { ...dogs, unit: 'ear' } as const
const said = (question: PublishedQuestion, own: OwnApproved | null = null) =>
  sayTold(toldOf(question, about(own)), wording)

describe('one study without results of our own', () => {
  it('is told as that study, both ways round (Fox 2008, 81 of 309)', () => {
    const { sentence, middle, low, high, own } = said(dogs)
    expect([middle, low, high, own]).toEqual([26, 21, 31, []])
    expect(sentence).toMatch(/^In one study of 309 dogs, 81 had a weak face/)
    expect(sentence).toMatch(/The other way round: about 74 of 100 did not\.$/)
  })
})

describe('several studies', () => {
  it('tell their span and what a clinic should expect that nobody has counted (Coleman 2016, Esposito 2026)', () => {
    const { sentence, lines, low, high } = said(ears)
    expect(sentence).toContain('2 studies with 235 operated ears of dogs found between about 20 and about 37 of 100.')
    expect(sentence).toContain(`it may lie anywhere between ${low} and ${high}.`)
    expect(lines).toHaveLength(2)
    // Two studies say little of a third clinic: its range is far wider than what the two found.
    expect(low ?? 99).toBeLessThan(10)
    expect(high ?? 0).toBeGreaterThan(60)
  })
})

describe('our own results', () => {
  it('of 0 in 12 are said with their upper bound, withheld as a rate, and used in what is said', () => {
    const { sentence, own, middle } = said(ears, ours(0, 12))
    // 1 − 0.025^(1/12) = 26.5 of 100, rounded up.
    expect(own).toEqual([
      'Of our own 12 operated ears of dogs, none was followed by a weak face on that side. By itself that could still mean up to 27 of 100.',
    ])
    expect(sentence).toContain('and 12 of our own.')
    expect(middle ?? 99).toBeLessThan(said(ears).middle ?? 0)
  })

  it('below the house minimum give no rate, but count in what is said', () => {
    const { sentence, own } = said(ears, ours(3, 12, 2))
    expect(own).toEqual([
      'We have counted 12 operated ears of dogs of our own. That is too few to give a figure by itself; we do so from 20 on.',
      'Of 2 more of ours it is not known.',
    ])
    expect(sentence).toContain('and 12 of our own.')
  })

  it('from the house minimum on stand beside it with their own range', () => {
    expect(said(ears, ours(3, 24)).own).toEqual([
      'Of our own 24 operated ears of dogs, 3 were followed by a weak face on that side. That is about 13 of 100 by itself, probably between 3 and 32.',
    ])
  })

  it('pull what is said from the studies to ourselves, the more of them there are', () => {
    const middles = [0, 10, 100, 1000].map((total) => said(dogs, ours(total / 2, total)).middle ?? 0)
    expect(middles).toEqual([...middles].sort((a, b) => a - b))
    expect(middles.at(-1)).toBe(50)
  })

  it('speak alone of what no study counted, as ears only and from the minimum on', () => {
    const unknown = { species: 'dog', procedure: 'teca-lbo', outcome: 'revision_surgery' } as const
    const inUnits = toldPerUnit(unknown, about(ours(2, 25)))
    expect(inUnits.map(({ published }) => published.question.unit)).toContain('ear')
    expect(said({ ...ears, outcome: 'hypoglossal' }, ours(2, 25)).own[0]).toMatch(/^We only have our own count: of 25/)
    expect(said({ ...ears, outcome: 'hypoglossal' }, ours(2, 12)).own[0]).toMatch(/too few to give a figure/)
  })

  it('are not joined to a sentence that can be read in two ways (Bacon 2003)', () => {
    const cats = {
      species: 'cat',
      procedure: 'teca-lbo',
      unit: 'ear',
      outcome: 'facial_nerve_deficit_permanent',
    } as const
    expect(toldOf(cats, about(ours(1, 30)))).toMatchObject({ expected: null, updated: null })
    expect(said(cats, ours(1, 30)).sentence).toMatch(/can be read as about 15 or as about 28/)
  })
})

describe('what no study counted', () => {
  const lasting = { ...dogs, outcome: 'facial_nerve_deficit_permanent' } as const
  it('says what reviews quote, marked so, and makes no figure of it', () => {
    const told = toldOf(lasting, { ...about(null), quoted })
    const { sentence, middle, low, high } = sayTold(told, wording)
    expect([middle, low, high, told.expected]).toEqual([null, null, null, null])
    expect(sentence).toContain(
      'Reviews quote 4 to 13 of 100 and do not say who was counted. We make no figure of that.',
    )
  })

  it('quotes nothing where a study answers', () => {
    const any = quoted.map((one) => ({ ...one, outcome: 'facial_nerve_deficit_any' }) as const)
    expect(toldOf(dogs, { ...about(null), quoted: any }).quoted).toEqual([])
  })
})
