import type { WardRules } from '#core/procedures/follow-up.ts'
import type { Period, Span } from '#core/time/calendar-day.ts'
import { commonPractice, houseJudgementOnly } from './provenance.ts'

const checked = '2026-11-29'
const span = (from: number, until: number, unit: Period['unit']): Span => ({
  from: { count: from, unit },
  until: { count: until, unit },
})

const house = { ...houseJudgementOnly, checked } as const
const practice = { ...commonPractice, checked } as const

const scales = {
  sources: ['clinicians-brief-pain-scales'],
  where: 'hourly for the first 4 to 6 hours after surgery, then every 4 to 6 hours until it goes home',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked,
} as const

const eyeTeaching = {
  sources: ['eye-care-texts'],
  where: 'an eye that does not close, awake',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked,
} as const

/**
 * What is looked at in the ward and how often. Most of it was published by nobody: it is common practice or the house's
 * own, says so, and every interval may be set by the clinic as `owed.ward.…`.
 */
export const wardRules: WardRules = {
  every: {
    'pain-early': { value: span(45, 60, 'minutes'), ...scales },
    pain: { value: span(4, 6, 'hours'), ...scales },
    'pain-again': {
      value: span(30, 60, 'minutes'),
      ...house,
      where: 'after an action; no source read here gives the minutes',
    },
    'airway-early': {
      value: span(5, 15, 'minutes'),
      ...practice,
      where: 'every 5 to 15 minutes until it is warm and lies on its chest',
    },
    airway: { value: span(1, 2, 'hours'), ...house, where: 'bandage and breathing, once it is awake' },
    'airway-watched': {
      value: span(30, 60, 'minutes'),
      ...house,
      where: 'both ears, a flat face or a cat: watched more closely is common practice, the minutes are the house’s',
    },
    'temperature-early': { value: span(15, 30, 'minutes'), ...house, where: 'until the temperature is normal' },
    temperature: { value: span(8, 12, 'hours'), ...house, where: 'once it is normal' },
    'first-blink': {
      value: span(0, 2, 'hours'),
      ...house,
      where: 'the record waits for the first blink; within how many hours it is looked for nobody published',
    },
    'blink-again': { value: span(2, 4, 'hours'), ...house, where: 'an eye without a blink, in the ward' },
    'eye-gel': { value: span(1, 2, 'hours'), ...eyeTeaching },
    'eye-ointment': { value: span(4, 6, 'hours'), ...eyeTeaching },
    'food-first': { value: span(4, 8, 'hours'), ...house, where: 'awake and swallowing' },
    food: { value: span(8, 12, 'hours'), ...house },
    urine: { value: span(6, 12, 'hours'), ...house },
    'owner-first': { value: span(0, 2, 'hours'), ...house, where: 'the owner waits by the telephone' },
    owner: {
      value: { from: { count: 1, unit: 'days' }, until: { count: 1, unit: 'days' } },
      ...practice,
      where: 'one call a day as long as it stays',
    },
  },
  painEarlyFor: { value: { count: 6, unit: 'hours' }, ...scales, where: 'the first 4 to 6 hours: the longer is used' },
  silentAfter: { value: { count: 2, unit: 'days' }, ...house, where: 'nothing was written of an animal in the ward' },
  relieves: {
    value: ['analgesia_bolus', 'analgesia_oral', 'nsaid', 'cri', 'local_block', 'wound_infusion', 'transdermal'],
    ...practice,
    where: 'uses of the formulary that answer pain',
  },
  wetsEye: { carbomer: 'eye-gel', 'sodium-hyaluronate': 'eye-gel', 'paraffin-eye-ointment': 'eye-ointment' },
}
