import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { caseFile } from '#actions/journal/case-file.ts'
import { caseStreams } from '#core/journal/case-file.ts'
import { readJournal } from '#actions/journal/read-journal.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedOf } from '#core/owed/owed.ts'
import { type DemoName, demoFile } from '#demo/index.ts'
import { fhirBundle } from '#documents/fhir/bundle.ts'

const folder = fileURLToPath(new URL('./exchange/', import.meta.url))
const approving = process.env.APPROVE === '1'

/** The bundle of an invented case, dated with its last entry. */
function bundleOf(name: DemoName): string {
  const journal = readJournal(demoFile([name]))
  const [stream] = caseStreams(journal.entries)
  if (stream === undefined) throw new Error('An invented case has a stream.')
  const file = caseFile(journal, stream)
  const last = file.theCase.lines.at(-1)
  if (!last) throw new Error('An invented case has entries.')
  return fhirBundle(file, owedOf(file, procedures, { rules: owedRules }), last.header.happenedAt.at)
}

test.each(['spaniel', 'cat'] as const)('The FHIR bundle of the %s is the one that was approved', (name) => {
  const path = `${folder}${name}.fhir.json`
  const now = bundleOf(name)
  if (approving) {
    mkdirSync(folder, { recursive: true })
    writeFileSync(path, now)
    return
  }
  expect(now).toBe(readFileSync(path, 'utf8'))
})
