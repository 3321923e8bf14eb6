import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { BeforeGap } from './before.ts'
import type { LookSource } from './looks.ts'
import type { NerveCourse } from './nerve-course.ts'
import type { NerveSign, Reading } from './nerve-sign.ts'
import type { Change, Lasting, NotAttributable, SignCourse, SignGrade, SignPoint } from './sign-course.ts'

export type NerveCourseWords = {
  readonly signs: Readonly<Record<NerveSign, string>>
  readonly steps: Readonly<Record<NerveSign, readonly string[]>>
  readonly blinked: string
  readonly withValue: string
  readonly sources: Readonly<Record<LookSource, string>>
  readonly changes: Readonly<Record<Change, string>>
  readonly gaps: Readonly<Record<NotAttributable, string>>
  readonly before: Readonly<Record<'awake' | 'sedated' | 'none' | 'found' | 'clear', string>>
  readonly beforeGap: Readonly<Record<BeforeGap, string>>
  readonly now: Readonly<Record<SignGrade | 'new', string>>
  readonly back: string
  readonly lastLook: string
  readonly lasting: Readonly<Record<Lasting, string>>
  readonly block: Readonly<
    Record<'drug' | 'drugUnknown' | 'said' | 'hours' | 'anaesthetic' | 'first' | 'earlier' | 'later' | 'since', string>
  >
  readonly told: string
  readonly onlyBlinked: string
  readonly always: string
  readonly alwaysOne: string
  readonly never: string
  readonly noLook: string
  readonly rule: Readonly<Record<'own' | 'policy', string>>
  readonly ended: Readonly<Record<'death' | 'operated-again', string>>
}

/** The course of one ear in sentences: what was there before, each sign as it stands, what nobody looked at. */
export type SaidCourse = {
  readonly before: string
  readonly signs: readonly string[]
  readonly rule: string
  readonly ended: string | null
}

/**
 * Says a course in whole sentences, for a screen and a letter alike.
 *
 * @example sayCourse(course, file, nerveCourseInEnglish).signs[0] // 'Blink: weak on 9 March 2026 (day 5, …). …'
 */
export function sayCourse(course: NerveCourse, file: CaseFile, words: NerveCourseWords): SaidCourse {
  const say = new Sayer(course, file, words)
  const always = course.signs.filter(isAlwaysNormal)
  const never = course.signs.filter(({ now }) => now === 'not-looked-at')
  const rest = course.signs.filter((one) => !always.includes(one) && !never.includes(one))
  const nobody = never.length === course.signs.length
  return {
    before: say.before(),
    signs: [
      ...rest.map((one) => say.sign(one)),
      ...(always.length > 0 ? [say.always(always)] : []),
      ...(nobody ? [words.noLook] : never.length > 0 ? [fill(words.never, { signs: say.names(never) })] : []),
    ],
    rule: say.rule(),
    ended: course.ended ? fill(words.ended[course.ended.because], { date: sayCalendarDay(course.ended.on) }) : null,
  }
}

function isAlwaysNormal({ now, points, before }: SignCourse): boolean {
  const wasNormal = before.kind === 'unknown' || before.reading.step === 0
  return now === 'normal' && wasNormal && points.every(({ change }) => change === 'normal' || change === 'blinked')
}

/**
 * One reading in words, with its value where it has one.
 *
 * @example sayReading('tears', { step: 1, value: '14 mm/min' }, words) // '14 mm/min, fewer than normal'
 */
export function sayReading(sign: NerveSign, { step, value }: Reading, words: NerveCourseWords): string {
  if (step === null) return words.blinked
  const said = words.steps[sign][step] ?? ''
  return value === null ? said : fill(words.withValue, { value, said })
}

class Sayer {
  readonly course: NerveCourse
  readonly file: CaseFile
  readonly words: NerveCourseWords

  constructor(course: NerveCourse, file: CaseFile, words: NerveCourseWords) {
    this.course = course
    this.file = file
    this.words = words
  }

  names(some: readonly SignCourse[]): string {
    return some.map(({ sign }) => this.words.signs[sign].toLowerCase().replace('horner', 'Horner')).join(', ')
  }

  before(): string {
    const { baseline, signs } = this.course
    const { before } = this.words
    if (!baseline) return before.none
    const date = this.when(baseline.at)
    const found = signs.flatMap(({ sign, before: was }) => {
      if (was.kind === 'unknown' || was.reading.step === 0) return []
      return [`${this.words.signs[sign]}: ${sayReading(sign, was.reading, this.words)}`]
    })
    const open = signs.filter((one) => one.before.kind === 'unknown')
    const gaps = [...new Set(open.flatMap((one) => (one.before.kind === 'unknown' ? [one.before.because] : [])))]
    return [
      fill(baseline.beforeSedation ? before.awake : before.sedated, { date }),
      ...(found.length > 0 ? [fill(before.found, { found: found.join('; ') })] : []),
      ...(found.length === 0 && open.length < signs.length ? [before.clear] : []),
      ...gaps.map((gap) => {
        const of = open.filter((one) => one.before.kind === 'unknown' && one.before.because === gap)
        return fill(this.words.beforeGap[gap], { signs: this.names(of) })
      }),
    ].join(' ')
  }

  sign(one: SignCourse): string {
    return [...this.standing(one), ...this.doubts(one), ...this.told(one)].join(' ')
  }

  always(some: readonly SignCourse[]): string {
    const { words } = this
    const said = some.map((one) =>
      fill(words.alwaysOne, { sign: this.names([one]), day: String(one.last?.look.day ?? '') }),
    )
    return fill(words.always, { signs: said.join(', ') })
  }

  rule(): string {
    const { days, policy } = this.course.rule
    const about = { days: String(days.value) }
    if (policy === null) return fill(this.words.rule.own, { ...about, date: sayCalendarDay(days.checked) })
    const { by, on, because } = policy
    return fill(this.words.rule.policy, { ...about, by, date: sayCalendarDay(on), because })
  }

  /** How the sign stands by its last examination; for one that came back, between which looks it did. */
  private standing({ sign, now, last, back, before, lasting }: SignCourse): string[] {
    const { words, course } = this
    if (!last) return now === 'only-blinked' ? [fill(words.onlyBlinked, { sign: words.signs[sign] })] : []
    const was = before.kind === 'known' ? sayReading(sign, before.reading, words) : ''
    const about = { ...this.about(sign, last), before: was, because: last.because ? words.gaps[last.because] : '' }
    if (back) {
      const { after, by } = back
      const { found, date, day } = this.about(sign, after)
      const then = { bad: found, badDate: date, badDay: day, good: this.about(sign, by).found }
      const said = fill(words.back, { ...then, ...this.about(sign, by) })
      return by === last ? [said] : [said, fill(words.lastLook, about)]
    }
    const isNew = now === 'worse' && before.kind === 'known' && before.reading.step === 0
    const said = fill(words.now[isNew ? 'new' : (now as SignGrade)], about)
    const lasts = now !== 'worse' && now !== 'not-attributable' ? null : lasting
    if (lasts === null) return [said]
    const rule = { days: String(course.rule.days.value), from: sayCalendarDay(course.lastsFrom) }
    return [said, fill(words.lasting[lasts], { ...rule, day: String(last.look.day) })]
  }

  /** What was found while a block could act, and whether anybody looked since. */
  private doubts({ sign, points, last }: SignCourse): string[] {
    const doubt = points.findLast(({ change }) => change === 'possible-block' || change === 'after-anaesthetic')
    if (!doubt) return []
    const { words } = this
    const about = { ...this.about(sign, doubt), when: this.moment(doubt.look.at) }
    const said = fill(...this.whatActs(doubt, about))
    const since = last !== null && last.look.at > doubt.look.at
    if (since) return [fill(words.block.earlier, { said })]
    return [fill(last ? words.block.later : words.block.first, { ...about, said }), words.block.since]
  }

  private whatActs({ change, look }: SignPoint, about: Readonly<Record<string, string>>): Parameters<typeof fill> {
    const { block } = this.words
    if (change === 'after-anaesthetic' || !look.block) return [block.anaesthetic, about]
    const { because, drug, until } = look.block
    const which = because === 'drug' && until === null ? 'drugUnknown' : because
    return [block[which], { ...about, drug: drug ?? '', until: until === null ? '' : this.moment(until) }]
  }

  /** The owner's last words, as long as no examination came after them. */
  private told({ sign, points, last }: SignCourse): string[] {
    const told = points.findLast(({ change }) => change === 'told')
    if (!told || (last && last.look.at > told.look.at)) return []
    return [fill(this.words.told, this.about(sign, told))]
  }

  private about(sign: NerveSign, { look, reading }: SignPoint) {
    return {
      sign: this.words.signs[sign],
      found: sayReading(sign, reading, this.words),
      date: sayCalendarDay(look.on),
      day: String(look.day),
      source: this.words.sources[look.source],
    }
  }

  private when(at: string): string {
    return sayMoment({ at, zone: this.file.clinic.zone, precision: 'day', by: 'clock' })
  }

  private moment(at: string): string {
    return sayMoment({ at, zone: this.file.clinic.zone, precision: 'minute', by: 'clock' })
  }
}
