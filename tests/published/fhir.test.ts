import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf, KindName } from '#core/journal/fold.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { owedOf } from '#core/owed/owed.ts'
import { exampleEntries, fileAround } from '#documents/case/sample-case-for-tests.ts'
import { fhirBundle } from '#documents/fhir/bundle.ts'

/**
 * HL7 FHIR Release 4 (4.0.1), hl7.org/fhir/R4/<resource>.html: the elements with cardinality 1..1 or 1..* at the root
 * of each resource used. The shapes themselves are checked by the compiler against the published R4 types.
 */
const required: Readonly<Record<string, readonly string[]>> = {
  AdverseEvent: ['actuality', 'subject'],
  AllergyIntolerance: ['patient'],
  CarePlan: ['status', 'intent', 'subject'],
  ClinicalImpression: ['status', 'subject'],
  Communication: ['status'],
  Consent: ['status', 'scope', 'category'],
  DiagnosticReport: ['status', 'code'],
  ImagingStudy: ['status', 'subject'],
  MedicationAdministration: ['status', 'medicationCodeableConcept', 'subject'],
  MedicationRequest: ['status', 'intent', 'medicationCodeableConcept', 'subject'],
  MedicationStatement: ['status', 'medicationCodeableConcept', 'subject'],
  Observation: ['status', 'code'],
  Organization: ['name'],
  Patient: [],
  Practitioner: [],
  PractitionerRole: [],
  Procedure: ['status', 'subject'],
  Provenance: ['target', 'recorded', 'agent'],
  QuestionnaireResponse: ['status'],
  RelatedPerson: ['patient'],
  ServiceRequest: ['status', 'intent', 'subject'],
  Specimen: [],
  Task: ['status', 'intent'],
}

// biome-ignore lint/suspicious/noExplicitAny: what is read back is JSON as a receiver gets it.
type Json = any
type Read = { readonly text: string; readonly bundle: Json; readonly resources: readonly Json[] }

const history: BodyOf<'history-item'> = { topic: 'other', text: 'x', from: null, until: null, source: 'owner' }
const on = '2026-03-20T10:00:00.000Z'

function read(entries: readonly Entry[], at = on): Read {
  const file = fileAround(entries)
  const text = fhirBundle(file, owedOf(file, procedures, { rules: owedRules }), at)
  const bundle = JSON.parse(text)
  return { text, bundle, resources: bundle.entry?.map(({ resource }: Json) => resource) ?? [] }
}

function of(type: string, { resources }: Read): Json[] {
  return resources.filter(({ resourceType }) => resourceType === type)
}

/** Every object inside a value, itself included. */
function within(value: Json): Json[] {
  if (typeof value !== 'object' || value === null) return []
  return [value, ...Object.values(value).flatMap(within)]
}

/** What the R4 pages ask of a collection and of the resources in it; a sentence for each breach. */
function breaches({ bundle, resources }: Read): string[] {
  const names: string[] = bundle.entry.map(({ fullUrl }: Json) => fullUrl)
  const found: string[] = []
  // bundle.html, bdl-7: fullUrl is unique in a bundle.
  if (new Set(names).size !== names.length) found.push('bdl-7')
  for (const { fullUrl, resource } of bundle.entry) {
    const at = `${resource.resourceType} ${resource.id}`
    if (fullUrl !== `urn:uuid:${resource.id}`) found.push(`${at}: id`)
    // datatypes.html: uuid in lower case.
    if (!/^urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(fullUrl)) found.push(`${at}: fullUrl`)
    for (const element of required[resource.resourceType] ?? ['no list for this resource']) {
      if (resource[element] === undefined) found.push(`${at}: ${element}`)
    }
  }
  const types = new Map(bundle.entry.map(({ fullUrl, resource }: Json) => [fullUrl, resource.resourceType]))
  for (const one of resources.flatMap(within)) {
    if (typeof one.reference === 'string' && types.get(one.reference) !== one.type) found.push(`dead ${one.reference}`)
    // datatypes.html: no member is null, empty text, an empty list or an empty object.
    for (const [key, member] of Object.entries(one)) {
      const empty = member === null || member === '' || (typeof member === 'object' && Object.keys(member).length === 0)
      if (empty) found.push(`${key} is empty`)
      // datatypes.html#dateTime: a time has seconds and an offset; nothing is finer than it is known.
      if (/(DateTime|^start|^end|^recorded|^authored|^sent|^date)$/.test(key) && typeof member === 'string') {
        const legal = /^\d{4}(-\d{2}(-\d{2}(T\d{2}:\d{2}:\d{2}(\.\d+)?(Z|[+-]\d{2}:\d{2}))?)?)?$/
        if (!legal.test(member)) found.push(`${key} ${member}`)
      }
    }
  }
  for (const one of resources) {
    // observation.html, obs-6: a reason for no value only without a value; and here always one of them or parts.
    for (const part of one.resourceType === 'Observation' ? [one, ...(one.component ?? [])] : []) {
      const values = Object.keys(part).filter((key) => key.startsWith('value'))
      const absent = part.dataAbsentReason !== undefined
      const grouped = (part.component ?? part.hasMember) !== undefined
      if (values.length > 1 || (absent && values.length > 0)) found.push(`obs-6 ${one.id}`)
      if (values.length === 0 && !absent && !grouped) found.push(`no value ${one.id}`)
    }
    // consent.html, ppc-1; medicationadministration.html, mad-1; allergyintolerance.html, ait-1 and ait-2.
    if (one.resourceType === 'Consent' && !(one.policy ?? one.policyRule)) found.push(`ppc-1 ${one.id}`)
    if (one.resourceType === 'Consent' && one.provision?.type !== undefined) found.push(`root rule ${one.id}`)
    const { dosage } = one
    if (one.resourceType === 'MedicationAdministration' && dosage && !(dosage.dose ?? dosage.rateQuantity))
      found.push(`mad-1 ${one.id}`)
    if (one.resourceType === 'AllergyIntolerance') {
      const error = one.verificationStatus?.coding?.[0]?.code === 'entered-in-error'
      if (error === (one.clinicalStatus !== undefined)) found.push(`ait ${one.id}`)
    }
    // extension-patient-animal.html: species 1..1 inside the extension.
    for (const { url, extension = [] } of one.extension ?? []) {
      const species = extension.filter((part: Json) => part.url === 'species')
      if (url.endsWith('/patient-animal') && species.length !== 1) found.push(`species ${one.id}`)
    }
  }
  return found
}

describe('The FHIR bundle of a case (R4, 4.0.1)', () => {
  const whole = read(exampleEntries())

  it('is a collection that says its version, with the moment it was given', () => {
    expect(whole.bundle).toMatchObject({ resourceType: 'Bundle', type: 'collection', timestamp: on })
    expect(whole.bundle.meta.tag).toEqual([{ system: 'urn:quiet-ear:codes', code: 'fhir-version', display: '4.0.1' }])
    expect(breaches(whole)).toEqual([])
  })

  it('would be caught with a dead reference, a missing element, a made-up time or an answer beside a reason', () => {
    const spoil = (change: (first: (has: string) => Json) => void) => {
      const bad = read(exampleEntries())
      change((has) => bad.resources.find((one) => one.resourceType === has || one[has] !== undefined))
      return breaches(bad).join()
    }
    const dead = spoil((first) => {
      first('Observation').subject.reference = 'urn:uuid:nobody'
    })
    const missing = spoil((first) => {
      delete first('Procedure').subject
    })
    const time = spoil((first) => {
      first('Procedure').performedPeriod.start = '2026-02-10T09:40'
    })
    const both = spoil((first) => {
      first('valueQuantity').dataAbsentReason = { text: 'x' }
    })
    expect(dead).toContain('dead urn:uuid:nobody')
    expect(missing).toMatch(/Procedure .*: subject/)
    expect(time).toBe('start 2026-02-10T09:40')
    expect(both).toMatch(/^obs-6/)
  })

  it('gives the same bytes for the same entries in any order', () => {
    expect(read([...exampleEntries()].reverse()).text).toBe(whole.text)
  })
})

// hl7.org/fhir/R4/extension-patient-animal.html and codesystem-animal-genderstatus.html
test('The animal carries its species, breed and neutering, and a birth no finer than it is known', () => {
  const [patient] = of('Patient', read(exampleEntries()))
  const [animal] = patient.extension
  expect(animal.url).toBe('http://hl7.org/fhir/StructureDefinition/patient-animal')
  const part = (url: string) => animal.extension.find((one: Json) => one.url === url).valueCodeableConcept
  expect(part('species')).toEqual({
    coding: [{ system: 'http://www.ncbi.nlm.nih.gov/taxonomy', code: '9615', display: 'Canis lupus familiaris' }],
    text: 'dog',
  })
  expect(part('breed')).toEqual({ text: 'English Springer Spaniel' })
  expect(part('genderStatus').coding[0]).toMatchObject({
    system: 'http://hl7.org/fhir/animal-genderstatus',
    code: 'neutered',
  })
  expect(patient.birthDate).toBe('2018-05')
})

test('An animal of which only the weight is known has no species made up for it', () => {
  const make = entryMaker()
  const [patient] = of('Patient', read([make({ kind: 'weight' })]))
  expect(patient.extension).toBeUndefined()
  expect(patient.gender).toBeUndefined()
})

// hl7.org/fhir/R4/datatypes.html#decimal: the precision of a decimal is kept, 0.010 is not 0.01.
test.each(['18.60', '0.010', '4', '12.3456789012345678901', '100.0'])(
  'The digits %s are written as they stand',
  (value) => {
    const make = entryMaker()
    const body = { weight: { value, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: null } as const
    expect(read([make({ kind: 'weight', body })]).text).toContain(`"value": ${value},`)
  },
)

test('A leading nought, which JSON forbids, is dropped and nothing else', () => {
  const make = entryMaker()
  const body = { weight: { value: '08.20', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: null } as const
  expect(read([make({ kind: 'weight', body })]).text).toContain('"value": 8.20,')
})

test('What was not assessed has a reason and no answer', () => {
  const make = entryMaker()
  const entry = make({ kind: 'check' })
  const body = { ...(entry.body as object), blink: 'not-assessed', tearTest: null } as Entry['body']
  const [look] = of('Observation', read([{ ...entry, body }]))
  const part = (code: string) => look.component.find((one: Json) => one.code.coding[0].code === code)
  for (const code of ['blink', 'tear-test']) {
    expect(part(code).dataAbsentReason.coding[0]).toEqual({
      system: 'http://terminology.hl7.org/CodeSystem/data-absent-reason',
      code: 'not-performed',
    })
    expect(Object.keys(part(code)).filter((key) => key.startsWith('value'))).toEqual([])
  }
})

test('A year stays a year and a month a month', () => {
  const make = entryMaker()
  const [told] = of('Observation', read([make({ kind: 'history-item' })]))
  expect(told.effectivePeriod).toEqual({ start: '2019' })
  const [event] = of('AdverseEvent', read([make({ kind: 'late-event' })]))
  expect(event.date).toBe('2026-09')
})

test('The side is a word, and the other ear is never named', () => {
  const [operation] = of('Procedure', read(exampleEntries()))
  expect(operation.bodySite[0].text).toBe('LEFT ear')
  expect(JSON.stringify(operation)).not.toContain('RIGHT')
})

describe('The numbers of a laboratory', () => {
  const drugOf = (raw: string) => {
    const make = entryMaker()
    const body: BodyOf<'specimen-result'> = {
      ...emptyReport,
      specimen: '0190a7c2-0000-7000-8000-000000000001',
      status: 'final',
      growth: 'growth',
      isolates: [printedIsolate('1', 'Staphylococcus pseudintermedius', [['marbofloxacin', raw]])],
    }
    return of('Observation', read([make({ kind: 'specimen-result', body })])).find(({ code }) =>
      code.coding?.some((one: Json) => one.code === 'marbofloxacin'),
    )
  }

  // hl7.org/fhir/R4/datatypes.html#Quantity: comparator is one of <, <=, >=, >.
  it('are quantities with their comparator when they can be read whole', () => {
    expect(drugOf('<=0.5 mg/L').valueQuantity).toMatchObject({ value: 0.5, comparator: '<=', code: 'mg/L' })
    expect(drugOf('18 mm').valueQuantity).toMatchObject({ value: 18, code: 'mm' })
  })

  it.each(['0.5', '<=0,5 mg/L', 'R', '<=1/19 mg/L', '~2 mg/L', '≤0.5 mg/L'])('stay text when written %s', (raw) => {
    expect(drugOf(raw)).toMatchObject({ valueString: raw })
    expect(drugOf(raw).valueQuantity).toBeUndefined()
  })
})

test('A report is found by the number of its laboratory, and the laboratory’s own category stands beside the number', () => {
  const make = entryMaker()
  const resources = read([make({ kind: 'specimen-result' })])
  const [report] = of('DiagnosticReport', resources)
  expect(report.identifier).toEqual([{ system: 'urn:quiet-ear:ids', value: 'NL-26-00417' }])
  const tested = of('Observation', resources).find(({ valueQuantity }) => valueQuantity !== undefined)
  // hl7.org/fhir/R4/diagnosticreport-micro1: interpretation of the value set ObservationInterpretation.
  expect(tested.interpretation[0].coding[0]).toMatchObject({
    system: 'http://terminology.hl7.org/CodeSystem/v3-ObservationInterpretation',
    code: 'S',
  })
})

test('A systolic pressure alone stands in the panel with the diastolic said to be unknown', () => {
  const make = entryMaker()
  const systolic = {
    what: 'systolic',
    value: { value: '118', unit: 'mm[Hg]' },
    method: 'Doppler',
    artefact: false,
  } as const
  const body: BodyOf<'observation'> = {
    where: 'ward',
    values: [systolic],
    pain: null,
    first: null,
    side: null,
    unmeasured: null,
    text: null,
  }
  const [panel] = of('Observation', read([make({ kind: 'observation', body })]))
  // hl7.org/fhir/R4/bp.html: 85354-9 with 8480-6 and 8462-4.
  expect(panel.code.coding[0].code).toBe('85354-9')
  expect(panel.component.map((one: Json) => one.code.coding[0].code)).toEqual(['8480-6', '8462-4'])
  expect(panel.component[1].dataAbsentReason.coding[0].code).toBe('unknown')
})

test('An artefact is no value; its digits stay readable in the note', () => {
  const make = entryMaker()
  const wrong = { what: 'heart-rate', value: { value: '240', unit: '/min' }, method: null, artefact: true } as const
  const body: BodyOf<'observation'> = {
    where: 'theatre',
    values: [wrong],
    pain: null,
    first: null,
    side: null,
    unmeasured: null,
    text: null,
  }
  const [heart] = of('Observation', read([make({ kind: 'observation', body })]))
  expect(heart.valueQuantity).toBeUndefined()
  expect(heart.dataAbsentReason.coding[0].code).toBe('error')
  expect(heart.note[0].text).toContain('240 /min')
})

describe('What was corrected', () => {
  const make = entryMaker()
  const weighed = (value: string) =>
    ({ weight: { value, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: null }) as const
  const wrong = make({ kind: 'weight', body: weighed('81.4') })
  const right = make({ kind: 'weight', body: weighed('18.4'), supersedes: [wrong.id], reason: 'Digits swapped.' })
  const taken = make({ kind: 'weight', body: weighed('5.55') })
  const back = make({ kind: 'withdrawal', withdraws: taken.id, reason: 'Another dog.' })

  it('is not told as a fact any more; the trail says who changed what and why', () => {
    const now = read([wrong, right])
    expect(of('Observation', now).map(({ valueQuantity }) => valueQuantity.value)).toEqual([18.4])
    const trail = of('Provenance', now).find(({ entity }) => entity[0].role === 'revision')
    expect(trail.target[0].reference).toBe(`urn:uuid:${right.id}`)
    expect(trail.entity[0]).toMatchObject({ role: 'revision', what: { identifier: { value: `urn:uuid:${wrong.id}` } } })
    expect(trail.reason[0].text).toBe('Digits swapped.')
  })

  it('is entered in error when it was taken back', () => {
    const now = read([right, wrong, taken, back])
    const marked = of('Observation', now).filter(({ status }) => status === 'entered-in-error')
    expect(marked.map(({ id }) => id)).toEqual([taken.id])
    expect(of('Provenance', now).map(({ entity }) => entity[0].role)).toEqual(['source', 'revision', 'removal'])
    expect(breaches(now)).toEqual([])
  })
})

test('Two entries that contradict each other are both marked as standing side by side', () => {
  const make = entryMaker()
  const entries = [make({ kind: 'booking' }), make({ kind: 'booking' })]
  const requests = of('ServiceRequest', read(entries))
  expect(requests.map(({ meta }) => meta.tag[0].code)).toEqual(['side-by-side', 'side-by-side'])
  const twice = [make({ kind: 'identity' }), make({ kind: 'identity' })]
  expect(of('Patient', read(twice))[0].meta.tag[0].code).toBe('side-by-side')
})

// hl7.org/fhir/R4/vitalsigns.html, vs-1: the time of a vital sign is precise to the day.
test('A weight of some month carries no public code of a vital sign', () => {
  const make = entryMaker()
  const happenedAt = {
    at: '2024-03-01T00:00:00.000Z',
    zone: 'Europe/London',
    precision: 'month',
    by: 'person',
  } as const
  const [coarse] = of('Observation', read([make({ kind: 'weight', happenedAt })]))
  expect(coarse.effectiveDateTime).toBe('2024-03')
  expect(JSON.stringify(coarse.code)).not.toContain('loinc')
  const [fine] = of('Observation', read([make({ kind: 'weight' })]))
  expect(fine.code.coding[0]).toMatchObject({ system: 'http://loinc.org', code: '29463-7' })
})

test('After a death the animal has its day, medicines are stopped and nothing is asked of the owner', () => {
  const make = entryMaker({}, 9)
  const now = read([...exampleEntries(), make({ kind: 'death', at: '2026-02-14T08:00:00.000Z' })])
  expect(of('Patient', now)[0].deceasedDateTime).toBe('2026-02-14T08:00:00+00:00')
  expect([...new Set(of('MedicationRequest', now).map(({ status }) => status))]).toEqual(['stopped'])
  expect(breaches(now)).toEqual([])
})

/** What one medicine of the worked discharge becomes, with some of its answers replaced. */
function homeRequest(wanted: Partial<BodyOf<'discharge'>['medicines'][number]>, species: 'dog' | 'cat' = 'dog'): Json {
  const entries = exampleEntries().map((entry) => {
    const body = entry.body as Json
    if (entry.kind === 'identity') return { ...entry, body: { ...body, species } }
    if (entry.kind !== 'discharge') return entry
    return { ...entry, body: { ...body, medicines: [{ ...body.medicines[0], ...wanted }] } }
  })
  const now = read(entries, '2026-02-13T07:00:00.000Z')
  expect(breaches(now)).toEqual([])
  return of('MedicationRequest', now)[0]
}

// hl7.org/fhir/R4/valueset-medicationrequest-status.html: on-hold, "actions ... are to be temporarily halted".
test('A medicine for which the page for home is held is on hold with the reason, and one that is not is active', () => {
  const each = { strength: { value: '500', unit: 'mg/{tablet}' }, each: '0.25' } as const
  const held = homeRequest({ drug: 'paracetamol', label: 'Paracetamol', ...each }, 'cat')
  expect(held.status).toBe('on-hold')
  expect(held.statusReason.text).toMatch(/paracetamol/i)
  expect(homeRequest({})).toMatchObject({ status: 'active' })
  expect(homeRequest({}).statusReason).toBeUndefined()
})

test('What goes into an eye says nothing of food', () => {
  const gel = { drug: 'carbomer', label: 'Gel', form: 'eye-gel', side: 'LEFT', strength: null } as const
  expect(homeRequest(gel).dosageInstruction[0].additionalInstruction ?? []).toEqual([])
  expect(homeRequest({}).dosageInstruction[0].additionalInstruction).toHaveLength(1)
})

test('A home medicine keeps its clock times on both sides of a clock change', () => {
  const [, twice] = of('MedicationRequest', read(exampleEntries()))
  const [{ timing, doseAndRate }] = twice.dosageInstruction
  expect(timing.repeat).toMatchObject({ frequency: 2, period: 1, periodUnit: 'd', timeOfDay: ['08:00:00', '20:00:00'] })
  expect(doseAndRate[0].doseQuantity).toMatchObject({ value: 0.5, code: '{tablet}' })
})

// hl7.org/fhir/R4/datatypes.html#string: no control characters below 32 except tab, line feed and carriage return.
test('Words that FHIR forbids are replaced by a mark and everything else stays as it was typed', () => {
  const make = entryMaker()
  const text = `a\u0000b\u001bc\td\n"e" <f> \ud800 😀 שלום`
  const [told] = of('Observation', read([make({ kind: 'history-item', body: { ...history, text } })]))
  expect(told.valueString).toBe(`a\ufffdb\ufffdc\td\n"e" <f> \ufffd 😀 שלום`)
})

// hl7.org/fhir/R4/<resource>.html: which types a reference may point to, for the elements that we fill.
const targets: Readonly<Record<string, readonly string[]>> = {
  subject: ['Patient'],
  patient: ['Patient'],
  for: ['Patient'],
  specimen: ['Specimen'],
  result: ['Observation'],
  hasMember: ['Observation'],
  imagingStudy: ['ImagingStudy'],
  partOf: ['Procedure'],
  basedOn: ['ServiceRequest'],
  request: ['ServiceRequest'],
  sourceReference: ['QuestionnaireResponse'],
  managingOrganization: ['Organization'],
}

test('References point to types that may stand there, also when an entry names the wrong one', () => {
  const make = entryMaker()
  const note = make({ kind: 'weight' })
  const example = make({ kind: 'specimen-result' })
  const wrong = { ...example, body: { ...(example.body as object), specimen: note.id } as Entry['body'] }
  for (const { resources } of [read(exampleEntries()), read([note, wrong])]) {
    const types = new Map(resources.map(({ id, resourceType }) => [`urn:uuid:${id}`, resourceType]))
    for (const [element, value] of resources
      .flatMap(within)
      .flatMap((one) => Object.entries(one) as [string, Json][])) {
      for (const { reference } of targets[element] === undefined ? [] : [value].flat()) {
        if (reference !== undefined) expect(targets[element]).toContain(types.get(reference))
      }
    }
  }
  const [report] = of('DiagnosticReport', read([note, wrong]))
  expect(report.specimen[0].identifier.value).toBe(`urn:uuid:${note.id}`)
})

describe('Any case', () => {
  const names = kinds.filter(({ subjects }) => subjects.some((kind) => kind !== 'clinic')).map(({ name }) => name)
  const step = fc.record({
    kind: fc.constantFrom(...(names as KindName[])),
    does: fc.constantFrom('stands', 'corrects', 'withdraws'),
    at: fc.integer({ min: 0, max: 400 }),
    of: fc.nat(),
  })

  it('makes a bundle whose references resolve and whose resources have what R4 requires', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const make = entryMaker()
        const entries: Entry[] = []
        for (const { kind, does, at, of: place } of steps) {
          const target = entries[place % Math.max(1, entries.length)]
          const when = { at: new Date(Date.UTC(2026, 0, 1 + at, 9)).toISOString() }
          if (target === undefined || does === 'stands') entries.push(make({ kind, ...when }))
          else if (does === 'corrects')
            entries.push(
              make({ kind: target.kind as KindName, ...when, supersedes: [target.id], reason: 'Corrected.' }),
            )
          else entries.push(make({ kind: 'withdrawal', ...when, withdraws: target.id, reason: 'Wrong.' }))
        }
        const now = read(entries)
        expect(breaches(now)).toEqual([])
        const told = new Set(now.resources.map(({ id }) => id))
        const { lines } = fileAround(entries).theCase
        for (const { header, state } of lines) if (state === 'superseded') expect(told).not.toContain(header.id)
      }),
      { numRuns: 150 },
    )
  })
})
