import { outcomeDefinitions } from '#content/outcomes/outcome-definitions.ts'
import { pinPlaces } from '#content/plate/pin-places.ts'
import { procedures } from '#content/procedures/index.ts'
import { sources } from '#content/sources/index.ts'
import { pinSentences, plateOnScreen } from '#content/wording/app-plate.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side } from '#core/animal/species.ts'
import { cite } from '#core/evidence/cite.ts'
import type { OutcomeWords } from '#core/evidence/outcome-code.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { never } from '#core/outcome/outcome.ts'
import type { Pin, PinEntry } from '#core/plate/pin.ts'
import { pinnedTo } from '#core/plate/pinned.ts'
import type { StructureId } from '#core/plate/scene.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { sayMoment } from '#core/time/moment.ts'
import styles from './plate.module.css'

const words = plateOnScreen.panel

/** What is known, planned and at risk at one part; every line says where it comes from. */
export default function PartPanel(props: {
  readonly theCase: Case
  readonly side: Side
  readonly structure: StructureId
  readonly level: 2 | 3
  readonly onEntry?: ((entry: string) => void) | undefined
}) {
  const { theCase, side, structure, level, onEntry } = props
  const pinned = pinnedTo(structure, theCase, side, { places: pinPlaces, procedures })
  return (
    <div className={styles.pins}>
      <Pins title={words.known} none={words.nothingKnown} pins={pinned.known} level={level} onEntry={onEntry} />
      <Pins title={words.planned} none={words.nothingPlanned} pins={pinned.planned} level={level} onEntry={onEntry} />
      <Pins title={words.atRisk} none={words.nothingAtRisk} pins={pinned.atRisk} level={level} onEntry={onEntry} />
    </div>
  )
}

function Pins(props: {
  readonly title: string
  readonly none: string
  readonly pins: readonly Pin[]
  readonly level: 2 | 3
  readonly onEntry?: ((entry: string) => void) | undefined
}) {
  const { title, none, pins, level, onEntry } = props
  const Heading = level === 2 ? 'h3' : 'h4'
  return (
    <section>
      <Heading>{title}</Heading>
      {pins.length === 0 && <p className={styles.help}>{none}</p>}
      <ul>
        {pins.map((pin) => (
          <li key={keyOf(pin)}>
            <p>{sayPin(pin)}</p>
            <p className={styles.from}>
              {sayFrom(pin)}
              {'from' in pin && onEntry && (
                <button type="button" data-weight="quiet" onClick={() => onEntry(pin.from.entry)}>
                  {words.open}
                </button>
              )}
            </p>
          </li>
        ))}
      </ul>
    </section>
  )
}

function keyOf(pin: Pin): string {
  return JSON.stringify(pin)
}

function nameOf(id: ProcedureId): string {
  return procedureNamed(id, procedures).name
}

function sayPin(pin: Pin): string {
  switch (pin.kind) {
    case 'sign':
      return (pinSentences[pin.sign] as Readonly<Record<string, string>>)[pin.answer] ?? pin.answer
    case 'stamp':
      return pin.sentences.join(' ')
    case 'plan':
      return fill(words.plans[pin.plan], { procedure: nameOf(pin.procedure) })
    case 'step':
      return fill(words.step, { title: pin.checkpoint.title, mind: pin.checkpoint.mind })
    case 'reason':
      return pin.because.value
    case 'risk': {
      const { operated, during }: OutcomeWords = outcomeDefinitions[pin.outcome]
      const sentence = fill(during ? words.riskDuring : words.risk, { risk: operated })
      return `${sentence} ${words.shows[pin.shows]}`
    }
    default:
      return never(pin)
  }
}

function sayFrom(pin: Pin): string {
  switch (pin.kind) {
    case 'sign':
    case 'stamp':
    case 'plan':
      return sayEntry(pin.from)
    case 'step':
      return fill(words.stepFrom, { procedure: nameOf(pin.procedure) })
    case 'reason':
      return saySources(pin.because)
    case 'risk':
      return fill(words.riskFrom, { procedure: nameOf(pin.procedure) })
    default:
      return never(pin)
  }
}

function sayEntry({ kind, moment }: PinEntry): string {
  return fill(words.from, { kind: words.kinds[kind] ?? kind, date: sayMoment(moment) })
}

function saySources(fact: Provenance): string {
  return cite([fact], sources)
    .map(({ citation, known }) => fill(words.source, { citation, how: words.how[known] }))
    .join(' ')
}
