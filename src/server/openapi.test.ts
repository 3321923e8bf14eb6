import { describe, expect, it } from 'vitest'
import { actions } from '#actions/index.ts'
import { openApi } from './openapi.ts'

type Schema = { readonly type?: string; readonly anyOf?: readonly Schema[]; readonly oneOf?: readonly Schema[] }
type Post = { readonly requestBody: { readonly content: { readonly 'application/json': { readonly schema: Schema } } } }
const schemaOf = (post: unknown) => (post as Post).requestBody.content['application/json'].schema
/** Fields, or one of several sets of fields. */
const kindsOf = ({ type, anyOf, oneOf }: Schema): readonly unknown[] => (anyOf ?? oneOf)?.flatMap(kindsOf) ?? [type]

describe('the description of the interface', () => {
  const document = openApi('0.1.0')
  const paths = document.paths as Readonly<Record<string, { readonly post?: Record<string, unknown> }>>

  it('holds every action, with the fields it takes and gives', () => {
    for (const { name, summary } of actions) {
      const post = paths[`/api/actions/${name}`]?.post
      expect(post).toMatchObject({ operationId: name, summary })
      expect(kindsOf(schemaOf(post)).every((kind) => kind === 'object')).toBe(true)
      expect(post).toHaveProperty('responses.200.content.application/json.schema')
    }
    expect(Object.keys(paths)).toHaveLength(actions.length + 1)
    expect(document.openapi).toBe('3.1.0')
  })

  it('names every action once, sorted, in words joined by hyphens', () => {
    const names = actions.map(({ name }) => name)
    expect(names).toEqual([...new Set(names)].sort())
    for (const name of names) expect(name).toMatch(/^[a-z]+(-[a-z]+)+$/)
  })

  it('refers to no schema that it does not hold', () => {
    const text = JSON.stringify(document)
    const wanted = [...text.matchAll(/"#\/components\/schemas\/(\w+)"/g)].map(([, name]) => name)
    expect(wanted).toContain('Entry')
    for (const name of wanted) expect(document.components.schemas).toHaveProperty(name ?? '')
  })
})
