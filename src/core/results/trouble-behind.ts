import type { Scheme, TroubleWindow } from '#core/complications/scheme.ts'
import { classOf } from '#core/complications/standing.ts'
import { windowOf } from '#core/complications/windows.ts'
import { isDue, isKnown, type TroubleGroup, worstGrade } from './trouble-groups.ts'

type Placed = { readonly group: TroubleGroup; readonly standing: string }
type When = { readonly early: number; readonly today: string }

/**
 * The ears or animals behind the grades of one scheme: each once by its worst grade, `none` where nothing is graded,
 * `lost` where nobody knows, `notYetDue`.
 *
 * @example gradeStandings(cook2010, troubleGroups(question, ears), { early: 30, today })[0]?.standing // 'minor'
 */
export function gradeStandings(scheme: Scheme, groups: readonly TroubleGroup[], { early, today }: When): Placed[] {
  return groups.map((group) => {
    if (!isDue(group, early, today)) return { group, standing: 'notYetDue' }
    return { group, standing: worstGrade(scheme, group) ?? (isKnown(group, early) ? 'none' : 'lost') }
  })
}

/**
 * What stands behind the stretches in which trouble was first noticed: an ear or animal once for each trouble in it.
 *
 * @example windowStandings(windows, troubleGroups(question, ears), { early: 30, today })[0]?.standing // 'short'
 */
export function windowStandings(
  windows: readonly TroubleWindow[],
  groups: readonly TroubleGroup[],
  { early, today }: When,
): Placed[] {
  return groups
    .filter((group) => isDue(group, early, today))
    .flatMap((group) =>
      group.troubles
        .filter((one) => classOf(one) !== 'was-there-before')
        .flatMap(({ operated, on }) => {
          const standing = windowOf(operated, on, windows)
          return standing === null ? [] : [{ group, standing }]
        }),
    )
}
