import { Unreadable } from '../fault.ts'
import { component, placeOf, rawField, wholeText } from './fields.ts'
import type { Message, Segment } from './segments.ts'

export type Observation = { readonly obx: Segment; readonly notes: readonly string[] }
export type Patient = { readonly pid: Segment | null; readonly kin: readonly Segment[] }
/** One order of a message with everything that stands under it. */
export type Order = {
  readonly header: Segment
  readonly patient: Patient
  readonly obr: Segment
  readonly orc: Segment | null
  readonly observations: readonly Observation[]
  readonly specimens: readonly Segment[]
  readonly notes: readonly string[]
}

/** Segments of a result message that say nothing of a result: visits, charges, software, timing. */
const passedOver = new Set(['SFT', 'PD1', 'PV1', 'PV2', 'TQ1', 'TQ2', 'CTD', 'FT1', 'CTI', 'DSC', 'ROL', 'DG1', 'BLG'])

const versions = ['2.3', '2.3.1', '2.4', '2.5', '2.5.1']

/**
 * The orders of one result message, in its order. A segment that nobody knows refuses the message: it may be a result
 * whose name was spoilt on its way.
 *
 * Reference: HL7 versions 2.3 to 2.5.1, chapter 7, unsolicited observation message ORU^R01.
 */
export function ordersOf(message: Message): Order[] {
  const header = checkHeader(message)
  const orders: MutableOrder[] = []
  let patient: { pid: Segment | null; kin: Segment[] } = { pid: null, kin: [] }
  let orc: Segment | null = null
  let notes: string[] = []
  for (const segment of message.segments.slice(1)) {
    const order = orders.at(-1)
    switch (segment.name) {
      case 'PID':
        patient = { pid: segment, kin: [] }
        orc = null
        notes = []
        break
      case 'NK1':
        patient.kin.push(segment)
        break
      case 'ORC':
        orc = segment
        break
      case 'OBR': {
        const begun: MutableOrder = { header, patient, obr: segment, orc, observations: [], specimens: [], notes: [] }
        orders.push(begun)
        orc = null
        notes = begun.notes
        break
      }
      case 'OBX': {
        // After a new animal an observation belongs to nobody until its order is named.
        if (!order || order.patient !== patient) throw new Unreadable('observation-without-order', 'OBX', segment)
        checkObservation(segment)
        const observation = { obx: segment, notes: [] }
        order.observations.push(observation)
        notes = observation.notes
        break
      }
      case 'SPM':
        if (!order || order.patient !== patient) throw new Unreadable('observation-without-order', 'SPM', segment)
        order.specimens.push(segment)
        break
      case 'NTE': {
        const text = wholeText(segment, 3)
        if (text !== null) notes.push(text)
        break
      }
      default:
        // The sender's own segments are theirs to name; what they say stands in the text of the report.
        if (segment.name.startsWith('Z')) notes.push(segment.fields.join(segment.delimiters.field))
        else if (!passedOver.has(segment.name)) throw new Unreadable('not-a-segment', segment.name, segment)
    }
  }
  if (orders.length === 0) throw new Unreadable('empty', 'OBR', { line: message.line, segment: 'OBR' })
  return orders
}

type MutableOrder = Order & { observations: Observation[]; specimens: Segment[]; notes: string[] }

function checkHeader({ segments, line }: Message): Segment {
  const header = segments[0]
  if (!header) throw new Unreadable('empty', '', { line })
  const kind = [component(header, 9), component(header, 9, 2)]
  if (kind[0] !== 'ORU' || kind[1] !== 'R01') {
    throw new Unreadable('not-a-result-message', rawField(header, 9), placeOf(header, 9))
  }
  const version = component(header, 12) ?? ''
  if (!versions.includes(version)) throw new Unreadable('version-unknown', version, placeOf(header, 12))
  return header
}

const valueTypes = [
  'NM',
  'SN',
  'ST',
  'TX',
  'FT',
  'CE',
  'CWE',
  'CNE',
  'CF',
  'ID',
  'IS',
  'DT',
  'TM',
  'TS',
  'DTM',
  'ED',
  'RP',
]

/** What no reader may guess its way around, whatever the line is about. */
function checkObservation(obx: Segment): void {
  const [type, value] = [component(obx, 2), rawField(obx, 5)]
  if (type === null && value !== '') throw new Unreadable('value-type-missing', value, placeOf(obx, 2))
  if (type !== null && !valueTypes.includes(type)) throw new Unreadable('value-type-unknown', type, placeOf(obx, 2))
  const chance = component(obx, 9)
  // The ninth field is a chance between nothing and one; a category there stands one field too far to the right.
  if (chance !== null && !/^\d*\.?\d+$/.test(chance)) {
    throw new Unreadable('category-in-wrong-field', chance, placeOf(obx, 9))
  }
}
