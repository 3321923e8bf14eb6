import { describe, expect, test } from 'vitest'
import { ownerPageEdition } from '#content/wording/owner-page.ts'
import { countText, fleschKincaidGrade, smogGrade } from '#core/agreement/readability.ts'
import { readingLevel } from '#core/agreement/reading-level.ts'
import { type Species, speciesList } from '#core/animal/species.ts'
import type { Entry } from '#core/journal/entry.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { exampleEntries, fileAround } from '../case/sample-case-for-tests.ts'
import { askedOf } from './asked.ts'
import { figuresFor } from './figures.ts'
import type { OwnerPageInput } from './input.ts'
import { closedPage, ownerPage } from './owner-page.ts'
import { ownerPageStyle } from './style.ts'
import { wishesOf } from './wishes.ts'
import { languageFor, ownerPageInLanguages } from './words.ts'

const words = ownerPageInLanguages.en
const { house } = fileAround([])
const moment = (at: string) => ({ at, zone: 'Europe/London', precision: 'day', by: 'clock' }) as const

function entriesFor(species: Species): Entry[] {
  return exampleEntries().flatMap((entry) => {
    if (entry.kind === 'death') return []
    if (entry.kind !== 'identity') return [entry]
    return [{ ...entry, body: { ...(entry.body as object), species } as typeof entry.body }]
  })
}

function pageFor(query = '', change: Partial<OwnerPageInput> = {}, entries = entriesFor('dog')): string {
  return ownerPage({
    file: fileAround(entries),
    on: moment('2026-02-12T10:00:00.000Z'),
    contact: 'contact-1',
    use: 'private',
    until: moment('2026-04-13T10:00:00.000Z'),
    asked: askedOf(new URLSearchParams(query)),
    words,
    entry: '0190a7c2-0000-7000-8000-000000000099',
    ...change,
  })
}

/** What is read on the page, one sentence after another; drawings speak through their descriptions. */
function read(page: string): string {
  return page
    .replace(/^.*<body>/s, '')
    .replaceAll(/<svg.*?<\/svg>/gs, ' ')
    .replaceAll(/<small>.*?<\/small>/gs, ' ')
    .replaceAll(/<\/(p|li|h\d|dd|dt|td|th|legend|label|option|figcaption|a)>/g, '\n')
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll(/&#(\d+);/g, (_, code: string) => String.fromCharCode(Number(code)))
    .replaceAll(/\n\s*\n+/g, '\n')
}

/** Without the publications, whose titles are not ours. */
function told(page: string): string {
  return read(page.replaceAll(/<ul class="sources">.*?<\/ul>/gs, ''))
}

describe('the owner’s page', () => {
  test.each(speciesList)('reads at grade 8 or below for a %s, publications aside', (species) => {
    const page = pageFor('step=all&a=teca-lbo&b=no-treatment', {}, entriesFor(species)).replaceAll(
      /<ul class="sources">.*?<\/ul>|<details>.*?<\/details>/gs,
      '',
    )
    const counts = countText(read(page))
    expect(counts.sentences).toBeGreaterThan(200)
    // Flesch–Kincaid (Kincaid et al. 1975); the target of grade 6 to 8 is that of the owner-information guidance.
    expect(fleschKincaidGrade(counts).toNumber()).toBeLessThanOrEqual(8)
    expect(smogGrade(counts).toNumber()).toBeLessThanOrEqual(10)
  })

  test('tells both ears on one day or one after the other only when both are ill', () => {
    const bothIll = entriesFor('cat').map((entry) =>
      entry.kind === 'referral'
        ? { ...entry, body: { ...(entry.body as object), reportedSide: 'BOTH' } as typeof entry.body }
        : entry,
    )
    const about = words.options.options.staged.name
    expect(read(pageFor('', {}, entriesFor('cat')))).not.toContain(about)
    const page = pageFor('', {}, bothIll)
    expect(read(page)).toContain(about)
    expect(read(page)).toContain('In cats, opening both middle ears from below on one day')
    expect(page.match(/id="choice-(staged|both-in-one-session)-title"/g)).toHaveLength(2)
  })

  test('says of one study what it counted, in both framings, with its range, its size and its square of dots', () => {
    // Fox et al., BSAVA Congress 2008: facial deficit in 81 of 309 dogs; exact interval 21 to 31 of 100.
    const figure = figuresFor('teca-lbo', { species: 'dog', house }, words).counted.find(
      ({ outcome, group }) => outcome === 'facial_nerve_deficit_any' && group === 'Of 100 dogs',
    )
    expect(figure).toMatchObject({
      framing: 'About 26 of 100 had this. About 74 of 100 did not.',
      range: 'The true number may lie between 21 and 31.',
      studies: 'One study, 309 dogs.',
      dots: { full: 26, between: 0 },
    })
    const page = pageFor()
    expect(page).toContain('aria-label="Of 100 dogs: About 26 of 100 had this. About 74 of 100 did not."')
    expect(read(page)).toContain('About 26 of 100 had this. About 74 of 100 did not.')
  })

  test.each(speciesList)(
    'lets both framings of every number for a %s come to 100, and the dots say the same',
    (species) => {
      const all = optionIds.flatMap((id) => {
        const procedure = (['teca-lbo', 'ventral-bulla-osteotomy', 'traction', 'lateral-wall-resection'] as const).find(
          (one) => one === id,
        )
        return procedure ? figuresFor(procedure, { species, house }, words).counted : []
      })
      expect(all.length).toBeGreaterThan(8)
      for (const { framing, dots } of all) {
        expect(dots.full + dots.between).toBeLessThanOrEqual(100)
        const about = /^About (\d+) of 100 had this. About (\d+) of 100 did not.$/.exec(framing)
        if (about) expect([Number(about[1]), Number(about[1]) + Number(about[2])]).toEqual([dots.full, 100])
        const span = /^Between (\d+) and (\d+) of 100 had this. Between (\d+) and (\d+) of 100 did not.$/.exec(framing)
        if (span) {
          const [low, high, rest, most] = span.slice(1).map(Number)
          expect([low, high]).toEqual([dots.full, dots.full + dots.between])
          expect([(low ?? 0) + (most ?? 0), (high ?? 0) + (rest ?? 0)]).toEqual([100, 100])
        }
        expect(about ?? span ?? /fewer than 1|could still/i.exec(framing)).not.toBeNull()
      }
    },
  )

  test('uses no bare word for a number, no "1 in x" and no relative risk', () => {
    const text = told(pageFor('step=all'))
    expect(text).not.toMatch(/\b(rare|rarely|common|commonly|safe|safely|risk-free|unlikely|likely)\b/i)
    expect(text).not.toMatch(/\b1 in \d|\btimes (more|less|as)\b|odds ratio|per cent|%/i)
  })

  test('never mixes dogs and cats', () => {
    expect(told(pageFor('', {}, entriesFor('cat')))).not.toMatch(/\d+ (operated ears of )?dogs/)
    expect(told(pageFor())).not.toMatch(/\d+ (operated ears of )?cats/)
  })

  test('tells every choice of the species under the same headings, no surgery and euthanasia among them', () => {
    const page = pageFor()
    const articles = [...page.matchAll(/<article id="choice-([\w-]+)".*?<\/article>/gs)]
    expect(articles.map(([, id]) => id)).toEqual(optionIds.filter((id) => id !== 'traction'))
    const heads = articles.map(([text]) => [...text.matchAll(/<dt>([^<]*)<\/dt>/g)].map(([, head]) => head))
    expect(new Set(heads.map((one) => one.join('|'))).size).toBe(1)
  })

  test('names the unknowns, and says that unknown is not never', () => {
    expect(read(pageFor())).toMatch(
      /Not known\. Nobody has counted these in dogs .*a weak face that stayed.*does not mean never/,
    )
  })

  test('puts two choices side by side by plain links, and says what to do when both are the same', () => {
    expect(pageFor()).not.toContain('<table class="two"')
    const two = pageFor('a=teca-lbo&b=no-treatment')
    expect(two).toContain('<table class="two" role="table">')
    expect(read(two)).toContain('not counted in any study we found')
    expect(read(pageFor('a=teca-lbo&b=teca-lbo'))).toContain('You picked the same choice twice.')
    // Pulling out a polyp is no choice for a dog; what nobody offers is not compared.
    expect(pageFor('a=traction&b=teca-lbo')).not.toContain('<table class="two"')
  })

  test('turns the still pictures by links: one at a time, or all', () => {
    const step = (query: string) => [...pageFor(query).matchAll(/<h3>Step (\d) of (\d)/g)].map(([, at]) => at)
    expect(step('')).toEqual(['1'])
    expect(step('step=3')).toEqual(['3'])
    expect(step('step=9')).toEqual(['6'])
    expect(step('step=all')).toEqual(['1', '2', '3', '4', '5', '6'])
    expect(pageFor('step=3&a=teca-lbo&b=no-treatment')).toContain(
      'href="?a=teca-lbo&#38;b=no-treatment&#38;step=4#steps"',
    )
  })

  test('holds no script, no style within the page, nothing of another site and no token', () => {
    const page = pageFor('step=all')
    expect(page).not.toMatch(/<script|<style|\sstyle=|\son\w+=|javascript:|@import|url\(http/)
    // The only addresses are its own: relative ones, its style and the telephone; namespaces of drawings are none.
    const addresses = [...page.matchAll(/\s(?:href|src|action)="([^"]*)"/g)].map(([, address]) => address ?? '')
    expect(addresses.filter((one) => !/^(\?|#|tel:|\/o\/page\.css$|[a-z]+(\.pdf|\.ics)?$)/.test(one))).toEqual([])
    expect(ownerPageStyle).not.toMatch(/url\(|@import|grid|var\(/)
  })

  test('writes what people typed as text, never as markup', () => {
    const entries = entriesFor('dog').map((entry) =>
      entry.kind === 'identity'
        ? { ...entry, body: { ...(entry.body as object), name: '<b>Tip</b>' } as typeof entry.body }
        : entry,
    )
    expect(pageFor('', {}, entries)).toContain('&#60;b&#62;Tip&#60;/b&#62;')
    expect(pageFor('', {}, entries)).not.toContain('<b>Tip')
  })

  test('says calmly what was not reached yet', () => {
    const early = entriesFor('dog').filter(({ kind }) => ['identity', 'household'].includes(kind))
    const text = read(pageFor('', {}, early))
    expect(text).toContain('We have not looked into the ears yet')
    expect(text).toContain('Which ear it is about has not been written down yet')
    expect(text).toContain('We have not given you an estimate yet.')
  })

  test('says who paid, when it was made, which edition it is, and what was not done', () => {
    const text = read(pageFor())
    for (const said of [
      'Nobody. No maker of a drug',
      '12 February 2026',
      ownerPageEdition,
      'Once a year',
      'not yet been tested',
    ])
      expect(text).toContain(said)
  })
})

describe('what an owner sends', () => {
  test('is read strictly: only our own words, and the text as it was written', () => {
    const form = new URLSearchParams(
      'matter-no-pain=very&matter-cost=priceless&matter-drop=some&leaning=not-decided&questions=Who%3F%0D%0AWhen%3F',
    )
    expect(wishesOf(form, 'en')).toEqual({
      edition: ownerPageEdition,
      language: 'en',
      leaning: 'not-decided',
      matters: [{ matter: 'no-pain', weight: 'very' }],
      questions: 'Who?\nWhen?',
    })
  })

  test('is nothing when nothing was marked or written, and is refused whole when it is too long', () => {
    expect(wishesOf(new URLSearchParams('questions=%20&matter-cost='), 'en')).toBeUndefined()
    expect(wishesOf(new URLSearchParams({ questions: 'x'.repeat(4_001) }), 'en')).toBe('too-long')
  })
})

test('the page is in the language of the household, or in English', () => {
  expect(languageFor(null, 'en-GB')).toBe('en')
  expect(languageFor(null, 'es-MX')).toBe('es')
  expect(languageFor('en', 'es-MX')).toBe('en')
  expect(languageFor('xx', 'pt-BR')).toBe('en')
  expect(languageFor('constructor', undefined)).toBe('en')
})

test('the page of a link that opens nothing says what to do, and nothing of anybody', () => {
  const page = read(closedPage(words, { name: 'Invented Referrals', phone: '01632 960001' }, false))
  expect(page).toContain('Phone the clinic, and ask for a new link.')
  expect(page).toContain('Invented Referrals: 01632 960001')
})

describe('the owner’s page in Spanish', () => {
  const spanish = ownerPageInLanguages.es
  const query = 'step=all&a=teca-lbo&b=no-treatment'
  const pageOf = (species: Species) => pageFor(query, { words: spanish }, entriesFor(species))
  /** Every number that is read, those of squares and pictures too; dates have the same ones, the month is a word. */
  const numbersOf = (page: string) => {
    const spoken = [...page.matchAll(/aria-label="([^"]*)"/g)].map(([, label = '']) => label)
    return [read(page), ...spoken].join('\n').match(/\d+(?:[.,]\d+)*/g) ?? []
  }

  test.each(speciesList)('says of a %s each number that the English page says, as often', (species) => {
    const english = numbersOf(pageFor(query, {}, entriesFor(species)))
    expect(english.length).toBeGreaterThan(300)
    expect(numbersOf(pageOf(species)).sort()).toEqual(english.sort())
  })

  test.each(speciesList)('is fairly easy to read for a %s by the formula of its language', (species) => {
    const page = pageOf(species).replaceAll(/<ul class="sources">.*?<\/ul>|<details>.*?<\/details>/gs, '')
    expect(readingLevel(read(page), 'es')).toMatchObject({ meetsAim: true })
  })

  test('says its language, leads to the English one, and says who translated it', () => {
    const page = pageOf('dog')
    expect(page).toContain('<html lang="es">')
    expect(page).toMatch(/<a href="[^"]*language=en[^"]*" lang="en" hreflang="en">Read this page in English/)
    expect(read(page)).toContain(spanish.aboutTranslation)
    expect(read(page)).toContain('12 de febrero de 2026')
  })
})
