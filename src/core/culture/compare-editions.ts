import type { Edition } from './breakpoint.ts'
import { editionById } from './editions.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { type ReadingRequest, readIsolates } from './read-isolates.ts'
import type { Category, DrugReading, IsolateReading } from './reading.ts'

export type EditionDifference = {
  /** The isolate. */
  readonly key: string
  readonly printed: string
  readonly agent: string | null
  readonly raw: string
  readonly ours: Category
  readonly theirs: Category
}

/**
 * The same report read by the laboratory's edition, beside our reading, each whole: where they part. Nothing is mixed; ours
 * stays the reading. A human edition gives no category of its own for an animal: what it says is compared all the same.
 */
export function compareEditions(
  request: ReadingRequest,
  ours: readonly IsolateReading[],
  facts: SusceptibilityFacts,
): EditionDifference[] {
  const { edition, laboratory } = request
  if (!laboratory || laboratory === edition) return []
  const theirs = readIsolates({ ...request, edition: laboratory }, facts)
  const [own, other] = [editionById(facts.editions, edition), editionById(facts.editions, laboratory)]
  return ours.flatMap(({ key, results }, at) =>
    results.flatMap((mine) => {
      const found = theirs[at]?.results.find(
        (one) => one.printed === mine.printed && one.agent === mine.agent && one.raw === mine.raw,
      )
      const [one, two] = [says(mine, own), found ? says(found, other) : 'no_breakpoint'] as const
      return one === two
        ? []
        : [{ key, printed: mine.printed, agent: mine.agent, raw: mine.raw, ours: one, theirs: two }]
    }),
  )
}

function says({ category, fallback }: DrugReading, { id, audience }: Edition): Category {
  const own = audience === 'people' && fallback?.breakpoint.edition === id
  return category === 'no_breakpoint' && own ? fallback.category : category
}
