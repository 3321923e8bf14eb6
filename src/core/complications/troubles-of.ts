import type { OwnCase } from '#core/evidence/own/own-case.ts'
import { daySince, ownCasesOf } from '#core/evidence/own/own-case.ts'
import type { OwnCountingRules } from '#core/evidence/own/own-outcome.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { rootOf } from '#core/owed/operations.ts'
import { laterOf } from '#core/owed/setting.ts'
import { hasRecovered } from './recovered.ts'
import { momentOf, type Sighting } from './sighting.ts'
import { sightingsOf } from './sightings-of.ts'
import { isSignOfBefore, onBaseline } from './state-before.ts'
import type { Trouble } from './trouble.ts'
import { greaterNeed, type StateBefore, type TroubleEvent } from './trouble-codes.ts'

type Written = Line<BodyOf<'complication'>>
type Rules = Pick<OwnCountingRules, 'nerveFromHours' | 'deathUntilDay'>

/**
 * Every trouble of a case, first noticed first, and what was written of an operation that is not on file, of its other ear, or
 * of a day before it: it counts nowhere.
 */
export type Troubles = {
  readonly troubles: readonly Trouble[]
  readonly unplaced: readonly (Written | Line<BodyOf<'late-event'>>)[]
}

/**
 * Joins every entry that speaks of the same trouble after the same operation. What was written for another purpose is
 * taken from there; an entry of its own adds what only a person can say.
 *
 * @example troublesOf(file, ownCounting).troubles[0]?.event // 'wound-gap'
 */
export function troublesOf(file: CaseFile, rules: Rules): Troubles {
  const all = ownCasesOf(file)
  const troubles = all.flatMap((own) => troublesAfter(own, rules, own === lastBefore(all, own.death)))
  const placed = new Set(troubles.map(({ written }) => written))
  return {
    troubles: [...troubles].sort(
      (a, b) => compareText(a.firstNoticed.at, b.firstNoticed.at) || compareText(a.id, b.id),
    ),
    unplaced: [
      ...file.theCase.live('complication').filter(({ header }) => !placed.has(header.id)),
      ...file.theCase.live('late-event').filter((line) => !all.some(({ late }) => late.includes(line))),
    ],
  }
}

/**
 * The troubles after one operation of one ear. A death stands once, with the last operation before it.
 *
 * @example troublesAfter(ownCase, rules, true)
 */
export function troublesAfter(own: OwnCase, rules: Rules, isLast: boolean): Trouble[] {
  const { theCase } = own.file
  const written = own.troubles
  const sightings = [...sightingsOf(own, rules), ...(isLast ? ofDeath(own, rules) : [])]
  const keyOf = (event: TroubleEvent, entry: string) =>
    `${own.operation.id} ${event === 'other' ? `other ${rootOf(theCase, entry)}` : event}`
  const keys = [
    ...written.map(({ body, header }) => keyOf(body.event, header.id)),
    ...sightings.map(({ event, entry }) => keyOf(event, entry)),
  ]
  return [...new Set(keys)].map((id) =>
    joined(own, {
      id,
      written: written.filter(({ body, header }) => keyOf(body.event, header.id) === id),
      sightings: sightings.filter(({ event, entry }) => keyOf(event, entry) === id),
    }),
  )
}

/** The operated ear before a death that has most to do with it; the last one. */
export function lastBefore(all: readonly OwnCase[], death: OwnCase['death']): OwnCase | undefined {
  return death === null ? undefined : all.findLast(({ operation }) => operation.moment.at <= death.at)
}

/**
 * A death for certain not because of the ear, nor of the operation, is no trouble of it. Around the operation "not the ear" is
 * not enough to say so; where nobody knows, it is one of which nothing else is known.
 */
function ofDeath(own: OwnCase, { deathUntilDay }: Rules): Sighting[] {
  const { death } = own
  if (!death) return []
  const { relatedToEar, relatedToOperation } = death.body
  const isOf = relatedToOperation === 'yes' || relatedToEar === 'yes'
  const isAround = daySince(own, death.at) <= deathUntilDay.value
  if (!isOf && relatedToEar === 'no' && (relatedToOperation === 'no' || !isAround)) return []
  const needed = isOf ? 'death' : 'not-known'
  return [{ event: 'death', unit: 'animal', at: momentOf(death), needed, worse: true, entry: death.header.id }]
}

type Parts = { readonly id: string; readonly written: readonly Written[]; readonly sightings: readonly Sighting[] }

function joined(own: OwnCase, { id, written, sightings }: Parts): Trouble {
  // Two that stand side by side are a conflict for a person; until then the later one is read.
  const line = written.at(-1)
  const body = line?.body
  const [sighting] = sightings
  const unit = line ? (line.header.subject.kind === 'ear' ? 'ear' : 'animal') : (sighting?.unit ?? 'ear')
  const moments = [...written.map((one) => one.body.firstNoticed), ...sightings.map(({ at }) => at)]
  const [firstNoticed = own.operation.moment] = [...moments].sort((a, b) => compareText(a.at, b.at))
  const event = body?.event ?? sighting?.event ?? 'other'
  return {
    id,
    event,
    operation: own.operation.id,
    unit,
    side: unit === 'ear' ? own.operation.side : null,
    firstNoticed,
    needed: [...written.map((one) => one.body.needed), ...sightings.map((one) => one.needed)].reduce(greaterNeed),
    ...beforeOf(own, event, body, sightings),
    lasting: lastingOf(own, event, body, written, sightings),
    decision:
      body && body.judged !== 'not-decided'
        ? { class: body.judged, by: body.judgedBy ?? authorOf(line), because: body.because }
        : null,
    read: body?.readGrade ?? null,
    text: body?.text ?? null,
    from: [...new Set([...written.map(({ header }) => header.id), ...sightings.map(({ entry }) => entry)])],
    written: line?.header.id ?? null,
  }
}

/** As a person said; else as before, when a later check found it so. A sighting before that check ends nothing. */
function lastingOf(
  own: OwnCase,
  event: TroubleEvent,
  body: BodyOf<'complication'> | undefined,
  written: readonly Written[],
  sightings: readonly Sighting[],
): Trouble['lasting'] {
  if (body && body.lasting !== 'not-known') return body.lasting
  const noticed = written.map(
    ({ body: { event: of, firstNoticed }, header, at }): Sighting => ({
      event: of,
      unit: 'ear',
      at: { ...firstNoticed, at: laterOf(at, firstNoticed.at) },
      needed: 'not-known',
      worse: null,
      entry: header.id,
    }),
  )
  return hasRecovered(own, event, [...sightings, ...noticed]) === true ? 'full' : 'not-known'
}

function authorOf(line: Written | undefined): string | null {
  const author = line?.header.author
  return author?.kind === 'person' ? author.person : null
}

type Before = Pick<Trouble, 'before' | 'beforeFrom' | 'beforeDisagrees'>

/** The baseline where it says enough, then what a person says; a wound cannot have been open before there was one. */
function beforeOf(
  own: OwnCase,
  event: TroubleEvent,
  body: BodyOf<'complication'> | undefined,
  sightings: readonly Sighting[],
): Before {
  if (!isSignOfBefore(event)) return { before: 'absent', beforeFrom: 'nature', beforeDisagrees: false }
  const recorded = recordedBefore(own, event, sightings)
  const said = body && body.before !== 'as-recorded' ? body.before : 'not-known'
  if (recorded === 'not-known')
    return { before: said, beforeFrom: said === 'not-known' ? null : 'person', beforeDisagrees: false }
  const disagrees = said !== 'not-known' && (said === 'absent') !== (recorded === 'absent')
  // Whether what was there is worse since, a person sees better than two coarse answers do.
  const finer = recorded !== 'absent' && (said === 'milder' || said === 'same')
  return {
    before: finer ? said : recorded,
    beforeFrom: finer ? 'person' : 'baseline',
    beforeDisagrees: disagrees,
  }
}

function recordedBefore(
  own: OwnCase,
  event: Parameters<typeof onBaseline>[0],
  sightings: readonly Sighting[],
): StateBefore {
  const baseline = onBaseline(event, own.baseline, own.operation.side)
  if (baseline === 'absent') return 'absent'
  const worse = sightings.some((one) => one.worse === true)
  if (baseline === 'not-known') return worse ? 'absent' : 'not-known'
  if (worse) return 'milder'
  // A face has grades, so a weak one may be worse now; the other signs are there or are not.
  const seenNoWorse = sightings.length > 0 && sightings.every((one) => one.worse === false)
  return seenNoWorse || event !== 'facial-weakness' ? 'same' : 'not-known'
}
