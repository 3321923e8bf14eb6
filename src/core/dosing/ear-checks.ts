import type { AnimalWord } from '#core/animal/conditions.ts'
import type { Drug } from '#core/formulary/drug.ts'
import { isAbout, judgeAnimal } from './animal-checks.ts'
import { stillCounts } from './elapsed.ts'
import { saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { drugsGiven } from './given-drug.ts'
import { goesIntoEar } from './into-ear.ts'
import type { DosedAnimal, DoseRequest, DosingKnowledge, Given, PlannedLine } from './request.ts'
import type { AnimalRule, DosingRules } from './rules.ts'

const open: readonly AnimalWord[] = ['open-bulla', 'open-drum']

/**
 * What an ear that is open, or that nobody looked into, says of a drug beyond the rules that name it: only saline goes
 * into such an ear, and a drug that harms hearing from the blood is pointed out.
 *
 * @example judgeEar(dexamethasone, { use: 'ear' }, { conditions: [], … }, rules)[0]?.code // 'only-saline-in-open-ear'
 */
export function judgeEar(
  drug: Drug,
  line: Pick<PlannedLine, 'use' | 'route' | 'stock'>,
  animal: DosedAnimal,
  rules: Pick<DosingRules, 'animal' | 'ear'>,
): DoseFinding[] {
  const { conditions } = animal
  const isOpen = open.some((word) => conditions.includes(word))
  const isWhole = !isOpen && conditions.includes('intact-drums')
  if (isWhole || judgeAnimal(drug, line, animal, rules).some(({ code }) => code === ototoxic)) return []
  if (!goesIntoEar(line)) {
    const fromBlood = rules.animal.find((rule) => rule.code === ototoxic && isAbout(rule, drug, line))
    if (!fromBlood || isOpen || line.use === 'emergency') return []
    return [found('note', 'drums-unknown', { drug: drug.name }, [fromBlood])]
  }
  const { harmless } = rules.ear
  if (drug.groups.some((group) => harmless.value.includes(group))) return []
  return [found('confirm', 'only-saline-in-open-ear', { drug: drug.name, why: whyOf(conditions) }, [harmless])]
}

const ototoxic = 'ototoxic-with-open-ear'

function whyOf(conditions: readonly AnimalWord[]): string {
  return open.filter((word) => conditions.includes(word)).join(', ') || 'nobody says whether the drums are whole'
}

/** Drops and flushes that are in an open ear at the time of a plan, whatever the plan is about. */
export function judgeInEar(
  { animal, at, given }: Pick<DoseRequest, 'animal' | 'at' | 'given'>,
  { drugs, rules }: Pick<DosingKnowledge, 'drugs' | 'rules'>,
): DoseFinding[] {
  if (!open.some((word) => animal.conditions.includes(word))) return []
  const { inEarFor } = rules.ear
  return given
    .filter((entry) => entry.route === 'topical-ear' && stillCounts(entry.at, at, inEarFor.value))
    .flatMap((entry) => {
      const worst = worstRule(entry, drugs, rules.animal)
      if (!worst) return []
      const about = { given: saidOf(entry), why: whyOf(animal.conditions), because: worst.because }
      return [found('confirm', 'ototoxic-in-open-ear', about, [worst, inEarFor])]
    })
}

function worstRule(given: Given, drugs: readonly Drug[], rules: readonly AnimalRule[]): AnimalRule | undefined {
  const line = { use: 'ear', ...(given.stock && { stock: given.stock }) } as const
  const said = drugsGiven(drugs, given.drug).flatMap((drug) =>
    rules.filter((rule) => rule.code === ototoxic && isAbout(rule, drug, line)),
  )
  return said.find(({ level }) => level === 'block') ?? said[0]
}
