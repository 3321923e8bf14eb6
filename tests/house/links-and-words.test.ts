import { afterEach, describe, expect, it } from 'vitest'
import { PlantedTree, runScript } from './planted-tree.ts'

let tree: PlantedTree | undefined
afterEach(() => {
  tree?.remove()
  tree = undefined
})

function check(script: string, files: Record<string, string>) {
  tree = new PlantedTree(files)
  return runScript(script, ['--root', tree.root])
}

describe('the links', () => {
  const other = '# Other page\n\n## A heading, with words\n\n<a id="here"></a>\n'

  it.each([
    ['a page that is not there', '[x](docs/gone.md)', 'the link docs/gone.md leads nowhere'],
    ['a heading that is not there', '[x](docs/other.md#no-heading)', 'the link docs/other.md#no-heading leads nowhere'],
    ['a path in backticks', 'See `src/core/gone.ts`.', 'there is no src/core/gone.ts'],
    ['a path of a layer', 'See `core/gone/thing.ts`.', 'there is no core/gone/thing.ts'],
    ['a folder before a place to fill', 'See `content/gone/<drug>.ts`.', 'there is no content/gone/<drug>.ts'],
    ['something outside the repository', '[x](../outside.md)', 'the link ../outside.md leads nowhere'],
  ])('must not lead to %s', (_, text, sentence) => {
    const { status, said } = check('check-links.mjs', { 'README.md': text, 'docs/other.md': other })
    expect(said).toContain(`README.md: ${sentence}`)
    expect(status).toBe(1)
  })

  it('may lead to pages, headings, places, folders and the web, and code blocks are left alone', () => {
    const text = [
      '[page](docs/other.md) [heading](docs/other.md#a-heading-with-words) [place](docs/other.md#here) [up](#top-of-it)',
      '# Top of it',
      '[web](https://example.org) `docs/other.md` `docs/<page>.md` `application/json` `mg/kg`',
      '```',
      '[not read](gone.md) `src/gone.ts`',
      '```',
    ].join('\n')
    const { status, said } = check('check-links.mjs', { 'README.md': text, 'docs/other.md': other })
    expect(said).toContain('2 pages, 0 dead links or paths')
    expect(status).toBe(0)
  })

  it('lead somewhere in the real tree', () => {
    expect(runScript('check-links.mjs', [])).toMatchObject({ status: 0 })
  })
})

describe('the forbidden words', () => {
  // In pieces, so that this page does not break the rule that it tests.
  it.each([
    ['a path of one machine', ['see ', '/home', '/somebody/notes.txt'].join('')],
    ['a path of one machine', ['see C', ':\\Users', '\\somebody'].join('')],
    ['the host of a package registry', ['https://regis', 'try.example.org/package'].join('')],
    ['the host of a package registry', ['"resol', 'ved": "https://host/package.tgz"'].join('')],
    ['a private key', ['-----BE', 'GIN RSA PRIV', 'ATE KEY-----'].join('')],
  ])('name %s', (what, text) => {
    const { status, said } = check('check-words.mjs', { 'docs/page.md': `fine\n${text}\n` })
    expect(said).toContain(`docs/page.md:2 holds ${what}`)
    expect(status).toBe(1)
  })

  it('leave ordinary words alone', () => {
    const text = 'The register of drugs; home/page; #core/work/x; https://example.org/home/page\n'
    const { status, said } = check('check-words.mjs', { 'docs/page.md': text })
    expect(said).toContain('0 forbidden words')
    expect(status).toBe(0)
  })

  it('are nowhere in the real tree', () => {
    expect(runScript('check-words.mjs', [])).toMatchObject({ status: 0 })
  })
})
