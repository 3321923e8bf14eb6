import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { type Chart, moment } from './chart.ts'
import { staff, zone } from './practice.ts'

const { holm, adeyemi, lindqvist, castellane, moretti } = staff

type Ears = { readonly animal: Subject; readonly operation: Subject; readonly LEFT: Subject; readonly RIGHT: Subject }

const clean: BodyOf<'cytology'> = {
  site: 'canal',
  cocci: 'none',
  rods: 'none',
  yeast: 'few',
  inflammatoryCells: 'none',
  oddCells: 'none',
  biofilm: 'no',
  text: null,
  readBy: lindqvist,
}

const pounds = (amount: string) => ({ amount, currency: 'GBP' })

/** Smears, bloods, class, estimate, rounds and plans of the spaniel; written last, so that no other entry gets another id. */
export function preparedTansy(chart: Chart, { animal, operation, LEFT, RIGHT }: Ears): void {
  const seen: BodyOf<'cytology'> = {
    ...clean,
    rods: 'many',
    cocci: 'few',
    yeast: 'none',
    inflammatoryCells: 'many',
    biofilm: 'not-assessed',
  }
  chart.write('cytology', { at: '2025-02-24 09:50', by: lindqvist, subject: LEFT }, seen)
  chart.write('cytology', { at: '2025-02-24 09:55', by: lindqvist, subject: RIGHT }, clean)
  chart.write(
    'blood-test',
    { at: '2025-02-24 10:20', by: lindqvist, subject: animal },
    {
      panel: 'haematology',
      measured: 'in-house',
      laboratory: null,
      results: [
        { analyte: 'PCV', printed: '44', unit: '%', flag: null, range: '37 - 55' },
        { analyte: 'Platelets', printed: '>200', unit: '10^9/L', flag: null, range: '148 - 484' },
      ],
      text: 'Platelets counted on the smear.',
    },
  )
  chart.write(
    'blood-test',
    { at: '2025-02-24 10:25', by: lindqvist, subject: animal },
    {
      panel: 'chemistry',
      measured: 'in-house',
      laboratory: null,
      results: [
        { analyte: 'Creatinine', printed: '84', unit: 'umol/L', flag: null, range: '44 - 133' },
        { analyte: 'Alkaline phosphatase', printed: '212', unit: 'U/L', flag: 'H', range: '20 - 150' },
      ],
      text: 'Steroid until January.',
    },
  )
  chart.write(
    'blood-type',
    { at: '2025-03-11 08:20', by: castellane, subject: animal },
    { system: 'dea-1', dea1: 'weak-positive', ab: 'unknown', method: 'card', text: null },
  )
  chart.write(
    'anaesthetic-assessment',
    { at: '2025-03-11 08:10', by: adeyemi, subject: operation },
    {
      asa: 'II',
      emergency: false,
      because: 'Years of ear disease without nerve signs; otherwise well.',
      jawOpens: 'yes',
      flatFace: 'no',
      heart: 'normal',
      lungs: 'normal',
      heartAndLungs: null,
      regurgitation: 'usual',
      airwayA: 'Tube 9 mm, 8.5 mm beside it.',
      airwayB: 'Long blade and stylet; supraglottic device on the trolley.',
      assessedBy: adeyemi,
    },
  )
  chart.write(
    'estimate',
    { at: '2025-02-25 15:30', by: moretti, subject: animal },
    {
      edition: 1,
      lines: [
        { part: 'theatre', what: 'Operation and anaesthetic', low: pounds('1850.00'), high: pounds('2250.00') },
        { part: 'laboratory', what: 'Two cultures and histology', low: pounds('330.00'), high: pounds('390.00') },
        { part: 'ward', what: 'Two to three nights', low: pounds('420.00'), high: pounds('630.00') },
        { part: 'rechecks', what: 'Checks to twelve months', low: pounds('300.00'), high: pounds('330.00') },
      ],
      deposit: pounds('800.00'),
      paid: null,
      ceiling: pounds('3600.00'),
      validUntil: '2025-04-25',
      givenBy: moretti,
      answer: { said: 'accepted', by: 'contact-okafor', on: moment('2025-02-25 15:40', zone) },
    },
  )
  chart.write(
    'ward-score',
    { at: '2025-03-11 21:30', by: lindqvist, subject: animal },
    {
      pain: { scale: 'glasgow-dog-short', score: 6 },
      notScoredBecause: null,
      action: 'Rounded on with the anaesthetist; next dose brought forward.',
      given: [],
      rescoreAt: moment('2025-03-11 22:15', zone),
      LEFT: { blink: 'absent', lubricated: 'yes' },
      RIGHT: { blink: 'normal', lubricated: 'yes' },
      bandage: 'fits',
      airway: 'quiet',
      throat: 'soft',
      eats: 'a-little',
      urine: 'passed',
      text: null,
    },
  )
  chart.write(
    'ward-score',
    { at: '2025-03-11 22:10', by: lindqvist, subject: animal },
    {
      pain: { scale: 'glasgow-dog-short', score: 3 },
      notScoredBecause: null,
      action: null,
      given: [],
      rescoreAt: null,
      LEFT: { blink: 'weak', lubricated: 'yes' },
      RIGHT: { blink: 'normal', lubricated: 'yes' },
      bandage: 'fits',
      airway: 'quiet',
      throat: 'soft',
      eats: 'not-offered',
      urine: 'not-assessed',
      text: null,
    },
  )
  chart.write(
    'skin-plan',
    { at: '2025-04-08 10:50', by: holm, subject: animal },
    {
      disease: 'atopy',
      measures: [
        { what: 'Itch tablets through the pollen months', by: 'referring-vet' },
        { what: 'A bath every week', by: 'owner' },
      ],
      text: null,
      reviewOn: null,
    },
  )
  chart.write(
    'other-ear-plan',
    { at: '2025-04-08 10:52', by: holm, subject: RIGHT },
    { plan: 'treat', because: 'Open and waxy; stays quiet with a cleaner twice a week.', reviewOn: null },
  )
}

/** Smear, bloods, group and class of the cat. */
export function preparedMoss(chart: Chart, { animal, operation, RIGHT }: Ears): void {
  const odd: BodyOf<'cytology'> = {
    ...clean,
    site: 'mass',
    yeast: 'none',
    inflammatoryCells: 'some',
    oddCells: 'some',
    readBy: holm,
  }
  chart.write('cytology', { at: '2025-05-19 10:40', by: holm, subject: RIGHT }, { ...odd, text: 'Tissue is sent.' })
  chart.write(
    'blood-test',
    { at: '2025-05-19 10:50', by: lindqvist, subject: animal },
    {
      panel: 'haematology',
      measured: 'in-house',
      laboratory: null,
      results: [{ analyte: 'PCV', printed: '36', unit: '%', flag: null, range: '30 - 52' }],
      text: null,
    },
  )
  chart.write(
    'blood-type',
    { at: '2025-06-03 08:40', by: castellane, subject: animal },
    { system: 'ab', dea1: 'not-typed', ab: 'A', method: 'card', text: null },
  )
  chart.write(
    'anaesthetic-assessment',
    { at: '2025-06-03 08:45', by: adeyemi, subject: operation },
    {
      asa: 'III',
      emergency: false,
      because: 'Old cat with a tumour of the ear; heart listened to, not scanned.',
      jawOpens: 'yes',
      flatFace: 'no',
      heart: 'normal',
      lungs: 'normal',
      heartAndLungs: null,
      regurgitation: 'usual',
      airwayA: 'Tube 4.5 mm after local spray.',
      airwayB: 'Tube 4 mm over a stylet; supraglottic device for cats.',
      assessedBy: adeyemi,
    },
  )
}
