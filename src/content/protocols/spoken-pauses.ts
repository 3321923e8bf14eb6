import type { SpokenPause } from '#core/theatre/spoken-pause.ts'
import { commonPractice, houseJudgementOnly, readStudy } from '../follow-up/provenance.ts'

/** Known from the printed list of 2008, not read again for this file. */
const listOf2008 = {
  sources: ['who-2008-surgical-checklist'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const practice = { ...commonPractice, checked: '2026-11-29' } as const
const ours = { ...houseJudgementOnly, checked: '2026-11-29' } as const
const study = { ...readStudy, checked: '2026-11-29' } as const

/**
 * What is read aloud in the three pauses. The frame is the list made for people; what belongs to the ear is ours. A
 * clinic may speak further items in its own words.
 */
export const spokenPauses: readonly SpokenPause[] = [
  {
    pause: 'before-anaesthesia',
    items: [
      {
        id: 'animal-band-and-consent',
        states: 'Animal, band and consent agree',
        because: { value: 'Who, what and where are confirmed before anything is given.', ...listOf2008 },
      },
      {
        id: 'side-spoken-in-full',
        states: 'The side was spoken in full: LEFT or RIGHT',
        because: { value: 'Site, operation and consent are confirmed before anything is given.', ...listOf2008 },
      },
      {
        id: 'images-up',
        states: 'The images of this animal are on the screen, the right way round',
        because: { value: 'The images that matter can be seen in theatre.', ...listOf2008 },
      },
      {
        id: 'baseline-face-and-eye',
        states: 'Face and eyes were looked at before any sedative, both sides',
        because: {
          value: 'Without a baseline a weak face afterwards cannot be told from an older one.',
          ...study,
          sources: ['hartrum-2025'],
          where:
            'a weak face in 3 of 53 operations before and 25 on day 1; counts reconstructed from the printed percentages',
        },
      },
      {
        id: 'jaw-and-airway-plan',
        states: 'Whether the jaw opens was looked at; plan and second plan for the airway were said',
        because: { value: 'A difficult airway is named before it is met.', ...listOf2008 },
      },
      {
        id: 'machine-and-drugs-checked',
        states: 'Anaesthetic machine and drugs were checked',
        because: { value: 'The check of machine and medicines is complete before anything is given.', ...listOf2008 },
      },
      {
        id: 'local-anaesthetic-total',
        states: 'Local anaesthetic over all blocks and both ears was added up against its ceiling',
        because: { value: 'Splash, block and second ear count together.', ...ours },
      },
      {
        id: 'expected-loss',
        states: 'Expected blood loss was said, with the marks for this weight',
        because: { value: 'The risk of blood loss is named, and how it is met.', ...listOf2008 },
      },
      {
        id: 'suction-and-bone-instruments',
        states: 'Suction works; the instruments for bone are open',
        because: { value: 'A bulla that bleeds waits for nobody to fetch them.', ...practice },
      },
    ],
  },
  {
    pause: 'before-second-ear',
    items: [
      {
        id: 'first-ear-closed',
        states: 'The first ear is closed and covered; its counts agree, its pots are labelled with their side',
        because: { value: 'Two ears of one animal give alike pots and one heap of swabs.', ...ours },
      },
      {
        id: 'loss-of-first-ear',
        states: 'Blood lost so far was said, and it leaves room for a second ear',
        because: { value: 'The marks of loss belong to the animal, not to the ear.', ...ours },
      },
      {
        id: 'temperature-now',
        states: 'The temperature was said, and it allows to go on',
        because: { value: 'A head that is washed for hours cools the whole animal.', ...practice },
      },
      {
        id: 'hours-under-anaesthesia',
        states: 'The time under anaesthesia was said, and how long the second ear will take',
        because: { value: 'Every further hour costs warmth and pressure, and makes waking slower.', ...practice },
      },
      {
        id: 'nerve-of-first-ear',
        states: 'The facial nerve of the first ear was seen whole',
        because: {
          value: 'After a nerve that was cut or not found, a second weak face leaves no eye that blinks.',
          ...ours,
        },
      },
      {
        id: 'throat-after-two-ears',
        states: 'Swelling of the throat after two ears was thought of: who watches, with which tube and which oxygen',
        because: {
          value: 'Trouble with breathing was counted far more often after both sides in one session.',
          ...study,
          sources: ['wainberg-2019'],
          where: 'cats, opening of the bulla from below: 30 of 64 both sides at once, 18 of 211 one side',
        },
      },
      {
        id: 'local-anaesthetic-left',
        states: 'What is left of the one limit for local anaesthetics was said',
        because: { value: 'The second ear has no limit of its own.', ...ours },
      },
      {
        id: 'second-side-spoken-and-pointed',
        states: 'The second side was spoken in full and pointed at; mark, image and consent show it',
        because: { value: 'The animal was turned: what was right is left on the table.', ...practice },
      },
      {
        id: 'go',
        states: 'Surgeon and anaesthetist each said GO for the second ear',
        because: { value: 'A second ear can wait weeks; this is the moment to stop without harm.', ...ours },
      },
    ],
  },
  {
    pause: 'before-incision',
    items: [
      {
        id: 'names-and-roles',
        states: 'Everyone said name and role; anyone may stop',
        because: { value: 'All present introduce themselves.', ...listOf2008 },
      },
      {
        id: 'side-spoken-and-pointed',
        states: 'The side was spoken in full and pointed at',
        because: { value: 'The place of the cut is confirmed aloud once more.', ...listOf2008 },
      },
      {
        id: 'mark-image-and-consent-agree',
        states: 'Mark on the skin, image and consent show the same ear',
        because: { value: 'A head that was turned and draped looks alike on both sides.', ...practice },
      },
      {
        id: 'eyes-lubricated',
        states: 'Both eyes are lubricated and covered',
        because: { value: 'An eye that cannot blink is scratched by drape and scrub.', ...practice },
      },
      {
        id: 'counts-before',
        states: 'Swabs, needles and throat pack are counted and written on the wall',
        because: { value: 'A count at the end means nothing without the one before.', ...practice },
      },
      {
        id: 'antibiotic',
        states: 'Antibiotic: minutes since it was given, or that it waits for the sample, was said',
        because: { value: 'Prophylaxis within the last hour is confirmed, or why it is not given.', ...listOf2008 },
      },
      {
        id: 'specimens-wanted',
        states: 'Specimens wanted were said: canal, bulla on entry, after washing',
        because: {
          value: 'Samples of a bulla before and after washing differed in many ears.',
          ...study,
          sources: ['hettlich-2005'],
        },
      },
      {
        id: 'vein-plan',
        states: 'What is done when the vein behind the jaw joint bleeds was said',
        because: {
          value: 'It bleeds briskly and unseen, and not rarely.',
          ...study,
          sources: ['fox-2008'],
          where: '29 of 309 dogs',
        },
      },
      {
        id: 'concerns',
        states: 'Surgeon, anaesthetist and nurse said their concerns, or that they have none',
        because: { value: 'The critical steps are foreseen aloud by all three.', ...listOf2008 },
      },
    ],
  },
  {
    pause: 'before-leaving',
    items: [
      {
        id: 'procedure-and-side-done',
        states: 'The operation and the side that were done are those agreed',
        because: { value: 'What was done is named aloud.', ...listOf2008 },
      },
      {
        id: 'counts-and-throat-pack',
        states: 'Swabs, needles and instruments agree; the throat pack is out and was seen',
        because: {
          value: 'The count is complete before anybody leaves. A forgotten pack closes the airway.',
          ...listOf2008,
          sources: ['who-2008-surgical-checklist', 'common-practice'],
          where: 'the throat pack: common practice',
        },
      },
      {
        id: 'specimens-labelled',
        states: 'Every pot is labelled and was read aloud, with its side',
        because: { value: 'Labels are read aloud with the name.', ...listOf2008 },
      },
      {
        id: 'loss-total',
        states: 'Blood loss and fluids were added up',
        because: { value: 'The ward can only watch what it was told.', ...practice },
      },
      {
        id: 'next-doses',
        states: 'The next doses and their times were said',
        because: { value: 'What matters for recovery is handed over aloud.', ...listOf2008 },
      },
      {
        id: 'tube-and-ward-plan',
        states: 'When the tube comes out, where the animal wakes and who stays were said',
        because: { value: 'What matters for recovery is handed over aloud.', ...listOf2008 },
      },
      {
        id: 'bandage-plan',
        states: 'Bandage or none, its tension and who looks at it were said',
        because: { value: 'A tight bandage over a swollen throat closes the airway in a quiet kennel.', ...practice },
      },
      {
        id: 'first-blink',
        states: 'Who looks for the first blink after the tube is out was said; the eyes are lubricated until then',
        because: {
          value: 'The first blink is the first answer about the nerve, and an eye without one dries out.',
          ...ours,
        },
      },
      {
        id: 'faults-and-near-misses',
        states: 'Faults of equipment and near misses were said, or that there were none',
        because: { value: 'Trouble with equipment is named, so that somebody sees to it.', ...listOf2008 },
      },
      {
        id: 'owner-phoned',
        states: 'Who phones the owner now was said',
        because: { value: 'The owner hears from the person who operated.', ...practice },
      },
    ],
  },
]
