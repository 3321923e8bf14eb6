import type { Quantity } from 'fhir/r4'
import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { drugName } from '../case/drug-name.ts'
import { type Around, currentOf, type Mapping } from './around.ts'
import { answer, local, notes, sideSite, withoutLeadingNoughts, words } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import { coded, finding, observation, type Value } from './observations.ts'
import { sideOf } from './side.ts'
import { ExactNumber, type Resource, type ResourceOf, type Written } from './written.ts'

/** The sample, and the request to the laboratory that went with it. */
export const specimen: Mapping<'specimen'> = (line, around) => {
  const { body, header } = line
  const side = sideOf(line)
  const request = derivedUuid(header.id, 'request')
  const what = answer(body.site)
  const bodySite =
    side === undefined ? what : { ...sideSite(side), text: fill(say.specimenSite, { site: what.text ?? '', side }) }
  return [
    {
      resourceType: 'Specimen',
      id: entryUuid(header.id),
      identifier: [{ system: systems.ids, value: body.label }],
      type: what,
      subject: around.patient(line),
      request: [{ reference: urn(request), type: 'ServiceRequest' }],
      collection: {
        collector: header.author.kind === 'person' ? around.people.person(header.author.person) : undefined,
        collectedDateTime: dateTime(header.happenedAt),
        bodySite,
      },
      note: notes(
        body.antibioticsOnBoard === null ? null : fill(say.onAntibiotics, { drugs: body.antibioticsOnBoard }),
      ),
    },
    {
      resourceType: 'ServiceRequest',
      id: request,
      status: isFinished(around, header.id) ? 'completed' : 'active',
      intent: 'order',
      code: words(fill(say.tests, { tests: body.tests.map((test) => test.replaceAll('-', ' ')).join(', ') })),
      orderDetail: body.tests.map(answer),
      subject: around.patient(line),
      authoredOn: dateTime(header.happenedAt),
      requester: header.author.kind === 'person' ? around.people.person(header.author.person) : undefined,
      performer: body.laboratory === null ? [] : [around.people.contact(body.laboratory)],
      specimen: [{ reference: urn(entryUuid(header.id)), type: 'Specimen' }],
    },
  ]
}

function isFinished({ file: { theCase } }: Around, specimen: string): boolean {
  return theCase
    .live('specimen-result')
    .some(({ body }) => body.status !== 'preliminary' && currentOf(theCase, body.specimen) === specimen)
}

/** The report, an observation for each organism, and one for each drug against it, raw as printed. */
export const specimenResult: Mapping<'specimen-result'> = (line, around) => {
  const { body, header } = line
  const growth = coded(body.growth)
  const found: Resource[] = []
  const top: string[] = []
  if (body.growth !== 'not-a-culture') {
    const id = derivedUuid(header.id, 'growth')
    found.push(laboratory(line, around, { id, code: finding('growth'), value: growth }))
    top.push(id)
  }
  body.isolates.forEach(({ organism, results }, place) => {
    const id = derivedUuid(header.id, 'isolate', String(place))
    const drugs = results.map(({ drug, agent, raw, category }, row) =>
      laboratory(line, around, {
        id: derivedUuid(header.id, 'isolate', String(place), String(row)),
        code: { ...local(agent ?? drug, drugName(drug)), text: fill(say.susceptibility, { drug: drugName(drug) }) },
        value: rawValue(raw),
        interpretation: category ?? raw,
      }),
    )
    const hasMember = drugs.map(({ id: member = '' }) => ({ reference: urn(member), type: 'Observation' }))
    const value = { valueCodeableConcept: words(organism) }
    found.push({ ...laboratory(line, around, { id, code: finding('organism'), value }), hasMember }, ...drugs)
    top.push(id)
  })
  const report: Resource = {
    resourceType: 'DiagnosticReport',
    id: entryUuid(header.id),
    identifier: body.accession === null ? [] : [{ system: systems.ids, value: body.accession }],
    status: body.status,
    category: body.growth === 'not-a-culture' ? [] : [{ coding: [{ system: systems.diagnosticService, code: 'MB' }] }],
    code: local('laboratory-report', say.report),
    subject: around.patient(line),
    effectiveDateTime: takenAt(line, around),
    issued: header.happenedAt.precision === 'minute' || header.happenedAt.precision === 'second' ? line.at : undefined,
    performer: [body.laboratory === null ? around.author(line) : around.people.contact(body.laboratory)],
    specimen: [around.entry(body.specimen, 'Specimen')],
    result: top.map((id) => ({ reference: urn(id), type: 'Observation' })),
    conclusionCode: body.tissue?.tumour ? [local(body.tissue.tumour, body.tissue.diagnosis)] : [],
    conclusion: [body.tissue?.diagnosis, body.text].filter((said) => said != null).join('\n') || undefined,
  }
  return [report, ...found]
}

/** The time that matters of a culture is when it was taken. */
function takenAt({ body }: Line<BodyOf<'specimen-result'>>, { file: { theCase } }: Around): string | undefined {
  const taken = theCase.line(currentOf(theCase, body.specimen))
  return taken?.header.kind === 'specimen' ? dateTime(taken.header.happenedAt) : undefined
}

function laboratory(
  line: Line<BodyOf<'specimen-result'>>,
  around: Around,
  parts: { id: string; code: ReturnType<typeof words>; value: Value; interpretation?: string },
): ResourceOf<'Observation'> {
  const { body } = line
  const made = observation(line, around, { ...parts, side: sideOf(line), category: 'laboratory' })
  const status = body.status
  return {
    ...made,
    status,
    effectiveDateTime: takenAt(line, around),
    interpretation: categories.includes(parts.interpretation ?? '')
      ? [{ coding: [{ system: systems.interpretation, code: parts.interpretation }], text: parts.interpretation }]
      : [],
    specimen: around.entry(body.specimen, 'Specimen'),
  }
}

const categories: readonly string[] = ['S', 'SDD', 'I', 'R', 'NS']

/**
 * A number of a laboratory with its comparator and unit, only when it can be read whole; everything else stays text.
 *
 * @example rawValue('<=0.5 mg/L') // valueQuantity 0.5 with comparator <=
 */
export function rawValue(raw: string): Value {
  const match = /^(<=|>=|<|>)?\s*(\d+(?:\.\d+)?)\s*(mg\/L|ug\/mL|mm)$/.exec(raw)
  const [, comparator, digits, unit] = match ?? []
  if (digits === undefined || unit === undefined) return { valueString: raw }
  const quantity: Written<Quantity> = {
    value: new ExactNumber(withoutLeadingNoughts(digits)),
    comparator: comparator as Quantity['comparator'],
    unit,
    system: systems.ucum,
    code: unit,
  }
  return { valueQuantity: quantity }
}

/** Somebody read a result and decided. */
export const resultRead: Mapping<'result-read'> = (line, around) => [
  {
    resourceType: 'ClinicalImpression',
    id: entryUuid(line.header.id),
    status: 'completed',
    description: say.resultRead,
    subject: around.patient(line),
    date: dateTime(line.header.happenedAt),
    assessor: line.header.author.kind === 'person' ? around.people.person(line.header.author.person) : undefined,
    summary: fill(say.decision, { decision: line.body.decision.replaceAll('-', ' '), text: line.body.text }),
    supportingInfo: [around.entry(line.body.result)],
  },
]
