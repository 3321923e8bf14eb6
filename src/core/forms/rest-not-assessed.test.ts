import { describe, expect, it } from 'vitest'
import { forms } from '#content/forms/index.ts'
import type { KindName } from '#core/journal/fold.ts'
import { draftAt, withAnswer, withDraftAt } from './draft.ts'
import { emptyDraft } from './empty-draft.ts'
import { formOf } from './form.ts'
import { otis3SoFar } from './otis-3-so-far.ts'
import { readBack, refusalWhileTyping } from './read-back.ts'
import { readDraft } from './read-draft.ts'
import { isUntouched } from './relevant.ts'
import { openLooks, restNotAssessed } from './rest-not-assessed.ts'

const place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' } as const

function formFor(name: KindName) {
  const arrangement = forms.find(({ kind }) => kind === name)
  if (!arrangement) throw new Error(name)
  return formOf(arrangement) as ReturnType<typeof formOf>
}

describe('the rest, not assessed', () => {
  it('answers what nobody looked at, keeps what was answered, and leaves open what cannot be answered so', () => {
    const form = formFor('ear-findings')
    const draft = withDraftAt(emptyDraft(form), 'drum', 'ruptured')
    const rest = restNotAssessed(form.fields, draft)
    expect(rest).toMatchObject({ examined: '', drum: 'ruptured', mass: 'not-assessed', discharge: 'not-assessed' })
    expect(draftAt(rest, 'otis3')).toEqual({ erythema: null, swelling: null, erosion: null, exudate: null })
    const read = readDraft(form, rest, place)
    expect(read.kind === 'refusal' && read.refusal.map(({ path }) => path)).toEqual(['examined'])
  })

  it('of one ear leaves the other ear open', () => {
    const form = formFor('baseline')
    const left = form.fields.find(({ name }) => name === 'LEFT')
    const fields = left?.control.kind === 'group' ? left.control.fields : []
    const draft = emptyDraft(form)
    const settled = withDraftAt(draft, 'LEFT', restNotAssessed(fields, draftAt(draft, 'LEFT')))
    expect(openLooks(fields, draftAt(settled, 'LEFT'))).toBe(0)
    expect(openLooks(fields, draftAt(settled, 'RIGHT'))).toBe(7)
    expect(draftAt(settled, 'LEFT.tearTest')).toBeNull()
  })

  it('says "not asked" for red flags, and nothing about urgency', () => {
    const form = formFor('referral')
    const rest = restNotAssessed(form.fields, withDraftAt(emptyDraft(form), 'signs.rows.falling', 'yes'))
    expect(draftAt(rest, 'signs.rows')).toMatchObject({ falling: 'yes', 'head-tilt': 'not-asked' })
    expect(draftAt(rest, 'urgency')).toBe('')
  })

  it('is counted, so that it is offered only where it saves something', () => {
    const counted = (['note', 'call', 'booking', 'weight', 'ear-findings', 'referral'] as const).map((name) =>
      openLooks(formFor(name).fields, emptyDraft(formFor(name))),
    )
    // Ear findings: eleven signs and four of OTIS-3; a mass that is not there has no place. Referral: nine flags, two questions.
    expect(counted).toEqual([0, 0, 0, 1, 14, 11])
  })
})

describe('OTIS-3 while it is filled in', () => {
  it('adds what was graded and names what is open or was not assessed', () => {
    expect(otis3SoFar({ erythema: '3', swelling: '3', erosion: '2', exudate: '3' })).toEqual({
      graded: 11,
      open: [],
      notAssessed: [],
    })
    expect(otis3SoFar({ erythema: '3', swelling: '', erosion: null, exudate: '0' })).toEqual({
      graded: 3,
      open: ['swelling'],
      notAssessed: ['erosion'],
    })
    expect(otis3SoFar({ erythema: '', swelling: '', erosion: '', exudate: '' })).toBeNull()
  })
})

describe('an answer with details of its own', () => {
  const stamp = { checkpoint: 'k3-facial-nerve', answer: 'done', detail: { nerve: 'seen' }, text: '' }

  it('takes them away when it changes, so that no detail stands at a point it does not belong to', () => {
    const field = formFor('theatre-stamp').fields.find(({ name }) => name === 'checkpoint')
    expect(field?.empties).toBe('detail')
    expect(withAnswer(stamp, 'checkpoint', 'k4-horizontal-canal', 'detail')).toEqual({
      ...stamp,
      checkpoint: 'k4-horizontal-canal',
      detail: {},
    })
  })

  it('takes the item of another spoken pause away', () => {
    const field = formFor('pause-item').fields.find(({ name }) => name === 'pause')
    const spoken = { pause: 'before-incision', item: 'side-spoken-and-pointed', answer: 'yes' }
    expect(withAnswer(spoken, 'pause', 'before-leaving', field?.empties ?? null)).toEqual({
      pause: 'before-leaving',
      item: '',
      answer: 'yes',
    })
  })

  it('keeps them when it is given again, and when another field changes', () => {
    expect(withAnswer(stamp, 'checkpoint', 'k3-facial-nerve', 'detail')).toEqual(stamp)
    expect(withAnswer(stamp, 'text', 'Seen at once.', null)).toEqual({ ...stamp, text: 'Seen at once.' })
  })
})

describe('what was typed so far', () => {
  const fieldOf = (kind: KindName, name: string) => {
    const field = formFor(kind).fields.find((one) => one.name === name)
    if (!field) throw new Error(name)
    return field
  }

  it('is read back where it could be misread', () => {
    expect(readBack(fieldOf('weight', 'weight'), '27 lb', place)).toBe('12.25 kg (27 lb)')
    expect(readBack(fieldOf('history-item', 'from'), '2024-03-05', place)).toBe('5 March 2024')
    expect(readBack(fieldOf('history-item', 'from'), '5 March 2024', place)).toBeNull()
    expect(readBack(fieldOf('discharge', 'collarUntil'), '2026-02-24', place)).toBe('24 February 2026')
    expect(readBack(fieldOf('history-item', 'from'), '05/03/2024', place)).toBeNull()
  })

  it('is questioned when it cannot be read, but an empty box is not', () => {
    const from = fieldOf('history-item', 'from')
    expect(refusalWhileTyping(from, { from: '05/03/2024' }, place)?.because).toBe('day-or-month-first')
    expect(refusalWhileTyping(from, { from: '' }, place)).toBeNull()
    expect(refusalWhileTyping(fieldOf('weight', 'weight'), { weight: '' }, place)).toBeNull()
  })

  it('counts as untouched only while nothing was entered', () => {
    const empty = emptyDraft(formFor('ear-findings'))
    expect(isUntouched(empty)).toBe(true)
    expect(isUntouched(withDraftAt(empty, 'otis3.erythema', '0'))).toBe(false)
    expect(isUntouched(withDraftAt(empty, 'text', 'Wax.'))).toBe(false)
    expect(isUntouched(withDraftAt(empty, 'otis3.erythema', null))).toBe(false)
    for (const { kind } of forms) expect(isUntouched(emptyDraft(formFor(kind))), kind).toBe(true)
  })
})
