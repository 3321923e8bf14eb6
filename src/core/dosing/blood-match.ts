import type { Drug } from '#core/formulary/drug.ts'
import { type DoseFinding, found } from './findings.ts'
import type { DoseRequest, PlannedLine } from './request.ts'
import type { DosingRules } from './rules.ts'

/**
 * Whether red cells may go into this animal. A cat that nobody typed gets none, because cats carry antibodies without
 * ever having been transfused; a dog is asked about typing and about earlier transfusions.
 *
 * @example judgeBlood(packedRedCells, line, request, rules)[0].code // 'blood-untyped' for a cat nobody typed
 */
export function judgeBlood(drug: Drug, line: PlannedLine, request: DoseRequest, rules: DosingRules): DoseFinding[] {
  if (!drug.groups.includes('red-cells')) return []
  const unmatched = line.crossMatch === 'incompatible'
  return [
    ...(unmatched ? [found('block', 'cross-match-incompatible', { drug: drug.name }, [rules.transfusion.groups])] : []),
    ...(request.animal.species === 'cat' ? forCat(drug, line, request, rules) : forDog(drug, line, request, rules)),
  ]
}

function forCat(drug: Drug, line: PlannedLine, { animal }: DoseRequest, rules: DosingRules): DoseFinding[] {
  const { groups, catsTyped } = rules.transfusion
  const about = { drug: drug.name, group: animal.bloodGroup ?? '', donor: line.donor ?? '' }
  if (!animal.bloodGroup) return [found('block', 'blood-untyped', about, [catsTyped, groups])]
  if (!line.donor) return [found('block', 'donor-untyped', about, [catsTyped, groups])]
  if (line.donor === animal.bloodGroup) return []
  // An AB cat makes no antibody against A; AB blood is rarely there.
  const level = animal.bloodGroup === 'AB' && line.donor === 'A' ? 'confirm' : 'block'
  return [found(level, 'blood-group-other', about, [groups])]
}

function forDog(drug: Drug, line: PlannedLine, { animal }: DoseRequest, rules: DosingRules): DoseFinding[] {
  const { dogs, crossMatch } = rules.transfusion
  const about = { drug: drug.name, group: animal.bloodGroup ?? '', donor: line.donor ?? '' }
  const sensitises = animal.bloodGroup === 'dea-1-negative' && line.donor === 'dea-1-positive'
  return [
    ...(animal.bloodGroup && line.donor ? [] : [found('confirm', 'dog-untyped', about, [dogs])]),
    ...(sensitises ? [found('confirm', 'blood-group-other', about, [dogs])] : []),
    ...history(animal.transfusedBefore, line, about, [dogs, crossMatch]),
  ]
}

function history(
  before: 'yes' | 'no' | undefined,
  { crossMatch }: PlannedLine,
  about: Record<string, string>,
  [dogs, matching]: [DosingRules['transfusion']['dogs'], DosingRules['transfusion']['crossMatch']],
): DoseFinding[] {
  if (crossMatch !== undefined) return []
  if (before === 'yes') return [found('block', 'cross-match-missing', about, [matching])]
  if (before === undefined) return [found('confirm', 'transfusions-unknown', about, [matching, dogs])]
  return [found('note', 'first-transfusion', about, [dogs])]
}
