import { Temporal } from 'temporal-polyfill'
import type { AnimalWord } from '#core/animal/conditions.ts'
import { type Species, sides } from '#core/animal/species.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { totalLoss } from '#core/theatre/blood-loss.ts'
import { firedMarks } from '#core/theatre/blood-marks.ts'
import { bloodVolume } from '#core/theatre/blood-volume.ts'
import { lossOf } from '#core/theatre/loss-of-entry.ts'
import { convert, Decimal, type Quantity } from '#core/units/quantity.ts'
import { stillCounts } from './elapsed.ts'
import type { DosingRules } from './rules.ts'
import { leanWeight } from './weight.ts'

/** The numbers that turn what was measured into a word about the animal. */
export type ConditionRules = Pick<DosingRules, 'breeds' | 'ear' | 'loss' | 'lowPressure' | 'lowTears' | 'weight'>
type Identity = BodyOf<'identity'>

/**
 * The words about an animal that its case holds at an instant: who it is, and what was last measured or seen. Each one
 * falls away when a newer look says otherwise.
 *
 * @example conditionsOf(theCase, at, identity, rules) // ['brachycephalic', 'raised-creatinine']
 */
export function conditionsOf(
  theCase: Case,
  at: string,
  identity: Identity,
  rules: ConditionRules | undefined,
): AnimalWord[] {
  const words: AnimalWord[] = []
  if (identity.flatFace === 'yes') words.push('brachycephalic')
  if (identity.abcb1 === 'mutant-mutant') words.push('abcb1-mutant')
  if (identity.abcb1 === 'mutant-normal' || (rules && isOfAbcb1Breed(identity, rules))) words.push('abcb1-carrier')
  if (!rules) return words
  if (hasLowPressure(theCase, at, identity.species, rules.lowPressure.value)) words.push('hypotension')
  if (hasLostBlood(theCase, at, identity.species, rules)) words.push('blood-loss')
  if (hasRaisedCreatinine(theCase, at)) words.push('raised-creatinine')
  const drums = drumsOf(theCase, at)
  if (drums.some((drum) => drum === 'ruptured' || drum === 'could-not-see')) words.push('open-drum')
  if (drums.every((drum) => drum === 'intact')) words.push('intact-drums')
  if (isBullaOpened(theCase, at, rules.ear)) words.push('open-bulla')
  const eyes = eyesOf(theCase, at)
  if (eyes.some(({ blink }) => blink === 'absent')) words.push('no-blink')
  if (eyes.some(({ tears }) => tears?.value.lt(rules.lowTears.value.value))) words.push('dry-eye')
  return words
}

/** Nobody tested a dog of a breed in which changed copies are common: it is taken to have one. */
function isOfAbcb1Breed({ abcb1, breed, species }: Identity, { breeds }: ConditionRules): boolean {
  const written = breed?.toLowerCase() ?? ''
  const [rule] = breeds
    .filter((entry) => entry.species === species && written.includes(entry.name))
    .sort((a, b) => b.name.length - a.name.length)
  return abcb1 === 'unknown' && rule?.abcb1 !== undefined
}

/** Whether the last pressure measured shortly before that instant was low. Artefacts say nothing. */
function hasLowPressure(
  theCase: Case,
  at: string,
  species: Species,
  { mean, systolic, within }: DosingRules['lowPressure']['value'],
): boolean {
  const limits = { mean, ...(species === 'dog' && { systolic }) } as const
  const now = Temporal.Instant.from(at)
  const last = theCase
    .live('observation')
    .filter((line) => line.at <= at && stillCounts(Temporal.Instant.from(line.at), now, within))
    .map(({ body }) => body.values.filter(({ what, artefact }) => what in limits && !artefact))
    .findLast((values) => values.length > 0)
  return (last ?? []).some(({ what, value }) => {
    const limit = what === 'mean' ? limits.mean : limits.systolic
    const measured = convert(fromStored(value), 'mm[Hg]')
    return limit !== undefined && measured?.value.lt(limit.value) === true
  })
}

/** What may have been lost shortly before reached the mark; the upper end counts where lavage was not measured. */
function hasLostBlood(theCase: Case, at: string, species: Species, { loss, weight: rules }: ConditionRules): boolean {
  const weighed = theCase.live('weight').findLast((line) => line.at <= at)
  if (!weighed) return false
  const now = Temporal.Instant.from(at)
  const spans = theCase
    .live('blood-loss')
    .filter((line) => line.at <= at && stillCounts(Temporal.Instant.from(line.at), now, loss.from.value.within))
    .map(({ body }) => lossOf(body, loss.swabs))
    .flatMap((outcome) => (outcome.kind === 'answer' ? [outcome.answer] : []))
  const lost = totalLoss(spans)
  const lean = leanWeight(fromStored(weighed.body.weight), weighed.body.bodyCondition ?? undefined, rules)
  const fired = lost ? firedMarks(lost, bloodVolume(lean, loss.perKg[species]).counted, loss.marks) : []
  return fired.some(({ mark }) => mark.value.code === loss.from.value.mark)
}

/** The last creatinine that was measured, against the flag or the range printed beside it; the unit is never read. */
function hasRaisedCreatinine(theCase: Case, at: string): boolean {
  const last = theCase
    .live('blood-test')
    .filter((line) => line.at <= at)
    .flatMap(({ body }) => body.results)
    .findLast(({ analyte }) => /^\s*crea/iu.test(analyte))
  if (!last) return false
  if (/^\s*(h\b|hh\b|high|\+|↑)/iu.test(last.flag ?? '')) return true
  const upper = /(?:-|–|to|<)\s*(\d+(?:[.,]\d+)?)\s*$/u.exec(last.range ?? '')?.[1]
  const printed = /^\s*>?\s*(\d+(?:[.,]\d+)?)\s*$/u.exec(last.printed)?.[1]
  if (upper === undefined || printed === undefined) return false
  return new Decimal(printed.replace(',', '.')).gt(upper.replace(',', '.'))
}

/** Both drums as last looked at; undefined where nobody did. "Not assessed" says nothing, and takes nothing back. */
function drumsOf(theCase: Case, at: string): (BodyOf<'ear-findings'>['drum'] | undefined)[] {
  return sides.map(
    (side) =>
      theCase
        .live('ear-findings')
        .filter(({ header: { subject }, at: when }) => when <= at && subject.kind === 'ear' && subject.side === side)
        .findLast(({ body }) => body.drum !== 'not-assessed')?.body.drum,
  )
}

/** An operation that opens a bulla is booked, or was done: the inner ear lies open from its cut on. */
function isBullaOpened(theCase: Case, at: string, { opensBulla }: DosingRules['ear']): boolean {
  const operations = [...theCase.live('booking'), ...theCase.live('operation-summary')]
  return operations.some((line) => line.at <= at && opensBulla.value.includes(line.body.procedure))
}

type Eye = { readonly blink: string | undefined; readonly tears: Quantity<'mm/min'> | undefined }

/** Blink and tears of both eyes as last assessed, before or after an operation. */
function eyesOf(theCase: Case, at: string): Eye[] {
  return sides.map((side) => {
    const before = theCase
      .live('baseline')
      .filter((line) => line.at <= at)
      .map((line) => ({ at: line.at, face: line.body[side] }))
    const after = theCase
      .live('check')
      .filter(({ header: { subject }, at: when }) => when <= at && subject.kind === 'ear' && subject.side === side)
      .map((line) => ({ at: line.at, face: line.body }))
    const looks = [...before, ...after].sort((a, b) => (a.at < b.at ? -1 : 1)).map(({ face }) => face)
    const tears = looks.findLast(({ tearTest }) => tearTest !== null)?.tearTest
    return {
      blink: looks.findLast(({ blink }) => blink !== 'not-assessed')?.blink,
      tears: tears ? fromStored(tears) : undefined,
    }
  })
}
