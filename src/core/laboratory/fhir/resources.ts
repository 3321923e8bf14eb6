import { Unreadable } from '../fault.ts'

/** A resource or a part of one, as it came: nothing about its form is taken for granted. */
export type Part = Readonly<Record<string, unknown>>

export function isPart(value: unknown): value is Part {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

export function partOf(part: Part, name: string): Part | null {
  const value = Object.hasOwn(part, name) ? part[name] : undefined
  return isPart(value) ? value : null
}

export function partsOf(part: Part, name: string): Part[] {
  const value = Object.hasOwn(part, name) ? part[name] : undefined
  return Array.isArray(value) ? value.filter(isPart) : isPart(value) ? [value] : []
}

export function textOf(part: Part | null, name: string): string | null {
  const value = part !== null && Object.hasOwn(part, name) ? part[name] : undefined
  if (typeof value === 'number') return String(value)
  return typeof value === 'string' && value.trim() !== '' ? value.trim() : null
}

/** The part of that name in a list of its own, empty where there is none. */
export function inside(part: Part, name: string): Part[] {
  const found = partOf(part, name)
  return found ? [found] : []
}

/** What a coded thing is called, and its codes. */
export function wordsOf(concept: Part | null): { readonly text: string | null; readonly codes: readonly string[] } {
  if (!concept) return { text: null, codes: [] }
  const codings = partsOf(concept, 'coding')
  const shown = codings.flatMap((one) => textOf(one, 'display') ?? [])[0] ?? null
  const codes = codings.flatMap((one) => textOf(one, 'code') ?? [])
  return { text: textOf(concept, 'text') ?? shown ?? codes[0] ?? null, codes }
}

/** Every resource of a bundle, and those contained in them, by the ways in which they are referred to. */
export class Resources {
  readonly all: readonly Part[]
  readonly #byReference = new Map<string, Part>()

  constructor(root: Part) {
    const entries = partsOf(root, 'entry')
    const resources = root.resourceType === 'Bundle' ? entries.flatMap((one) => inside(one, 'resource')) : [root]
    const found: Part[] = []
    for (const resource of resources) {
      found.push(resource, ...partsOf(resource, 'contained'))
      const entry = entries.find((one) => one.resource === resource)
      const names = [textOf(entry ?? null, 'fullUrl'), `${textOf(resource, 'resourceType')}/${textOf(resource, 'id')}`]
      for (const name of names) if (name !== null) this.#byReference.set(name, resource)
      for (const inner of partsOf(resource, 'contained')) this.#keepContained(inner)
    }
    this.all = found
  }

  /** Two reports of one bundle may both call something within them "#1": then neither is that. */
  #keepContained(inner: Part): void {
    const name = `#${textOf(inner, 'id')}`
    if (this.#byReference.has(name)) throw new Unreadable('isolate-twice', name, { line: 1, segment: 'contained' })
    this.#byReference.set(name, inner)
  }

  /** What a reference names; one that names nothing in the file refuses it, for a drug may stand behind it. */
  at(reference: Part | null, field: string, must = true): Part | null {
    const name = textOf(reference, 'reference')
    if (name === null) return null
    const found = this.#byReference.get(name) ?? this.#byReference.get(name.split('/').slice(-2).join('/'))
    if (!found && must) throw new Unreadable('parent-missing', name, { line: 1, field })
    return found ?? null
  }
}
