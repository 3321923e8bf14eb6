import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { checkBackup } from '#storage/backup/restore-backup.ts'
import { skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { projectForTests as project } from '#storage/projector-for-tests.ts'
import { House } from './house-for-tests.ts'

describe('a backup from the settings screen', () => {
  const backups = mkdtempSync(join(tmpdir(), 'quiet-ear-backups-'))
  let house: House
  beforeAll(async () => {
    house = await House.open({ backups })
  })
  afterAll(async () => {
    await house?.close()
    rmSync(backups, { recursive: true })
  })

  it('is made by a manager, while others work, and is whole', async () => {
    const { browser, make } = await house.join('nora', 'nurse')
    await browser.send([make(), make()], house.clinic)
    const [made, again] = await Promise.all([house.manager.act('backup-now', {}), house.manager.act('backup-now', {})])
    expect([made.status, made.body.entries]).toEqual([200, 2])
    expect(again.body).toEqual(made.body)
    const about = await checkBackup({ backup: made.body.folder, project })
    expect(about.clinics).toEqual([{ clinic: house.clinic, entries: 2 }])
    expect(readdirSync(backups)).toHaveLength(2)
    expect((await browser.act('backup-now', {})).status).toBe(403)
  })

  it.skipIf(skipPostgres)('is left to the database when the data is there, and said so', async () => {
    const postgres = await startPostgres()
    const elsewhere = await House.open({ databaseUrl: await postgres.newDatabase() })
    const refused = await elsewhere.manager.act('backup-now', {})
    expect([refused.status, refused.error.code]).toEqual([409, 'database-elsewhere'])
    expect(refused.error.message).toContain('pg_dump')
    await elsewhere.close()
    await postgres.stop()
  })
})
