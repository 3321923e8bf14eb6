import { z } from 'zod'
import { susceptibility } from '#content/susceptibility/index.ts'
import { speciesList } from '#core/animal/species.ts'
import type { BodySite, Edition } from '#core/culture/breakpoint.ts'
import { editionName } from '#core/culture/edition-name.ts'
import { editionById, editionCalled } from '#core/culture/editions.ts'
import type { ReadingRequest } from '#core/culture/read-isolates.ts'
import { recogniseAgent, recogniseOrganism } from '#core/culture/recognise.ts'
import { isolateTests, type StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { InputError, listed, readInput } from '../input.ts'

const number = z.union([z.string().min(1), z.number()], { error: 'write a text such as "<=0.5", or a number.' })
const result = z.strictObject({
  drug: z.string().min(1),
  /** mg/L */
  mic: number.optional(),
  /** mm */
  zone: number.optional(),
  disk: z.string().min(1).optional(),
  category: z.string().min(1).optional(),
})
const tested = z.enum(['positive', 'negative'], {
  error: 'must be "positive" or "negative"; leave out what was not tested.',
})
const tests = z.strictObject(
  Object.fromEntries(isolateTests.map((test) => [test, tested.nullable().optional()])) as Record<
    (typeof isolateTests)[number],
    z.ZodOptional<z.ZodNullable<typeof tested>>
  >,
)
const request = z.strictObject({
  host: listed(speciesList, 'species'),
  specimen: z.string().min(1),
  standard: z.string().min(1).optional(),
  /** What the laboratory says it read by, where that is another one. */
  laboratoryStandard: z.string().min(1).optional(),
  /** For what could be used, in the shapes of the command `dose`; they are read by culture-options.ts. */
  animal: z.unknown().optional(),
  given: z.unknown().optional(),
  at: z.unknown().optional(),
  lines: z.unknown().optional(),
  isolates: z
    .array(
      z.strictObject({
        id: z.string().min(1),
        organism: z.string().min(1),
        results: z.array(result),
        tests: tests.optional(),
      }),
    )
    .min(1, { error: 'must hold at least one isolate.' }),
})

/** Everything that is read as soft tissue; there are no values for an ear. */
const softTissue = [
  'middle ear',
  'bulla',
  'bulla on entry',
  'bulla after lavage',
  'ear',
  'ear canal',
  'canal',
  'canal tissue',
].concat(['mass', 'node', 'wound', 'abscess', 'skin', 'soft tissue'])
const sites: Readonly<Record<string, BodySite>> = {
  ...Object.fromEntries(softTissue.map((name) => [name, 'soft-tissue'] as const)),
  urine: 'urinary',
}

/** A culture as programs send it, read into what the engine takes; nobody's name is guessed. */
export function readCultureRequest(input: unknown): ReadingRequest {
  const { host, specimen, standard, laboratoryStandard, isolates } = readInput(request, input)
  const site = sites[specimen.toLowerCase().replaceAll('-', ' ').trim()]
  if (!site) {
    const known = Object.keys(sites).join(', ')
    throw new InputError(
      'specimen-unknown',
      'specimen',
      `specimen: "${specimen}" is no specimen known here; write one of ${known}.`,
    )
  }
  const twice = isolates.find(({ id }, at) => isolates.findIndex((other) => other.id === id) !== at)
  if (twice)
    throw new InputError(
      'id-twice',
      'isolates',
      `isolates: the id "${twice.id}" stands twice; give every isolate its own.`,
    )
  return {
    host,
    site,
    edition: (standard === undefined ? usual() : called(standard, 'standard')).id,
    laboratory: laboratoryStandard === undefined ? null : called(laboratoryStandard, 'laboratoryStandard').id,
    isolates: isolates.map(({ id, organism, results, tests: asked }, at) => ({
      key: id,
      organism,
      species: recogniseOrganism(organism, susceptibility.organisms).id,
      amount: null,
      results: results.map((row, place) => printed(row, `isolates[${at}].results[${place}]`)),
      tests: isolateTests.flatMap((test) => {
        const answer = asked?.[test]
        return answer ? [{ test, result: answer }] : []
      }),
    })),
  }
}

function usual(): Edition {
  return editionById(susceptibility.editions, susceptibility.usual)
}

function called(text: string, path: string): Edition {
  const edition = editionCalled(text, susceptibility.editions)
  if (edition?.rows.some(({ kind }) => kind === 'clinical' || kind === 'human')) return edition
  const readable = susceptibility.editions.filter(({ rows }) =>
    rows.some(({ kind }) => kind === 'clinical' || kind === 'human'),
  )
  const known = readable.map(editionName).join(', ')
  throw new InputError('standard-unknown', path, `${path}: "${text}" is no edition held here; write one of ${known}.`)
}

function printed(row: z.infer<typeof result>, path: string): StoredIsolate['results'][number] {
  const { drug, mic, zone, disk, category } = row
  const agent = recogniseAgent(drug, susceptibility.agents).id
  const about = { drug, agent, disk: disk ?? null } as const
  if (mic !== undefined && zone !== undefined) {
    throw new InputError('mic-and-zone', path, `${path}: an MIC and a zone are two results; write them as two.`)
  }
  if (mic !== undefined) return { ...about, method: 'MIC', raw: String(mic), category: category ?? null }
  if (zone !== undefined) return { ...about, method: 'DISK', raw: String(zone), category: category ?? null }
  if (category !== undefined) return { ...about, method: null, raw: category, category: null }
  throw new InputError('nothing-printed', path, `${path}: write "mic" in mg/L, "zone" in mm, or "category".`)
}
