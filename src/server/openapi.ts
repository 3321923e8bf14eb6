import { z } from 'zod'
import type { Action } from '#actions/action.ts'
import { actions } from '#actions/index.ts'
import { entrySchema } from '#core/journal/entry.ts'

/** The whole interface as an OpenAPI 3.1 document, made from the schemas the program itself reads by. */
export function openApi(version: string) {
  return {
    openapi: '3.1.0',
    info: {
      title: 'Quiet Ear',
      version,
      description:
        'Every action a person can do. Requests and answers are JSON. Sign in with sign-in: the answer sets the cookie.',
    },
    components: {
      securitySchemes: { session: { type: 'apiKey', in: 'cookie', name: 'quiet-ear-session' } },
      schemas: { Entry: schemaOf(entrySchema, 'input'), Problem: problemSchema },
    },
    paths: {
      '/api/health': {
        get: { operationId: 'health', summary: 'Whether the server answers, and which.', responses: {} },
      },
      ...Object.fromEntries(actions.map((action) => [`/api/actions/${action.name}`, { post: operationOf(action) }])),
    },
  }
}

const problemSchema = {
  type: 'object',
  required: ['error'],
  properties: {
    error: {
      type: 'object',
      required: ['code', 'path', 'message'],
      properties: {
        code: { type: 'string' },
        path: { type: 'string' },
        message: { type: 'string' },
        again: { type: 'string', description: 'When to try again, for too-many-tries.' },
      },
    },
  },
}

function operationOf({ name, summary, input, output, may, conflict }: Action) {
  const answer = { description: 'Done.', content: json(schemaOf(output, 'output')) }
  return {
    operationId: name,
    summary,
    description: may === 'anyone' || may === 'signed-in' ? `For: ${may}.` : `For: ${may.join(', ')}.`,
    security: may === 'anyone' ? [] : [{ session: [] }],
    parameters: may === 'anyone' ? [] : [actingPerson],
    requestBody: { required: true, content: json(schemaOf(input, 'input')) },
    responses: {
      200: answer,
      ...(conflict && { 409: { ...answer, description: 'Done as far as it goes: the answer tells of a conflict.' } }),
      default: { description: 'Refused.', content: json({ $ref: '#/components/schemas/Problem' }) },
    },
  }
}

const actingPerson = {
  name: 'x-quiet-ear-person',
  in: 'header',
  required: false,
  schema: { type: 'string' },
  description: 'Who of the people signed in at this device acts now; without it, who signed in or switched last.',
}

function json(schema: object) {
  return { 'application/json': { schema } }
}

/** As JSON Schema; checks that only code can make (a day that exists) are told by their sentence alone. */
function schemaOf(schema: z.ZodType, io: 'input' | 'output'): object {
  const { $schema: _, ...rest } = z.toJSONSchema(schema, { io, unrepresentable: 'any' })
  return rest
}
