import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'

type Printed = StoredIsolate['results'][number]

/** An isolate of known names, each drug with what is printed of it: `2`, `<=0.5`, `18 mm`, `R`. */
export function isolateOf(
  species: string,
  results: Readonly<Record<string, string | Partial<Printed>>>,
  more: Partial<StoredIsolate> = {},
): StoredIsolate {
  return {
    key: '1',
    organism: species,
    species,
    amount: null,
    tests: [],
    results: Object.entries(results).map(([agent, printed]) => row(agent, printed)),
    ...more,
  }
}

function row(agent: string, printed: string | Partial<Printed>): Printed {
  const bare = { drug: agent, agent, method: null, raw: '', disk: null, category: null }
  if (typeof printed !== 'string') return { ...bare, ...printed }
  const method = printed.endsWith('mm') ? 'DISK' : /\d/.test(printed) ? 'MIC' : null
  return { ...bare, method, raw: printed }
}
