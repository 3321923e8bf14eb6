import type { HomePlan } from '#core/home/home-plan.ts'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import type { DoseFinding } from './findings.ts'
import type { BoundPlan } from './second-check.ts'

/** The entry that made the page for home as it stands: the one somebody confirms. */
export function entryOfPage({ discharge, changes }: HomePlan): Pick<Line, 'header'> {
  return changes.at(-1) ?? discharge
}

/**
 * What a person binds their name to who confirms what was found against the medicines for home: the animal, and the
 * fingerprint over the entries of the page and every finding. With one finding more the name no longer counts. Null
 * without an identity.
 *
 * @example boundHomeOf(theCase, plan, findings)?.fingerprint
 */
export function boundHomeOf(theCase: Case, plan: HomePlan, findings: readonly DoseFinding[]): BoundPlan | null {
  const species = theCase.latest('identity')?.body.species
  if (species === undefined) return null
  const weight = theCase.latest('weight')?.body.weight ?? null
  return { species, weight, fingerprint: fingerprint(plan, findings) }
}

function fingerprint(plan: HomePlan, findings: readonly DoseFinding[]): string {
  const said = findings
    .filter(({ level }) => level === 'confirm')
    .map(({ code, about }) => canonical({ code, about } as unknown as Json))
  const entries = [plan.discharge, ...plan.changes].map(({ header }) => header.id)
  return hashText(canonical({ entries, findings: [...new Set(said)].sort(compareText) }))
}

/**
 * Who stands for what was found: another person than the one who wrote the page, or the same one where nobody else was
 * there, which is said. Null while nobody does; a block is never confirmed away.
 */
export function confirmedHome(
  theCase: Case,
  plan: HomePlan,
  findings: readonly DoseFinding[],
): Line<BodyOf<'second-check'>> | null {
  const { id, author } = entryOfPage(plan).header
  const wanted = fingerprint(plan, findings)
  const isOther = ({ header }: Line<BodyOf<'second-check'>>) =>
    header.author.kind === 'person' && !(author.kind === 'person' && author.person === header.author.person)
  const checks = theCase
    .live('second-check')
    .filter(({ body }) => body.of.includes(id) && body.plan?.fingerprint === wanted)
  const last = checks.at(-1)
  if (!last || last.body.verdict === 'disagrees') return null
  return last.body.verdict === 'nobody-available' || isOther(last) ? last : null
}
