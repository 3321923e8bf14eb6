import { describe, expect, it } from 'vitest'
import { outcomeDefinitions } from '#content/outcomes/outcome-definitions.ts'
import { sources } from '#content/sources/index.ts'
import { studies } from '#content/studies/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { type OutcomeCode, outcomeCodes } from '#core/evidence/outcome-code.ts'
import { publishedFor } from '#core/evidence/published.ts'
import { sayPublished } from '#core/evidence/say-published.ts'
import { countUnits, type StudyOutcome, studyProcedures } from '#core/evidence/study.ts'

const rows: StudyOutcome[] = studies.flatMap((study) => [...study.rows])
const sourceIds = new Set<string>(sources.map(({ id }) => id))
const studyIds = new Set<string>(studies.map(({ id }) => id))

describe('every study', () => {
  it('is there: none of the first thirty is lost, each stands once', () => {
    expect(studies.length).toBeGreaterThanOrEqual(30)
    expect(studyIds.size).toBe(studies.length)
    expect(rows.length).toBeGreaterThanOrEqual(118)
  })

  it.each(studies.map((study) => [study.id, study] as const))('%s names a source that resolves', (_, study) => {
    expect(sourceIds).toContain(study.source)
    for (const row of study.rows) for (const id of row.sources) expect(sourceIds).toContain(id)
  })

  it('states an overlap on both sides, with studies that exist', () => {
    for (const study of studies) {
      for (const { study: other } of study.overlaps) {
        expect(studyIds).toContain(other)
        const back = studies.find(({ id }) => id === other)?.overlaps.map((overlap) => overlap.study)
        expect(back).toContain(study.id)
      }
    }
    expect(studies.filter(({ overlaps }) => overlaps.length > 0).map(({ id }) => id)).toEqual([
      'bacon-2003',
      'banks-2023',
      'esposito-2026',
      'williams-1992',
    ])
  })
})

describe('every row', () => {
  it('says where it was seen', () => {
    expect(rows.filter(({ where }) => where === undefined || where.length < 5)).toEqual([])
  })

  it('has an outcome that is defined, for the trade and for the owner', () => {
    for (const row of rows) {
      const words = outcomeDefinitions[row.outcome]
      expect(words.meaning.endsWith('.')).toBe(true)
      expect(words.animals.length * words.operated.length).toBeGreaterThan(0)
    }
  })

  it('that is primary counts one species, whole, read, with a count', () => {
    const primary = rows.filter(({ pool }) => pool.use === 'primary')
    expect(primary.length).toBeGreaterThan(50)
    for (const row of primary) {
      expect(['dog', 'cat']).toContain(row.species)
      expect(row).toMatchObject({ known: 'read', counted: { kind: 'count' } })
      expect([row.subgroup, row.reading]).toEqual([undefined, undefined])
    }
  })

  it('that is only remembered is never counted and never sure', () => {
    const remembered = rows.filter(({ known }) => known === 'remembered')
    expect(remembered.map(({ study }) => study).sort()).toEqual(['spivack-2013', 'white-1990', 'white-1990'])
    for (const row of remembered) expect(row).toMatchObject({ confidence: 'low', pool: { because: 'remembered' } })
  })

  it('of several kinds of operation or both species is aside', () => {
    const mixed = rows.filter(({ species, procedure }) => species === 'mixed' || procedure === 'teca-lbo-and-vbo')
    expect(mixed.length).toBeGreaterThan(10)
    for (const row of mixed) expect(row.pool.use).not.toBe('primary')
  })
})

describe('subgroups', () => {
  it('never exceed the whole they belong to', () => {
    for (const part of rows.filter(({ subgroup }) => subgroup !== undefined)) {
      const whole = rows.find(
        (row) =>
          row.study === part.study &&
          row.outcome === part.outcome &&
          row.procedure === part.procedure &&
          row.unit === part.unit &&
          row.subgroup === undefined,
      )
      if (part.counted.kind !== 'count' || whole?.counted.kind !== 'count') throw new Error(`${part.study}: no whole.`)
      expect(part.counted.events).toBeLessThanOrEqual(whole.counted.events)
      expect(part.counted.total).toBeLessThanOrEqual(whole.counted.total)
    }
  })
})

describe('what is said', () => {
  const questions = (['dog', 'cat'] as const).flatMap((species) =>
    studyProcedures.flatMap((procedure) =>
      countUnits.flatMap((unit) => outcomeCodes.map((outcome: OutcomeCode) => ({ species, procedure, unit, outcome }))),
    ),
  )

  it('fills every sentence for every question, in whole numbers out of 100', () => {
    for (const question of questions) {
      const said = sayPublished(publishedFor(question, studies), oddsInEnglish)
      for (const text of [said.sentence, ...said.lines, ...said.notes]) {
        expect(text).not.toMatch(/[{}]|undefined|NaN|\d\.\d|1 in \d|%/)
      }
    }
  })

  it('never counts a row in two units, species or procedures', () => {
    for (const question of questions) {
      const published = publishedFor(question, studies)
      const found = published.kind === 'unknown' ? [] : [published.found].flat()
      for (const { row } of found) expect(row).toMatchObject(question)
    }
  })
})
