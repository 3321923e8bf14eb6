import type { z } from 'zod'
import type { listPeople } from '#actions/people/list-people.ts'

/** Everybody of the clinic as the server lists them. */
export type Staff = z.output<(typeof listPeople)['output']>
export type Person = Staff['people'][number]
