import { susceptibility } from '#content/susceptibility/index.ts'
import type { ReadIsolate } from '#core/antibiogram/antibiogram.ts'
import type { GrownIsolate } from '#core/antibiogram/isolate.ts'
import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import { organismById } from '#core/culture/organism.ts'
import { readIsolates } from '#core/culture/read-isolates.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'

/** An isolate with what was tested beside single drugs, where anybody wrote it down. */
type Readable = GrownIsolate<StoredIsolate['results'][number]> & { readonly tests?: StoredIsolate['tests'] }

/** Reads each isolate as the case page does, whole, with the rules that change one drug because of another. */
export function readerBy(edition: string, facts: SusceptibilityFacts = susceptibility): ReadIsolate<Readable> {
  return ({ host, organism, tested, tests = [] }) => {
    const species = organismById(facts.organisms, organism)?.id ?? null
    const isolate = { key: '1', organism, species, amount: null, results: [...tested], tests: [...tests] }
    const [reading] = readIsolates({ host, site: 'soft-tissue', edition, isolates: [isolate] }, facts)
    return { results: reading?.results ?? [] }
  }
}
