import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { routes, uses } from '#core/formulary/words.ts'
import { house } from './planted-tree.ts'

const page = readFileSync(join(house, 'docs/glossary.md'), 'utf8')
const headwords = new Set([...page.matchAll(/\*\*([^*]+)\*\*/g)].map(([, word = '']) => word))

/** Words in capitals that no clinician has to look up: of computing, of calendars, of countries, or said loudly. */
const notClinical = new Set(
  [
    'APP1 APP13 ASCII CRLF CSV DTSTAMP EXIF GPS HTML IANA IEND II ISO ITU-T JFIF JPEG JSON NFC NFD NFKC PDF PNG RFC RIFF SHA-256',
    // What a message of a laboratory begins with, and a field of it.
    'HL7 MSH OBX-2 ORU R01',
    // The first bytes of a TIFF; the beginning of CO₂.
    'A4 CA CO DOI EAR FNV M0 MM SVG W3C WCAG',
    // The end of the name of a type face; the code of a currency that is none.
    'UI XXX',
    'ALPH ANIM ANMF ICCP SIAM SQRT2 T00 T09 T12 UTC UTF-16 UTF-8 UTF8 UUID VP8 VP8L VP8X WEBP XMP',
    'CREATE DCM NULLIFY POST R4 UPDATE',
    'BR EU EUR GB GBP H2O KG LB LBS ML TMS UK US',
    'BARRED BOTH SUPERSEDED WITHDRAWN CONFIRM CONFLICTS DOSE ENTRIES ESTIMATED FOUND LEFT MISSING NEVER NO NOT NOW REFUSED REPORTED RIGHT SETTLE SKIPPED',
    'ABOVE AGAIN AGO ARTEFACT CONTAINS DAY DONE DUE EVERY GIVEN GO KNOWN LOADING LONG MEASURED NOTHING PLAN SECOND SETTLED STILL STOP TO TOO YES',
    // Said loudly in Spanish (the end of a word with an accent too); Mexico.
    'ACLARAR ANOTACIONES AÚN CONTRADICCIONES DERECHO DO FALTAN IZQUIERDO MX OTRO POR QUE UN',
    // The letters of a code drawn by lot, and one as an example; the number of an invented report.
    'ABCDEFGHJKLMNPQRSTUVWXYZ23456789 K7QD-2MXA-V9RT Z0-9 NL-26-00417',
  ].flatMap((line) => line.split(' ')),
)
/** Periods as ISO 8601 writes them; numbers of invented reports. */
const notAWord = /^P\d*T?\d|^INV-\d/

function sourcesOf(layer: string): string[] {
  return (
    readdirSync(join(house, 'src', layer), { recursive: true, encoding: 'utf8' })
      .map((path) => `${layer}/${path.replaceAll('\\', '/')}`)
      .filter((path) => path.endsWith('.ts') && !/\.test\.ts$/.test(path))
      .filter((path) => !/^content\/sources\/|^documents\/(render|calendar)\/|^core\/laboratory\//.test(path))
      // The short names that laboratories print, each beside the drug that it means.
      .filter((path) => path !== 'content/susceptibility/agents.ts')
  )
}

const text = ['core', 'content', 'documents', 'actions', 'demo']
  .flatMap(sourcesOf)
  .map((path) => readFileSync(join(house, 'src', path), 'utf8'))
  .join('\n')

function capitalsIn(words: string): string[] {
  return [...new Set(words.match(/\b[A-Z][A-Z0-9]+(?:-[A-Z0-9]+)*\b/g))]
}

describe('the glossary', () => {
  it('explains every abbreviation that the sources use', () => {
    const unknown = capitalsIn(text).filter(
      (word) => !headwords.has(word) && !notClinical.has(word) && !notAWord.test(word),
    )
    expect(unknown.sort()).toEqual([])
    expect(capitalsIn(text)).toEqual(expect.arrayContaining(['IV', 'NSAID', 'OTIS-3', 'PCV']))
  })

  it('would notice an invented abbreviation', () => {
    expect(capitalsIn("const LBO1 = 'XYZ-2 given'")).toEqual(['LBO1', 'XYZ-2'])
    expect(headwords.has('XYZ-2')).toBe(false)
  })

  it.each(['TECA', 'LBO', 'VBO', 'CRI', 'MLK', 'PCV', 'MAP', 'BSA', 'MAC', 'CPR', 'SPC', 'BAER'])(
    'explains %s, which stands inside names',
    (word) => expect(headwords).toContain(word),
  )

  it.each(uses)('explains the use %s', (use) => expect(headwords).toContain(use))

  it.each(routes)('explains the route %s', (route) => expect(headwords).toContain(route))
})
