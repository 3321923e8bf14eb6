import { describe, expect, it } from 'vitest'
import { sidesInEnglish } from '#content/wording/app-sides.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { earFindings } from '#core/journal/kinds/ear-findings.ts'
import { imaging } from '#core/journal/kinds/imaging.ts'
import { referral } from '#core/journal/kinds/referral.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { againstSide, sayDisagreement, sidesOf } from './sides.ts'

const right = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const
const quiet = {
  ...earFindings.example,
  canalFeel: 'soft',
  painOnPressing: 'no',
  discharge: 'none',
  stenosis: 'none',
  drum: 'intact',
} as const
const flipped = { ...imaging.example, LEFT: imaging.example.RIGHT, RIGHT: imaging.example.LEFT }

describe('the sources of side', () => {
  it('are all listed, in order, with who said it and when', () => {
    const make = entryMaker()
    const { sources, disagreements } = sidesOf(
      fold([
        make({ kind: 'referral' }),
        make({ kind: 'ear-findings' }),
        make({ kind: 'imaging' }),
        make({ kind: 'booking' }),
      ]),
    )
    expect(sources.map(({ from, says }) => `${from} ${says}`)).toEqual([
      'referral-reported LEFT',
      'findings LEFT',
      'imaging LEFT',
      'booking LEFT',
    ])
    expect(sources[0]?.author).toEqual({ kind: 'person', person: 'person-surgeon' })
    expect(disagreements).toEqual([])
  })

  it('of the invented cases agree', () => {
    for (const chart of [tansy, moss]) {
      const { sources, disagreements } = sidesOf(fold(chart().entries))
      expect(disagreements).toEqual([])
      expect(sources.length).toBeGreaterThan(8)
    }
  })

  it('block a booking that stands against letter, findings and scan, and say so in words', () => {
    const make = entryMaker()
    const entries = [
      make({ kind: 'referral' }),
      make({ kind: 'ear-findings' }),
      make({ kind: 'ear-findings', subject: right, body: quiet }),
      make({ kind: 'booking', body: { ...booking.example, side: 'RIGHT', agreement: null } }),
    ]
    const file = fileOf(entries)
    const [found] = sidesOf(file.theCase).disagreements
    expect(found).toMatchObject({ level: 'block', operation: 'operation-1' })
    expect(found && sayDisagreement(found, file, sidesInEnglish)).toEqual({
      parts: [
        {
          said: 'LEFT is said by',
          sources: [
            'as reported at the first call, by ‹person-surgeon›, 1 March 2026, 08:01',
            'what was found on the ear, by ‹person-surgeon›, 1 March 2026, 08:02',
          ],
        },
        { said: 'RIGHT is said by', sources: ['the booking, by ‹person-surgeon›, 1 March 2026, 08:04'] },
      ],
      settle: 'Nothing is cut until a person has settled this.',
    })
  })

  it('find a flipped scan before anything is booked', () => {
    const make = entryMaker()
    const { disagreements } = sidesOf(fold([make({ kind: 'ear-findings' }), make({ kind: 'imaging', body: flipped })]))
    expect(disagreements).toMatchObject([
      { level: 'block', operation: null, LEFT: [{ from: 'findings' }], RIGHT: [{ from: 'imaging' }] },
    ])
  })

  it('take the caller’s word as a word: it asks, it does not block', () => {
    const make = entryMaker()
    const body = { ...referral.example, reportedSide: 'RIGHT' as const }
    const { disagreements } = sidesOf(fold([make({ kind: 'referral', body }), make({ kind: 'booking' })]))
    expect(disagreements).toMatchObject([{ level: 'confirm', RIGHT: [{ from: 'referral-reported' }] }])
  })

  it('do not hold the first ear against the second one', () => {
    const make = entryMaker()
    const second = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
    const { disagreements } = sidesOf(
      fold([
        make({ kind: 'referral' }),
        make({ kind: 'booking' }),
        make({ kind: 'booking', subject: second, body: { ...booking.example, side: 'RIGHT', agreement: null } }),
      ]),
    )
    expect(disagreements).toEqual([])
  })

  it('are not explained by both ears on one list, where examination and scan contradict each other', () => {
    const make = entryMaker()
    const second = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
    const list = [
      make({ kind: 'booking' }),
      make({ kind: 'booking', subject: second, body: { ...booking.example, side: 'RIGHT', agreement: null } }),
    ]
    const found = make({ kind: 'ear-findings', subject: right })
    const scanned = make({ kind: 'imaging' })
    const { disagreements } = sidesOf(fold([make({ kind: 'referral' }), found, scanned, ...list]))
    const around = { LEFT: [{ from: 'referral-reported' }, { from: 'imaging' }], RIGHT: [{ from: 'findings' }] }
    expect(disagreements.map(({ operation, level }) => [operation, level])).toEqual([
      ['operation-1', 'block'],
      ['operation-2', 'block'],
    ])
    expect(disagreements[0]).toMatchObject({ ...around, LEFT: [...around.LEFT, { from: 'booking' }] })
    expect(sidesOf(fold([found, make({ kind: 'ear-findings' }), scanned, ...list])).disagreements).toEqual([])
  })

  it('block at a pause that did not confirm the side, and at a block given on the other side', () => {
    const make = entryMaker()
    const pause = {
      pause: 'before-incision',
      item: 'side-spoken-and-pointed',
      because: null,
      spokenBy: 'p',
      ledBy: null,
    } as const
    const given = {
      drug: 'bupivacaine',
      written: null,
      amount: { value: '8', unit: 'mg' },
      volume: null,
      route: 'perineural',
      site: 'great auricular nerve, right',
      use: 'local_block',
      line: null,
      batch: null,
      ampoule: null,
    } as const
    const { disagreements } = sidesOf(
      fold([
        make({ kind: 'booking' }),
        make({ kind: 'pause-item', body: { ...pause, answer: 'unknown' } }),
        make({ kind: 'drug-given', body: given }),
        make({ kind: 'drug-given', body: { ...given, site: 'right cephalic vein', use: 'induction' } }),
      ]),
    )
    expect(disagreements).toMatchObject([
      { level: 'block', RIGHT: [{ from: 'block-site' }], notConfirmed: [{ from: 'pause', answer: 'unknown' }] },
    ])
  })

  it('see a picture filed to the ear that it does not show', () => {
    const make = entryMaker()
    const body = { shows: 'Wound', sideInPicture: 'LEFT', takenBy: 'owner' } as const
    const { disagreements } = sidesOf(fold([make({ kind: 'photograph', subject: right, body })]))
    expect(disagreements).toMatchObject([
      { level: 'confirm', LEFT: [{ from: 'photograph-shows' }], RIGHT: [{ from: 'photograph-filed' }] },
    ])
  })

  describe('that disagree, settled by a named person', () => {
    const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
    const ask = (side: 'LEFT' | 'RIGHT') => {
      const make = entryMaker()
      const heard = make({ kind: 'referral', body: { ...referral.example, reportedSide: 'LEFT' } })
      const found = make({ kind: 'ear-findings', subject: right })
      const scanned = make({ kind: 'imaging' })
      const booked = make({ kind: 'booking', body: { ...booking.example, side: 'RIGHT', agreement: null } })
      const settled = make({
        kind: 'side-settled',
        subject: operation,
        body: { side, overruled: [heard.id, found.id, scanned.id, booked.id], because: 'Animal and mark in hand.' },
      })
      return { make, chain: [heard, found, scanned, booked], settled }
    }

    it('no longer disagree, and the settlement is a source itself', () => {
      const { chain, settled } = ask('RIGHT')
      expect(sidesOf(fold(chain)).disagreements).toMatchObject([{ level: 'block' }])
      const { sources, disagreements } = sidesOf(fold([...chain, settled]))
      expect(disagreements).toEqual([])
      expect(sources).toContainEqual(expect.objectContaining({ from: 'settled', says: 'RIGHT' }))
    })

    it('never overrule a booking: another ear than booked still blocks until it is amended', () => {
      const { chain, settled } = ask('LEFT')
      expect(sidesOf(fold([...chain, settled])).disagreements).toMatchObject([
        {
          level: 'block',
          LEFT: [{ from: 'referral-reported' }, { from: 'imaging' }, { from: 'settled' }],
          RIGHT: [{ from: 'booking' }],
        },
      ])
    })

    it('disagree again once something new names the other ear, or the settlement is withdrawn', () => {
      const { make, chain, settled } = ask('RIGHT')
      const later = make({ kind: 'imaging' })
      expect(sidesOf(fold([...chain, settled, later])).disagreements).toMatchObject([{ LEFT: [{ from: 'imaging' }] }])
      const back = make({ kind: 'withdrawal', subject: operation, body: { because: 'wrong' }, withdraws: settled.id })
      expect(sidesOf(fold([...chain, settled, back])).disagreements).toMatchObject([{ level: 'block' }])
    })

    it('say what a person would overrule and what must be amended instead', () => {
      const { chain } = ask('RIGHT')
      const [found] = sidesOf(fold(chain)).disagreements
      const froms = (side: 'LEFT' | 'RIGHT') => {
        const { overrules, amends } = againstSide(found ?? fail(), side)
        return [overrules.map(({ from }) => from), amends.map(({ from }) => from)]
      }
      expect(froms('RIGHT')).toEqual([['referral-reported', 'imaging'], []])
      expect(froms('LEFT')).toEqual([['findings'], ['booking']])
    })
  })
})

function fail(): never {
  throw new Error('The sources do not disagree.')
}
