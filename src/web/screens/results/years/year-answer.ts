import type { YearsAnswer } from '#actions/yearly/read-years.ts'

/** One year as the server has it, what of it is frozen, and the erratum that is owed. */
export type Year = YearsAnswer['years'][number]
export type Frozen = NonNullable<Year['frozen']>
export type OwingOf = NonNullable<Frozen['owing']>
