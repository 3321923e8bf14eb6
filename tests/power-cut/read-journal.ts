import { ChainWalk } from '#core/journal/chain.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'
import { openLockedFolder } from '#storage/sqlite/open.ts'

/** Reads the journal of a data folder in a process of its own, so that nothing keeps the file system busy afterwards. */
const store = await openLockedFolder(process.argv[2] ?? '', { project: projectForTests, leaveFreeBytes: 0 })
const [clinic = 'none'] = await store.clinics()
const walk = new ChainWalk()
const ids: string[] = []
let broken: unknown
for await (const entry of store.entries(clinic)) {
  ids.push(entry.header.id)
  broken ??= walk.next(entry)
}
broken ??= walk.finish()
const lists = async () => JSON.stringify([await store.owed(clinic), await store.cases(clinic)])
// The server that was cut off may have been making them again behind a change of the house.
while (await store.remakeNext(clinic));
const before = await lists()
await store.rebuild(clinic)
const listsAgree = before === (await lists())
await store.close()
process.stdout.write(JSON.stringify({ ids, broken: broken ?? null, listsAgree }))
