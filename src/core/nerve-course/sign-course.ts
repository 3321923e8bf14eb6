import type { Before, BeforeGap } from './before.ts'
import type { LastingRule } from './lasting-rule.ts'
import type { NerveLook } from './looks.ts'
import { canLast, heldByAnaesthetic, heldByBlock, type NerveSign, ofAnimal, type Reading } from './nerve-sign.ts'

/**
 * One reading held against the state before. `told`: an account and no examination. `blinked`: an eye was seen to
 * blink, nobody said how well. `possible-block` and `after-anaesthetic`: not graded.
 */
export const changes = [
  'normal',
  'better',
  'as-before',
  'worse',
  'not-attributable',
  'possible-block',
  'after-anaesthetic',
  'blinked',
  'told',
] as const
export type Change = (typeof changes)[number]

/** `both-ears`: the other ear was operated too by then, and a head tilt does not say whose it is. */
export type NotAttributable = BeforeGap | 'both-ears'

export type SignPoint = {
  readonly look: NerveLook
  readonly reading: Reading
  readonly change: Change
  readonly because: NotAttributable | null
}

/** How a sign stands by its last examination; `only-…` was never examined so that it counts. */
export type SignStanding =
  | 'not-looked-at'
  | 'only-told'
  | 'only-block'
  | 'only-anaesthetic'
  | 'only-blinked'
  | SignGrade
export type SignGrade = 'normal' | 'better' | 'as-before' | 'worse' | 'not-attributable'

/**
 * `not-yet`: there, and not so late that it counts as lasting. `too-soon`: away, and looked at too early to say that
 * it stays away. `lasts-of-no-side`: it lasts by the rule, and which of two operated ears it belongs to nobody can say.
 * `not-known`: nobody can say.
 */
export type Lasting = 'lasting' | 'not-yet' | 'not-lasting' | 'too-soon' | 'lasts-of-no-side' | 'not-known'

export type SignCourse = {
  readonly sign: NerveSign
  readonly before: Before
  readonly points: readonly SignPoint[]
  readonly now: SignStanding
  /** The last examination that counts. */
  readonly last: SignPoint | null
  /** Back between two looks; on which day in between nobody saw. */
  readonly back: { readonly after: SignPoint; readonly by: SignPoint } | null
  /** Null for the eye, which is treated until it is well. */
  readonly lasting: Lasting | null
}

const graded: ReadonlySet<Change> = new Set(['normal', 'better', 'as-before', 'worse', 'not-attributable'])
const bad: ReadonlySet<Change> = new Set(['worse', 'not-attributable'])

/** Whether a look examined the sign so that it counts. */
export function isGraded({ change }: Pick<SignPoint, 'change'>): boolean {
  return graded.has(change)
}

/**
 * The course of one sign over all looks of an ear. What was not assessed leaves no point; what was there before is
 * never counted as caused.
 *
 * @example signCourseOf('blink', before, looks, { rule, sharedFrom: null }).now // 'worse'
 * Reference: the rule of lasting deficits is content, or the policy of the house with its name and date.
 */
export function signCourseOf(
  sign: NerveSign,
  before: Before,
  looks: readonly NerveLook[],
  { rule, sharedFrom }: { readonly rule: LastingRule; readonly sharedFrom: string | null },
): SignCourse {
  const points: SignPoint[] = []
  for (const look of looks) {
    const reading = look.readings[sign]
    if (!reading) continue
    const found = changeOf(sign, reading, look, before)
    const own = points.some(({ change, look: { at } }) => change === 'worse' && sharedFrom !== null && at < sharedFrom)
    const shared = ofAnimal.has(sign) && sharedFrom !== null && look.at >= sharedFrom && !own
    points.push(
      found.change === 'worse' && shared
        ? { look, reading, change: 'not-attributable', because: 'both-ears' }
        : { look, reading, ...found },
    )
  }
  const counted = points.filter(isGraded)
  const last = counted.at(-1) ?? null
  return {
    sign,
    before,
    points,
    now: last ? (last.change as SignGrade) : ungraded(points),
    last,
    back: backOf(counted),
    lasting: canLast.has(sign) ? lastingOf(last, rule) : null,
  }
}

function changeOf(
  sign: NerveSign,
  { step }: Reading,
  { source, block, soon }: NerveLook,
  before: Before,
): Pick<SignPoint, 'change' | 'because'> {
  if (source === 'owner-words') return { change: 'told', because: null }
  if (step === null) return { change: 'blinked', because: null }
  if (step === 0) return { change: 'normal', because: null }
  if (block && heldByBlock.has(sign)) return { change: 'possible-block', because: null }
  if (soon && heldByAnaesthetic.has(sign)) return { change: 'after-anaesthetic', because: null }
  if (before.kind === 'unknown') return { change: 'not-attributable', because: before.because }
  const was = before.reading.step ?? 0
  return { change: step > was ? 'worse' : step < was ? 'better' : 'as-before', because: null }
}

function ungraded(points: readonly SignPoint[]): SignStanding {
  const has = (change: Change) => points.some((point) => point.change === change)
  if (has('possible-block')) return 'only-block'
  if (has('after-anaesthetic')) return 'only-anaesthetic'
  if (has('blinked')) return 'only-blinked'
  return has('told') ? 'only-told' : 'not-looked-at'
}

/** The last look that found it and the next one that did not; none while the last look still finds it. */
function backOf(counted: readonly SignPoint[]): SignCourse['back'] {
  const place = counted.findLastIndex(({ change }) => bad.has(change))
  const [after, by] = [counted[place], counted[place + 1]]
  return after && by ? { after, by } : null
}

function lastingOf(last: SignPoint | null, rule: LastingRule): Lasting {
  if (!last) return 'not-known'
  const { day } = last.look
  if (last.change === 'not-attributable')
    return last.because === 'both-ears' && day >= rule.days.value ? 'lasts-of-no-side' : 'not-known'
  if (last.change === 'worse') return day >= rule.days.value ? 'lasting' : 'not-yet'
  return day >= rule.free.value ? 'not-lasting' : 'too-soon'
}
