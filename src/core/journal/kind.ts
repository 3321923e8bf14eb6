import type { z } from 'zod'
import type { Json } from './canonical.ts'
import type { Subject } from './entry.ts'

/**
 * One kind of entry: its name, version, schema and one worked example. Adding a kind is one file in `kinds/`.
 *
 * `upcasts[n]` turns a body of version n into version n + 1; bodies of old versions are read through them for ever.
 * Two live entries of one stream whose `naturalKey` is the same are a conflict that a person settles.
 */
export type Kind<Name extends string = string, Body = unknown> = {
  readonly name: Name
  readonly version: number
  readonly subjects: readonly Subject['kind'][]
  readonly body: z.ZodType<Body>
  readonly upcasts: Readonly<Record<number, (older: Json) => Json>>
  readonly naturalKey: ((body: Body, subject: Subject) => string | undefined) | undefined
  readonly example: Body
}

export function defineKind<const Name extends string, Body>(definition: {
  readonly name: Name
  readonly version: number
  readonly subjects: readonly Subject['kind'][]
  readonly body: z.ZodType<Body>
  readonly upcasts?: Readonly<Record<number, (older: Json) => Json>>
  readonly naturalKey?: (body: Body, subject: Subject) => string | undefined
  readonly example: NoInfer<Body>
}): Kind<Name, Body> {
  const { upcasts = {}, naturalKey, ...rest } = definition
  for (let version = 1; version < definition.version; version += 1) {
    if (!upcasts[version]) throw new Error(`Kind ${definition.name} lacks the upcast from version ${version}.`)
  }
  return { ...rest, upcasts, naturalKey }
}

/**
 * A natural key of several texts, unlike for unlike texts wherever a space stands in them.
 *
 * @example keyOf('methadone', 'A 1') // '["methadone","A 1"]'
 */
export function keyOf(...texts: readonly string[]): string {
  return JSON.stringify(texts)
}

/** A body of any known version, brought to the version the code speaks. Undefined when it is from the future. */
export function upcast(
  kind: Pick<Kind, 'name' | 'version' | 'upcasts'>,
  version: number,
  body: Json,
): Json | undefined {
  if (version > kind.version) return undefined
  let current = body
  for (let step = version; step < kind.version; step += 1) {
    const up = kind.upcasts[step]
    if (!up) throw new Error(`Kind ${kind.name} lacks the upcast from version ${step}.`)
    current = up(current)
  }
  return current
}

/** The same, and undefined also for a body that its upcasters cannot read: one bad entry never stops the fold. */
export function readableBody(
  kind: Pick<Kind, 'name' | 'version' | 'upcasts'>,
  version: number,
  body: Json,
): Json | undefined {
  if (version === kind.version) return body
  try {
    return upcast(kind, version, body)
  } catch {
    return undefined
  }
}
