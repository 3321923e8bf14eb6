import { canonical, type Json } from '#core/journal/canonical.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { Author } from '#core/journal/entry.ts'
import type { Case, Conflict, Line } from '#core/journal/fold.ts'
import type { Moment } from '#core/time/moment.ts'
import { historyOf, type Step } from './history-of.ts'

/** What stood in one field after one step of an entry's life. */
export type FieldStep = {
  readonly is: Step['is']
  readonly line: string
  /** Undefined where the step has no such field, or its body was erased or taken back. */
  readonly value: Json | undefined
  /** Other than in any entry it stands in place of. */
  readonly changed: boolean
  readonly author: Author
  readonly when: Moment
  readonly writtenAt: string
  readonly reason: string | null
}

/**
 * The history of one field of an entry: every step with what stood there, who wrote it, when and why, oldest first.
 * Also steps that did not touch the field are there, marked as such; a step that takes the entry back leaves nothing.
 *
 * @example historyOfField(theCase, id, 'weight.value').map(({ value }) => value) // ['18.6', '16.8']
 */
export function historyOfField(theCase: Case, id: string, path: string): FieldStep[] {
  return historyOf(theCase, id).map(({ line, is, of }): FieldStep => {
    const value = is === 'withdrawal' || is === 'refiling' ? undefined : valueAt(line.body, path)
    const changed = of.length === 0 || of.some(({ body }) => !same(valueAt(body, path), value))
    const { author, happenedAt, writtenAt, reason } = line.header
    return { is, line: line.header.id, value, changed, author, when: happenedAt, writtenAt, reason }
  })
}

/**
 * The value at a dotted path of a body; undefined where there is none.
 *
 * @example valueAt({ values: [{ what: 'mean' }] }, 'values.0.what') // 'mean'
 */
export function valueAt(body: Json | undefined, path: string): Json | undefined {
  return path.split('.').reduce<Json | undefined>((part, step) => {
    if (typeof part !== 'object' || part === null || !Object.hasOwn(part, step)) return undefined
    return (part as Readonly<Record<string, Json>>)[step]
  }, body)
}

/** One place where an old and a new body differ. */
export type Change = { readonly path: string; readonly before: Json | undefined; readonly after: Json | undefined }

/**
 * Every place in which two bodies differ, as deep as both still have a value of the same shape; in the order of paths.
 *
 * @example changesBetween({ a: 1, b: { c: 2 } }, { a: 1, b: { c: 3 } }) // [{ path: 'b.c', before: 2, after: 3 }]
 */
export function changesBetween(before: Json, after: Json): Change[] {
  return within('', before, after).sort((a, b) => compareText(a.path, b.path))
}

function within(path: string, before: Json | undefined, after: Json | undefined): Change[] {
  if (same(before, after)) return []
  if (!isGroup(before) || !isGroup(after) || Array.isArray(before) !== Array.isArray(after)) {
    return [{ path, before, after }]
  }
  const steps = new Set([...Object.keys(before), ...Object.keys(after)])
  return [...steps].flatMap((step) => within(path === '' ? step : `${path}.${step}`, before[step], after[step]))
}

/** A conflict opened for a person: its entries side by side, and the places in which they do not say the same. */
export type OpenedConflict = {
  readonly conflict: Conflict
  readonly sides: readonly Line[]
  readonly differ: readonly { readonly path: string; readonly says: readonly (Json | undefined)[] }[]
  /** The entry they all correct, when they do: what stood there before. */
  readonly before: Line | null
}

/**
 * The entries of a conflict with what each says where they differ. Settling supersedes all of them; none wins by itself.
 *
 * @example openConflict(theCase, theCase.conflicts[0]).differ // [{ path: 'weight.value', says: ['8.2', '12.8'] }]
 */
export function openConflict(theCase: Case, conflict: Conflict): OpenedConflict {
  const sides = conflict.between.flatMap((id) => theCase.line(id) ?? [])
  const first = sides[0]?.body ?? null
  const paths = new Set(sides.slice(1).flatMap(({ body }) => changesBetween(first, body).map(({ path }) => path)))
  // Where one side has a group and another has none, the deeper paths say nothing that the shorter does not.
  const outermost = [...paths].filter(
    (path) => ![...paths].some((other) => other !== path && path.startsWith(`${other}.`)),
  )
  const differ = outermost.sort().map((path) => ({ path, says: sides.map(({ body }) => saidAt(body, path)) }))
  const common = sides
    .map(({ header }) => header.supersedes)
    .reduce<readonly string[] | null>(
      (kept, targets) => (kept === null ? targets : kept.filter((id) => targets.includes(id))),
      null,
    )
  return { conflict, sides, differ, before: theCase.line(common?.[0] ?? '') ?? null }
}

function saidAt(body: Json, path: string): Json | undefined {
  return path === '' ? body : valueAt(body, path)
}

function isGroup(part: Json | undefined): part is Readonly<Record<string, Json>> & Json {
  return typeof part === 'object' && part !== null
}

function same(a: Json | undefined, b: Json | undefined): boolean {
  if (a === undefined || b === undefined) return a === b
  return a === b || canonical(a) === canonical(b)
}
