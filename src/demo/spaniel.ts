import { twelveMonthsQuestions } from '#content/questionnaires/twelve-months.ts'
import { questionsInEnglish } from '#content/wording/questions.ts'
import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { givenAnswers, posedIn } from '#core/questionnaire/put-together.ts'
import { emptyLook } from '#core/theatre/empty-look.ts'
import { agreedWithOwner } from './agreed.ts'
import { Chart, moment } from './chart.ts'
import { tansysDrawing } from './drawing.ts'
import { demoClinic, staff, zone } from './practice.ts'
import { preparedTansy } from './prepared.ts'
import { labelAndSignOut } from './sign-out.ts'
import { observeTansy } from './spaniel-anaesthetic.ts'
import { giver, mg, mL, planAndCheck, stamp, writeCheck } from './writers.ts'

/**
 * An invented springer spaniel whose left ear is closed after six years of disease: from the referral call to the
 * twelve-month check. Her face is weak for four weeks and comes back; her culture changes the antibiotic.
 */
const stream = 'case:tansy'
const animal: Subject = { kind: 'animal', animal: 'animal-tansy' }
const left: Subject = { kind: 'ear', animal: 'animal-tansy', side: 'LEFT' }
const right: Subject = { kind: 'ear', animal: 'animal-tansy', side: 'RIGHT' }
const operation: Subject = { kind: 'operation', animal: 'animal-tansy', operation: 'operation-tansy-left' }
const home: Subject = { kind: 'household', household: 'household-okafor' }

const { holm, adeyemi, lindqvist, castellane, moretti } = staff

export function tansy(): Chart {
  const chart = new Chart(demoClinic, stream, zone)
  referral(chart)
  workUp(chart)
  const agreed = choiceAndAgreement(chart)
  theatre(chart, agreed)
  ward(chart)
  results(chart)
  year(chart)
  drawnForOwner(chart)
  preparedTansy(chart, { animal, operation, LEFT: left, RIGHT: right })
  signedOut(chart)
  return chart
}

/** Before she left theatre; written after the rest, so that no other entry gets another id. */
function signedOut(chart: Chart): void {
  labelAndSignOut(chart, operation, { labelled: '2025-03-11 11:10', signed: '2025-03-11 11:32' })
}

/** Drawn at the table while the operation was explained; written after the rest, so that no other entry gets another id. */
function drawnForOwner(chart: Chart): void {
  chart.write('plate-drawing', { at: '2025-02-25 15:20', by: holm, subject: left }, tansysDrawing)
}

function referral(chart: Chart): void {
  chart.write(
    'household',
    { at: '2025-02-10 09:12', by: moretti, subject: home },
    {
      contacts: [
        { contact: 'contact-okafor', roles: ['owner', 'nurses-at-home', 'pays'], mayConsent: true },
        { contact: 'contact-bell', roles: ['nurses-at-home', 'in-emergency'], mayConsent: false },
      ],
      language: 'en',
      otherAnimals: null,
    },
  )
  chart.write(
    'identity',
    { at: '2025-02-10 09:14', by: moretti, subject: animal },
    {
      name: 'Tansy',
      species: 'dog',
      breed: 'English Springer Spaniel',
      sex: 'female',
      neutered: 'yes',
      born: moment('May 2017', zone),
      chip: '000000000001701',
      household: 'household-okafor',
      referringVet: 'contact-park',
      flatFace: 'no',
      abcb1: 'unknown',
    },
  )
  chart.write(
    'referral',
    { at: '2025-02-10 09:20', by: moretti, subject: animal },
    {
      caller: 'referring-vet',
      contact: 'contact-park',
      reportedSide: 'LEFT',
      complaint:
        'Six years of ear disease; the left canal cannot be entered any more and she cries when it is touched.',
      daysOfSigns: 2190,
      signs: [
        { sign: 'head-tilt', answer: 'no' },
        { sign: 'falling', answer: 'no' },
        { sign: 'drooped-face', answer: 'no' },
        { sign: 'mouth-will-not-open', answer: 'no' },
        { sign: 'swelling-under-ear', answer: 'no' },
        { sign: 'severe-pain', answer: 'yes' },
        { sign: 'eye-red-or-shut', answer: 'not-asked' },
      ],
      drugAllergy: { answer: 'no', what: null },
      urgency: 'this-week',
      because: 'Pain; no sign of a nerve, the jaw opens, no swelling.',
      mayFetchRecords: 'yes',
    },
  )
}

function workUp(chart: Chart): void {
  const history = (at: string, body: BodyOf<'history-item'>) =>
    chart.write('history-item', { at, by: lindqvist, subject: animal }, body)
  history('2025-02-24 09:05', {
    topic: 'ear-disease',
    text: 'Both ears since her second summer; the left never quiet since 2022.',
    from: moment('2019', zone),
    until: null,
    source: 'owner',
  })
  history('2025-02-24 09:07', {
    topic: 'skin',
    text: 'Licks her feet from May to October; two diet trials of eight weeks changed nothing.',
    from: moment('2019', zone),
    until: null,
    source: 'referring-vet',
  })
  history('2025-02-24 09:09', {
    topic: 'anaesthetic',
    text: 'Spayed and ear flushed; no trouble reported.',
    from: moment('March 2022', zone),
    until: null,
    source: 'records',
  })

  const medicine = (at: string, body: BodyOf<'medicine-before'>) =>
    chart.write('medicine-before', { at, by: lindqvist, subject: animal }, body)
  medicine('2025-02-24 09:12', {
    written: 'Prednisolone 5 mg tablets',
    substance: 'prednisolone',
    route: 'oral',
    dose: '2 tablets a day, then 1',
    from: moment('2025-01-06', zone),
    until: moment('2025-01-20', zone),
    ongoing: false,
    effect: 'partly',
  })
  medicine('2025-02-24 09:13', {
    written: 'Ear drops with an antibiotic, an antifungal and a steroid',
    substance: null,
    route: 'ear',
    dose: null,
    from: moment('2024', zone),
    until: moment('January 2025', zone),
    ongoing: false,
    effect: 'none',
  })

  chart.write(
    'weight',
    { at: '2025-02-24 09:18', by: lindqvist, subject: animal },
    { weight: { value: '18.6', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 },
  )

  chart.write(
    'ear-findings',
    { at: '2025-02-24 09:30', by: holm, subject: left },
    {
      examined: 'awake',
      canalFeel: 'bone-hard',
      painOnPressing: 'yes',
      painOnJawOpening: 'no',
      swelling: 'no',
      drainingTract: 'no',
      discharge: 'purulent',
      stenosis: 'closed',
      drum: 'could-not-see',
      mass: 'no',
      massPlace: 'not-assessed',
      massSize: 'not-assessed',
      flapCarriage: 'drop',
      otis3: { erythema: 3, swelling: 3, erosion: 2, exudate: 3 },
      text: null,
    },
  )
  chart.write(
    'ear-findings',
    { at: '2025-02-24 09:33', by: holm, subject: right },
    {
      examined: 'awake',
      canalFeel: 'thick',
      painOnPressing: 'no',
      painOnJawOpening: 'no',
      swelling: 'no',
      drainingTract: 'no',
      discharge: 'waxy',
      stenosis: 'mild',
      drum: 'intact',
      mass: 'no',
      massPlace: 'not-assessed',
      massSize: 'not-assessed',
      flapCarriage: 'drop',
      otis3: { erythema: 1, swelling: 1, erosion: 0, exudate: 1 },
      text: null,
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
    { at: '2025-02-24 09:40', by: holm, subject: animal },
    {
      beforeSedation: true,
      drugsOnBoard: [],
      LEFT: { ...face, tearTest: { value: '19', unit: 'mm/min' } },
      RIGHT: { ...face, tearTest: { value: '20', unit: 'mm/min' } },
      headTilt: 'none',
      nystagmus: 'no',
      unsteady: 'no',
      gag: 'present',
      hears: 'yes',
    },
  )
  chart.write(
    'imaging',
    { at: '2025-02-24 11:30', by: holm, subject: animal, writtenAfter: 180 },
    {
      modality: 'CT',
      study: 'invented-study-17',
      reportedBy: 'Radiologist on call',
      LEFT: {
        bulla: 'filled',
        bullaWall: 'thick',
        canalMineral: 'yes',
        mass: 'no',
        massPlace: 'not-reported',
        massSize: 'not-reported',
      },
      RIGHT: {
        bulla: 'air',
        bullaWall: 'normal',
        canalMineral: 'no',
        mass: 'no',
        massPlace: 'not-reported',
        massSize: 'not-reported',
      },
      text: 'Left canal mineral and closed over its length; left bulla filled, wall thick, no bone eaten away. Right bulla holds air.',
    },
  )
}

function choiceAndAgreement(chart: Chart): string {
  chart.write(
    'choice',
    { at: '2025-02-25 15:00', by: holm, subject: left },
    {
      options: [
        { option: 'teca-lbo', answer: 'chosen', because: 'The canal is closed and mineral and the bulla is filled.' },
        {
          option: 'medical-control',
          answer: 'declined',
          because: 'Two years of it failed; drops cannot reach the ear any more.',
        },
        { option: 'deep-flush', answer: 'declined', because: 'Nothing can be passed through the closed canal.' },
        { option: 'lateral-wall-resection', answer: 'declined', because: 'The horizontal canal is not healthy.' },
        { option: 'no-treatment', answer: 'declined', because: 'She is in pain every day.' },
        {
          option: 'euthanasia',
          answer: 'declined',
          because: 'Named once, without pressure; the owner wishes to treat.',
        },
      ],
      session: 'one-ear',
      for: ['Narrowing that cannot be reversed', 'Filled bulla on the scan', 'Treatment failed for two years'],
      against: ['Her allergy stays; the right ear needs care for life'],
      missing: [],
    },
  )
  return chart.write(
    'agreement',
    { at: '2025-02-25 15:45', by: holm, subject: animal },
    agreedWithOwner({
      ears: [{ side: 'LEFT', procedure: 'teca-lbo' }],
      low: '2900.00',
      high: '3600.00',
      consentBy: 'contact-okafor',
      resuscitate: 'yes',
      photographs: 'record-only',
      withHelp: ['eye-care'],
    }),
  )
}

function theatre(chart: Chart, agreed: string): void {
  chart.write(
    'booking',
    { at: '2025-02-25 16:00', by: moretti, subject: operation },
    {
      side: 'LEFT',
      procedure: 'teca-lbo',
      agreement: agreed,
      plannedFor: moment('2025-03-11 09:00', zone),
      surgeon: holm,
      anaesthetist: adeyemi,
    },
  )
  chart.write(
    'weight',
    { at: '2025-03-11 07:50', by: lindqvist, subject: animal },
    { weight: { value: '18.4', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 },
  )

  planAndCheck(chart, operation, 'our usual plan, dog', '2025-03-11 08:00', '2025-03-11 08:10')

  const given = giver(chart, operation)
  given('2025-03-11 08:05', {
    drug: 'maropitant',
    amount: mg('18'),
    volume: mL('1.8'),
    route: 'SC',
    use: 'antiemetic',
    line: 'antiemetic',
  })
  given('2025-03-11 08:45', {
    drug: 'methadone',
    amount: mg('5.5'),
    volume: mL('0.55'),
    route: 'IM',
    use: 'analgesia_bolus',
    line: 'opioid',
    ampoule: 'M-0311-1',
  })
  given('2025-03-11 08:45', {
    drug: 'dexmedetomidine',
    amount: { value: '55', unit: 'ug' },
    volume: mL('0.11'),
    route: 'IM',
    use: 'premed',
    line: 'premedication',
  })
  chart.write(
    'drug-wasted',
    { at: '2025-03-11 08:50', by: adeyemi, subject: operation },
    { drug: 'methadone', amount: mg('4.5'), ampoule: 'M-0311-1', witness: castellane, because: 'Rest of the ampoule.' },
  )

  const item = (at: string, pause: BodyOf<'pause-item'>['pause'], name: string, spokenBy: string) =>
    chart.write(
      'pause-item',
      { at, by: castellane, subject: operation },
      { pause, item: name, answer: 'yes', because: null, spokenBy, ledBy: castellane },
    )
  item('2025-03-11 09:00', 'before-anaesthesia', 'animal-band-and-consent', castellane)
  item('2025-03-11 09:00', 'before-anaesthesia', 'side-spoken-in-full', holm)
  item('2025-03-11 09:01', 'before-anaesthesia', 'baseline-face-and-eye', holm)
  given('2025-03-11 09:05', {
    drug: 'propofol',
    amount: mg('45'),
    volume: mL('4.5'),
    route: 'IV',
    use: 'induction',
    line: 'induction',
  })
  stamp(chart, operation, '2025-03-11 08:45', 'premedication')
  stamp(chart, operation, '2025-03-11 09:06', 'anaesthesia-start')
  stamp(chart, operation, '2025-03-11 09:25', 'skin-mark', { side: 'LEFT' })
  given('2025-03-11 09:08', {
    drug: 'isoflurane',
    amount: { value: '1.5', unit: '%{vol}' },
    volume: null,
    route: 'INH',
    use: 'maintenance',
    line: 'maintenance',
  })
  given('2025-03-11 09:15', {
    drug: 'cefazolin',
    amount: mg('400'),
    volume: mL('4'),
    route: 'IV',
    use: 'antibiotic_periop',
    line: 'antibiotic',
  })
  given('2025-03-11 09:25', {
    drug: 'bupivacaine',
    amount: mg('18'),
    volume: mL('3.6'),
    route: 'perineural',
    site: 'great auricular and auriculotemporal nerves, LEFT',
    use: 'local_block',
    line: 'block',
  })
  item('2025-03-11 09:40', 'before-incision', 'side-spoken-and-pointed', holm)
  item('2025-03-11 09:40', 'before-incision', 'specimens-wanted', holm)
  item('2025-03-11 09:41', 'before-incision', 'counts-before', castellane)
  chart.write(
    'count',
    { at: '2025-03-11 09:41', by: castellane, subject: operation },
    {
      when: 'before',
      items: [
        { what: 'swabs', expected: 20, found: 20 },
        { what: 'needles', expected: 4, found: 4 },
      ],
      throatPack: 'in',
    },
  )

  const k = (at: string, checkpoint: string, detail: Record<string, string> = {}, text: string | null = null) =>
    stamp(chart, operation, at, checkpoint, detail, text)
  k('2025-03-11 09:44', 'incision')
  k('2025-03-11 09:44', 'k1-skin', { cut: 't-shaped' })
  k('2025-03-11 09:56', 'k2-vertical-canal', { plane: 'on-cartilage', parotid: 'pushed-away' })
  k('2025-03-11 10:08', 'k3-facial-nerve', {
    nerve: 'seen',
    state: 'stuck',
    held: 'hand-retractor',
    'minutes-held': '6',
  })
  k('2025-03-11 10:20', 'k4-horizontal-canal', { cut: 'flush', specimen: 'whole', marked: 'yes' })
  k('2025-03-11 10:27', 'k5-meatus-lining', { lining: 'out-entire', notch: 'yes' })
  k('2025-03-11 10:36', 'k6-bulla', { tool: 'rongeurs', opening: 'wide', wall: 'thick' })
  k('2025-03-11 10:38', 'k7-sample', {
    taken: 'both',
    cultures: 'aerobic-and-anaerobic',
    material: 'tissue',
    canal: 'to-histology',
  })
  const specimen = (at: string, body: Omit<BodyOf<'specimen'>, 'laboratory' | 'antibioticsOnBoard' | 'operation'>) =>
    chart.write(
      'specimen',
      { at, by: castellane, subject: left },
      {
        laboratory: 'contact-laboratory',
        antibioticsOnBoard: 'cefazolin since 09:15',
        operation: 'operation-tansy-left',
        ...body,
      },
    )
  specimen('2025-03-11 10:38', {
    site: 'bulla-on-entry',
    tests: ['aerobic-culture', 'anaerobic-culture'],
    label: 'T-1',
    expectedBy: moment('2025-03-17', zone),
  })
  k('2025-03-11 10:47', 'k8-curettage', { content: 'keratin', cleared: 'complete', 'left-alone': 'yes' })
  k('2025-03-11 10:53', 'k9-lavage', { 'in-ml': '60', 'out-ml': '50', warm: 'yes' })
  specimen('2025-03-11 10:54', {
    site: 'bulla-after-lavage',
    tests: ['aerobic-culture', 'anaerobic-culture'],
    label: 'T-2',
    expectedBy: moment('2025-03-17', zone),
  })
  specimen('2025-03-11 10:55', {
    site: 'canal-tissue',
    tests: ['histology'],
    label: 'T-3',
    expectedBy: moment('2025-03-21', zone),
  })
  k('2025-03-11 10:58', 'k10-haemostasis', { bleeding: 'pressure', vessel: 'small-vessels' })
  chart.write(
    'blood-loss',
    { at: '2025-03-11 11:00', by: castellane, subject: operation },
    {
      jar: { value: '95', unit: 'mL' },
      lavageIn: { value: '60', unit: 'mL' },
      lavageInJar: { value: '50', unit: 'mL' },
      swabs: [
        { dry: { value: '10', unit: 'g' }, wet: { value: '31', unit: 'g' }, saline: { value: '3', unit: 'mL' } },
        { dry: { value: '10', unit: 'g' }, wet: { value: '24', unit: 'g' }, saline: { value: '2', unit: 'mL' } },
      ],
    },
  )
  given('2025-03-11 11:02', {
    drug: 'bupivacaine',
    amount: mg('18'),
    volume: mL('3.6'),
    route: 'splash',
    site: 'closed deep layer, LEFT',
    use: 'local_block',
    line: 'splash',
  })
  k('2025-03-11 11:03', 'k11-local-anaesthetic', { given: 'splash', ceiling: 'within' })
  k('2025-03-11 11:05', 'k12-drain', { drain: 'none' })
  k('2025-03-11 11:12', 'k13-pinna', { colour: 'pink' })
  k('2025-03-11 11:22', 'k14-closure', { layers: '3', 'dead-space': 'closed', 't-junction': 'without-tension' })
  chart.write(
    'count',
    { at: '2025-03-11 11:24', by: castellane, subject: operation },
    {
      when: 'final',
      items: [
        { what: 'swabs', expected: 20, found: 20 },
        { what: 'needles', expected: 4, found: 4 },
      ],
      throatPack: 'out',
    },
  )
  k('2025-03-11 11:24', 'k15-counts', { counts: 'agree', 'throat-pack': 'out' })
  k('2025-03-11 11:26', 'closed')
  given('2025-03-11 11:28', {
    drug: 'meloxicam',
    amount: mg('3.5'),
    volume: mL('0.7'),
    route: 'SC',
    use: 'nsaid',
    line: 'nsaid',
  })
  item('2025-03-11 11:30', 'before-leaving', 'procedure-and-side-done', holm)
  item('2025-03-11 11:30', 'before-leaving', 'specimens-labelled', castellane)
  item('2025-03-11 11:31', 'before-leaving', 'counts-and-throat-pack', castellane)

  observeTansy(chart, operation)
  k('2025-03-11 11:38', 'tube-out')
  chart.write(
    'operation-summary',
    { at: '2025-03-11 12:10', by: holm, subject: operation },
    {
      side: 'LEFT',
      procedure: 'teca-lbo',
      surgeon: holm,
      assistant: null,
      anaesthetist: adeyemi,
      incisionAt: moment('2025-03-11 09:44', zone),
      closedAt: moment('2025-03-11 11:26', zone),
      mainReason: 'chronic-otitis',
      indication: 'Closed, mineral left canal with a filled bulla after two years of failed treatment.',
      findings:
        'Bulla full of debris and thick lining; lining removed apart from the dorsomedial wall. Facial nerve stuck to the canal, freed in sight.',
      complications: ['nerve-stretched'],
      drain: false,
      plan: 'Lubricate the left eye until the blink is normal. Ward for two nights. Culture expected on 17 March.',
      signedBy: holm,
      remark: null,
    },
  )
}

function ward(chart: Chart): void {
  const observe = (at: string, body: Partial<BodyOf<'observation'>>) =>
    chart.write('observation', { at, by: lindqvist, subject: animal }, { ...emptyLook, where: 'ward', ...body })
  observe('2025-03-11 12:05', { where: 'recovery', first: 'sternal' })
  observe('2025-03-11 12:50', { where: 'recovery', first: 'normal-temperature' })
  observe('2025-03-11 13:00', {
    pain: { scale: 'composite, dog, short form', score: 5, outOf: 24 },
    text: 'Face not scored on the left.',
  })
  observe('2025-03-11 18:30', { first: 'eaten', pain: { scale: 'composite, dog, short form', score: 3, outOf: 24 } })
  const check = (at: string, by: string, body: Partial<BodyOf<'check'>>) => writeCheck(chart, left, at, by, body)
  check('2025-03-11 15:00', lindqvist, {
    wound: 'closed',
    blink: 'absent',
    possibleBlockEffect: true,
    text: 'Within eight hours of the block; eye lubricated.',
  })
  check('2025-03-12 08:00', holm, {
    wound: 'closed',
    blink: 'weak',
    lipOrEarDroop: 'yes',
    tearTest: { value: '16', unit: 'mm/min' },
    fluorescein: 'negative',
  })
  chart.write(
    'discharge',
    { at: '2025-03-13 10:30', by: lindqvist, subject: animal },
    {
      medicines: [
        {
          drug: 'meloxicam',
          label: 'Meloxicam 1 mg chewable tablets',
          purpose: 'pain and swelling',
          form: 'tablet',
          strength: { value: '1', unit: 'mg/{tablet}' },
          each: '2',
          side: null,
          times: ['18:00'],
          firstDay: '2025-03-13',
          firstTime: '18:00',
          days: 8,
          withFood: 'yes',
          onDays: 'every-day',
          steps: [],
        },
        {
          drug: 'amoxicillin-clavulanate',
          label: 'Amoxicillin and clavulanic acid 250 mg tablets',
          purpose: 'infection, until the culture is read',
          form: 'tablet',
          strength: { value: '250', unit: 'mg/{tablet}' },
          each: '1',
          side: null,
          times: ['08:00', '20:00'],
          firstDay: '2025-03-13',
          firstTime: '20:00',
          days: 28,
          withFood: 'either',
          onDays: 'every-day',
          steps: [],
        },
        {
          drug: 'carbomer',
          label: 'Carbomer eye gel',
          purpose: 'a moist left eye',
          form: 'eye-gel',
          strength: { value: '0.2', unit: '%' },
          each: '1',
          side: 'LEFT',
          times: ['07:00', '11:00', '15:00', '19:00', '23:00'],
          firstDay: '2025-03-13',
          firstTime: '11:00',
          days: 28,
          withFood: 'either',
          onDays: 'every-day',
          steps: [],
        },
      ],
      collarUntil: '2025-03-25',
      sutures: 'to-come-out',
      food: 'Soft food for two weeks.',
      rest: 'Short walks on the lead; no rough play.',
      eyeCare: 'Gel into the left eye five times a day until we say the blink is normal.',
      nextVisit: '2025-03-24',
      taught: [
        { item: 'eye-care', answer: 'own-words' },
        { item: 'collar', answer: 'own-words' },
        { item: 'when-to-phone', answer: 'own-words' },
        { item: 'medicines', answer: 'with-help' },
      ],
      taughtBy: lindqvist,
      carer: null,
    },
  )
}

function results(chart: Chart): void {
  const specimens = new Map(
    chart.entries
      .filter((entry) => entry.kind === 'specimen')
      .map((entry) => [(entry.body as { label: string }).label, entry.id]),
  )
  const laboratory = { kind: 'import', from: 'contact-laboratory' } as const
  const phone = (at: string, about: string) => {
    chart.write(
      'told',
      { at, by: holm, subject: left },
      { about, who: 'owner', contact: 'contact-okafor', by: 'phone', text: null },
    )
    chart.write(
      'told',
      { at, by: holm, subject: left },
      { about, who: 'referring-vet', contact: 'contact-park', by: 'email', text: null },
    )
  }
  const culture = (label: string, organism: string, rows: readonly (readonly [string, string])[]) =>
    chart.write(
      'specimen-result',
      { at: '2025-03-17 11:20', by: laboratory, subject: left },
      {
        ...emptyReport,
        specimen: specimens.get(label) ?? '',
        status: 'final',
        growth: 'growth',
        isolates: [printedIsolate('1', organism, rows)],
      },
    )
  const panel = [
    ['amoxicillin-clavulanate', '<=0.25 mg/L'],
    ['cefalexin', '1 mg/L'],
    ['marbofloxacin', '<=0.5 mg/L'],
  ] as const
  const first = culture('T-1', 'Staphylococcus pseudintermedius', panel)
  const second = culture('T-2', 'Staphylococcus pseudintermedius', panel)
  for (const result of [first, second]) {
    chart.write(
      'result-read',
      { at: '2025-03-17 12:05', by: holm, subject: left },
      {
        result,
        decision: 'no-change',
        edition: null,
        text: 'The same organism before and after lavage. Go on with the tablets to day 28.',
      },
    )
    phone('2025-03-17 12:20', result)
  }
  const histology = chart.write(
    'specimen-result',
    { at: '2025-03-20 16:00', by: laboratory, subject: left },
    {
      ...emptyReport,
      specimen: specimens.get('T-3') ?? '',
      status: 'final',
      growth: 'not-a-culture',
      text: 'Chronic inflammation with gland hyperplasia and mineral; no tumour seen.',
    },
  )
  chart.write(
    'result-read',
    { at: '2025-03-21 09:00', by: holm, subject: left },
    { result: histology, decision: 'no-change', edition: null, text: 'No tumour.' },
  )
  phone('2025-03-21 09:10', histology)
}

function year(chart: Chart): void {
  const call = (at: string, about: BodyOf<'call'>['about'], text: string) =>
    chart.write(
      'call',
      { at, by: lindqvist, subject: animal },
      { contact: 'contact-okafor', direction: 'we-called', channel: 'phone', reached: 'yes', about, text },
    )
  const check = (at: string, by: string, body: Partial<BodyOf<'check'>>) =>
    writeCheck(chart, left, at, by, { sutures: 'none', ...body })
  const tears = (value: string) => ({ value, unit: 'mm/min' }) as const
  call('2025-03-14 10:00', 'first-call', 'Eating, wears the collar; gel goes well; eye not red.')
  check('2025-03-14 16:30', lindqvist, {
    seenBy: 'us',
    wound: 'closed',
    sutures: 'in',
    blink: 'weak',
    lipOrEarDroop: 'yes',
    tearTest: tears('15'),
    fluorescein: 'negative',
  })
  check('2025-03-24 10:00', holm, {
    wound: 'closed',
    sutures: 'out',
    blink: 'weak',
    lipOrEarDroop: 'yes',
    tearTest: tears('15'),
    fluorescein: 'negative',
  })
  check('2025-04-08 10:15', holm, { wound: 'closed', blink: 'weak', tearTest: tears('17'), fluorescein: 'negative' })
  chart.write(
    'history-item',
    { at: '2025-04-08 10:40', by: holm, subject: animal },
    {
      topic: 'skin',
      text: 'Allergy plan for the summer agreed with the referring vet.',
      from: moment('2025-04-08', zone),
      until: null,
      source: 'owner',
    },
  )
  chart.write(
    'choice',
    { at: '2025-04-08 10:45', by: holm, subject: right },
    {
      options: [
        {
          option: 'medical-control',
          answer: 'chosen',
          because: 'The canal is open and the drum is whole: cleaned twice a week.',
        },
        { option: 'teca-lbo', answer: 'declined', because: 'Not needed while the ear can be kept quiet.' },
      ],
      session: 'not-decided',
      for: ['The canal is open'],
      against: ['Care for life'],
      missing: [],
    },
  )
  check('2025-05-06 09:45', holm, {
    wound: 'closed',
    blink: 'normal',
    tearTest: tears('18'),
    fluorescein: 'negative',
    text: 'Blink full on both sides; gel stops.',
  })
  check('2025-06-10 11:00', holm, { wound: 'closed', blink: 'normal', tearTest: tears('19'), fluorescein: 'negative' })
  check('2025-09-09 10:30', holm, { wound: 'closed', blink: 'normal', tearTest: tears('19'), fluorescein: 'negative' })
  chart.write(
    'owner-answer',
    { at: '2026-03-08 19:40', by: { kind: 'owner-link', contact: 'contact-okafor' }, subject: animal },
    answersOfTansy(),
  )
  check('2026-03-10 10:00', holm, { wound: 'closed', blink: 'normal', tearTest: tears('18'), fluorescein: 'negative' })
  chart.write(
    'twelve-months',
    { at: '2026-03-10 10:15', by: holm, subject: left },
    { status: 'solved', source: 'our-examination', tries: 1, face: 'normal', wouldChooseAgain: 'yes', text: null },
  )
}

/** What her owner marked on the page of the questions; the last was written in her own words. */
function answersOfTansy(): BodyOf<'owner-answer'> {
  const { id, edition } = twelveMonthsQuestions
  const asking = {
    questionnaire: twelveMonthsQuestions,
    ears: [{ side: 'LEFT', operation: 'operation-tansy-left' }],
  } as const
  const marked: Readonly<Record<string, string>> = {
    'ear-now.LEFT': 'no-trouble',
    'swelling.LEFT': 'no',
    'discharge.LEFT': 'no',
    'touch.LEFT': 'no',
    'face.LEFT': 'no',
    'eye.LEFT': 'cannot-tell',
    'eye-sore.LEFT': 'no',
    'treated-elsewhere.LEFT': 'no',
    mouth: 'no',
    head: 'no',
    hearing: 'less',
    'choose-again': 'yes',
    'phone-me': 'no',
    'anything-else': 'Quiet, no smell. She plays again.',
  }
  const naming = { name: 'Tansy', sides: { LEFT: 'LEFT', RIGHT: 'RIGHT' } }
  return {
    questionnaire: id,
    edition,
    occasion: 'month-12',
    ears: [...asking.ears],
    by: 'owner-link',
    contact: 'contact-okafor',
    language: 'en',
    finished: true,
    answers: givenAnswers(posedIn(asking, 'dog'), (field) => marked[field] ?? null, questionsInEnglish, naming),
  }
}
