import { emptyReport } from '#core/culture/empty-report.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { agreedWithOwner } from './agreed.ts'
import { Chart, moment } from './chart.ts'
import { demoClinic, staff, zone } from './practice.ts'
import { preparedMoss } from './prepared.ts'
import { confirmSide, labelAndSignOut } from './sign-out.ts'
import { giver, mg, mL, planAndCheck, stamp, writeCheck } from './writers.ts'

/**
 * An invented old cat with a bleeding mass in the right ear: biopsy first, then the canal out. Horner's syndrome that
 * passes, a tumour in the report, and a death of another cause in the sixth month, which ends everything that was owed.
 */
const stream = 'case:moss'
const animal: Subject = { kind: 'animal', animal: 'animal-moss' }
const right: Subject = { kind: 'ear', animal: 'animal-moss', side: 'RIGHT' }
const left: Subject = { kind: 'ear', animal: 'animal-moss', side: 'LEFT' }
const operation: Subject = { kind: 'operation', animal: 'animal-moss', operation: 'operation-moss-right' }
const home: Subject = { kind: 'household', household: 'household-fennimore' }

const { holm, adeyemi, lindqvist, castellane, moretti } = staff

export function moss(): Chart {
  const chart = new Chart(demoClinic, stream, zone)
  referral(chart)
  workUp(chart)
  const agreed = choiceAndAgreement(chart)
  theatre(chart, agreed)
  ward(chart)
  afterwards(chart)
  preparedMoss(chart, { animal, operation, LEFT: left, RIGHT: right })
  signedOut(chart)
  return chart
}

/** Before he left theatre; written after the rest, so that no other entry gets another id. */
function signedOut(chart: Chart): void {
  const items = [{ what: 'swabs', expected: 15, found: 15 }]
  chart.write(
    'count',
    { at: '2025-06-03 10:02', by: castellane, subject: operation },
    { when: 'before', items, throatPack: 'none-used' },
  )
  confirmSide(chart, operation, '2025-06-03 11:32')
  labelAndSignOut(chart, operation, { labelled: '2025-06-03 11:12', signed: '2025-06-03 11:33' })
  stamp(chart, operation, '2025-06-03 11:42', 'tube-out')
}

function referral(chart: Chart): void {
  chart.write(
    'household',
    { at: '2025-05-12 14:02', by: moretti, subject: home },
    {
      contacts: [{ contact: 'contact-fennimore', roles: ['owner', 'nurses-at-home', 'pays'], mayConsent: true }],
      language: 'en',
      otherAnimals: 'One more cat',
    },
  )
  chart.write(
    'identity',
    { at: '2025-05-12 14:04', by: moretti, subject: animal },
    {
      name: 'Moss',
      species: 'cat',
      breed: 'Domestic shorthair',
      sex: 'male',
      neutered: 'yes',
      born: moment('2013', zone),
      chip: null,
      household: 'household-fennimore',
      referringVet: 'contact-park',
      flatFace: 'no',
      abcb1: 'unknown',
    },
  )
  chart.write(
    'referral',
    { at: '2025-05-12 14:10', by: moretti, subject: animal },
    {
      caller: 'owner',
      contact: 'contact-fennimore',
      reportedSide: 'RIGHT',
      complaint: 'A dark lump in the right ear that bleeds when he scratches.',
      daysOfSigns: 60,
      signs: [
        { sign: 'bleeding-mass', answer: 'yes' },
        { sign: 'head-tilt', answer: 'no' },
        { sign: 'falling', answer: 'no' },
        { sign: 'drooped-face', answer: 'no' },
        { sign: 'not-eating', answer: 'no' },
      ],
      drugAllergy: { answer: 'not-asked', what: null },
      urgency: 'this-week',
      because: 'A bleeding mass in an old cat; no sign of a nerve.',
      mayFetchRecords: 'yes',
    },
  )
}

function workUp(chart: Chart): void {
  const reported = chart.write(
    'weight',
    { at: '2025-05-12 14:12', by: moretti, subject: animal },
    { weight: { value: '4.5', unit: 'kg' }, typed: null, how: 'reported', bodyCondition: null },
  )
  chart.write(
    'weight',
    {
      at: '2025-05-19 10:05',
      by: lindqvist,
      subject: animal,
      supersedes: [reported],
      reason: 'Weighed here; the owner had guessed.',
    },
    { weight: { value: '4.2', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 4 },
  )
  chart.write(
    'ear-findings',
    { at: '2025-05-19 10:20', by: holm, subject: right },
    {
      examined: 'awake',
      canalFeel: 'thick',
      painOnPressing: 'no',
      painOnJawOpening: 'no',
      swelling: 'no',
      drainingTract: 'no',
      discharge: 'bloody',
      stenosis: 'severe',
      drum: 'could-not-see',
      mass: 'yes',
      massPlace: 'vertical',
      massSize: 'large',
      flapCarriage: 'erect',
      otis3: { erythema: 2, swelling: 2, erosion: 2, exudate: 2 },
      text: 'A lobed dark mass fills the vertical canal.',
    },
  )
  chart.write(
    'ear-findings',
    { at: '2025-05-19 10:22', by: holm, subject: left },
    {
      examined: 'awake',
      canalFeel: 'soft',
      painOnPressing: 'no',
      painOnJawOpening: 'no',
      swelling: 'no',
      drainingTract: 'no',
      discharge: 'none',
      stenosis: 'none',
      drum: 'not-assessed',
      mass: 'no',
      massPlace: 'not-assessed',
      massSize: 'not-assessed',
      flapCarriage: 'erect',
      otis3: { erythema: 0, swelling: 0, erosion: 0, exudate: null },
      text: 'He would not let the second cone in: drum not seen.',
    },
  )
  const face = {
    blink: 'normal',
    lipOrEarDroop: 'no',
    nostril: 'moist',
    pupil: 'normal',
    thirdEyelidUp: 'no',
    fluorescein: 'negative',
  } as const
  chart.write(
    'baseline',
    { at: '2025-05-19 10:30', by: holm, subject: animal },
    {
      beforeSedation: true,
      drugsOnBoard: [],
      LEFT: { ...face, tearTest: { value: '14', unit: 'mm/min' } },
      RIGHT: { ...face, tearTest: { value: '13', unit: 'mm/min' } },
      headTilt: 'none',
      nystagmus: 'no',
      unsteady: 'no',
      gag: 'not-assessed',
      hears: 'not-assessed',
    },
  )
  chart.write(
    'imaging',
    { at: '2025-05-20 11:00', by: holm, subject: animal, writtenAfter: 60 },
    {
      modality: 'CT',
      study: 'invented-study-31',
      reportedBy: 'Radiologist on call',
      LEFT: {
        bulla: 'air',
        bullaWall: 'normal',
        canalMineral: 'no',
        mass: 'no',
        massPlace: 'not-reported',
        massSize: 'not-reported',
      },
      RIGHT: {
        bulla: 'air',
        bullaWall: 'normal',
        canalMineral: 'no',
        mass: 'yes',
        massPlace: 'vertical',
        massSize: 'large',
      },
      text: 'Soft tissue mass of the right vertical canal reaching the horizontal canal; bulla holds air. Nodes and chest without change.',
    },
  )
  const biopsy = chart.write(
    'specimen',
    { at: '2025-05-20 11:20', by: castellane, subject: right },
    {
      site: 'mass',
      tests: ['histology'],
      label: 'M-1',
      laboratory: 'contact-laboratory',
      antibioticsOnBoard: 'none',
      expectedBy: moment('2025-05-28', zone),
      operation: null,
    },
  )
  loop(
    chart,
    biopsy,
    '2025-05-27 15:00',
    'Ceruminous gland adenocarcinoma.',
    'A malignant tumour of the canal; removal of the whole canal is offered.',
  )
}

/** Result, reading, owner and referring vet told: the loop closed. */
function loop(chart: Chart, specimen: string, at: string, text: string, decision: string): void {
  const result = chart.write(
    'specimen-result',
    { at, by: { kind: 'import', from: 'contact-laboratory' }, subject: right },
    { ...emptyReport, specimen, status: 'final', growth: 'not-a-culture', text },
  )
  const day = at.slice(0, 10)
  chart.write(
    'result-read',
    { at: `${day} 17:00`, by: holm, subject: right },
    { result, decision: 'no-change', edition: null, text: decision },
  )
  chart.write(
    'told',
    { at: `${day} 17:15`, by: holm, subject: right },
    { about: result, who: 'owner', contact: 'contact-fennimore', by: 'phone', text: null },
  )
  chart.write(
    'told',
    { at: `${day} 17:30`, by: holm, subject: right },
    { about: result, who: 'referring-vet', contact: 'contact-park', by: 'email', text: null },
  )
}

function choiceAndAgreement(chart: Chart): string {
  chart.write(
    'choice',
    { at: '2025-05-28 16:00', by: holm, subject: right },
    {
      options: [
        { option: 'teca-lbo', answer: 'chosen', because: 'A malignant tumour that reaches the horizontal canal.' },
        {
          option: 'vertical-canal-ablation',
          answer: 'declined',
          because: 'The tumour reaches deeper than the vertical canal.',
        },
        { option: 'no-treatment', answer: 'declined', because: 'The mass bleeds and will grow.' },
        { option: 'euthanasia', answer: 'declined', because: 'Named once, without pressure.' },
      ],
      session: 'one-ear',
      for: ['Tumour named by biopsy', 'No spread seen in nodes and chest'],
      against: ['His age', 'Horner’s syndrome and a weak face are frequent in cats'],
      missing: ['Drum of the left ear was not seen'],
    },
  )
  return chart.write(
    'agreement',
    { at: '2025-05-28 16:40', by: holm, subject: animal },
    agreedWithOwner({
      ears: [{ side: 'RIGHT', procedure: 'teca-lbo' }],
      low: '2500.00',
      high: '3200.00',
      consentBy: 'contact-fennimore',
      resuscitate: 'only-drugs',
      photographs: 'teaching',
      withHelp: ['two-risks'],
    }),
  )
}

function theatre(chart: Chart, agreed: string): void {
  chart.write(
    'booking',
    { at: '2025-05-28 16:50', by: moretti, subject: operation },
    {
      side: 'RIGHT',
      procedure: 'teca-lbo',
      agreement: agreed,
      plannedFor: moment('2025-06-03 09:30', zone),
      surgeon: holm,
      anaesthetist: adeyemi,
    },
  )
  chart.write(
    'weight',
    { at: '2025-06-03 08:10', by: lindqvist, subject: animal },
    { weight: { value: '4.1', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 4 },
  )
  planAndCheck(chart, operation, 'our usual plan, cat', '2025-06-03 08:20', '2025-06-03 08:30')

  const given = giver(chart, operation)
  given('2025-06-03 08:35', {
    drug: 'maropitant',
    amount: mg('4.1'),
    volume: mL('0.41'),
    route: 'SC',
    use: 'antiemetic',
    line: 'antiemetic',
  })
  given('2025-06-03 09:10', {
    drug: 'methadone',
    amount: mg('1.2'),
    volume: mL('0.12'),
    route: 'IM',
    use: 'analgesia_bolus',
    line: 'opioid',
    ampoule: 'M-0603-1',
  })
  given('2025-06-03 09:10', {
    drug: 'midazolam',
    amount: mg('0.8'),
    volume: mL('0.16'),
    route: 'IM',
    use: 'premed',
    line: 'premedication',
  })
  chart.write(
    'drug-wasted',
    { at: '2025-06-03 09:12', by: adeyemi, subject: operation },
    { drug: 'methadone', amount: mg('8.8'), ampoule: 'M-0603-1', witness: castellane, because: 'Rest of the ampoule.' },
  )
  given('2025-06-03 09:28', {
    drug: 'alfaxalone',
    amount: mg('7'),
    volume: mL('0.7'),
    route: 'IV',
    use: 'induction',
    line: 'induction',
  })
  stamp(chart, operation, '2025-06-03 09:10', 'premedication')
  stamp(chart, operation, '2025-06-03 09:29', 'anaesthesia-start')
  stamp(chart, operation, '2025-06-03 09:50', 'skin-mark', { side: 'RIGHT' })
  given('2025-06-03 09:31', {
    drug: 'isoflurane',
    amount: { value: '1.6', unit: '%{vol}' },
    volume: null,
    route: 'INH',
    use: 'maintenance',
    line: 'maintenance',
  })
  given('2025-06-03 09:40', {
    drug: 'cefazolin',
    amount: mg('90'),
    volume: mL('0.9'),
    route: 'IV',
    use: 'antibiotic_periop',
    line: 'antibiotic',
  })
  given('2025-06-03 09:46', {
    drug: 'bupivacaine',
    amount: mg('2'),
    volume: mL('0.4'),
    route: 'perineural',
    site: 'great auricular and auriculotemporal nerves, RIGHT',
    use: 'local_block',
    line: 'block',
  })
  const k = (at: string, checkpoint: string, detail: Record<string, string> = {}, text: string | null = null) =>
    stamp(chart, operation, at, checkpoint, detail, text)
  k('2025-06-03 10:05', 'incision')
  k('2025-06-03 10:05', 'k1-skin', { cut: 'circular' })
  k('2025-06-03 10:16', 'k2-vertical-canal', { plane: 'on-cartilage', parotid: 'pushed-away' })
  k('2025-06-03 10:27', 'k3-facial-nerve', { nerve: 'seen', state: 'free', held: 'not-held' })
  k('2025-06-03 10:38', 'k4-horizontal-canal', { cut: 'flush', specimen: 'whole', marked: 'yes' })
  k('2025-06-03 10:44', 'k5-meatus-lining', { lining: 'out-entire' })
  k('2025-06-03 10:52', 'k6-bulla', { tool: 'rongeurs', opening: 'wide', wall: 'normal' })
  const specimen = chart.write(
    'specimen',
    { at: '2025-06-03 10:53', by: castellane, subject: right },
    {
      site: 'canal-tissue',
      tests: ['histology'],
      label: 'M-2',
      laboratory: 'contact-laboratory',
      antibioticsOnBoard: 'cefazolin since 09:40',
      expectedBy: moment('2025-06-13', zone),
      operation: 'operation-moss-right',
    },
  )
  chart.write(
    'theatre-stamp',
    { at: '2025-06-03 10:54', by: castellane, subject: operation },
    {
      checkpoint: 'k7-sample',
      answer: 'not-done',
      detail: {},
      text: 'the bulla was dry and clean; only the canal was sent',
    },
  )
  k('2025-06-03 10:58', 'k8-curettage', { content: 'dry', cleared: 'complete', 'left-alone': 'yes' })
  k('2025-06-03 11:02', 'k9-lavage', { 'in-ml': '20', warm: 'yes' })
  k('2025-06-03 11:06', 'k10-haemostasis', { bleeding: 'none' })
  // The recovered lavage was not measured: the loss stays a span.
  chart.write(
    'blood-loss',
    { at: '2025-06-03 11:08', by: castellane, subject: operation },
    {
      jar: { value: '24', unit: 'mL' },
      lavageIn: { value: '20', unit: 'mL' },
      lavageInJar: null,
      swabs: [{ dry: { value: '5', unit: 'g' }, wet: { value: '9', unit: 'g' }, saline: { value: '1', unit: 'mL' } }],
    },
  )
  k('2025-06-03 11:10', 'k11-local-anaesthetic', { given: 'none', ceiling: 'within' })
  k('2025-06-03 11:11', 'k12-drain', { drain: 'none' })
  k('2025-06-03 11:18', 'k13-pinna', { colour: 'pink' })
  k('2025-06-03 11:24', 'k14-closure', { layers: '2', 'dead-space': 'closed', 't-junction': 'no-t' })
  chart.write(
    'count',
    { at: '2025-06-03 11:26', by: castellane, subject: operation },
    { when: 'final', items: [{ what: 'swabs', expected: 15, found: 15 }], throatPack: 'out' },
  )
  k('2025-06-03 11:26', 'k15-counts', { counts: 'agree', 'throat-pack': 'out' })
  k('2025-06-03 11:27', 'closed')
  given('2025-06-03 11:30', {
    drug: 'meloxicam',
    amount: mg('0.8'),
    volume: mL('0.4'),
    route: 'SC',
    use: 'nsaid',
    line: 'nsaid',
  })
  chart.write(
    'operation-summary',
    { at: '2025-06-03 12:20', by: holm, subject: operation },
    {
      side: 'RIGHT',
      procedure: 'teca-lbo',
      surgeon: holm,
      assistant: null,
      anaesthetist: adeyemi,
      incisionAt: moment('2025-06-03 10:05', zone),
      closedAt: moment('2025-06-03 11:27', zone),
      mainReason: 'tumour',
      indication: 'Ceruminous gland adenocarcinoma of the right ear canal.',
      findings: 'Tumour within the canal, removed whole; bulla dry.',
      complications: [],
      drain: false,
      plan: 'Watch pupil, blink and breathing. Margins expected by 13 June.',
      signedBy: holm,
      remark: null,
    },
  )
  afterTheatre(chart, specimen)
}

function afterTheatre(chart: Chart, specimen: string): void {
  loop(
    chart,
    specimen,
    '2025-06-12 14:30',
    'Ceruminous gland adenocarcinoma, margins free of tumour.',
    'Margins free; nodes to be felt at every visit.',
  )
}

/** He was always looked at by the surgeon, and blinked. */
function check(chart: Chart, at: string, body: Partial<BodyOf<'check'>>): void {
  writeCheck(chart, right, at, holm, { wound: 'closed', blink: 'normal', fluorescein: 'negative', ...body })
}

function ward(chart: Chart): void {
  chart.write(
    'observation',
    { at: '2025-06-03 12:05', by: lindqvist, subject: animal },
    {
      where: 'recovery',
      values: [],
      pain: null,
      first: 'blink',
      side: 'RIGHT',
      unmeasured: null,
      text: 'First full blink on the right.',
    },
  )
  chart.write(
    'observation',
    { at: '2025-06-03 16:00', by: lindqvist, subject: animal },
    {
      where: 'ward',
      values: [],
      pain: { scale: 'composite, cat', score: 3, outOf: 20 },
      first: 'eaten',
      side: null,
      unmeasured: null,
      text: null,
    },
  )
  check(chart, '2025-06-04 08:30', {
    horner: 'yes',
    text: 'Small pupil and third eyelid up on the right: Horner’s syndrome, not pain.',
  })
  chart.write(
    'discharge',
    { at: '2025-06-05 11:00', by: lindqvist, subject: animal },
    {
      medicines: [
        {
          drug: 'amoxicillin-clavulanate',
          label: 'Amoxicillin and clavulanic acid 50 mg tablets',
          purpose: 'infection',
          form: 'tablet',
          strength: { value: '50', unit: 'mg/{tablet}' },
          each: '1',
          side: null,
          times: ['08:00', '20:00'],
          firstDay: '2025-06-05',
          firstTime: '20:00',
          days: 7,
          withFood: 'either',
          onDays: 'every-day',
          steps: [],
        },
      ],
      collarUntil: '2025-06-17',
      sutures: 'to-come-out',
      food: 'Soft food for two weeks.',
      rest: 'Indoors until the sutures are out.',
      eyeCare: null,
      nextVisit: '2025-06-16',
      taught: [
        { item: 'collar', answer: 'own-words' },
        { item: 'when-to-phone', answer: 'own-words' },
        { item: 'medicines', answer: 'own-words' },
      ],
      taughtBy: lindqvist,
      carer: null,
    },
  )
}

function afterwards(chart: Chart): void {
  const call = (at: string, reached: 'yes' | 'no', text: string) =>
    chart.write(
      'call',
      { at, by: lindqvist, subject: animal },
      { contact: 'contact-fennimore', direction: 'we-called', channel: 'phone', reached, about: 'first-call', text },
    )
  call('2025-06-06 09:30', 'no', 'Nobody answered.')
  call('2025-06-06 16:00', 'yes', 'Eating; pupil still small; tablets go down.')
  check(chart, '2025-06-16 10:00', { sutures: 'out', horner: 'yes' })
  check(chart, '2025-07-01 10:00', { sutures: 'none', horner: 'no', text: 'Pupils equal.' })
  check(chart, '2025-09-02 10:30', { sutures: 'none', text: 'Nodes not enlarged.' })
  chart.write(
    'death',
    { at: '2025-11-20 15:00', by: moretti, subject: animal },
    {
      how: 'euthanasia',
      cause: 'Kidney failure, at the referring vet’s',
      relatedToEar: 'no',
      relatedToOperation: 'no',
      heardFrom: 'referring-vet',
    },
  )
}
