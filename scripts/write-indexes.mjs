/**
 * Rewrites the sorted index of every content folder: one import and one line per file.
 * A file `fox-2008.ts` exports `fox2008`. With --check it writes nothing and fails when an index is out of date.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const folders = [
  { folder: 'src/content/sources', all: 'sources' },
  { folder: 'src/content/studies', all: 'studies' },
  { folder: 'src/content/formulary', all: 'formulary' },
  { folder: 'src/content/protocols', all: 'protocols' },
  { folder: 'src/content/procedures', all: 'procedures' },
  { folder: 'src/content/options', all: 'options' },
  { folder: 'src/content/susceptibility/editions', all: 'editions' },
  { folder: 'src/content/forms', all: 'forms' },
  { folder: 'src/content/wording/app-forms', all: 'formWords' },
  { folder: 'src/core/journal/kinds', all: 'kinds' },
  { folder: 'src/cli/commands', all: 'commands' },
]

const checkOnly = process.argv.includes('--check')
let stale = 0
for (const { folder, all } of folders) {
  const names = readdirSync(folder)
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.test.ts') && file !== 'index.ts')
    .map((file) => file.slice(0, -3))
    .sort()
  if (names.length === 0) continue
  const nameOf = (file) => file.replaceAll(/-(\w)/g, (_, letter) => letter.toUpperCase())
  const text = [
    '// Written by scripts/write-indexes.mjs: sorted, one line per file.',
    '// biome-ignore-all assist/source/organizeImports: sorted by file name, character by character.',
    ...names.map((file) => `import { ${nameOf(file)} } from './${file}.ts'`),
    '',
    `export const ${all} = [`,
    ...names.map((file) => `  ${nameOf(file)},`),
    '] as const',
    '',
  ].join('\n')
  const path = join(folder, 'index.ts')
  let before = ''
  try {
    before = readFileSync(path, 'utf8')
  } catch {}
  if (before === text) continue
  if (checkOnly) {
    console.error(`${path} is out of date: run node scripts/write-indexes.mjs`)
    stale += 1
  } else {
    writeFileSync(path, text)
    console.log(`wrote ${path}`)
  }
}
process.exitCode = stale > 0 ? 1 : 0
