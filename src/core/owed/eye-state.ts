import type { Side } from '#core/animal/species.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { nothingAssessed } from '#core/journal/nothing-assessed.ts'
import { fromStored } from '#core/journal/stored.ts'
import { blocksOf } from '#core/theatre/block-lasts.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { compare, type Quantity } from '#core/units/quantity.ts'
import { checksAfter, type DoneOperation } from './follow-up.ts'
import type { Why } from './owed-item.ts'
import { laterOf, type Setting } from './setting.ts'

export type Check = Line<BodyOf<'check'>>

/** A missing blink while the local anaesthetic may still act: not graded, looked at again when it has worn off. */
export type BlockDoubt = {
  readonly check: Check
  /** Null when no duration is on record for the drug. */
  readonly wornOff: string | null
  readonly drug: string
  /** The look after it had worn off, when it was made. */
  readonly settledBy: Check | null
}

/** Face and eye of an operated ear as last seen: every sign by itself, "not assessed" never overwrites a finding. */
export type EyeState = {
  readonly lastSeen: { readonly at: string; readonly by: Check | null }
  /** Why the eye is at risk: no blink, few tears, a stained cornea. Empty when it is not. */
  readonly risk: readonly Why[]
  /** What is not normal, and what has not been assessed since the operation. Both empty: face and eye are normal. */
  readonly notNormal: readonly string[]
  readonly notAssessed: readonly string[]
  readonly block: BlockDoubt | null
  /** Whether any look after the operation ever found the eye at risk or in doubt. */
  readonly everAtRisk: boolean
  readonly checks: readonly Check[]
}

/**
 * Reads the checks of an ear, oldest first, with the baseline before them. What an owner tells is heard where it is worse than
 * what was seen, and never ends a finding.
 */
export function eyeStateOf(operation: DoneOperation, setting: Setting): EyeState {
  const checks = checksAfter(operation, setting)
  const looks = [...checks, ...roundsAfter(operation, setting)].sort(byTime)
  const signs = new Signs(operation.side, setting)
  const baseline = setting.file.theCase
    .live('baseline')
    .filter(({ at }) => at <= operation.moment.at)
    .at(-1)
  if (baseline) signs.startFrom(baseline.body[operation.side])
  let lastSeen: EyeState['lastSeen'] = { at: operation.moment.at, by: null }
  let everAtRisk = false
  const doubts: { check: Check; wornOff: string | null; drug: string }[] = []
  for (const check of looks) {
    const doubt = isTold(check) ? null : blockAt(check, operation, setting)
    if (doubt) doubts.push({ check, ...doubt })
    signs.read(check, doubt !== null)
    if (isEyeLook(check) && !(signs.risk().length > 0 && isPhotograph(check))) lastSeen = { at: check.at, by: check }
    everAtRisk ||= doubt !== null || signs.risk().length > 0
  }
  return {
    lastSeen,
    risk: signs.risk(),
    notNormal: signs.notNormal(),
    notAssessed: signs.notAssessed(),
    block: openDoubt(doubts, looks),
    everAtRisk,
    checks,
  }
}

/**
 * The rounds in the ward as looks at this eye: a blink and nothing else. They say how the eye is, and count as a look
 * after the block; they are no planned look at face and eye.
 */
function roundsAfter(operation: DoneOperation, setting: Setting): Check[] {
  return setting.file.theCase
    .live('ward-score')
    .filter(({ at, body }) => at > operation.moment.at && body[operation.side].blink !== 'not-assessed')
    .map((line) => ({ ...line, body: { seenBy: 'us', ...nothingAssessed, blink: line.body[operation.side].blink } }))
}

function byTime(a: Pick<Line, 'at' | 'header'>, b: Pick<Line, 'at' | 'header'>): number {
  return compareText(a.at, b.at) || compareText(a.header.id, b.header.id)
}

/** Whether a check looked at face or eye at all. Words on the telephone are not a look. */
export function isEyeLook(check: Check): boolean {
  if (isTold(check)) return false
  const { body } = check
  return body.blink !== 'not-assessed' || body.tearTest !== null || body.fluorescein !== 'not-assessed'
}

/** An account of the owner, and no examination. */
function isTold({ body }: Pick<Check, 'body'>): boolean {
  return body.seenBy === 'owner-words'
}

/** A photograph shows a face, not a cornea or tears: it does not count as seeing an eye at risk. */
function isPhotograph({ body }: Check): boolean {
  return body.seenBy === 'owner-photograph'
}

/**
 * Whether a missing blink may be the block: worked out from what was given and when, or said by the examiner where the
 * record cannot tell. Days later nobody can say it any more: the finding is a finding.
 */
function blockAt(
  check: Check,
  operation: DoneOperation,
  setting: Setting,
): { wornOff: string | null; drug: string } | null {
  const { blink, possibleBlockEffect } = check.body
  if (blink === 'normal' || (blink === 'not-assessed' && !possibleBlockEffect)) return null
  const given = blocksOf(setting.file.theCase, [operation.id], setting.rules.blockLasts, setting.zone)
    .filter(({ given: { at } }) => at <= check.at)
    .map(({ given: { at, body }, wornOff }) => ({ at, drug: body.drug, wornOff }))
  const acting = given.filter(({ wornOff }) => wornOff !== null && wornOff > check.at)
  const last = acting.sort((a, b) => ((a.wornOff ?? '') < (b.wornOff ?? '') ? -1 : 1)).at(-1)
  if (last) return { drug: last.drug, wornOff: last.wornOff }
  const wornOff = given.length > 0 && given.every((one) => one.wornOff !== null)
  if (!possibleBlockEffect || wornOff) return null
  const from = given.map(({ at }) => at).reduce(laterOf, operation.moment.at)
  const over = instantAfter({ at: from, zone: setting.zone }, setting.rules.blockOver.value)
  return check.at >= over ? null : { drug: given.at(-1)?.drug ?? 'the local anaesthetic', wornOff: null }
}

function openDoubt(doubts: readonly Omit<BlockDoubt, 'settledBy'>[], checks: readonly Check[]): BlockDoubt | null {
  const last = doubts.at(-1)
  if (!last) return null
  const clear = last.wornOff ?? last.check.at
  const settledBy = checks.find(
    (check) => !isTold(check) && check.at >= clear && check.at > last.check.at && check.body.blink !== 'not-assessed',
  )
  return { ...last, settledBy: settledBy ?? null }
}

type Face = {
  readonly blink: Check['body']['blink']
  readonly lipOrEarDroop: Check['body']['lipOrEarDroop']
  readonly tearTest: Check['body']['tearTest']
  readonly fluorescein: Check['body']['fluorescein']
}

class Signs {
  #blink: Check['body']['blink'] = 'not-assessed'
  #droop: Check['body']['lipOrEarDroop'] = 'not-assessed'
  #horner: Check['body']['horner'] = 'not-assessed'
  #tears: Quantity<'mm/min'> | null = null
  #cornea: Check['body']['fluorescein'] = 'not-assessed'
  #assessedAfter = new Set<string>()
  /** What was looked at of the eye since a check first found the blink weak; null while none did. */
  #seenSinceWeak: Set<'tears' | 'cornea'> | null = null
  readonly #face: Setting['rules']['face']
  readonly side: Side
  #before = true

  constructor(side: Side, setting: Setting) {
    this.side = side
    this.#face = setting.rules.face
  }

  startFrom(face: Face): void {
    this.#take(face, false)
  }

  read(check: Check, inBlock: boolean): void {
    const { body } = check
    this.#before = false
    if (isTold(check)) {
      this.#hear(body)
      return
    }
    // A round in the ward asks for the blink alone: tears and cornea are for the next check.
    if (body.blink === 'weak' && check.header.kind === 'check' && !inBlock) this.#seenSinceWeak ??= new Set()
    if (body.blink === 'normal') this.#seenSinceWeak = null
    // Neither tears nor a cornea can be seen on a photograph.
    this.#take(isPhotograph(check) ? { ...body, tearTest: null, fluorescein: 'not-assessed' } : body, inBlock)
    if (body.horner !== 'not-assessed') {
      this.#horner = body.horner
      this.#assessedAfter.add('horner')
    }
  }

  /** Only a blink that is told to be worse than it was seen: the eye cannot wait for the examination. */
  #hear({ blink }: Face): void {
    const steps = { normal: 0, 'not-assessed': 0, weak: 1, absent: 2 } as const
    if (steps[blink] > steps[this.#blink]) this.#blink = blink
  }

  #take(face: Face, inBlock: boolean): void {
    const note = (sign: string) => {
      if (!this.#before) this.#assessedAfter.add(sign)
    }
    if (face.blink !== 'not-assessed' && !(inBlock && face.blink !== 'normal')) {
      this.#blink = face.blink
      note('blink')
    }
    if (face.lipOrEarDroop !== 'not-assessed' && !inBlock) {
      this.#droop = face.lipOrEarDroop
      note('lip or ear droop')
    }
    if (face.tearTest !== null) {
      this.#tears = fromStored(face.tearTest)
      this.#seenSinceWeak?.add('tears')
      note('tear test')
    }
    if (face.fluorescein !== 'not-assessed') {
      this.#cornea = face.fluorescein
      this.#seenSinceWeak?.add('cornea')
    }
  }

  risk(): Why[] {
    const why: Why[] = []
    if (this.#blink === 'absent')
      why.push({ code: this.#before ? 'blink-missing-before' : 'eye-without-blink', about: {} })
    // A weak blink with tears and cornea seen to be well is watched; one of which nobody knows them is not "fine".
    if (this.#blink === 'weak' && this.#seenSinceWeak !== null && this.#seenSinceWeak.size < 2)
      why.push({ code: 'weak-blink-eye-unseen', about: {} })
    if (this.#tears && compare(this.#tears, this.#face.lowTears.value) < 0) {
      why.push({
        code: 'tears-low',
        about: { tears: this.#tears.toString(), limit: this.#face.lowTears.value.toString() },
      })
    }
    if (this.#cornea === 'positive') why.push({ code: 'cornea-stained', about: {} })
    return why
  }

  /** Of what was looked at since the operation: a sign of the baseline that nobody saw again is "not assessed". */
  notNormal(): string[] {
    const found: string[] = []
    const again = (sign: string) => this.#assessedAfter.has(sign)
    if (again('blink') && (this.#blink === 'absent' || this.#blink === 'weak')) found.push(`blink ${this.#blink}`)
    if (again('lip or ear droop') && this.#droop === 'yes') found.push('lip or ear droops')
    if (this.#horner === 'yes') found.push('Horner’s')
    if (again('tear test') && this.#tears && compare(this.#tears, this.#face.normalTears.value) < 0)
      found.push(`tear test ${this.#tears.toString()}`)
    if (this.#cornea === 'positive') found.push('cornea stains')
    return found
  }

  notAssessed(): string[] {
    return ['blink', 'lip or ear droop', 'tear test', 'horner'].filter((sign) => !this.#assessedAfter.has(sign))
  }
}
