import { createElement } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { Router } from 'wouter'
import { modifiers } from '#content/evidence/modifiers.ts'
import { protocols } from '#content/protocols/index.ts'
import { factsIn } from '#core/evidence/facts-in.ts'
import { isQuantity, plain } from '#core/units/quantity.ts'
import { sayQuantity } from '#documents/case/say-quantity.ts'
import { DrugPage } from './drug-page.tsx'
import { EditionPage } from './edition-page.tsx'
import {
  allEditions,
  allProcedures,
  allSources,
  allStudies,
  citing,
  drugs,
  emergency,
  pages,
  ruleNames,
} from './library.ts'
import { ProcedurePage } from './procedure.tsx'
import { EmergencyPage, RulePage } from './protocol.tsx'
import { ReferencePage } from './reference.tsx'
import { StudyPage } from './study.tsx'

/** The text of a page as a reader gets it, with the tags taken out. */
function textOf(element: Parameters<typeof renderToStaticMarkup>[0]): string {
  // biome-ignore lint/correctness/noChildrenProp: the type of the router wants its children among its properties
  return renderToStaticMarkup(createElement(Router, { ssrPath: '/sources', children: element }))
    .replaceAll(/<[^>]+>/g, ' ')
    .replaceAll('&#x27;', "'")
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll(/\s+/g, ' ')
}

/** Every quantity of a value of content, as a page writes it. */
function quantitiesIn(value: unknown): string[] {
  if (isQuantity(value)) return [sayQuantity(value)]
  if (Array.isArray(value)) return value.flatMap(quantitiesIn)
  if (typeof value !== 'object' || value === null) return []
  const range = value as { low?: unknown; high?: unknown }
  if (isQuantity(range.low) && isQuantity(range.high)) {
    const { low, high } = range
    return [low.value.eq(high.value) ? sayQuantity(low) : `${plain(low.value)} to ${sayQuantity(high)}`]
  }
  return Object.values(value).flatMap(quantitiesIn)
}

function holdsItAll(text: string, value: unknown, id: string, marks = factsIn(value).length): void {
  expect(text, id).not.toMatch(/undefined|NaN|\[object|\{\w+\}/)
  for (const quantity of quantitiesIn(value)) expect(text, id).toContain(quantity)
  expect(text, id).toContain('Decision support for licensed veterinary professionals')
  // Every fact has its mark, and every source it cites is listed at the end of the page.
  expect(text.match(/How this is known:/g), id).toHaveLength(marks)
  for (const cited of new Set(factsIn(value).flatMap(({ fact }) => fact.sources))) {
    expect(text, `${id} cites ${cited}`).toContain(allSources.find((source) => source.id === cited)?.citation)
  }
}

describe('pages of the sources', () => {
  it.each(drugs.map((drug) => [drug.id, drug] as const))('show every number, caution and “never” of %s', (id, drug) => {
    const text = textOf(createElement(DrugPage, { drug }))
    holdsItAll(text, drug, id)
    for (const { because, why } of drug.none) {
      expect(text).toContain(because)
      expect(text).toContain(why === 'never' ? 'NEVER' : 'NO DOSE FOUND')
    }
    for (const row of drug.doses) {
      for (const { words } of row.cautions.value) expect(text).toContain(words)
      for (const { because } of row.exclusions.value) expect(text).toContain(because)
      for (const never of row.neverByHand ?? []) expect(text).toContain(never)
      for (const other of row.otherRanges ?? []) if (other.value.words) expect(text).toContain(other.value.words)
    }
  })

  it.each(allEditions.map((edition) => [edition.id, edition] as const))('show every row of %s', (id, edition) => {
    const text = textOf(createElement(EditionPage, { edition }))
    holdsItAll(text, edition, id)
    expect(text).toContain('Compare them with your own copy')
    for (const { ends, dose, remark } of edition.rows) {
      const { susceptible, resistant } = ends.value
      for (const end of [susceptible, resistant]) if (end !== null) expect(text).toContain(` ${end}`)
      if (dose) expect(text).toContain(`S assumes ${dose.value}.`)
      if (remark) expect(text).toContain(remark.slice(1))
    }
    const onlyUrine = edition.rows.filter(({ sites }) => sites.join() === 'urinary').length
    expect(text.match(/Urine only: never for an ear\./g) ?? []).toHaveLength(onlyUrine)
  })

  it.each(allStudies.map((study) => [study.id, study] as const))('show every count of %s', (id, study) => {
    const text = textOf(createElement(StudyPage, { study }))
    holdsItAll(text, study, id)
    for (const { counted, remark } of study.rows) {
      expect(text).toContain(counted.kind === 'count' ? `${counted.events} of ${counted.total}` : counted.printed)
      if (remark) expect(text).toContain(remark)
    }
  })

  it('give 81 of 309 dogs of Fox 2008 its exact and its Wilson interval', () => {
    // Clopper & Pearson as in core/stats; Wilson by hand with z = 1.96: (0.26506 ± 0.04882).
    const fox = allStudies.find(({ id }) => id === 'fox-2008')
    if (!fox) throw new Error('Fox 2008 is not among the studies.')
    const text = textOf(createElement(StudyPage, { study: fox }))
    expect(text).toContain('81 of 309 dogs Of 100 26.2 Exact 95 % 21.4 to 31.5 Wilson 95 % 21.6 to 31.4')
  })

  it.each(allProcedures.map((one) => [one.id, one] as const))(
    'show reasons, checkpoints and dates of %s',
    (id, one) => {
      const text = textOf(createElement(ProcedurePage, { procedure: one }))
      const changing = modifiers.filter(({ procedure }) => procedure === id)
      holdsItAll(text, { one, changing }, id)
      for (const { value } of [...one.indications, ...one.against]) expect(text).toContain(value)
      for (const { title, mind } of one.checkpoints) expect(text).toContain(`${title} ${mind}`)
    },
  )

  it.each(emergency.map((group) => [group.call, group] as const))('show every dose of the shout %s', (id, group) => {
    const text = textOf(createElement(EmergencyPage, { group }))
    holdsItAll(text, group, id)
    for (const { edition, reason } of group.rows) expect(text).toContain(`${edition}: ${reason}`)
  })

  it.each(ruleNames.map((name) => [name]))('show every fact of the rule %s', (name) => {
    const page = pages.find(({ href }) => href === `/sources/protocols/${name}`)
    // Pairs that rest on one paper say so once, however many drugs still count.
    const marks = name === 'drug-pairs' ? 17 : undefined
    holdsItAll(textOf(createElement(RulePage, { name })), page?.value, name, marks)
  })

  it('hold every protocol of the content somewhere', () => {
    const shown = new Set(pages.flatMap(({ value }) => factsIn(value).map(({ fact }) => JSON.stringify(fact))))
    for (const one of protocols.flatMap((protocol) => factsIn(protocol))) {
      expect(shown).toContain(JSON.stringify(one.fact))
    }
  })

  it.each(allSources.map((source) => [source.id, source] as const))('say what rests on %s', (_, source) => {
    const text = textOf(createElement(ReferencePage, { source }))
    expect(text).toContain(source.citation)
    expect(text).not.toMatch(/undefined|NaN|\[object/)
    for (const { title } of citing(source.id)) expect(text).toContain(title)
  })
})
