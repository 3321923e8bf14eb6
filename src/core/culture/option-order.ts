import type { CultureOption } from './option.ts'
import type { ChoiceStep } from './reading.ts'
import type { StewardshipCategory } from './stewardship.ts'

const verdicts: readonly CultureOption['verdict'][] = ['could', 'doubt', 'cannot']
/** The first to be taken stands first; A comes last of all. */
const letters: readonly (StewardshipCategory | undefined)[] = ['D', 'C', 'B', undefined, 'A']
const steps: readonly (ChoiceStep | undefined)[] = ['same-organism', 'group', 'no-site', 'human', 'other-host']

/**
 * The order in which options are read: what could be used, then what nobody can say of, then what cannot; within that
 * the category of stewardship, what was tested before what is inferred, susceptible before susceptible at a dose, the
 * closer breakpoint, the name.
 *
 * @example inOrder(options)[0]?.tier?.value.category // 'D'
 */
export function inOrder(options: readonly CultureOption[]): CultureOption[] {
  return [...options].sort((a, b) => {
    const [first, second] = [rank(a), rank(b)]
    const place = first.findIndex((value, index) => value !== second[index])
    return place === -1 ? a.name.localeCompare(b.name, 'en') : (first[place] ?? 0) - (second[place] ?? 0)
  })
}

function rank({ verdict, tier, against }: CultureOption): readonly number[] {
  const atDose = against.some(({ standing }) => standing === 'works-at-dose')
  const furthest = Math.max(-1, ...against.map(({ reading }) => steps.indexOf(reading?.breakpoint?.step)))
  // Where nobody can say, what a row of people or dogs speaks against comes after what it speaks for.
  const spokenAgainst = against.some(({ because }) => because === 'fallback-not-susceptible')
  const untested = against.some(({ because }) => because === 'inferred-susceptible')
  const letter = letters.indexOf(tier?.value.category)
  return [verdicts.indexOf(verdict), Number(spokenAgainst), letter, Number(untested), Number(atDose), furthest]
}
