import { describe, expect, it } from 'vitest'
import { forms } from '#content/forms/index.ts'
import { formOf } from '#core/forms/form.ts'
import type { Json } from '#core/journal/canonical.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { differences } from './compare.ts'
import { gistOf } from './gist.ts'
import { plainSaid, type Said, type SaidRow } from './said.ts'
import { type Reading, sayBody } from './say-body.ts'

/** Codes stand for their own words here: what is tested is that every answer is said, and how. */
const reading: Reading = {
  words: {
    label: (at) => at,
    option: (_, value) => value,
    yes: 'yes',
    no: 'no',
    blank: (_, means) => means.replace('-', ' '),
  },
  names: {
    registered: (register, id) => `${register} ${id}`,
    details: (body) => Object.keys(body.detail ?? {}),
    subject: () => 'somewhere',
    decimalMark: '.',
  },
}
const nameOfEntry = (id: string) => `entry ${id.slice(-2)}`

function rowsOf(kind: string, body: unknown): SaidRow[] {
  const arrangement = forms.find((form) => form.kind === kind)
  if (!arrangement) throw new Error(kind)
  return sayBody(formOf(arrangement) as ReturnType<typeof formOf>, body as Json, reading)
}

function said(kind: string, body: unknown, at: string): Said | undefined {
  return rowsOf(kind, body).find((row) => row.at === at)?.said
}

const example = (name: string) => kinds.find((kind) => kind.name === name)?.example as unknown as Record<string, Json>

describe('an entry read out', () => {
  it.each(kinds.map((kind) => [kind.name, kind] as const))('says every answer of the example of %s', (name, kind) => {
    const rows = rowsOf(name, kind.example)
    const all = rows.map((row) => `${row.label}: ${plainSaid(row.said, nameOfEntry)}`).join('\n')
    expect(all).not.toMatch(/undefined|\[object|NaN/)
    const hidden = name === 'agreement' ? ['fingerprint'] : []
    const tops = [...new Set(rows.map(({ at }) => at.split('.')[0]))].sort()
    const asked = Object.keys(kind.example as object).filter((key) => !hidden.includes(key))
    const unasked = asked.filter((key) => !tops.includes(key))
    // Only what another answer covers: the typed weight, the place of no mass, the reason of a yes, the group
    // of another species, the laboratory of a test in the house, the delivery note of a draw, the eye of no blink,
    // the tissue of a culture, the state before of what begins with an operation.
    expect(
      unasked.filter(
        (key) =>
          ![
            'typed',
            'massPlace',
            'massSize',
            'because',
            'ab',
            'laboratory',
            'paper',
            'side',
            'tissue',
            'before',
          ].includes(key),
      ),
    ).toEqual([])
  })

  it('says every answer of every entry of the invented cases', () => {
    for (const { kind, body } of [...tansy().entries, ...moss().entries]) {
      const rows = rowsOf(kind, body)
      expect(rows.length, kind).toBeGreaterThan(0)
      expect(rows.map((row) => plainSaid(row.said, nameOfEntry)).join(' ')).not.toMatch(/undefined|\[object|NaN/)
      expect(gistOf(kind, rows, nameOfEntry), `${kind} ${JSON.stringify(body)}`).not.toBe('')
    }
  })

  it('says a weight in kilograms and pounds, as it was typed', () => {
    const typed = { weight: { value: '12.25', unit: 'kg' }, typed: { value: '27', unit: '[lb_av]' }, how: 'scale' }
    expect(said('weight', { ...typed, bodyCondition: null }, 'weight')).toMatchObject({ text: '12.25 kg (27 lb)' })
  })

  it('keeps "not assessed" apart from normal, and from "not recorded"', () => {
    const findings = example('ear-findings')
    expect(said('ear-findings', { ...findings, drum: 'not-assessed' }, 'drum')).toMatchObject({ open: true })
    expect(said('ear-findings', { ...findings, drum: 'intact' }, 'drum')).toMatchObject({ open: false })
    const otis3 = { erythema: null, swelling: 0, erosion: 0, exudate: 0 }
    expect(said('ear-findings', { ...findings, otis3 }, 'otis3.erythema')).toMatchObject({ blank: 'not-assessed' })
  })

  it('says that nobody recorded what may stay empty', () => {
    const stamp = { ...example('theatre-stamp'), text: null }
    expect(said('theatre-stamp', stamp, 'text')).toMatchObject({ blank: 'not-recorded', text: 'not recorded' })
  })

  it('leaves out what was not asked, and never an answer that stands', () => {
    const findings = { ...example('ear-findings'), mass: 'no', massPlace: 'not-assessed' }
    expect(said('ear-findings', findings, 'massPlace')).toBeUndefined()
    expect(said('ear-findings', { ...findings, massPlace: 'bulla' }, 'massPlace')).toMatchObject({ text: 'bulla' })
  })
})

describe('the gist of an entry', () => {
  it('tells no result of a report without the unit that is printed beside it', () => {
    const body = example('blood-test')
    expect(gistOf('blood-test', rowsOf('blood-test', body), nameOfEntry)).toContain('PCV 44 %, Platelets 312 10^9/L')
  })

  it('tells no value that was an artefact without saying so', () => {
    const body = example('observation')
    const values = (body.values as { artefact: boolean }[]).map((value) => ({ ...value, artefact: true }))
    expect(gistOf('observation', rowsOf('observation', body), nameOfEntry)).not.toContain('artefact')
    const gist = gistOf('observation', rowsOf('observation', { ...body, values }), nameOfEntry)
    expect(gist).toContain('92 a minute (values.artefact)')
  })
})

describe('two readings of one thing', () => {
  it('differ only where they say something else', () => {
    const body = example('imaging')
    const other = { ...body, text: 'Another report.', RIGHT: null }
    const found = differences([rowsOf('imaging', body), rowsOf('imaging', other)], nameOfEntry)
    expect(found.find(({ at }) => at === 'text')?.says).toEqual([body.text, 'Another report.'])
    expect(found.filter(({ at }) => at.startsWith('LEFT'))).toEqual([])
    expect(differences([rowsOf('imaging', body), rowsOf('imaging', body)], nameOfEntry)).toEqual([])
  })
})
