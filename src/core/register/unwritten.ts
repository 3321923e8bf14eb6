import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { ampouleKey } from './draws.ts'
import { type RegisterFinding, seen } from './register-findings.ts'

type Lines = {
  readonly of: { readonly drug: string }
  readonly entries: readonly Line<BodyOf<'register-line'>>[]
}

/** What the cases gave or wasted since the register of that drug was opened, and no register drew. */
export function unwritten(drug: string, all: readonly Lines[], theFold: Case): RegisterFinding[] {
  const own = all.filter(({ of }) => of.drug === drug).flatMap(({ entries }) => entries)
  const live = own.filter(({ state }) => state === 'live')
  const since = live.find(({ body }) => body.what === 'opening')?.at
  if (since === undefined) return []
  const drawn = new Set(
    live.flatMap(({ body }) => (body.what === 'drawn' && body.ampoule !== null ? [ampouleKey(body.ampoule)] : [])),
  )
  const isDrawn = (ampoule: string) => drawn.has(ampouleKey(ampoule))
  const aboutOf = ({ amount, ampoule }: Pick<BodyOf<'drug-given'>, 'amount' | 'ampoule'>) => ({
    amount: `${amount.value} ${unitWord(amount.unit)}`,
    ampoule: ampoule ?? '–',
  })
  const given = theFold.live('drug-given').filter(({ body, at }) => body.drug === drug && at >= since)
  const wasted = theFold.live('drug-wasted').filter(({ body, at }) => body.drug === drug && at >= since)
  return [
    ...given.flatMap(({ body, header }) => {
      if (body.ampoule === null) return [seen('confirm', 'given-without-ampoule', aboutOf(body), header.id)]
      return isDrawn(body.ampoule) ? [] : [seen('confirm', 'given-not-drawn', aboutOf(body), header.id)]
    }),
    ...wasted
      .filter(({ body }) => !isDrawn(body.ampoule))
      .map(({ body, header }) => seen('confirm', 'wasted-not-drawn', aboutOf(body), header.id)),
  ]
}
