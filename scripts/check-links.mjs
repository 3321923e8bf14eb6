/**
 * Every relative link of a Markdown page must lead somewhere (also to its heading), and every path in backticks that
 * looks like a path of this repository must exist. A path with a place to fill, like `content/formulary/<drug>.ts`,
 * is read up to the last whole folder. `--root FOLDER` checks another tree.
 */
import { existsSync, readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { fileURLToPath } from 'node:url'
import { repositoryFiles } from './repository-files.mjs'

const at = process.argv.indexOf('--root')
const root = at > 0 ? process.argv[at + 1] : fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '')
/** Pages of decisions and changes speak of their own day; what they name may be gone. */
const ofTheirDay = /^(docs\/decisions|changes)\/|^CHANGELOG\.md$/
/** A path in backticks begins with one of these, or with a layer of src. */
const tops = ['src', 'docs', 'tests', 'scripts', 'changes', '.ci']
const layers = ['core', 'content', 'documents', 'actions', 'storage', 'server', 'cli', 'demo']

function withoutCode(text) {
  return text.replaceAll(/^(```|~~~)[\s\S]*?^\1.*$/gm, (block) => block.replaceAll(/[^\n]/g, ''))
}

function slugOf(heading) {
  return heading
    .trim()
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}\s_-]/gu, '')
    .replaceAll(/\s/g, '-')
}

function headingsOf(path) {
  const text = withoutCode(readFileSync(join(root, path), 'utf8'))
  const headings = [...text.matchAll(/^#{1,6}\s+(.+)$/gm)].map(([, heading]) => slugOf(heading))
  return new Set([...headings, ...[...text.matchAll(/<a id="([^"]+)">/g)].map(([, id]) => id)])
}

function deadLinks(page, text) {
  const links = [...text.replaceAll(/`[^`\n]*`/g, '').matchAll(/\]\(([^)\s]+)\)/g)].map(([, target]) => target)
  return links.filter((target) => {
    if (/^[a-z]+:/i.test(target)) return false
    const [file, anchor] = target.split('#')
    const path = file === '' ? page : normalize(join(dirname(page), file))
    if (path.startsWith('..') || !existsSync(join(root, path))) return true
    return anchor !== undefined && path.endsWith('.md') && !headingsOf(path).has(anchor)
  })
}

function deadPaths(page, text) {
  if (ofTheirDay.test(page)) return []
  const paths = [...text.matchAll(/`([\w.@-]+(?:\/[\w.@<>*…-]*)+)`/g)].map(([, path]) => path)
  return paths.filter((path) => {
    const [top] = path.split('/')
    const under = tops.includes(top) ? path : layers.includes(top) ? `src/${path}` : undefined
    if (under === undefined) return false
    const whole = under.split('/')
    const open = whole.findIndex((step) => /[<*…]/.test(step))
    return !existsSync(join(root, (open < 0 ? whole : whole.slice(0, open)).join('/')))
  })
}

const pages = repositoryFiles(root).filter((path) => path.endsWith('.md'))
let dead = 0
for (const page of pages) {
  const text = withoutCode(readFileSync(join(root, page), 'utf8'))
  for (const target of deadLinks(page, text)) console.error(`${page}: the link ${target} leads nowhere`)
  for (const path of deadPaths(page, text)) console.error(`${page}: there is no ${path}`)
  dead += deadLinks(page, text).length + deadPaths(page, text).length
}
if (pages.length === 0) console.error('No Markdown page was found.')
console.log(`${pages.length} pages, ${dead} dead links or paths`)
process.exitCode = dead > 0 || pages.length === 0 ? 1 : 0
