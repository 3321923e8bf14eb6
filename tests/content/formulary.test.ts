import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { sources } from '#content/sources/index.ts'
import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import { amountOf } from '#core/dosing/amount.ts'
import { doseCodes } from '#core/dosing/findings.ts'
import { mostOf } from '#core/dosing/limits.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { type DoseRow, type Drug, drugById, localLimit, type NoDose, rowKey } from '#core/formulary/drug.ts'
import { convert, quantity } from '#core/units/quantity.ts'

const drugs: readonly Drug[] = formulary
const known = new Set<string>(sources.map(({ id }) => id))
/** A small animal: an absolute maximum (a tube, a patch) must leave room for it at the upper end of the range. */
const body = { weight: quantity('1', 'kg'), surface: quantity('0.1', 'm2') }

function factsOf(row: DoseRow): Provenance[] {
  return [
    row.range,
    ...(row.otherRanges ?? []),
    row.interval,
    ...(row.otherIntervals ?? []),
    ...(row.loading ? [row.loading] : []),
    ...(row.maxSingle ? [row.maxSingle] : []),
    ...(row.maxCumulative ? [row.maxCumulative] : []),
    row.stocks,
    ...(row.tablets ? [row.tablets] : []),
    row.cautions,
    row.exclusions,
  ]
}

function allFacts(drug: Drug): Provenance[] {
  const local = drug.localAnaesthetic
  const own = [...(local ? [local] : []), ...(local?.formulations ?? [])]
  const limits = [...own.flatMap((one) => [...Object.values(one.limits), one.washout]), ...(local?.otherLimits ?? [])]
  return [...drug.doses.flatMap(factsOf), ...drug.none, ...limits]
}

/** Whether a written "none" is about this row's use and formulation. */
function isAbout(none: NoDose, row: DoseRow): boolean {
  return (!none.use || none.use === row.use) && (!none.formulation || none.formulation === row.formulation)
}

function speaksOf(drug: Drug, species: Species, row: DoseRow): boolean {
  const isSame = (one: DoseRow) => one.use === row.use && one.formulation === row.formulation
  return (
    drug.doses.some((one) => one.species === species && isSame(one)) ||
    drug.none.some((none) => none.species === species && isAbout(none, row))
  )
}

/** Every object with `sources` anywhere inside the rules. */
function provenanceIn(value: unknown): Provenance[] {
  if (typeof value !== 'object' || value === null) return []
  const inside = Object.values(value).flatMap(provenanceIn)
  return 'sources' in value && 'known' in value ? [value as Provenance, ...inside] : inside
}

describe('how a range is known', () => {
  it('is remembered when one of its ends is: "read" stands for both', () => {
    const called = drugs.flatMap(({ id, doses }) =>
      doses
        .filter(({ range }) => range.known === 'read' && /remembered|cautious choice/.test(range.where ?? ''))
        .map((row) => `${id}, ${row.species}, ${rowKey(row)}`),
    )
    expect(called).toEqual([])
  })
})

describe('the formulary', () => {
  it('lists every file of its folder', () => {
    const files = readdirSync('src/content/formulary').filter((file) => file.endsWith('.ts') && file !== 'index.ts')
    expect(drugs.map(({ id }) => `${id}.ts`).sort()).toEqual(files.sort())
    expect(drugs.length).toBeGreaterThanOrEqual(12)
  })

  it('gives every active substance one id, and no other name twice', () => {
    const names = drugs.flatMap(({ id, name, aliases }) => {
      const own = [id, ...aliases.map((alias) => alias.toLowerCase())]
      return own.includes(name.toLowerCase()) ? own : [...own, name.toLowerCase()]
    })
    expect(new Set(names).size).toBe(names.length)
    for (const { id } of drugs) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/)
  })

  it('says for both species either a dose or why there is none', () => {
    const silent = drugs.flatMap((drug) =>
      speciesList
        .filter((species) => ![...drug.doses, ...drug.none].some((entry) => entry.species === species))
        .map((species) => `${drug.id}, ${species}`),
    )
    expect(silent).toEqual([])
  })

  it('says for every use and formulation of one species what the other has, a row or a written none', () => {
    const silent = drugs.flatMap((drug) =>
      drug.doses.flatMap((row) =>
        speciesList
          .filter((species) => !speaksOf(drug, species, row))
          .map((species) => `${drug.id}, ${species}: ${row.use} ${row.formulation ?? ''}`),
      ),
    )
    expect([...new Set(silent)]).toEqual([])
  })

  it('would miss a use that one species lost in silence', () => {
    const drug = drugById(drugs, 'lidocaine')
    const [block] = drug?.doses.filter((row) => row.use === 'cri') ?? []
    if (!drug || !block) throw new Error('Lidocaine has an infusion for dogs.')
    expect(speaksOf(drug, 'cat', block)).toBe(true)
    expect(speaksOf({ ...drug, none: [] }, 'cat', block)).toBe(false)
  })

  it('gives every "none" a reason of its own words', () => {
    const bare = drugs.flatMap((drug) => drug.none.filter(({ because }) => because.length < 20).map(() => drug.id))
    expect(bare).toEqual([])
  })

  it('never has a dose where it says there is none', () => {
    const both = drugs.flatMap((drug) =>
      drug.none.filter((none) => drug.doses.some((row) => row.species === none.species && isAbout(none, row))),
    )
    expect(both).toEqual([])
  })

  it('never has a usual dose above its own ceiling', () => {
    const over = drugs.flatMap((drug) =>
      drug.doses
        .filter((row) => {
          const { high } = row.range.value
          const amount = amountOf(high, body)
          const most = mostOf(row, high, amount)
          return most && amount.value.gt(most.value)
        })
        .map((row) => `${drug.id}: ${rowKey(row)}`),
    )
    expect(over).toEqual([])
  })

  it('never has a block dose above the local-anaesthetic limit of its species', () => {
    const over = drugs.flatMap((drug) =>
      drug.doses.filter((row) => {
        const limit = localLimit(drug, row.formulation)?.limits[row.species].value
        const high = convert(row.range.value.high, 'mg/kg')
        return row.use === 'local_block' && (!limit || !high || high.value.gt(limit.value))
      }),
    )
    expect(over).toEqual([])
  })

  it('never has a daily maximum below one usual dose', () => {
    const over = drugs.flatMap((drug) =>
      drug.doses.filter((row) => {
        const limit = row.maxCumulative?.value.per === 'day' ? row.maxCumulative.value.limit : undefined
        const most = limit && convert(limit, row.range.value.high.unit)
        return most?.value.lt(row.range.value.high.value)
      }),
    )
    expect(over).toEqual([])
  })

  it('names every row of a species apart', () => {
    for (const drug of drugs) {
      for (const species of speciesList) {
        const keys = drug.doses.filter((row) => row.species === species).map(rowKey)
        expect(new Set(keys).size, `${drug.id}, ${species}`).toBe(keys.length)
      }
    }
  })

  it('can be told apart by qualifier or unit wherever use and route meet', () => {
    const stuck = drugs.flatMap((drug) =>
      drug.doses.filter((row, i) =>
        drug.doses.some(
          (other, j) =>
            i !== j &&
            other.species === row.species &&
            other.use === row.use &&
            other.formulation === row.formulation &&
            other.range.value.low.unit === row.range.value.low.unit &&
            other.routes.some((route) => row.routes.includes(route)) &&
            (other.qualifier === row.qualifier || other.qualifier === undefined),
        ),
      ),
    )
    expect(stuck.map(rowKey)).toEqual([])
  })

  it('cites only sources that have a file, and always one', () => {
    const facts = [...drugs.flatMap(allFacts), ...provenanceIn(dosingRules)]
    expect(facts.length).toBeGreaterThan(200)
    expect(facts.filter((fact) => fact.sources.length === 0)).toEqual([])
    expect([...new Set(facts.flatMap((fact) => fact.sources).filter((id) => !known.has(id)))]).toEqual([])
  })

  it('never says "read" of a source that nobody saw', () => {
    const seen = new Map<string, boolean>(sources.map((source) => [source.id, 'seenAt' in source]))
    const claims = drugs
      .flatMap(allFacts)
      .filter((fact) => fact.known === 'read' && !fact.sources.some((id) => seen.get(id)))
    expect(claims).toEqual([])
  })

  it('names only drugs it holds where one drug excludes another', () => {
    const named = drugs.flatMap((drug) =>
      drug.doses.flatMap((row) => row.exclusions.value.flatMap(({ when }) => ('drug' in when ? [when.drug] : []))),
    )
    expect(named.length).toBeGreaterThan(0)
    expect(named.filter((name) => drugById(drugs, name)?.id !== name)).toEqual([])
  })

  it('forbids what must never be given', () => {
    const never = drugs.flatMap((drug) =>
      drug.none
        .filter(({ why }) => why === 'never')
        .map(({ species, use, formulation }) => `${drug.id} ${species} ${formulation ?? use ?? 'ever'}`),
    )
    expect(never.sort()).toEqual([
      'buprenorphine dog high concentration, 1.8 mg/mL',
      'buprenorphine dog transdermal, 20 mg/mL',
      'ibuprofen cat ever',
      'ibuprofen dog ever',
      'lidocaine cat cri',
      'naproxen cat ever',
      'naproxen dog ever',
      'paracetamol cat ever',
      'permethrin cat ever',
    ])
  })
})

describe('the sentences of the dosing checks', () => {
  it('stand for every code, once', () => {
    expect(Object.keys(doseFindingWords).sort()).toEqual([...doseCodes].sort())
  })
})

describe('a label’s own table by weight', () => {
  it.each(dosingRules.labelTables)(
    'of $drug $size is for a row and a tablet that exist, and no band passes its most',
    (table) => {
      const row = drugById(drugs, table.drug)?.doses.find(
        ({ species, use, qualifier }) =>
          species === table.species && use === table.use && qualifier === table.qualifier,
      )
      const listed = row?.tablets?.value.find(({ strength }) => strength.value.eq(table.size.value))
      expect(listed?.divides).toBe(table.divides)
      expect(row?.interval.value.hours).toEqual([String(table.every.value), String(table.every.value)])
      expect(row && convert(table.dose, row.range.value.low.unit)).toBeDefined()
      for (const { value } of table.bands) {
        // The band is printed to one place, so that it begins half a tenth below its first weight.
        const lightest = Number(value.fromKg) - 0.05
        expect((Number(value.tablets) * Number(table.size.value)) / lightest).toBeLessThanOrEqual(
          Number(table.most.value),
        )
      }
    },
  )
})
