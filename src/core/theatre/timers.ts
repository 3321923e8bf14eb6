import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import { type Drug, drugById } from '#core/formulary/drug.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { Decimal, type Quantity } from '#core/units/quantity.ts'
import { marked, wholeMinutes } from './ledger.ts'
import { doneAt, retractionsOf } from './stamps.ts'

export type TimerRules = {
  /** The longest an antimicrobial may be in before the skin is cut. */
  readonly beforeIncision: Sourced<Quantity<'min'>>
  /** What other sources say of it; kept beside, not averaged. */
  readonly otherBeforeIncision: readonly Sourced<Quantity<'min'>>[]
  /** How long after the last observation the next one is asked for. */
  readonly observeEvery: Sourced<Quantity<'min'>>
}

/** One clock that runs from something that was recorded; nothing starts it but an entry. */
export type Timer = {
  readonly what:
    | 'anaesthesia'
    | 'incision'
    | 'antimicrobial'
    | 'local-anaesthetic'
    | 'retraction'
    | 'observation'
    | 'no-observation'
  /** Of an antimicrobial or local anaesthetic. */
  readonly drug: string | null
  /** Whole minutes since it began; of retraction, all times together. */
  readonly minutes: number
  readonly from: string
  /** What it asks for then: the cut, the next dose, the next look. */
  readonly asks: 'cut' | 'next-dose' | 'look' | null
  /** When it asks for something; null when no source says when. */
  readonly dueAt: string | null
  readonly isDue: boolean
  /** Minutes between an antimicrobial and the cut that followed it; null before the cut. */
  readonly beforeCut: number | null
  readonly facts: readonly Provenance[]
}

/**
 * The clocks of one operation at an instant, from recorded events alone: anaesthesia, skin open, each antimicrobial with
 * the time its source gives for the next dose, local anaesthetic, retraction, and the last observation.
 *
 * @example timersOf(file, operation.id, at, rules, formulary).find(({ what }) => what === 'antimicrobial')?.isDue // true after 90 min of cefazolin
 */
export function timersOf(
  { theCase }: Pick<CaseFile, 'theCase'>,
  operation: string,
  now: string,
  rules: TimerRules,
  drugs: readonly Drug[],
  /** The operations of one anaesthetic, first to last: its clocks run through both ears. */
  together: readonly string[] = [operation],
): Timer[] {
  const species = theCase.latest('identity')?.body.species
  const ofAll = <Found>(find: (one: string) => readonly Found[]) => together.flatMap(find)
  const start = marked(theCase, together, 'anaesthesia-start')[0] ?? null
  const firstCut = marked(theCase, together, 'incision')[0] ?? null
  const cut = doneAt(theCase, operation, 'incision')
  const closed = doneAt(theCase, operation, 'closed')
  const out = marked(theCase, together, 'tube-out').at(-1) ?? null
  const began = [start, cut].flatMap((at) => at ?? []).sort()[0]
  // Nobody stamped the end: a clock that has run for days says nothing any more.
  if (linesAbout(theCase, 'operation-summary', operation).length > 0) return []
  if (began !== undefined && minutesFrom(began, now) >= longest) return []
  const timer = (what: Timer['what'], from: string, more: Partial<Timer> = {}): Timer => ({
    what,
    drug: null,
    minutes: minutesFrom(from, now),
    from,
    asks: null,
    dueAt: null,
    isDue: false,
    beforeCut: null,
    facts: [],
    ...more,
  })
  const given = ofAll((one) => linesAbout(theCase, 'drug-given', one))
    .filter(({ at }) => at <= now)
    .sort((a, b) => compareText(a.at, b.at))
  const last = (matches: (drug: string, use: string) => boolean) => {
    const fitting = given.filter(({ body }) => matches(body.drug, body.use))
    return [...new Map(fitting.map((line) => [line.body.drug, line])).values()]
  }
  const antimicrobials = last((_, use) => use === 'antibiotic_periop').map(({ at, body }) => {
    const row = drugById(drugs, body.drug)?.doses.find(
      (one) => one.species === species && one.use === 'antibiotic_periop' && one.interval.value.hours !== undefined,
    )
    const hours = row?.interval.value.hours?.[0]
    // Before the cut it waits for the cut; after it for the next dose, as long as the wound is open.
    const due =
      firstCut === null
        ? later(at, rules.beforeIncision.value.value)
        : hours === undefined
          ? null
          : later(at, new Decimal(hours).times(60))
    return timer('antimicrobial', at, {
      drug: body.drug,
      asks: firstCut === null ? 'cut' : 'next-dose',
      dueAt: due,
      isDue: closed === null && due !== null && now >= due,
      beforeCut: firstCut !== null && at <= firstCut ? minutesFrom(at, firstCut) : null,
      facts:
        firstCut === null
          ? [rules.beforeIncision, ...rules.otherBeforeIncision]
          : row
            ? [row.interval, ...(row.otherIntervals ?? [])]
            : [],
    })
  })
  const locals = last((drug) => drugById(drugs, drug)?.localAnaesthetic !== undefined).map(({ at, body }) =>
    timer('local-anaesthetic', at, { drug: body.drug }),
  )
  const held = retractionsOf(theCase, operation)
  const holding = held.find(({ until }) => until === null)
  const first = held[0]
  const observed = ofAll((one) => linesAbout(theCase, 'observation', one))
    .filter(({ at }) => at <= now)
    .sort((a, b) => compareText(a.at, b.at))
    .at(-1)
  const watchFrom = observed?.at ?? start
  const nextLook = watchFrom === null ? null : later(watchFrom, rules.observeEvery.value.value)
  return [
    ...(start !== null && out === null ? [timer('anaesthesia', start)] : []),
    ...(cut !== null && closed === null ? [timer('incision', cut)] : []),
    ...(out === null ? antimicrobials : []),
    ...(out === null ? locals : []),
    ...(first && closed === null
      ? [
          timer('retraction', holding?.from ?? first.from, {
            minutes: held.reduce((sum, { from, until }) => sum + minutesFrom(from, until ?? now), 0),
            isDue: false,
          }),
        ]
      : []),
    ...(start !== null && out === null && watchFrom !== null && nextLook !== null
      ? [
          timer(observed ? 'observation' : 'no-observation', watchFrom, {
            asks: 'look',
            dueAt: nextLook,
            isDue: now >= nextLook,
            facts: [rules.observeEvery],
          }),
        ]
      : []),
  ]
}

/** Minutes after which a record is one of another day. */
const longest = 24 * 60

/** A moment that a fast device wrote ahead of now has not run backwards. */
function minutesFrom(from: string, until: string): number {
  return Math.max(0, wholeMinutes(from, until))
}

function later(at: string, minutes: Decimal): string {
  return new Date(Date.parse(at) + minutes.times(60_000).toNumber()).toISOString()
}
