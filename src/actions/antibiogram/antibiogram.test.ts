import { describe, expect, it } from 'vitest'
import { InputError } from '../input.ts'
import { antibiogram } from './antibiogram.ts'

type Row = Readonly<Record<string, unknown>>
const row = (more: Row = {}): Row => {
  const isolate = { animal: 'A', collectedOn: '2026-01-05', host: 'dog', organism: 'Staphylococcus pseudintermedius' }
  return { ...isolate, drug: 'clindamycin', category: 'S', purpose: 'clinical', ...more }
}
const value = (drug: string, mic: string, more: Row = {}) => row({ drug, mic, category: null, ...more })

async function* coming(rows: readonly Row[]) {
  yield* rows
}
const answered = (rows: readonly Row[], options: unknown = {}) => antibiogram(coming(rows), options)
const drugsOf = async (rows: readonly Row[], options?: unknown) =>
  (await answered(rows, options)).organisms.flatMap(({ drugs }) => drugs)

describe('an antibiogram of rows', () => {
  it('reads each isolate whole: resistance to oxacillin makes every beta-lactam resistant', async () => {
    const drugs = await drugsOf([value('oxacillin', '>=4'), value('cefalexin', '<=2')])
    expect(drugs.find(({ drug }) => drug === 'cefalexin')).toMatchObject({ n: 1, s: 0, r: 1 })
  })

  it('tells no share of what is resistant by nature, whatever the laboratory printed', async () => {
    const [drug] = await drugsOf([row({ organism: 'Pseudomonas aeruginosa', drug: 'ampicillin' })])
    expect(drug).toMatchObject({ untold: 'intrinsic', percent: null })
  })

  it('leaves out what does not tell what grows in ill ears, and says how much', async () => {
    const rows = [
      row(),
      row({ animal: 'B', purpose: 'screening' }),
      row({ animal: 'C', purpose: 'environment' }),
      row({ animal: 'D', status: 'preliminary' }),
      row({ animal: 'E', host: 'horse' }),
      row({ animal: 'F', collectedOn: '2024-12-31' }),
      row({ animal: 'A', collectedOn: '2026-03-01' }),
    ]
    const { rows: counted, organisms } = await answered(rows, { from: '2025-01-01' })
    const once = { screening: 1, environment: 1, preliminary: 1, 'other-animal': 1, 'outside-period': 1, repeat: 1 }
    expect(counted).toEqual({ read: 7, leftOut: once })
    expect(organisms.map(({ n }) => n)).toEqual([1])
  })

  it('names organisms, drugs and columns that nobody here knows, and rows without a purpose', async () => {
    const { notes, organisms } = await answered([
      row({ organism: 'Novum ignotum', colour: 'red' }),
      row({ drug: 'wonderdrug', purpose: '' }),
    ])
    const note = (wanted: string) => notes.find(({ code }) => code === wanted)?.text
    expect(note('organisms-not-known')).toContain('Novum ignotum')
    expect(note('drugs-not-known')).toContain('wonderdrug')
    expect(note('columns-not-read')).toContain('colour')
    expect(note('purpose-not-said')).toContain('1')
    expect(organisms.find(({ id }) => id === null)).toMatchObject({ organism: 'Novum ignotum', n: 1 })
    expect(organisms.flatMap(({ drugs }) => drugs).filter(({ percent }) => percent !== null)).toEqual([])
  })

  it('says that places stand together only because nobody asked for them apart', async () => {
    const rows = [row({ site: 'canal' }), row({ animal: 'B', site: 'bulla-on-entry' })]
    expect((await answered(rows)).notes.map(({ code }) => code)).toContain('places-together')
    const apart = await answered(rows, { sites: 'apart' })
    expect(apart.organisms.map(({ site }) => site)).toEqual(['bulla-on-entry', 'canal'])
    expect(apart.notes.map(({ code }) => code)).not.toContain('places-together')
  })

  it('reads every value again by the edition asked for, one for the whole table', async () => {
    // Dog, enrofloxacin 0.5: susceptible until the edition of 2024 (SX089).
    const rows = [value('enrofloxacin', '0.5')]
    expect(await drugsOf(rows, { edition: 'CLSI VET01S ed6' })).toMatchObject([{ n: 1, s: 1 }])
    expect(await drugsOf(rows, { edition: 'CLSI VET01S ed7' })).toMatchObject([{ n: 1, s: 0 }])
  })

  it('is the same whatever the order of the rows, where no day holds two isolates', async () => {
    const rows = ['A', 'B', 'C'].flatMap((animal, place) => [
      row({ animal, collectedOn: `2026-0${place + 1}-05` }),
      row({ animal, collectedOn: `2026-0${place + 1}-05`, drug: 'amikacin', category: place === 0 ? 'R' : 'S' }),
      row({ animal, collectedOn: `2026-0${place + 4}-05`, category: 'R' }),
    ])
    const { organisms } = await answered(rows)
    expect((await answered(rows.toReversed())).organisms).toEqual(organisms)
  })

  const wrong = async (more: Row, options: unknown = {}): Promise<InputError> => {
    try {
      await answered([row(), row(more)], options)
    } catch (error) {
      if (error instanceof InputError) return error
      throw error
    }
    throw new Error(`${JSON.stringify(more)} was read.`)
  }
  it('names the row and the field that are wrong, and what would be right', async () => {
    expect(await wrong({ collectedOn: '05/01/2026' })).toMatchObject({ path: 'rows[1].collectedOn' })
    expect((await wrong({ collectedOn: '2026-02-30' })).message).toContain('2026-02-30')
    expect((await wrong({ category: 'green' })).message).toMatch(/^rows\[1\]\.category: "green".*S, SDD, I, R, NS/)
    expect(await wrong({ mic: 'much' })).toMatchObject({ path: 'rows[1].mic' })
    expect(await wrong({ mic: 2, zone: 18 })).toMatchObject({ path: 'rows[1].zone' })
    expect((await wrong({ purpose: 'curiosity' })).message).toContain('clinical, screening, environment, repeat-check')
    expect(await wrong({ animal: '' })).toMatchObject({ code: 'missing-field', path: 'rows[1].animal' })
    expect(await wrong({ animal: ['A'] })).toMatchObject({ code: 'invalid-type', path: 'rows[1].animal' })
    expect(await wrong({}, { edition: 'no-such' })).toMatchObject({ code: 'edition-unknown' })
    expect(await wrong({}, { points: 2 })).toMatchObject({ code: 'not-of-this-method', path: 'points' })
    expect(await wrong({}, { from: '2026-02-01', until: '2026-01-01' })).toMatchObject({ code: 'period-backwards' })
  })
})
