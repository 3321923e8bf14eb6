import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { afterEach, describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { projectForTests } from '../projector-for-tests.ts'
import { dataFileName, openLockedFolder } from './open.ts'

const at = '2026-03-02T09:00:00.000Z'
const folders: string[] = []
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
})

/** A folder with three entries, the second of which was then changed on disk. */
async function damagedFolder(change: string) {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  folders.push(folder)
  const make = entryMaker()
  const entries = [make(), make(), make({ stream: 'case:0002' })]
  const store = await openLockedFolder(folder, { project: projectForTests })
  await store.accept('clinic-1', entries, at)
  await store.close()
  const database = new Database(join(folder, dataFileName))
  database.exec(`update entries set ${change} where position = 2`)
  database.close()
  return { make, damaged: entries[1]?.id ?? '', store: await openLockedFolder(folder, { project: projectForTests }) }
}

describe('an entry that was damaged on disk', () => {
  it.each([
    ['the stream it is looked up by', `stream = 'case:0009'`],
    ['the kind it is looked up by', `kind = 'weight'`],
    ['the text of its header', `header = substr(header, 2)`],
    ['the text of its body', `body = 'not JSON'`],
  ])('is named when its journal is read: %s', async (_, change) => {
    const { store, damaged } = await damagedFolder(change)
    try {
      const readAll = async () => {
        for await (const { header } of store.entries('clinic-1')) expect(header.id).not.toBe(damaged)
      }
      await expect(readAll()).rejects.toMatchObject({
        code: 'broken',
        message: expect.stringContaining(damaged),
      })
    } finally {
      await store.close()
    }
  })

  it('never keeps the next entry of its case out, and is told on the list of what is owed', async () => {
    const { store, make, damaged } = await damagedFolder(`body = 'not JSON'`)
    try {
      const next = make()
      expect(await store.accept('clinic-1', [next], at)).toMatchObject([{ outcome: 'accepted' }])
      expect((await store.entry('clinic-1', next.id))?.body).toEqual(next.body)
      const said = (await store.owed('clinic-1')).filter(({ id }) => id === 'unprojected')
      expect(said).toMatchObject([{ stream: 'case:0001', dueBy: at, why: expect.stringContaining(damaged) }])
      expect((await store.cases('clinic-1')).map(({ stream }) => stream)).toEqual(['case:0001', 'case:0002'])
    } finally {
      await store.close()
    }
  })
})
