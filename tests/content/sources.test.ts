import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { sources } from '#content/sources/index.ts'

const content = fileURLToPath(new URL('../../src/content', import.meta.url))
const files = readdirSync(content, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts') && !path.startsWith('sources'))
  .sort()

type Fact = { readonly sources: readonly string[]; readonly known: string; readonly checked: string }

/** Every value with sources inside another, with the path to it. */
function factsIn(value: unknown, path: string): { path: string; fact: Fact }[] {
  if (typeof value !== 'object' || value === null) return []
  const inner = Object.entries(value).flatMap(([key, member]) => factsIn(member, `${path}.${key}`))
  const { sources: cited, known } = value as Partial<Fact>
  return Array.isArray(cited) && known !== undefined ? [{ path, fact: value as Fact }, ...inner] : inner
}

async function allFacts() {
  const modules = await Promise.all(files.map(async (path) => [path, await import(join(content, path))] as const))
  return modules.flatMap(([path, exported]) => factsIn({ ...exported }, path))
}

describe('the sources', () => {
  it('hold every publication that a fact of content names', async () => {
    const facts = await allFacts()
    const known = new Set<string>(sources.map(({ id }) => id))
    const dangling = facts.flatMap(({ path, fact }) =>
      fact.sources.filter((id) => !known.has(id)).map((id) => `${path} names ${id}`),
    )
    expect(dangling).toEqual([])
    expect(facts.length).toBeGreaterThan(500)
  })

  it('stand behind every fact: none is without one, and each says when it was last compared', async () => {
    const facts = await allFacts()
    const wrong = facts.filter(({ fact }) => fact.sources.length === 0 || !/^\d{4}-\d{2}-\d{2}$/.test(fact.checked))
    expect(wrong.map(({ path }) => path)).toEqual([])
  })

  it('are listed once each, under the name of their file', () => {
    const ids = sources.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    const named = readdirSync(join(content, 'sources')).filter((file) => file !== 'index.ts' && file.endsWith('.ts'))
    expect([...ids].sort()).toEqual(named.map((file) => file.slice(0, -3)).sort())
  })
})
