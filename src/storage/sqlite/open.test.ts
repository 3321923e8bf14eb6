import { mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'libsql'
import { afterEach, describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { projectForTests } from '../projector-for-tests.ts'
import { addressFor } from './folder-lock.ts'
import { dataFileName, openLockedFolder } from './open.ts'

const folders: string[] = []
const newFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  folders.push(folder)
  return folder
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
})
const open = (folder: string) => openLockedFolder(folder, { project: projectForTests })

describe('a data folder', () => {
  it('that a newer program wrote is refused with a sentence, unchanged, and is free again afterwards', async () => {
    const folder = newFolder()
    await (await open(folder)).close()
    const file = new Database(join(folder, dataFileName))
    file.exec("insert into migrations (number, name) values (999, '0999-from-tomorrow')")
    file.close()
    const refused = { code: 'newer', message: expect.stringMatching(/written by a newer Quiet Ear \(tables 999;/) }
    await expect(open(folder)).rejects.toMatchObject(refused)
    // Refused for the same reason again, not because the folder is still held.
    await expect(open(folder)).rejects.toMatchObject(refused)
  })

  it('whose file is something else is refused with a sentence and left as it is', async () => {
    const folder = newFolder()
    const path = join(folder, dataFileName)
    writeFileSync(path, 'A letter about an ear, not a data file. '.repeat(200))
    await expect(open(folder)).rejects.toMatchObject({
      code: 'broken',
      message: expect.stringContaining('is not a data file of Quiet Ear'),
    })
    expect(readFileSync(path, 'utf8')).toContain('A letter about an ear')
  })

  it('is made with its parents, readable by its owner only', async () => {
    const folder = join(newFolder(), 'clinic', 'data')
    await (await open(folder)).close()
    if (process.platform !== 'win32') expect(statSync(folder).mode & 0o777).toBe(0o700)
  })

  it('holds no byte of a body that was erased, in the file or in its log', async () => {
    const folder = newFolder()
    const store = await open(folder)
    const make = entryMaker()
    const secret = 'Mrs Palmerston-Okafor owes us'
    const entry = make({ body: { text: `${secret} ${'x'.repeat(6_000)}` } })
    const bytes = () => readdirSync(folder).map((name) => readFileSync(join(folder, name), 'latin1'))
    await store.accept('clinic-1', [entry], '2026-03-02T09:00:00.000Z')
    expect(bytes().join('')).toContain(secret)
    const body = { entry: entry.id, because: 'The owner asked for it.', orderedBy: 'person-manager' }
    await store.accept('clinic-1', [make({ kind: 'erasure', body })], '2026-03-03T09:00:00.000Z')
    expect(bytes().join('')).not.toContain(secret)
    await store.close()
  })

  it('is locked under a name of its own, without a file wherever the system offers that', () => {
    const real = realpathSync(newFolder())
    expect(addressFor(real, 'linux')).toMatchObject({
      address: expect.stringMatching(/^\0quiet-ear-[0-9a-f]{64}$/),
      file: false,
    })
    expect(addressFor(real, 'win32').address).toMatch(/^\\\\\.\\pipe\\quiet-ear-[0-9a-f]{64}$/)
    expect(addressFor(real, 'darwin')).toEqual({ address: join(real, 'lock'), file: true })
    expect(addressFor(join(real, 'other'), 'linux')).not.toEqual(addressFor(real, 'linux'))
  })
})
