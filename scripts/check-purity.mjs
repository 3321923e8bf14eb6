/**
 * Finds in the pure layers what would make an answer depend on the clock, on chance, on the machine or on where it
 * stands. The compiler settings already hide most of it; this reads the syntax tree for the rest.
 * `--root FOLDER` checks another tree (the house tests plant violations there).
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'

export const pureLayers = ['core', 'content', 'documents', 'demo', 'actions']

/** `object.member` that may not be read. */
const forbiddenMembers = {
  'Date.now': 'clock',
  'Temporal.Now': 'clock',
  'Math.random': 'chance',
  'crypto.getRandomValues': 'chance',
  'crypto.randomUUID': 'chance',
}
/** Methods that answer in the zone or language of the machine. */
const localMembers = new Set([
  'getDate',
  'getDay',
  'getFullYear',
  'getHours',
  'getMilliseconds',
  'getMinutes',
  'getMonth',
  'getSeconds',
  'getTimezoneOffset',
  'toDateString',
  'toTimeString',
])
/** Methods that need a language as an argument, at the place given. */
const needsLanguage = { localeCompare: 1, toLocaleString: 0, toLocaleDateString: 0, toLocaleTimeString: 0 }
const forbiddenNames = {
  performance: 'clock',
  setTimeout: 'clock',
  setInterval: 'clock',
  fetch: 'machine',
  process: 'machine',
  globalThis: 'machine',
  eval: 'machine',
}
const advice = {
  clock: 'pass the time in as an argument',
  chance: 'pass the ids or numbers in as an argument',
  machine: 'do it in storage, server or cli and pass the result in',
  'local-zone': 'name the zone: use core/time',
  'local-language': 'name the language as an argument',
}

/** The violations of one file: line, rule, and the words that break it. */
export function impurities(name, text) {
  const file = ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true)
  const found = []
  const report = (node, rule) =>
    found.push({
      file: name,
      line: file.getLineAndCharacterOfPosition(node.getStart()).line + 1,
      rule,
      text: node.getText().slice(0, 60),
    })
  const visit = (node) => {
    const rule = ruleBrokenBy(node)
    if (rule) report(node, rule)
    ts.forEachChild(node, visit)
  }
  visit(file)
  return found
}

function ruleBrokenBy(node) {
  if (ts.isNewExpression(node)) return brokenByNew(node)
  if (ts.isCallExpression(node)) return brokenByCall(node)
  if (ts.isPropertyAccessExpression(node)) {
    const member = forbiddenMembers[`${node.expression.getText()}.${node.name.text}`]
    return member ?? (localMembers.has(node.name.text) ? 'local-zone' : undefined)
  }
  if (ts.isIdentifier(node) && Object.hasOwn(forbiddenNames, node.text) && isFreeName(node)) {
    return forbiddenNames[node.text]
  }
  return undefined
}

function brokenByNew(node) {
  const made = node.expression.getText()
  const given = node.arguments?.length ?? 0
  if (made === 'Date') return given === 0 ? 'clock' : given > 1 ? 'local-zone' : undefined
  if (made.startsWith('Intl.') && given === 0) return 'local-language'
  return undefined
}

function brokenByCall(node) {
  const called = node.expression
  if (ts.isIdentifier(called) && called.text === 'Date') return 'clock'
  if (!ts.isPropertyAccessExpression(called)) return undefined
  const at = Object.hasOwn(needsLanguage, called.name.text) ? needsLanguage[called.name.text] : undefined
  return at !== undefined && node.arguments.length <= at ? 'local-language' : undefined
}

/** True when the identifier is the global thing itself, not a member, a key or a declaration of that name. */
function isFreeName(node) {
  const { parent } = node
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node
  if (ts.isShorthandPropertyAssignment(parent)) return true
  if (ts.isCallExpression(parent) || ts.isBinaryExpression(parent) || ts.isVariableDeclaration(parent)) {
    return parent.name !== node
  }
  return false
}

/** Every TypeScript file under a folder, sorted, with paths relative to the root. */
export function sourcesUnder(root, folder) {
  if (!existsSync(join(root, folder))) return []
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile() && /\.tsx?$/.test(item.name))
    .map((item) => join(item.parentPath, item.name).slice(join(root, '/').length).replaceAll('\\', '/'))
    .sort()
}

function main() {
  const at = process.argv.indexOf('--root')
  const root = at > 0 ? process.argv[at + 1] : fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '')
  const files = pureLayers.flatMap((layer) => sourcesUnder(root, `src/${layer}`))
  if (files.length === 0) {
    console.error('No file was found in the pure layers; a check that reads nothing proves nothing.')
    process.exit(1)
  }
  const found = files.flatMap((file) => impurities(file, readFileSync(join(root, file), 'utf8')))
  for (const { file, line, rule, text } of found)
    console.error(`${file}:${line} ${rule}: \`${text}\` – ${advice[rule]}.`)
  console.log(`${files.length} pure files read, ${found.length} violations`)
  process.exitCode = found.length > 0 ? 1 : 0
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main()
