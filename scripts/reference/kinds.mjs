import { head, plainText, table } from './markdown.mjs'

/** The kinds of entry: what each is for, its fields, one worked example. */
export function kindsPage({ kinds, fieldsOf, purposeOf }) {
  return [
    ...head(
      'Kinds of entry',
      'Everything that happens is an entry of one of these kinds. A body of an older version is read through its upcasters for ever; an unknown kind is kept and shown as such. The examples are invented.',
    ),
    ...table(
      ['kind', 'version', 'about', 'what it is for'],
      kinds.map((kind) => [
        `[${kind.name}](#${kind.name})`,
        kind.version,
        kind.subjects.join(', '),
        plainText(purposeOf(kind)),
      ]),
    ),
    ...kinds.flatMap((kind) => [
      `## ${kind.name}`,
      '',
      plainText(purposeOf(kind)),
      '',
      ...(kind.naturalKey
        ? ['Two live entries with the same natural key are a conflict that a person settles.', '']
        : []),
      ...table(['field', 'holds'], fieldsOf(kind)),
      '```json',
      JSON.stringify(kind.example, null, 2),
      '```',
      '',
    ]),
  ]
}

/** The fields of a JSON schema as rows: dotted path and what may stand there. */
export function rowsOfSchema(schema, path = '') {
  const { properties, items, anyOf } = schema
  const own = path === '' ? [] : [[path, holds(schema)]]
  if (properties) {
    const inner = Object.entries(properties).flatMap(([key, member]) =>
      rowsOfSchema(member, path === '' ? key : `${path}.${key}`),
    )
    return [...own, ...inner]
  }
  if (items && (items.properties || items.anyOf)) return [...own, ...rowsOfSchema(items, `${path}[]`).slice(1)]
  const objects = (anyOf ?? []).filter((member) => member.properties)
  return [...own, ...objects.flatMap((member) => rowsOfSchema(member, path).slice(path === '' ? 0 : 1))]
}

function holds(schema) {
  if (schema.const !== undefined) return `\`${schema.const}\``
  if (schema.enum) return schema.enum.map((value) => `\`${value}\``).join(', ')
  if (schema.anyOf) return [...new Set(schema.anyOf.map(holds))].join(' or ')
  if (schema.type === 'null') return 'nothing'
  if (schema.type === 'array') return schema.items ? `list of ${holds(schema.items)}` : 'list'
  if (schema.type === 'object') return 'the fields below'
  if (schema.type === 'integer') return bounds('whole number', schema.minimum, schema.maximum)
  if (schema.type === 'string' && schema.format === 'uuid') return 'id of an entry'
  if (schema.type === 'string')
    return schema.pattern ? 'text of a fixed form' : bounds('text', undefined, schema.maxLength)
  return schema.type ?? 'anything'
}

function bounds(what, low, high) {
  const far = (value) => value === undefined || Math.abs(value) >= Number.MAX_SAFE_INTEGER
  if (far(low) && far(high)) return what
  if (far(low)) return `${what}, at most ${high}${what === 'text' ? ' characters' : ''}`
  return far(high) ? `${what}, at least ${low}` : `${what}, ${low} to ${high}`
}
