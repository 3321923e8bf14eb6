import { labelBands } from '#content/protocols/label-bands.ts'
import { groupsInEnglish } from '#content/wording/app-formulary.ts'
import { protocolPage, drugPage as words } from '#content/wording/app-sources.ts'
import { emergencyTitles } from '#content/wording/emergency.ts'
import type { Drug } from '#core/formulary/drug.ts'
import type { Group } from '#core/formulary/words.ts'
import { fill } from '#core/outcome/finding.ts'
import { emergency, hrefOf, rules } from './library.ts'

/** Where else the tool speaks of a drug: pairs of its groups, emergency rows, tables by weight. */
export function usesOfDrug(drug: Drug): { href: string; said: string }[] {
  const groups: readonly Group[] = drug.groups
  const pairs = rules['drug-pairs'].filter(({ between }) => between.some((group) => groups.includes(group)))
  const calls = emergency.filter(({ rows }) => rows.some((row) => row.drug === drug.id))
  const banded = Object.keys(labelBands).some((name) => name.startsWith(`${drug.id} `))
  const patched = drug.doses.some((row) => row.routes.includes('TD') && row.range.value.low.unit === 'ug/h')
  return [
    ...calls.map(({ call }) => ({
      href: hrefOf('protocols', call),
      said: fill(words.usedIn.emergency, { call: emergencyTitles[call] }),
    })),
    ...pairs.map(({ between: [one, other] }) => ({
      href: hrefOf('protocols', 'drug-pairs'),
      said: fill(words.usedIn.pair, {
        words: fill(protocolPage.pairs.between, { one: groupsInEnglish[one], other: groupsInEnglish[other] }),
      }),
    })),
    ...(banded ? [{ href: hrefOf('protocols', 'label-bands'), said: words.usedIn.bands }] : []),
    ...(patched ? [{ href: hrefOf('protocols', 'patch-sizes'), said: words.usedIn.patches }] : []),
  ]
}
