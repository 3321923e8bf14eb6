import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

const animal = { species: 'dog', weight: { value: 8.2, unit: 'kg' }, weighedAt: '2026-03-02T08:00:00Z' }
const block = { id: 'l1', drug: 'bupivacaine', use: 'local_block', dose: { value: 1, unit: 'mg/kg' } }
const operation = {
  at: '2026-03-10T10:00:00Z',
  zone: 'Europe/London',
  procedure: 'teca-lbo',
  side: 'LEFT',
  species: 'dog',
}
const given = (command: string, input: unknown) => quietEar([command, '-', '--json'], JSON.stringify(input))

/** Every list of sources that stands anywhere in an answer. */
function sourcesIn(value: unknown): object[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) =>
    name === 'sources' && Array.isArray(inner) ? (inner as object[]) : sourcesIn(inner),
  )
}

describe('what an outsider relies on', () => {
  it('gives every source with all fields of the contract, in every command', () => {
    const answers = [
      given('dose', { animal, at: '2026-03-02T09:00:00Z', lines: [block, { ...block, id: 'l2', dose: undefined }] }),
      given('calc', { op: 'lb_to_kg', weight_lb: 27 }),
      given('schedule', { operation }),
      quietEar(['emergency', '--species', 'cat', '--weight', '0.3 kg', '--json']),
    ]
    for (const answer of answers) {
      const sources = sourcesIn(answer.json())
      expect(sources.length).toBeGreaterThan(0)
      for (const source of sources)
        expect(Object.keys(source).sort()).toEqual(['citation', 'confidence', 'id', 'known', 'strength', 'where'])
    }
  })

  it('writes numbers without the noise of binary fractions', () => {
    const noise = /\d\.\d*(?:0{9,}|9{9,})\d/
    for (const weight of ['0.3 kg', '4.1 kg', '27 lb', '90 kg'])
      expect(quietEar(['emergency', '--species', 'dog', '--weight', weight, '--json']).out).not.toMatch(noise)
    const lines = [0.1, 0.2, 0.7].map((value, place) => ({ ...block, id: `l${place}`, dose: { value, unit: 'mg/kg' } }))
    expect(given('dose', { animal, lines }).out).not.toMatch(noise)
  })

  it('takes every number JSON can write, and a file that an editor began with a byte order mark', () => {
    const ask = (value: string) =>
      quietEar(
        ['dose', '-', '--json'],
        `\uFEFF{"animal":{"species":"dog","weight":{"value":${value},"unit":"g"}},"lines":[]}`,
      )
    expect(ask('8.2e3').status).toBe(0)
    for (const wrong of ['0', '-8200', '-0', '"NaN"', '"Infinity"', '1e999', 'null', '""', '[8200]']) {
      const ran = ask(wrong)
      expect([wrong, ran.status, problem(ran).path, ran.out]).toEqual([wrong, 2, 'animal.weight', ''])
    }
    expect(problem(ask('0'))).toMatchObject({ code: 'not-positive', message: 'animal.weight: must be more than zero' })
  })

  it('says of a missing or mistaken field what would be right', () => {
    const said = (command: string, input: unknown) => {
      const { code, path, message } = problem(given(command, input))
      expect(message).not.toMatch(/invalid|undefined|received|expected/i)
      return `${code} ${path}: ${message}`
    }
    expect(said('dose', { lines: [] })).toBe('missing-field animal: animal is missing; write an object {…}.')
    expect(said('dose', { animal: {}, lines: [] })).toContain('animal.species: is missing; write one of dog, cat.')
    expect(said('dose', { animal, lines: {} })).toContain('lines must be a list […], not an object {…}.')
    expect(said('schedule', {})).toContain('operation is missing')
    expect(said('dose', { animal: { ...animal, bodyCondition: 12 } })).toContain('bodyCondition: must be at most 9.')
    expect(said('dose', { animal: { ...animal, ageMonths: -1 } })).toContain('ageMonths: must be at least 0.')
    expect(said('dose', { animal, lines: [{ ...block, drug: '' }] })).toContain('lines[0].drug: must not be empty.')
    expect(said('calc', [])).toContain('The input must be an object')
  })

  it('asks about a weight that is dated after the plan', () => {
    const ran = given('dose', { animal, at: '2026-03-01T09:00:00Z', lines: [block] })
    expect(ran.json()).toMatchObject({
      lines: [{ verdict: 'caution' }],
      findings: [{ code: 'weight-from-later', level: 'confirm', text: expect.stringContaining('23 h after') }],
    })
  })

  it('refuses a place that cannot be written with one sentence and leaves nothing half-written', () => {
    const folder = folderForTest()
    const file = join(folder, 'tansy.jsonl')
    quietEar(['demo', '--case', 'spaniel', '--out', file])
    const nowhere = join(folder, 'nowhere', 'x')
    const calls = [
      quietEar(['demo', '--out', nowhere]),
      quietEar(['demo', '--out', folder]),
      quietEar(['pack', file, '--out', file]),
      quietEar(['schedule', '-', '--ics', nowhere], JSON.stringify({ operation })),
    ]
    for (const ran of calls) {
      expect([ran.status, ran.out, problem(ran).code]).toEqual([2, '', 'cannot-write'])
      expect(problem(ran).message).toMatch(/^Cannot write .*: .*\.$/)
    }
    expect(existsSync(join(folder, 'nowhere'))).toBe(false)
    expect(existsSync(`${file}.part`)).toBe(false)
  })

  it('packs a case from standard input into a folder with a blank in its name, and again into the same folder', () => {
    const text = quietEar(['demo', '--case', 'spaniel']).out
    const papers = join(folderForTest(), 'papers of Tansy', 'deep')
    const first = quietEar(['pack', '-', '--out', papers], text)
    expect(first.status).toBe(0)
    expect(readFileSync(join(papers, 'journal.jsonl'), 'utf8')).toBe(text)
    for (const { file } of first.json() as { file: string }[]) expect(existsSync(join(papers, file))).toBe(true)
    expect(quietEar(['pack', '-', '--out', papers], text).out).toBe(first.out)
  })

  it('makes no folder when a mistyped one is asked about', () => {
    const folder = join(folderForTest(), 'mistyped')
    for (const command of ['verify', 'rebuild', 'export', 'owed']) {
      const ran = quietEar([command, '--data', folder])
      expect([command, ran.status, problem(ran).code]).toEqual([command, 2, 'clinic-missing'])
      expect(problem(ran).message).toContain(folder)
    }
    expect(existsSync(folder)).toBe(false)
  })

  it('names what an editor or a transfer did to a journal file', () => {
    const folder = folderForTest()
    const text = quietEar(['demo']).out
    const lines = text.split('\n')
    const file = join(folder, 'changed.jsonl')
    const entry = lines.findIndex((line) => line.includes('"type":"entry"'))
    const changes: [string, RegExp][] = [
      [`\uFEFF${text}`, /^Line 1: begins with a byte order mark/],
      [text.replaceAll('\n', '\r\n'), /^Line 1: the line ends were changed/],
      [lines.toSpliced(entry, 0, lines[entry] ?? '').join('\n'), /: this entry stands in line \d+ already\. Entry /],
      [lines.toSpliced(entry, 1).join('\n'), /: an entry of the clinic is missing before this one/],
      [text + text, /: there is text after the end line/],
      ['', /^Line 1: the file stops here without its end line/],
      ['\u0000\uFFFD'.repeat(700_000), /^Line 1: not JSON/],
    ]
    for (const [changed, sentence] of changes) {
      writeFileSync(file, changed)
      const verified = quietEar(['verify', file, '--json'])
      expect([verified.status, verified.err]).toEqual([3, expect.stringMatching(sentence)])
      expect(verified.json()).toMatchObject({ ok: false })
      const imported = quietEar(['import', file, '--data', join(folder, 'data')])
      expect([imported.status, problem(imported).code]).toEqual([2, 'journal-file-broken'])
    }
    expect(existsSync(join(folder, 'data'))).toBe(false)
  })

  it('carries an attachment beside the file, and refuses to import without it or with another', () => {
    const folder = folderForTest()
    const data = ['--data', join(folder, 'data')]
    writeFileSync(join(folder, 'demo.jsonl'), quietEar(['demo']).out)
    quietEar(['import', join(folder, 'demo.jsonl'), ...data])
    writeFileSync(join(folder, 'ear.txt'), 'seen by hand: ear canal narrow')
    expect(quietEar(['attach', join(folder, 'ear.txt'), ...data])).toMatchObject({ status: 0 })
    const out = join(folder, 'out.jsonl')
    expect(quietEar(['export', ...data, '--out', out]).err).toContain('1 attachment.')
    const other = (name: string) => quietEar(['import', out, '--data', join(folder, name)])
    expect(other('whole').status).toBe(0)
    const hash = /"hash":"([0-9a-f]{64})","mediaType"/.exec(readFileSync(out, 'utf8'))?.[1] ?? ''
    writeFileSync(join(`${out}.files`, hash), 'another')
    expect([other('a').status, problem(other('a')).code]).toEqual([2, 'attachment-changed'])
    rmSync(join(`${out}.files`, hash))
    expect([other('a').status, problem(other('a')).code]).toEqual([2, 'attachment-missing'])
    expect(existsSync(join(folder, 'a'))).toBe(false)
  })

  it('answers every wrong call in the form every error has, on one line', () => {
    const calls = [
      ['frobnicate'],
      ['calc', '--lst'],
      ['dose'],
      ['pack', 'x'],
      ['start', '--port', 'abc'],
      ['start', '--port', ''],
    ]
    for (const args of calls) {
      const ran = quietEar(args)
      expect([args, ran.status, ran.out]).toEqual([args, 2, ''])
      expect(problem(ran).message).not.toMatch(/\n|\.;/)
      expect(ran.err).not.toMatch(/^\s+at /m)
    }
    expect(problem(quietEar(['start'], '', { PORT: '99999' })).code).toBe('wrong-port')
  })

  it('says which port is taken', async () => {
    const { createServer } = await import('node:net')
    const taken = createServer().listen(0, '127.0.0.1')
    await new Promise((listening) => taken.once('listening', listening))
    const { port } = taken.address() as { port: number }
    const ran = quietEar(['start', '--port', String(port), '--data', join(folderForTest(), 'data')])
    taken.close()
    expect([ran.status, problem(ran)]).toMatchObject([2, { code: 'port-in-use', path: 'port' }])
    expect(problem(ran).message).toContain(String(port))
  })

  it('quotes the names of the plans that may be asked for, because a name may hold a comma', () => {
    const file = join(folderForTest(), 'demo.jsonl')
    quietEar(['demo', '--out', file])
    const ran = quietEar(['dose', '-', '--case', file], JSON.stringify({ animal, plan: 'none such' }))
    expect(problem(ran).message).toMatch(/\("our usual plan, dog", .*"our usual plan, cat"\)/u)
  })

  it('spells units in sentences as people write them', () => {
    const { groups } = quietEar(['emergency', '--species', 'cat', '--weight', '0.3 kg', '--json']).json() as {
      groups: { rows: { note: string }[] }[]
    }
    const notes = groups.flatMap(({ rows }) => rows.map(({ note }) => note))
    expect(notes.join(' ')).toMatch(/20 units\/mL/)
    for (const note of notes) expect(note).not.toMatch(/\[iU\]|\bug\b/)
  })

  it('runs from another folder through a link, as npx does', async () => {
    const { spawnSync } = await import('node:child_process')
    const { symlinkSync } = await import('node:fs')
    const elsewhere = join(folderForTest(), 'else where')
    mkdirSync(elsewhere)
    symlinkSync(resolve('quiet-ear'), join(elsewhere, 'quiet-ear'))
    const ran = spawnSync('./quiet-ear', ['demo', '--list', '--json'], { cwd: elsewhere, encoding: 'utf8' })
    expect([ran.status, ran.stderr.replace('Building …\n', '')]).toEqual([0, ''])
    expect(JSON.parse(ran.stdout)).toHaveLength(8)
  })
})
