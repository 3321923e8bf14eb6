import { Fhir } from 'fhir'
import { describe, expect, it } from 'vitest'
import { caseFile } from '#actions/journal/case-file.ts'
import { readJournal } from '#actions/journal/read-journal.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { caseStreams } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { owedOf } from '#core/owed/owed.ts'
import { demoCases, demoFile } from '#demo/index.ts'
import { exampleEntries, fileAround } from '#documents/case/sample-case-for-tests.ts'
import { fhirBundle } from '#documents/fhir/bundle.ts'

/**
 * A validator that is not ours, with the profiles of HL7 FHIR Release 4 (4.0.1) inside: every element known, required
 * ones present, its type, how often, and codes of the value sets that bind. A code of ours in a value set that is only
 * preferred or an example is a warning there, and right here. It knows no invariants (obs-6, ppc-1 …),
 * no target of a reference, no extension's own profile, no content of a code system: `fhir.test.ts` has those we use.
 */
const validator = new Fhir()

type Fault = { readonly location?: string; readonly message?: string; readonly severity?: string }

function faultsOf(bundle: object): string[] {
  const { messages } = validator.validate(bundle, { errorOnUnexpected: true })
  const grave = messages.filter(({ severity }: Fault) => severity === 'error' || severity === 'fatal')
  return grave.map(({ location, message }: Fault) => `${location}: ${message}`)
}

function bundleOf(file: CaseFile) {
  return JSON.parse(fhirBundle(file, owedOf(file, procedures, { rules: owedRules }), '2026-11-20T10:00:00.000Z'))
}

describe('a validator that is not ours', () => {
  it('finds the faults it is there for', () => {
    const observation = { resourceType: 'Observation', status: 'finall', code: { text: 'x' }, bogus: 1 }
    const faults = faultsOf({ resourceType: 'Bundle', type: 'collection', entry: [{ resource: observation }] })
    expect(faults.join()).toMatch(/finall.*bogus/s)
    expect(faultsOf({ resourceType: 'Procedure' }).join()).toMatch(/status.*subject/s)
  })

  it('finds none in a course of worked examples', () => {
    expect(faultsOf(bundleOf(fileAround(exampleEntries())))).toEqual([])
  })

  it.each(demoCases.map(({ name }) => name))('finds none in the demo case %s', (name) => {
    const journal = readJournal(demoFile([name]))
    const faults = caseStreams(journal.entries).flatMap((stream) => faultsOf(bundleOf(caseFile(journal, stream))))
    expect(faults).toEqual([])
  })

  it.each(kinds.map((kind) => kind.name))('finds none in the bundle with a %s', (kind) => {
    const make = entryMaker()
    const one = make({ kind, at: '2026-03-10T10:00:00.000Z' })
    expect(faultsOf(bundleOf(fileAround([...exampleEntries(), one])))).toEqual([])
  })
})
