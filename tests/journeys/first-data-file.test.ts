import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gunzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { exportJournal } from '#actions/journal/export-journal.ts'
import { project } from '#actions/journal/project.ts'
import { readJournal } from '#actions/journal/read-journal.ts'
import type { Store } from '#actions/store.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'

describe('the very first data file', () => {
  let folder: string
  let store: Store

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'quiet-ear-first-'))
    const packed = readFileSync('tests/fixtures/first-data-file/quiet-ear.db.gz')
    writeFileSync(join(folder, 'quiet-ear.db'), gunzipSync(packed))
    store = await openLockedFolder(folder, { project })
  })
  afterAll(async () => {
    await store.close()
    rmSync(folder, { recursive: true })
  })

  it('opens for ever: every entry is read, every chain verifies, the lists are made anew', async () => {
    const lines: string[] = []
    for await (const line of exportJournal(store, 'larkwater')) lines.push(line)
    const journal = readJournal(lines.join(''))
    expect([journal.entries.length, journal.files.length]).toEqual([195, 1])
    expect(await store.rebuild('larkwater')).toBe(3)
    expect((await store.cases('larkwater')).map(({ name }) => name).sort()).toEqual(['Moss', 'Tansy'])
    const [file] = journal.files
    expect(new TextDecoder().decode((await store.file('larkwater', file?.hash ?? ''))?.bytes)).toBe('Dear colleague')
  })

  it('takes new entries behind the old ones', async () => {
    const make = entryMaker({ clinic: 'larkwater', stream: 'case:tansy' })
    const note = make({ subject: { kind: 'animal', animal: 'animal-tansy' } })
    const [accepted] = await store.accept('larkwater', [note], '2026-11-25T10:00:00.000Z')
    expect(accepted).toMatchObject({ outcome: 'accepted', stored: { envelope: { position: 196 } } })
  })
})
