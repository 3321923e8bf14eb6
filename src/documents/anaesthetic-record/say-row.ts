import { procedures } from '#content/procedures/index.ts'
import { ledgerInEnglish as words } from '#content/wording/ledger.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { isPressure } from '#core/theatre/last-values.ts'
import type { Gap, Given, LedgerRow, Observation, ObservedValue, StampWeight } from '#core/theatre/ledger.ts'
import { markName } from '#core/theatre/mark-name.ts'
import { sayMark } from '#core/theatre/stamp-gates.ts'
import type { Stamp } from '#core/theatre/stamps.ts'
import { clockOf } from '#core/time/moment.ts'
import { drugName } from '../case/drug-name.ts'
import { sayUnit } from '../case/say-quantity.ts'

/** What a stamp is about: the title of its checkpoint or the name of its mark; of two ears, with its ear. */
export function sayStampName({ header, body }: Stamp, together: readonly OperationOnFile[]): string {
  const { subject } = header
  const own = together.find(({ id }) => subject.kind === 'operation' && subject.operation === id)
  const checkpoints = own ? procedureNamed(own.procedure, procedures).checkpoints : []
  const known = checkpoints.find(({ id }) => id === body.checkpoint)
  const what = known?.title ?? markName(body.checkpoint, reportInEnglish) ?? body.checkpoint
  if (!own || together.length < 2) return what
  return fill(words.ofEar, { side: papersInEnglish.sides[own.side], what })
}

/** A stamp in a few words, with what a mark or an emergency says beside; answers stand in the operation report. */
export function sayStamp(stamp: Stamp, together: readonly OperationOnFile[], weight: StampWeight): string {
  const { body } = stamp
  const what = sayStampName(stamp, together)
  if (body.answer !== 'done') {
    return fill(words.notDone, { what, because: capital(body.text ?? reportInEnglish.noReason) })
  }
  const beside = weight === 'step' ? [] : sayMark(body, reportInEnglish)
  return beside.length === 0 ? what : `${what}. ${beside.join(' ')}`
}

/** A drug that was given, with how much, how and where. */
export function sayGiven({ body }: Given): string {
  const amounts = [body.amount, ...(body.volume === null ? [] : [body.volume])].map(sayUnit)
  const parts = [...new Set(amounts), body.route, ...(body.site === null ? [] : [body.site])].join(', ')
  return fill(words.given, { drug: body.written ?? drugName(body.drug), parts })
}

/** One measured value without its artefact mark: "mean pressure 74 mmHg (oscillometric, left forelimb)". */
export function sayValue({ what, value, method }: ObservedValue): string {
  const said = fill(words.value, { what: words.names[what], value: sayUnit(value) })
  const how = method !== null ? fill(words.method, { method }) : isPressure(what) ? words.noMethod : null
  return how === null ? said : `${said} ${how}`
}

/** What an observation says beside its values. */
export function sayBeside({ body }: Observation): string[] {
  const { unmeasured, pain, first, side, text } = body
  return [
    ...(unmeasured === null ? [] : [fill(words.unmeasured, { because: unmeasured })]),
    ...(pain === null
      ? []
      : [fill(words.pain, { scale: pain.scale, score: String(pain.score), outOf: String(pain.outOf) })]),
    ...(first === null
      ? []
      : [
          side === null
            ? words.first[first]
            : fill(words.firstOf, { first: words.first[first], side: papersInEnglish.sides[side] }),
        ]),
    ...(text === null ? [] : [text]),
  ].map(capital)
}

export function sayGap({ at, until, minutes }: Gap, zone: string): string {
  const about = { from: clockOf(at, zone), minutes: String(minutes) }
  return until === null ? fill(words.gapLasting, about) : fill(words.gap, { ...about, until: clockOf(until, zone) })
}

/** A change of the clock: what the wall showed the moment before, and from then on. */
export function sayClockChange({ at, change }: Extract<LedgerRow, { kind: 'clock-change' }>, zone: string): string {
  const about = { before: change.local.slice(11, 16), after: clockOf(at, zone) }
  return fill(change.after < change.before ? words.clockBack : words.clockForward, about)
}
