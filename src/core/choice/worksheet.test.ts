import { describe, expect, it } from 'vitest'
import { choiceContent } from '#content/choice/index.ts'
import { options } from '#content/options/index.ts'
import type { Species } from '#core/animal/species.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { imaging } from '#core/journal/kinds/imaging.ts'
import { referral } from '#core/journal/kinds/referral.ts'
import type { ToldId } from './option.ts'
import { type EarSheet, worksheetOf } from './worksheet.ts'

const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const

/** The LEFT ear of an animal, with what the test writes of it beside who it is and which ear was reported. */
function leftEar(
  write: (make: MakeEntry) => readonly Entry[],
  {
    species = 'dog',
    reported = 'LEFT',
    ...who
  }: Partial<BodyOf<'identity'>> & {
    readonly species?: Species
    readonly reported?: BodyOf<'referral'>['reportedSide']
  } = {},
): EarSheet {
  const make = entryMaker()
  const entries = [
    make({ kind: 'referral', body: { ...referral.example, signs: [], reportedSide: reported } }),
    make({ kind: 'identity', body: { ...identity.example, species, breed: null, flatFace: 'unknown', ...who } }),
    ...write(make),
  ]
  const sheet = worksheetOf(fold(entries), { content: choiceContent, options }).find(({ side }) => side === 'LEFT')
  if (!sheet) throw new Error('The LEFT ear is not on the worksheet.')
  return sheet
}

/** An ear of which nothing was assessed, and what the test says of it. */
const nothingSeen: BodyOf<'ear-findings'> = {
  examined: 'awake',
  canalFeel: 'not-assessed',
  painOnPressing: 'not-assessed',
  painOnJawOpening: 'not-assessed',
  swelling: 'not-assessed',
  drainingTract: 'not-assessed',
  discharge: 'not-assessed',
  stenosis: 'not-assessed',
  drum: 'not-assessed',
  mass: 'not-assessed',
  massPlace: 'not-assessed',
  massSize: 'not-assessed',
  flapCarriage: 'not-assessed',
  otis3: { erythema: null, swelling: null, erosion: null, exudate: null },
  text: null,
}

function look(make: MakeEntry, body: Partial<BodyOf<'ear-findings'>>): Entry {
  return make({ kind: 'ear-findings', subject: left, body: { ...nothingSeen, ...body } })
}

function scan(make: MakeEntry, body: Partial<NonNullable<BodyOf<'imaging'>['LEFT']>>): Entry {
  const unseen = {
    bulla: 'not-reported',
    bullaWall: 'not-reported',
    canalMineral: 'not-assessed',
    mass: 'not-assessed',
    massPlace: 'not-reported',
    massSize: 'not-reported',
  } as const
  return make({ kind: 'imaging', body: { ...imaging.example, LEFT: { ...unseen, ...body }, RIGHT: null } })
}

function optionOf(sheet: EarSheet, option: ToldId) {
  const found = sheet.options.find((one) => one.option === option)
  if (!found) throw new Error(`${option} is not on the worksheet.`)
  const rules = (some: readonly { readonly rule: string }[]) => some.map(({ rule }) => rule)
  return {
    for: rules(found.for),
    against: rules(found.against),
    asked: rules(found.asked),
    lacking: found.lacking.map(({ fact }) => fact),
  }
}

function routesOf({ routes }: EarSheet): Record<string, Record<string, string>> {
  return Object.fromEntries(
    routes.map(({ id, steps }) => [id, Object.fromEntries(steps.map((step) => [step.id, step.state]))]),
  )
}

describe('the worksheet of a choice', () => {
  it('of an empty case holds only what is missing, for both ears, and leaves no option out', () => {
    const sheets = worksheetOf(fold([]), { content: choiceContent, options })
    expect(sheets.map(({ side }) => side)).toEqual(['LEFT', 'RIGHT'])
    for (const { options: weighed, routes } of sheets) {
      expect(weighed).toHaveLength(options.length)
      expect(routes).toEqual([])
      for (const one of weighed) {
        expect([...one.for, ...one.against]).toEqual([])
        expect(one.lacking.length + one.asked.length).toBeGreaterThan(0)
      }
    }
  })

  it('takes an examination in which nothing was assessed for nothing: not assessed is not normal', () => {
    const sheet = leftEar((make) => [
      look(make, { stenosis: 'could-not-see', drum: 'could-not-see' }),
      scan(make, {}),
      make({ kind: 'skin-plan', body: { disease: 'not-known-yet', measures: [], text: null, reviewOn: null } }),
    ])
    for (const one of sheet.options) expect([...one.for, ...one.against].map(({ rule }) => rule)).toEqual([])
    expect(optionOf(sheet, 'lateral-wall-resection').lacking).toContain('horizontal-open')
  })

  it('speaks for full removal of a closed canal when medicine failed, with the source of the reason', () => {
    // House, WSAVA 2015: narrowed for good or turned to bone, and adequate medicine has failed.
    const sheet = leftEar((make) => [
      look(make, { stenosis: 'closed', canalFeel: 'bone-hard' }),
      make({ kind: 'medicine-before', subject: left, body: { ...failing, substance: 'prednisolone' } }),
    ])
    const teca = sheet.options.find(({ option }) => option === 'teca-lbo')
    expect(teca?.for.map(({ rule }) => rule)).toEqual(['teca-narrow', 'teca-mineral', 'teca-steroid'])
    expect(teca?.for[0]?.known[0]?.sources).toEqual(['house-2015-wsava'])
    expect(teca?.for[0]?.from).toHaveLength(2)
    expect(optionOf(sheet, 'lateral-wall-resection').against).toContain('lateral-horizontal')
    expect(optionOf(sheet, 'medical-control').against).toEqual(['medical-mineral', 'medical-narrow', 'medical-steroid'])
  })

  it('judges the horizontal canal only by an eye that saw the drum through an open canal', () => {
    // Manual of surgery, page 77: it often cannot be judged before surgery.
    const open = leftEar((make) => [
      look(make, { stenosis: 'mild', drum: 'intact' }),
      scan(make, { bulla: 'air', canalMineral: 'no' }),
    ])
    expect(optionOf(open, 'lateral-wall-resection').for).toEqual(['lateral-open'])
    const unseen = leftEar((make) => [
      look(make, { stenosis: 'mild', drum: 'could-not-see' }),
      scan(make, { bulla: 'air', canalMineral: 'no' }),
    ])
    expect(optionOf(unseen, 'lateral-wall-resection').for).toEqual([])
    expect(optionOf(unseen, 'lateral-wall-resection').lacking).toContain('horizontal-open')
  })

  it('knows what the sources say of Cocker Spaniels, and asks when no breed is on record', () => {
    const cocker = leftEar(() => [], { breed: 'American Cocker Spaniel' })
    expect(optionOf(cocker, 'lateral-wall-resection').against).toContain('lateral-cocker')
    const springer = leftEar(() => [], { breed: 'English Springer Spaniel' })
    expect(optionOf(springer, 'lateral-wall-resection').against).not.toContain('lateral-cocker')
    expect(
      optionOf(
        leftEar(() => []),
        'lateral-wall-resection',
      ).lacking,
    ).toContain('cocker')
  })

  it('opens the route of a mass: tissue, nodes, chest, extent, margins, and asks what it is', () => {
    const sheet = leftEar((make) => [look(make, { mass: 'yes', massPlace: 'vertical', massSize: 'small' })])
    expect(routesOf(sheet).mass).toEqual({
      tissue: 'missing',
      node: 'missing',
      chest: 'for-a-person',
      extent: 'missing',
      margins: 'for-a-person',
      after: 'for-a-person',
    })
    expect(optionOf(sheet, 'teca-lbo').asked).toContain('tissue-first')
    expect(optionOf(sheet, 'lateral-wall-resection')).toMatchObject({ for: ['lateral-mass'] })
    expect(optionOf(sheet, 'lateral-wall-resection').against).toContain('lateral-malignant')
  })

  it('closes the step of the tissue once its result has come', () => {
    const sheet = leftEar((make) => {
      const taken = make({
        kind: 'specimen',
        subject: left,
        body: { ...specimenOf('mass'), tests: ['histology'] },
      })
      return [
        look(make, { mass: 'yes' }),
        taken,
        make({
          kind: 'specimen-result',
          subject: left,
          body: { ...emptyReport, specimen: taken.id, status: 'final', growth: 'not-a-culture', text: 'Adenoma.' },
        }),
      ]
    })
    expect(routesOf(sheet).mass?.tissue).toBe('on-record')
    expect(optionOf(sheet, 'teca-lbo').asked).not.toContain('tissue-first')
  })

  it('does not take a canal that nobody saw whole for one without a mass', () => {
    const unseen = leftEar((make) => [look(make, { mass: 'no', drum: 'could-not-see' })])
    expect(unseen.facts.mass.value).toBe('unknown')
    expect(leftEar((make) => [look(make, { mass: 'no', drum: 'intact' })]).facts.mass.value).toBe('no')
  })

  it('opens the route of a cholesteatoma in a dog whose bulla is eaten away, never in a cat', () => {
    // Hardie 2008: bulla lysis in 12 of 19 dogs scanned, temporal bone lysis, pain on opening the mouth.
    const eaten = (make: MakeEntry) => [scan(make, { bulla: 'filled', bullaWall: 'eaten-away' })]
    expect(routesOf(leftEar(eaten)).cholesteatoma).toMatchObject({ scan: 'on-record', nerves: 'missing' })
    expect(routesOf(leftEar(eaten, { species: 'cat' })).cholesteatoma).toBeUndefined()
    const jaw = leftEar((make) => [look(make, { painOnJawOpening: 'yes' }), scan(make, { bulla: 'filled' })])
    expect(routesOf(jaw).cholesteatoma).toBeDefined()
  })

  it('opens the route of an abscess for a swelling or a tract', () => {
    const sheet = leftEar((make) => [look(make, { drainingTract: 'yes', swelling: 'not-assessed' })])
    expect(routesOf(sheet).abscess).toMatchObject({ scan: 'missing', culture: 'missing', history: 'missing' })
    expect(optionOf(sheet, 'medical-control').against).toContain('medical-abscess')
    const half = leftEar((make) => [look(make, { drainingTract: 'no', swelling: 'not-assessed' })])
    expect(half.facts['swelling-or-tract'].value).toBe('unknown')
  })

  it('opens the route of a re-operation from the history, with its words, and from our own operation', () => {
    const told = leftEar((make) => [
      make({ kind: 'history-item', subject: left, body: history('earlier-ear-surgery', 'Lateral resection in 2022.') }),
      look(make, { stenosis: 'severe' }),
    ])
    expect(told.routes.find(({ id }) => id === 're-operation')?.words).toEqual(['Lateral resection in 2022.'])
    expect(optionOf(told, 'teca-lbo').for).toContain('teca-again')
    const own = leftEar((make) => [
      make({ kind: 'operation-summary', at: '2026-03-02T10:00:00.000Z' }),
      make({ kind: 'late-event', subject: left, at: '2026-09-02T10:00:00.000Z' }),
    ])
    expect(routesOf(own)).toMatchObject({ 're-operation': { report: 'for-a-person' }, abscess: { scan: 'missing' } })
    expect(optionOf(own, 'teca-lbo').against).toContain('teca-out')
    expect(optionOf(own, 'ventral-bulla-osteotomy').for).toContain('ventral-after-removal')
  })

  it('reads an operated ear only by what was seen since', () => {
    const sheet = leftEar((make) => [
      { ...look(make, { stenosis: 'closed' }), happenedAt: day('2026-01-02') },
      make({ kind: 'operation-summary', at: '2026-03-02T10:00:00.000Z' }),
    ])
    expect(sheet.facts['stenosis-marked'].value).toBe('unknown')
  })

  it('opens the route of an injury', () => {
    const sheet = leftEar((make) => [
      make({ kind: 'history-item', subject: left, body: history('ear-injury', 'Hit by a car on Sunday.') }),
      look(make, { stenosis: 'closed' }),
    ])
    expect(routesOf(sheet).injury).toMatchObject({ 'whole-animal': 'for-a-person', scan: 'missing' })
    expect(optionOf(sheet, 'teca-lbo').for).toContain('teca-injury')
  })

  it('sends nerve signs to CT or MRI first', () => {
    const tilted = (make: MakeEntry) => make({ kind: 'baseline', body: { ...baseline.example, headTilt: 'left' } })
    const sheet = leftEar((make) => [tilted(make)])
    expect(optionOf(sheet, 'teca-lbo').against).toContain('nerves-first')
    expect(routesOf(sheet)['nerve-signs']).toMatchObject({ scan: 'missing', baseline: 'on-record' })
    const scanned = leftEar((make) => [tilted(make), scan(make, {})])
    expect(optionOf(scanned, 'teca-lbo').against).not.toContain('nerves-first')
    const sedated = leftEar((make) => [
      make({ kind: 'baseline', body: { ...baseline.example, beforeSedation: false, headTilt: 'left' } }),
    ])
    expect(sedated.facts['nerve-signs'].value).toBe('unknown')
  })

  it('does not take cats for small dogs', () => {
    const cat = leftEar((make) => [look(make, { mass: 'yes' }), scan(make, { bulla: 'filled' })], { species: 'cat' })
    expect(optionOf(cat, 'teca-lbo').against).toContain('teca-cat')
    expect(optionOf(cat, 'traction')).toMatchObject({ for: ['traction-polyp'], against: ['traction-bulla'] })
    expect(optionOf(cat, 'traction').asked).toContain('traction-not-polyp')
    expect(optionOf(cat, 'ventral-bulla-osteotomy').for).toContain('ventral-polyp')
    const dog = leftEar((make) => [look(make, { mass: 'yes' })])
    expect(dog.options.map(({ option }) => option)).not.toContain('traction')
  })

  it('treats skin disease in every branch: without a plan it stands against each option, with one against none', () => {
    const plan = (measures: BodyOf<'skin-plan'>['measures']) => (make: MakeEntry) => [
      make({ kind: 'skin-plan', body: { disease: 'atopy', measures, text: null, reviewOn: null } }),
    ]
    const told = (sheet: EarSheet) =>
      sheet.options
        .filter(({ against }) => against.some(({ rule }) => rule === 'skin-goes-on'))
        .map((one) => one.option)
    const bare = leftEar(plan([]))
    expect(told(bare)).toEqual(
      bare.options
        .map(({ option }) => option)
        .filter((id) => !['euthanasia', 'both-in-one-session', 'staged'].includes(id)),
    )
    expect(told(leftEar(plan([{ what: 'Diet', by: 'owner' }])))).toEqual([])
    expect(routesOf(bare).skin).toMatchObject({ measures: 'missing' })
  })

  it('stages both ears of a cat and of a short face, and knows what was found in other dogs', () => {
    const both = (who: Parameters<typeof leftEar>[1]) => leftEar(() => [], { reported: 'BOTH', ...who })
    const cat = both({ species: 'cat' })
    expect(optionOf(cat, 'both-in-one-session').against).toEqual(['one-session-cat'])
    expect(optionOf(cat, 'staged').for).toEqual(['staged-cat'])
    const pug = both({ flatFace: 'yes' })
    expect(optionOf(pug, 'both-in-one-session').against).toContain('one-session-flat')
    expect(optionOf(pug, 'staged').for).toEqual(['staged-flat'])
    expect(optionOf(both({ flatFace: 'no' }), 'both-in-one-session').lacking).toContain('mass')
    expect(routesOf(cat)['both-ears']).toMatchObject({ session: 'missing', cats: 'for-a-person' })
    expect(routesOf(pug)['both-ears']).not.toHaveProperty('cats')
  })

  it('does not ask of one session or two once the other ear was found well', () => {
    const sheet = leftEar((make) => [
      make({ kind: 'ear-findings', subject: { ...left, side: 'RIGHT' }, body: { ...nothingSeen, stenosis: 'none' } }),
    ])
    expect(sheet.options.map(({ option }) => option)).not.toContain('staged')
  })

  it('asks for the history once, and no more when it is written', () => {
    expect(
      optionOf(
        leftEar(() => []),
        'teca-lbo',
      ).lacking.filter((one) => one === 'history-taken'),
    ).toHaveLength(1)
    const taken = leftEar((make) => [
      make({ kind: 'history-item', subject: left, body: history('ear-disease', 'Since 2020.') }),
    ])
    expect(optionOf(taken, 'teca-lbo').lacking).not.toContain('history-taken')
    expect(optionOf(taken, 'teca-lbo').lacking).not.toContain('operated-before')
  })
})

function day(on: string): Entry['happenedAt'] {
  return { at: `${on}T09:00:00.000Z`, zone: 'Europe/London', precision: 'minute', by: 'person' }
}

const failing: BodyOf<'medicine-before'> = {
  written: 'Prednisolone 5 mg tablets',
  substance: null,
  route: 'oral',
  dose: null,
  from: null,
  until: null,
  ongoing: false,
  effect: 'none',
}

function history(topic: BodyOf<'history-item'>['topic'], text: string): BodyOf<'history-item'> {
  return { topic, text, from: null, until: null, source: 'owner' }
}

function specimenOf(site: BodyOf<'specimen'>['site']): BodyOf<'specimen'> {
  return {
    site,
    tests: ['cytology'],
    label: 'M-1',
    laboratory: null,
    antibioticsOnBoard: null,
    expectedBy: null,
    operation: null,
  }
}
