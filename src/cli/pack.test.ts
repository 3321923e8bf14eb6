import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

type Listed = { file: string; paper: string; title: string; mediaType: string; bytes?: number }

function packed(name: string, folder: string, into: string): Listed[] {
  const file = join(folder, `${name}.jsonl`)
  quietEar(['demo', '--case', name, '--out', file])
  return quietEar(['pack', file, '--out', join(folder, into), '--text']).json() as Listed[]
}

const text = (path: string) => execFileSync('pdftotext', ['-layout', path, '-'], { encoding: 'utf8' })

describe('the pack of a case', () => {
  it('holds every paper the spaniel has reached, the same bytes each time, and the journal it was made from', () => {
    const folder = folderForTest()
    const first = packed('spaniel', folder, 'first')
    const papers = first.filter(({ mediaType }) => mediaType === 'application/pdf').map(({ paper }) => paper)
    expect(papers).toEqual([
      'agreement-sheet',
      'anaesthetic-record',
      'dose-sheet',
      'emergency-sheet',
      'home-page',
      'operation-report',
      'owner-leaflet',
      'referring-letter',
      'specimen-labels',
      'whole-record',
    ])
    packed('spaniel', folder, 'second')
    const files = readdirSync(join(folder, 'first')).sort()
    expect(files).toEqual(first.map(({ file }) => file).sort())
    for (const file of files) {
      expect([
        file,
        readFileSync(join(folder, 'second', file)).equals(readFileSync(join(folder, 'first', file))),
      ]).toEqual([file, true])
    }
    expect(readFileSync(join(folder, 'first/journal.jsonl')).equals(readFileSync(join(folder, 'spaniel.jsonl')))).toBe(
      true,
    )
    expect(quietEar(['verify', join(folder, 'first/journal.jsonl')]).status).toBe(0)
  })

  it('prints the side as a word, the real doses, the real counts and the real dates', () => {
    const folder = folderForTest()
    packed('spaniel', folder, 'papers')
    const paper = (name: string) => text(join(folder, 'papers', `${name}.pdf`))
    const report = paper('operation-report-operation-tansy-left')
    expect(report).toContain('LEFT ear')
    expect(report).not.toContain('RIGHT ear')
    // 18.4 kg at 1 mg/kg from 5 mg/mL: 3.68 mL, drawn down to 3.6 mL at the ceiling of 2 mg/kg.
    expect(paper('dose-sheet-operation-tansy-left')).toMatch(/bupivacaine\s+3\.6 mL 5 mg\/mL\s+1 mg\/kg: 18\.4 mg/)
    // Fox 2008: 81 of 309 dogs.
    expect(paper('owner-leaflet').replace(/\s+/g, ' ')).toContain('309 dogs, 81')
    // 28 days from 13 March 2025; a year later the page says of what is over that it is.
    expect(paper('home-page').replace(/\s+/g, ' ')).toContain('250 mg tablets: finished on 9 April 2025')
  })

  it('holds the case as one FHIR R4 bundle of the animal whose case it is', () => {
    const folder = folderForTest()
    const listed = packed('spaniel', folder, 'papers').find(({ file }) => file === 'fhir.json')
    expect(listed?.mediaType).toBe('application/fhir+json')
    const bundle = JSON.parse(readFileSync(join(folder, 'papers/fhir.json'), 'utf8'))
    expect(bundle).toMatchObject({ resourceType: 'Bundle', type: 'collection' })
    const [{ resource }] = bundle.entry
    expect(resource).toMatchObject({ resourceType: 'Patient', name: [{ text: 'Tansy' }] })
  })

  it('cancels the calendar of an animal that died and asks nothing more of its owner', () => {
    const folder = folderForTest()
    packed('cat', folder, 'papers')
    const calendar = readFileSync(join(folder, 'papers/calendar.ics'), 'utf8')
    const events = calendar.split('BEGIN:VEVENT').slice(1)
    expect(events.length).toBeGreaterThan(3)
    const after = events.filter((event) => /DTSTART[^:]*:(2025112[1-9]|2025113|202512|2026)/.test(event))
    expect(after.length).toBeGreaterThan(0)
    for (const event of after) expect(event).toContain('STATUS:CANCELLED')
    expect(JSON.parse(readFileSync(join(folder, 'papers/owed.json'), 'utf8'))).toEqual([])
  })

  it('asks which case when the file holds several, and for a language it has', () => {
    const folder = folderForTest()
    const file = join(folder, 'both.jsonl')
    quietEar(['demo', '--out', file])
    const ask = (...more: string[]) => quietEar(['pack', file, '--out', join(folder, 'out'), ...more])
    expect(problem(ask())).toMatchObject({ code: 'case-missing', message: expect.stringContaining('tansy, moss') })
    expect(problem(ask('--case', 'rex')).code).toBe('case-missing')
    expect(problem(ask('--case', 'moss', '--lang', 'fr')).code).toBe('unknown-language')
    expect(problem(ask('--case', 'moss', '--on', '31/2/2026')).code).toBe('wrong-date')
    expect(ask('--case', 'moss').status).toBe(0)
    const inSpanish = ask('--case', 'moss', '--lang', 'es')
    const titles = (JSON.parse(inSpanish.out) as { paper: string; title: string }[]).map(({ title }) => title)
    expect(titles).toContain('Lo que acordamos para Moss')
  })
})
