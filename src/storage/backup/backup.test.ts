import { appendFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, truncateSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import type { Store } from '#actions/store.ts'
import { hashBytes } from '#core/journal/canonical.ts'
import { firstBreak } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { projectForTests as project } from '../projector-for-tests.ts'
import { dataFileName, openLockedFolder } from '../sqlite/open.ts'
import { backUp } from './back-up.ts'
import { eraseListName, readErasures } from './erase-list.ts'
import { checkBackup, restoreBackup } from './restore-backup.ts'

const at = '2026-11-25T10:00:00.000Z'
const later = '2026-11-25T11:00:00.000Z'
const clinic = 'clinic-1'
/** A busy machine is no fault of the code. */
const patient = { timeout: 60_000 }
const folders: string[] = []
const newFolder = () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-backup-'))
  folders.push(folder)
  return folder
}
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
})

const journalOf = async (store: Store) => {
  const entries: StoredEntry[] = []
  for await (const entry of store.entries(clinic)) entries.push(entry)
  return entries
}
const backup = (data: string, into: string, when = at) => backUp({ data, into, at: when, version: '0.1.0' })

describe('a backup', () => {
  it('made while others write holds everything acknowledged before it, restores, verifies and goes on', async () => {
    const [data, into, other] = [newFolder(), newFolder(), join(newFolder(), 'restored')]
    const store = await openLockedFolder(data, { project })
    const papers = new TextEncoder().encode('Dear colleague')
    await store.putFile(clinic, hashBytes(papers), 'text/plain', papers)
    await store.putRegister(clinic, { register: 'contact', id: 'c1', body: { name: 'Ada' }, by: 'p1', at })
    const acknowledged: string[] = []
    let stopping = false
    const writing = [1, 2, 3].map(async (writer) => {
      const make = entryMaker({}, writer)
      while (!stopping) {
        const stored = await store.accept(clinic, [make({ stream: `case:000${writer}` }), make()], at)
        acknowledged.push(...stored.map(({ id }) => id))
        await new Promise((resolve) => setImmediate(resolve))
      }
    })
    await expect.poll(() => acknowledged.length, patient).toBeGreaterThan(60)
    const before = [...acknowledged]
    const made = await backup(data, into)
    const during = acknowledged.length - before.length
    stopping = true
    await Promise.all(writing)
    await store.close()
    // The writers went on meanwhile: the copy held nobody up.
    expect(during).toBeGreaterThan(0)

    expect(await checkBackup({ backup: made.folder, project })).toEqual(made.about)
    const { erased } = await restoreBackup(other, [], { backup: made.folder, project, at: later })
    expect(erased).toEqual([])
    const restored = await openLockedFolder(other, { project })
    const journal = await journalOf(restored)
    const present = new Set(journal.map(({ header }) => header.id))
    expect(before.filter((id) => !present.has(id))).toEqual([])
    expect(made.about.clinics).toEqual([{ clinic, entries: journal.length }])
    expect(firstBreak(journal)).toBeUndefined()
    expect((await restored.file(clinic, hashBytes(papers)))?.bytes).toEqual(papers)
    expect((await restored.registers(clinic)).map(({ body }) => body)).toEqual([{ name: 'Ada' }])
    expect((await restored.cases(clinic)).map(({ stream }) => stream)).toContain('case:0003')
    const next = entryMaker({}, 9)()
    expect(await restored.accept(clinic, [next], later)).toMatchObject([{ outcome: 'accepted' }])
    await restored.close()
  })

  it('is readable by its owner only, and stands under its name only when it is whole', async () => {
    const [data, into] = [newFolder(), newFolder()]
    await (await openLockedFolder(data, { project })).close()
    const { folder } = await backup(data, into)
    expect(folder).toBe(join(into, 'quiet-ear-2026-11-25T10-00-00Z'))
    expect(statSync(folder).mode & 0o777).toBe(0o700)
    expect(readdirSync(folder).sort()).toEqual(['backup.json', dataFileName])
    expect(readdirSync(into).sort()).toEqual([eraseListName, 'quiet-ear-2026-11-25T10-00-00Z'])
    await expect(backup(data, into)).rejects.toMatchObject({ code: 'not-empty' })
    await expect(backup(newFolder(), into, later)).rejects.toThrow()
    expect(readdirSync(into)).toHaveLength(2)
  })

  it('that was changed or cut off is found, and nothing of it is restored', async () => {
    const [data, into, other] = [newFolder(), newFolder(), join(newFolder(), 'restored')]
    const store = await openLockedFolder(data, { project })
    await store.accept(clinic, [entryMaker()()], at)
    await store.close()
    const { folder } = await backup(data, into)
    const copy = join(folder, dataFileName)
    const { size } = statSync(copy)
    appendFileSync(copy, 'x')
    await expect(checkBackup({ backup: folder, project })).rejects.toMatchObject({ code: 'broken' })
    await expect(restoreBackup(other, [], { backup: folder, project, at })).rejects.toMatchObject({ code: 'broken' })
    expect(readdirSync(other)).toEqual([])
    truncateSync(copy, size)
    expect((await checkBackup({ backup: folder, project })).at).toBe(at)
    rmSync(copy)
    await expect(checkBackup({ backup: folder, project })).rejects.toThrow('has lost its')
    await expect(checkBackup({ backup: other, project })).rejects.toThrow('is not a backup')
  })

  it('goes into a new folder only', async () => {
    const [data, into] = [newFolder(), newFolder()]
    await (await openLockedFolder(data, { project })).close()
    const { folder } = await backup(data, into)
    await expect(restoreBackup(data, [], { backup: folder, project, at })).rejects.toMatchObject({ code: 'not-empty' })
  })

  it('does not bring back what was erased after it, nor a device that was signed out, nor a link that was ended', async () => {
    const [data, into, other] = [newFolder(), newFolder(), join(newFolder(), 'restored')]
    const store = await openLockedFolder(data, { project })
    const make = entryMaker()
    const secret = make({ body: { text: 'Something private.' } })
    await store.accept(clinic, [secret], at)
    const session = {
      id: 's1',
      clinic,
      device: 'd1',
      deviceName: 'Tablet',
      madeAt: at,
      expiresAt: '2027-02-01T00:00:00.000Z',
    }
    await store.accounts.begin({ ...session, active: 'p1' }, 'hash-of-a-token')
    const link = { clinic, stream: 'case:0001', contact: 'c2', use: 'private', madeAt: at, madeBy: 'p1' } as const
    await store.ownerLinks.keep({ ...link, id: 'l1', expiresAt: '2027-02-01T00:00:00.000Z' }, 'hash-of-a-link')
    const asked = { asked: 'stitches', side: 'LEFT', dueFrom: at, dueBy: later } as const
    const { use: _, ...forVet } = link
    const vetLink = { ...forVet, ...asked, id: 'v1', expiresAt: '2027-02-01T00:00:00.000Z' }
    await store.vetLinks.keep(vetLink, 'hash-of-a-vet-link')
    const contact = (id: string, body: Record<string, string> | null, when: string) =>
      store.putRegister(clinic, { register: 'contact', id, body, by: 'p1', at: when })
    await contact('c1', { name: 'Forgotten Person' }, at)
    await contact('c2', { name: 'Removed once' }, at)
    const older = await backup(data, into)
    await store.accounts.end('s1', later)
    await store.ownerLinks.revoke(clinic, 'l1', 'p1', later)
    const body = { entry: secret.id, because: 'The owner asked for it.', orderedBy: 'person-manager' }
    await store.accept(clinic, [make({ kind: 'erasure', body })], later)
    await contact('c1', null, later)
    await contact('c2', null, later)
    await backup(data, into, later)
    await contact('c2', { name: 'Back again' }, '2026-11-25T12:00:00.000Z')
    const newest = await backup(data, into, '2026-11-25T13:00:00.000Z')
    await store.close()
    // The list beside the backups is the newest one, whichever backup is restored.
    const list = readErasures(join(into, eraseListName))
    expect(list.map((one) => (one.kind === 'row' ? one.row.id : one.order.body))).toEqual([body, 'c1', 'c2'])
    const { erased } = await restoreBackup(other, list, { backup: older.folder, project, at: later })
    expect(erased).toEqual([secret.id, 'contact c1', 'contact c2'])
    const restored = await openLockedFolder(other, { project })
    expect((await restored.entry(clinic, secret.id))?.body).toBeNull()
    expect(firstBreak(await journalOf(restored))).toBeUndefined()
    expect((await restored.accounts.byToken('hash-of-a-token'))?.endedAt).toBe(later)
    const ended = { revokedAt: later, revokedBy: 'restore' }
    expect(await restored.ownerLinks.byToken('hash-of-a-link')).toMatchObject(ended)
    expect(await restored.vetLinks.byToken('hash-of-a-vet-link')).toMatchObject(ended)
    await restored.close()
    const bytes = readFileSync(join(other, dataFileName), 'latin1')
    expect(bytes).not.toContain('Something private')
    expect(bytes).not.toContain('Forgotten Person')
    // What was written again after it had been taken away is in the newer backup, and stays.
    const again = join(newFolder(), 'again')
    const second = await restoreBackup(again, list, { backup: newest.folder, project, at: later })
    expect(second.erased).toEqual([])
    const kept = await openLockedFolder(again, { project })
    expect((await kept.current(clinic, 'contact')).map(({ body: row }) => row)).toEqual([{ name: 'Back again' }])
    await kept.close()
  })
})
