import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

function demoFile(folder: string): string {
  const file = join(folder, 'demo.jsonl')
  expect(quietEar(['demo', '--out', file]).status).toBe(0)
  return file
}

/** The text with one line replaced. */
function edited(text: string, line: number, change: (line: string) => string): string {
  const lines = text.split('\n')
  return lines.toSpliced(line - 1, 1, change(lines[line - 1] ?? '')).join('\n')
}

describe('the clinic’s data on the command line', () => {
  it('goes in and comes out again identical to the byte, verifies, and rebuilds', () => {
    const folder = folderForTest()
    const file = demoFile(folder)
    const data = ['--data', join(folder, 'data')]
    expect(quietEar(['import', file, ...data]).err).toContain('2 cases')
    const again = join(folder, 'again.jsonl')
    expect(quietEar(['export', ...data, '--out', again]).status).toBe(0)
    expect(readFileSync(again, 'utf8')).toBe(readFileSync(file, 'utf8'))
    expect(quietEar(['verify', ...data]).out).toMatch(/^Every chain verifies: \d+ entries\.\n$/)
    expect(quietEar(['rebuild', ...data]).out).toContain('2 cases')
    expect(problem(quietEar(['import', file, ...data])).code).toBe('store-not-empty')
  })

  it('prints the whole record of a case that was brought in as it was printed before, to the byte', () => {
    const folder = folderForTest()
    const file = demoFile(folder)
    const data = ['--data', join(folder, 'data')]
    quietEar(['import', file, ...data])
    const again = join(folder, 'again.jsonl')
    quietEar(['export', ...data, '--out', again])
    const [before, after] = [file, again].map((from, place) => {
      const out = join(folder, `pack-${place}`)
      expect(quietEar(['pack', from, '--case', 'tansy', '--text', '--out', out]).status).toBe(0)
      return ['whole-record.txt', 'whole-record.pdf', 'fhir.json'].map((name) => readFileSync(join(out, name)))
    })
    expect(before?.[0]?.toString()).toContain('each names the hash of the one before')
    expect(after).toEqual(before)
  })

  it('names the line of an edited file: status 3 from verify, 2 from import and pack, and nothing is written', () => {
    const folder = folderForTest()
    const file = demoFile(folder)
    const text = readFileSync(file, 'utf8')
    const bad = join(folder, 'bad.jsonl')
    const number = text.split('\n').findIndex((line) => line.includes('"kind":"weight"')) + 1
    writeFileSync(
      bad,
      edited(text, number, (line) => line.replace('"value":"', '"value":"9').replace('"text":"', '"text":"Not ')),
    )
    expect(readFileSync(bad, 'utf8')).not.toBe(text)
    const verified = quietEar(['verify', bad])
    expect([verified.status, verified.err]).toEqual([3, expect.stringContaining(`Line ${number}:`)])
    const imported = quietEar(['import', bad, '--data', join(folder, 'data')])
    expect([imported.status, problem(imported).path]).toEqual([2, `line ${number}`])
    expect(existsSync(join(folder, 'data'))).toBe(false)
    const packed = quietEar(['pack', bad, '--case', 'tansy', '--out', join(folder, 'papers')])
    expect([packed.status, problem(packed).path]).toEqual([2, `line ${number}`])
    expect(existsSync(join(folder, 'papers'))).toBe(false)
  })

  it('gives away a file that was cut off, and one that is no journal at all', () => {
    const folder = folderForTest()
    const text = readFileSync(demoFile(folder), 'utf8')
    const cut = join(folder, 'cut.jsonl')
    writeFileSync(cut, text.slice(0, Math.floor(text.length / 2)))
    expect(quietEar(['verify', cut])).toMatchObject({
      status: 3,
      err: expect.stringMatching(/^Line \d+: not JSON; the line was cut or edited/),
    })
    writeFileSync(cut, `${text.split('\n').slice(0, 40).join('\n')}\n`)
    expect(quietEar(['verify', cut]).err).toContain('Line 41: the file stops here without its end line; it was cut off')
    writeFileSync(cut, '{"weight":12}\n')
    expect(quietEar(['verify', cut])).toMatchObject({ status: 3, err: expect.stringContaining('Line 1:') })
    const missing = quietEar(['verify', join(folder, 'nowhere.jsonl')])
    expect([missing.status, problem(missing).code]).toEqual([2, 'cannot-read'])
  })

  it('exits 3 and names the entry when the data file itself was changed', async () => {
    const folder = folderForTest()
    const data = join(folder, 'data')
    quietEar(['import', demoFile(folder), '--data', data])
    const { default: Database } = await import('libsql')
    const database = new Database(join(data, 'quiet-ear.db'))
    const [row] = database.prepare("select id, body from entries where kind = 'weight' limit 1").all() as {
      id: string
      body: string
    }[]
    database
      .prepare('update entries set body = ? where id = ?')
      .run(row?.body.replace(/"value":"\d+/, '"value":"99'), row?.id)
    const verified = quietEar(['verify', '--data', data])
    expect([verified.status, verified.err]).toEqual([3, expect.stringContaining(`Entry ${row?.id}`)])
    database.prepare("update entries set stream = 'case:elsewhere' where id = ?").run(row?.id)
    database.close()
    const hidden = quietEar(['verify', '--data', data])
    expect([hidden.status, hidden.err]).toEqual([3, expect.stringContaining(`Entry ${row?.id}`)])
  })

  it('refuses data commands with one sentence while a server runs on the folder', async () => {
    const folder = folderForTest()
    const data = join(folder, 'data')
    quietEar(['import', demoFile(folder), '--data', data])
    const { openLockedFolder } = await import('#storage/sqlite/open.ts')
    const { project } = await import('#actions/journal/project.ts')
    const store = await openLockedFolder(data, { project })
    try {
      for (const command of ['verify', 'rebuild', 'export', 'owed']) {
        const refused = quietEar([command, '--data', data])
        expect([command, refused.status, problem(refused).code]).toEqual([command, 2, 'store-in-use'])
      }
    } finally {
      await store.close()
    }
    expect(quietEar(['verify', '--data', data]).status).toBe(0)
  })

  it('says what is owed in the invented cases: nothing, because every loop was closed', () => {
    const folder = folderForTest()
    const data = ['--data', join(folder, 'data')]
    quietEar(['import', demoFile(folder), ...data])
    expect(quietEar(['owed', ...data]).out).toBe('Nothing is owed.\n')
  })
})
