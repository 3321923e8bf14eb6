import type { KindName } from '#core/journal/fold.ts'
import { plainSaid, type Said, type SaidRow, withLabel } from './said.ts'

/** What one line about an entry says first; a `=` before a path: with its label, because the answer alone says too little. */
const gists = {
  agreement: ['plan.ears', '=plan.ceiling', '=resuscitate', '=consentBy'],
  'anaesthetic-assessment': ['=asa', 'because', '=jawOpens', '=airwayA'],
  'arrived-paper': ['seems', 'from', 'says'],
  baseline: ['=LEFT.blink', '=RIGHT.blink', '=headTilt'],
  'blood-loss': ['=jar', '=lavageIn', '=lavageInJar'],
  'blood-test': ['panel', 'results', 'text'],
  'blood-type': ['dea1', 'ab', 'method'],
  booking: ['procedure', 'plannedFor'],
  call: ['contact', 'about', 'reached', 'text'],
  check: ['=wound', '=blink', '=painful', 'text'],
  choice: ['options', 'session'],
  complication: ['event', '=firstNoticed', '=needed', '=judged'],
  'consent-withdrawn': ['by', 'how', 'why'],
  'cost-assumption': ['option', 'lines'],
  'cost-so-far': ['part', 'what', 'amount'],
  count: ['when', 'items', '=throatPack'],
  cytology: ['site', '=cocci', '=rods', '=yeast', '=oddCells'],
  death: ['how', 'cause'],
  discharge: ['medicines', '=nextVisit'],
  'dose-policy': ['drug', 'use', 'dose'],
  'drug-given': ['drug', 'written', 'amount', 'route', 'site'],
  'drug-wasted': ['drug', 'amount', '=witness'],
  'ear-findings': ['=canalFeel', '=stenosis', '=drum', '=mass', '=painOnPressing'],
  'emergency-declared': ['because', '=lifts'],
  erasure: ['because'],
  estimate: ['=edition', '=ceiling', '=answer'],
  'history-item': ['topic', 'text'],
  'breakpoint-edition': ['standard', 'edition', 'year'],
  'figures-approved': ['species', 'procedure', 'asOf'],
  'figures-left': ['species', 'procedure', 'because'],
  'report-erratum': ['year', 'text'],
  'report-frozen': ['year', 'lookedAt', '=rows'],
  'house-policy': ['policy', 'value'],
  household: ['contacts', '=language'],
  identity: ['name', 'species', 'breed'],
  imaging: ['modality', 'text'],
  'incident-note': ['what', 'during', '=reached', 'text'],
  'laboratory-table': ['laboratory'],
  'late-event': ['what', '=firstSeen', '=needed'],
  'late-sign': ['signs', '=belongs'],
  'medicine-before': ['written', 'dose', '=effect'],
  'medicine-change': ['because', 'stops', 'starts'],
  merge: ['otherStream', 'matchedOn'],
  note: ['text'],
  observation: ['values', 'pain', '=first', '=unmeasured', 'text'],
  'operation-summary': ['procedure', 'findings'],
  'other-ear-plan': ['plan', 'because', '=reviewOn'],
  'owner-answer': ['answers'],
  'owner-note': ['text', '=ear'],
  'owner-reply': ['text'],
  'owner-wishes': ['=leaning', 'matters', 'questions'],
  paper: ['what', 'title', 'dated'],
  'pause-item': ['pause', 'item', 'answer', 'because'],
  photograph: ['shows', '=sideInPicture'],
  'planned-line': ['drug', 'use', 'dose', 'route', '=drawn'],
  'plate-drawing': ['title', '=drawnFor'],
  referral: ['urgency', 'complaint'],
  refile: ['toStream'],
  'register-line': ['what', 'drug', 'amount', 'ampoule', '=witness'],
  'result-read': ['decision', 'text'],
  'second-check': ['verdict', 'text'],
  'shelf-item': ['label'],
  'side-settled': ['side', 'because'],
  'skin-plan': ['disease', 'measures', '=reviewOn'],
  specimen: ['site', 'tests', 'label'],
  'specimen-result': ['status', 'growth', 'isolates', 'text'],
  'theatre-stamp': ['checkpoint', 'detail', 'text'],
  told: ['who', 'contact', 'by'],
  'twelve-months': ['status', '=face', '=source'],
  'usual-plan': ['plan'],
  'vet-answer': ['examinedBy', '=asked', 'text'],
  'ward-score': ['=pain', '=action', '=LEFT.blink', '=RIGHT.blink', '=airway', '=rescoreAt'],
  weight: ['weight', 'how'],
  withdrawal: ['because'],
} as const satisfies Record<KindName, readonly string[]>

/** Longer is cut at a word: the rest stands in the entry. */
const longest = 160

/**
 * One line that says what an entry holds, from the rows that `sayBody` made. What nobody recorded is left out here; it
 * is said in the entry itself.
 *
 * @example gistOf('weight', rows, nameOfEntry) // '18.6 kg (41 lb) · on the scale'
 */
export function gistOf(kind: string, rows: readonly SaidRow[], nameOfEntry: (id: string) => string): string {
  const wanted: readonly string[] = Object.hasOwn(gists, kind) ? gists[kind as KindName] : []
  const parts = wanted.flatMap((one) => {
    const row = find(rows, one.replace('=', ''))
    const said = row && shortly(row.said, nameOfEntry)
    if (!row || !said) return []
    const side = /^=?(LEFT|RIGHT)\./.exec(one)?.[1]
    return [one.startsWith('=') ? withLabel(`${side ? `${side}, ` : ''}${row.label}`, said) : said]
  })
  return cut(parts.join(' · '))
}

function find(rows: readonly SaidRow[], at: string): SaidRow | undefined {
  for (const row of rows) {
    if (row.at === at) return row
    const inside = row.said.kind === 'rows' && at.startsWith(`${row.at}.`) ? find(row.said.rows, at) : undefined
    if (inside) return inside
  }
  return undefined
}

function shortly(said: Said, nameOfEntry: (id: string) => string): string {
  if (said.kind === 'blank') return ''
  if (said.kind !== 'list') return plainSaid(said, nameOfEntry)
  return said.groups.map((group) => ofGroup(group, nameOfEntry)).join(', ')
}

/** The first two answers of each group: what, and how much in which unit; and what is ticked, because it doubts them. */
function ofGroup(group: readonly SaidRow[], nameOfEntry: (id: string) => string): string {
  const said = group.filter((row) => row.said.kind !== 'blank')
  const first = said.filter(({ at }, place) => place < 2 || at.endsWith('.unit'))
  const marks = group.filter(({ said }) => said.kind === 'text' && said.mark).map(({ label }) => `(${label})`)
  return [...first.map(({ said }) => plainSaid(said, nameOfEntry)), ...marks].join(' ')
}

function cut(line: string): string {
  if (line.length <= longest) return line
  const end = line.lastIndexOf(' ', longest)
  return `${line.slice(0, end > 0 ? end : longest)} …`
}
